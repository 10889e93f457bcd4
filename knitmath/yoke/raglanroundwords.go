package yoke

import (
	"slices"
	"sort"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
)

// A raglanTeller writes the rounds of a raglan in the order in which they are worked. A kind of
// decrease round is written out where it first comes, and called by its name from then on.
type raglanTeller struct {
	plan    Raglan
	names   []string
	written []bool // the kinds that are
	told    int    // the last round that is told
	noted   bool   // that lines for several rounds are worked together
	lines   []string
}

const (
	// mostStretches is how many stretches of rounds that are not easy are told one after the other. Where there are
	// more, all rounds of a kind are listed together. Own choice.
	mostStretches = 8
	// mostListed is how many rounds are listed at once, so that an eye finds its place. Own choice.
	mostListed = 50
)

// roundDirections tell all rounds from the join to the neck.
func (r raglan) roundDirections(o Raglan, plan decreaseRounds, kinds []raglanKind) []string {
	t := raglanTeller{plan: o, names: plan.names(kinds), written: make([]bool, len(kinds)), told: 1}
	left := plan.Nested
	if first := o.Rounds[0]; first.InstructionNumber > 0 {
		t.tell("Round 1: " + r.marking(r.starts(), kinds[first.InstructionNumber-1]) + t.leaves(1))
		left.Rows, left.Levels = left.Rows[1:], left.Levels[1:]
	} else {
		t.tell("Round 1: " + r.marking(r.starts(), raglanKind{}) + ".")
	}
	if blocks := left.Blocks(); plan.easy || len(blocks) <= mostStretches {
		t.stretches(blocks, left.Rows)
		t.evenTo(o.DepthRounds)
		return t.lines
	}
	for t.told < o.DepthRounds {
		rest := o.DepthRounds - t.told // in lists of like length: none has a few rounds alone
		lists := (rest + mostListed - 1) / mostListed
		last := t.told + (rest+lists-1)/lists
		t.turn(last, t.leaves(last))
		t.told = last
	}
	return t.lines
}

// stretches tell the rounds of blocks.
func (t *raglanTeller) stretches(blocks []schedule.Block, all []int) {
	for at := 0; len(blocks) > 0; {
		b := blocks[0]
		rounds := all[at : at+len(b.Steps)*b.Times]
		if at += len(rounds); len(b.Steps) > 1 {
			next := t.plan.DepthRounds + 1
			if at < len(all) {
				next = all[at]
			}
			t.inTurn(b, rounds, next)
			blocks = blocks[1:]
			continue
		}
		again := againWords(b.Steps[0].Every, len(rounds)-1)
		// What goes on with the same round at another interval is told on the same line.
		for blocks = blocks[1:]; len(blocks) > 0 && len(blocks[0].Steps) == 1 && t.kindOn(all[at]) == t.kindOn(rounds[0]); blocks = blocks[1:] {
			again = append(again, againWords(blocks[0].Steps[0].Every, blocks[0].Times)...)
			at += blocks[0].Times
		}
		t.again(rounds[0], again, all[at-1])
	}
}

// tell adds a line.
func (t *raglanTeller) tell(line string) { t.lines = append(t.lines, line) }

// evenTo tells the rounds worked even up to one.
func (t *raglanTeller) evenTo(last int) {
	t.lines = report.AppendEven(t.lines, "round", t.told+1, last)
	t.told = last
}

// kindOn is the kind of decrease round worked on a round, from 0.
func (t *raglanTeller) kindOn(round int) int { return t.plan.Rounds[round-1].InstructionNumber - 1 }

// leaves is the stitches after a round.
func (t *raglanTeller) leaves(round int) string {
	return ": " + report.CountOf(t.plan.Rounds[round-1].TotalStitches, "stitches") + "."
}

// again tells a decrease round, and at which intervals it comes again up to the last.
func (t *raglanTeller) again(round int, intervals []string, last int) {
	t.evenTo(round - 1)
	kind := t.kindOn(round)
	if t.written[kind] {
		t.tell("Round " + strconv.Itoa(round) + ": work the " + t.names[kind] + t.leaves(round))
	} else {
		t.write([]int{round}, t.leaves(round))
	}
	if len(intervals) > 0 {
		t.tell("Work the " + t.names[kind] + " " + strings.Join(intervals, ", then ") + t.leaves(last))
	}
	t.told = last
}

