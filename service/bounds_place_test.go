package service

import (
	"encoding/json"
	"slices"
	"testing"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// basesByMethod are questions that have answers: the good wire cases, and what
// the bad ones are changed from.
func basesByMethod(t *testing.T) map[wireMethod][]proto.Message {
	t.Helper()
	bases := map[wireMethod][]proto.Message{}
	for path, file := range readWireFiles(t) {
		m := findMethod(t, file.Method)
		data := []byte(file.Request)
		if file.Cases != nil {
			var err error
			if data, err = json.Marshal(file.Base); err != nil {
				t.Fatal(err)
			}
		}
		question := newMessage(t, m.desc.Input())
		if err := protojson.Unmarshal(data, question); err != nil {
			t.Fatalf("%s: %v", path, err)
		}
		bases[m] = append(bases[m], question)
	}
	return bases
}

// place is a field of a question at some depth: the fields on the way to it, and
// itself. A list on the way is entered at its first item.
type place []protoreflect.FieldDescriptor

func (p place) last() protoreflect.FieldDescriptor { return p[len(p)-1] }

// path is the place as violations name it.
func (p place) path() string {
	path := ""
	for i, fd := range p {
		if path = fault.Join(path, string(fd.Name())); fd.IsList() && i < len(p)-1 {
			path = fault.Index(path, 0)
		}
	}
	return path
}

// places are all fields of a question. A message within itself, as the steps of a
// step, is not entered again.
func places(md protoreflect.MessageDescriptor) []place {
	var found []place
	var walk func(place, protoreflect.MessageDescriptor)
	walk = func(to place, md protoreflect.MessageDescriptor) {
		for i := range md.Fields().Len() {
			fd := md.Fields().Get(i)
			at := append(slices.Clone(to), fd)
			found = append(found, at)
			if fd.Message() != nil && fd.Message() != md {
				walk(at, fd.Message())
			}
		}
	}
	walk(nil, md)
	return found
}

// parent is the message that has the field, made if need be.
func (p place) parent(m protoreflect.Message) protoreflect.Message {
	for _, fd := range p[:len(p)-1] {
		clearOthers(m, fd)
		fill(m, fd)
		if fd.IsList() {
			m = m.Mutable(fd).List().Get(0).Message()
		} else {
			m = m.Mutable(fd).Message()
		}
	}
	return m
}

// set puts the value of a probe in the place.
func (p place) set(m protoreflect.Message, probe probe) {
	parent := p.parent(m)
	clearOthers(parent, p.last())
	probe.put(parent, p.last())
	if !probe.long {
		return
	}
	// Some lists have a limit together: the others are made short.
	for _, fd := range p[:len(p)-1] {
		if fd.IsList() {
			m.Mutable(fd).List().Truncate(1)
			m = m.Get(fd).List().Get(0).Message()
		} else {
			m = m.Get(fd).Message()
		}
	}
}

// foreign reports whether a question was refused because it has no place for the
// field, or for what the field is in: what is wrong with it may then be left
// unsaid.
func (p place) foreign(st *status.Status, probe probe) bool {
	for i := range p {
		if i == len(p)-1 && probe.inside {
			continue
		}
		if slices.Contains(reasonsAt(st, p[:i+1].path()), fault.ReasonContradictory) {
			return true
		}
	}
	return false
}

// sample is a legal value of a field or, for a list, of an item: the one that the
// .proto file shows, or else a message with what is required of it.
func sample(fd protoreflect.FieldDescriptor) protoreflect.Value {
	rules := fieldRules(fd)
	if fd.IsList() {
		rules = rules.GetRepeated().GetItems()
	}
	switch fd.Kind() {
	case protoreflect.Int32Kind:
		return protoreflect.ValueOfInt32(rules.GetInt32().GetExample()[0])
	case protoreflect.DoubleKind:
		return protoreflect.ValueOfFloat64(rules.GetDouble().GetExample()[0])
	case protoreflect.StringKind:
		return protoreflect.ValueOfString(rules.GetString().GetExample()[0])
	case protoreflect.EnumKind:
		return protoreflect.ValueOfEnum(1)
	case protoreflect.BoolKind:
		return protoreflect.ValueOfBool(true)
	}
	m := messageType(fd).New()
	for i := range fd.Message().Fields().Len() {
		below := fd.Message().Fields().Get(i)
		if required(below) || shown(below) && !chosen(below) {
			fill(m, below)
		}
	}
	for _, c := range choicesAt(nil, fd.Message()) {
		if c.required {
			c.give(m, c.fields[:1])
		}
	}
	return protoreflect.ValueOfMessage(m)
}

// fill gives a field that has nothing a sample, or as many as it needs.
func fill(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
	switch {
	case m.Has(fd):
	case fd.IsList():
		list := m.Mutable(fd).List()
		for range max(1, fieldRules(fd).GetRepeated().GetMinItems()) {
			list.Append(sample(fd))
		}
	default:
		m.Set(fd, sample(fd))
	}
}

// shown reports whether the .proto file has an example of a single value.
func shown(fd protoreflect.FieldDescriptor) bool {
	rules := fieldRules(fd)
	return len(rules.GetInt32().GetExample())+len(rules.GetDouble().GetExample())+len(rules.GetString().GetExample()) > 0
}

func fieldRules(fd protoreflect.FieldDescriptor) *validate.FieldRules {
	rules, _ := proto.GetExtension(fd.Options(), validate.E_Field).(*validate.FieldRules)
	return rules
}

func messageRules(md protoreflect.MessageDescriptor) *validate.MessageRules {
	rules, _ := proto.GetExtension(md.Options(), validate.E_Message).(*validate.MessageRules)
	return rules
}

func required(fd protoreflect.FieldDescriptor) bool {
	said, _ := proto.GetExtension(fd.Options(), annotations.E_FieldBehavior).([]annotations.FieldBehavior)
	return slices.Contains(said, annotations.FieldBehavior_REQUIRED)
}
