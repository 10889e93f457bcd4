package main

import (
	"bytes"
	"os"
	"strings"
	"testing"
)

// What the program carries was packed of the files as they are.
func TestPacked(t *testing.T) {
	files, err := read("..")
	if err != nil {
		t.Fatal(err)
	}
	packed, err := compressed(files)
	if err != nil {
		t.Fatal(err)
	}
	carried, err := os.ReadFile("../../../gen/pages/pages.json.gz")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(packed, carried) {
		t.Error("gen/pages is stale: go run ./service/web/pack")
	}
}

// A part of a bundle is nowhere else, a script brings nothing in from outside, and a fault
// in one is said.
func TestBundles(t *testing.T) {
	files, err := read("..")
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range files {
		_, isBundle := bundles[strings.TrimPrefix(name, "files/")]
		if isScript := strings.HasSuffix(name, ".js"); isScript != isBundle || isScript && strings.Contains(text, `from"./`) {
			t.Errorf("%s is a script, %v, of %d bytes", name, isScript, len(text))
		}
	}
	dir := t.TempDir()
	if err := os.WriteFile(dir+"/page.js", []byte("import { none } from './none.js';"), 0o600); err != nil {
		t.Fatal(err)
	}
	if text, err := bundle(dir, "page.js", bundles["page.js"]); err == nil {
		t.Errorf("what brings in a file that is none becomes %q", text)
	}
}
