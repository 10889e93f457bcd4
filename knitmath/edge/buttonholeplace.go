package edge

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
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

// vetBandPlaces settles the distances from the ends and the gaps between.
func vetBandPlaces(c *fault.Checks, b *band, in ButtonholesInput) {
	b.askedFirst, b.askedLast = -1, -1
	if in.BeforeFirst != nil || in.BeforeFirstCm != nil {
		b.askedFirst = b.along().Counted(in.BeforeFirst, in.BeforeFirstCm)
	}
	if in.AfterLast != nil || in.AfterLastCm != nil {
		b.askedLast = b.along().Counted(in.AfterLast, in.AfterLastCm)
	}
	fields := b.distanceFields(in)
	first, last, inner := b.placed(b.holes, b.length())
	switch {
	case b.holes == 1 && inner != 0:
		c.Infeasible("the distances and the hole come to "+report.CountOf(b.length()-inner, b.noun())+", and the band has "+
			strconv.Itoa(b.length())+"; give one distance only", fields...)
		return
	case !b.fits(first, last, inner, b.holes):
		c.Infeasible(b.tooManyHoles(), fields...)
		return
	}
	b.first, b.last = first, last
	b.noteMoves()
	b.layGaps(inner)
}

// placed is where a number of holes would lie on a band of some length: the
// places before the first and after the last, and those left between for the
// gaps. Where only right-side rows bind off, an even number of rows lies before
// every hole, and the outer holes move inward to come out so.
func (b band) placed(holes, length int) (first, last, inner int) {
	room := length - holes*b.places()
	first, last = b.askedFirst, b.askedLast
	switch {
	case holes > 1 && last < 0:
		last = first
	case holes == 1 && first < 0 && last < 0:
		first = room / 2
		last = room - first
	case holes == 1 && last < 0:
		last = room - first
	case holes == 1 && first < 0:
		first = room - last
	}
	if b.rightSideOnly() {
		switch {
		case holes > 1:
			first += first & 1
			last += (length - last - holeRows) & 1
		case first&1 == 1 && last > 1:
			first, last = first+1, last-1
		case first&1 == 1:
			first, last = first-1, last+1
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
	}{{"before_first", in.BeforeFirst != nil}, {"before_first_cm", in.BeforeFirstCm != nil},
		{"after_last", in.AfterLast != nil}, {"after_last_cm", in.AfterLastCm != nil}} {
		if f.given {
			fields = append(fields, f.name)
		}
	}
	return fields
}

// noteMoves says which of the outer holes moved to a right-side row.
func (b *band) noteMoves() {
	moved := func(which string) {
		b.notices = append(b.notices, report.Notice{Reason: "MOVED_TO_RIGHT_SIDE", Field: "bind_off_rows",
			Description: "the " + which + " hole would be bound off on the wrong side; it is moved by one row"})
	}
	asked := b.askedLast
	if asked < 0 {
		asked = b.askedFirst
	}
	switch {
	case b.holes == 1 && (b.askedFirst >= 0 && b.first != b.askedFirst || b.askedLast >= 0 && b.last != b.askedLast):
		moved("only")
	case b.holes == 1:
	default:
		if b.first != b.askedFirst {
			moved("first")
		}
		if b.last != asked {
			moved("last")
		}
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
		b.notices = append(b.notices, report.Notice{Reason: "NOT_MIRRORED", Field: "",
			Description: report.CountOf(gaps, "gaps") + " cannot share " + report.CountOf(inner, b.noun()) + " so that they read the same from both ends; " +
				"the larger are mixed evenly among the others"})
		return
	}
	for _, r := range runs {
		for range r.Times {
			b.gaps = append(b.gaps, unit*r.Stitches)
		}
	}
}

// tooManyHoles says what the holes need and what would fit.
func (b band) tooManyHoles() string {
	possible := func(holes, length int) bool {
		first, last, inner := b.placed(holes, length)
		return b.fits(first, last, inner, holes) && (holes > 1 || inner == 0)
	}
	s := "these distances and " + report.CountOf(b.holes, "holes") + " "
	length := b.length() + 1
	for length <= stitch.MaxStitches && !possible(b.holes, length) {
		length++
	}
	if length <= stitch.MaxStitches {
		s += "need a band of at least " + report.CountOf(length, b.noun()) + ", and it has " + strconv.Itoa(b.length())
	} else {
		s += "fit no band of at most " + report.CountOf(stitch.MaxStitches, b.noun())
	}
	for holes := b.holes - 1; holes > 1; holes-- {
		if possible(holes, b.length()) {
			return s + "; " + report.CountOf(holes, "holes") + " would fit"
		}
	}
	switch {
	case b.rightSideOnly():
		return s + "; give other distances, or let any row bind off"
	case b.alongRows:
		return s + "; give shorter distances"
	}
	return s + "; give shorter distances or narrower holes"
}
