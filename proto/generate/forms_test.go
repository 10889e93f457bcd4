package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/form"
)

// Every kind of field of the fixture is described as a page needs it.
func TestFormOfFixture(t *testing.T) {
	w, err := readWire(compiledFixture(t))
	if err != nil {
		t.Fatal(err)
	}
	made, err := w.forms()
	if err != nil || len(made) != 3 {
		t.Fatalf("%d forms, %v", len(made), err)
	}
	var ball form.Form
	if err := json.Unmarshal(made["dyed-wool.windBall"], &ball); err != nil {
		t.Fatal(err)
	}
	if ball.Path != "/v1/dyed-wool:windBall" || !ball.Get || ball.Title != "Wind ball" ||
		ball.About != "WindBall winds a ball. It may take a while." || ball.Outline || ball.Units ||
		!reflect.DeepEqual(ball.Enums, []string{"WAY_"}) {
		t.Errorf("%+v", ball)
	}
	if !reflect.DeepEqual(ball.Choices, [][]string{{"pin", "clip"}}) {
		t.Errorf("choices %v", ball.Choices)
	}
	got := map[string]form.Field{}
	for _, f := range ball.Fields {
		got[f.Name] = f
	}
	if _, sent := got["fields"]; sent {
		t.Error("fields is no field of a page")
	}
	if f := got["mass_g"]; f.Label != "Mass" || f.Unit != "g" || f.Kind != form.Number || !f.Required || *f.Min != 0 ||
		f.Help != "The mass, in grams." {
		t.Errorf("%+v", f)
	}
	if f := got["size"]; f.Kind != form.Parts || f.Required || len(f.Fields) != 2 || f.Fields[1].Default != 10.0 || *f.Fields[0].Max != 1000 {
		t.Errorf("%+v", f)
	}
	if f := got["way"]; f.Kind != form.Choice || f.Default != "WAY_LEFT" ||
		!reflect.DeepEqual(f.Options, []form.Option{{Value: "WAY_LEFT", Label: "left", Help: "Towards the left, as most do."}}) {
		t.Errorf("%+v", f)
	}
	if f := got["end_cm"]; !f.List || *f.MaxItems != 2 || *f.Max != 50 || f.Label != "End" || f.Unit != "cm" {
		t.Errorf("%+v", f)
	}
	if f := got["label"]; f.Kind != form.Text || *f.Longest != 100 || f.Example != "red" {
		t.Errorf("%+v", f)
	}
	if f := got["check"]; f.Kind != form.Flag || f.Default != false {
		t.Errorf("%+v", f)
	}
	// What holds itself ends.
	knots := got["knots"]
	if !knots.List || len(knots.Choices) != 2 {
		t.Errorf("%+v", knots)
	}
	for _, f := range knots.Fields {
		if f.Name == "knots" {
			t.Error("a knot holds knots without end")
		}
	}
}

// The committed forms are those of the contract, one for every method and no more.
func TestFormsAreCommitted(t *testing.T) {
	t.Chdir("../..")
	files, err := compile.Dir(sourceDir)
	if err != nil {
		t.Fatal(err)
	}
	w, err := readWire(files)
	if err != nil {
		t.Fatal(err)
	}
	made, err := w.forms()
	if err != nil {
		t.Fatal(err)
	}
	methods := 0
	for _, service := range w.services {
		methods += service.Methods().Len()
	}
	committed, err := filepath.Glob(filepath.Join(formsDir, "*.json"))
	if err != nil || len(committed) != len(made) || len(made) != methods {
		t.Errorf("%d files, %d forms, %d methods, %v", len(committed), len(made), methods, err)
	}
	for name, want := range made {
		if got, err := os.ReadFile(filepath.Join(formsDir, name+".json")); err != nil || string(got) != string(want) {
			t.Errorf("%s.json is stale: go run ./proto/generate (%v)", name, err)
		}
	}
}
