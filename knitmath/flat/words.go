package flat

import (
	"math"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
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
	count := max(o.StartStitches, o.EndStitches)
	percent := 100 * (float64(count)/p.wants(p.rows) - 1)
	than := "more"
	switch {
	case math.Abs(percent) <= liesFlat*(1+slack):
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
	s := ", increasing "
	if o.EndStitches < o.StartStitches {
		s = ", decreasing "
	}
	each := measure.Abs(o.Rows[0].Instruction.EndStitches - o.Rows[0].Instruction.StartStitches)
	rows, kept := make([]int, len(o.Rows)), 0
	for i, r := range o.Rows {
		rows[i] = r.RowNumber
		change := measure.Abs(r.Instruction.EndStitches - r.Instruction.StartStitches)
		if change != each {
			each = 0
		}
		if change == 0 {
			kept++
		}
	}
	if each > 0 {
		s += report.CountOf(each, "stitches") + " each "
	}
	s += "in " + countRows(len(rows)-kept, o.of.round)
	if kept > 0 { // of a star, where points gain what the corners between them lose
		if kept == 1 {
			return s + "; 1 more shapes it and keeps the count."
		}
		return s + "; " + strconv.Itoa(kept) + " more shape it and keep the count."
	}
	return s + when(rows, o.of.round) + "."
}

// mostNumbers is how many numbers of rows are listed in a summary where they have no rhythm. Own choice.
const mostNumbers = 8

// when says in which rows something is done: by a run of intervals or two, or by their numbers where there are few.
func when(rows []int, round bool) string {
	runs := schedule.RunsInTurn(rows)
	rhythm := len(runs) > 0 && len(runs) < 3
	for _, r := range runs {
		rhythm = rhythm && (len(r.EveryRows) == 1 || r.Times > 1)
	}
	switch {
	case rhythm:
		return ", first in " + noun(round) + " " + strconv.Itoa(rows[0]) + ", then " + intervals(runs, round)
	case len(rows) > 1 && len(rows) <= mostNumbers:
		return ", " + noun(round) + "s " + grouped(rows)
	}
	return ""
}

// intervals are runs in words: "every 2nd round 12 times, then every 3rd round once".
func intervals(runs schedule.Schedule, round bool) string {
	parts := make([]string, len(runs))
	for i, r := range runs {
		var ordinals []string
		all := 0
		for _, every := range r.EveryRows {
			ordinals, all = append(ordinals, report.Ordinal(every)), all+every
		}
		n := len(r.EveryRows)
		switch {
		case n == 1 && all == 1:
			parts[i] = "every " + noun(round) + " " + report.Times(r.Times)
		case n == 1:
			parts[i] = "every " + ordinals[0] + " " + noun(round) + " " + report.Times(r.Times)
		case all == n+1: // one row between each
			parts[i] = "in " + strconv.Itoa(n) + " of every " + countRows(all, round) + " " + report.Times(r.Times)
		case n == 2:
			parts[i] = "every " + report.Listed(ordinals) + " " + noun(round) + " alternately " + report.Times(r.Times) + " each"
		default:
			parts[i] = "every " + report.Listed(ordinals) + " " + noun(round) + " in turn " + report.Times(r.Times)
		}
	}
	return strings.Join(parts, ", then ")
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
