package main

import (
	"debug/buildinfo"
	"testing"
)

// What generates and tests needs modules that the program must not carry.
func TestProgramCarriesNoTools(t *testing.T) {
	path, err := binary()
	if err != nil {
		t.Fatal(err)
	}
	info, err := buildinfo.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for _, module := range info.Deps {
		switch module.Path {
		case "github.com/bufbuild/protocompile", "github.com/santhosh-tekuri/jsonschema/v6", "go.yaml.in/yaml/v3", "gonum.org/v1/gonum":
			t.Errorf("the program carries %s", module.Path)
		}
	}
	if len(info.Deps) == 0 {
		t.Error("the program carries no modules")
	}
}
