package knitmath_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// randomTaper is a taper of any kind.
func randomTaper(rng *rand.Rand) shaping.TaperInput {
	in := shaping.TaperInput{Construction: stitch.Construction(1 + rng.IntN(2)), Edges: shaping.ShapedEdges(1 + rng.IntN(3)),
		EdgeChangeStitches: knittest.Ptr(1 + rng.IntN(2)), HeightRows: knittest.Ptr(6 + rng.IntN(90)),
		ToleranceStitches: knittest.Ptr([]float64{0, 0.5, 1, 2}[rng.IntN(4)])}
	if rng.IntN(4) == 0 {
		in.Spread, in.ToleranceStitches = shaping.IntervalSpread(1+rng.IntN(3)), nil
	}
	if in.Construction == stitch.Flat && rng.IntN(3) == 0 {
		in.FirstSide = stitch.WrongSide
	}
	if rng.IntN(4) == 0 {
		in.EvenBeforeRows, in.EvenAfterRows = knittest.Ptr(rng.IntN(4)), knittest.Ptr(rng.IntN(4))
	}
	in.StartStitches = 10 + rng.IntN(60)
	in.EndStitches = in.StartStitches + 2*rng.IntN(24)
	if rng.IntN(2) == 0 {
		in.StartStitches, in.EndStitches = in.EndStitches, in.StartStitches
	}
	return in
}

// directionsAgree checks that directions are read, that every count agrees, and that they come
// to so many stitches after so many rows.
func directionsAgree(t *testing.T, directions []string, q pattern.CheckInstructionsInput, end, rows int) {
	t.Helper()
	for _, d := range directions {
		if m := ungrammatical.FindString(d); m != "" {
			t.Errorf("%q in %q", m, d)
		}
	}
	q.Text = strings.Join(directions, "\n")
	checked, err := pattern.CheckInstructions(t.Context(), q)
	if err != nil || !checked.Agrees || checked.EndStitches[0] != end || checked.WorkedRows[0] != rows {
		t.Errorf("%s\n%v, %v after %v rows, want %d after %d: %+v", q.Text, err,
			checked.EndStitches, checked.WorkedRows, end, rows, checked.Findings)
	}
}

// Whatever is planned for one size on rows of one side, in whatever order of its
// intervals, is read and comes to its stitches in its rows.
func TestTapersAreReadBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 31))
	planned, lists := 0, 0
	for range knittest.Sweep(3000, 500) {
		in := randomTaper(rng)
		out, err := shaping.PlanTaper(in)
		if err != nil {
			continue
		}
		planned++
		if len(out.Intervals) > 6 {
			lists++
		}
		directionsAgree(t, out.Directions(), pattern.CheckInstructionsInput{StartStitches: []int{in.StartStitches}, Construction: in.Construction,
			FirstSide: in.FirstSide}, out.Rows[len(out.Rows)-1].EndStitches, out.HeightRows)
		if t.Failed() {
			return
		}
	}
	if planned < knittest.Sweep(900, 150) || lists < knittest.Sweep(30, 5) {
		t.Errorf("%d planned, %d lists", planned, lists)
	}
}

// Likewise sides of several stretches, narrowing, straight and widening.
func TestShapedSidesAreReadBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 13))
	planned := 0
	for range knittest.Sweep(2000, 400) {
		one := randomTaper(rng)
		in := shaping.ShapedSideInput{StartStitches: 40 + rng.IntN(60), Construction: one.Construction, Edges: one.Edges,
			FirstSide: one.FirstSide, Spread: one.Spread, ToleranceStitches: one.ToleranceStitches}
		count, row := in.StartStitches, 0
		for range 1 + rng.IntN(4) {
			count, row = max(count+2*(rng.IntN(14)-7), 6), row+1+rng.IntN(30)
			in.Points = append(in.Points, shaping.SidePoint{HeightRows: knittest.Ptr(row), Stitches: count})
		}
		out, err := shaping.PlanShapedSide(in)
		if err != nil {
			continue
		}
		planned++
		directionsAgree(t, out.Directions(), pattern.CheckInstructionsInput{StartStitches: []int{in.StartStitches}, Construction: in.Construction,
			FirstSide: in.FirstSide}, count, out.HeightRows)
		if t.Failed() {
			return
		}
	}
	if planned < knittest.Sweep(600, 120) {
		t.Errorf("%d planned", planned)
	}
}