// write writes a kind of decrease round out on the rounds it is worked on.
func (t *raglanTeller) write(rounds []int, leaves string) {
	kind := t.kindOn(rounds[0])
	t.written[kind] = true
	t.tell(roundNumbers(rounds) + " (" + t.names[kind] + "): " + t.plan.Instructions[kind].Description + leaves)
}

// againWords is "every 4th round 9 times more", or nothing where a round does not come again.
func againWords(every, times int) []string {
	if times == 0 {
		return nil
	}
	interval := "every "
	if every > 1 {
		interval += report.Ordinal(every) + " "
	}
	return []string{interval + "round " + report.Times(times) + " more"}
}

// inTurn tells decrease rounds that take turns: the first turn, and how often all of it comes
// again. The last turn has the even rounds at its end only where there is room for them before the next
// decrease round; of two turns it is then told by its numbers, as it repeats less than what was told last.
func (t *raglanTeller) inTurn(b schedule.Block, rounds []int, next int) {
	first, size := rounds[0], len(b.Steps)
	all := rounds[size] - first
	t.evenTo(first - 1)
	t.turn(first+all-1, ".")
	last := rounds[len(rounds)-1]
	span := func(from, to int) string { return "rounds " + strconv.Itoa(from) + "-" + strconv.Itoa(to) }
	whole, short := span(first, first+all-1), span(first, last-(b.Times-1)*all)
	switch t.told = first + b.Times*all - 1; {
	case t.told < next:
		t.tell("Repeat " + whole + " " + report.Again(b.Times-1) + t.leaves(last))
		return
	case b.Times == 2:
		t.tell("R" + span(first+all, last)[1:] + ": as " + short + t.leaves(last))
	default:
		t.tell("Repeat " + whole + " " + report.Again(b.Times-2) + ", then " + short + " once" + t.leaves(last))
	}
	t.told = last
}

// turn tells the rounds up to one. Those of a kind are told together where there are several, and
// so are those worked even among them; what comes in the last round stands last, with what it leaves.
func (t *raglanTeller) turn(last int, leaves string) {
	byKind := make([][]int, len(t.names)+1)
	even, most := len(t.names), 0
	for round := t.told + 1; round <= last; round++ {
		if kind := t.kindOn(round); kind >= 0 {
			byKind[kind] = append(byKind[kind], round)
			most = max(most, len(byKind[kind]))
		} else {
			byKind[even] = append(byKind[even], round)
		}
	}
	if most <= 1 {
		for round := t.told + 1; round <= last; round++ {
			if t.kindOn(round) >= 0 {
				t.evenTo(round - 1)
				t.write([]int{round}, ".")
				t.told = round
			}
		}
		t.evenTo(last)
		return
	}
	byKind = slices.DeleteFunc(byKind, func(list []int) bool { return len(list) == 0 })
	sort.Slice(byKind, func(i, j int) bool { return byKind[i][0] < byKind[j][0] })
	if !t.noted {
		t.noted = true
		t.tell("Note: where lines tell several rounds each, work the rounds in the order of their numbers.")
	}
	for _, list := range byKind {
		if list[len(list)-1] == last {
			t.listed(list, leaves)
		} else {
			t.listed(list, ".")
		}
	}
}

// listed tells rounds of a kind, or worked even.
func (t *raglanTeller) listed(rounds []int, leaves string) {
	if t.kindOn(rounds[0]) < 0 {
		t.tell(roundNumbers(rounds) + ": work even" + leaves)
	} else {
		t.write(rounds, leaves)
	}
}

// roundNumbers is "Round 5" or "Rounds 5, 7 and 9-11".
func roundNumbers(rounds []int) string {
	var list []string
	for from := 0; from < len(rounds); {
		to := from
		for to+1 < len(rounds) && rounds[to+1] == rounds[to]+1 {
			to++
		}
		span := strconv.Itoa(rounds[from])
		if to > from {
			span += "-" + strconv.Itoa(rounds[to])
		}
		list = append(list, span)
		from = to + 1
	}
	noun := "Rounds "
	if len(rounds) == 1 {
		noun = "Round "
	}
	return noun + report.Listed(list)
}
