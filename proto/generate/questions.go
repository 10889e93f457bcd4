package main

import (
	"fmt"

	"example.com/knitmath/proto/document"
)

// jsonType is the media type of questions, answers and errors.
const jsonType = "application/json"

// nameQuestions makes a component of every question. The plugin writes questions
// out in place, and clients generated from that have no name for them. It also
// says what the service does with a field that it does not know.
func nameQuestions(d *document.Document, w *wire) error {
	closed := false
	for path, item := range d.Paths {
		for verb, operation := range item.Operations() {
			method, err := w.method(verb, path)
			if err != nil {
				return err
			}
			if verb != "POST" {
				continue
			}
			media, ok := operation.RequestBody.Content[jsonType]
			if !ok || media.Schema.Ref != "" {
				return fmt.Errorf("%s %s: want a body that is written out", verb, path)
			}
			name := string(method.Input().FullName())
			media.Schema.Description = comment(method.Input())
			d.Components.Schemas[name] = media.Schema
			operation.RequestBody.Content = map[string]document.Media{jsonType: {Schema: document.RefTo(name)}}
		}
	}
	for _, object := range w.objects(d) {
		if !object.answer {
			object.schema.AdditionalProperties = &closed
		}
	}
	return nil
}
