package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"testing"

	"example.com/knitmath/proto/compile"
	"example.com/knitmath/proto/form"
)

// fixtureForm is the page of a question that has every kind of field.
func fixtureForm(t *testing.T) form.Form {
	t.Helper()
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
	return ball
}

func TestFormOfFixture(t *testing.T) {
	ball := fixtureForm(t)
	ball.Fields = nil
	if want := (form.Form{
		Path: "/v1/dyed-wool:windBall", Get: true, Title: "Wind ball", About: "WindBall winds a ball. It may take a while.",
		Enums: []string{"WAY_"}, Group: form.Group{Choices: [][]string{{"pin", "clip"}}},
	}); !reflect.DeepEqual(ball, want) {
		t.Errorf("%+v, want %+v", ball, want)
	}
}

// Every kind of field of the fixture is described as a page needs it.
func TestFieldsOfFixture(t *testing.T) {
	got := map[string]form.Field{}
	for _, f := range fixtureForm(t).Fields {
		got[f.Name] = f
	}
	if _, sent := got["fields"]; sent {
		t.Error("fields is no field of a page")
	}
	left := []form.Option{{Value: "WAY_LEFT", Label: "left", Help: "Towards the left, as most do."}}
	for name, as := range map[string]func(form.Field) bool{
		"mass_g": func(f form.Field) bool {
			return f.Label == "Mass" && f.Unit == "g" && f.Kind == form.Number && f.Required && *f.Min == 0 && f.Help == "The mass, in grams."
		},
		"size": func(f form.Field) bool {
			return f.Kind == form.Parts && !f.Required && len(f.Fields) == 2 && f.Fields[1].Default == 10.0 && *f.Fields[0].Max == 1000
		},
		"way": func(f form.Field) bool {
			return f.Kind == form.Choice && f.Default == "WAY_LEFT" && reflect.DeepEqual(f.Options, left)
		},
		"end_cm": func(f form.Field) bool {
			return f.List && *f.MaxItems == 2 && *f.Max == 50 && f.Label == "End" && f.Unit == "cm"
		},
		"label": func(f form.Field) bool { return f.Kind == form.Text && *f.Longest == 100 && f.Example == "red" },
		"check": func(f form.Field) bool { return f.Kind == form.Flag && f.Default == false },
		// What holds itself ends.
		"knots": func(f form.Field) bool {
			return f.List && len(f.Choices) == 2 && !slices.ContainsFunc(f.Fields, func(f form.Field) bool { return f.Name == "knots" })
		},
	} {
		if !as(got[name]) {
			t.Errorf("%s: %+v", name, got[name])
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
