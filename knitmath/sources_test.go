package knitmath_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// nobodyFinds are ways to name a source that lead a reader nowhere: pages that move and go.
// What stands only there is common practice.
var nobodyFinds = regexp.MustCompile(`(?i)\b(tutorials?|weblogs?|blogs?|forum|digests?|recalled|in another's account)\b|` +
	`\.(com|org|net|info)\b`)

// A source names a book, a standard or a paper that a reader can find, or says that it is
// common practice, from memory or an own derivation; and says which of these by its status.
func TestSourcesCanBeFound(t *testing.T) {
	cited := 0
	for _, path := range goFiles(t) {
		files := token.NewFileSet()
		file, err := parser.ParseFile(files, path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.BasicLit:
				if text, err := strconv.Unquote(n.Value); err == nil && n.Kind == token.STRING && nobodyFinds.MatchString(text) &&
					!strings.HasPrefix(text, house) {
					t.Errorf("%s names what nobody finds: %q", files.Position(n.Pos()), text)
				}
			case *ast.CompositeLit:
				source := keysOf(n)
				if source["Citation"] == nil {
					return true
				}
				cited++
				checkStatus(t, files.Position(n.Pos()).String(), source)
			}
			return true
		})
	}
	if cited < 100 {
		t.Errorf("%d sources were found", cited)
	}
}

// checkStatus checks that a source which calls itself common practice, from memory or an
// own derivation has the status of it.
func checkStatus(t *testing.T, where string, source map[string]ast.Expr) {
	t.Helper()
	if source["Status"] == nil {
		t.Errorf("%s: a source without a status", where)
		return
	}
	status, named := source["Status"].(*ast.SelectorExpr)
	text, written := source["Citation"].(*ast.BasicLit)
	if !named || !written {
		return // taken from a table, or joined
	}
	for begins, want := range map[string]string{
		"common practice": "CommonPractice", "own derivation": "OwnDerivation", "from memory": "FromMemory",
	} {
		if strings.HasPrefix(text.Value, strconv.Quote(begins)[:len(begins)+1]) && status.Sel.Name != "SourceStatus"+want {
			t.Errorf("%s: %s is %s", where, text.Value, status.Sel.Name)
		}
	}
}

// keysOf are the values of a composite literal by the names of its fields.
func keysOf(n *ast.CompositeLit) map[string]ast.Expr {
	found := map[string]ast.Expr{}
	for _, e := range n.Elts {
		if pair, ok := e.(*ast.KeyValueExpr); ok {
			if key, ok := pair.Key.(*ast.Ident); ok {
				found[key.Name] = pair.Value
			}
		}
	}
	return found
}

// goFiles are the files of the rooms, without their tests.
func goFiles(t *testing.T) (paths []string) {
	t.Helper()
	err := filepath.WalkDir(".", func(path string, _ os.DirEntry, err error) error {
		if strings.HasSuffix(path, ".go") && !strings.HasSuffix(path, "_test.go") {
			paths = append(paths, path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return paths
}
