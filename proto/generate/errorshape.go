package main

import "example.com/knitmath/proto/document"

// detailType comes before the name of a message in a detail of an error.
const detailType = "type.googleapis.com/google.rpc."

// The component of every error, as the plugin names it.
const statusSchema = "google.rpc.Status"

// detailKinds are the messages of google.rpc that errors carry, in their order.
var detailKinds = []string{"ErrorInfo", "BadRequest", "RetryInfo"}

// errorSchemas are the schemas of errors: google.rpc.Status with the details that
// the service sends, written out as it writes them.
func errorSchemas(w *wire) map[string]*document.Schema {
	schemas := map[string]*document.Schema{
		statusSchema: wholeObject("An error: a google.rpc.Status, the same that gRPC sends in its trailer.",
			field{"code", &document.Schema{Type: "integer", Format: "int32",
				Description: "The code of gRPC: 3 is INVALID_ARGUMENT, 5 NOT_FOUND, 8 RESOURCE_EXHAUSTED, " +
					"12 UNIMPLEMENTED, 13 INTERNAL, 14 UNAVAILABLE."}},
			field{"message", text("What is wrong, in a sentence. Programs look at the details.")},
			field{"details", &document.Schema{Type: "array",
				Description: "An ErrorInfo first; then, for a question with faults, a BadRequest; and a RetryInfo where asking again later can help. " +
					"Kinds may be added: pass over those you do not know.",
				Items: detail()}},
		),
		"google.rpc.ErrorInfo": detailObject("ErrorInfo", "Why the question was refused, for programs.",
			field{"reason", reasonSchema(refusalReasons)},
			field{"domain", text("Whose reasons these are: the same in every error of this service.")},
		),
		"google.rpc.BadRequest": detailObject("BadRequest", "The faults of a question, all at once: of more than 50, or of long ones, the first.",
			field{"field_violations", &document.Schema{Type: "array", Description: "The faults, in the order of the fields.",
				Items: document.RefTo("google.rpc.FieldViolation")}},
		),
		"google.rpc.FieldViolation": wholeObject("A fault of one field.",
			field{"field", text("The path of the field, as in the question: `items[2].count`, counting from 0. Empty for the question as a whole.")},
			field{"description", text("What is wrong, and what would be right, in a sentence.")},
			field{"reason", reasonSchema(w.violationReasons())},
		),
		"google.rpc.RetryInfo": detailObject("RetryInfo", "When to ask again.",
			field{"retry_delay", &document.Schema{Type: "string", Pattern: `^[0-9]+(\.[0-9]+)?s$`, Examples: []any{"1s"},
				Description: "How long to wait first, in seconds."}},
		),
	}
	// An empty path is left out, as empty fields of errors are.
	violation := schemas["google.rpc.FieldViolation"]
	violation.Required = []string{"description", "reason"}
	return schemas
}

type field struct {
	name   string
	schema *document.Schema
}

// wholeObject is an object all of whose fields are sent.
func wholeObject(description string, fields ...field) *document.Schema {
	schema := &document.Schema{Type: "object", Description: description}
	for _, f := range fields {
		schema.Properties.Set(f.name, f.schema)
		schema.Required = append(schema.Required, f.name)
	}
	return schema
}

// detailObject is one kind of detail, which says so in its first field.
func detailObject(kind, description string, fields ...field) *document.Schema {
	return wholeObject(description, append([]field{{"@type", &document.Schema{Type: "string", Const: detailType + kind}}}, fields...)...)
}

// detail is any kind of detail.
func detail() *document.Schema {
	any := &document.Schema{Discriminator: &document.Discriminator{PropertyName: "@type", Mapping: map[string]string{}}}
	for _, kind := range detailKinds {
		ref := document.RefTo("google.rpc." + kind)
		any.OneOf = append(any.OneOf, ref)
		any.Discriminator.Mapping[detailType+kind] = ref.Ref
	}
	return any
}

func text(description string) *document.Schema {
	return &document.Schema{Type: "string", Description: description}
}
