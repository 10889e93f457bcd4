package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// refuseBands refuses bands that have no counts: it names every band of which one
// other repeat would do, and the neck's tolerance that would, or what else would do.
func refuseBands(c *fault.Checks, y *circular, s scheme, in CircularInput, places []place, counts bandCounts) {
	if y.tried {
		c.Infeasible("", "bands", y.neckField)
		return
	}
	free, top := counts.reachable()
	type detail struct{ text, field string }
	var details []detail
	for i, p := range places {
		if p.band == noBand {
			continue
		}
		if repeat, n := counts.nearestRepeat(i, free[i]); repeat > 0 && in.withRepeat(p.band, repeat).goesOn() {
			details = append(details, detail{fmt.Sprintf("no count that it divides lies between the counts of the bands beside it and the neck; "+
				"the nearest repeat that would do is %d, on %d stitches", repeat, n),
				fault.Join(fault.Index("bands", p.band), "repeat_stitches")})
		}
	}
	if nearest, ok := neckInReach(top, y.neck); ok && in.withTolerance(measure.Abs(nearest-y.neck)).goesOn() {
		details = append(details, detail{fmt.Sprintf("the nearest neck that these bands come down to has %d stitches where %d are wanted; "+
			"a tolerance of %d would do", nearest, y.neck, measure.Abs(nearest-y.neck)), "neck_tolerance_stitches"})
	}
	remedies := in.remedies(y)
	if in.halved(y, s) && in.withLoss(MaxGreatestLoss).goesOn() {
		remedies = append(remedies, "rounds that may take half of the stitches, which is a largest_loss_percent of 50,")
	}
	if len(details) == 0 {
		c.Infeasible(fmt.Sprintf("no counts divide in every band and come down from %d to %d stitches with rounds that take at most "+
			"%s %% of the stitches, nor would they with one other repeat%s", y.join, y.neck,
			measure.Decimal(100*(1-counts.takes.kept()), 1), wouldDo(remedies)), "bands", y.neckField)
		return
	}
	details[len(details)-1].text += wouldDo(remedies)
	for _, d := range details {
		c.Infeasible(d.text, d.field)
	}
}

// mostNeckOffered is how far from the wanted neck another is offered, in percent:
// farther it is another garment. Own choice.
const mostNeckOffered = 15

// neckInReach is the count nearest to the wanted neck that can be had, if that is not
// too far to offer.
func neckInReach(can []bool, wanted int) (nearest int, ok bool) {
	for n, had := range can {
		if had && (nearest == 0 || measure.Abs(n-wanted) < measure.Abs(nearest-wanted)) {
			nearest = n
		}
	}
	return nearest, nearest >= MinNeck && 100*measure.Abs(nearest-wanted) <= mostNeckOffered*wanted
}

// nearestRepeat is the repeat nearest to a place's own, the smaller of two equally
// near, that divides a count which can be had there and goes on to the neck; and
// the greatest such count. It is 0 if there is none. free is which counts can be had.
func (c bandCounts) nearestRepeat(place int, free []bool) (repeat, count int) {
	p := c.places[place]
	ways := make([]bool, len(free))
	some := false
	for n := max(p.lo, 1); n <= min(p.hi, len(free)-1); n++ {
		ways[n] = free[n] && c.goesOn(place, n)
		some = some || ways[n]
	}
	for off := 1; some && off < gauge.MaxMultiple; off++ {
		for _, r := range [...]int{p.repeat - off, p.repeat + off} {
			if r < 1 || r > gauge.MaxMultiple {
				continue
			}
			for n := (len(free) - 1) / r * r; n > 0; n -= r {
				if ways[n] {
					return r, n
				}
			}
		}
	}
	return 0, 0
}
