package pattern

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/report"
)

var (
	_ report.Answer = CheckedInstructions{}
	_ report.Answer = WrittenInstructions{}
	_ report.Answer = MirroredInstructions{}
)

// Each answer says what it comes to, has nothing to work, and says where the
// notation comes from.
func TestAnswersInWords(t *testing.T) {
	check := func(text string) report.Answer {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{9}})
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	format, err := FormatInstructions(FormatInstructionsInput{Text: "k5 (6)"})
	if err != nil {
		t.Fatal(err)
	}
	mirror, err := MirrorInstructions(MirrorInstructionsInput{Text: "k5"})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		answer  report.Answer
		summary string
		sources int
	}{
		{check("k9"), "Checked: every row fits and every count agrees.", 3},
		{check("k8"), "Checked: 1 mistake.", 3},
		{check("k8\nk9\nfoo"), "Checked: 1 mistake and 1 open question.", 3},
		{format, "1 line written for 2 sizes.", 3},
		{mirror, "1 row mirrored.", 4},
	} {
		if got := c.answer.Summary(); got != c.summary {
			t.Errorf("%q, want %q", got, c.summary)
		}
		if d := c.answer.Directions(); len(d) != 0 {
			t.Errorf("directions %q", d)
		}
		sources := c.answer.Sources()
		if len(sources) != c.sources || slices.ContainsFunc(sources,
			func(s report.Source) bool { return s.Citation == "" || s.Status == 0 }) {
			t.Errorf("sources %+v", sources)
		}
	}
}
