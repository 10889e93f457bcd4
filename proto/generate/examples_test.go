package main

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"
	"testing/fstest"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
)

// Values by their paths become a question with its groups, its lists and numbers that are
// numbers; a text of digits stays one.
func TestExampleOfAQuestion(t *testing.T) {
	got, err := exampleOf(windBall(t), fixtureExamples["dyed-wool.windBall"])
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(got)
	const want = `{"band":"12","core":{"zulu_cm":2.5},"end_cm":[3,4.5],"knots":[{"knots":[{"times":3}],"left":1},{"name":"bow","times":2}],` +
		`"mass_g":50,"way":"WAY_LEFT"}`
	if err != nil || string(text) != want {
		t.Errorf("got %s, %v\nwant %s", text, err, want)
	}
}

// A path or a value that the contract does not have stops the making of the document.
func TestExamplesThatAreNone(t *testing.T) {
	for path, value := range map[string]string{
		"mass": "50", "mass_g.in": "50", "mass_g[0]": "50", "core": "2", "core[0].zulu_cm": "2", "knots.times": "2", "knots[one].times": "2",
		"mass_g": "heavy", "way": "WAY_OUT", "end_cm": "3 long",
	} {
		if got, err := exampleOf(windBall(t), map[string]string{path: value}); err == nil {
			t.Errorf("%s = %s became %v", path, value, got)
		}
	}
}

// The committed document has the examples that the pages begin with now.
func TestExamplesAreThoseOfThePages(t *testing.T) {
	t.Chdir("../..")
	set, err := compile.Dir(sourceDir)
	if err != nil {
		t.Fatal(err)
	}
	w, err := readWire(set)
	if err != nil {
		t.Fatal(err)
	}
	if w.examples, err = readExamples(os.DirFS(questionsDir)); err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(documentFile)
	if err != nil {
		t.Fatal(err)
	}
	d, err := document.Read(text)
	if err != nil {
		t.Fatal(err)
	}
	delete(d.Paths, "/version")
	committed, err := d.Write()
	if err != nil {
		t.Fatal(err)
	}
	if err := exampleQuestions(d, w); err != nil {
		t.Fatal(err)
	}
	if made, err := d.Write(); err != nil || !bytes.Equal(made, committed) {
		t.Errorf("the examples are stale: go run ./proto/generate (%v)", err)
	}
}

// What the pages begin with is read from their files.
func TestReadExamples(t *testing.T) {
	got, err := readExamples(fstest.MapFS{"a.b.json": {Data: []byte(`{"title": "A", "example": {"c": "1"}}`)}, "a.md": {}})
	if err != nil || len(got) != 1 || got["a.b"]["c"] != "1" {
		t.Errorf("%v, %v", got, err)
	}
	if got, err := readExamples(fstest.MapFS{"a.b.json": {Data: []byte(`{"example": {"c": 1}}`)}}); err == nil {
		t.Errorf("a number became %v", got)
	}
}

func windBall(t *testing.T) protoreflect.MessageDescriptor {
	t.Helper()
	w, err := readWire(compiledFixture(t))
	if err != nil {
		t.Fatal(err)
	}
	method, err := w.method("POST", "/v1/dyed-wool:windBall")
	if err != nil {
		t.Fatal(err)
	}
	return method.Input()
}
