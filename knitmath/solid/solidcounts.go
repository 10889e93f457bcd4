package solid

import (
	"math"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// usualWedges are what most toys and balls have. Common practice.
const usualWedges = 6

// mostAround is the most stitches of a round of a solid: two metres across at the usual gauge
// have fewer than half of them.
const mostAround = 3_000

// settleCounts settles the rounds and the count of each.
func settleCounts(c *fault.Checks, b *revolved, in SolidInput) {
	rounds := measure.RoundHalfUp(min(b.way.length()*b.rw.PerCm(), 1e9))
	if rounds < 3 || rounds > MaxSolidRounds {
		c.Infeasible("it would have "+report.CountOf(int(rounds), "rounds")+"; there must be from 3 to "+measure.Decimal(MaxSolidRounds, 0),
			append(fieldsOf(in), "gauge.rows")...)
		return
	}
	if b.flat > MaxSolidWedges {
		c.Infeasible("at this gauge a round must gain more stitches than rounds here can", "gauge.rows")
		return
	}
	n := int(rounds)
	b.wanted, b.counts = make([]float64, n), make([]int, n)
	b.high = b.way.length() / float64(n)
	around := 0.0
	for i := range n {
		b.wanted[i] = 2 * math.Pi * b.way.at((float64(i)+0.5)*b.high).radius * b.st.PerCm()
		around = max(around, b.wanted[i])
	}
	if around < leastAround {
		c.Infeasible("its widest round would have fewer than "+strconv.Itoa(leastAround)+" stitches", append(fieldsOf(in), "gauge.stitches")...)
		return
	}
	b.wedges = fault.Or(in.WedgeCount, b.likedWedges(around))
	most := 0
	for i := range n {
		b.counts[i] = b.nearest(b.wanted[i])
		most = max(most, b.counts[i])
	}
	if most > mostAround {
		c.Infeasible("its widest round would have "+report.CountOf(most, "stitches")+"; at most 3000 are planned", fieldsOf(in)...)
		return
	}
	b.ease()
	b.hold()
	b.point()
	b.atLeast()
	b.balance()
	b.drawIn()
	widest := b.st.SizeCm(slices.Max(b.counts)) / math.Pi
	if asked := fault.Or(in.StuffOpeningCm, 0); b.sewn && asked >= widest {
		c.Infeasible("the body is "+in.DisplayUnit.Size(widest)+" across at its widest, no wider than that opening", "stuff_opening_cm")
	}
}

// leastAround is the fewest stitches of a widest round: with fewer there is no tube.
const leastAround = 4

// drawIn leaves out the last round where it is worked even on the few stitches that are then
// drawn up, unless the surface needs it.
func (b *revolved) drawIn() {
	n := len(b.counts)
	if open := b.way[len(b.way)-1].radius > 0; open || n < 4 || b.counts[n-1] != b.counts[n-2] || b.counts[n-1] > b.wedges {
		return
	}
	off, allowed := b.off()
	if math.Abs(off-float64(b.counts[n-1])) <= max(allowed-1, math.Abs(off)) {
		b.counts, b.wanted = b.counts[:n-1], b.wanted[:n-1]
	}
}

// likedWedges is how many wedges there are unless asked otherwise, where the widest round wants so many stitches: as many as are
// usual and lie flat, or as that wants if it wants fewer, or up to so many more with which the count of a tube comes nearer to
// what it wants.
func (b *revolved) likedWedges(around float64) int {
	best := min(max(usualWedges, measure.CeilQuotient(b.flat, 1)), int(measure.RoundHalfUp(around)))
	tube := 0.0
	for i := range b.wanted {
		if b.steady(i) {
			tube = max(tube, b.wanted[i])
		}
	}
	off := func(wedges int) float64 {
		whole := max(measure.RoundHalfUp(tube/float64(wedges)), 1)
		return math.Abs(float64(int64(wedges)*whole) - tube)
	}
	for n, most := best+1, best+moreWedges; tube > 0 && n <= most; n++ {
		if off(n) < off(best)-0.5 {
			best = n
		}
	}
	return best
}

// moreWedges is how many wedges more than are usual a tube may have. Own choice.
const moreWedges = 3

// steady reports whether a round is one of a tube: of three at least that want the same. The
// two at the middle of a ball do too.
func (b *revolved) steady(i int) bool {
	same := func(j int) bool {
		return j >= 0 && j < len(b.wanted) && math.Abs(b.wanted[j]-b.wanted[i]) < 1e-9
	}
	return same(i-1) && (same(i-2) || same(i+1)) || same(i+1) && same(i+2)
}

// nearest is the count nearest to what is wanted that divides into the wedges.
func (b *revolved) nearest(wanted float64) int {
	return b.wedges * int(max(measure.RoundHalfUp(wanted/float64(b.wedges)), 1))
}

// point brings a sharp end, where fewer than three quarters of the wedges are wanted for two
// rounds or more, to half of them: a tube is no point.
func (b *revolved) point() {
	half := b.wedges / 2
	if b.wedges%2 == 1 || half < 3 {
		return
	}
	wants := func(i int) bool { return b.wanted[i] < 0.75*float64(b.wedges) && !b.steady(i) }
	n := len(b.counts)
	for i := 0; wants(1) && i < n/2 && wants(i); i++ {
		b.counts[i] = half
	}
	for i := n - 1; wants(n-2) && i > n/2 && wants(i); i-- {
		b.counts[i] = half
	}
}

// atLeast gives every round half the stitches of its neighbours, at least: no round gains more
// than it has, or loses more than every second stitch.
func (b *revolved) atLeast() {
	half := func(count int) int { return b.wedges * int(measure.CeilDiv(int64(count), int64(2*b.wedges))) }
	n := len(b.counts)
	for i := n - 2; i >= 0; i-- {
		if b.counts[i+1] > 2*b.counts[i] {
			b.counts[i] = half(b.counts[i+1])
		}
	}
	for i := 1; i < n; i++ {
		if b.counts[i-1] > 2*b.counts[i] {
			b.counts[i] = half(b.counts[i-1])
		}
	}
}
