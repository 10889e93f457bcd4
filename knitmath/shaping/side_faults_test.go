package shaping

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// checkSideRefusal: a side is refused only when a stretch has no whole shaping
// rows, too few rows or too few stitches.
func checkSideRefusal(t *testing.T, in ShapedSideInput, err error) {
	t.Helper()
	knittest.CheckInputError(t, err)
	from, count, shaped := 0, in.StartStitches, false
	for _, p := range in.Points {
		k, ok := shapingRowsNeeded(in, count, p.Stitches)
		if !ok || k > rowsThatMayShape(in.RowChoice, in.FirstSide, from, *p.HeightRows) {
			return
		}
		shaped = shaped || k > 0
		from, count = *p.HeightRows, p.Stitches
	}
	if shaped {
		t.Fatalf("%s refused though it fits: %v", describeSide(in), err)
	}
}

// shapingRowsNeeded is how many shaping rows take one count to another. ok is
// false where no whole number does, or the narrowest row has no room for its
// shaping: a stitch outside it, and one beside a decrease.
func shapingRowsNeeded(in ShapedSideInput, start, end int) (k int, ok bool) {
	per, edges := fault.Or(in.EdgeChangeStitches, 1), 1
	if in.Edges == ShapedEdgesBoth {
		edges = 2
	}
	change := measure.Abs(end - start)
	least, narrowest := edges*per+1, start
	if end < start {
		least, narrowest = edges*(per+2), end+per*edges
	}
	return change / (per * edges), change%(per*edges) == 0 && (change == 0 || narrowest >= least)
}

func TestShapedSideRefusals(t *testing.T) {
	zero, three, ten, many := 0, 3, 10, stitch.MaxRows+1
	nan, tiny, cm := math.NaN(), 0.1, 20.0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	with := func(in ShapedSideInput, change func(*ShapedSideInput)) ShapedSideInput {
		change(&in)
		return in
	}
	base := sideOf(100, [2]int{36, 88}, [2]int{90, 104})
	for name, c := range map[string]struct {
		in   ShapedSideInput
		want []string
	}{
		"empty": {ShapedSideInput{}, []string{"start_stitches REQUIRED", "points REQUIRED"}},
		"many":  {ShapedSideInput{StartStitches: 10, Points: make([]SidePoint, MaxSidePoints+1)}, []string{"points TOO_MANY"}},
		"blank": {ShapedSideInput{StartStitches: 10, Points: make([]SidePoint, 1)},
			[]string{"points[0].height_rows REQUIRED", "points[0].height_cm REQUIRED", "points[0].stitches REQUIRED"}},
		"both": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{&ten, &cm, 12}}, Gauge: standard},
			[]string{"points[0].height_rows CONTRADICTORY", "points[0].height_cm CONTRADICTORY"}},
		"ranges": {ShapedSideInput{StartStitches: -1, Points: []SidePoint{{&zero, nil, -1}, {&many, nil, 10_001}}},
			[]string{"start_stitches OUT_OF_RANGE", "points[0].height_rows OUT_OF_RANGE", "points[0].stitches OUT_OF_RANGE",
				"points[1].height_rows OUT_OF_RANGE", "points[1].stitches OUT_OF_RANGE"}},
		"nan": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &nan, 12}}, Gauge: standard},
			[]string{"points[0].height_cm NOT_FINITE"}},
		"no gauge": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &cm, 12}}}, []string{"gauge REQUIRED"}},
		"bad gauge": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &cm, 0}}, Gauge: &gauge.Gauge{Rows: 1}},
			[]string{"points[0].stitches REQUIRED", "gauge.stitches REQUIRED"}},
		"no row": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &tiny, 12}},
			Gauge: &gauge.Gauge{Stitches: 5, Rows: 5}}, []string{"points[0].height_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"downward": {sideOf(100, [2]int{36, 88}, [2]int{36, 104}), []string{"points[1].height_rows CONTRADICTORY"}},
		"straight": {sideOf(100, [2]int{36, 100}, [2]int{46, 100}), []string{"start_stitches INFEASIBLE", "points INFEASIBLE"}},
		"odd":      {sideOf(100, [2]int{36, 89}, [2]int{46, 89}), []string{"start_stitches INFEASIBLE", "points[0].stitches INFEASIBLE"}},
		"odd inside": {sideOf(100, [2]int{36, 90}, [2]int{46, 91}),
			[]string{"points[0].stitches INFEASIBLE", "points[1].stitches INFEASIBLE"}},
		"few rows": {sideOf(100, [2]int{4, 80}, [2]int{46, 90}),
			[]string{"points[0].stitches INFEASIBLE", "points[0].height_rows INFEASIBLE"}},
		"narrow": {sideOf(8, [2]int{40, 2}), []string{"start_stitches INFEASIBLE", "points[0].stitches INFEASIBLE",
			"edge_stitches INFEASIBLE"}},
		"round": {with(base, func(in *ShapedSideInput) { in.Construction, in.FirstSide = stitch.InTheRound, stitch.WrongSide }),
			[]string{"first_side CONTRADICTORY"}},
		"enums": {with(base, func(in *ShapedSideInput) {
			in.Construction, in.Edges, in.EdgeChangeStitches, in.EdgeStitches, in.RowChoice, in.FirstSide, in.Spread,
				in.DisplayUnit = 3, 4, &three, &zero, 3, 3, 5, 3
		}), []string{"construction UNKNOWN_VALUE", "edges UNKNOWN_VALUE", "edge_change_stitches OUT_OF_RANGE", "edge_stitches OUT_OF_RANGE",
			"row_choice UNKNOWN_VALUE", "first_side UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanShapedSide(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}
