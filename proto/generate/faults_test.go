package main

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/types/descriptorpb"
)

// checker compares a document with descriptors and lists what does not agree. It
// shares no code with the passes.
type checker struct {
	d     *document.Document
	found []string
}

// faults lists what the document says otherwise than the descriptors.
func faults(d *document.Document, set *descriptorpb.FileDescriptorSet) []string {
	c := &checker{d: d}
	files, err := protodesc.NewFiles(set)
	if err != nil {
		return []string{err.Error()}
	}
	questions, answers, enums := things{}, things{}, things{}
	operations, rooms := map[string]bool{}, map[string]bool{}
	files.RangeFilesByPackage("knitmath.v1", func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			service := file.Services().Get(i)
			rooms[c.room(service)] = true
			for j := range service.Methods().Len() {
				method := service.Methods().Get(j)
				questions.gather(method.Input(), enums)
				answers.gather(method.Output(), enums)
				c.method(method, operations)
			}
		}
		return true
	})
	c.operations(operations)
	c.head(rooms)
	expected := map[string]bool{}
	for _, name := range questions.names() {
		expected[name] = true
		c.question(name, questions[name].(protoreflect.MessageDescriptor))
	}
	for _, name := range answers.names() {
		message := answers[name].(protoreflect.MessageDescriptor)
		if questions[name] != nil {
			name += "Answer"
		}
		expected[name] = true
		c.answer(name, message, questions)
	}
	for _, name := range enums.names() {
		expected[name] = true
		c.enum(name, enums[name].(protoreflect.EnumDescriptor))
	}
	reasons, err := compile.Reasons(set, "knitmath")
	if err != nil {
		return []string{err.Error()}
	}
	for _, name := range c.errors(reasons) {
		expected[name] = true
	}
	c.same("components", slices.Sorted(maps.Keys(d.Components.Schemas)), slices.Sorted(maps.Keys(expected)))
	c.references()
	return c.found
}

// things are messages or enums by their short names.
type things map[string]protoreflect.Descriptor

func (t things) names() []string { return slices.Sorted(maps.Keys(t)) }

// gather adds the message and all that lie in it.
func (t things) gather(message protoreflect.MessageDescriptor, enums things) {
	if t[string(message.Name())] != nil {
		return
	}
	t[string(message.Name())] = message
	for i := range message.Fields().Len() {
		field := message.Fields().Get(i)
		if field.Message() != nil {
			t.gather(field.Message(), enums)
		}
		if field.Enum() != nil {
			enums[string(field.Enum().Name())] = field.Enum()
		}
	}
}

func (c *checker) add(format string, args ...any) {
	c.found = append(c.found, fmt.Sprintf(format, args...))
}

// same wants two values to be written alike.
func (c *checker) same(what string, got, want any) {
	a, _ := json.Marshal(got)
	b, _ := json.Marshal(want)
	if string(a) != string(b) && !(reflect.ValueOf(got).IsZero() && reflect.ValueOf(want).IsZero()) {
		c.add("%s: got %s, want %s", what, a, b)
	}
}

// described wants the words of a comment, in lines that begin paragraphs or points
// of a list.
func (c *checker) described(what, got string, of protoreflect.Descriptor) {
	comment := of.ParentFile().SourceLocations().ByDescriptor(of).LeadingComments
	words := func(text string) string { return strings.Join(strings.Fields(text), " ") }
	if want := words(comment); want == "" || !strings.Contains(words(got), want) {
		c.add("%s says %q, want %q", what, got, want)
	}
	lines := strings.Split(got, "\n")
	for i, line := range lines {
		point := strings.HasPrefix(line, "- ")
		if i > 0 && line != "" && lines[i-1] != "" && !point || i == 0 && line == "" {
			c.add("%s breaks the line before %q", what, line)
		}
	}
	if strings.Count(comment, "\n - ") > strings.Count("\n"+got, "\n- ") {
		c.add("%s has lost points of a list: %q", what, got)
	}
}

// references wants every reference to lead somewhere.
func (c *checker) references() {
	c.d.Walk(func(s *document.Schema) {
		if s.Ref != "" && c.d.Components.Schemas[strings.TrimPrefix(s.Ref, "#/components/schemas/")] == nil {
			c.add("%s leads nowhere", s.Ref)
		}
		if s.Discriminator != nil {
			for _, target := range s.Discriminator.Mapping {
				if c.d.Components.Schemas[strings.TrimPrefix(target, "#/components/schemas/")] == nil {
					c.add("%s leads nowhere", target)
				}
			}
		}
	})
	for path, item := range c.d.Paths {
		for verb, operation := range item.Operations() {
			for status, response := range operation.Responses {
				if response.Ref != "" && c.d.Components.Responses[strings.TrimPrefix(response.Ref, "#/components/responses/")] == nil {
					c.add("%s %s: %s: %s leads nowhere", verb, path, status, response.Ref)
				}
			}
		}
	}
}
