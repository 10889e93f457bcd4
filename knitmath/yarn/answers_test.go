package yarn

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Figures in yards, and the sources of what was asked: each system once, what plying needs
// only for plied yarn, and memory marked as such.
func TestConversionInYards(t *testing.T) {
	out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: "37 tex/2"}, DisplayUnit: measure.DisplayUnitIn,
		Systems: []CountSystem{CountSystemGalashielsCut, CountSystemTex, CountSystemTex}})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := out.Summary(), "2 plies of 37 tex are R 74 tex/2, 6703 yd/lb."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if out.Directions() != nil {
		t.Error("there is something to do")
	}
	if n := out.Notices[0]; n.Reason != OtherReading || !strings.Contains(n.Description, "37 tex in all") {
		t.Errorf("%+v", n)
	}
	var remembered []string
	for _, s := range out.Sources() {
		if s.Status == report.SourceStatusFromMemory && s.Uncertain {
			remembered = append(remembered, s.Figure[:10])
		}
	}
	if len(out.Sources()) != 1+2+3 || !slices.Equal(remembered, []string{"Galashiels"}) {
		t.Errorf("%d sources, remembered %q", len(out.Sources()), remembered)
	}
}

// What a comparison says in short, and what to do, for each verdict.
func TestComparisonInShort(t *testing.T) {
	wool, washable := ball(115), ball(115)
	wool.Fibres, washable.Fibres = []FibreShare{{FibreWool, 100}}, []FibreShare{{FibreWashableWool, 100}}
	cotton := ball(115)
	cotton.Fibres = []FibreShare{{FibreCotton, 100}}
	for _, c := range []struct {
		first, second *ComparedYarn
		summary, do   string
	}{
		{wool, washable, "The second yarn will do.", "swatch"},
		{washable, wool, "The second yarn will nearly do: it may felt.", "swatch"},
		{wool, cotton, "The second yarn will nearly do: its fabric is likely to hang otherwise.", "swatch"},
		{ball(115), ball(60), "The second yarn will not do as it is: the second is 38 % thicker.", "strands"},
	} {
		out := compared(t, CompareInput{First: c.first, Second: c.second})
		if got := out.Summary(); got != c.summary {
			t.Errorf("%q, want %q", got, c.summary)
		}
		if d := out.Directions(); len(d) != 1 || !strings.Contains(d[0], c.do) {
			t.Errorf("%q", d)
		}
		if s := out.Sources(); (s[len(s)-1].Figure == "drape and washing by fibre") != (len(c.first.Fibres) > 0) {
			t.Errorf("%+v", s)
		}
	}
	for ratio, want := range map[float64]Verdict{1.04: VerdictFits, 0.93: VerdictNearly, 1.2: VerdictNo} {
		if got := judged(ratio); got != want {
			t.Errorf("%v is judged %d, want %d", ratio, got, want)
		}
	}
	if got := categoryWords([]int{2, 3, 4}); got != "Fine (2), Light (3) or Medium (4)" {
		t.Error(got)
	}
}

func TestAmountsInWords(t *testing.T) {
	for got, want := range map[string]string{
		MassWords(measure.DisplayUnitCm, 9.96): "10 g", MassWords(measure.DisplayUnitCm, 123.4): "123 g",
		MassWords(measure.DisplayUnitIn, 50): "1.8 oz", LengthWords(measure.DisplayUnitIn, 100): "109 yd",
		LengthWords(measure.DisplayUnitCm, 3.14): "3.1 m", significant(0): "0", significant(0.012345): "0.01235",
	} {
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
