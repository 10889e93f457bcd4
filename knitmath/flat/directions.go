package flat

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
	"strconv"
)

// Directions write the piece as a pattern would.
func (o Shape) Directions() []string {
	if o.circle != nil {
		return o.circle.Directions()
	}
	d := []string{o.begin()}
	switch {
	case o.of.form == FormBiasStrip:
		d = append(d, "Row 1 (RS): "+o.Rows[0].Instruction.Row.Text()+" ("+report.CountOf(o.EndStitches, "stitches")+").",
			"Row 2 (WS): work even.")
		if o.TotalRows > 2 {
			d = append(d, "Repeat rows 1 and 2 "+report.Again(o.TotalRows/2-1)+": "+countRows(o.TotalRows, false)+" in all.")
		}
	default:
		d = append(d, o.told()...)
	}
	return append(d, o.finish())
}

// begin is how the piece is cast on.
func (o Shape) begin() string {
	s := "Cast on " + report.CountOf(o.StartStitches, "stitches")
	switch {
	case o.of.round && o.of.inwards, o.of.form == FormRing:
		return s + " and join in the round."
	case o.of.round:
		return s + " (in a ring that the tail closes) and join in the round."
	}
	return s + ". Row 1 is a right-side row."
}

// told are all rows: those that follow a rule by that, and others one by one.
func (o Shape) told() []string {
	before, ruled, after := o.parts()
	d, last := o.rowByRow(before, 0)
	if len(ruled) > 0 {
		d, last = append(d, o.byRule(ruled, last)...), ruled[len(ruled)-1].RowNumber
	}
	closing, last := o.rowByRow(after, last)
	return report.AppendEven(append(d, closing...), noun(o.of.round), last+1, o.TotalRows)
}

// rowByRow are rows that change the count, how many lie between them after row last, and which is the last then.
func (o Shape) rowByRow(rows []Row, last int) ([]string, int) {
	var d []string
	nouns := report.Sentence(noun(o.of.round))
	for _, r := range rows {
		d = report.AppendEven(d, noun(o.of.round), last+1, r.RowNumber-1)
		head := nouns + " " + strconv.Itoa(r.RowNumber)
		if r.Side != stitch.SideUnspecified {
			head += " (" + r.Side.String() + ")"
		}
		d = append(d, head+": "+r.Instruction.Row.Text()+" ("+report.CountOf(r.Instruction.EndStitches, "stitches")+").")
		last = r.RowNumber
	}
	return d, last
}

// finish is what becomes of the last stitches.
func (o Shape) finish() string {
	switch {
	case o.of.inwards && o.of.round && o.of.form != FormRing:
		return "Cut the yarn, draw it through the " + report.CountOf(o.EndStitches, "stitches") + " that are left, and pull it tight."
	case o.of.inwards && !o.of.round:
		return "Fasten off."
	case o.of.form == FormSector:
		return "Bind off loosely, so that the edge is as long as the row below it. Close the centre with the tail."
	case o.of.form == FormBiasStrip:
		return "Bind off. As it is worked, the strip leans to the right, seen from the right side."
	case o.of.round && o.of.form != FormRing:
		return "Bind off loosely. Close the middle with the tail."
	}
	return "Bind off loosely, so that the edge is as long as the row below it."
}
