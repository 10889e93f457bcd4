package main

import (
	"fmt"
	"slices"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
)

// refusalReasons are the reasons of whole refusals, in ErrorInfo, which no .proto
// file of the project describes. A test of the service asks for them.
var refusalReasons = []compile.Reason{
	{Name: "INVALID_INPUT", Meaning: "the question has faults; BadRequest lists them."},
	{Name: "UNKNOWN_PATH", Meaning: "no such path."},
	{Name: "UNKNOWN_METHOD", Meaning: "over gRPC, there is no such method or service; server reflection lists them all."},
	{Name: "METHOD_NOT_ALLOWED", Meaning: "the path answers other HTTP methods; the header Allow lists them."},
	{Name: "BODY_TOO_LARGE", Meaning: "the body is larger than a question may be."},
	{Name: "UNSUPPORTED_MEDIA_TYPE", Meaning: "the body is not said to be application/json in UTF-8, or is encoded."},
	{Name: "KEY_REQUIRED", Meaning: "a key is needed, and none was shown."},
	{Name: "KEY_UNKNOWN", Meaning: "there is no such key."},
	{Name: "KEY_MALFORMED", Meaning: "two keys were shown, or one by another scheme than Bearer."},
	{Name: "ORIGIN_NOT_ALLOWED", Meaning: "the key is for other pages than the one that asks."},
	{Name: "RATE_LIMITED", Meaning: "this key or this address has made too many calls; ask again later."},
	{Name: "BUDGET_SPENT", Meaning: "this key or this address has asked for too much work; ask again later, or for less at a time."},
	{Name: "OVERLOADED", Meaning: "more is asked by all callers than can be answered at once; ask again later."},
	{Name: "RESOURCE_EXHAUSTED", Meaning: "too much is asked at once; ask again later."},
	{Name: "UNAVAILABLE", Meaning: "the service is starting, stopping or overloaded; ask again later."},
	{Name: "DEADLINE_EXCEEDED", Meaning: "the answer was not ready in time."},
	{Name: "CANCELLED", Meaning: "the caller hung up."},
	{Name: "INTERNAL", Meaning: "a fault of the service, of which nothing more is said here."},
}

// violationReasons are the reasons of violations: those that the comment of the
// package describes.
func (w *wire) violationReasons() []compile.Reason {
	return slices.DeleteFunc(slices.Clone(w.reasons), func(r compile.Reason) bool { return r.Where != string(w.pkg) })
}

// listReasons gives the reasons of notices and findings as values that are known
// today. What they mean stands where they are sent.
func listReasons(d *document.Document, w *wire) error {
	for _, r := range w.reasons {
		if r.Where == string(w.pkg) {
			continue
		}
		found, err := w.files.FindDescriptorByName(w.pkg + "." + protoreflect.FullName(r.Where))
		if err != nil {
			return err
		}
		field, ok := found.(protoreflect.FieldDescriptor)
		if !ok {
			return fmt.Errorf("%s is described at %s, which is no field", r.Name, r.Where)
		}
		// A list of notices has them in its items, a reason is itself the place.
		if field.Message() != nil {
			field = field.Message().Fields().ByName("reason")
		}
		var property *document.Schema
		if field != nil {
			if message := d.Components.Schemas[string(field.Parent().FullName())]; message != nil {
				property = message.Properties.Get(string(field.Name()))
			}
		}
		if property == nil {
			return fmt.Errorf("%s is described at %s, which has no reason", r.Name, r.Where)
		}
		if !slices.Contains(property.ExtensibleEnum, r.Name) {
			property.ExtensibleEnum = append(property.ExtensibleEnum, r.Name)
		}
	}
	return nil
}

// reasonSchema is a reason of the kinds listed, and of others that may come.
func reasonSchema(list []compile.Reason) *document.Schema {
	text := &strings.Builder{}
	text.WriteString("Why, in one word. Others may be added.\n")
	schema := &document.Schema{Type: "string"}
	for _, r := range list {
		schema.ExtensibleEnum = append(schema.ExtensibleEnum, r.Name)
		_, _ = fmt.Fprintf(text, "\n- `%s`: %s", r.Name, r.Meaning)
	}
	schema.Description = text.String()
	return schema
}
