package compile_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/proto/bounds"
	"example.com/knitmath/proto/compile"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
)

// askedEnums are the fields that a question can have, at whatever depth, by the enum that
// they are of.
func askedEnums(files *protoregistry.Files) map[protoreflect.FullName][]protoreflect.FieldDescriptor {
	found := map[protoreflect.FullName][]protoreflect.FieldDescriptor{}
	eachAskedField(files, func(field protoreflect.FieldDescriptor) {
		if e := field.Enum(); e != nil {
			found[e.FullName()] = append(found[e.FullName()], field)
		}
	})
	return found
}

// What the value 0 of an enum is said to mean is true wherever that enum stands: it is
// never sent where no question takes it and no answer of the wire cases has it; it is
// refused where every question must say another; and a default that it names is that
// of every field, or it says that each field has its own.
func TestUnspecifiedSaysTheTruth(t *testing.T) {
	set, err := compile.Dir(sources)
	if err != nil {
		t.Fatal(err)
	}
	files, err := protodesc.NewFiles(set)
	if err != nil {
		t.Fatal(err)
	}
	sent, fields, reader := sentValues(t), askedEnums(files), bounds.NewReader(files)
	enums := 0
	files.RangeFiles(func(file protoreflect.FileDescriptor) bool {
		for i := range file.Enums().Len() {
			if e := file.Enums().Get(i); e.ParentFile().Package() == "knitmath.v1" {
				enums++
				checkUnspecified(t, reader, e, fields[e.FullName()], sent)
			}
		}
		return true
	})
	if enums == 0 {
		t.Error("no enum was found")
	}
}

func checkUnspecified(
	t *testing.T, reader bounds.Reader, e protoreflect.EnumDescriptor, fields []protoreflect.FieldDescriptor, sent map[string]bool,
) {
	t.Helper()
	zero := e.Values().Get(0)
	said := strings.ToLower(e.ParentFile().SourceLocations().ByDescriptor(zero).LeadingComments)
	mustSay := len(fields) > 0
	for _, field := range fields {
		b, err := reader.Field(field)
		if err != nil {
			t.Error(err)
			continue
		}
		mustSay = mustSay && b.Required
		if text, ok := b.Default.(string); ok && !named(said, strings.TrimPrefix(text, prefixOf(zero))) && !ownDefault(said) {
			t.Errorf("%s says %q, and the default of %s is %s", zero.Name(), said, field.FullName(), text)
		}
	}
	never := len(fields) == 0 && !sent[string(zero.Name())]
	if strings.Contains(said, "never sent") != never {
		t.Errorf("%s says %q: questions with it %d, sent %t", zero.Name(), said, len(fields), sent[string(zero.Name())])
	}
	if mustSay && !strings.Contains(said, "refused") {
		t.Errorf("%s says %q, and every question must say another", zero.Name(), said)
	}
}

// ownDefault tells whether every field has a default of its own, or none.
func ownDefault(said string) bool {
	return strings.Contains(said, "what the field says") || strings.Contains(said, "not said")
}

func prefixOf(zero protoreflect.EnumValueDescriptor) string {
	return strings.TrimSuffix(string(zero.Name()), "UNSPECIFIED")
}

// named tells whether a comment has a word that begins like one of a value's name.
func named(said, value string) bool {
	for word := range strings.SplitSeq(strings.ToLower(value), "_") {
		if strings.Contains(said, word[:min(4, len(word))]) {
			return true
		}
	}
	return false
}

// sentValues are the names of values that the answers of the wire cases have.
func sentValues(t *testing.T) map[string]bool {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/*/*.json")
	if err != nil || len(paths) == 0 {
		t.Fatal(paths, err)
	}
	sent := map[string]bool{}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range unspecified.FindAllString(string(text), -1) {
			sent[name] = true
		}
	}
	return sent
}

var unspecified = regexp.MustCompile(`[A-Z_]+_UNSPECIFIED`)
