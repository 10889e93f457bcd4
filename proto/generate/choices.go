package main

import (
	"example.com/knitmath/proto/bounds"
	"example.com/knitmath/proto/document"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// writeChoices says of which fields only one may be given. The plugin writes a
// oneof as alternatives that repeat the fields, of which generators of clients
// make unions that nobody can build a value of. What is forbidden says the same
// and leaves the type of the object alone.
func writeChoices(d *document.Document, w *wire) error {
	for _, object := range w.objects(d) {
		choices, err := w.bounds.Choices(object.message)
		if err != nil {
			return err
		}
		object.schema.OneOf = nil
		var forbidden []*document.Schema
		for _, choice := range choices {
			if object.answer && w.asked[object.message.FullName()] {
				if choice.Rule { // for questions, like bounds
					continue
				}
				choice.Required = false
			}
			forbidden = append(forbidden, unlike(object.message, choice)...)
		}
		switch len(forbidden) {
		case 0:
		case 1:
			object.schema.Not = forbidden[0]
		default:
			object.schema.Not = &document.Schema{AnyOf: forbidden}
		}
	}
	return nil
}

// unlike lists what an object may not be like: have two fields of the choice or,
// if one is required, none.
func unlike(message protoreflect.MessageDescriptor, choice bounds.Choice) []*document.Schema {
	var list []*document.Schema
	none := &document.Schema{Not: &document.Schema{}}
	for i, field := range choice.Fields {
		none.Not.AnyOf = append(none.Not.AnyOf, having(message, field))
		for _, other := range choice.Fields[i+1:] {
			list = append(list, having(message, field, other))
		}
	}
	if choice.Required {
		list = append(list, none)
	}
	return list
}

// having is an object that has the fields. A field that cannot be told from one
// that is left out when it is 0, "" or empty is had only if it is something else:
// answers write such fields out.
func having(message protoreflect.MessageDescriptor, names ...string) *document.Schema {
	schema := &document.Schema{Required: names}
	for _, name := range names {
		field := message.Fields().ByName(protoreflect.Name(name))
		switch {
		case field.HasPresence():
		case field.IsList():
			one := uint64(1)
			schema.Properties.Set(name, &document.Schema{MinItems: &one})
		case field.Enum() != nil:
			schema.Properties.Set(name, &document.Schema{Not: &document.Schema{Const: string(field.Enum().Values().ByNumber(0).Name())}})
		default:
			schema.Properties.Set(name, &document.Schema{Not: &document.Schema{Const: field.Default().Interface()}})
		}
	}
	return schema
}
