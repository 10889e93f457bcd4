package stitch

import (
	"go/parser"
	gotoken "go/token"
	"os"
	"strings"
	"testing"
)

// TestStandardLibraryOnly: this package is the ground floor, nothing of the
// house lies under it. Import paths of other modules have a dot in their first
// part, as has this module's own; examples import the package itself.
func TestStandardLibraryOnly(t *testing.T) {
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".go") {
			continue
		}
		parsed, err := parser.ParseFile(gotoken.NewFileSet(), f.Name(), nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		for _, spec := range parsed.Imports {
			if spec.Path.Value == `"example.com/knitmath/knitmath/stitch"` {
				continue
			}
			if first, _, _ := strings.Cut(spec.Path.Value, "/"); strings.Contains(first, ".") {
				t.Errorf("%s imports %s", f.Name(), spec.Path.Value)
			}
		}
	}
}
