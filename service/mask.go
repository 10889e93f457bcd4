package service

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/service/answerjson"
)

// mask is the part of a message that is asked for, by field number: a field that
// is not in it is left out, one with a mask of its own is kept in part, and one
// with nil is kept whole.
//
// google.protobuf.FieldMask and its library, fieldmaskpb, would be the usual way.
// They end at lists ("rows.text" is not a path to them), and their JSON form
// refuses the spelling in which everything else on the wire is written.
type mask map[protoreflect.FieldNumber]mask

// add asks for one path more. What is asked for as a whole stays whole.
func (m mask) add(path []protoreflect.FieldDescriptor) {
	for i, fd := range path {
		below, asked := m[fd.Number()]
		switch {
		case asked && below == nil:
			return
		case i == len(path)-1:
			m[fd.Number()] = nil
			return
		case !asked:
			below = mask{}
			m[fd.Number()] = below
		}
		m = below
	}
}

// followPath finds the fields along a path, "rows.instruction.text", through
// lists and members of oneofs. If there is no such path, wrong says where it
// ends and what there is instead.
func followPath(md protoreflect.MessageDescriptor, path string) (along []protoreflect.FieldDescriptor, wrong string) {
	for name := range strings.SplitSeq(path, ".") {
		if md == nil {
			return nil, fmt.Sprintf("%s has no fields of its own", along[len(along)-1].Name())
		}
		fd := md.Fields().ByName(protoreflect.Name(name))
		if fd == nil {
			return nil, fmt.Sprintf("there is no field %s; there are %s",
				strconv.Quote(shorten(name, maxFieldLength/2)), fieldsOf{md, name})
		}
		along = append(along, fd)
		md = fd.Message()
	}
	return along, ""
}

// prune clears what is not asked for, in place.
func (m mask) prune(msg protoreflect.Message) {
	msg.Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		below, asked := m[fd.Number()]
		switch {
		case !asked:
			msg.Clear(fd)
		case below == nil:
		case fd.IsList():
			for i := range v.List().Len() {
				below.prune(v.List().Get(i).Message())
			}
		default:
			below.prune(v.Message())
		}
		return true
	})
}

// partialAnswer is an answer that was asked for in part.
type partialAnswer struct {
	message proto.Message
	part    mask
}

// MarshalJSON writes it as whole answers are written. The mask is needed
// once more here: zeros and empty lists are written out, and by the message alone
// those that were asked for cannot be told from those that were left out.
func (p partialAnswer) MarshalJSON() ([]byte, error) {
	var out bytes.Buffer
	err := p.part.writeMessage(&out, p.message.ProtoReflect())
	return out.Bytes(), err
}

// writeMessage writes the fields that are asked for.
func (m mask) writeMessage(to *bytes.Buffer, msg protoreflect.Message) error {
	to.WriteByte('{')
	fields, written := msg.Descriptor().Fields(), 0
	for i := range fields.Len() {
		fd := fields.Get(i)
		below, asked := m[fd.Number()]
		if !asked || fd.HasPresence() && !msg.Has(fd) {
			continue
		}
		if written++; written > 1 {
			to.WriteByte(',')
		}
		to.WriteString(strconv.Quote(string(fd.Name())) + ":")
		if err := below.writeField(to, fd, msg.Get(fd)); err != nil {
			return err
		}
	}
	to.WriteByte('}')
	return nil
}

func (m mask) writeField(to *bytes.Buffer, fd protoreflect.FieldDescriptor, v protoreflect.Value) error {
	if !fd.IsList() {
		return m.writeValue(to, fd, v)
	}
	to.WriteByte('[')
	for i := range v.List().Len() {
		if i > 0 {
			to.WriteByte(',')
		}
		if err := m.writeValue(to, fd, v.List().Get(i)); err != nil {
			return err
		}
	}
	to.WriteByte(']')
	return nil
}

// writeValue writes one value. What is kept whole the libraries write.
func (m mask) writeValue(to *bytes.Buffer, fd protoreflect.FieldDescriptor, v protoreflect.Value) error {
	if m != nil {
		return m.writeMessage(to, v.Message())
	}
	var data []byte
	var err error
	switch fd.Kind() {
	case protoreflect.MessageKind:
		data, err = answerjson.Append(nil, v.Message().Interface())
	case protoreflect.EnumKind:
		data, err = json.Marshal(enumName(fd.Enum(), v.Enum()))
	default:
		data, err = json.Marshal(v.Interface())
	}
	to.Write(data)
	return err
}

// enumName is the name of a value, or its number if it has none.
func enumName(ed protoreflect.EnumDescriptor, number protoreflect.EnumNumber) any {
	if value := ed.Values().ByNumber(number); value != nil {
		return value.Name()
	}
	return number
}
