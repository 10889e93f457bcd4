package neck

import (
	"sort"

	"example.com/knitmath/knitmath/report"
)

// Where nobody says how wide a neck is, it is a third of the width, or the narrowest beyond
// that which goes over the head, up to as wide a part as is published (see mostShare). A boat
// neck has no depth to let a head through, only its width: beyond two thirds of the width
// across it slips off the shoulders. From memory; common practice.
const boatShare = 2.0 / 3

// widestNeck is the widest neck that is taken or advised on a width.
func (in Input) widestNeck(width int) int {
	share := mostShare
	if in.Shape == ShapeBoat {
		share = boatShare
	}
	return min(int(float64(width)*share+nearlyStitch), MaxNeckStitches)
}

// nearlyStitch is what a share of stitches may be off by the rounding of floats.
const nearlyStitch = 1e-9

// findsWidth reports whether the width of the neck is left to be found. Between straps it is
// not: they are as long as the shoulders beside a third (see package armhole).
func (in Input) findsWidth() bool { return in.widthByDefault() && in.strap() == 0 }

// isBoatByDefault reports whether the width of a boat neck is left to be found.
func (in Input) isBoatByDefault() bool {
	return in.Shape == ShapeBoat && in.widthByDefault()
}

// tooNarrow reports whether a head is to go through and does not.
func (o Neckline) tooNarrow() bool { return o.GoesOverHead != nil && !*o.GoesOverHead }

// remedied reports whether the neck is small enough for others to be tried.
func (o Neckline) remedied() bool {
	return o.in.Shape == ShapeBoat || o.Front.DepthRows+o.Back.DepthRows+o.NeckStitches <= remedyMost
}

// widened is a neck as wide as the head wants it, and the same where none does.
func (o Neckline) widened() Neckline {
	x, ok := combOf(o.in.NeckRule, o.WidthStitches%2)
	if !ok || !o.remedied() {
		return o
	}
	step := int(x.step)
	asked := func(more int) (Neckline, error) {
		in := o.in
		in.NeckStitches = new(o.NeckStitches + (more+1)*step)
		return plan(in)
	}
	tries := max(0, o.in.widestNeck(o.WidthStitches)-o.NeckStitches) / step
	enough := sort.Search(tries, func(more int) bool {
		out, err := asked(more)
		return err == nil && !out.tooNarrow()
	})
	if enough == tries {
		return o
	}
	wider, err := asked(enough)
	if err != nil {
		return o
	}
	wider.in = o.in
	return wider
}

// boatWords say that no boat neck is wide enough, of one whose width was left to be found.
func (o Neckline) boatWords() string {
	if !o.in.isBoatByDefault() {
		return ""
	}
	return ", nor does any boat neck up to two thirds of the width, " + report.CountOf(o.in.widestNeck(o.WidthStitches), "stitches")
}
