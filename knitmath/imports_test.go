package knitmath_test

import (
	"go/doc"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const house = "example.com/knitmath/knitmath/"

// allowed is the plan of the house: which rooms a room may import. Arrows run
// downward only, a room stands below those that name it, and everything else
// that is imported is of the standard library.
var allowed = map[string]string{
	// The kernel: each room knows nothing of the others.
	"stitch":   "",
	"fault":    "",
	"measure":  "",
	"spread":   "",
	"schedule": "",
	"report":   "",
	"cost":     "",
	// What would do where a question is refused.
	"advice": "fault measure",
	// Centimetres into stitches; written patterns; a plan as lines; bodies; yarn.
	"gauge":   "advice cost fault measure report stitch",
	"draft":   "",
	"pattern": "cost draft fault report stitch",
	"outline": "gauge",
	"body":    "fault report",
	"yarn":    "fault measure outline report",
	"swatch":  "cost fault gauge measure report yarn",
	"yardage": "cost fault gauge measure outline report stitch yarn",
	// Plans of shaping.
	"curve":    "advice cost fault gauge measure outline report stitch",
	"shaping":  "cost curve fault gauge measure outline report schedule spread stitch",
	"shortrow": "cost curve fault gauge measure outline report schedule spread stitch",
	"handspun": "fault gauge measure outline report yardage yarn",
	// Plans made of other plans.
	"edge":    "cost fault gauge measure outline report shaping spread stitch",
	"neck":    "advice body cost curve fault gauge measure outline report schedule shaping shortrow stitch",
	"solid":   "advice body cost fault gauge measure outline report schedule shaping shortrow spread stitch",
	"sock":    "advice cost fault gauge measure outline report shortrow solid stitch",
	"yoke":    "advice body cost curve fault gauge measure outline report schedule shaping shortrow spread stitch",
	"flat":    "advice cost fault gauge measure outline report schedule shaping shortrow stitch",
	"hand":    "advice body cost fault gauge measure outline report solid stitch",
	"armhole": "advice cost curve fault gauge measure outline report",
	// What the tests of several rooms share.
	"knittest":    "fault measure report stitch",
	"outlinetest": "outline",
}

// testOnly are the rooms that only tests may import.
var testOnly = []string{"knittest", "outlinetest"}

// The walls of the house hold: every room is in the plan and imports just what
// the plan allows. Since every arrow of the plan is used, the compiler, which
// refuses circles, keeps the plan without one.
func TestRoomsImportDownward(t *testing.T) {
	for room, below := range allowed {
		used := map[string]bool{}
		for _, path := range imports(t, room) {
			other, ours := strings.CutPrefix(path, house)
			switch first, _, _ := strings.Cut(path, "/"); {
			case !ours && !strings.Contains(first, "."):
			case !ours && slices.Contains(testOnly, room):
			case !ours, !slices.Contains(strings.Fields(below), other):
				t.Errorf("%s may not import %s", room, path)
			default:
				used[other] = true
			}
		}
		for _, other := range strings.Fields(below) {
			if !used[other] {
				t.Errorf("the plan lets %s import %s, and it does not", room, other)
			}
		}
	}
	folders, err := filepath.Glob("*/*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range folders {
		if _, ok := allowed[filepath.Dir(file)]; !ok {
			t.Errorf("%s is in a room that the plan does not have", file)
		}
	}
}

// Every room says in a comment what belongs there, and shows in an example whose
// output is checked what a caller writes. What only tests import has no callers.
func TestRoomsIntroduceThemselves(t *testing.T) {
	for room := range allowed {
		files, err := filepath.Glob(filepath.Join(room, "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		said, shown := 0, false
		for _, file := range files {
			parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ParseComments)
			if err != nil {
				t.Fatal(err)
			}
			if !strings.HasSuffix(file, "_test.go") && parsed.Doc != nil {
				said++
			}
			for _, example := range doc.Examples(parsed) {
				shown = shown || example.Output != ""
			}
		}
		if said != 1 {
			t.Errorf("%s has %d package comments", room, said)
		}
		if !shown && !slices.Contains(testOnly, room) {
			t.Errorf("%s has no example whose output is checked", room)
		}
	}
}

// The root has the plan of the house, tests and examples, and no code.
func TestRootIsThePlan(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if file != "doc.go" && !strings.HasSuffix(file, "_test.go") {
			t.Errorf("%s: code has a room of its own", file)
		}
	}
	plan, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	for room := range allowed {
		if !slices.Contains(testOnly, room) && !strings.Contains(string(plan), "["+house+room+"]") {
			t.Errorf("doc.go does not say what %s is for", room)
		}
	}
}

// imports lists what the files of a room import, those of its tests aside.
func imports(t *testing.T, room string) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(room, "*.go"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no files in %s: %v", room, err)
	}
	var paths []string
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
			paths = append(paths, path)
		}
	}
	return paths
}
