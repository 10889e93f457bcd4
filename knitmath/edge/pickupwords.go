package edge

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// ratioWords is "3 stitches for every 4 rows".
func ratioWords(x spread.Fraction) string {
	s := report.CountOf(int(x.Num), "stitches") + " for every "
	if x.Den == 1 {
		return s + "row"
	}
	return s + report.CountOf(int(x.Den), "rows")
}

// oneRepeat is the items of a row that is one repeat: so many, one skipped, and how often.
const oneRepeat = 3

// Directions write what to do.
func (o PickUp) Directions() []string {
	about := ", about " + o.Ratio.Text
	if o.Effort <= oneRepeat {
		about = "" // the row itself says it, and exactly
	}
	d := []string{"With the right side facing, pick up and knit " + report.CountOf(o.Stitches.Count, "stitches") +
		" along the edge" + about + ": " + o.Instruction.Row.Text() + "."}
	if o.SkippedRows+o.DoubledRows > 1 && !o.palindrome() {
		d = append(d, "Along the edge opposite, as of the other front, work these in reverse order.")
	}
	of := " of the " + report.CountOf(o.LengthRows, "rows") + " along the edge "
	switch {
	case o.SkippedRows == 1:
		d = append(d, "1"+of+"is skipped.")
	case o.SkippedRows > 0:
		d = append(d, strconv.Itoa(o.SkippedRows)+of+"are skipped.")
	case o.DoubledRows == o.LengthRows:
		d = append(d, "Every row along the edge takes two stitches.")
	case o.DoubledRows == 1:
		d = append(d, "1"+of+"takes two stitches.")
	case o.DoubledRows > 0:
		d = append(d, strconv.Itoa(o.DoubledRows)+of+"take two stitches.")
	}
	return d
}

// palindrome reports whether the row is the same from its other end.
func (o PickUp) palindrome() bool {
	runs, err := stitch.Expand(o.Instruction.Row, o.LengthRows)
	if err != nil {
		return true // no row of ours, as the tests show
	}
	backwards := slices.Clone(runs)
	slices.Reverse(backwards)
	return slices.Equal(runs, backwards)
}

// Summary says the answer in words.
func (o PickUp) Summary() string {
	return "Pick up " + report.CountOf(o.Stitches.Count, "stitches") + " along " + report.CountOf(o.LengthRows, "rows") + ": a band of " +
		o.unit.Size(o.Stitches.SizeCm) + " on an edge of " + o.unit.Size(o.Stitches.AskedCm) + ". " + o.ratioAlone() + "."
}

// ratioAlone says what the ratio by itself would give, beside the stitches that are
// picked up, to a tenth.
func (o PickUp) ratioAlone() string {
	parts := o.LengthRows*o.Ratio.Stitches - o.Stitches.Count*o.Ratio.Rows // of a stitch, as many as the ratio has rows
	off := float64(parts) / float64(o.Ratio.Rows)
	is := "As a ratio, " + o.Ratio.Text + ", which by itself gives "
	switch much := measure.Decimal(max(off, -off), 1); {
	case parts == 0:
		return is + "just as many"
	case much == "0":
		return is + "as many, to a tenth of a stitch"
	case parts > 0:
		return is + report.AmountOf(much, "stitches") + " more"
	default:
		return is + report.AmountOf(much, "stitches") + " fewer"
	}
}
