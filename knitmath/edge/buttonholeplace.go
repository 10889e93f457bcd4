package edge

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
)

// length is the number of places along the band: its stitches or its rows.
func (b band) length() int {
	if b.alongRows {
		return b.rows
	}
	return b.stitches
}

// places is how many of them a hole takes.
func (b band) places() int {
	if b.alongRows {
		return holeRows
	}
	return b.width
}

// along is the gauge in the direction of the band.
func (b band) along() gauge.Density {
	if b.alongRows {
		return b.rw
	}
	return b.st
}

// vetPlaces settles the distances from the ends and the gaps between.
func (b *band) vetPlaces(c *fault.Checks, in ButtonholesInput) {
	b.askedFirst, b.askedLast = b.distance(in.BeforeFirstPlaces, in.BeforeFirstCm), b.distance(in.AfterLastPlaces, in.AfterLastCm)
	fields := b.distanceFields(in)
	first, last, inner := b.placed(b.holes, b.length())
	switch {
	case b.holes == 1 && inner != 0:
		c.Infeasible("the distances and the hole come to "+report.CountOf(b.length()-inner, b.noun())+", and the band has "+
			strconv.Itoa(b.length())+b.oneDistance(), fields...)
		return
	case !b.fits(first, last, inner, b.holes):
		c.Infeasible(b.tooManyHoles(), fields...)
		return
	}
	b.first, b.last = first, last
	b.noteMoves()
	b.layGaps(inner)
}

// distance is a distance from an end as asked, in places; nil where it is not.
func (b band) distance(count *int, cm *float64) *int {
	if count == nil && cm == nil {
		return nil
	}
	return new(b.along().Counted(count, cm))
}

// placed is where a number of holes would lie on a band of some length: the
// places before the first and after the last, and those left between for the
// gaps. Where only right-side rows bind off, an even number of rows lies before
// every hole, and the outer holes move inward to come out so.
func (b band) placed(holes, length int) (first, last, inner int) {
	room := length - holes*b.places()
	switch asked, also := b.askedFirst, b.askedLast; {
	case asked != nil && also != nil:
		first, last = *asked, *also
	case holes > 1: // which have asked for the first
		first, last = *asked, *asked
	case asked != nil:
		first, last = *asked, room-*asked
	case also != nil:
		first, last = room-*also, *also
	default:
		first, last = room/2, room-room/2
	}
	if b.rightSideOnly() {
		// A single hole whose distance from the end is asked moves away from the
		// end, any other away from the beginning; the other way where there is no
		// row left.
		down := b.askedFirst == nil && b.askedLast != nil && first > 1 || last <= 1
		switch {
		case holes > 1:
			first += first & 1
			last += (length - last - holeRows) & 1
		case first&1 == 1 && down:
			first, last = first-1, last+1
		case first&1 == 1:
			first, last = first+1, last-1
		}
	}
	return first, last, room - first - last
}

// rightSideOnly reports whether only every other row may bind off.
func (b band) rightSideOnly() bool { return b.alongRows && b.step == 2 }

// fits reports whether there is a place before the first hole and after the last,
// and one between any two; two where only right-side rows bind off.
func (b band) fits(first, last, inner, holes int) bool {
	least := 1
	if b.rightSideOnly() {
		least = 2
	}
	return first >= 1 && last >= 1 && inner >= (holes-1)*least
}

// distanceFields are the fields that settle where the holes lie.
func (b band) distanceFields(in ButtonholesInput) []string {
	fields := []string{"band_stitches"}
	if b.alongRows {
		fields[0] = "band_rows"
	}
	fields = append(fields, "hole_count")
	if !b.alongRows {
		if in.HoleCm != nil {
			fields = append(fields, "hole_cm")
		} else {
			fields = append(fields, "hole_stitches")
		}
	}
	for _, f := range []struct {
		name  string
		given bool
	}{{"before_first_places", in.BeforeFirstPlaces != nil}, {"before_first_cm", in.BeforeFirstCm != nil},
		{"after_last_places", in.AfterLastPlaces != nil}, {"after_last_cm", in.AfterLastCm != nil}} {
		if f.given {
			fields = append(fields, f.name)
		}
	}
	return fields
}

// noteMoves says which of the outer holes moved to a right-side row.
func (b *band) noteMoves() {
	moved := func(which string) {
		b.notices = append(b.notices, report.Notice{Reason: MovedToRightSide, Field: "row_choice",
			Description: "the " + which + " hole would be bound off on the wrong side; it is moved by one row"})
	}
	first, last := fault.Or(b.askedFirst, b.first) != b.first, fault.Or(b.askedLast, b.last) != b.last
	if b.holes == 1 {
		if first || last {
			moved("only")
		}
		return
	}
	if first {
		moved("first")
	}
	if fault.Or(b.askedLast, *b.askedFirst) != b.last {
		moved("last")
	}
}

// layGaps shares out what is left between the holes.
func (b *band) layGaps(inner int) {
	gaps, unit := b.holes-1, 1
	if gaps == 0 {
		return
	}
	if b.rightSideOnly() {
		unit = 2 // inner is even: so are the rows before the first hole and before the last
	}
	b.gaps = make([]int, 0, gaps)
	runs, mirrored := spread.Palindrome(gaps, inner/unit)
	if !mirrored {
		for i := range gaps {
			b.gaps = append(b.gaps, unit*spread.Share(i, gaps, inner/unit))
		}
		b.notices = append(b.notices, report.Notice{Reason: NotMirrored,
			Description: report.CountOf(gaps, "gaps") + " cannot share " + report.CountOf(inner, b.noun()) +
				" so that they read the same from both ends; the larger are mixed evenly among the others"})
		return
	}
	for _, r := range runs {
		for range r.Times {
			b.gaps = append(b.gaps, unit*r.Stitches)
		}
	}
}

// middleRow is the right-side row that leaves most nearly as many rows before
// the holes as after them; of two, the lower. Right-side rows are even here.
func (b band) middleRow() int {
	// Rows before less rows after are 2*row - rows; with row = 2m that is nearest
	// to 0 at m = rows/4 to the nearest, half-way down.
	return (b.rows + 1) / 4 * 2
}
