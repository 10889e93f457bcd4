package yoke

import (
	"fmt"
	"math"
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/shaping"
)

// decreaseRounds is in which rounds of a raglan what decreases. Its levels are 1 for
// the parts that decrease most often, alone; 2 for them with those that come next.
type decreaseRounds struct {
	schedule.Nested
	first [sleevePart + 1]int // the level from which on a part decreases; 0 if it never does
	rows  int                 // of the raglan, in parts of which a stitch is told

	least   int      // the departure of the nearest choice
	easy    bool     // whether every part has two runs at most
	beyond  bool     // whether it departs further than an easy plan is allowed to by default
	wanting *float64 // by how many stitches more than the nearest an easy one departs, if none was allowed
}

// decreaseRounds chooses them.
func (r raglan) decreaseRounds() decreaseRounds {
	d := decreaseRounds{rows: r.rounds}
	nest := r.nest(&d)
	nearest := nest.Nearest()
	d.Nested, d.least = nearest, nearest.Departure
	for _, most := range slices.Compact(r.allowed(nest, d.least)) {
		if most < d.least {
			continue
		}
		if found, ok := r.easiest(nest, most); ok {
			d.Nested, d.easy = found, true
			return d
		}
	}
	found, excess, ok := r.farther(nest, d.least)
	switch {
	case !ok:
	case r.excess == nil:
		d.Nested, d.easy, d.beyond = found, true, true
	default:
		d.wanting = &excess
	}
	return d
}

// nest puts the parts in order, those that decrease most often first. Where a round can
// be spared the first is worked even: nobody likes to decrease in the round that joins.
// Common practice. Nor should a raglan have lost its stitches too early: it would stand up at
// the neck, and what rounds can be spared belong under the arm.
func (r raglan) nest(d *decreaseRounds) schedule.Nest {
	n := schedule.Nest{Rows: r.rounds, First: 1, Every: 1, Late: true}
	if r.everySecond {
		n.First, n.Every = r.rounds-2*(r.slots()-1), 2
	}
	for _, p := range r.parts {
		if k := p.decreases(); k > 0 && !slices.Contains(n.Times, k) {
			n.Times = append(n.Times, k)
		}
	}
	slices.Sort(n.Times)
	slices.Reverse(n.Times)
	if n.First == 1 && n.Times[0] < r.rounds {
		n.First = 2
	}
	for i, p := range r.parts {
		d.first[i] = 1 + slices.Index(n.Times, p.decreases())
	}
	if r.parts[sleevePart].end < MinRaglanNeck {
		n.Apart = d.first[sleevePart] // see row: their last decrease is unlike the others
	}
	return n
}

// allowed is how far an easy plan may depart, at first and where there is none so near,
// in parts of which a stitch at an edge is as many as there are rounds.
func (r raglan) allowed(nest schedule.Nest, least int) []int {
	if r.excess != nil {
		return []int{least + r.stitchParts(*r.excess)}
	}
	most := MostDeparture * r.rounds
	return []int{min(nest.Times[0]*r.rounds/ShortEdge, most), most, least + most}
}

// easiest is the plan of least effort that departs by no more than is allowed. Rounds that take turns, or of
// which every n-th is another, are looked for where they may spare something, and not where nobody asks
// for a plan so near.
func (r raglan) easiest(nest schedule.Nest, most int) (plan schedule.Nested, ok bool) {
	if plan, ok = nest.Easiest(most); r.excess == nil && most < MostDeparture*r.rounds {
		return plan, ok
	}
	for _, search := range [...]func(departure, below int) (schedule.Nested, bool){nest.InTurns, nest.InSpells} {
		effort := math.MaxInt
		if ok {
			effort = schedule.Effort(plan.Blocks())
		}
		if found, less := search(most, effort); less {
			plan, ok = found, true
		}
	}
	return plan, ok
}

// stitchParts is so many stitches at an edge, in the parts of a nest.
func (r raglan) stitchParts(stitches float64) int {
	return int(measure.ToMillionths(stitches) * int64(r.rounds) / 1e6)
}

// wideningSteps is how often an easy plan is looked for further off, a stitch each time.
const wideningSteps = 3

// farther is the nearest easy plan beyond what is allowed, and what tolerance would do, up to a
// hundredth; ok is false if that is far.
func (r raglan) farther(nest schedule.Nest, least int) (plan schedule.Nested, excess float64, ok bool) {
	allowed := r.allowed(nest, least)
	late := nest
	nest.Late = false // the nearest of the easy ones
	for step := range wideningSteps {
		found, ok := nest.Easiest(allowed[len(allowed)-1] + (step+1)*r.rounds)
		if !ok {
			continue
		}
		excess = float64(measure.CeilDiv(int64(100*(found.Departure-least)), int64(r.rounds))) / 100
		if plan, ok = late.Easiest(least + r.stitchParts(excess)); ok {
			return plan, excess, true
		}
	}
	return plan, 0, false
}

// decreases says which parts decrease in a round of a level.
func (d decreaseRounds) decreases(level int) (parts decreasing) {
	for p, first := range d.first {
		parts[p] = first > 0 && first <= level
	}
	return parts
}

// of are the rounds in which a part decreases.
func (d decreaseRounds) of(part int) []int {
	if d.first[part] == 0 {
		return nil
	}
	return d.RowsOf(d.first[part] - 1)
}

// stitches is a departure in stitches at an edge.
func (d decreaseRounds) stitches(departure int) float64 { return float64(departure) / float64(d.rows) }

// nearnessNotices remark on rounds that are not easy, or not near.
func (d decreaseRounds) nearnessNotices() []report.Notice {
	switch {
	case !d.easy:
		return []report.Notice{d.manyRunsNotice()}
	case d.beyond:
		return []report.Notice{{Reason: shaping.BeyondTolerance, Field: "tolerance_stitches",
			Description: fmt.Sprintf("no easy plan lies within %d stitches of the straight lines, nor within %d more than the nearest rounds; "+
				"this one lies up to %s off at each edge; a tolerance of 0 gives the nearest rounds, up to %s off, as a list",
				MostDeparture, MostDeparture, report.AmountOf(measure.Decimal(d.stitches(d.Departure), 2), "stitches"),
				report.AmountOf(measure.Decimal(d.stitches(d.least), 2), "stitches"))}}
	}
	return nil
}

// manyRunsNotice says that no plan is easy, and what tolerance would make one so.
func (d decreaseRounds) manyRunsNotice() report.Notice {
	text := "no plan in which each part decreases at one run of intervals or two lies that near to the straight lines; " +
		"the nearest rounds are given"
	if d.wanting != nil {
		text += "; a tolerance of " + report.AmountOf(measure.Decimal(*d.wanting, 2), "stitches") + " at each edge allows one"
	}
	return report.Notice{Reason: ManyRuns, Field: "tolerance_stitches", Description: text}
}
