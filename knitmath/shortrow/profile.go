package shortrow

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
)

// A profile is the height wanted across the width of a piece, in millionths of a row:
// through points that are equally spaced from the right edge to the left, both edges
// included. It is read under the middle of every stitch.
type profile struct {
	width  int
	wanted curve.Strokes[int64]
}

// straight is the profile of a wedge that rises by so many rows.
func straight(width, rise int, tall TallEnd) profile {
	high := int64(rise) * 1e6
	points := []int64{high, 0}
	switch tall {
	case TallEndLeft:
		points = []int64{0, high}
	case TallEndCentre:
		points = []int64{0, high, 0}
	case TallEndSides:
		points = []int64{high, 0, high}
	}
	return profile{width, curve.Evenly(points...)}
}

// at is the height under the middle of the stitch with x stitches to its right,
// num/den rows. With m straight pieces that middle lies (2x+1)*m/2W pieces from
// the right edge. den is at most 2e10 and num at most 4e13, so that both may be
// doubled safely.
func (p profile) at(x int) (num, den int64) {
	pieces := len(p.wanted) - 1
	num, den = p.wanted.At(int64((2*x+1)*pieces), int64(2*p.width))
	return num, den * 1e6
}

// rowsAt is at as a float.
func (p profile) rowsAt(x int) float64 {
	num, den := p.at(x)
	return float64(num) / float64(den)
}

// pairs is, for every stitch, the whole number of pairs of rows that the
// rounding chooses for the profile.
func (p profile) pairs(r measure.Rounding) []int {
	pairs := make([]int, p.width)
	for x := range pairs {
		num, den := p.at(x)
		pairs[x] = int(measure.RoundedDiv(num, 2*den, r))
	}
	return pairs
}

// eased brings neighbouring stitches to within one pair of each other, which is
// as steep as turns one stitch apart can be. Of all such heights it gives those
// that leave the wanted ones least at the worst stitch: half-way between the
// highest steps that lie nowhere above the wanted pairs and the lowest that lie
// nowhere below them. It reports whether it changed anything.
//
// Source: own derivation. The two envelopes are min(p(y) + |x-y|) and
// max(p(y) - |x-y|); any function of slope at most one lies as far from p
// somewhere as half their distance.
func eased(pairs []int) ([]int, bool) {
	under, over := append([]int(nil), pairs...), append([]int(nil), pairs...)
	for x := 1; x < len(pairs); x++ {
		under[x] = min(under[x], under[x-1]+1)
		over[x] = max(over[x], over[x-1]-1)
	}
	for x := len(pairs) - 2; x >= 0; x-- {
		under[x] = min(under[x], under[x+1]+1)
		over[x] = max(over[x], over[x+1]-1)
	}
	changed := false
	for x := range under {
		under[x] = (under[x] + over[x]) / 2
		changed = changed || under[x] != pairs[x]
	}
	return under, changed
}

// grouped moves the turns of a flank so that equal steps between them stand
// together, the larger nearest the tall end.
func grouped(places []int) []int {
	steps := make([]int, len(places)-1)
	for i := range steps {
		steps[i] = places[i+1] - places[i]
	}
	slices.Sort(steps)
	slices.Reverse(steps)
	out := []int{places[0]}
	for i, step := range steps {
		out = append(out, out[i]+step)
	}
	return out
}

// departure is the greatest distance between the short rows that lie under a
// stitch and the profile, in rows.
func (p profile) departure(rows []int) float64 {
	worst := 0.0
	for x, r := range rows {
		worst = max(worst, math.Abs(float64(r)-p.rowsAt(x)))
	}
	return worst
}

// RowsUnder is how many rows lie under each stitch, from the right edge.
func (o Wedge) RowsUnder() []int {
	rows := make([]int, len(o.heights))
	for i, short := range o.heights {
		rows[i] = short + o.FullRows
	}
	return rows
}
