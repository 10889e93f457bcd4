package service

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/url"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/gen/openapi"
	"example.com/knitmath/knitmath/fault"
)

// servedDocument is the OpenAPI document, as much of it as is asked here, and its
// schemas, ready to be held to what the service sends.
type servedDocument struct {
	Paths map[string]map[string]struct {
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

// The parameters of every GET are the fields that the service takes in a query
// string: it knows each of them, and none of the others.
func TestParametersAreReadFromQueries(t *testing.T) {
	server, document := start(t), readDocument(t)
	for path, r := range mustReadRoutes(t) {
		if !r.get {
			continue
		}
		offered := map[string]bool{}
		for _, p := range document.Paths[path]["get"].Parameters {
			if p.In == "query" {
				offered[p.Name] = true
			}
		}
		for name, value := range queryPaths("", r.question, nil) {
			got := server.send(t, "GET", path+"?"+url.QueryEscape(name)+"="+value, "")
			refused := false
			if got.code != 200 {
				faults := violations(got.status(t))
				refused = slices.Contains(faults, name+" "+string(reasonUnknown)) ||
					needsList(r.question, name) && slices.Contains(faults, name+" "+string(fault.ReasonContradictory))
			}
			if refused == offered[name] {
				t.Errorf("GET %s?%s=%s: in the document: %v, and the service says HTTP %d %s", path, name, value, offered[name], got.code, got.body)
			}
			delete(offered, name)
		}
		if len(offered) > 0 {
			t.Errorf("GET %s: no such fields: %v", path, offered)
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

// needsList reports whether a field of a question means nothing without a list of
// objects, which no query string holds.
func needsList(question protoreflect.MessageDescriptor, name string) bool {
	fd := question.Fields().ByName(protoreflect.Name(name))
	return fd != nil && proto.GetExtension(fd.Options(), knitmathv1.E_Needs).(string) != ""
}

// No value of an enum is offered in a query string that cannot be asked for there: each
// of the others is one that the service knows, and what is left out wants a list.
func TestValuesOfQueriesCanBeAsked(t *testing.T) {
	server, document := start(t), readDocument(t)
	left := 0
	for path, r := range mustReadRoutes(t) {
		for _, p := range document.Paths[path]["get"].Parameters {
			fd := r.question.Fields().ByName(protoreflect.Name(p.Name))
			if fd == nil || fd.Enum() == nil || p.Schema.Enum == nil {
				continue
			}
			for i := range fd.Enum().Values().Len() {
				value := fd.Enum().Values().Get(i)
				needs, _ := proto.GetExtension(value.Options(), knitmathv1.E_ValueNeeds).(string)
				got := server.send(t, "GET", path+"?"+p.Name+"="+string(value.Name()), "")
				faults := violations(got.status(t))
				wants := needs != "" && slices.Contains(faults, needs+" "+string(fault.ReasonRequired))
				refused := wants || slices.Contains(faults, p.Name+" "+string(fault.ReasonUnknownValue))
				if offered := slices.Contains(p.Schema.Enum, string(value.Name())); offered == refused {
					t.Errorf("GET %s?%s=%s: in the document: %v, and the service says %s", path, p.Name, value.Name(), offered, got.body)
				}
				if wants {
					left++
				}
			}
		}
	}
	if left != 2 {
		t.Errorf("%d values are left out of the document; of today's only a yoke's own schedule and a solid's own profile have to be", left)
	}
}

func mustReadRoutes(t *testing.T) map[string]route {
	t.Helper()
	routes, err := readRoutes()
	if err != nil {
		t.Fatal(err)
	}
	return routes
}

// queryPaths are all fields of a question, lists and objects too, each with a
// value of its kind.
func queryPaths(prefix string, md protoreflect.MessageDescriptor, above []protoreflect.FullName) map[string]string {
	paths := map[string]string{}
	for i := range md.Fields().Len() {
		fd := md.Fields().Get(i)
		name := prefix + string(fd.Name())
		switch {
		case fd.Message() != nil && slices.Contains(above, fd.Message().FullName()): // a tree
		case fd.Message() != nil:
			paths[name] = "1"
			for below, value := range queryPaths(name+".", fd.Message(), append(above, md.FullName())) {
				paths[below] = value
			}
		case fd.Kind() == protoreflect.EnumKind:
			paths[name] = fmt.Sprint(fd.Enum().Values().Get(0).Name())
		case fd.Kind() == protoreflect.BoolKind:
			paths[name] = "true"
		case fd.Kind() == protoreflect.StringKind:
			paths[name] = "summary" // also a part of every answer
		default:
			paths[name] = "1"
		}
	}
	return paths
}
