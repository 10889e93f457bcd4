package neck

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// checkBoundOff compares the heights of all that is bound off with those of the steps.
func checkBoundOff(t *testing.T, at string, heights []int, out Neckline, p Piece, top int) {
	t.Helper()
	want := map[int]int{}
	for i, n := range out.ShoulderStepStitches {
		want[top-2*(len(out.ShoulderStepStitches)-1-i)] += n
		want[p.NeckRowNumber-1+p.SecondSideDepthRows-2*(len(out.ShoulderStepStitches)-1-i)] += n
	}
	for _, s := range p.Steps {
		if s.BoundOff {
			want[s.FirstSideRowNumber-1] += s.Stitches
			want[s.SecondSideRowNumber-1] += s.Stitches
		}
	}
	for side, list := range p.layout.outer {
		for _, e := range list {
			if e.bindOff {
				want[p.NeckRowNumber-1+e.row] += e.stitches
				armholes[side]++
			}
		}
	}
	if !p.layout.held {
		want[p.NeckRowNumber-1] += p.CentreStitches
	}
	for _, h := range heights {
		want[h]--
	}
	for h, n := range want {
		if n != 0 {
			t.Fatalf("%s: %d stitches bound off at height %d are too few or too many: %v", at, n, h, heights)
		}
	}
}

// checkSteps adds up what goes at the neck.
func checkSteps(t *testing.T, at string, in Input, out Neckline, p Piece) {
	t.Helper()
	sum := p.CentreStitches
	for _, s := range p.Steps {
		sum += 2 * s.Stitches
	}
	shoulder := 0
	for _, n := range out.ShoulderStepStitches {
		shoulder += n
	}
	if front := p.layout.piece == "front"; front && in.FrontWidthStitches != nil && p.NeckStitches+2*shoulder != *in.FrontWidthStitches ||
		(!front || in.FrontWidthStitches == nil) && p.NeckStitches != out.NeckStitches {
		t.Fatalf("%s: a neck of %d", at, p.NeckStitches)
	}
	if sum != p.NeckStitches || shoulder != out.ShoulderStitches || out.NeckStitches+2*shoulder != out.WidthStitches {
		t.Fatalf("%s: %d of a neck of %d, shoulders of %d, width %d", at, sum, out.NeckStitches, shoulder, out.WidthStitches)
	}
}

// checkEdge: the neck's edge is as long as that of the fabric, from the middle to the last row
// below the shoulder's end; the second side's as long as its own steps make it.
func checkEdge(t *testing.T, at string, p Piece, f *stitch.Fabric, firstDone int) {
	t.Helper()
	st, rw := p.layout.st, p.layout.rw
	from := p.NeckRowNumber
	left := f.Selvedge(stitch.LeftHand, from, from-1+p.DepthRows)
	knittest.Near(t, at+": first side", p.EdgeCm, left.SewnCm(st.SizeCm(1), rw.SizeCm(1), 0), 1e-9)
	right := f.Selvedge(stitch.RightHand, firstDone+1, firstDone+p.SecondSideDepthRows)
	if !p.layout.held { // the middle is bound off where the second side begins
		right = right.Slice(p.CentreStitches, right.Len())
	}
	want := curve.SewnCm(stepsAt(p.layout.edges.second), 1, p.SecondSideDepthRows, 0, st, rw)
	knittest.Near(t, at+": second side", want, right.SewnCm(st.SizeCm(1), rw.SizeCm(1), 0), 1e-9)
	if p.layout.in.Shape == ShapeV && p.layout.piece == "front" || p.CentreStitches >= p.NeckStitches {
		return
	}
	off := max(offEllipse(p, left), offEllipse(p, right))
	row := rw.SizeCm(1) / st.SizeCm(1) // by which the foot lies higher: bind-offs begin a row above the middle's
	if p.layout.in.ToleranceStitches == nil {
		farthest, high = max(farthest, off), max(high, off/row)
	}
	if off > p.GreatestDepartureStitches+row {
		t.Fatalf("%s: %v stitches off on the fabric, %v said: %v", at, off, p.GreatestDepartureStitches,
			p.Steps)
	}
}

// farthest and high are how far the corners of round edges lie from their ellipses, in stitches and
// rows, where nobody says how far they may.
var farthest, high float64

// offEllipse is how far the corners of a knit edge lie, as the crow flies, from the quarter of an
// ellipse whose foot is the middle of the neck's foot and which is upright two rows below the
// shoulders. The fabric is measured from the row that divides, whose top is where the edge begins.
func offEllipse(p Piece, edge stitch.Edge) float64 {
	half, high, begins := float64(p.NeckStitches)/2, float64(curveRows(p.layout.depth)), float64(p.CentreStitches)/2
	ellipse := []knittest.Corner{{Up: -1}} // the middle's end, above which the curve begins
	for k := range 401 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(k) / 400)
		if half*sin >= begins {
			ellipse = append(ellipse, knittest.Corner{Across: half*sin - begins, Up: high*(1-cos) - 1})
		}
	}
	ellipse = append(ellipse, knittest.Corner{Across: half - begins, Up: float64(p.layout.depth)})
	st, off := p.layout.st.SizeCm(1), 0.0
	for _, c := range knittest.Corners(edge) {
		if c.Up--; c.Up >= 0 {
			off = max(off, knittest.DistanceCm(c, ellipse, st, p.layout.rw.SizeCm(1))/st)
		}
	}
	return off
}
