package neck

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// bandDirections say what is picked up, in the order in which it is met.
func (o Neckline) bandDirections() []string {
	joined, begins := "the shoulders joined", "at the right shoulder"
	if o.in.strap() > 0 {
		joined, begins = "the straps sewn in", "where the back meets the right strap"
	}
	s := "Band: with " + joined + " and the right side facing, begin " + begins + ", as worn, and pick up and knit "
	names := map[SectionPlace]string{SectionPlaceBack: "across the back", SectionPlaceLeftFront: "down the left front",
		SectionPlaceFrontCentre: "across the middle of the front", SectionPlaceRightFront: "up the right front",
		SectionPlaceLeftStrap: "of the left strap", SectionPlaceRightStrap: "of the right strap"}
	for i, x := range o.sectionsThere() {
		if i > 0 {
			s += ", "
		}
		s += strconv.Itoa(x.Stitches) + " " + names[x.Place]
		switch {
		case x.LiveStitches > 0 && x.LiveStitches == x.Stitches:
			s += ", off the holder"
		case x.LiveStitches > 0:
			s += " (the " + report.CountOf(x.LiveStitches, "held stitches") + " of its middle among them)"
		}
	}
	d := []string{s + ": " + report.CountOf(o.PickedUpStitches, "stitches") + ". Join to work in the round."}
	if o.in.Shape == ShapeV && o.Front.layout.held && o.Front.CentreStitches > 0 {
		d = append(d, "Note: mark the middle of the front: there a ribbed band decreases 2 stitches, in every round if it is narrow, "+
			"in every 2nd if it is wide.")
	}
	return d
}

// sectionsThere are the sections that have stitches.
func (o Neckline) sectionsThere() []Section {
	var list []Section
	for _, s := range o.Sections {
		if s.Stitches > 0 {
			list = append(list, s)
		}
	}
	return list
}
