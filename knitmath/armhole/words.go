package armhole

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// alike reports whether back and front are worked alike.
func (o Armhole) alike() bool { return o.set.front == o.set.back && o.set.frontLost == o.set.backLost }

// Summary says the answer in words.
func (o Armhole) Summary() string {
	unit := o.set.unit
	s := "The back goes from " + fromTo(o.Back)
	if o.Back.StartStitches == o.Back.EndStitches {
		s = "The back goes straight up on " + report.CountOf(o.Back.StartStitches, "stitches")
	}
	switch {
	case o.alike():
		s += ", and so does the front"
	case o.Front.StartStitches == o.Front.EndStitches:
		s += ", the front on " + report.CountOf(o.Front.StartStitches, "stitches")
	default:
		s += ", the front from " + fromTo(o.Front)
	}
	s += "; armholes " + unit.Size(o.Back.HeightCm) + " deep"
	edge := "the edge of the cap "
	switch {
	case o.set.style == StyleSaddle:
		s += ", half of the strap on top of that. The sleeve's cap is " + unit.Size(o.Cap.HeightCm) + " high, from " + fromTo(o.Cap) +
			", which go on as a strap of " + report.CountOf(o.Strap.Rows, "rows") + " (" + unit.Size(o.Strap.LengthCm) + ") along shoulders of " +
			unit.Size(o.Strap.ShoulderCm) + ". "
	case o.set.style.straight():
		edge = "the edge of the sleeve "
		s += ". The sleeve ends straight, at " + report.CountOf(o.Cap.StartStitches, "stitches") + " (" + unit.Size(o.CapTopCm) + "). "
	default:
		s += ". The sleeve's cap is " + unit.Size(o.Cap.HeightCm) + " high, from " + fromTo(o.Cap) + ". "
	}
	return s + "Along the seam an armhole is " + unit.Size(o.ArmholeEdgeCm) + " around and " + edge + unit.Size(o.CapEdgeCm) +
		" long: " + o.longer() + "."
}

// fromTo is "110 to 70 stitches".
func fromTo(p Piece) string {
	return strconv.Itoa(p.StartStitches) + " to " + report.CountOf(p.EndStitches, "stitches")
}

// Directions are both pieces and the sleeve's end, as patterns print them. How a decrease row is
// worked is the same in all of them.
func (o Armhole) Directions() []string {
	lines := curve.ShapingRows(slices.Concat(o.Back.Rows, o.Front.Rows, o.Cap.Rows), 2)
	name := "Back"
	if o.alike() {
		name = "Back and front"
	}
	lines = append(lines, o.bodyOf(name, o.sew.back)...)
	if !o.alike() {
		lines = append(lines, o.bodyOf("Front", o.sew.front)...)
	}
	if o.set.style.straight() {
		return append(lines, o.straightSleeve()...)
	}
	lines = append(lines, directionsOf("Sleeve cap", o.sew.top)...)
	if o.set.style != StyleSaddle {
		return append(lines, "BO remaining "+report.CountOf(o.sew.top.top, "stitches")+".",
			"Sew the cap in: its foot to the underarm, the middle of its top to the shoulder seam; "+
				"ease in what is longer over the top.")
	}
	return append(lines,
		"Strap: work "+report.CountOf(o.Strap.Rows, "rows")+" even, then place the "+report.CountOf(o.Strap.Stitches, "stitches")+
			" on hold for the neck.",
		"Sew the cap in: its foot to the underarm, the foot of the strap to the ends of the shoulders; then one edge of the strap "+
			"along the front shoulder and the other along the back.")
}

// bodyOf tells a back or a front.
func (o Armhole) bodyOf(name string, p shaped) []string {
	if p.lost > 0 {
		return append(directionsOf(name, p), o.shouldersOf(p)...)
	}
	return append([]string{name + ": mark both edges where the armholes begin.",
		"Work " + report.CountOf(p.rows, "rows") + " even to the shoulders: " + report.CountOf(p.start, "stitches") + "."}, o.shouldersOf(p)...)
}

// shouldersOf says what comes next.
func (o Armhole) shouldersOf(p shaped) []string {
	left := p.start - 2*p.lost
	if o.Strap == nil {
		return []string{"Note: the shoulders begin here, and the neck where its depth wants it; " + report.CountOf(left, "stitches") +
			" are left for both."}
	}
	n := o.Strap.ShoulderStitches
	neck := report.CountOf(left-2*n, "stitches")
	return []string{"BO " + report.CountOf(n, "sts") + " at beg of next 2 rows: " + neck + ".",
		"Place the remaining " + neck + " on hold for the neck.",
		"Note: a neck that is deeper in front begins lower."}
}

// directionsOf tells one piece that is shaped.
func directionsOf(name string, p shaped) []string {
	lines := []string{name + ":", "Note: the first bind-off is in a right-side row, on " + report.CountOf(p.start, "stitches") + "."}
	return append(lines, p.plan.Condensed(curve.Wording{FirstRow: 1, LastRow: p.rows, Start: p.start})...)
}

// straightSleeve tells the end of a sleeve without a cap.
func (o Armhole) straightSleeve() []string {
	p := o.sew.top
	if p.rows == 0 {
		return []string{"Sleeve, at its top: BO all " + report.CountOf(p.start, "stitches") + ".",
			"Sew the sleeve's top between the marks, its middle to the shoulder seam."}
	}
	return []string{"Sleeve, at its top: mark both edges.", "Work " + report.CountOf(p.rows, "rows") + " even, then BO all " +
		report.CountOf(p.start, "stitches") + ".",
		"Sew the sleeve's top to the upright edges, its middle to the shoulder seam, and its edges above the marks to what is bound off " +
			"at the underarms."}
}

// longer is "2.5 % longer".
func (o Armhole) longer() string {
	if percent := measure.Decimal(o.CapExcessPercent, 1); percent != "0" {
		return percent + " % longer"
	}
	return "just as long"
}
