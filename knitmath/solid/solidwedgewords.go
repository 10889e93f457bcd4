package solid

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
)

// wedgeDirections write a solid of wedges.
func (o Solid) wedgeDirections() []string {
	n := report.CountOf(o.StartStitches, "stitches")
	ends := [...]string{"top", "base"}
	if o.of.in.Start == StartTop {
		ends = [...]string{"base", "top"}
	}
	d := []string{"Cast on " + n + " (provisionally to graft the ends). Right-side rows begin at the " + ends[1] + " and end at the " +
		ends[0] + ".", shortrow.Technique(o.of.in.TurnMethod)}
	if len(o.Wedges) > 1 {
		d = append(d, "Work "+report.CountOf(o.WedgeCount, "wedges")+": "+shortrow.OrderWords(o.Sequence)+
			". The rows of each follow, written once; nothing is cast on or bound off between them.")
	}
	for i, k := range o.Wedges {
		if len(o.Wedges) > 1 {
			d = append(d, "Wedge "+strconv.Itoa(i+1)+":")
		}
		for _, r := range k.Rows {
			d = append(d, "Row "+strconv.Itoa(r.RowNumber)+" ("+r.Side.String()+"): "+r.Instruction.Row.Text()+".")
		}
	}
	if len(o.Wedges) == 1 && o.WedgeCount > 1 {
		d = append(d, "Repeat rows 1-"+strconv.Itoa(len(o.Wedges[0].Rows))+" "+report.Again(o.WedgeCount-1)+". These are "+
			report.CountOf(o.WedgeCount, "wedges")+".")
	}
	closed := 0
	for i, open := range [...]bool{o.openFirst, o.openLast} {
		if !open {
			closed++
			d = append(d, "Close the "+ends[1-i]+
				": run a thread through the edge stitch of every second row there, draw it tight and fasten it.")
		}
	}
	seam := "Bind off and sew that edge to the cast-on edge, or graft the stitches to those of the provisional cast-on, " +
		"which adds a row."
	if closed == 2 {
		seam += " Stuff it before the last of the seam is closed."
	}
	return append(d, seam)
}
