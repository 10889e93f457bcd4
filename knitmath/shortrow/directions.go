package shortrow

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// explained says once what the words of a way of turning mean. Common practice.
func (m TurnMethod) explained() string {
	switch m {
	case TurnMethodGerman:
		return "Note: make DS: with the yarn in front slip 1, then pull the yarn up over the needle until the stitch shows both its legs. " +
			"k DS, p DS: work both legs together as one stitch."
	case TurnMethodYarnOver:
		return "Note: the yo after a turn is made as the next row begins; it is closed by k2tog or ssp, together with the stitch beyond the turn."
	}
	return "Note: w&t: slip the next stitch, bring the yarn to the other side of the work, slip the stitch back, and turn. " +
		"Tog with its wrap: lift the wrap onto the needle and work it with its stitch as one."
}

// rowDirections appends "Row 2 (WS): w&t, p18." for every row.
func rowDirections(d []string, rows []WedgeRow) []string {
	for _, r := range rows {
		d = append(d, "Row "+strconv.Itoa(r.RowNumber)+" ("+r.Side.String()+"): "+r.Instruction.Row.Text()+".")
	}
	return d
}

// Directions write the wedge as a pattern would: where it begins, what its words
// mean, every row, and what is on the needle after it.
func (o Wedge) Directions() []string {
	if len(o.Rows) == 0 {
		return nil
	}
	stitches := report.CountOf(o.width, "stitches")
	d := []string{
		"Begin with " + stitches + " on the needle and a " + sideWords(o.Rows[0].Side) + " row to work.",
		o.method.explained(),
	}
	d = rowDirections(d, o.Rows)
	return append(d, "All gaps are closed: "+stitches+", and a "+sideWords(o.Rows[len(o.Rows)-1].Side.Other())+" row is next.")
}

// sideWords is a side in full.
func sideWords(side stitch.Side) string {
	if side == stitch.WrongSide {
		return "wrong-side"
	}
	return "right-side"
}

// Directions write the order that the wedges are worked in, before any row of
// theirs; then every kind of wedge once, and how the last row meets the first.
func (o Circle) Directions() []string {
	d := []string{
		"Cast on " + report.CountOf(o.WidthStitches, "stitches") + ", provisionally if the ends are to be grafted. " +
			"Right-side rows begin at the outer edge.",
		o.method.explained(),
		o.orderDirection(),
	}
	for i, w := range o.Wedges {
		d = rowDirections(append(d, "Wedge "+strconv.Itoa(i+1)+":"), w.Rows)
	}
	if o.WedgeCount > 1 {
		d = append(d, "Once all "+report.CountOf(o.WedgeCount, "wedges")+" are worked:")
	}
	d = append(d, o.joinDirection())
	if o.WantedInnerRows == 0 {
		d = append(d, "Close the centre: run the tail through the edge of all "+report.CountOf(o.InnerRows, "rows")+
			" there, draw it tight and fasten it.")
	}
	return d
}

// orderDirection says how many wedges there are and in which order. One that
// stood after the rows of all kinds would have them worked once too often.
func (o Circle) orderDirection() string {
	if o.WedgeCount == 1 {
		return "Work 1 wedge, whose rows follow."
	}
	return "Work " + report.CountOf(o.WedgeCount, "wedges") + ": " + OrderWords(o.Sequence) +
		". The rows of each follow, written once. Each begins with the right-side row after the last row of the one before, on all " +
		report.CountOf(o.WidthStitches, "stitches") + "; nothing is cast on or bound off between them."
}

// OrderWords is "[wedge 1, then wedge 2 (twice)] 7 times, then wedge 1".
func OrderWords(runs []CircleWedgeRun) string {
	var order []string
	for i := 0; i < len(runs); {
		length, times := repeated(runs[i:])
		group := make([]string, length)
		for j, run := range runs[i : i+length] {
			group[j] = "wedge " + strconv.Itoa(run.WedgeNumber)
			if run.Times > 1 {
				group[j] += " (" + report.Times(run.Times) + ")"
			}
		}
		words := strings.Join(group, ", then ")
		if times > 1 {
			words = "[" + words + "] " + report.Times(times)
		}
		order = append(order, words)
		i += length * times
	}
	return strings.Join(order, ", then ")
}

// repeated is how many runs at the beginning are worked again and again, and how
// often: those that so cover the most runs, the fewest of them.
func repeated(runs []CircleWedgeRun) (length, times int) {
	length, times = 1, 1
	for l := 1; 2*l <= len(runs); l++ {
		n := 1
		for (n+1)*l <= len(runs) && slices.Equal(runs[:l], runs[n*l:(n+1)*l]) {
			n++
		}
		if n > 1 && n*l > length*times {
			length, times = l, n
		}
	}
	return length, times
}

// joinDirection says how the last row meets the cast-on edge. A grafted row is one
// more: the edges then have one row more than was counted.
func (o Circle) joinDirection() string {
	how := "bind off and sew that edge to the cast-on edge, or graft the stitches to those of the provisional cast-on, " +
		"which adds a row."
	switch {
	case o.degrees < fullTurn:
		return "Bind off. The piece lies flat, as part of a circle. For a cone, " + how
	case o.degrees > fullTurn:
		return "The piece is more than a full turn and ruffles. To close it, " + how
	}
	return "To close the circle, " + how
}
