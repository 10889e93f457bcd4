package pattern

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// judgedText is the mistakes and questions among findings, with what they are about.
func judgedText(list []Finding) string {
	var parts []string
	for _, f := range list {
		if f.Kind != KindReading {
			parts = append(parts, fmt.Sprintf("%d:%d %s %q %s %v", f.LineNumber, f.ColumnNumber, f.Reason, f.Text, f.Description, f.SizeNumbers))
		}
	}
	return strings.Join(parts, "; ")
}

// corpusTexts are some of the pieces: what a fuzzer may begin with.
func corpusTexts(t testing.TB) []string {
	files, err := filepath.Glob(filepath.Join(corpusDir, "pieces", "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	var texts []string
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var pieces []corpusPiece
		if err := json.Unmarshal(data, &pieces); err != nil {
			t.Fatal(err)
		}
		for i := 0; i < len(pieces); i += 5 {
			texts = append(texts, pieces[i].Text)
		}
	}
	return texts
}
