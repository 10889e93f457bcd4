package main

import (
	"maps"
	"strings"

	"google.golang.org/grpc/codes"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
)

// refusal is an error as it comes with one HTTP status.
type refusal struct {
	status, name, description string
	code                      codes.Code
	reason, message           string
	// postOnly: for a body, which only a POST has.
	postOnly bool
	header   string
}

// refusals are the errors that every operation can have. The last is for all
// that is not foreseen.
var refusals = []refusal{
	{"400", "InvalidQuestion", "The question has faults: all of them, with path, reason and sentence.",
		codes.InvalidArgument, "INVALID_INPUT", "the question has 1 fault", false, ""},
	{"401", "KeyNeeded", "Where keys are asked for: none was shown, or none that is known. Never by default.",
		codes.Unauthenticated, "KEY_REQUIRED", "a key is needed, as Authorization: Bearer KEY or x-api-key: KEY", false, "WWW-Authenticate"},
	{"403", "NotThisPage", "The key is for other pages. Never by default.",
		codes.PermissionDenied, "ORIGIN_NOT_ALLOWED", "this key is for the pages it was made for", false, ""},
	{"404", "UnknownPath", "No such path.",
		codes.NotFound, "UNKNOWN_PATH", "no such path; /reference shows them, and /openapi.json lists them all", false, ""},
	{"405", "WrongMethod", "The path answers other HTTP methods.",
		codes.Unimplemented, "METHOD_NOT_ALLOWED", "this path answers POST", false, "Allow"},
	{"413", "BodyTooLarge", "The body is larger than a question may be.",
		codes.ResourceExhausted, "BODY_TOO_LARGE", "the body is too large", true, ""},
	{"415", "UnsupportedMediaType", "The body is not said to be JSON in UTF-8.",
		codes.InvalidArgument, "UNSUPPORTED_MEDIA_TYPE", "the body must be application/json", true, ""},
	{"429", "TooManyQuestions", "Too much is asked at once: ask again after the time named.",
		codes.ResourceExhausted, "OVERLOADED", "more is asked than can be answered at once; ask again later", false, "Retry-After"},
	{"503", "Unavailable", "The service is starting, stopping or overloaded: ask again after the time named.",
		codes.Unavailable, "UNAVAILABLE", "try again later", false, "Retry-After"},
	{"default", "OtherError", "Any other error, of the same form.",
		codes.Internal, "INTERNAL", "internal error", false, ""},
}

// headers are the headers that errors have.
var headers = map[string]document.Header{
	"Allow": {Description: "The methods that the path answers.",
		Schema: &document.Schema{Type: "string", Examples: []any{"GET, HEAD, POST"}}},
	"WWW-Authenticate": {Description: "That keys are shown by the scheme Bearer.",
		Schema: &document.Schema{Type: "string", Examples: []any{`Bearer realm="knitmath"`}}},
	"Retry-After": {Description: "How long to wait, in whole seconds.", Schema: &document.Schema{Type: "integer"}},
}

// writeErrors gives every operation the errors it can have, in the form in which
// they are sent. The plugin has one error, whose details it leaves open.
func writeErrors(d *document.Document, w *wire) error {
	maps.Copy(d.Components.Schemas, errorSchemas(w))
	d.Components.Responses = map[string]*document.Response{}
	for _, r := range refusals {
		response := &document.Response{
			Description: r.description,
			Content:     map[string]document.Media{jsonType: {Schema: document.RefTo(statusSchema), Example: r.example()}},
		}
		if r.header != "" {
			response.Headers = map[string]document.Header{r.header: headers[r.header]}
		}
		d.Components.Responses[r.name] = response
	}
	for _, item := range d.Paths {
		for verb, operation := range item.Operations() {
			operation.Responses = map[string]*document.Response{"200": operation.Responses["200"]}
			for _, r := range refusals {
				if verb == "POST" || !r.postOnly {
					operation.Responses[r.status] = &document.Response{Ref: "#/components/responses/" + r.name}
				}
			}
		}
	}
	return nil
}

// example is the error as it may be sent.
func (r refusal) example() any {
	details := []any{map[string]any{"@type": detailType + "ErrorInfo", "reason": r.reason, "domain": compile.Domain}}
	switch {
	case r.code == codes.InvalidArgument && !r.postOnly:
		details = append(details, map[string]any{"@type": detailType + "BadRequest", "field_violations": []any{
			map[string]any{"field": "gauge.rows", "description": "is missing or 0; must be from 1e-06 to 1000", "reason": "REQUIRED"},
		}})
	case strings.HasPrefix(r.header, "Retry"):
		details = append(details, map[string]any{"@type": detailType + "RetryInfo", "retry_delay": "1s"})
	}
	return map[string]any{"code": int(r.code), "message": r.message, "details": details}
}
