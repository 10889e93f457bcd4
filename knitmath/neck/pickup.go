package neck

import (
	"fmt"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// pickUp counts the stitches that a band takes up around the neck: of what is bound off
// one for each stitch, and along a slope as many as are as long, all times the stitches
// of the band to those of the piece; held stitches as they are. The sum goes to the
// nearest count that the band's rule allows, or to the next where that leaves too few for
// a part, and the sections share what that adds or takes, the two sides of the front alike.
func (o *Neckline) pickUp(p setting) error {
	var c fault.Checks
	band := p.st
	if o.in.BandGauge != nil {
		band, _ = gauge.Vet(&c, "band_gauge", o.in.BandGauge)
	}
	along := func(cm float64) float64 { return cm * band.PerCm() }
	front, back := o.Front.layout, o.Back.layout
	centre := func(l *layout) (wanted float64, live int) {
		if l.held {
			return float64(l.centre), l.centre
		}
		return along(p.st.SizeCm(l.centre)), 0
	}
	middle, live := centre(front)
	behind, liveBehind := centre(back)
	side := func(place SectionPlace) Section {
		return Section{Place: place, WantedStitches: along(o.Front.EdgeCm), LengthCm: o.Front.EdgeCm, EdgeRows: o.Front.DepthRows}
	}
	o.Sections = []Section{{Place: SectionPlaceBack, WantedStitches: behind + 2*along(o.Back.EdgeCm), LiveStitches: liveBehind,
		LengthCm: p.st.SizeCm(back.centre) + 2*o.Back.EdgeCm, EdgeRows: 2 * o.Back.DepthRows}}
	if p.in.strap() > 0 {
		o.Sections = append(o.Sections, p.strapSection(SectionPlaceLeftStrap))
	}
	o.Sections = append(o.Sections, side(SectionPlaceLeftFront),
		Section{Place: SectionPlaceFrontCentre, WantedStitches: middle, LiveStitches: live, LengthCm: p.st.SizeCm(front.centre)},
		side(SectionPlaceRightFront))
	if p.in.strap() > 0 {
		o.Sections = append(o.Sections, p.strapSection(SectionPlaceRightStrap))
	}
	sum := 0
	for i := range o.Sections {
		s := &o.Sections[i]
		s.Stitches = int(measure.RoundHalfUp(s.WantedStitches))
		sum += s.Stitches
		o.WantedStitches += s.WantedStitches
	}
	x, _ := combOf(o.in.BandRule, anyParity)
	n := sum
	if o.in.BandRule != nil {
		n, _ = x.fit(amount{measure.ToMillionths(o.WantedStitches), 1e6})
	}
	around := o.Sections
	if !o.takes(n, sum, around) && (x.rounding == measure.RoundingDown || !o.takes(n+int(x.step), sum, around)) {
		c.Infeasible(fmt.Sprintf("the neck wants %s stitches, and the count of the rule, %d, leaves none for a part of it",
			measure.Decimal(o.WantedStitches, 1), n), "band_rule")
		return c.Err()
	}
	o.OpeningCm = band.SizeCm(o.PickedUpStitches)
	o.StretchedCm = o.OpeningCm * fault.Or(o.in.StretchRatio, usualStretch)
	return nil
}

// section is the one at a place, which must be there.
func (o *Neckline) section(place SectionPlace) *Section {
	i := slices.IndexFunc(o.Sections, func(s Section) bool { return s.Place == place })
	return &o.Sections[i]
}

// takes shares so many stitches among sections that have another sum, and reports whether all of them are left some.
func (o *Neckline) takes(n, sum int, sections []Section) bool {
	o.Sections, o.PickedUpStitches = slices.Clone(sections), n
	return o.share(n-sum) == 0
}

// share adds stitches to the sections, or takes them, by their length: both sides of the
// front as many, then the back. A front without sides shares with the back by its middle.
// What straps hold stays as it is. It says how many could not be taken.
func (o *Neckline) share(n int) int {
	back, left, middle, right := o.section(SectionPlaceBack), o.section(SectionPlaceLeftFront),
		o.section(SectionPlaceFrontCentre), o.section(SectionPlaceRightFront)
	if n == 0 {
		return 0
	}
	if left.Stitches > 0 {
		each := n * left.Stitches / (back.Stitches + 2*left.Stitches)
		left.Stitches += each
		right.Stitches += each
		n -= 2 * each
	} else if middle.LiveStitches == 0 {
		some := n * middle.Stitches / max(1, back.Stitches+middle.Stitches)
		middle.Stitches += some
		n -= some
	}
	back.Stitches += n
	if least := back.LiveStitches; back.Stitches < least || left.Stitches < 0 || middle.Stitches < 0 {
		return back.Stitches - least
	}
	return 0
}
