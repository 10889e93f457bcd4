package curve

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// AfterBindOff says how a row goes on that has bound off.
const AfterBindOff = "The stitch left on the right needle by binding off is the first of those worked next."

// eachEnd is what is said of stitches where one edge is shaped, or both.
var eachEnd = [2]string{"", " each end"}

// countWords is "12 stitches".
func countWords(n int) string { return report.CountOf(n, "stitches") }

// Summary says the answer in words.
func (o CurvedEdge) Summary() string {
	s := "From " + strconv.Itoa(o.edge.start)
	count := o.edge.start
	for _, c := range o.edge.courses {
		change := c.Stitches
		if o.edge.both() {
			change *= 2
		}
		if !c.Gains {
			change = -change
		}
		if count += change; change != 0 {
			s += " to " + strconv.Itoa(count)
		}
	}
	edges, unit := o.edges(), o.edge.unit
	if len(edges) == 0 {
		return "" // not an answer of this room
	}
	each := "the edge"
	if len(edges) == 2 {
		each = "each edge"
	}
	s += " stitches over " + report.CountOf(o.HeightRows, "rows") + " (" + unit.Size(o.HeightCm) + "), " + each + " " +
		o.nearness() + ". As knit "
	long := unit.Size(edges[len(edges)-1].LengthCm)
	if right := unit.Size(edges[0].LengthCm); right != long {
		s += "the right edge is " + right + " long, the left edge " + long
	} else {
		s += each + " is " + long + " long"
	}
	return s + "; the curve is " + unit.Size(o.CurveLengthCm) + "."
}

// nearness is "at most 1.8 stitches or 2.4 rows from the curve".
func (o CurvedEdge) nearness() string {
	stitches, rows := measure.Decimal(o.GreatestDepartureStitches, 1), measure.Decimal(o.GreatestDepartureRows, 1)
	if stitches == "0" || rows == "0" {
		return "on the curve itself"
	}
	return "at most " + report.AmountOf(stitches, "stitches") + " or " + report.AmountOf(rows, "rows") + " from the curve"
}

// edges are those that follow the curve.
func (o CurvedEdge) edges() []KnitEdge {
	var all []KnitEdge
	for _, e := range [2]*KnitEdge{o.RightEdge, o.LeftEdge} {
		if e != nil {
			all = append(all, *e)
		}
	}
	return all
}

// Directions are the rows that decrease or increase, each as it is first worked, and
// then when everything is done.
func (o CurvedEdge) Directions() []string {
	var d []string
	if o.edge.firstSide() == stitch.WrongSide {
		d = append(d, "Row 1 is a wrong-side row.")
	}
	d = append(d, ShapingRows(o.Rows, len(o.edges()))...)
	w := Wording{FirstRow: 1, LastRow: o.HeightRows, FirstSide: o.edge.settings.FirstSide, Start: o.edge.start}
	return append(d, o.plan.Condensed(w)...)
}

// ShapingRows are the decrease and increase rows among those of a piece that is shaped at so many
// edges, one for each side and number of stitches.
//
//	Note: RS decrease rows are k1, ssk, k to last 3 sts, k2tog, k1.
//
// A heading "Decrease row:" would be read as the first row to work.
func ShapingRows(rows []Row, edges int) []string {
	var d []string
	seen := map[string]bool{}
	for _, r := range rows {
		change, name := r.Instruction.EndStitches-r.Instruction.StartStitches, " increase rows"
		if change < 0 {
			change, name = -change, " decrease rows"
		}
		if name = r.Side.String() + name; change > edges {
			name += " of " + sts(change/edges) + eachEnd[edges-1]
		}
		if !r.groups() && !seen[name] {
			seen[name] = true
			d = append(d, "Note: "+name+" are "+r.Instruction.Row.Text()+".")
		}
	}
	return d
}

// groups reports whether the row binds off or casts on.
func (r Row) groups() bool {
	op := r.Instruction.Row.Steps[0].Op
	return op == stitch.BindOff || op == stitch.CastOn
}
