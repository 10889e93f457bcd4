package flat

import (
	"math"
	"math/bits"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// liesFlat is how far the rim may be from its length, in percent, so that a piece lies flat
// as it comes off the needles. Own choice.
const liesFlat = 5.0

// otherTurn is how far the rim may be from its length by a rule that is meant for a sector of this
// turn, in percent. Own choice.
const otherTurn = 40.0

// recipes are the rules that the trade has for such a piece, and what the rim of this one
// would have by each.
//
// Source: common practice, which has 8 every 2nd round and its like, 16 every
// 4th, for discs and squares alike.
func (p *piece) recipes() []Recipe {
	often := func(name string, growth float64) Recipe {
		return p.recipe(name, growth, p.base+growth*float64(p.rows))
	}
	switch p.form {
	case FormDisc:
		// Doubled when the number of the round has doubled, from 8 in round 2: 4 times that round.
		at := 1 << (bits.Len(uint(p.rows)) - 1)
		return []Recipe{often("8 stitches every 2nd round", 4),
			p.recipe("all stitches doubled in rounds 4, 8, 16 and so on", 4, float64(4*at))}
	case FormRing:
		return []Recipe{often("8 stitches every 2nd round", 4)}
	case FormSector: // of half discs and of nearly whole ones; of others they say nothing
		rules := []Recipe{often("4 stitches every right-side row", 2), often("8 stitches every right-side row", 4)}
		return slices.DeleteFunc(rules, func(r Recipe) bool { return math.Abs(r.DeparturePercent) > otherTurn })
	case FormPolygon:
		return []Recipe{often(strconv.Itoa(2*p.wedges)+" stitches every 2nd round, 2 at each corner", float64(p.wedges))}
	case FormMitredSquare:
		return []Recipe{often("2 stitches at the centre every 2nd row", 1)}
	case FormTriangleFromPoint, FormTriangleFromSide:
		return nil
	}
	return []Recipe{often("4 stitches every 2nd row", 2)}
}

// recipe compares what a rule leaves at the rim with what lies flat there.
func (p *piece) recipe(name string, growth, rim float64) Recipe {
	wanted := p.base + p.grows*float64(p.rows)
	r := Recipe{Name: name, GrowthStitches: growth, RimStitches: rim, DeparturePercent: 100 * (rim/wanted - 1),
		DepartureCm: (rim - wanted) / p.st.PerCm(), Effect: EffectFlat}
	switch {
	case r.DeparturePercent < -liesFlat*(1+slack):
		r.Effect = EffectCups
	case r.DeparturePercent > liesFlat*(1+slack):
		r.Effect = EffectRuffles
	}
	return r
}

// compared marks the rules by which the longest row has as many stitches as here, to half a change.
func (p *piece) compared(list []Recipe, longest int) []Recipe {
	for i, r := range list {
		list[i].same = 2*math.Abs(r.RimStitches-float64(longest)) <= float64(p.step)
	}
	return list
}

// words say what a rule of the trade does.
func (r Recipe) words(unit measure.DisplayUnit) string {
	than, verb := "longer", "ruffles"
	if r.DeparturePercent < 0 {
		than, verb = "shorter", "cups"
	}
	if math.Abs(r.DeparturePercent) < 0.05 {
		return "The rule of " + r.Name + " is just right at this gauge."
	}
	if r.same && r.Effect == EffectFlat {
		return "The rule of " + r.Name + " comes to the same at this gauge."
	}
	s := "The rule of " + r.Name + " leaves the rim " + measure.Decimal(math.Abs(r.DeparturePercent), 1) + " % (" +
		unit.Size(math.Abs(r.DepartureCm)) + ") " + than + " than lies flat at this gauge"
	switch {
	case r.Effect == EffectFlat:
		return s + ": it lies flat."
	case math.Abs(r.DeparturePercent) <= blockedOut:
		return s + ": it " + verb + " a little until it is blocked."
	}
	return s + ": it " + verb + "."
}

// notices are the remarks on a piece.
func (p *piece) notices(off departed) []report.Notice {
	var list []report.Notice
	field := "start_stitches"
	if p.in.Arrangement == ArrangementDoubling {
		field = "arrangement"
	}
	remark := func(reason report.Reason, f far, than string) {
		if f.row > 0 {
			list = append(list, report.Notice{Reason: reason, Field: field, Description: "row " + strconv.Itoa(f.row) + " from the " +
				p.middle() + " has " + report.CountOf(f.count, "stitches") + ", " + measure.Decimal(math.Abs(f.percent), 0) + " % " + than +
				" than lie flat there"})
		}
	}
	remark(Cups, off.fewest, "fewer")
	remark(Ruffles, off.most, "more")
	if tube := (float64(p.start) - p.base) / p.grows; p.beginsEven() && tube > max(4, float64(p.rows)/tubeRows) {
		given, what := "start_stitches", tubes[p.form]
		if p.in.StartStitches == nil {
			given = "wedge_count"
		}
		list = append(list, report.Notice{Reason: Ruffles, Field: given, Description: "up to " + p.rowWord() + " " +
			strconv.Itoa(int(tube)) + " from the " + p.middle() + " there are more stitches than lie flat: that is " + what})
	}
	if p.anyRow && p.edged() {
		list = append(list, p.steep())
	} else if p.anyRow {
		list = append(list, report.Notice{Reason: ShapedOnBothSides, Field: "gauge.rows",
			Description: "at " + report.AmountOf(measure.Decimal(p.rw.PerCm()/p.st.PerCm(), 2), "rows") +
				" to a stitch wrong-side rows change the count too; " +
				"in garter stitch, of about 2 rows to a stitch, right-side rows are enough"})
	}
	return list
}

// tubeRows is which part of the rows from the centre may be worked even before it is said: an eighth, 1/64 of a disc. Own choice.
const tubeRows = 8

// tubes are what a form is that keeps too many stitches at its centre.
var tubes = map[Form]string{FormDisc: "a tube, and no disc", FormRing: "a tube, and no ring", FormSector: "a strip, and no part of a disc"}

// beginsEven reports whether a form keeps the stitches that it begins with until they lie flat.
func (p *piece) beginsEven() bool {
	return tubes[p.form] != "" && p.in.Arrangement != ArrangementDoubling
}

// middle is where its rows are counted from.
func (p *piece) middle() string {
	if p.form == FormRing {
		return "hole"
	}
	return "centre"
}

// rowWord is what a row is called.
func (p *piece) rowWord() string {
	if p.round {
		return "round"
	}
	return "row"
}
