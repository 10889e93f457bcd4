package compile_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/proto/compile"
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
