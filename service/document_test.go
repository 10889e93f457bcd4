package service

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"example.com/knitmath/gen/openapi"
	"example.com/knitmath/knitmath/fault"
)

// servedDocument is the OpenAPI document, as much of it as is asked here, and its
// schemas, ready to be held to what the service sends.
type servedDocument struct {
	Info  struct{ Description string }
	Paths map[string]map[string]struct {
		RequestBody struct {
			Content map[string]struct{ Example json.RawMessage }
		}
		Parameters []struct {
			Name, In string
			Schema   struct{ Enum []string }
		}
		Responses map[string]struct{ Content map[string]any }
	}
	Components struct {
		Schemas map[string]struct {
			Properties map[string]struct {
				Known []fault.Reason `json:"x-extensible-enum"`
			}
		}
		Responses map[string]struct {
			Content map[string]struct{ Example json.RawMessage }
		}
	}
	compiler *jsonschema.Compiler
}

func readDocument(t *testing.T) *servedDocument {
	t.Helper()
	d := &servedDocument{compiler: jsonschema.NewCompiler()}
	packed, err := newPackedDocument(jsonType, openapi.Gzip)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(packed.plain, d); err != nil {
		t.Fatal(err)
	}
	whole, err := jsonschema.UnmarshalJSON(bytes.NewReader(packed.plain))
	if err != nil {
		t.Fatal(err)
	}
	if err := d.compiler.AddResource("knitmath.json", whole); err != nil {
		t.Fatal(err)
	}
	return d
}

// misfit says how a value differs from a schema, "" if it fits.
func (d *servedDocument) misfit(t *testing.T, schema string, value []byte) string {
	t.Helper()
	return d.misfitAt(t, "/components/schemas/"+schema, value)
}

// misfitAt is the same for the schema at a place of the document.
func (d *servedDocument) misfitAt(t *testing.T, place string, value []byte) string {
	t.Helper()
	compiled, err := d.compiler.Compile("knitmath.json#" + place)
	if err != nil {
		t.Fatal(err)
	}
	read, err := jsonschema.UnmarshalJSON(bytes.NewReader(value))
	if err != nil {
		t.Fatalf("%v\n%s", err, value)
	}
	if err := compiled.Validate(read); err != nil {
		return err.Error()
	}
	return ""
}

// Questions, answers and refusals of all wire cases are as the document says, and
// refusals give no reason that it does not know.
func TestWireCasesFitTheDocument(t *testing.T) {
	server, document := start(t), readDocument(t)
	known := document.Components.Schemas["FieldViolation"].Properties["reason"].Known
	for path, file := range readWireFiles(t) {
		m := findMethod(t, file.Method)
		for _, c := range file.Cases {
			body, err := json.Marshal(merge(file.Base, spellOut(c.Change).(map[string]any)))
			if err != nil {
				t.Fatal(err)
			}
			got := server.send(t, "POST", m.path, string(body))
			if misfit := document.misfit(t, "Status", got.body); misfit != "" {
				t.Errorf("%s, %s: the refusal is not as the document says: %s", path, c.Name, misfit)
			}
			for _, violation := range violations(got.status(t)) {
				if reason := fault.Reason(violation[strings.LastIndex(violation, " ")+1:]); !slices.Contains(known, reason) {
					t.Errorf("%s, %s: the document does not know the reason %s", path, c.Name, reason)
				}
			}
		}
		if file.Cases != nil {
			continue
		}
		if misfit := document.misfit(t, string(m.desc.Input().Name()), file.Request); misfit != "" {
			t.Errorf("%s: the question is not as the document says: %s", path, misfit)
		}
		got := server.send(t, "POST", m.path, string(file.Request))
		if misfit := document.misfit(t, string(m.desc.Output().Name()), got.body); misfit != "" {
			t.Errorf("%s: the answer is not as the document says: %s", path, misfit)
		}
	}
}

// The document's example of every question is answered, and as the document says.
func TestExamplesOfTheDocumentAreAnswered(t *testing.T) {
	server, document := start(t), readDocument(t)
	for path, r := range mustReadRoutes(t) {
		example := document.Paths[path]["post"].RequestBody.Content[jsonType].Example
		if example == nil {
			t.Errorf("%s has no example", path)
			continue
		}
		if misfit := document.misfit(t, string(r.question.Name()), example); misfit != "" {
			t.Errorf("%s: the example is not as the document says: %s", path, misfit)
		}
		if got := server.send(t, "POST", path, string(example)); got.code != 200 {
			t.Errorf("%s: HTTP %d to the document's own example: %s", path, got.code, got.body)
		}
	}
}

// The errors of the JSON face itself are as the document says, and its examples
// are errors as the service sends them.
func TestErrorsFitTheDocument(t *testing.T) {
	server, document := start(t), readDocument(t)
	reasons := document.Components.Schemas["ErrorInfo"].Properties["reason"].Known
	for _, c := range []struct{ method, path, body, contentType string }{
		{"POST", castOnPath, `{"no_such_field": 1`, jsonType},
		{"POST", castOnPath, `{"no_such_field": 1}`, jsonType},
		{"POST", castOnPath, castOnBody, "text/plain"},
		{"POST", castOnPath, strings.Repeat(" ", maxQuestionBytes+1), jsonType},
		{"POST", "/v1/no-such-path", castOnBody, jsonType},
		{"PUT", castOnPath, castOnBody, jsonType},
		{"GET", castOnPath + "?no_such_field=1", "", ""},
	} {
		got := server.send(t, c.method, c.path, c.body, "Content-Type", c.contentType)
		if misfit := document.misfit(t, "Status", got.body); misfit != "" || got.code < 400 {
			t.Errorf("%s %s: HTTP %d: %s", c.method, c.path, got.code, misfit)
		}
		if reason := fault.Reason(errorInfo(got.status(t))); !slices.Contains(reasons, reason) {
			t.Errorf("%s %s: the document does not know the reason %q", c.method, c.path, reason)
		}
	}
	for name, response := range document.Components.Responses {
		for _, media := range response.Content {
			if misfit := document.misfit(t, "Status", media.Example); misfit != "" {
				t.Errorf("the example of %s: %s", name, misfit)
			}
			if reason := errorInfo(reply{body: media.Example}.status(t)); !slices.Contains(reasons, fault.Reason(reason)) {
				t.Errorf("the example of %s gives the reason %q, or a domain that is not ours", name, reason)
			}
		}
	}
}

// What is no question is described too: the release, tables as CSV, and what was kept.
func TestOtherAnswersFitTheDocument(t *testing.T) {
	server, document := start(t), readDocument(t)
	got := server.send(t, "GET", "/version", "")
	if misfit := document.misfitAt(t, "/paths/~1version/get/responses/200/content/application~1json/schema", got.body); misfit != "" {
		t.Errorf("/version: %s", misfit)
	}
	tables := 0
	for path, r := range mustReadRoutes(t) {
		for verb, operation := range document.Paths[path] {
			if _, described := operation.Responses["200"].Content[csvType]; described != r.table {
				t.Errorf("%s %s comes as CSV: %v, and the document says %v", verb, path, r.table, described)
			}
			if _, kept := operation.Responses["304"]; kept != (verb == "get") {
				t.Errorf("%s %s may be kept: %v", verb, path, kept)
			}
		}
		if r.table {
			tables++
			if got := server.send(t, "GET", path, "", "Accept", csvType); !strings.HasPrefix(got.header.Get("Content-Type"), csvType) {
				t.Errorf("GET %s as CSV is %s", path, got.header.Get("Content-Type"))
			}
		}
	}
	if tables == 0 {
		t.Error("no tables")
	}
}
