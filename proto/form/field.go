package form

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/bounds"
)

// field describes a field of a message.
func (m Maker) field(fd protoreflect.FieldDescriptor, within []protoreflect.FullName) (Field, error) {
	b, err := m.Bounds.Field(fd)
	if err != nil {
		return Field{}, err
	}
	label, unit := labelled(string(fd.Name()))
	f := Field{
		Name: string(fd.Name()), Label: label, Unit: unit, Kind: kindOf(fd), List: fd.IsList(), MaxItems: b.MaxItems,
		Help: m.Comment(fd), Required: b.Required, Default: b.Default,
	}
	each := b
	if f.List && b.Items != nil {
		each = *b.Items
	}
	f.Min, f.Max = cmp.Or(each.Minimum, each.ExclusiveMinimum), cmp.Or(each.Maximum, each.ExclusiveMaximum)
	f.Longest = cmp.Or(each.MaxLength, each.MaxBytes)
	if len(each.Examples) > 0 {
		f.Example = each.Examples[0]
	}
	if fd.Enum() != nil {
		f.Options = m.options(fd.Enum(), each)
	}
	if fd.Message() != nil {
		f.Group, err = m.group(fd.Message(), within)
	}
	return f, err
}

func kindOf(fd protoreflect.FieldDescriptor) Kind {
	switch fd.Kind() {
	case protoreflect.MessageKind:
		return Parts
	case protoreflect.EnumKind:
		return Choice
	case protoreflect.BoolKind:
		return Flag
	case protoreflect.StringKind:
		return Text
	case protoreflect.DoubleKind, protoreflect.FloatKind:
		return Number
	default:
		return Whole
	}
}

// options are the values of an enum that may be sent. The first one means that it
// was left out, and is what an empty choice sends.
func (m Maker) options(enum protoreflect.EnumDescriptor, b bounds.Bounds) []Option {
	var all []Option
	for i := range enum.Values().Len() {
		value := enum.Values().Get(i)
		name := string(value.Name())
		if value.Number() == 0 || slices.Contains(b.NotIn, any(name)) || len(b.In) > 0 && !slices.Contains(b.In, any(name)) {
			continue
		}
		label := strings.ToLower(strings.ReplaceAll(strings.TrimPrefix(name, prefix(enum)), "_", " "))
		all = append(all, Option{Value: name, Label: label, Help: m.Comment(value)})
	}
	return all
}

// prefix is how the values of an enum begin.
func prefix(enum protoreflect.EnumDescriptor) string {
	return strings.ToUpper(strings.ReplaceAll(words(string(enum.Name())), " ", "_")) + "_"
}

// enumsIn are the beginnings of all values that lie in a message, sorted.
func enumsIn(message protoreflect.MessageDescriptor) []string {
	found := map[string]bool{}
	seen := map[protoreflect.FullName]bool{}
	var look func(protoreflect.MessageDescriptor)
	look = func(message protoreflect.MessageDescriptor) {
		if seen[message.FullName()] {
			return
		}
		seen[message.FullName()] = true
		for i := range message.Fields().Len() {
			if enum := message.Fields().Get(i).Enum(); enum != nil {
				found[prefix(enum)] = true
			}
			if part := message.Fields().Get(i).Message(); part != nil {
				look(part)
			}
		}
	}
	look(message)
	return slices.Sorted(maps.Keys(found))
}
