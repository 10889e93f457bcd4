package pattern

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"
)

// TestAnewKeepsWhatIsNoRow: the layout, the headings and what is passed over stand as
// they were; only rows are written otherwise.
func TestAnewKeepsWhatIsNoRow(t *testing.T) {
	const text = "Fern Hat\n\n  BODY\n* CO 20 sts, then join.\nRow 1: k1, k1, k1, k to end. Work even for 5 cm, then\nRow 2:  Purl.\n"
	const want = "Fern Hat\n\n  BODY\n* CO 20 sts, then join.\nRow 1: k3, k to end. Work even for 5 cm, then\nRow 2: p to end.\n"
	out, err := FormatInstructions(FormatInstructionsInput{Text: text})
	if err != nil || out.Text != want || len(out.Notices) > 0 {
		t.Fatalf("%q, %+v, %v", out.Text, out.Notices, err)
	}
}

// TestLeftAsGiven: a text that would be read otherwise, or that has too many faults,
// comes back as it was.
func TestLeftAsGiven(t *testing.T) {
	many := ""
	for range MaxFindings + 1 {
		many += "foo\n"
	}
	for _, text := range []string{"CO 20 sts.\n*Row 1:* k1, k1, k to end.\n**Row 2:** Knit. (20 sts)", many} {
		out, err := FormatInstructions(FormatInstructionsInput{Text: text})
		if err != nil || out.Text != text || len(out.Notices) == 0 || out.Notices[0].Reason != ReasonLeftAsGiven {
			t.Errorf("%.80q: %.80q, %+v, %v", text, out.Text, out.Notices, err)
		}
	}
}

// mostLeft is how many texts of the corpus are left as they were given.
const mostLeft = 5

// TestCorpusIsWrittenAnew: nearly every piece and draft can be written anew, and what
// is written is stable and the same knitting in all of them.
func TestCorpusIsWrittenAnew(t *testing.T) {
	left, all := 0, 0
	for _, text := range wholeCorpus(t) {
		out, err := FormatInstructions(FormatInstructionsInput{Text: text})
		if err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		for _, n := range out.Notices {
			if n.Reason == ReasonLeftAsGiven {
				left++
			}
		}
		all++
		for style := RepeatStyleBrackets; style <= RepeatStyleStars; style++ {
			checkAnew(t, text, style)
		}
	}
	t.Logf("%d of %d texts are left as they were given", left, all)
	if left > mostLeft {
		t.Errorf("more than %d", mostLeft)
	}
}

// wholeCorpus is every text of the corpus.
func wholeCorpus(t *testing.T) []string {
	t.Helper()
	pieces, err := filepath.Glob(filepath.Join(corpusDir, "pieces", "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	var texts []string
	for _, file := range pieces {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var list []corpusPiece
		if err := json.Unmarshal(data, &list); err != nil {
			t.Fatal(err)
		}
		for i := range list {
			texts = append(texts, list[i].Text)
		}
	}
	drafts, err := filepath.Glob(filepath.Join(corpusDir, "drafts", "*.txt"))
	if err != nil || len(drafts) == 0 {
		t.Fatal(err, drafts)
	}
	for _, file := range drafts {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, string(data))
	}
	return texts
}
