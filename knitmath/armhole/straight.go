package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// nearlyWhole is what a count may miss by the rounding of floats.
const nearlyWhole = 1e-9

// straight settles a sleeve without a cap: its even rows above the underarm's marks, and
// as many stitches as make its edge as long as those of back and front.
func (s *settled) straight(c *fault.Checks, in Input) {
	if !c.Passes(func() { s.settleDropped(c, in) }) {
		return
	}
	if s.underarm > 0 {
		s.capRows = max(1, s.rw.Nearest(measure.Micrometres(s.st.SizeCm(s.underarm))))
	}
	around, sides := s.edgeCm(s.bodice(s.back))+s.edgeCm(s.bodice(s.front)), 2*s.rw.SizeCm(s.capRows)
	counts := func(percent float64) float64 { return (around*(1+percent/100) - sides) / s.st.SizeCm(1) }
	least := max(1, measure.CeilQuotient(counts(MinExcess)-nearlyWhole, 1))
	most := -measure.CeilQuotient(-counts(MaxExcess)-nearlyWhole, 1) // rounded down
	wanted := counts(s.excess)
	if c.Passes(func() { s.settleStraight(c, in, around, wanted, least, most) }) && (s.sleeve < MinWidth || s.sleeve > MaxWidth) {
		c.Infeasible(fmt.Sprintf("a sleeve as wide as twice the depth comes to %s; from %d to %d are planned",
			report.CountOf(s.sleeve, "stitches"), MinWidth, MaxWidth), s.depthField, "gauge")
	}
	s.top = s.sleeve
}

// settleStraight settles the stitches of a sleeve that is sewn to an edge of so many cm: what is given, or the count
// nearest to what is wanted, from the least to the most.
func (s *settled) settleStraight(c *fault.Checks, in Input, around, wanted float64, least, most int) {
	long := measure.Decimal(MinExcess, 0) + " to " + measure.Decimal(MaxExcess, 0) + " % longer than the " + s.unit.Size(around) +
		" of an armhole"
	if given := in.SleeveStitches; given != nil {
		if s.sleeve = *given; s.sleeve < least || s.sleeve > most {
			c.Infeasible(fmt.Sprintf("its edge is to be %s; from %d to %d stitches are", long, least, most), "sleeve_stitches", s.depthField)
		}
		return
	}
	num, den := s.st.Exact(measure.Micrometres(wanted * s.st.SizeCm(1)))
	var ok bool
	if s.sleeve, ok = s.rules.sleeve.Among(num, den, least, most, 1); !ok {
		c.Infeasible(fmt.Sprintf("allows no count of stitches that makes the sleeve's edge %s: from %d to %d", long, least, most),
			"sleeve_rule", s.depthField)
	}
}

// settleDropped settles the underarm of a modified drop, which is all that an edge loses.
func (s *settled) settleDropped(c *fault.Checks, in Input) {
	if s.style == StyleDrop {
		return
	}
	most := (min(s.back, s.front) - 1) / 2
	switch {
	case s.backLost > 0:
		s.underarm = s.backLost
		if s.frontLost = s.backLost; s.underarm > most {
			c.Infeasible(fmt.Sprintf("%d at each edge leave nothing of the front", s.underarm), s.acrossField)
		}
		return
	case in.UnderarmStitches != nil:
		s.underarm = *in.UnderarmStitches
	case in.UnderarmRule != nil:
		s.ruledUnderarm(c, int64(s.usualDrop()), 1, most)
	default:
		s.underarm = min(s.usualDrop(), most)
	}
	if s.underarm > most {
		c.Infeasible("leaves nothing of the piece", "underarm_stitches")
	}
	s.backLost, s.frontLost = s.underarm, s.underarm
}

// mostDropped is the widest bind-off of a modified drop that is published, to the nearest stitch.
func (s settled) mostDropped() int {
	return max(1, s.st.Nearest(measure.Micrometres(dropMostInches*measure.CmPerInch)))
}

// usualDrop is what a modified drop binds off where nobody says.
func (s settled) usualDrop() int {
	return min(max(1, int(measure.HalfUpDiv(int64(s.back), dropShare))), s.mostDropped())
}

// bodice is a back or a front that goes straight up above its underarm.
func (s settled) bodice(start int) shaped {
	p := shaped{start: start, lost: s.underarm, rows: s.depth}
	if s.underarm > 0 {
		p.plan.Right = []curve.Step{{RowNumber: 1, Kind: curve.KindBindOff, Stitches: s.underarm}}
		p.plan.Left = []curve.Step{{RowNumber: underarmRows, Kind: curve.KindBindOff, Stitches: s.underarm}}
		p.plan.Runs = withUnderarm(s.underarm, nil)
		p.plan.Effort = effortOfUnderarm
	}
	return p
}

// straightPieces are back, front and the end of the sleeve.
func (s settled) straightPieces() sewn {
	return sewn{s.bodice(s.back), s.bodice(s.front), shaped{start: s.sleeve, rows: s.capRows, top: s.sleeve}}
}

// uprightCm is the edge of a piece that is not shaped, to the middle of its top.
func (s *settled) uprightCm(p shaped) float64 { return s.rw.SizeCm(p.rows) + s.st.SizeCm(p.top)/2 }
