package neck

import (
	"sort"

	"example.com/knitmath/knitmath/report"
)

// A boat neck has no depth to let a head through, only its width: where nobody says, that is
// the narrowest that does. Beyond two thirds of the width across it slips off the shoulders.
// From memory; common practice.
const boatShareOver, boatShareUnder = 2, 3

// widestNeck is the widest neck that is advised on a width.
func widestNeck(width int) int { return min(width*boatShareOver/boatShareUnder, MaxNeckStitches) }

// isBoatByDefault reports whether the width of a boat neck is left to be found.
func (in Input) isBoatByDefault() bool {
	return in.Shape == ShapeBoat && in.widthByDefault()
}

// tooNarrow reports whether a head is to go through and does not.
func (o Neckline) tooNarrow() bool { return o.GoesOverHead != nil && !*o.GoesOverHead }

// widened is a boat neck as wide as the head wants it, and the same where none does.
func (o Neckline) widened() Neckline {
	x, ok := combOf(o.in.NeckRule, o.WidthStitches%2)
	if !ok {
		return o
	}
	step := int(x.step)
	asked := func(more int) (Neckline, error) {
		in := o.in
		in.NeckStitches = new(o.NeckStitches + (more+1)*step)
		return plan(in)
	}
	tries := max(0, widestNeck(o.WidthStitches)-o.NeckStitches) / step
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
	return ", nor does any boat neck up to two thirds of the width, " + report.CountOf(widestNeck(o.WidthStitches), "stitches")
}
