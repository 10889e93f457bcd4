package main

import (
	"bytes"
	"debug/buildinfo"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	cdx "github.com/CycloneDX/cyclonedx-go"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

// The document of a program, here of the test itself, fits the format's own schema
// and names each of its modules once.
func TestDocument(t *testing.T) {
	path, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	info, err := buildinfo.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var text, again bytes.Buffer
	for _, w := range []*bytes.Buffer{&text, &again} {
		if err := write(w, path, "v9.8.7"); err != nil {
			t.Fatal(err)
		}
	}
	if text.String() != again.String() {
		t.Error("the same program gave two documents")
	}
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	if err := schema(t).Validate(value); err != nil {
		t.Errorf("%v\n%s", err, text.String())
	}
	var bom cdx.BOM
	if err := json.Unmarshal(text.Bytes(), &bom); err != nil {
		t.Fatal(err)
	}
	if main := bom.Metadata.Component; main.Version != "v9.8.7" || main.PackageURL != "pkg:golang/example.com/knitmath@v9.8.7" {
		t.Errorf("the program: %+v", main)
	}
	got := map[string]string{}
	for _, c := range *bom.Components {
		got[c.Name] = c.Version
	}
	if len(info.Deps) == 0 || len(got) != len(info.Deps)+1 || len(*bom.Components) != len(got) || "go"+got["std"] != info.GoVersion {
		t.Errorf("%d modules and Go %s; the program has %d and %s", len(got)-1, got["std"], len(info.Deps), info.GoVersion)
	}
	for _, m := range info.Deps {
		if got[m.Path] != m.Version {
			t.Errorf("%s: %q, the program has %s", m.Path, got[m.Path], m.Version)
		}
	}
}

// schema is the format's own, which its library brings.
func schema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	dir, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "github.com/CycloneDX/cyclonedx-go").Output()
	if err != nil {
		t.Fatal(err)
	}
	const base = "http://cyclonedx.org/schema/"
	compiler := jsonschema.NewCompiler()
	for name, file := range map[string]string{"bom-1.6.schema.json": "",
		"spdx.schema.json": "", "jsf-0.82.schema.json": "jsf-0.82.schemax.json"} {
		if file == "" {
			file = name
		}
		text, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(dir)), "schema", file))
		if err != nil {
			t.Fatal(err)
		}
		document, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := compiler.AddResource(base+name, document); err != nil {
			t.Fatal(err)
		}
	}
	compiled, err := compiler.Compile(base + "bom-1.6.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}
