package flat

import (
	"math"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// noun is what is worked: rows, or rounds.
func noun(round bool) string {
	if round {
		return "round"
	}
	return "row"
}

func countRows(n int, round bool) string { return report.CountOf(n, noun(round)+"s") }

// name is what the form is called.
func (p *piece) name() string {
	switch p.form {
	case FormDisc:
		return "disc"
	case FormRing:
		return "ring"
	case FormSector:
		switch turn := fault.Or(p.in.TurnDegrees, halfTurn); {
		case turn == halfTurn:
			return "half disc"
		case turn > halfTurn:
			return "crescent of " + measure.Decimal(turn, 1) + " degrees"
		default:
			return "sector of " + measure.Decimal(turn, 1) + " degrees"
		}
	case FormPolygon:
		return polygonNames[p.wedges-MinCorners]
	case FormMitredSquare:
		return "mitred square"
	case FormBiasStrip:
		return "strip on the bias"
	case FormStar:
		return "star of " + strconv.Itoa(p.wedges) + " points"
	}
	return "triangle"
}

var polygonNames = [...]string{"triangle from the centre", "square from the centre", "pentagon", "hexagon", "heptagon", "octagon",
	"nonagon", "decagon", "polygon of 11 sides", "polygon of 12 sides"}

// Summary says the answer in words.
func (o Shape) Summary() string {
	if o.circle != nil {
		return o.circle.Summary()
	}
	p, unit := o.of, o.of.in.DisplayUnit
	s := report.Sentence(article(p.name())) + ", " + unit.Size(o.WidthCm) + " wide and " + unit.Size(o.HeightCm) + " high"
	switch p.form {
	case FormDisc, FormRing:
		s = report.Sentence(article(p.name())) + " of " + unit.Size(o.WidthCm) + " across"
	case FormBiasStrip:
		return s + ": " + report.CountOf(o.StartStitches, "stitches") + " and " + countRows(o.TotalRows, false) + ", leaning by " +
			measure.Decimal(*o.LeanDegrees, 1) + " degrees."
	}
	s += ": from " + report.CountOf(o.StartStitches, "stitches") + " to " + strconv.Itoa(o.EndStitches) + " in " +
		countRows(o.TotalRows, p.round) + o.often()
	s += o.rim()
	for _, r := range o.Recipes {
		s += " " + r.words(unit)
	}
	return s
}

// rim says how far the last row is from what lies flat, where it is seen.
func (o Shape) rim() string {
	p := o.of
	if p.form == FormTriangleFromPoint || p.form == FormTriangleFromSide {
		return ""
	}
	count := max(o.StartStitches, o.EndStitches)
	percent := 100 * (float64(count)/p.wants(p.rows) - 1)
	than := "more"
	switch {
	case math.Abs(percent) <= liesFlat:
		return ""
	case percent < 0:
		than = "fewer"
	}
	return " Its longest " + noun(p.round) + " has " + measure.Decimal(math.Abs(percent), 1) + " % " + than + " stitches than lie flat there."
}

// article is a name with its article.
func article(name string) string {
	if strings.ContainsRune("aeiouh", rune(name[0])) && !strings.HasPrefix(name, "ha") && !strings.HasPrefix(name, "he") {
		return "an " + name
	}
	return "a " + name
}

// often says how often the count changes and by how much, where it is always as much.
func (o Shape) often() string {
	if len(o.Rows) == 0 {
		return "."
	}
	each := measure.Abs(o.Rows[0].Instruction.EndStitches - o.Rows[0].Instruction.StartStitches)
	rows := make([]int, len(o.Rows))
	for i, r := range o.Rows {
		rows[i] = r.RowNumber
		if measure.Abs(r.Instruction.EndStitches-r.Instruction.StartStitches) != each {
			each = 0
		}
	}
	change := ", increasing "
	if o.EndStitches < o.StartStitches {
		change = ", decreasing "
	}
	s := change
	if each > 0 {
		s += report.CountOf(each, "stitches") + " each "
	}
	s += "in " + countRows(len(rows), o.of.round)
	if runs := schedule.Runs(rows); len(runs) > 0 && len(runs) < 3 {
		s += ", first in " + noun(o.of.round) + " " + strconv.Itoa(rows[0]) + ", then " + intervals(runs, o.of.round)
	}
	return s + "."
}

// intervals are runs in words: "every 2nd round 12 times, then every 3rd round once".
func intervals(runs schedule.Schedule, round bool) string {
	parts := make([]string, len(runs))
	for i, r := range runs {
		every := "every " + noun(round)
		if r.EveryRows[0] > 1 {
			every = "every " + report.Ordinal(r.EveryRows[0]) + " " + noun(round)
		}
		if len(r.EveryRows) > 1 && min(r.EveryRows[0], r.EveryRows[1]) == 1 {
			parts[i] = "in 2 of every " + countRows(r.EveryRows[0]+r.EveryRows[1], round) + " " + report.Times(r.Times)
			continue
		}
		if len(r.EveryRows) > 1 {
			every = "every " + report.Ordinal(r.EveryRows[0]) + " and " + report.Ordinal(r.EveryRows[1]) + " " + noun(round) +
				" alternately"
		}
		parts[i] = every + " " + report.Times(r.Times)
		if len(r.EveryRows) > 1 {
			parts[i] += " each"
		}
	}
	return strings.Join(parts, ", then ")
}

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
			d = append(d, "Repeat rows 1 and 2 "+moreTimes(o.TotalRows/2-1)+": "+countRows(o.TotalRows, false)+" in all.")
		}
	case len(o.words) > 0:
		d = append(d, o.words...)
	default:
		if r, ok := o.rule(); ok {
			d = append(d, o.byRule(r)...)
			break
		}
		d = append(d, o.rowByRow()...)
	}
	return append(d, o.finish())
}

