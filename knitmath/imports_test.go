package knitmath

import (
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// The arithmetic imports the standard library alone, and the instruction model
// below it, which imports nothing of the house. A package of the standard library
// has no dot in the first part of its path.
func TestImportsAreStandardLibrary(t *testing.T) {
	const below = "example.com/knitmath/knitmath/"
	for dir, allowed := range map[string][]string{
		".":       {below + "pattern", below + "stitch"},
		"pattern": {below + "stitch"},
		"stitch":  nil,
	} {
		files, err := filepath.Glob(filepath.Join(dir, "*.go"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no files in %s: %v", dir, err)
		}
		for _, file := range files {
			if strings.HasSuffix(file, "_test.go") {
				continue
			}
			src, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			parsed, err := parser.ParseFile(token.NewFileSet(), file, src, parser.ImportsOnly)
			if err != nil {
				t.Fatal(err)
			}
			for _, spec := range parsed.Imports {
				path, err := strconv.Unquote(spec.Path.Value)
				if err != nil {
					t.Fatal(err)
				}
				first, _, _ := strings.Cut(path, "/")
				if strings.Contains(first, ".") && !slices.Contains(allowed, path) {
					t.Errorf("%s imports %s", file, path)
				}
			}
		}
	}
}
