package armhole

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// Charted people whose caps are free, at ten gauges. As published caps have it (testdata/armhole/caps.csv
// and common practice), a cap leans in quickly above its underarm, 4 in its middle, and quickly again in
// small steps to its top, as the rows as knit tell: by the stitches that go in each third of its height,
// and by how much quicker or slower than the step before one comes. It bent at once in 47 of 100:
// decreases every 4th row, and then 6 bound off.
func TestCapsAreBells(t *testing.T) {
	asked, boxy, abrupt, slow, wide, heights := 0, 0, 0, 0, 0, 0.0
	for i, g := range [][2]float64{{20, 28}, {22, 30}, {18, 24}, {14, 19}, {16, 22}, {24, 32}, {26, 34}, {28, 36}, {30, 42}, {21, 29}} {
		if i >= knittest.Sweep(10, 2) {
			break
		}
		for _, who := range charted {
			out, err := Plan(Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: &who[1],
				ArmholeDepthCm: &who[2], UpperArmCm: &who[3]})
			if err != nil {
				continue
			}
			asked++
			heights += float64(out.Cap.HeightRows) / float64(out.Back.HeightRows)
			thirds, even := lostInThirds(out.Cap)
			if thirds[1] > thirds[0] || thirds[1] > thirds[2] {
				boxy++
			}
			if greatestBend(out.Cap) > 4 {
				abrupt++
			}
			if even > slowest {
				slow++
			}
			if last := out.Cap.Steps[len(out.Cap.Steps)-1]; float64(last.Stitches)/g[0]*10 > 1.25*measure.CmPerInch {
				wide++
			}
		}
	}
	share := func(n int) float64 { return 100 * float64(n) / float64(asked) }
	mean := heights / float64(asked)
	t.Logf("%d caps: %.1f %% no bells, %.1f %% bend at once, %.1f %% with more than %d rows even, %.1f %% with a last step wider than "+
		"1.25 in; %.3f of the armhole high", asked, share(boxy), share(abrupt), share(slow), slowest, share(wide), mean)
	for what, over := range map[string]float64{"no bells": share(boxy) - 8, "bend at once": share(abrupt) - 3, "stand even": share(slow) - 1,
		"end in a wide step": share(wide) - 1, "far from the published 0.647 and 0.67": math.Abs(mean-0.66) - 0.03} {
		if over > 0 {
			t.Errorf("caps %s", what)
		}
	}
}

// lostInThirds is how many stitches an edge loses above its underarm in each third of the rows, what
// lies on the border shared by their heights, and how many rows lie from one step to the next at most.
func lostInThirds(cap Piece) (thirds [3]float64, even int) {
	low, high := float64(underarmRows), float64(cap.HeightRows)
	for i, s := range cap.Steps[1:] {
		before := cap.Steps[i].RowNumber
		even = max(even, s.RowNumber-before)
		from, to := float64(s.RowNumber-1), float64(s.RowNumber+1) // bound off at either edge in one of two rows
		for k := range thirds {
			foot, top := low+(high-low)*float64(k)/3, low+(high-low)*float64(k+1)/3
			thirds[k] += float64(s.Stitches) * max(0, min(to, top)-max(from, foot)) / 2
		}
	}
	return thirds, even
}

// greatestBend is how many times as quick or as slow as the step before the next comes at the most, a
// pace being rows to a stitch.
func greatestBend(cap Piece) float64 {
	most, last := 0.0, 0.0
	for i, s := range cap.Steps[1:] {
		pace := float64(s.RowNumber-cap.Steps[i].RowNumber) / float64(s.Stitches)
		if i > 0 {
			most = max(most, pace/last, last/pace)
		}
		last = pace
	}
	return most
}
