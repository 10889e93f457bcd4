package gauge

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// legalCounts lists what a rule allows, from its definition.
func legalCounts(multiple, offset int) []int {
	var counts []int
	for c := offset; c <= stitch.MaxStitches; c += multiple {
		if c >= 1 {
			counts = append(counts, c)
		}
	}
	return counts
}

// chosenByDefinition goes through all legal counts, for an exact count in tenths
// of a stitch: the nearest, of two equally near the larger; the smallest not
// below; the largest not above. 0 for none.
func chosenByDefinition(counts []int, tenths int, rounding measure.Rounding) (count int, halfway bool) {
	best := -1
	for _, c := range counts {
		away := 10*c - tenths
		switch rounding {
		case measure.RoundingUp:
			if away >= 0 {
				return c, false
			}
		case measure.RoundingDown:
			if away > 0 {
				return count, false
			}
			count = c
		default:
			away = max(away, -away)
			if best >= 0 && away > best {
				return count, halfway
			}
			count, best, halfway = c, away, away == best
		}
	}
	return count, halfway
}

// fit against its definition: every rounding, small and large multiples, with
// and without remainder and edges, in steps of a tenth of a stitch, every half
// among them.
func TestFitByDefinition(t *testing.T) {
	// 10 stitches over 10 cm: as many stitches as cm.
	d := Density{10e6, 100_000}
	for _, shape := range []struct{ multiple, remainder, edge int }{
		{1, 0, 0}, {1, 3, 0}, {2, 0, 0}, {2, 1, 0}, {3, 0, 1}, {4, 2, 1}, {5, 2, 0}, {8, 11, 0}, {12, 1, 2}, {27, 0, 0},
		{1000, 999, 0}, {1, 10_000, 0}, {1, 10_000, 1000},
	} {
		offset := shape.remainder + 2*shape.edge
		counts := legalCounts(shape.multiple, offset)
		for _, rounding := range []measure.Rounding{
			measure.RoundingUnspecified, measure.RoundingNearest, measure.RoundingUp, measure.RoundingDown} {
			r := Rule{int64(shape.multiple), int64(offset), rounding}
			for tenths := 1; tenths < 700; tenths++ {
				got := d.fit(int64(tenths)*1000, r)
				want, half := chosenByDefinition(counts, tenths, rounding)
				if got == nil && want == 0 {
					continue
				}
				if got == nil || got.Count != want {
					t.Fatalf("%+v, rounding %d, %v stitches: got %+v, want %d", shape, rounding, float64(tenths)/10, got, want)
				}
				if rounding <= measure.RoundingNearest && got.Halfway != half {
					t.Fatalf("%+v, %v stitches: half-way is %v", shape, float64(tenths)/10, got.Halfway)
				}
			}
		}
	}
}

// Neighbours are legal and adjacent, and absent only at the ends.
func TestFitNeighbours(t *testing.T) {
	for _, shape := range []struct{ multiple, offset int }{{1, 0}, {2, 1}, {4, 0}, {4, 4}, {6, 13}, {500, 1}, {1000, 0}} {
		counts := legalCounts(shape.multiple, shape.offset)
		place := map[int]int{}
		for i, c := range counts {
			place[c] = i
		}
		d := Density{10e6, 100_000}
		r := Rule{int64(shape.multiple), int64(shape.offset), measure.RoundingNearest}
		for um := int64(1000); um <= 100_000_000; um += 333_700 {
			f := d.fit(um, r)
			if f == nil {
				continue
			}
			i, legal := place[f.Count]
			if !legal {
				t.Fatalf("%+v: %d is not legal", shape, f.Count)
			}
			below, above := 0, 0
			if i > 0 {
				below = counts[i-1]
			}
			if i+1 < len(counts) {
				above = counts[i+1]
			}
			if !isCount(f.Below, below) || !isCount(f.Above, above) {
				t.Fatalf("%+v: beside %d got %+v and %+v, want %d and %d", shape, f.Count, f.Below, f.Above, below, above)
			}
		}
	}
}

