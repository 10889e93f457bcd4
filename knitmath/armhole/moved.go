package armhole

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// sleeveMoved is "a sleeve of 62 stitches (4.5 cm wider)".
func (s settled) sleeveMoved(was settled) string {
	return "a sleeve of " + report.CountOf(s.sleeve, "stitches") +
		s.by(was.in.UpperArmCm, s.st.SizeCm(s.sleeve-was.sleeve), "wider", "narrower")
}

// topMoved is "a top of 18 stitches".
func (s settled) topMoved(settled) string { return "a top of " + report.CountOf(s.top, "stitches") }

// depthMoved is "armholes of 60 rows (1.4 cm deeper)".
func (s settled) depthMoved(was settled) string {
	return "armholes of " + strconv.Itoa(s.depth+s.lowered) + " rows" +
		s.by(was.in.ArmholeDepthCm, s.rw.SizeCm(s.depth+s.lowered-was.depth-was.lowered), "deeper", "less deep")
}

// capMoved is "a cap of 40 rows (1.4 cm higher)".
func (s settled) capMoved(was settled) string {
	return "a cap of " + strconv.Itoa(s.capRows) + " rows" + was.higher(s)
}

// higher is " (1.4 cm higher)", of a cap that has been moved.
func (s settled) higher(moved settled) string {
	return moved.by(s.in.CapHeightCm, s.rw.SizeCm(moved.capRows-s.capRows), "higher", "lower")
}

// by is " (1.4 cm deeper)": of a measure that is given in cm what it was moved by, nothing where
// that does not come to the count, and of one given as a count so many cm.
func (s settled) by(given *float64, cm float64, more, less string) string {
	if given != nil {
		cm = s.movedCm
	}
	switch {
	case cm == 0:
		return ""
	case cm < 0:
		cm, more = -cm, less
	}
	return " (" + s.unit.Size(cm) + " " + more + ")"
}
