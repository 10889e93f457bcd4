package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A new version of the plugin may write what is left out in other words; then the
// program grows again, and nothing else would tell why.
func TestGeneratedCodeIsLean(t *testing.T) {
	names, err := filepath.Glob("../../" + goDir + "/*.pb.go")
	if err != nil || len(names) == 0 {
		t.Fatal(names, err)
	}
	for _, name := range names {
		code, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range []string{
			"protovalidate", "googleapis/api/annotations", "Descriptor() ([]byte, []int)", "_rawDescGZIP", "sync.Once",
		} {
			if strings.Contains(string(code), part) {
				t.Errorf("%s has %s", name, part)
			}
		}
	}
}
