package main

import (
	"fmt"
	"slices"

	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// ofAnswers ends the name of a message that questions hold too, as it is in
// answers: there all its fields are sent, and clients must let new ones pass.
const ofAnswers = "Answer"

// splitShared gives messages that lie both in questions and in answers a second
// schema, and lets the answers point to that.
func splitShared(d *document.Document, w *wire) error {
	shared := map[string]bool{}
	for _, object := range w.objects(d) {
		if name := object.name; !object.answer && w.answered[object.message.FullName()] {
			if d.Components.Schemas[name+ofAnswers] != nil {
				return fmt.Errorf("%s%s is taken", name, ofAnswers)
			}
			shared[name] = true
			d.Components.Schemas[name+ofAnswers] = object.schema.Clone()
		}
	}
	point := func(schema *document.Schema) {
		if shared[schema.Target()] {
			schema.SetTarget(schema.Target() + ofAnswers)
		}
	}
	for _, object := range w.objects(d) {
		if object.answer {
			object.schema.Walk(point)
		}
	}
	return nil
}

// requireWhatIsSent makes the fields that every answer has required: the service
// writes zeros and empty lists out, and of messages it is said whether they can be absent.
// This describes the whole answer, of which a caller may ask for less.
func requireWhatIsSent(d *document.Document, w *wire) error {
	for _, object := range w.objects(d) {
		if !object.answer {
			continue
		}
		object.schema.AdditionalProperties = nil
		object.schema.Required = nil
		for _, field := range fields(object.message) {
			sent, err := w.bounds.AlwaysSent(field)
			if err != nil {
				return err
			}
			if sent {
				object.schema.Required = append(object.schema.Required, string(field.Name()))
			}
		}
	}
	return nil
}

// orderProperties puts the properties of every object in the order of the .proto
// files, which is the order of the JSON. A property that is missing, or that no
// field stands behind, is a fault.
func orderProperties(d *document.Document, w *wire) error {
	for _, object := range w.objects(d) {
		var ordered document.Properties
		for _, field := range fields(object.message) {
			property := object.schema.Properties.Get(string(field.Name()))
			if property == nil {
				return fmt.Errorf("%s has no property", field.FullName())
			}
			ordered.Set(string(field.Name()), property)
		}
		for name := range object.schema.Properties.All() {
			if ordered.Get(name) == nil {
				return fmt.Errorf("%s has a property %q and no such field", object.name, name)
			}
		}
		object.schema.Properties = ordered
		slices.SortStableFunc(object.schema.Required, func(a, b string) int { return ordered.Index(a) - ordered.Index(b) })
	}
	return nil
}

// fields lists the fields of a message, in the order of the .proto file.
func fields(message protoreflect.MessageDescriptor) []protoreflect.FieldDescriptor {
	list := make([]protoreflect.FieldDescriptor, message.Fields().Len())
	for i := range list {
		list[i] = message.Fields().Get(i)
	}
	return list
}
