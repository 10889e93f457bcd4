package yoke

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// plan writes the answer.
func (r raglan) plan(unit measure.DisplayUnit) Raglan {
	out := Raglan{
		BodyStitches: r.body, SleeveStitches: r.sleeve, UnderarmStitches: r.underarm, LineStitches: r.line,
		JoinStitches: r.join, NeckStitches: r.total(r.ends()), DepthRounds: r.rounds, DepthCm: r.rw.SizeCm(r.rounds),
		JoinCm: r.st.SizeCm(r.join), unit: unit,
		Back: r.part(backPart), Front: r.part(frontPart), Sleeve: r.part(sleevePart),
	}
	out.NeckCm = r.st.SizeCm(out.NeckStitches)
	// Two edges each of back and front, and of both sleeves.
	out.Steepness = (2*out.Back.EdgeAngleDegrees + 2*out.Front.EdgeAngleDegrees + 4*out.Sleeve.EdgeAngleDegrees) / 360
	if out.Steepness > 1 {
		out.Notices = append(out.Notices, report.Notice{Reason: "RUFFLES", Field: "", Description: "the edges lean " + measure.Decimal(out.Steepness, 2) +
			" times as much as those of a flat piece; the fabric ruffles rather than lies"})
	}
	r.knit(&out)
	out.directions = r.directions(out)
	return out
}

// part is the figures of one part.
func (r raglan) part(i int) RaglanPart {
	p := r.parts[i]
	lost := r.st.SizeCm(p.decreases())
	return RaglanPart{
		StartStitches: p.start, EndStitches: p.end, DecreaseRoundCount: p.decreases(), EdgeLostCm: lost,
		EdgeAngleDegrees: math.Atan(lost/r.rw.SizeCm(r.rounds)) * 180 / math.Pi,
	}
}

// counts are the stitches of back, front and each sleeve.
type counts [sleevePart + 1]int

func (r raglan) starts() counts { return counts{r.parts[0].start, r.parts[1].start, r.parts[2].start} }

func (r raglan) ends() counts { return counts{r.parts[0].end, r.parts[1].end, r.parts[2].end} }

// total is all stitches on the needle.
func (r raglan) total(n counts) int {
	return n[backPart] + n[frontPart] + 2*n[sleevePart] + 4*r.line
}

// roundOf is the number of decrease round i of a part, from 0: the spread counted
// down from the neck.
func (r raglan) roundOf(part, i int) int {
	k, slots := r.parts[part].decreases(), r.slots()
	slot := slots - spread.Place(k-1-i, k, slots, spread.AtStart)
	if r.everySecond {
		return r.rounds - 2*(slots-slot)
	}
	return slot
}

// decreasing says which parts decrease in a round.
type decreasing [sleevePart + 1]bool

// raglanKind is what makes decrease rounds alike: which parts decrease, and how
// the sleeves do.
type raglanKind struct {
	parts decreasing
	last  int // stitches of a sleeve before a decrease that is not the usual one, else 0
}

// knit works all rounds and keeps the first of each kind.
func (r raglan) knit(out *Raglan) {
	now := r.starts()
	var done counts // decrease rounds worked, by part
	var kinds []raglanKind
	out.Rounds = make([]RaglanRound, r.rounds)
	for round := 1; round <= r.rounds; round++ {
		before, number := now, 0
		var kind raglanKind
		for p := range r.parts {
			if done[p] < r.parts[p].decreases() && r.roundOf(p, done[p]) == round {
				kind.parts[p] = true
				done[p]++
				now[p] -= 2
			}
		}
		if kind.parts != (decreasing{}) {
			if kind.parts[sleevePart] && before[sleevePart] < 4 {
				kind.last = before[sleevePart]
			}
			number = 1 + indexOf(kinds, kind)
			if number > len(kinds) {
				kinds = append(kinds, kind)
				out.Instructions = append(out.Instructions, RaglanInstruction{
					BackDecreases: kind.parts[backPart], FrontDecreases: kind.parts[frontPart], SleevesDecrease: kind.parts[sleevePart],
					Instruction:      stitch.Instruction{Row: r.row(before, kind.parts), StartStitches: r.total(before), EndStitches: r.total(now)},
					FirstRoundNumber: round, Description: r.describe(kind),
				})
			}
			out.Instructions[number-1].Times++
		}
		out.Rounds[round-1] = RaglanRound{round, now[backPart], now[frontPart], now[sleevePart], r.total(now), number}
	}
}

// indexOf is where a kind stands in the list, or its length.
func indexOf(kinds []raglanKind, kind raglanKind) int {
	for i, k := range kinds {
		if k == kind {
			return i
		}
	}
	return len(kinds)
}

// row writes one decrease round, from the back's first stitch to the last stitch
// of the line after the right sleeve. After a line the decrease is ssk and before
// it k2tog, so that each leans with the edge it makes. The last three stitches of a sleeve are worked as one; of the last two
// each is worked together with the nearest stitch of its line, which lies on top.
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

// Summary says the answer in words.
func (o Raglan) Summary() string {
	lines := "four lines of " + report.CountOf(o.LineStitches, "stitches")
	if o.LineStitches == 0 {
		lines = "four markers"
	}
	return "Join " + report.CountOf(o.JoinStitches, "stitches") + " (" + o.unit.Size(o.JoinCm) + ") at " + lines + " and narrow them to " + strconv.Itoa(o.NeckStitches) + " (" + o.unit.Size(o.NeckCm) +
		") over " + report.CountOf(o.DepthRounds, "rounds") + " (" + o.unit.Size(o.DepthCm) + "): the back decreases " +
		report.Times(o.Back.DecreaseRoundCount) + ", the front " + report.Times(o.Front.DecreaseRoundCount) + ", each sleeve " +
		report.Times(o.Sleeve.DecreaseRoundCount) + ", two stitches each time."
}

// Sources says where the figures come from.
func (Raglan) Sources() []report.Source {
	return []report.Source{
		{Figure: "percentage system: sleeve 33 %, underarm 8 %, neck 40 %, depth a quarter of the body",
			Citation: "Zimmermann, Knitting Without Tears (1971) and Knitting Around (1989), by way of a digest", Status: report.SourceStatusPublished},
		{Figure: "lines of two stitches, one decrease on each side of a line, leaning along it", Citation: "common practice", Status: report.SourceStatusCommonPractice},
		{Figure: "rounds of the decreases", Citation: "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30",
			Status: report.SourceStatusOwnDerivation},
		{Figure: "steepness", Citation: "own derivation: four flat pieces lie flat when the angles between their edges add up to a full turn",
			Status: report.SourceStatusOwnDerivation},
	}
}
