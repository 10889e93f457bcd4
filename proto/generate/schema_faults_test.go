package main

import (
	"bytes"
	"encoding/json"
	"strings"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/proto/document"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// question checks the schema of a message of questions.
func (c *checker) question(name string, message protoreflect.MessageDescriptor) {
	schema := c.object(name, message, true)
	if schema == nil {
		return
	}
	var required []string
	for i := range message.Fields().Len() {
		if field := message.Fields().Get(i); isRequired(field) {
			required = append(required, string(field.Name()))
		}
	}
	c.same(name+" required", schema.Required, required)
	if schema.AdditionalProperties == nil || *schema.AdditionalProperties {
		c.add("%s lets unknown fields pass", name)
	}
}

// answer checks the schema of a message of answers; bounds of one that questions
// hold too are no promise.
func (c *checker) answer(name string, message protoreflect.MessageDescriptor, questions things) {
	schema := c.object(name, message, questions[string(message.Name())] == nil)
	if schema == nil {
		return
	}
	var sent []string
	for i := range message.Fields().Len() {
		field := message.Fields().Get(i)
		absent := field.HasPresence() && !proto.GetExtension(field.Options(), knitmathv1.E_AlwaysSent).(bool)
		if !absent {
			sent = append(sent, string(field.Name()))
		}
	}
	c.same(name+" required", schema.Required, sent)
	if schema.AdditionalProperties != nil {
		c.add("%s is closed to new fields", name)
	}
	schema.Walk(func(s *document.Schema) {
		if name := strings.TrimPrefix(s.Ref, "#/components/schemas/"); questions[name] != nil {
			c.add("an answer holds %s as questions do", name)
		}
	})
}

// object checks what the schemas of both kinds have in common.
func (c *checker) object(name string, message protoreflect.MessageDescriptor, bounded bool) *document.Schema {
	schema := c.d.Components.Schemas[name]
	if schema == nil {
		c.add("no schema %s", name)
		return nil
	}
	c.same(name+" type", schema.Type, "object")
	c.described(name, schema.Description, message)
	var got, want []string
	for property := range schema.Properties.All() {
		got = append(got, property)
	}
	for i := range message.Fields().Len() {
		field := message.Fields().Get(i)
		want = append(want, string(field.Name()))
		property := schema.Properties.Get(string(field.Name()))
		if property == nil {
			continue
		}
		what := name + "." + string(field.Name())
		c.described(what, property.Description, field)
		c.value(what, property, field, bounded)
	}
	c.same(name+" properties", got, want)
	if len(schema.OneOf)+len(schema.AnyOf) > 0 {
		c.add("%s is a union, of which clients make a type that nobody can build", name)
	}
	c.choices(name, schema, message, bounded)
	return schema
}

// choices wants every oneof, and every choice that a rule makes, to be kept by the
// schema: no field, each field alone and each two of them are tried, with what is
// not given left out and written out.
func (c *checker) choices(name string, schema *document.Schema, message protoreflect.MessageDescriptor, bounded bool) {
	choices := choicesOf(message, bounded)
	rule := compiledRule(&document.Schema{Not: schema.Not})
	for i := -1; i < message.Fields().Len(); i++ {
		for j := i; j < message.Fields().Len(); j++ {
			given := map[string]bool{}
			for _, k := range []int{i, j} {
				if k >= 0 {
					given[string(message.Fields().Get(k).Name())] = true
				}
			}
			for _, zeros := range []bool{false, true} {
				if got := rule.Validate(sample(message, given, zeros)) == nil; got != choices.legal(given) {
					c.add("%s with %v, zeros written out: %v, is legal: %v", name, given, zeros, got)
				}
			}
		}
	}
}

// compiledRule is a schema without references, ready to be asked.
func compiledRule(schema *document.Schema) *jsonschema.Schema {
	text, err := json.Marshal(schema)
	if err != nil {
		panic(err)
	}
	read, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		panic(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("rule.json", read); err != nil {
		panic(err)
	}
	return compiler.MustCompile("rule.json")
}

// sample is an object with something in the fields given and, if asked for, zeros
// in all others that the service writes out.
func sample(message protoreflect.MessageDescriptor, given map[string]bool, zeros bool) map[string]any {
	object := map[string]any{}
	for i := range message.Fields().Len() {
		field := message.Fields().Get(i)
		var zero, something any
		switch {
		case field.IsList():
			zero, something = []any{}, []any{1.0}
		case field.Message() != nil:
			something = map[string]any{}
		case field.Enum() != nil:
			zero, something = string(field.Enum().Values().Get(0).Name()), string(field.Enum().Values().Get(1).Name())
		case field.Kind() == protoreflect.StringKind:
			zero, something = "", "a"
		case field.Kind() == protoreflect.BoolKind:
			zero, something = false, true
		default:
			zero, something = 0.0, 1.0
		}
		switch {
		case given[string(field.Name())] && zeros && field.HasPresence() && zero != nil:
			object[string(field.Name())] = zero // given all the same
		case given[string(field.Name())]:
			object[string(field.Name())] = something
		case zeros && !field.HasPresence():
			object[string(field.Name())] = zero
		}
	}
	return object
}

// enum checks the schema of an enum.
func (c *checker) enum(name string, enum protoreflect.EnumDescriptor) {
	schema := c.d.Components.Schemas[name]
	if schema == nil {
		c.add("no schema %s", name)
		return
	}
	c.same(name+" type", schema.Type, "string")
	c.described(name, schema.Description, enum)
	if len(schema.Enum) != enum.Values().Len() || len(schema.EnumDescriptions) != enum.Values().Len() {
		c.add("%s has %d values, %d described, want %d", name, len(schema.Enum), len(schema.EnumDescriptions), enum.Values().Len())
		return
	}
	for i := range schema.Enum {
		value := enum.Values().Get(i)
		c.same(name+" value", schema.Enum[i], string(value.Name()))
		c.described(name+" value", schema.EnumDescriptions[i], value)
		c.described(name+" value", schema.Description, value)
		if !strings.Contains(schema.Description, "`"+string(value.Name())+"`") {
			c.add("%s does not say what %s is", name, value.Name())
		}
	}
}

// choices are fields of which one may be given, or must.
type choices []choice

type choice struct {
	fields   []string
	required bool
}

// choicesOf are those of the oneofs of a message and, of a question, its rules.
func choicesOf(message protoreflect.MessageDescriptor, bounded bool) choices {
	list := make(choices, 0, message.Oneofs().Len())
	for i := range message.Oneofs().Len() {
		oneof := message.Oneofs().Get(i)
		if oneof.IsSynthetic() {
			continue
		}
		rules, _ := proto.GetExtension(oneof.Options(), validate.E_Oneof).(*validate.OneofRules)
		var fields []string
		for j := range oneof.Fields().Len() {
			fields = append(fields, string(oneof.Fields().Get(j).Name()))
		}
		list = append(list, choice{fields, rules.GetRequired() && bounded})
	}
	rules, _ := proto.GetExtension(message.Options(), validate.E_Message).(*validate.MessageRules)
	for _, rule := range rules.GetOneof() {
		if bounded {
			list = append(list, choice{rule.GetFields(), rule.GetRequired()})
		}
	}
	return list
}

// legal reports whether all choices are kept by what is given.
func (list choices) legal(given map[string]bool) bool {
	for _, one := range list {
		n := 0
		for _, field := range one.fields {
			if given[field] {
				n++
			}
		}
		if n > 1 || n == 0 && one.required {
			return false
		}
	}
	return true
}
