package yoke

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// A piece is stitches of the round that are of one part.
type piece struct {
	name     string
	stitches int
}

// joinDirections tell the parts in the order of work, and where the rounds begin: with the back,
// or where a raise begins, which need not be as wide as the back.
func (o Circular) joinDirections(d *report.Lines) {
	parts, first := o.joined()
	d.Say("Join body and sleeves in the round: ")
	d.Count(o.JoinStitches, "stitches")
	d.Say(". From the beginning of the round, left and right as worn: ")
	for i, p := range parts {
		if i > 0 {
			d.Say(", ")
		}
		d.Say(p.name, " ")
		d.Number(p.stitches)
	}
	d.End(".")
	d.Say("Note: the rounds begin with ", first, ", at a marker")
	if o.BackRaise != nil {
		d.Say(", where the short rows will have their right edge as worn")
	}
	d.End(".")
}

// joined is what the round has from its beginning, and what it begins with in words. A part that
// the beginning cuts comes first with its last stitches, and last with the others. Of an odd number of body
// stitches the back has one more, as in a raglan, and of an odd back the stitch in the middle lies before the centre.
func (o Circular) joined() (parts []piece, first string) {
	body, sleeve := o.BodyStitches-2*o.UnderarmStitches, o.SleeveStitches-o.UnderarmStitches
	back := body - body/2
	parts = []piece{{"back", back}, {"left sleeve", sleeve}, {"front", body / 2}, {"right sleeve", sleeve}}
	if o.BackRaise == nil {
		return parts, "the first stitch of the back"
	}
	skip := back - back/2 - o.BackRaise.BeginBeforeCentreStitches
	if skip < 0 {
		skip += o.JoinStitches
	}
	for skip >= parts[0].stitches {
		skip -= parts[0].stitches
		parts = append(parts[1:], parts[0])
	}
	if skip == 0 {
		return parts, "the first stitch of the " + parts[0].name
	}
	cut := parts[0]
	parts = append(slices.Clone(parts), piece{cut.name, skip})
	parts[0].stitches -= skip
	if parts[0].stitches == 1 {
		return parts, "the last stitch of the " + cut.name
	}
	return parts, "the last " + strconv.Itoa(parts[0].stitches) + " stitches of the " + cut.name
}
