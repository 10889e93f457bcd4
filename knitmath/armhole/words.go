package armhole

import (
	"strconv"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Summary says the answer in words.
func (o Armhole) Summary() string {
	unit := o.set.unit
	s := "The back goes from " + fromTo(o.Back)
	if o.set.front != o.set.back || o.set.frontLost != o.set.backLost {
		s += ", the front from " + fromTo(o.Front)
	} else {
		s += ", and so does the front"
	}
	s += "; armholes " + unit.Size(o.Back.HeightCm) + " deep. The sleeve's cap is " + unit.Size(o.Cap.HeightCm) + " high, from " +
		fromTo(o.Cap) + ". "
	return s + "Along the seam an armhole is " + unit.Size(o.ArmholeEdgeCm) + " around and the edge of the cap " + unit.Size(o.CapEdgeCm) +
		" long: " + measure.Decimal(o.CapExcessPercent, 1) + " % longer."
}

// fromTo is "110 to 70 stitches".
func fromTo(p Piece) string {
	return strconv.Itoa(p.StartStitches) + " to " + report.CountOf(p.EndStitches, "stitches")
}

// Directions are both pieces and the cap, as patterns print them, and then row by row,
// right and left edge alike.
func (o Armhole) Directions() []string {
	same := o.set.front == o.set.back && o.set.frontLost == o.set.backLost
	name := "Back"
	if same {
		name = "Back and front"
	}
	lines := directionsOf(name, o.sew.back)
	if !same {
		lines = append(lines, directionsOf("Front", o.sew.front)...)
	}
	lines = append(lines, directionsOf("Sleeve cap", o.sew.top)...)
	return append(lines, "Sew the cap in: its foot to the underarm, the middle of its top to the shoulder seam; "+
		"ease in what is longer over the top.")
}

// directionsOf tells one piece.
func directionsOf(name string, p shaped) []string {
	lines := []string{name + ", from the first bind-off, on the right side:"}
	lines = append(lines, p.plan.Condensed(curve.Wording{FirstRow: 1, LastRow: p.rows, Start: p.start})...)
	if p.top > 0 {
		lines = append(lines, "BO remaining "+report.CountOf(p.top, "stitches")+".")
	}
	return lines
}