// moreTimes is "once more", "twice more", "3 more times".
func moreTimes(n int) string {
	if n > 2 {
		return strconv.Itoa(n) + " more times"
	}
	return report.Times(n) + " more"
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
	if len(o.words) > 0 && o.words[0] == sidesTold {
		return s + "."
	}
	return s + ". " + sidesTold
}

// sidesTold is what a taper, too, says of its sides where it must.
const sidesTold = "Row 1 is a right-side row."

// rowByRow are all rows that change the count, and how many lie between them.
func (o Shape) rowByRow() []string {
	var d []string
	last, nouns := 0, report.Sentence(noun(o.of.round))
	for _, r := range o.Rows {
		d = appendEven(d, noun(o.of.round), last+1, r.RowNumber-1)
		head := nouns + " " + strconv.Itoa(r.RowNumber)
		if r.Side != stitch.SideUnspecified {
			head += " (" + r.Side.String() + ")"
		}
		d = append(d, head+": "+r.Instruction.Row.Text()+" ("+report.CountOf(r.Instruction.EndStitches, "stitches")+").")
		last = r.RowNumber
	}
	return appendEven(d, noun(o.of.round), last+1, o.TotalRows)
}

// finish is what becomes of the last stitches.
func (o Shape) finish() string {
	switch {
	case o.of.inwards && o.of.round && o.of.form != FormRing:
		return "Cut the yarn, draw it through the " + report.CountOf(o.EndStitches, "stitches") + " that are left, and pull it tight."
	case o.of.form == FormTriangleFromSide:
		return "Next RS row: ssk, k1, k2tog (3 stitches). Next row: p3tog (1 stitch). Fasten off."
	case o.of.inwards && !o.of.round:
		return "Next row (RS): CDD (1 stitch). Fasten off."
	case o.of.form == FormSector:
		return "Bind off loosely, so that the edge is as long as the row below it. Close the centre with the tail."
	case o.of.form == FormBiasStrip:
		return "Bind off. As it is worked, the strip leans to the right, seen from the right side."
	case o.of.round && o.of.form != FormRing:
		return "Bind off loosely. Close the middle with the tail."
	}
	return "Bind off loosely, so that the edge is as long as the row below it."
}

// Sources says where the figures come from.
func (o Shape) Sources() []report.Source {
	if o.circle != nil {
		return o.circle.Sources()
	}
	switch o.of.form {
	case FormBiasStrip:
		return []report.Source{leanCited}
	case FormTriangleFromPoint, FormTriangleFromSide:
		return []report.Source{scheduleCited}
	case FormStar:
		return []report.Source{growthCited, scheduleCited}
	}
	list := []report.Source{growthCited, scheduleCited}
	if o.of.in.Arrangement == ArrangementDoubling {
		list[1] = doublingCited
	}
	return append(list, placesCited, recipesCited, blockedCited)
}
