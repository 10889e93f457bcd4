package answerjson

import (
	"reflect"
	"strconv"
	"strings"
	"sync"

	"google.golang.org/protobuf/reflect/protoreflect"
)

// A plan is how the messages of a type are written.
type plan struct{ fields []field }

// A field is where one stands in the generated struct, and what it is.
type field struct {
	name    []byte // quoted, with its colon
	index   int
	list    bool
	member  reflect.Type // the wrapper of a member of a oneof
	message *plan
	enum    *enum
}

// plans are kept by the type of the message; nil is for those that protojson writes.
var (
	planning sync.Mutex
	plans    sync.Map // of *plan by protoreflect.FullName
)

// planOf is the plan of a type, made when it is first asked for.
func planOf(of protoreflect.MessageType) *plan {
	if p, ok := plans.Load(of.Descriptor().FullName()); ok {
		return p.(*plan)
	}
	planning.Lock() // One at a time: types hold one another.
	defer planning.Unlock()
	made := map[protoreflect.FullName]*plan{}
	p := newPlan(of, made)
	if p == nil {
		plans.Store(of.Descriptor().FullName(), p)
		return nil
	}
	for name, each := range made {
		plans.Store(name, each)
	}
	return p
}

// newPlan makes the plan of a type and of those within it; nil where one of them has
// something that is not known here.
func newPlan(of protoreflect.MessageType, made map[protoreflect.FullName]*plan) *plan {
	md := of.Descriptor()
	if p, ok := made[md.FullName()]; ok {
		return p
	}
	p := &plan{}
	made[md.FullName()] = p
	shape := reflect.TypeOf(of.Zero().Interface())
	if shape.Kind() != reflect.Pointer || shape.Elem().Kind() != reflect.Struct || strings.HasPrefix(string(md.FullName()), "google.") {
		return nil
	}
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		f := field{name: []byte(strconv.Quote(string(fd.Name())) + ":"), list: fd.IsList()}
		if !f.place(of, fd, shape.Elem()) || fd.IsMap() {
			return nil
		}
		switch fd.Kind() {
		case protoreflect.MessageKind:
			value := of.New().NewField(fd)
			if fd.IsList() {
				value = value.List().NewElement()
			}
			if f.message = newPlan(value.Message().Type(), made); f.message == nil {
				return nil
			}
		case protoreflect.EnumKind:
			f.enum = newEnum(fd.Enum())
		case protoreflect.BoolKind, protoreflect.Int32Kind, protoreflect.DoubleKind, protoreflect.StringKind:
		default:
			return nil
		}
		p.fields = append(p.fields, f)
	}
	return p
}

// place finds a field in the struct: by the tag that the generator gave it, or as a member
// of a oneof by setting it and looking what is there.
func (f *field) place(of protoreflect.MessageType, fd protoreflect.FieldDescriptor, shape reflect.Type) bool {
	oneof := fd.ContainingOneof()
	if oneof != nil && !oneof.IsSynthetic() {
		for i := range shape.NumField() {
			if shape.Field(i).Tag.Get("protobuf_oneof") == string(oneof.Name()) {
				set := of.New()
				set.Set(fd, set.NewField(fd))
				f.index, f.member = i, reflect.ValueOf(set.Interface()).Elem().Field(i).Elem().Type()
				return true
			}
		}
		return false
	}
	for i := range shape.NumField() {
		for part := range strings.SplitSeq(shape.Field(i).Tag.Get("protobuf"), ",") {
			if part == "name="+string(fd.Name()) {
				f.index = i
				return true
			}
		}
	}
	return false
}
