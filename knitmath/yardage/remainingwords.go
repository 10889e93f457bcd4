package yardage

import (
	"math"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

var _ report.Answer = Remaining{}

// words writes an amount of a yarn in grams where they are known, since a scale is at hand
// more often than a way to measure what is wound up, and in metres otherwise.
func (s *supply) words(u measure.DisplayUnit, amount float64) string {
	grams, metres := s.both(Range{Likely: amount})
	if grams == nil {
		return yarn.LengthWords(u, metres.Likely)
	}
	return yarn.MassWords(u, grams.Likely)
}

// of names a yarn behind an amount, where there are several.
func of(yarns []RemainingYarn, i int) string {
	if len(yarns) == 1 {
		return ""
	}
	return " of " + nameOf(yarns[i].Name, i)
}

func nameOf(name string, i int) string {
	if name == "" {
		return "the " + report.Ordinal(i+1) + " yarn"
	}
	return name
}

// amounts are what is left, needed and over, in the unit that is known, grams first.
func (y RemainingYarn) amounts() (left, needed, margin *Range, words func(measure.DisplayUnit, float64) string) {
	if y.LeftG != nil {
		return y.LeftG, y.NeededG, y.MarginG, yarn.MassWords
	}
	return y.LeftM, y.NeededM, y.MarginM, yarn.LengthWords
}

// Summary says the answer in words.
func (o Remaining) Summary() string {
	var parts []string
	for i, y := range o.Yarns {
		if y.Lasts != LastsUnspecified {
			parts = append(parts, y.verdict(o.unit, i, len(o.Yarns)))
		}
	}
	return strings.Join(append(parts, o.reachWords()), " ")
}

// verdict is whether one yarn lasts.
func (y RemainingYarn) verdict(u measure.DisplayUnit, i, yarns int) string {
	subject := "It"
	if yarns > 1 {
		subject = report.Sentence(nameOf(y.Name, i))
	}
	left, needed, margin, words := y.amounts()
	have := words(u, left.Likely) + " left, " + words(u, needed.Likely) + " needed" + needed.beside(u, words)
	switch y.Lasts {
	case LastsSurely:
		return subject + " will last: " + have + ", at least " + words(u, math.Max(0, margin.Low)) + " over."
	case LastsLikely:
		if words(u, margin.Likely) == words(u, 0) {
			return subject + " may just last: " + have + ", nothing over, and at the worst " + words(u, math.Max(0, -margin.Low)) + " short."
		}
		return subject + " will probably last: " + have + ", but at the worst " + words(u, math.Max(0, -margin.Low)) + " short."
	case LastsDoubtful:
		return subject + " will probably not last: " + have + ", likely " + words(u, math.Max(0, -margin.Likely)) + " short."
	}
	return subject + " will not last: " + have + ", at least " + words(u, math.Max(0, -margin.High)) + " short."
}

// reachWords says how far it goes.
func (o Remaining) reachWords() string {
	r := o.MainRows
	if r.Likely == nil {
		if o.border {
			return "The border cannot be worked at all by the likely figures."
		}
		return ""
	}
	if o.PlannedRows != nil && r.Low != nil && *r.Low == *o.PlannedRows {
		if o.border {
			return "The border can wait until " + allRows(*r.Low) + " " + report.Are(*r.Low) + " worked."
		}
		return report.Sentence(allRows(*r.Low)) + " can be worked."
	}
	safe := ""
	if r.Low == nil {
		safe = "; by the safe figures there is not enough for any"
	} else if *r.Low != *r.Likely {
		safe = ", to be safe after " + strconv.Itoa(*r.Low)
	}
	if o.border {
		return "Begin the border after " + report.CountOf(*r.Likely, "rows") + " at the latest (" +
			report.CountOf(*o.MainStitches.Likely, "stitches") + ")" + safe + "."
	}
	return "It is enough for " + report.CountOf(*r.Likely, "rows") + ", ending with " +
		report.CountOf(*o.MainStitches.Likely, "stitches") + strings.Replace(safe, "after", "for", 1) + "."
}

// allRows are all that are planned, of which there may be one.
func allRows(n int) string {
	if n == 1 {
		return "the row"
	}
	return "all " + report.CountOf(n, "rows")
}

// Directions say what to do.
func (o Remaining) Directions() []string {
	var d []string
	if c := o.recheck; c != nil {
		d = append(d, "Weigh or measure again after "+report.CountOf(c.rows, "rows")+": there should be "+strings.Join(c.yarns, " and ")+
			". With less, plan for the safe figures, or ask again with what you find.")
	}
	for i, y := range o.Yarns {
		if (y.Lasts == LastsNo || y.Lasts == LastsDoubtful) && y.MoreBalls == nil {
			d = append(d, o.shortWords(y, i))
		}
	}
	if o.border && o.MainRows.Low != nil && (o.PlannedRows == nil || *o.MainRows.Low < *o.PlannedRows) {
		d = append(d, "If no more of the yarn can be had, begin the border after "+report.CountOf(*o.MainRows.Low, "rows")+".")
	}
	for i, y := range o.Yarns {
		if y.MoreBalls != nil && *y.MoreBalls > 0 {
			d = append(d, "To be safe have "+report.CountOf(*y.MoreBalls, "balls")+" more"+of(o.Yarns, i)+
				", of the same dye lot if it has one, before you go on.")
		}
	}
	return d
}

// shortWords say what to do where a yarn is not enough: have more of it, or end sooner.
func (o Remaining) shortWords(y RemainingYarn, i int) string {
	_, _, margin, words := y.amounts()
	s := "Have " + words(o.unit, math.Max(0, -margin.Low)) + " more" + of(o.Yarns, i) + " to be safe, of the same dye lot if it has one; or "
	if n := o.MainRows.Low; n != nil && *n > 0 && !o.border {
		s += "stop after " + report.CountOf(*n, "rows") + ", which are safe, or "
	}
	return s + "work what is left in another yarn that is planned to be seen: a border, stripes, cuffs."
}

// Sources say where the figures come from.
func (o Remaining) Sources() []report.Source {
	sources := []report.Source{perRowCited}
	if o.byLoop {
		sources = append(append(sources, loopCited), o.state.sources()...)
	}
	if o.stranded && (o.byLoop || o.border) {
		sources = append(sources, floatsCited)
	}
	if o.bindOff {
		sources = append(sources, bindOffCited)
	}
	return sources
}
