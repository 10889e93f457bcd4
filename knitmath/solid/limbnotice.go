package solid

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// moreOrFewer is how many stitches more or fewer a limb is tried with where its ring is not round. Own choice.
const moreOrFewer = 2

// unround says how far from a circle the rings are that are not round, and what would do.
func (b *revolved) unround(rings []ring) {
	for i, r := range rings {
		s := b.limbs[i].made
		if s.round() {
			continue
		}
		wide := b.st.SizeCm(1)
		said := "this ring is not round: its places lie " + measure.Decimal(s.least/wide, 1) + " to " +
			measure.Decimal(s.greatest/wide, 1) + " stitches from its middle"
		if n := r.rounder(rings, i); n > 0 {
			said += "; with " + report.CountOf(n, "stitches") + " the limb has a round one"
		}
		field := fault.Join(fault.Index("limbs", i), "stitches")
		b.notices = append(b.notices, report.Notice{Reason: LimbUnround, Field: field, Description: said})
	}
}

// rounder is the nearest number of stitches with which a limb has a round ring and meets no other, 0 where none has.
func (r ring) rounder(rings []ring, own int) int {
	others := make([]ring, 0, len(rings))
	others = append(append(others, rings[:own]...), rings[own+1:]...)
	for by := 1; by <= moreOrFewer; by++ {
		for _, n := range [2]int{r.limb.Stitches + by, r.limb.Stitches - by} {
			if n < MinLimbStitches || n > MaxLimbStitches {
				continue
			}
			try := r
			try.limb.Stitches = n
			if limb, ok := try.limbOf(); ok && limb.made.round() && try.clears(others) {
				return n
			}
		}
	}
	return 0
}
