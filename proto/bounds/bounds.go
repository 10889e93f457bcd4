// Package bounds reads what the options of a field say about its values: the
// rules of buf.validate, the default of knitmath.v1.default_value, and whether a
// caller must send the field at all.
//
// It is for the generator, which writes bounds into the OpenAPI document, and for
// tests, which ask the service on both sides of them. The service does not read
// them: its own checks explain more than a rule can.
package bounds

import (
	"fmt"
	"slices"
)

// Bounds are the legal values of a field or, below Items, of each item of a list.
// What no option speaks of is nil, empty or false.
type Bounds struct {
	// Required: a caller must send it. Of a list, one item at least.
	Required bool
	// ZeroIsAbsent: 0, "" and an empty list are the same as leaving it out, and
	// are legal although the bounds leave them out.
	ZeroIsAbsent bool

	Minimum, ExclusiveMinimum *float64
	Maximum, ExclusiveMaximum *float64

	// MinLength and MaxLength are in characters (code points), as in JSON Schema.
	MinLength, MaxLength *uint64
	// MaxBytes is the length as UTF-8.
	MaxBytes *uint64
	Pattern  string

	// In lists the only legal values, NotIn values that are not legal. Numbers are
	// float64, whole ones too; values of an enum are their names.
	In, NotIn []any

	MinItems, MaxItems *uint64
	Unique             bool
	Items              *Bounds

	// Default is what the field is when it is left out, nil where that is said in
	// words alone.
	Default any
	// Examples are legal values.
	Examples []any
}

// refusal says why v, a float64, bool or string, is not a legal value, "" if it
// is. Patterns are not looked at: buf checks them.
func (b Bounds) refusal(v any) string {
	switch {
	case len(b.In) > 0 && !slices.Contains(b.In, v):
		return fmt.Sprintf("%v is not one of %v", v, b.In)
	case slices.Contains(b.NotIn, v):
		return fmt.Sprintf("%v is one of %v", v, b.NotIn)
	}
	switch v := v.(type) {
	case float64:
		return b.refusalOfNumber(v)
	case string:
		return b.refusalOfText(v)
	}
	return ""
}

func (b Bounds) refusalOfNumber(v float64) string {
	switch {
	case b.Minimum != nil && v < *b.Minimum, b.ExclusiveMinimum != nil && v <= *b.ExclusiveMinimum:
		return fmt.Sprintf("%v is too small", v)
	case b.Maximum != nil && v > *b.Maximum, b.ExclusiveMaximum != nil && v >= *b.ExclusiveMaximum:
		return fmt.Sprintf("%v is too large", v)
	}
	return ""
}

func (b Bounds) refusalOfText(v string) string {
	length := uint64(len([]rune(v)))
	switch {
	case b.MinLength != nil && length < *b.MinLength:
		return fmt.Sprintf("%q is too short", v)
	case b.MaxLength != nil && length > *b.MaxLength, b.MaxBytes != nil && uint64(len(v)) > *b.MaxBytes:
		return fmt.Sprintf("%q is too long", v)
	}
	return ""
}
