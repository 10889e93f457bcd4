// Package answerjson writes messages as JSON in the form that protojson gives them with
// UseProtoNames and EmitDefaultValues: names of the proto files, enums by name, everything
// written out that is not absent. Nothing is decided here, and nothing read.
//
// protojson sorts the fields of each message anew and asks for each by reflection, so that
// writing a long answer took four times as long as working it out. Here it is planned once
// for each type where its fields stand in the generated struct and how they are written.
// The test compares both on messages of every type; what is no generated struct, or has a
// kind of field that no answer has, is left to protojson.
package answerjson

import (
	"bytes"
	"encoding/json"
	"reflect"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
)

// usual is the form in which messages are written.
var usual = protojson.MarshalOptions{UseProtoNames: true, EmitDefaultValues: true}

// Append writes a message after what is in b.
func Append(b []byte, m proto.Message) ([]byte, error) {
	v := reflect.ValueOf(m)
	if v.Kind() == reflect.Pointer && !v.IsNil() && v.Elem().Kind() == reflect.Struct {
		if p := planOf(m.ProtoReflect().Type()); p != nil {
			return p.append(b, v.Elem())
		}
	}
	data, err := usual.Marshal(m)
	if err != nil {
		return b, err
	}
	out := bytes.NewBuffer(b)
	err = json.Compact(out, data) // Its spaces differ from build to build.
	return out.Bytes(), err
}

// append writes the fields that are there.
func (p *plan) append(b []byte, of reflect.Value) ([]byte, error) {
	b = append(b, '{')
	first := true
	for i := range p.fields {
		f := &p.fields[i]
		v, there := f.find(of)
		if !there {
			continue
		}
		if !first {
			b = append(b, ',')
		}
		first = false
		b = append(b, f.name...)
		var err error
		if b, err = f.append(b, v); err != nil {
			return b, err
		}
	}
	return append(b, '}'), nil
}

// find is the value of a field, and whether it is there to be written.
func (f *field) find(of reflect.Value) (v reflect.Value, there bool) {
	v = of.Field(f.index)
	if f.member != nil { // One of several: the interface holds a wrapper of the member that is set.
		if v.IsNil() || v.Elem().Type() != f.member {
			return v, false
		}
		v = v.Elem().Elem().Field(0)
		return v, f.message == nil || !v.IsNil()
	}
	if !f.list && v.Kind() == reflect.Pointer {
		if v.IsNil() {
			return v, false
		}
		if f.message == nil {
			v = v.Elem()
		}
	}
	return v, true
}

func (f *field) append(b []byte, v reflect.Value) ([]byte, error) {
	if !f.list {
		return f.appendOne(b, v)
	}
	b = append(b, '[')
	for i := range v.Len() {
		if i > 0 {
			b = append(b, ',')
		}
		var err error
		if b, err = f.appendOne(b, v.Index(i)); err != nil {
			return b, err
		}
	}
	return append(b, ']'), nil
}

func (f *field) appendOne(b []byte, v reflect.Value) ([]byte, error) {
	switch {
	case f.message != nil:
		if v.IsNil() { // An item of a list that is nobody's: an empty message on the wire.
			return append(b, "{}"...), nil
		}
		return f.message.append(b, v.Elem())
	case f.enum != nil:
		return f.enum.append(b, int32(v.Int())), nil
	}
	switch v.Kind() {
	case reflect.Bool:
		return appendBool(b, v.Bool()), nil
	case reflect.Int32:
		return appendInt(b, v.Int()), nil
	case reflect.Float64:
		return appendFloat(b, v.Float()), nil
	default:
		return appendText(b, v.String())
	}
}
