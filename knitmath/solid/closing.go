package solid

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// Limits of a closing.
const (
	// MaxClosingRounds is the most rounds of a closing that change the count: each comes
	// back written out. The widest crown of the finest gauge, 200 stitches in 4 wedges, has 50.
	MaxClosingRounds = 300
	// MaxClosingEdge is the most stitches outside a pair of decreases.
	MaxClosingEdge = 5
	// evenAfterAdjusting is how many rounds are even between one that adjusts the count and the first decreases of many
	// sections, so that the fabric does not draw in at once. Own choice.
	evenAfterAdjusting = 2
)

// Uneven says what is done with stitches that do not divide into the wedges.
type Uneven int32

// The ways.
const (
	UnevenUnspecified Uneven = iota // an adjusting round
	// UnevenAdjust decreases them away, evenly spaced in a round of its own.
	UnevenAdjust
	// UnevenTwoSizes makes wedges of two sizes, spread evenly among one another.
	UnevenTwoSizes
	// UnevenLeftOver leaves them at the end of the round until they make a wedge of their
	// own.
	UnevenLeftOver
)

// A Closing is a tube that is closed by stacks of decreases.
type Closing struct {
	StartStitches int
	// Wedges is how many parts the tube has, each with a stack of decreases at its end.
	Wedges int
	// Paired decreases at both ends of each wedge: ssk after its edge stitches, k2tog
	// before those at its other end; without edge stitches its last three become one. Otherwise
	// a wedge ends with k2tog.
	Paired       bool
	EdgeStitches int
	// EndStitches is how many stitches may be left at most. Where the wedges have a stitch
	// each and that is more, k2tog all round.
	EndStitches int
	Uneven      Uneven
	Pace        Pace
}

// A ClosingRound is a round that changes the count. Its number counts from the first
// round of the closing.
type ClosingRound struct {
	RoundNumber int
	// Adjusts says that the round makes the count one that the wedges divide.
	Adjusts     bool
	Instruction stitch.Instruction
}

// A ClosingPlan is a closing as it is worked.
type ClosingPlan struct {
	StartStitches int
	EndStitches   int
	// WedgeStitches are those of each wedge after the adjusting round.
	WedgeStitches []int
	Rounds        []ClosingRound
	// RoundCount is all rounds. The last decreases, for what is grafted or drawn up has none even before it: but for
	// [PlainAfter], whose source has even rounds after the last too.
	RoundCount int
	// GreatestDepartureRounds is how far a decrease round lies at most from where the
	// curve wants it, 0 where there is no curve. Rounds in succession at the end are left out.
	GreatestDepartureRounds float64
	// Effort is the runs of the rhythm and the items of the rounds, each counted once.
	Effort int
}

// Plan writes every round of the closing. What stands in its way is said in words, empty
// where nothing does.
//
// The wedges lose one stitch a round each, or two where decreases are paired, as long as
// more than EndStitches are left. The pace says on which rounds.
//
// Source: common practice.
func (q Closing) Plan() (plan ClosingPlan, refused string) {
	l, refused := q.lay()
	if refused != "" {
		return ClosingPlan{}, refused
	}
	return l.at(q.Pace), ""
}

// laid is a closing of which all is settled but on which rounds it is worked.
type laid struct {
	start, end int
	sizes      []int
	even       *stitch.Instruction // the adjusting round, nil where there is none
	steps      []step
}

