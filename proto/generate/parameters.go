package main

import (
	"fmt"
	"strings"

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
		addParameters(d, item.Get, question, "", true)
	}
	return nil
}

// addParameters adds the fields of a message that lies at prefix. needed says
// that the message itself must be given. A list of objects does not fit in a query
// string; one of scalars does, by naming the parameter several times.
func addParameters(d *document.Document, to *document.Operation, message *document.Schema, prefix string, needed bool) {
	required := map[string]bool{}
	for _, name := range message.Required {
		required[name] = true
	}
	for name, property := range message.Properties.All() {
		if property.Type == "array" && part(d, property.Items) != nil {
			continue
		}
		if part := part(d, property); part != nil {
			addParameters(d, to, part, prefix+name+".", needed && required[name])
			continue
		}
		schema := property.Clone()
		schema.Description = ""
		description := property.Description
		if required[name] && !needed {
			description += fmt.Sprintf(" Required when any other field of `%s` is given.", strings.TrimSuffix(prefix, "."))
		}
		to.Parameters = append(to.Parameters, document.Parameter{
			Name: prefix + name, In: "query", Description: description, Required: needed && required[name],
			// That is the form anyway, but some generators must be told.
			Explode: property.Type == "array",
			Schema:  schema,
		})
	}
}

// part is the object that a schema points to, nil if it points to none.
func part(d *document.Document, schema *document.Schema) *document.Schema {
	if target := d.Components.Schemas[schema.Target()]; target != nil && target.Type == "object" {
		return target
	}
	return nil
}
