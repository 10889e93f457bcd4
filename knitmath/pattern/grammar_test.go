package pattern

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestSentencesOfTheGrammar reads every sentence that the grammar shows, to the count beside it, worked by hand.
func TestSentencesOfTheGrammar(t *testing.T) {
	grammar, err := os.ReadFile("../../testdata/instruction/grammar.md")
	if err != nil {
		t.Fatal(err)
	}
	read := 0
	for _, line := range strings.Split(string(grammar), "\n") {
		text, count, ok := strings.Cut(line, " => ")
		if !ok {
			continue
		}
		read++
		want, err := strconv.Atoi(count)
		if out := asked(t, strings.TrimSpace(text), 0, stitch.Flat); err != nil || !out.Agrees || out.EndStitches[0] != want {
			t.Errorf("%s: %v, %d, %s", text, err, out.EndStitches, judgedText(out.Findings))
		}
	}
	if read < 50 {
		t.Errorf("only %d sentences are shown", read)
	}
}
