package pattern

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"
)

// sentencesDir holds pieces of other wording than the corpus, written before the rules
// that read them.
const sentencesDir = "../../testdata/pattern/sentences"

// sentencesRight is how many of them are read right, sentencesSilent how many are agreed with
// and wrong.
const (
	sentencesRight  = 61
	sentencesSilent = 0
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

// TestSentencesAreWrittenAnew: what is written of them is stable and the same knitting.
func TestSentencesAreWrittenAnew(t *testing.T) {
	for _, text := range sentenceTexts(t) {
		for style := RepeatStyleBrackets; style <= RepeatStyleStars; style++ {
			checkAnew(t, text, style)
		}
	}
}

func sentenceTexts(t testing.TB) []string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(sentencesDir, "pieces.json"))
	if err != nil {
		t.Fatal(err)
	}
	var pieces []corpusPiece
	if err := json.Unmarshal(data, &pieces); err != nil {
		t.Fatal(err)
	}
	texts := make([]string, len(pieces))
	for i := range pieces {
		texts[i] = pieces[i].Text
	}
	return texts
}