// isCount wants a neighbour with a count, or none for 0.
func isCount(n *NeighbourCount, count int) bool {
	if n == nil {
		return count == 0
	}
	return n.Count == count && count > 0
}

// By hand, at 22 stitches to 10 cm. The exact count is width * 2.2.
func TestFitByHand(t *testing.T) {
	d := Density{22e6, 100_000}
	for _, c := range []struct {
		um             int64
		rule           Rule
		count          int
		exact          float64
		halfway        bool
		size, diff     float64
		below, above   int
		belowD, aboveD float64
	}{
		// 51 cm: 112.2; 112 / 2.2 = 50.9090..., 0.0909... less.
		{510_000, Rule{1, 0, measure.RoundingNearest}, 112, 112.2, false, 112 / 2.2, 112/2.2 - 51, 111, 113, 111/2.2 - 51, 113/2.2 - 51},
		// The same in a multiple of 4 and 2 edge stitches: 110 (27*4+2) and 114; 112.2 is 2.2 above and
		// 1.8 below: 114.
		{510_000, Rule{4, 2, measure.RoundingNearest}, 114, 112.2, false, 114 / 2.2, 114/2.2 - 51, 110, 118, 110/2.2 - 51, 118/2.2 - 51},
		{510_000, Rule{4, 2, measure.RoundingDown}, 110, 112.2, false, 50, -1, 106, 114, 106/2.2 - 51, 114/2.2 - 51},
		// 50 cm: 110 exactly, whichever way.
		{500_000, Rule{1, 0, measure.RoundingUp}, 110, 110, false, 50, 0, 109, 111, 109/2.2 - 50, 111/2.2 - 50},
		// 2.5 cm: 5.5, half-way between 5 and 6.
		{25_000, Rule{1, 0, measure.RoundingNearest}, 6, 5.5, true, 6 / 2.2, 6/2.2 - 2.5, 5, 7, 5/2.2 - 2.5, 7/2.2 - 2.5},
		// 5 cm: 11, half-way between 10 and 12.
		{50_000, Rule{2, 0, measure.RoundingNearest}, 12, 11, true, 12 / 2.2, 12/2.2 - 5, 10, 14, 10/2.2 - 5, 14/2.2 - 5},
		// 0.1 cm: 0.22 of a stitch; the smallest count is 1, with none below.
		{1000, Rule{1, 0, measure.RoundingNearest}, 1, 0.22, false, 1 / 2.2, 1/2.2 - 0.1, 0, 2, 0, 2/2.2 - 0.1},
		// 2/2.2 cm cannot be had in micrometres; 5 cm over a multiple of 22: 11 is half-way between 0, which
		// is not legal, and 22: not a half-way case.
		{50_000, Rule{22, 0, measure.RoundingNearest}, 22, 11, false, 10, 5, 0, 44, 0, 15},
	} {
		f := d.fit(c.um, c.rule)
		if f == nil || f.Count != c.count || f.Halfway != c.halfway || !isCount(f.Below, c.below) || !isCount(f.Above, c.above) {
			t.Errorf("%d um, %+v: got %+v", c.um, c.rule, f)
			continue
		}
		knittest.Near(t, "exact", f.Exact, c.exact, 1e-15)
		knittest.Near(t, "asked", f.AskedCm, float64(c.um)/1e4, 0)
		knittest.Near(t, "size", f.SizeCm, c.size, 1e-15)
		knittest.Near(t, "difference", f.DifferenceCm, c.diff, 1e-13)
		knittest.Near(t, "above", f.Above.DifferenceCm, c.aboveD, 1e-13)
		if c.below > 0 {
			knittest.Near(t, "below", f.Below.DifferenceCm, c.belowD, 1e-13)
			knittest.Near(t, "below size", f.Below.SizeCm, float64(c.below)/2.2, 1e-15)
		}
		knittest.Near(t, "above size", f.Above.SizeCm, float64(c.above)/2.2, 1e-15)
	}
}
