package bounds

import (
	"errors"
	"fmt"

	"google.golang.org/protobuf/reflect/protoreflect"
)

// ignoreIfZero is buf.validate's IGNORE_IF_ZERO_VALUE.
const ignoreIfZero protoreflect.EnumNumber = 1

// readField reads a buf.validate.FieldRules.
func (b *Bounds) readField(rules protoreflect.Message, fd protoreflect.FieldDescriptor) error {
	return each(rules, func(name protoreflect.Name, v protoreflect.Value) error {
		switch name {
		case "required":
			if v.Bool() && !b.Required {
				return errors.New("is required by buf.validate and not by google.api.field_behavior")
			}
			return nil
		case "ignore":
			if v.Enum() != ignoreIfZero {
				return errors.New("ignores its rules always")
			}
			b.ZeroIsAbsent = true
			return nil
		case "repeated":
			return b.readList(v.Message(), fd)
		case "cel", "cel_expression", "map", "any", "bytes", "duration", "field_mask", "timestamp":
			return unknown(name)
		}
		return b.readValue(v.Message(), fd)
	})
}

// readList reads a buf.validate.RepeatedRules.
func (b *Bounds) readList(rules protoreflect.Message, fd protoreflect.FieldDescriptor) error {
	return each(rules, func(name protoreflect.Name, v protoreflect.Value) error {
		switch name {
		case "min_items":
			b.MinItems = count(v)
		case "max_items":
			b.MaxItems = count(v)
		case "unique":
			b.Unique = v.Bool()
		case "items":
			b.Items = &Bounds{}
			return b.Items.readField(v.Message(), fd)
		default:
			return unknown(name)
		}
		return nil
	})
}

// readValue reads the rules of one kind of scalar: a buf.validate.Int32Rules, a
// DoubleRules, a StringRules and so on, whose rules have the same names.
func (b *Bounds) readValue(rules protoreflect.Message, fd protoreflect.FieldDescriptor) error {
	return each(rules, func(name protoreflect.Name, v protoreflect.Value) error {
		switch name {
		case "gte":
			b.Minimum = limit(v)
		case "gt":
			b.ExclusiveMinimum = limit(v)
		case "lte":
			b.Maximum = limit(v)
		case "lt":
			b.ExclusiveMaximum = limit(v)
		case "const":
			b.In = []any{plain(v, fd)}
		case "in":
			b.In = plainList(v.List(), fd)
		case "not_in":
			b.NotIn = plainList(v.List(), fd)
		case "example":
			b.Examples = plainList(v.List(), fd)
		case "len":
			b.MinLength, b.MaxLength = count(v), count(v)
		case "min_len":
			b.MinLength = count(v)
		case "max_len":
			b.MaxLength = count(v)
		case "max_bytes":
			b.MaxBytes = count(v)
		case "pattern":
			b.Pattern = v.String()
		case "finite", "defined_only":
			// JSON has no other numbers, and the schema lists the names of an enum.
		default:
			return unknown(name)
		}
		return nil
	})
}

// each calls read for every rule that is set, and gathers the faults.
func each(rules protoreflect.Message, read func(protoreflect.Name, protoreflect.Value) error) error {
	var faults []error
	rules.Range(func(rule protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		faults = append(faults, read(rule.Name(), v))
		return true
	})
	return errors.Join(faults...)
}

func unknown(name protoreflect.Name) error {
	return fmt.Errorf("the OpenAPI document has no word for the rule %q", name)
}

func limit(v protoreflect.Value) *float64 {
	f := number(v)
	return &f
}

func count(v protoreflect.Value) *uint64 {
	n := v.Uint()
	return &n
}

// number is a value of any numeric kind; those of the wire have 32 bits or are
// double, so nothing is lost.
func number(v protoreflect.Value) float64 {
	switch v := v.Interface().(type) {
	case int32:
		return float64(v)
	case int64:
		return float64(v)
	case uint32:
		return float64(v)
	case uint64:
		return float64(v)
	case float32:
		return float64(v)
	}
	return v.Float()
}

// plain is a value as JSON holds it. The rules of an enum number its values.
func plain(v protoreflect.Value, fd protoreflect.FieldDescriptor) any {
	switch v := v.Interface().(type) {
	case bool, string:
		return v
	}
	if fd.Enum() == nil {
		return number(v)
	}
	value := fd.Enum().Values().ByNumber(protoreflect.EnumNumber(number(v)))
	if value == nil {
		return number(v) // check refuses it: the default and the names are strings
	}
	return string(value.Name())
}

func plainList(list protoreflect.List, fd protoreflect.FieldDescriptor) []any {
	all := make([]any, list.Len())
	for i := range all {
		all[i] = plain(list.Get(i), fd)
	}
	return all
}
