package yoke

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
)

// whenDirections say on which rounds the kinds of decrease round are worked: a line
// for every stretch that is alike, or where there is no easy plan one for every kind.
func (o Raglan) whenDirections(d decreaseRounds, names []string) []string {
	if !d.easy {
		return o.listDirections(names)
	}
	var lines []string
	stretches := d.Blocks()
	at := 0 // decrease rounds told so far
	for i := 0; i < len(stretches); i++ {
		first := at
		at += len(stretches[i].Steps) * stretches[i].Times
		if len(stretches[i].Steps) > 1 {
			lines = append(lines, o.turnsDirection(d.Rows[first:at], stretches[i], names))
			continue
		}
		line := "Work the " + o.nameOn(d.Rows[first], names) + " on round " + strconv.Itoa(d.Rows[first]) +
			againWords(stretches[i].Steps[0].Every, d.Rows[first+1:at])
		// What goes on with the same round at another interval is told on the same line.
		for i+1 < len(stretches) && len(stretches[i+1].Steps) == 1 && o.nameOn(d.Rows[at], names) == o.nameOn(d.Rows[first], names) {
			i++
			line += againWords(stretches[i].Steps[0].Every, d.Rows[at:at+stretches[i].Times])
			at += stretches[i].Times
		}
		lines = append(lines, line+": "+o.leftAfter(d.Rows[at-1])+".")
	}
	return lines
}

// mostStretches is how many lines tell rounds in the order in which they are worked. Where
// the kinds change more often, a line lists all rounds of a kind. Own choice.
const mostStretches = 8

// listDirections list the rounds of a plan that is not easy: a line for every stretch of the
// same kind.
func (o Raglan) listDirections(names []string) []string {
	var lines []string
	var stretch []int
	last := 0
	tell := func() {
		if last > 0 {
			lines = append(lines, "Work the "+names[last-1]+" on "+roundList(stretch)+".")
		}
		stretch = nil
	}
	for i, r := range o.Rounds {
		if r.InstructionNumber == 0 {
			continue
		}
		if r.InstructionNumber != last {
			tell()
			last = r.InstructionNumber
		}
		stretch = append(stretch, i+1)
	}
	if tell(); len(lines) <= mostStretches {
		return lines
	}
	lines = nil
	for i, name := range names {
		lines = append(lines, "Work the "+name+" on "+roundList(o.roundsOf(i+1))+".")
	}
	return lines
}

// turnsDirection is a stretch in which decrease rounds take turns, the rounds worked even
// between them written out. They go on to the last decrease round and no further.
func (o Raglan) turnsDirection(rounds []int, b schedule.Block, names []string) string {
	var turns []string
	all := 0
	for i := range b.Steps {
		turns = append(turns, "the "+o.nameOn(rounds[i], names))
		every := b.Steps[(i+1)%len(b.Steps)].Every
		if every > 1 {
			turns = append(turns, report.CountOf(every-1, "rounds")+" even")
		}
		all += every
	}
	last, ending := rounds[len(rounds)-1], ""
	if n := (last-rounds[0])%all + 1; n < all {
		ending = ", ending with the " + report.Ordinal(n) + " of them"
	}
	return fmt.Sprintf("On rounds %d-%d repeat these %s%s: %s; %s.", rounds[0], last, report.CountOf(all, "rounds"), ending,
		strings.Join(turns, ", "), o.leftAfter(last))
}

// againWords is ", then every 4th round 9 times" for rounds at that interval, the round itself
// for a single one, or nothing where it does not come again.
func againWords(every int, rounds []int) string {
	switch len(rounds) {
	case 0:
		return ""
	case 1:
		return ", then on round " + strconv.Itoa(rounds[0])
	}
	interval := "every round "
	if every > 1 {
		interval = "every " + report.Ordinal(every) + " round "
	}
	return ", then " + interval + report.Times(len(rounds))
}

// leftAfter is the stitches after a round.
func (o Raglan) leftAfter(round int) string {
	return report.CountOf(o.Rounds[round-1].TotalStitches, "stitches")
}

// nameOn is the name of the decrease round worked on a round.
func (o Raglan) nameOn(round int, names []string) string {
	return names[o.Rounds[round-1].InstructionNumber-1]
}

// names tell the kinds of decrease round apart by what decreases in them. Where all
// parts do that ever do there is nothing to tell.
func (d decreaseRounds) names(kinds []raglanKind) []string {
	all := d.decreases(len(d.first))
	names := make([]string, len(kinds))
	for i, kind := range kinds {
		switch {
		case kind.last > 0:
			names[i] = "last sleeve decrease round"
		case kind.parts == all:
			names[i] = "decrease round"
		default:
			names[i] = partsWord(kind.parts) + " decrease round"
		}
	}
	return names
}

// partsWord is whose decrease round it is. Back and front are the body.
func partsWord(parts decreasing) string {
	if parts[backPart] && parts[frontPart] {
		return "body" // the sleeves too would be all there are
	}
	var words []string
	for p, name := range [...]string{"back", "front", "sleeve"} {
		if parts[p] {
			words = append(words, name)
		}
	}
	return report.Listed(words)
}
