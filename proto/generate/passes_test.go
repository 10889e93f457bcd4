package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/document"
)

// The committed document says what proto/ says.
func TestDocumentSaysWhatTheProtoFilesSay(t *testing.T) {
	set, err := compile.Dir("..")
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join("..", "..", documentFile))
	if err != nil {
		t.Fatal(err)
	}
	committed, err := document.Read(text)
	if err != nil {
		t.Fatal(err)
	}
	for _, fault := range faults(committed, set) {
		t.Errorf("%s; if gen/ is stale: `go run ./proto/generate`", fault)
	}
}

// A document made by all passes has no faults; leave any pass out, and it has some
// or the passes after it cannot go on. So no pass can break without a word.
func TestEveryPassIsNeeded(t *testing.T) {
	set := compiledFixture(t)
	w, err := readWire(set)
	if err != nil {
		t.Fatal(err)
	}
	w.examples = fixtureExamples
	text, err := pluginDocument(set)
	if err != nil {
		t.Fatal(err)
	}
	for without := -1; without < len(passes); without++ {
		some, name := passes, "nothing"
		if without >= 0 {
			some, name = slices.Delete(slices.Clone(passes), without, without+1), passes[without].name
		}
		made, err := document.Read(text)
		if err != nil {
			t.Fatal(err)
		}
		found := []string{}
		if err := finish(made, w, some); err != nil {
			found = append(found, err.Error())
		} else {
			found = faults(made, set)
		}
		switch {
		case without < 0 && len(found) > 0:
			t.Errorf("made by all passes:\n%s", strings.Join(found, "\n"))
		case without >= 0 && len(found) == 0:
			t.Errorf("without %s nothing is missed", name)
		case without >= 0:
			t.Logf("without %s: %s", name, found[0])
		}
	}
}

// The same sources give the same bytes.
func TestDocumentIsDeterministic(t *testing.T) {
	set := compiledFixture(t)
	var texts [2]string
	for i := range texts {
		made, err := makeDocument(set, fixtureExamples)
		if err != nil {
			t.Fatal(err)
		}
		text, err := made.Write()
		if err != nil {
			t.Fatal(err)
		}
		texts[i] = string(text)
	}
	if texts[0] != texts[1] {
		t.Error("the same sources gave two documents")
	}
	read, err := document.Read([]byte(texts[0]))
	if err != nil {
		t.Fatal(err)
	}
	again, err := read.Write()
	if err != nil || string(again) != texts[0] {
		t.Errorf("read and written it is another: %v", err)
	}
}
