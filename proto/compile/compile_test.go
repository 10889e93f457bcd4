package compile_test

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/gen/openapi"
	"example.com/knitmath/proto/compile"
	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/types/descriptorpb"
)

// Where things lie, seen from this folder, and what to do about a failure.
const (
	sources = ".."
	image   = "../../gen/knitmath.binpb"
	remedy  = "gen/ is stale: run `go run ./proto/generate`"
)

// The committed image is what proto/ compiles to today, comments included.
func TestImageIsCurrent(t *testing.T) {
	data, err := os.ReadFile(image)
	if err != nil {
		t.Fatal(err)
	}
	committed := &descriptorpb.FileDescriptorSet{}
	if err := proto.Unmarshal(data, committed); err != nil {
		t.Fatal(err)
	}
	if !proto.Equal(compiled(t), committed) {
		t.Error(remedy)
	}
}

// The generated Go code was made from what proto/ compiles to today. It carries
// no comments, so those are left out of the comparison.
func TestGeneratedCodeIsCurrent(t *testing.T) {
	// Naming one of the package's files keeps the package linked in.
	_ = knitmathv1.File_knitmath_v1_gauge_proto
	want := map[string]bool{}
	for _, file := range own(compiled(t)) {
		want[file.GetName()] = true
		file.SourceCodeInfo = nil
		linked, err := protoregistry.GlobalFiles.FindFileByPath(file.GetName())
		if err != nil {
			t.Errorf("%v: %s", err, remedy)
			continue
		}
		if !proto.Equal(file, protodesc.ToFileDescriptorProto(linked)) {
			t.Errorf("%s: %s", file.GetName(), remedy)
		}
	}
	// The other way about: no code is left of a file that is gone.
	generated, err := filepath.Glob("../../gen/knitmath/v1/*.pb.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range generated {
		base := strings.TrimSuffix(strings.TrimSuffix(filepath.Base(name), ".pb.go"), "_grpc")
		if source := "knitmath/v1/" + base + ".proto"; !want[source] {
			t.Errorf("%s has no source %s: %s", name, source, remedy)
		}
	}
}

// The OpenAPI document has every HTTP binding and no other, and its properties
// are spelt as in proto/.
func TestOpenAPIIsCurrent(t *testing.T) {
	var document struct {
		Paths      map[string]map[string]struct{ OperationID string }
		Components struct {
			Schemas map[string]struct{ Properties map[string]any }
		}
	}
	if err := json.Unmarshal(openapi.JSON, &document); err != nil {
		t.Fatal(err)
	}
	got := map[string]bool{}
	for path, operations := range document.Paths {
		for verb := range operations {
			got[verb+" "+path] = true
		}
	}
	want := map[string]bool{}
	for _, file := range own(compiled(t)) {
		for _, service := range file.Service {
			for _, method := range service.Method {
				for _, binding := range bindings(t, method) {
					want[binding] = true
				}
			}
		}
		for _, message := range file.MessageType {
			// Requests may be written out in place, hence in no schema.
			schema, ok := document.Components.Schemas["knitmath.v1."+message.GetName()]
			if !ok {
				continue
			}
			var fields []string
			for _, field := range message.Field {
				fields = append(fields, field.GetName())
			}
			slices.Sort(fields)
			if properties := slices.Sorted(maps.Keys(schema.Properties)); !slices.Equal(properties, fields) {
				t.Errorf("%s has properties %q, want %q: %s", message.GetName(), properties, fields, remedy)
			}
		}
	}
	if !maps.Equal(got, want) {
		t.Errorf("operations\n%q, want\n%q: %s", slices.Sorted(maps.Keys(got)), slices.Sorted(maps.Keys(want)), remedy)
	}
}

// bindings lists the HTTP bindings of a method as "verb path".
func bindings(t *testing.T, method *descriptorpb.MethodDescriptorProto) []string {
	t.Helper()
	rule, ok := proto.GetExtension(method.Options, annotations.E_Http).(*annotations.HttpRule)
	if !ok || rule == nil {
		t.Fatalf("%s has no HTTP binding", method.GetName())
	}
	var list []string
	for _, r := range append([]*annotations.HttpRule{rule}, rule.AdditionalBindings...) {
		switch pattern := r.Pattern.(type) {
		case *annotations.HttpRule_Get:
			list = append(list, "get "+pattern.Get)
		case *annotations.HttpRule_Post:
			list = append(list, "post "+pattern.Post)
		default:
			t.Errorf("%s: a question is put by GET or POST, not %T", method.GetName(), pattern)
		}
	}
	return list
}

// A fault is reported with its place, and all faults are reported.
func TestDirReportsAllFaults(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := compile.Dir(dir); err == nil {
		t.Error("an empty folder compiled")
	}
	// The first has an unknown type, the second an unused import.
	write("a.proto", "syntax = \"proto3\";\nmessage A { Nothing nothing = 1; }\n")
	write("b.proto", "syntax = \"proto3\";\nimport \"google/api/http.proto\";\n")
	_, err := compile.Dir(dir)
	if err == nil {
		t.Fatal("faulty sources compiled")
	}
	for _, place := range []string{"a.proto:2:", "b.proto:2:"} {
		if !strings.Contains(err.Error(), place) {
			t.Errorf("no fault at %s in %q", place, err)
		}
	}
	// A file of the project's own is never taken from the generated code.
	write("a.proto", "syntax = \"proto3\";\nimport public \"knitmath/v1/gauge.proto\";\n")
	if err := os.Remove(filepath.Join(dir, "b.proto")); err != nil {
		t.Fatal(err)
	}
	if _, err := compile.Dir(dir); err == nil {
		t.Error("an import of a missing file compiled")
	}
}

func compiled(t *testing.T) *descriptorpb.FileDescriptorSet {
	t.Helper()
	set, err := compile.Dir(sources)
	if err != nil {
		t.Fatal(err)
	}
	return set
}

// own leaves the imports out of the set.
func own(set *descriptorpb.FileDescriptorSet) []*descriptorpb.FileDescriptorProto {
	return slices.DeleteFunc(set.File, func(file *descriptorpb.FileDescriptorProto) bool {
		return !strings.HasPrefix(file.GetName(), "knitmath/")
	})
}
