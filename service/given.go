package service

import (
	"slices"
	"strconv"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// ofGiven leaves out of faults that several values have together those values that the
// question does not have: what stands at its default was filled in by nobody, and no
// caller can mark it. Where none of them was given all stay.
func ofGiven(question protoreflect.Message, faults []fault.Violation) []fault.Violation {
	given := map[string]bool{} // by what is said of all of them
	for _, f := range faults {
		if f.Reason == fault.ReasonInfeasible && holds(question, f.Field) {
			given[f.Detail] = true
		}
	}
	if len(given) == 0 {
		return faults
	}
	return slices.DeleteFunc(slices.Clone(faults), func(f fault.Violation) bool {
		return f.Reason == fault.ReasonInfeasible && given[f.Detail] && !holds(question, f.Field)
	})
}

// holds reports whether a question has a value at a path such as "items[0].count". A number
// or an enum that cannot be absent always has one.
func holds(m protoreflect.Message, path string) bool {
	part, rest, deeper := strings.Cut(path, ".")
	name, index, indexed := strings.Cut(strings.TrimSuffix(part, "]"), "[")
	fd := m.Descriptor().Fields().ByName(protoreflect.Name(name))
	if fd == nil {
		return false
	}
	if !fd.HasPresence() && !fd.IsList() {
		return !deeper
	}
	if !m.Has(fd) {
		return false
	}
	value := m.Get(fd)
	if indexed {
		i, err := strconv.Atoi(index)
		if err != nil || !fd.IsList() || i < 0 || i >= value.List().Len() {
			return false
		}
		value = value.List().Get(i)
	}
	return !deeper || fd.Message() != nil && (indexed || !fd.IsList()) && holds(value.Message(), rest)
}
