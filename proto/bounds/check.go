package bounds

import (
	"errors"
	"fmt"

	"google.golang.org/protobuf/reflect/protoreflect"
)

// readDefault reads a knitmath.v1.DefaultValue.
func (b *Bounds) readDefault(value protoreflect.Message, fd protoreflect.FieldDescriptor) error {
	return each(value, func(name protoreflect.Name, v protoreflect.Value) error {
		b.Default = v.Interface()
		if want := defaultKind(fd); name != want {
			return fmt.Errorf("its default is given as %s, want %s", name, want)
		}
		if fd.Enum() != nil && fd.Enum().Values().ByName(protoreflect.Name(v.String())) == nil {
			return fmt.Errorf("its default %q is no value of its enum", v.String())
		}
		if f, ok := b.Default.(float64); ok && fd.Kind() != protoreflect.DoubleKind && f != float64(int64(f)) {
			return fmt.Errorf("its default %v is no whole number", f)
		}
		return nil
	})
}

// defaultKind is the field of DefaultValue that holds the default of fd.
func defaultKind(fd protoreflect.FieldDescriptor) protoreflect.Name {
	switch {
	case fd.IsList() || fd.Message() != nil:
		return "none"
	case fd.Kind() == protoreflect.BoolKind:
		return "flag"
	case fd.Kind() == protoreflect.StringKind || fd.Kind() == protoreflect.EnumKind:
		return "text"
	}
	return "number"
}

// check looks for options that cannot all be meant.
func (b *Bounds) check(fd protoreflect.FieldDescriptor) error {
	var faults []error
	for at := b; at != nil; at = at.Items {
		lower, upper := first(at.Minimum, at.ExclusiveMinimum), first(at.Maximum, at.ExclusiveMaximum)
		if lower != nil && upper != nil && *lower > *upper {
			faults = append(faults, fmt.Errorf("has the range from %v to %v", *lower, *upper))
		}
		for _, example := range at.Examples {
			if why := at.refusal(example); why != "" {
				faults = append(faults, errors.New("its example "+why))
			}
		}
	}
	if b.Default != nil {
		if why := b.refusal(b.Default); why != "" {
			faults = append(faults, errors.New("its default "+why))
		}
		if b.Required {
			faults = append(faults, errors.New("has a default and is required"))
		}
	}
	// A message that leaves the field out holds its zero value, to which rules
	// apply as to any other unless they say so.
	if !b.Required && !b.ZeroIsAbsent && !fd.HasPresence() && b.refusesZero(fd) {
		faults = append(faults, errors.New("may be left out, but not by its rules: make it optional, or say ignore: IGNORE_IF_ZERO_VALUE"))
	}
	return errors.Join(faults...)
}

func first(a, b *float64) *float64 {
	if a != nil {
		return a
	}
	return b
}

func (b *Bounds) refusesZero(fd protoreflect.FieldDescriptor) bool {
	switch {
	case fd.IsList():
		return b.MinItems != nil && *b.MinItems > 0
	case fd.Enum() != nil:
		return b.refusal(string(fd.Enum().Values().ByNumber(0).Name())) != ""
	case fd.Kind() == protoreflect.StringKind:
		return b.refusal("") != ""
	case fd.Kind() == protoreflect.BoolKind:
		return b.refusal(false) != ""
	}
	return b.refusal(0.0) != ""
}
