package yoke

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// decreasing says which parts decrease in a round.
type decreasing [sleevePart + 1]bool

// raglanKind is what makes decrease rounds alike: which parts decrease, and how
// the sleeves do.
type raglanKind struct {
	parts decreasing
	last  int // stitches of a sleeve before a decrease that is not the usual one, else 0
}

// knit works all rounds and keeps the first of each kind.
func (r raglan) knit(d decreaseRounds, out *Raglan) []raglanKind {
	now, next := r.starts(), 0
	var kinds []raglanKind
	out.Rounds = make([]RaglanRound, r.rounds)
	for round := 1; round <= r.rounds; round++ {
		number := 0
		if next < len(d.Rows) && d.Rows[next] == round {
			before := now
			kind := raglanKind{parts: d.decreases(d.Levels[next])}
			for p, decreases := range kind.parts {
				if decreases {
					now[p] -= 2
				}
			}
			if kind.parts[sleevePart] && before[sleevePart] < 4 {
				kind.last = before[sleevePart]
			}
			number = 1 + slices.Index(kinds, kind)
			if number == 0 {
				number = 1 + len(kinds)
				kinds = append(kinds, kind)
				out.Instructions = append(out.Instructions, RaglanInstruction{
					BackDecreases: kind.parts[backPart], FrontDecreases: kind.parts[frontPart], SleevesDecrease: kind.parts[sleevePart],
					Instruction: stitch.Instruction{Row: r.row(before, kind.parts), StartStitches: r.total(before),
						EndStitches: r.total(now)},
					FirstRoundNumber: round, Description: r.marked(kind),
				})
			}
			out.Instructions[number-1].Times++
			next++
		}
		out.Rounds[round-1] = RaglanRound{round, now[backPart], now[frontPart], now[sleevePart], r.total(now), number}
	}
	return kinds
}

// row writes one decrease round, from the back's first stitch to the last stitch
// of the line after the right sleeve. After a line the decrease is ssk and before
// it k2tog, so that each leans with the edge it makes. The last three stitches of a
// sleeve are worked as one; of the last two each is worked together with the
// nearest stitch of its line, which lies on top.
func (r raglan) row(now counts, parts decreasing) stitch.Row {
	var runs []stitch.Run
	for _, p := range [...]int{backPart, sleevePart, frontPart, sleevePart} {
		n := now[p]
		switch {
		case !parts[p]:
			runs = stitch.AppendRun(runs, stitch.Knit, n+r.line)
		case n == 2:
			runs[len(runs)-1].Count-- // the line's last stitch
			runs = dropEmpty(runs)
			runs = stitch.AppendRun(runs, stitch.SSK, 1)
			runs = stitch.AppendRun(runs, stitch.K2tog, 1)
			runs = stitch.AppendRun(runs, stitch.Knit, r.line-1)
		case n == 3:
			runs = stitch.AppendRun(runs, stitch.CDD, 1)
			runs = stitch.AppendRun(runs, stitch.Knit, r.line)
		default:
			runs = stitch.AppendRun(runs, stitch.SSK, 1)
			runs = stitch.AppendRun(runs, stitch.Knit, n-4)
			runs = stitch.AppendRun(runs, stitch.K2tog, 1)
			runs = stitch.AppendRun(runs, stitch.Knit, r.line)
		}
	}
	return stitch.Compress(runs)
}

// dropEmpty takes away a last run of nothing.
func dropEmpty(runs []stitch.Run) []stitch.Run {
	if last := len(runs) - 1; runs[last].Count == 0 {
		return runs[:last]
	}
	return runs
}
