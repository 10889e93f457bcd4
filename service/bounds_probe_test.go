package service

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"

	"example.com/knitmath/knitmath/fault"
)

// probe is one value of a field, at a bound or just outside it, and whether it is
// inside.
type probe struct {
	name   string
	suffix string // what follows the field's path: "[0]" for an item
	inside bool
	long   bool // a list at the limit of its length
	put    func(protoreflect.Message, protoreflect.FieldDescriptor)
}

// legal are texts of a given length where not every text will do: what is too
// long is seen only in a text that is right but for that.
var legal = map[protoreflect.FullName]func(int) string{
	"knitmath.v1.Abbreviation.name": func(n int) string { return strings.Repeat("m", n) },
	// The names of steps are all shorter, unless one was declared.
	"knitmath.v1.PatternStep.name": func(int) string { return "c4f" },
}

// conditional are enums that some questions have to name a value of: leaving
// them out is no matter of bounds.
var conditional = []protoreflect.FullName{"knitmath.v1.PlanWedgeRequest.tall_end", "knitmath.v1.PatternStep.operation",
	"knitmath.v1.YarnCount.system"}

// probes are the values to ask a field with.
func probes(fd protoreflect.FieldDescriptor) []probe {
	rules := fieldRules(fd)
	if !fd.IsList() {
		found := single(values(fd, rules))
		if rules.GetRequired() {
			found = append(found, probe{name: "missing", put: protoreflect.Message.Clear})
		}
		return found
	}
	found := item(values(fd, rules.GetRepeated().GetItems()))
	if least := rules.GetRepeated().GetMinItems(); least > 0 {
		found = append(found, sized(int(least)-1, false), sized(int(least), true))
	}
	if rules.GetIgnore() == validate.Ignore_IGNORE_IF_ZERO_VALUE && !chosen(fd) {
		found = append(found, probe{name: "missing", inside: true, put: protoreflect.Message.Clear})
	}
	most := int(rules.GetRepeated().GetMaxItems())
	return append(found, sized(most, true), sized(most+1, false))
}

// trial is a value to try.
type trial struct {
	v      protoreflect.Value
	inside bool
}

func (v trial) String() string {
	if s := v.v.String(); len(s) > 40 {
		return fmt.Sprintf("a text of %d bytes", len(s))
	}
	return v.v.String()
}

// values are those of one field or item at its bounds.
func values(fd protoreflect.FieldDescriptor, rules *validate.FieldRules) []trial {
	switch fd.Kind() {
	case protoreflect.Int32Kind:
		r := rules.GetInt32()
		return []trial{
			{protoreflect.ValueOfInt32(r.GetGte() - 1), false}, {protoreflect.ValueOfInt32(r.GetGte()), true},
			{protoreflect.ValueOfInt32(r.GetLte()), true}, {protoreflect.ValueOfInt32(r.GetLte() + 1), false},
			{protoreflect.ValueOfInt32(math.MinInt32), false}, {protoreflect.ValueOfInt32(math.MaxInt32), false},
		}
	case protoreflect.DoubleKind:
		return doubles(rules.GetDouble())
	case protoreflect.EnumKind:
		found := enums(fd.Enum().Values(), rules.GetEnum())
		if slices.Contains(conditional, fd.FullName()) {
			found = slices.DeleteFunc(found, func(v trial) bool { return v.v.Enum() == 0 })
		}
		return found
	case protoreflect.StringKind:
		return texts(fd, rules.GetString())
	}
	return nil
}

func doubles(r *validate.DoubleRules) []trial {
	low, high := r.GetGte(), r.GetLte()
	var found []trial
	for _, inside := range []float64{low, high} {
		found = append(found, trial{protoreflect.ValueOfFloat64(inside), true})
	}
	below, above := math.Nextafter(low, math.Inf(-1)), math.Nextafter(high, math.Inf(1))
	for _, outside := range []float64{below, above, math.NaN(), math.Inf(1), math.Inf(-1)} {
		found = append(found, trial{protoreflect.ValueOfFloat64(outside), false})
	}
	return found
}

func enums(known protoreflect.EnumValueDescriptors, r *validate.EnumRules) []trial {
	found := []trial{{protoreflect.ValueOfEnum(-1), false}}
	for i := range known.Len() {
		number := known.Get(i).Number()
		inside := !slices.Contains(r.GetNotIn(), int32(number)) && (len(r.GetIn()) == 0 || slices.Contains(r.GetIn(), int32(number)))
		found = append(found, trial{protoreflect.ValueOfEnum(number), inside})
	}
	return append(found, trial{protoreflect.ValueOfEnum(protoreflect.EnumNumber(known.Len())), false})
}

