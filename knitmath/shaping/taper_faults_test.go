package shaping

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// checkTaperRefusal: a taper is refused only for want of rows, of stitches, or
// of whole shaping rows.
func checkTaperRefusal(t *testing.T, in TaperInput, err error) {
	t.Helper()
	per := *in.EdgeChangeStitches
	edges := 1
	if in.Edges == ShapedEdgesBoth {
		edges = 2
	}
	change := measure.Abs(in.EndStitches - in.StartStitches)
	if change == 0 || change%(per*edges) != 0 {
		return
	}
	slots := rowsThatMayShape(in.RowChoice, in.FirstSide, fault.Or(in.EvenBeforeRows, 0),
		*in.HeightRows-fault.Or(in.EvenAfterRows, 0))
	narrow := min(in.StartStitches, in.EndStitches) < 2*(1+per+1)
	if change/(per*edges) <= slots && !narrow {
		t.Fatalf("%s refused though it fits: %v", describeTaper(in), err)
	}
}

func TestTaperRefusals(t *testing.T) {
	ten, zero, three, tooMany, big := 10, 0, 3, stitch.MaxRows+1, 101
	nan, cm := math.NaN(), 20.0
	tiny := 0.1
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	coarse := &gauge.Gauge{Stitches: 5, Rows: 5}
	for name, c := range map[string]struct {
		in   TaperInput
		want []string
	}{
		"empty": {TaperInput{}, []string{"start_stitches REQUIRED", "end_stitches REQUIRED", "height_rows REQUIRED",
			"height_cm REQUIRED"}},
		"twice": {TaperInput{StartStitches: 10, EndStitches: 20, HeightRows: &ten, HeightCm: &cm, Gauge: standard},
			[]string{"height_rows CONTRADICTORY", "height_cm CONTRADICTORY"}},
		"ranges": {TaperInput{StartStitches: -1, EndStitches: stitch.MaxStitches + 1, HeightRows: &tooMany,
			EdgeChangeStitches: &three, EdgeStitches: &zero},
			[]string{"start_stitches OUT_OF_RANGE", "end_stitches OUT_OF_RANGE", "height_rows OUT_OF_RANGE",
				"edge_change_stitches OUT_OF_RANGE", "edge_stitches OUT_OF_RANGE"}},
		"nan":      {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &nan, Gauge: standard}, []string{"height_cm NOT_FINITE"}},
		"no gauge": {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &cm}, []string{"gauge REQUIRED"}},
		"bad gauge": {TaperInput{StartStitches: 10, EndStitches: 20, HeightRows: &ten, Gauge: &gauge.Gauge{}},
			[]string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED"}},
		"no row": {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &tiny, Gauge: coarse},
			[]string{"height_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"equal": {TaperInput{StartStitches: 10, EndStitches: 10, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"odd": {TaperInput{StartStitches: 10, EndStitches: 13, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"few rows": {TaperInput{StartStitches: 10, EndStitches: 40, HeightRows: &ten},
			[]string{"end_stitches INFEASIBLE", "height_rows INFEASIBLE"}},
		"narrow": {TaperInput{StartStitches: 8, EndStitches: 2, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE", "edge_stitches INFEASIBLE"}},
		"wide edge": {TaperInput{StartStitches: 8, EndStitches: 10, HeightRows: &ten, EdgeStitches: &big},
			[]string{"edge_stitches OUT_OF_RANGE"}},
		"round wrong": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, Construction: stitch.InTheRound,
			FirstSide: stitch.WrongSide}, []string{"first_side CONTRADICTORY"}},
		"even range": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, EvenBeforeRows: &tooMany,
			EvenAfterRows: &tooMany}, []string{"even_before_rows OUT_OF_RANGE", "even_after_rows OUT_OF_RANGE"}},
		"excess for nothing": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, ToleranceStitches: &cm,
			Spread: IntervalSpreadInterleaved}, []string{"tolerance_stitches CONTRADICTORY"}},
		"all even": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, EvenBeforeRows: &ten},
			[]string{"end_stitches INFEASIBLE", "height_rows INFEASIBLE"}},
		"enums": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, Construction: 3, Edges: 4, RowChoice: 3,
			FirstSide: 3, Spread: 5, DisplayUnit: -1},
			[]string{"construction UNKNOWN_VALUE", "edges UNKNOWN_VALUE", "row_choice UNKNOWN_VALUE",
				"first_side UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanTaper(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// taperRefusal is what the first violation of a refusal says; nothing if there is
// an answer.
func taperRefusal(in TaperInput) string {
	_, err := PlanTaper(in)
	var refusal *fault.InputError
	if errors.As(err, &refusal) {
		return refusal.Violations[0].Detail
	}
	return ""
}

// A change that no whole shaping rows make is told the nearest counts that they do
// make, on both sides of what was asked, where there is a taper to them: from 7
// stitches there is none to 1, nor to one below, and none past the most.
func TestNearestEndsOfATaper(t *testing.T) {
	for _, c := range []struct {
		start, end, per int
		want            string
	}{
		{10, 13, 1, "; end_stitches of 12 or 14 would do"},
		{10, 15, 2, "; end_stitches of 14 or 18 would do"},
		{20, 13, 1, "; end_stitches of 14 or 12 would do"},
		{20, 13, 2, "; end_stitches of 16 or 12 would do"},
		{10, 11, 1, "; end_stitches of 12 would do"},
		{20, 19, 2, "; end_stitches of 16 would do"},
		{9, 4, 1, "; end_stitches of 5 would do"},
		{7, 4, 2, " is not a multiple of that"},
		{stitch.MaxStitches - 2, stitch.MaxStitches - 1, 1, "; end_stitches of 10000 would do"},
	} {
		got := taperRefusal(TaperInput{StartStitches: c.start, EndStitches: c.end, HeightRows: new(100), EdgeChangeStitches: &c.per})
		if !strings.HasSuffix(got, c.want) {
			t.Errorf("%d to %d by %d: %q, want %q", c.start, c.end, c.per, got, c.want)
		}
	}
}

// Too few rows: the height said to be enough is, and one row less is not.
func TestTooFewRowsForATaper(t *testing.T) {
	refused := 0
	for end := 12; end <= 40; end += 2 {
		for variant := range 2 * 2 * 2 * 2 {
			per, before, after := 1+variant%2, variant/2%2, variant/4%2
			in := TaperInput{StartStitches: 10, EndStitches: end, HeightRows: new(5), EdgeChangeStitches: &per,
				EvenBeforeRows: &before, EvenAfterRows: &after, RowChoice: RowChoice(1 + variant/8)}
			text := taperRefusal(in)
			var needed, may, rows int
			if _, err := fmt.Sscanf(text, "%d shaping rows are needed and %d may shape; it takes at least %d rows",
				&needed, &may, &rows); err != nil {
				continue
			}
			refused++
			longer, shorter := in, in
			longer.HeightRows, shorter.HeightRows = &rows, new(rows-1)
			if taperRefusal(longer) != "" || taperRefusal(shorter) == "" {
				t.Errorf("%s: %q, which is not so", describeTaper(in), text)
			}
		}
	}
	if refused < 100 {
		t.Errorf("refused %d: the sweep has shrunk", refused)
	}
}

// A change that no whole shaping rows make in a height that has too few even for less of it is told both at once: the height
// said to be needed is, for the nearest count on the way.
func TestTooFewRowsForNoWholeChange(t *testing.T) {
	told := 0
	for end := 11; end <= 41; end += 2 {
		for before := range 6 {
			in := TaperInput{StartStitches: 10, EndStitches: end, HeightRows: new(6), EvenBeforeRows: &before}
			_, err := PlanTaper(in)
			if err == nil || !strings.Contains(err.Error(), "is not a multiple of that") {
				t.Fatalf("%s: %v", describeTaper(in), err)
			}
			near := in
			near.EndStitches = max(end-1, 12)
			_, rest, both := strings.Cut(err.Error(), "it takes at least ")
			if fits := taperRefusal(near) == ""; fits == both {
				t.Errorf("%s: %v", describeTaper(in), err)
			}
			if !both {
				continue
			}
			told++
			var rows int
			if _, err := fmt.Sscanf(rest, "%d rows", &rows); err != nil {
				t.Fatal(err)
			}
			longer, shorter := near, near
			longer.HeightRows, shorter.HeightRows = &rows, new(rows-1)
			if taperRefusal(longer) != "" || taperRefusal(shorter) == "" {
				t.Errorf("%s: %v, which is not so", describeTaper(in), err)
			}
		}
	}
	if told < 50 {
		t.Errorf("told %d: the sweep has shrunk", told)
	}
}

// A change that no whole shaping rows make on stitches that are too few for the edge too is told both at once: with an even
// change the edge alone is refused, and without the edge nothing but the change is.
func TestEdgeTooWideForNoWholeChange(t *testing.T) {
	told := 0
	for _, counts := range [][2]int{{11, 16}, {16, 11}, {30, 45}, {45, 30}} {
		for edge := 1; edge < 25; edge++ {
			in := TaperInput{StartStitches: counts[0], EndStitches: counts[1], HeightRows: new(60), EdgeStitches: &edge}
			_, err := PlanTaper(in)
			if err == nil || !strings.Contains(err.Error(), "is not a multiple of that") {
				t.Fatalf("%s: %v", describeTaper(in), err)
			}
			near := in
			near.EndStitches += 1
			narrow := strings.Contains(err.Error(), "with this edge")
			if fits := taperRefusal(near) == ""; fits == narrow {
				t.Errorf("%s: %v, and with a stitch more %q", describeTaper(in), err, taperRefusal(near))
			}
			if narrow {
				told++
			}
		}
	}
	if told < 30 {
		t.Errorf("told %d: the sweep has shrunk", told)
	}
}
