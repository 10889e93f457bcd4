package main

import (
	"fmt"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/document"
)

// writeParameters makes the parameters of every GET from the schema of its
// question, after the bounds have been written into that. The plugin takes a
// field for required although what it lies in may be left out.
func writeParameters(d *document.Document, w *wire) error {
	for path, item := range d.Paths {
		if item.Get == nil {
			continue
		}
		method, err := w.method("GET", path)
		if err != nil {
			return err
		}
		item.Get.Parameters = nil
		question := d.Components.Schemas[string(method.Input().FullName())]
		if question == nil {
			return fmt.Errorf("GET %s: its question has no schema", path)
		}
		of := parameters{d: d, w: w, to: item.Get}
		if err := of.add(question, method.Input(), "", true); err != nil {
			return err
		}
	}
	return nil
}

// parameters are those of one operation.
type parameters struct {
	d  *document.Document
	w  *wire
	to *document.Operation
}

// add adds the fields of a message that lies at prefix. needed says that the message
// itself must be given. A list of objects does not fit in a query string; one of
// scalars does, by naming the parameter several times. What is refused without such
// a list of objects is not offered either.
func (p parameters) add(message *document.Schema, of protoreflect.MessageDescriptor, prefix string, needed bool) error {
	required := map[string]bool{}
	for _, name := range message.Required {
		required[name] = true
	}
	for name, property := range message.Properties.All() {
		field := of.Fields().ByName(protoreflect.Name(name))
		with, err := p.w.bounds.Needs(field)
		if err != nil {
			return err
		}
		if listsObjects(field) || with != nil && listsObjects(with) {
			continue
		}
		if part := part(p.d, property); part != nil {
			if err := p.add(part, field.Message(), prefix+name+".", needed && required[name]); err != nil {
				return err
			}
			continue
		}
		schema, err := p.offered(property, field)
		if err != nil {
			return err
		}
		description := property.Description
		if required[name] && !needed {
			description += fmt.Sprintf(" Required when any other field of `%s` is given.", strings.TrimSuffix(prefix, "."))
		}
		p.to.Parameters = append(p.to.Parameters, document.Parameter{
			Name: prefix + name, In: "query", Description: description, Required: needed && required[name],
			// That is the form anyway, but some generators must be told.
			Explode: property.Type == "array",
			Schema:  schema,
		})
	}
	return nil
}

// offered is the schema of a property as a parameter: without its words, which stand
// beside it, and without values of an enum that need what no query string can hold.
func (p parameters) offered(property *document.Schema, field protoreflect.FieldDescriptor) (*document.Schema, error) {
	schema := property.Clone()
	schema.Description = ""
	enum := p.d.Components.Schemas[property.Target()]
	if field.Enum() == nil || enum == nil {
		return schema, nil
	}
	if len(enum.EnumDescriptions) != len(enum.Enum) {
		return nil, fmt.Errorf("%s: its values are not described yet", property.Target())
	}
	some := &document.Schema{Type: enum.Type, Default: property.Default, Not: property.Not}
	for i := range field.Enum().Values().Len() {
		with, err := p.w.bounds.ValueNeeds(field, field.Enum().Values().Get(i))
		if err != nil {
			return nil, err
		}
		if with == nil || !listsObjects(with) {
			some.Enum = append(some.Enum, enum.Enum[i])
			some.EnumDescriptions = append(some.EnumDescriptions, enum.EnumDescriptions[i])
		}
	}
	if len(some.Enum) == len(enum.Enum) {
		return schema, nil
	}
	return some, nil
}

func listsObjects(field protoreflect.FieldDescriptor) bool {
	return field.IsList() && field.Message() != nil
}

// part is the object that a schema points to, nil if it points to none.
func part(d *document.Document, schema *document.Schema) *document.Schema {
	if target := d.Components.Schemas[schema.Target()]; target != nil && target.Type == "object" {
		return target
	}
	return nil
}
