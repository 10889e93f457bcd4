package service

import (
	"slices"
	"strings"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/fault"
)

// TestChoices asks every method for none, for each one and for every two of the
// fields of which only one may be given.
func TestChoices(t *testing.T) {
	server := start(t)
	for m, bases := range basesByMethod(t) {
		for _, c := range choicesOf(m.desc.Input()) {
			for _, base := range bases {
				ask := func(fields ...protoreflect.FieldDescriptor) []fault.Reason {
					question := proto.CloneOf(base)
					c.give(question.ProtoReflect(), fields)
					st := server.refusal(t, m, question)
					found := reasonsAt(st, c.where())
					for _, fd := range c.fields {
						found = append(found, reasonsAt(st, fault.Join(c.where(), string(fd.Name())))...)
					}
					return found
				}
				if got := ask(); c.required && !slices.Contains(got, fault.ReasonRequired) {
					t.Errorf("%s: none of %s gives %q", m.full, c, got)
				}
				for i, fd := range c.fields {
					got := ask(fd)
					if c.required && slices.Contains(got, fault.ReasonRequired) {
						t.Errorf("%s: one of %s, %s, gives %q", m.full, c, fd.Name(), got)
					}
					for _, other := range c.fields[:i] {
						if got := ask(fd, other); !slices.Contains(got, fault.ReasonContradictory) {
							t.Errorf("%s: two of %s, %s and %s, give %q", m.full, c, fd.Name(), other.Name(), got)
						}
					}
				}
			}
		}
	}
}

// choice is a group of fields of which one may be given, or must be.
type choice struct {
	in       place // of the message that has them
	fields   []protoreflect.FieldDescriptor
	required bool
}

// where is the path of the message that has the choice.
func (c choice) where() string {
	path := c.in.path()
	if len(c.in) > 0 && c.in.last().IsList() {
		return fault.Index(path, 0)
	}
	return path
}

func (c choice) String() string {
	var names []string
	for _, fd := range c.fields {
		names = append(names, fault.Join(c.where(), string(fd.Name())))
	}
	return strings.Join(names, ", ")
}

// choicesOf are the choices in a question at every depth.
func choicesOf(md protoreflect.MessageDescriptor) []choice {
	found := choicesAt(nil, md)
	for _, at := range places(md) {
		if fd := at.last(); fd.Message() != nil && fd.Message() != fd.ContainingMessage() {
			found = append(found, choicesAt(at, fd.Message())...)
		}
	}
	return found
}

func choicesAt(in place, md protoreflect.MessageDescriptor) []choice {
	var found []choice
	for _, rule := range messageRules(md).GetOneof() {
		c := choice{in: in, required: rule.GetRequired()}
		for _, name := range rule.GetFields() {
			c.fields = append(c.fields, md.Fields().ByName(protoreflect.Name(name)))
		}
		found = append(found, c)
	}
	return found
}

// give makes the choice: the fields named are given, the others not.
func (c choice) give(m protoreflect.Message, fields []protoreflect.FieldDescriptor) {
	if len(c.in) > 0 {
		m = append(slices.Clone(c.in), nil).parent(m)
	}
	for _, fd := range c.fields {
		switch {
		case !slices.Contains(fields, fd):
			m.Clear(fd)
		default:
			fill(m, fd)
		}
	}
}

// chosen reports whether a field is one of several of which one may be given.
func chosen(fd protoreflect.FieldDescriptor) bool {
	return slices.ContainsFunc(choicesAt(nil, fd.ContainingMessage()), func(c choice) bool { return slices.Contains(c.fields, fd) })
}

// clearOthers takes away what the field excludes.
func clearOthers(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
	for _, rule := range messageRules(m.Descriptor()).GetOneof() {
		if !slices.Contains(rule.GetFields(), string(fd.Name())) {
			continue
		}
		for _, name := range rule.GetFields() {
			if other := m.Descriptor().Fields().ByName(protoreflect.Name(name)); other != fd {
				m.Clear(other)
			}
		}
	}
}
