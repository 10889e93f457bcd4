package yoke

import "example.com/knitmath/knitmath/fault"

// withParities has counts that nobody asked for differ by a stitch from those of the
// percentage system where that lets the parts come down, two stitches at a time, to
// what was asked for at the neck: an underarm holds one stitch fewer, a sleeve has one
// more. A designer who wants 30 stitches in front does not mind whether 20 or 21 are
// held at the underarm.
func withParities(in RaglanInput) RaglanInput {
	underarm, sleeve := percent(in.BodyStitches, underarmPercent), percent(in.BodyStitches, sleevePercent)
	if in.UnderarmStitches == nil && underarm > 0 && in.oddLoss(underarm, fault.Or(in.SleeveStitches, sleeve)) {
		underarm--
		in.UnderarmStitches = &underarm
	}
	if top := in.SleeveTopStitches; top != nil && in.SleeveStitches == nil && odd(sleeve-fault.Or(in.UnderarmStitches, underarm)-*top) {
		sleeve++
		in.SleeveStitches = &sleeve
	}
	return in
}

// oddLoss says whether a part that the underarm takes from would have to lose an odd
// number of stitches. A sleeve counts only where it is given, and back and front leave
// the choice: one that is not given can be had one stitch wider. Lines take an even
// number from every part.
func (in RaglanInput) oddLoss(underarm, sleeve int) bool {
	body := in.BodyStitches - 2*underarm
	switch {
	case in.FrontNeckStitches != nil:
		return odd(body/2 - *in.FrontNeckStitches)
	case in.BackNeckStitches != nil:
		return odd(body - body/2 - *in.BackNeckStitches)
	case in.SleeveTopStitches != nil && in.SleeveStitches != nil:
		return odd(sleeve - underarm - *in.SleeveTopStitches)
	}
	return false
}

func odd(n int) bool { return n%2 != 0 }
