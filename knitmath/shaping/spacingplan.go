package shaping

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// spacing is a checked question.
type spacing struct {
	start, end, edge int
	op               stitch.Op
	k                int // how many times op is worked
	round            bool
	order            GapSpread
	excess           float64 // see EvenSpacingInput
	widens           bool    // nobody said how much that may be: see widened
	long             bool    // longer repeats are looked for
	rowOnly          bool    // nobody looks at the gaps of a layout
	bar              int     // of a mirrored row whose bars lie alike: see barOf
	room             *stepRoom
}

// least is the fewest stitches between two changes: an increase made in the
// strand between stitches needs a stitch on each side, and two cannot share a
// strand.
func (s spacing) least() int {
	if s.op.Takes() == 0 {
		return 1
	}
	return 0
}

// most is the greatest number of changes that fit.
func (s spacing) most() int {
	inner := s.start - 2*s.edge
	switch t := s.op.Takes(); {
	case t > 0:
		return inner / t
	case s.round:
		return inner
	case s.edge == 0:
		return inner - 1 // a strand lies between two stitches
	default:
		return inner + 1 // the edges give the outer strands their stitch
	}
}

// EvenRound is the round that takes start stitches to end with one operation, as
// PlanEvenSpacing would write it. op must change the count by one, in the
// direction wanted, and be worked on at most as many stitches as there are. ok is
// false only for a mirrored spread that does not exist. It looks for no longer repeats, which a body of
// hundreds of small rounds could not afford.
func EvenRound(start, end int, op stitch.Op, order GapSpread) (round stitch.Instruction, ok bool) {
	out, ok := evenRound(start, end, op, order).plan()
	return out.Instruction, ok
}

// EasyRound is the same with longer repeats, just as PlanEvenSpacing writes it.
func EasyRound(start, end int, op stitch.Op, order GapSpread) (round stitch.Instruction, ok bool) {
	s := evenRound(start, end, op, order)
	s.widens, s.long = true, true
	out, ok := s.plan()
	return out.Instruction, ok
}

func evenRound(start, end int, op stitch.Op, order GapSpread) spacing {
	return spacing{start: start, end: end, op: op, k: measure.Abs(end - start), round: true, order: order, excess: defaultGapTolerance,
		rowOnly: true}
}

// plan lays the gaps and writes the row. ok is false only for a mirrored order
// that does not exist.
func (s spacing) plan() (EvenSpacing, bool) {
	asked := s.order
	s.order = GapSpreadInterleaved
	least := s.leastDeparture()
	out, ok := EvenSpacing{}, true
	switch {
	case asked == GapSpreadMirrored:
		s.order = asked
		out, ok = s.mirroredPlan(least)
	case asked != GapSpreadUnspecified && asked != GapSpreadLeastEffort:
		s.order = asked
		if out, ok = s.gaps(); ok {
			out = s.finished(out, s.row(out))
		}
	default:
		out = s.free(least + int(s.excess*float64(2*s.k)))
		if s.widens && s.k <= mostWidened && out.Effort > mostPrinted {
			out = s.widened(least, out)
		}
	}
	out.LeastDepartureStitches = float64(least) / float64(2*s.k)
	return out, ok
}

// free is the easiest spacing that departs by no more than so many parts, or the most
// even one.
func (s spacing) free(departure int) EvenSpacing {
	var easy EvenSpacing
	l, ok := s.easiest(departure)
	if ok {
		if easy = s.laid(l); easy.Effort <= fewItems {
			return easy
		}
	}
	even, _ := s.gaps()
	even = s.finished(even, s.row(even))
	if ok && easy.Effort <= even.Effort { // The most even row may repeat as a whole, and have fewer items yet.
		return easy
	}
	if even.Effort > fewItems {
		even.Notices = append(even.Notices, manyItemsNotice)
	}
	return even
}

// fewItems is how many items of a row nobody minds: a bracket between two runs, with
// a change at either end.
const fewItems = 7

// gaps lays the gaps in the order that is asked for, and not freely.
func (s spacing) gaps() (EvenSpacing, bool) {
	plain := s.plain()
	out := EvenSpacing{Operation: s.op, ChangeCount: s.k, PlainStitches: plain, round: s.round, bar: s.bar}
	ok := true
	switch {
	case s.round && s.order == GapSpreadMirrored:
		ok = s.mirroredRound(&out)
	case s.round:
		out.Gaps = s.arrange(s.k, plain)
	case s.order == GapSpreadMirrored:
		ok = s.mirroredFlat(&out)
	default:
		first, last := s.ends(plain)
		out.Gaps = s.arrange(s.k-1, plain-first-last)
		out.FirstGapStitches, out.LastGapStitches = s.edge+first, s.edge+last
	}
	return out, ok
}

// laid is the spacing of a layout.
func (s spacing) laid(l layout) EvenSpacing {
	out := EvenSpacing{Operation: s.op, ChangeCount: s.k, PlainStitches: s.plain(), round: s.round,
		FirstGapStitches: l.first, LastGapStitches: l.last}
	if !s.rowOnly {
		out.Gaps = l.runs()
	}
	return s.finished(out, stitch.RowOf(s.steps(l)...))
}

// finished adds the row, and how even and how easy it is.
func (s spacing) finished(out EvenSpacing, row stitch.Row) EvenSpacing {
	out.Instruction = stitch.Instruction{Row: row, StartStitches: s.start, EndStitches: s.end}
	out.Effort = row.Items()
	out.GreatestDepartureStitches = float64(s.departureOf(out)) / float64(2*s.k)
	return out
}

// ends gives the half gaps at the two ends of a flat row, the smaller first.
func (s spacing) ends(plain int) (first, last int) {
	first = spread.Place(0, s.k, plain, spread.Centred)
	last = plain - spread.Place(s.k-1, s.k, plain, spread.Centred)
	outer := 0
	if s.edge == 0 {
		outer = s.least()
	}
	first, last = max(first, outer), max(last, outer)
	if plain == (s.k-1)*s.least() { // the strands between the edges are all taken
		return 0, 0
	}
	return first, last
}

// arrange orders n gaps that sum to plain, grouped or interleaved.
func (s spacing) arrange(n, plain int) []spread.GapRun {
	if n == 0 {
		return nil
	}
	if s.order == GapSpreadInterleaved {
		var runs []spread.GapRun
		for i := range n {
			runs = spread.AppendGap(runs, spread.Share(i, n, plain), 1)
		}
		return runs
	}
	small, larger := plain/n, plain%n
	return spread.AppendGap(spread.AppendGap(nil, small+1, larger), small, n-larger)
}

// plainOp is the stitch between the changes: purl beside a purled change.
func (s spacing) plainOp() stitch.Op {
	switch s.op {
	case stitch.P2tog, stitch.SSP, stitch.P3tog, stitch.SSSP, stitch.M1LP, stitch.M1RP, stitch.M1P, stitch.PFB:
		return stitch.Purl
	}
	return stitch.Knit
}
