package compile_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/proto/compile"
)

// Reasons are an interface: every constant of the code is described in a comment
// of the proto files, where it is sent, and no description is left over from a
// reason that nobody gives any more.
func TestEveryReasonIsDescribed(t *testing.T) {
	reasons, err := compile.Reasons(compiled(t), "knitmath")
	if err != nil {
		t.Fatal(err)
	}
	// Violations are described above the package of report.proto: their message
	// is Google's. Notices and findings are described at their field.
	violations, remarks := map[string]bool{}, map[string]bool{}
	for _, r := range reasons {
		if len(r.Meaning) < 20 || !strings.HasSuffix(r.Meaning, ".") {
			t.Errorf("%s at %s: %q is no description", r.Name, r.Where, r.Meaning)
		}
		if strings.HasPrefix(r.Where, "knitmath.") {
			violations[r.Name] = true
		} else {
			remarks[r.Name] = true
		}
	}
	given := reasonsOfTheCode(t)
	for kind, described := range map[string]map[string]bool{"fault": violations, "report": remarks} {
		if len(given[kind]) == 0 {
			t.Errorf("no constant of type %s.Reason was found", kind)
		}
		for name := range given[kind] {
			if !described[name] {
				t.Errorf("%s, a %s.Reason, is described in no proto comment", name, kind)
			}
		}
		for name := range described {
			if !given[kind][name] {
				t.Errorf("%s is described and no %s.Reason", name, kind)
			}
		}
	}
}

// reasonsOfTheCode are the constants of all rooms and the service, by the room of
// their type.
func reasonsOfTheCode(t *testing.T) map[string]map[string]bool {
	t.Helper()
	given := map[string]map[string]bool{"fault": {}, "report": {}}
	for _, pattern := range []string{"../../knitmath/*/*.go", "../../service/*.go"} {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			t.Fatalf("%s: no files, %v", pattern, err)
		}
		for _, file := range files {
			for name, kind := range reasonConstants(t, file) {
				given[kind][name] = true
			}
		}
	}
	return given
}

// reasonConstants are the values of the constants in a file whose type is a
// Reason, with the room of that type.
func reasonConstants(t *testing.T, path string) map[string]string {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]string{}
	for _, decl := range file.Decls {
		group, ok := decl.(*ast.GenDecl)
		if !ok || group.Tok != token.CONST {
			continue
		}
		for _, spec := range group.Specs {
			v := spec.(*ast.ValueSpec)
			kind := ""
			switch typ := v.Type.(type) {
			case *ast.SelectorExpr:
				if typ.Sel.Name == "Reason" {
					kind = typ.X.(*ast.Ident).Name
				}
			case *ast.Ident:
				if typ.Name == "Reason" && (file.Name.Name == "fault" || file.Name.Name == "report") {
					kind = file.Name.Name
				}
			}
			if kind == "" {
				continue
			}
			for _, value := range v.Values {
				if name, err := strconv.Unquote(value.(*ast.BasicLit).Value); err == nil {
					found[name] = kind
				}
			}
		}
	}
	return found
}
