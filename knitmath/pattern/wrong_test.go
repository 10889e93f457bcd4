package pattern

import (
	"os"
	"strings"
	"testing"
)

// TestNoWrongDraftIsAgreedWith: small drafts that are wrong by hand in the ways a designer errs, each with what is wrong in it. Every one
// is told or asked about.
func TestNoWrongDraftIsAgreedWith(t *testing.T) {
	text, err := os.ReadFile("../../testdata/pattern/wrong/drafts.txt")
	if err != nil {
		t.Fatal(err)
	}
	drafts := strings.Split(string(text), "## ")[1:]
	for _, d := range drafts {
		wrong, draft, _ := strings.Cut(d, "\n")
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: draft})
		if err == nil && out.Agrees {
			t.Errorf("agreed with, and wrong: %s\n%s", wrong, draft)
		}
	}
	if t.Logf("%d drafts", len(drafts)); len(drafts) < 300 {
		t.Error("fewer than 300 drafts")
	}
}