// texts are as long as they may be, and longer by one. Characters of two bytes
// show which of the two is counted.
func texts(fd protoreflect.FieldDescriptor, r *validate.StringRules) []trial {
	text, ok := legal[fd.FullName()]
	if !ok {
		text = func(n int) string { return strings.Repeat("é", n) }
	}
	var found []trial
	if r.GetMinLen() > 0 {
		found = append(found, trial{protoreflect.ValueOfString(""), false})
	}
	if most := int(r.GetMaxBytes()); most > 0 {
		long := text(most / 2)
		return append(found, trial{protoreflect.ValueOfString(long), true}, trial{protoreflect.ValueOfString(long + "!"), false})
	}
	most := int(r.GetMaxLen())
	longest := text(most)
	longer := longest + strings.Repeat("m", most+1-len([]rune(longest)))
	return append(found, trial{protoreflect.ValueOfString(longest), true}, trial{protoreflect.ValueOfString(longer), false})
}

func single(list []trial) []probe {
	var found []probe
	for _, v := range list {
		put := func(m protoreflect.Message, fd protoreflect.FieldDescriptor) { m.Set(fd, v.v) }
		found = append(found, probe{name: v.String(), inside: v.inside, put: put})
	}
	return found
}

// item puts the value first in the list.
func item(list []trial) []probe {
	var found []probe
	for _, v := range list {
		put := func(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
			fill(m, fd)
			m.Mutable(fd).List().Set(0, v.v)
		}
		found = append(found, probe{name: v.String(), suffix: "[0]", inside: v.inside, put: put})
	}
	return found
}

// sized makes the list so long, of equal items.
func sized(n int, inside bool) probe {
	put := func(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
		m.Clear(fd)
		items := m.Mutable(fd).List()
		for range n {
			items.Append(sample(fd))
		}
	}
	return probe{name: fmt.Sprintf("%d items", n), inside: inside, long: n > 1, put: put}
}

// unbounded are the fields that have no bounds, and why.
var unbounded = map[protoreflect.Kind]string{
	protoreflect.BoolKind:    "both values are legal",
	protoreflect.MessageKind: "its fields have bounds",
}

// TestEveryFieldIsBounded wants both ends of every number, the length of every
// text and list, and the values of every enum.
func TestEveryFieldIsBounded(t *testing.T) {
	for m := range basesByMethod(t) {
		for i := range m.desc.Input().Fields().Len() {
			if fd := m.desc.Input().Fields().Get(i); fd.Name() == "fields" && !bounded(fd) {
				t.Errorf("%s has no bounds", fd.FullName())
			}
		}
		for _, at := range places(m.desc.Input()) {
			fd := at.last()
			if (fd.IsList() || unbounded[fd.Kind()] == "") && !bounded(fd) {
				t.Errorf("%s has no bounds", fd.FullName())
			}
			if required(fd) && !fd.IsList() && fd.Message() != nil && !fieldRules(fd).GetRequired() {
				t.Errorf("%s is required in words only", fd.FullName())
			}
		}
	}
}

func bounded(fd protoreflect.FieldDescriptor) bool {
	rules := fieldRules(fd)
	if fd.IsList() {
		if list := rules.GetRepeated(); list.GetMaxItems() == 0 || required(fd) != (list.GetMinItems() == 1) {
			return false
		}
		if fd.Message() != nil {
			return true
		}
		rules = rules.GetRepeated().GetItems()
	}
	switch fd.Kind() {
	case protoreflect.Int32Kind:
		return rules.GetInt32().HasGte() && rules.GetInt32().HasLte()
	case protoreflect.DoubleKind:
		return rules.GetDouble().HasGte() && rules.GetDouble().HasLte() && rules.GetDouble().GetFinite()
	case protoreflect.EnumKind:
		return rules.GetEnum().GetDefinedOnly()
	case protoreflect.StringKind:
		return rules.GetString().GetMaxLen() > 0 || rules.GetString().GetMaxBytes() > 0
	}
	return false
}

// reasonsAt are the reasons with which exactly this path was refused.
func reasonsAt(st *status.Status, path string) []fault.Reason {
	var found []fault.Reason
	for _, v := range violations(st) {
		if at, reason, _ := strings.Cut(v, " "); at == path {
			found = append(found, fault.Reason(reason))
		}
	}
	return found
}

func messageType(fd protoreflect.FieldDescriptor) protoreflect.MessageType {
	mt, err := protoregistry.GlobalTypes.FindMessageByName(fd.Message().FullName())
	if err != nil {
		panic(err) // a field of the generated code has a generated type
	}
	return mt
}