// lay works the rounds that change the count.
func (q Closing) lay() (l laid, refused string) {
	if refused = q.refusal(); refused != "" {
		return laid{}, refused
	}
	l.start = q.StartStitches
	adjusted := q.StartStitches
	if q.Uneven != UnevenTwoSizes && q.Uneven != UnevenLeftOver {
		adjusted -= q.StartStitches % q.Wedges
	}
	w := q.wedges(adjusted)
	l.sizes = w.sizes()
	for w.total() > q.EndStitches && w.narrows() {
		if len(l.steps) == MaxClosingRounds {
			return laid{}, "takes more than " + strconv.Itoa(MaxClosingRounds) + " decrease rounds"
		}
		l.steps = append(l.steps, w.decrease())
	}
	if len(l.steps) == 0 {
		return laid{}, "has no stitch to decrease: its wedges have " + report.CountOf(l.sizes[0], "stitches") + " each"
	}
	l.end = w.total()
	if adjusted < q.StartStitches {
		round, ok := shaping.EvenRound(q.StartStitches, adjusted, stitch.K2tog, shaping.GapSpreadLeastEffort)
		if !ok {
			return laid{}, "cannot be made a multiple of " + strconv.Itoa(q.Wedges) + " stitches in a round"
		}
		l.even = &round
	}
	return l, ""
}

// at is the closing worked at a pace.
func (l laid) at(pace Pace) ClosingPlan {
	plan := ClosingPlan{StartStitches: l.start, EndStitches: l.end, WedgeStitches: l.sizes,
		Rounds: make([]ClosingRound, 0, len(l.steps)+1)}
	if l.even != nil && pace.drawnOut && pace.depth > 1 {
		pace.depth-- // the adjusting round is one of those that were asked for
	}
	at := pace.place(l.steps)
	before := 0 // rounds put before the first of the pace
	if l.even != nil {
		if at.rounds[0] == 1 {
			before = 1 // the round before the first decreases adjusts
			if pace.way == pacePlain {
				before += evenAfterAdjusting
			}
		}
		plan.Rounds = append(plan.Rounds, ClosingRound{max(at.rounds[0]-1, 1), true, *l.even})
	}
	for i, s := range l.steps {
		plan.Rounds = append(plan.Rounds, ClosingRound{at.rounds[i] + before, false, stitch.Instruction{
			Row: s.row, StartStitches: s.from, EndStitches: s.to}})
	}
	plan.RoundCount = at.total + before
	if pace.way != pacePlain {
		plan.RoundCount = plan.Rounds[len(plan.Rounds)-1].RoundNumber
	}
	plan.GreatestDepartureRounds = at.departure
	plan.Effort = plan.effort()
	return plan
}

// refusal says what is wrong with the question itself.
func (q Closing) refusal() string {
	least := 2
	switch {
	case q.Paired && q.EdgeStitches == 0:
		least = 3
	case q.Paired:
		least = 2*q.EdgeStitches + 4
	}
	switch {
	case q.Wedges < 1 || q.EdgeStitches < 0 || q.EdgeStitches > MaxClosingEdge || q.EndStitches < 1 || q.StartStitches > stitch.MaxStitches:
		return "is out of range"
	case q.StartStitches < least*q.Wedges:
		return "has " + report.CountOf(q.StartStitches, "stitches") + "; " + report.CountOf(q.Wedges, "wedges") +
			" that can be decreased need at least " + strconv.Itoa(least*q.Wedges)
	case q.EndStitches >= q.StartStitches:
		return "has " + report.CountOf(q.StartStitches, "stitches") + ", no more than may be left"
	}
	return ""
}

// effort counts what there is to remember.
func (p ClosingPlan) effort() int {
	var gaps []int
	items := 0
	for i, r := range p.Rounds {
		items += r.Instruction.Row.Items()
		if i > 0 && !p.Rounds[i-1].Adjusts {
			gaps = append(gaps, r.RoundNumber-p.Rounds[i-1].RoundNumber)
		}
	}
	return items + effortOf(gaps)
}

// effortOf is what the runs of such intervals are to remember, read from the first on: an alternating one where the first two
// differ by a round and go on so.
func effortOf(gaps []int) int {
	effort := 0
	for len(gaps) > 0 {
		r, n := run{int32(gaps[0]), int32(gaps[0])}, 1
		if len(gaps) >= leastAlternating && measure.Abs(gaps[1]-gaps[0]) == 1 && gaps[2] == gaps[0] {
			r.other = int32(gaps[1])
		}
		for n < len(gaps) && gaps[n] == r.at(n+1) {
			n++
		}
		effort += int(r.effort())
		gaps = gaps[n:]
	}
	return effort
}
