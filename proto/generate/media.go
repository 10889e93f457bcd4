package main

import (
	"errors"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/document"
)

// The media type of tables for spreadsheets, and the name of the answer to who has it already.
const (
	csvType     = "text/csv"
	notModified = "NotModified"
)

// writeMedia says in which forms answers come: tables also as CSV, and answers to GET with a
// tag by which a caller asks whether what was kept still holds.
func writeMedia(d *document.Document, w *wire) error {
	if d.Components.Responses == nil {
		return errors.New("the errors are not there yet")
	}
	for path, item := range d.Paths {
		for verb, operation := range item.Operations() {
			method, err := w.method(verb, path)
			if err != nil {
				return err
			}
			if isTable(method.Output()) {
				operation.Responses["200"].Content[csvType] = document.Media{Schema: &document.Schema{Type: "string",
					Description: "The rows alone, by RFC 4180, for callers who would rather accept it than JSON: " +
						"a header of the names of the fields, then a line a row."}}
			}
			if verb == "GET" {
				keep(operation)
			}
		}
	}
	d.Components.Responses[notModified] = &document.Response{
		Description: "What was kept still holds. It has no body.", Headers: keptHeaders()}
	return nil
}

// keep lets an answer to GET be kept.
func keep(operation *document.Operation) {
	operation.Parameters = append(operation.Parameters, document.Parameter{Name: "If-None-Match", In: "header",
		Description: "The ETag of an answer that was kept: 304 says that it still holds.", Schema: &document.Schema{Type: "string"}})
	operation.Responses["200"].Headers = keptHeaders()
	operation.Responses["304"] = &document.Response{Ref: "#/components/responses/" + notModified}
}

func keptHeaders() map[string]document.Header {
	return map[string]document.Header{
		"ETag": {Description: "A weak tag of the question, the form of the answer and the build. " +
			"A build of files that are in no commit sends none.",
			Schema: &document.Schema{Type: "string", Examples: []any{`W/"0f1e2d3c4b5a69788796a5b4"`}}},
		"Cache-Control": {Description: "How long the answer may be kept: a day.",
			Schema: &document.Schema{Type: "string", Examples: []any{"public, max-age=86400"}}},
	}
}

// isTable reports whether an answer is a list of rows that are all alike, which comes as CSV
// too: the service chooses by the same rule.
func isTable(answer protoreflect.MessageDescriptor) bool {
	rows := answer.Fields().ByName("rows")
	return rows != nil && listsObjects(rows) && strings.HasPrefix(string(answer.Name()), "List")
}
