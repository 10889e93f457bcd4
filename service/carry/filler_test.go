package carry

import (
	"fmt"
	"reflect"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/stitch"
)

// filler gives every field a value that no other field has, as far as the type
// allows.
type filler struct {
	next int
	turn int // which member of a oneof is filled
	deep int // how many messages of one kind lie within one another
}

func (f *filler) number() int { f.next++; return f.next }

func (f *filler) message(m protoreflect.Message) {
	fields := m.Descriptor().Fields()
	for i := range fields.Len() {
		fd := fields.Get(i)
		if of := fd.ContainingOneof(); of != nil && !of.IsSynthetic() && of.Fields().Get(f.turn%of.Fields().Len()) != fd {
			continue
		}
		if fd.Message() != nil && fd.Message() == m.Descriptor() { // a tree
			if f.deep == 2 {
				continue
			}
			f.deep++
			defer func() { f.deep-- }()
		}
		if fd.IsList() {
			list := m.Mutable(fd).List()
			for range 2 {
				list.Append(f.protoValue(fd, list.NewElement))
			}
			continue
		}
		m.Set(fd, f.protoValue(fd, func() protoreflect.Value { return m.NewField(fd) }))
	}
}

func (f *filler) protoValue(fd protoreflect.FieldDescriptor, empty func() protoreflect.Value) protoreflect.Value {
	n := f.number()
	switch fd.Kind() {
	case protoreflect.MessageKind:
		v := empty()
		f.message(v.Message())
		return v
	case protoreflect.EnumKind:
		return protoreflect.ValueOfEnum(protoreflect.EnumNumber(1 + n%(fd.Enum().Values().Len()-1)))
	case protoreflect.Int32Kind:
		return protoreflect.ValueOfInt32(int32(n))
	case protoreflect.DoubleKind:
		return protoreflect.ValueOfFloat64(float64(n) + 0.5)
	case protoreflect.StringKind:
		return protoreflect.ValueOfString(fmt.Sprint("text ", n))
	case protoreflect.BoolKind:
		return protoreflect.ValueOfBool(true)
	}
	panic(fmt.Sprintf("%s: a kind this test does not know", fd.FullName()))
}

// structValue fills the exported fields of a struct.
func (f *filler) structValue(v reflect.Value) {
	for i := range v.NumField() {
		field := v.Type().Field(i)
		if field.Type == reflect.SliceOf(v.Type()) { // a tree
			if f.deep == 2 {
				continue
			}
			f.deep++
			defer func() { f.deep-- }()
		}
		if field.IsExported() {
			f.goValue(v.Field(i))
		}
		// The summary looks at the item an index names; every list has two.
		if field.Name == "FollowSizeNumber" {
			v.Field(i).Elem().SetInt(1)
		}
	}
}

// goValue fills the exported fields of a kernel's answer.
func (f *filler) goValue(v reflect.Value) {
	n := f.number()
	switch v.Interface().(type) {
	case stitch.Op:
		v.Set(reflect.ValueOf(stitch.Ops()[n%len(stitch.Ops())]))
		return
	case stitch.Row:
		v.Set(reflect.ValueOf(stitch.RowOf(stitch.Do(stitch.Knit, n),
			stitch.Repeat(n, stitch.Do(stitch.K2tog, 1), stitch.Do(stitch.Purl, n)), stitch.ToLast(stitch.SSK, n))))
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		f.structValue(v)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		f.goValue(v.Elem())
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 2, 2))
		f.goValue(v.Index(0))
		f.goValue(v.Index(1))
	case reflect.Int32: // an enumeration, all of which have a number 1 and 2
		v.SetInt(int64(1 + n%2))
	case reflect.Int:
		v.SetInt(int64(n))
	case reflect.Float64:
		v.SetFloat(float64(n) + 0.5)
	case reflect.String:
		v.SetString(fmt.Sprint("text ", n))
	case reflect.Bool:
		v.SetBool(true)
	default:
		panic("a kind this test does not know: " + v.Kind().String())
	}
}
