package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
)

// The outline's lines stand as far apart as part and line are wide, round by
// round, and are mirror images.
func TestRaglanOutline(t *testing.T) {
	for body := 60; body <= 200; body += 20 {
		for line := range 4 {
			in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, LineStitches: &line, WithOutline: true}
			out, err := PlanRaglan(in)
			if err != nil {
				t.Fatal(err)
			}
			o := out.Outline
			outlinetest.CheckFrame(t, o)
			if len(o.Lines) != 6 || o.X.Unit != outline.UnitCm || o.Y.Unit != outline.UnitCm || o.Y.Least != 0 {
				t.Fatalf("%d lines, axes %+v, %+v", len(o.Lines), o.X, o.Y)
			}
			knittest.Near(t, "depth", o.Y.Greatest, out.DepthCm, 1e-12)
			for round := 0; round <= out.DepthRounds; round++ {
				n := [3]int{out.Back.StartStitches, out.Front.StartStitches, out.Sleeve.StartStitches}
				if round > 0 {
					r := out.Rounds[round-1]
					n = [3]int{r.BackStitches, r.FrontStitches, r.SleeveStitches}
				}
				for part := range n {
					right, left := o.Lines[2*part], o.Lines[2*part+1]
					y := float64(round) / 3
					knittest.Near(t, right.Name, outlinetest.At(right, t, y), float64(n[part]+line)/2/2.2, 1e-9)
					knittest.Near(t, left.Name, outlinetest.At(left, t, y), -float64(n[part]+line)/2/2.2, 1e-9)
				}
			}
			for _, l := range o.Lines {
				outlinetest.CheckCorners(t, l)
			}
		}
	}
	if out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 100}); err != nil ||
		out.Outline != nil {
		t.Errorf("an outline that nobody asked for, %v", err)
	}
}
