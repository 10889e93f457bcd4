package pattern

import (
	"path/filepath"
	"testing"
)

// sentencesDir holds pieces of other wording than the corpus, written before the rules
// that read them.
const sentencesDir = "../../testdata/pattern/sentences"

// sentencesRight is how many of them are read right, sentencesSilent how many are agreed with
// and wrong.
const (
	sentencesRight  = 12
	sentencesSilent = 4
)

// TestSentences measures whether the rules of grammar hold for other words than those
// they were made for.
func TestSentences(t *testing.T) {
	counts, n := judgeFile(t, filepath.Join(sentencesDir, "pieces.json"))
	t.Logf("%d pieces: %v %v", n, verdictNames, counts)
	switch {
	case n < 60:
		t.Errorf("only %d pieces", n)
	case counts[verdictRight] < sentencesRight:
		t.Errorf("%d read right, %d stood", counts[verdictRight], sentencesRight)
	case counts[verdictSilent] > sentencesSilent:
		t.Errorf("%d silently wrong", counts[verdictSilent])
	}
}
