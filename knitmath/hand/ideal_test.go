package hand

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// The ideal outlines are drawn by what the trade says of each kind alone: a wedge and a star narrow along a straight line until half of
// the stitches are left and along one half as long to the stitch for the rest; a short top along that alone; a round one is a
// parabola, with so many rounds more at every width; a gusset widens along a straight line. Own derivation. What is measured is what
// the machine knits.

// worked are the stitches after every round of a thumb or a top, knit on the machine.
func worked(t *testing.T, m *stitch.Machine, rounds int, at func(round int) *stitch.Instruction) []int {
	t.Helper()
	counts := []int{m.StitchCount()}
	for round := 1; round <= rounds; round++ {
		row := knittest.PlainRow(m)
		if in := at(round); in != nil {
			row = in.Row
		}
		work(t, m, row)
		counts = append(counts, m.StitchCount())
	}
	return counts
}

// narrowed is how many stitches are wanted when so many rounds are worked of what loses each in a decrease round: every 2nd round
// until half are left, then every round; or from the first on.
func narrowed(all, each, worked float64, short bool) float64 {
	slow := all / each
	switch {
	case short:
		return all - worked*each
	case worked <= slow:
		return all - worked*each/2
	}
	return all/2 - (worked-slow)*each
}

// Tops of mittens of every kind lie within a decrease of their ideal outline all the way: of two sides that is a stitch at each edge.
func TestTopsLieOnTheirOutline(t *testing.T) {
	var d [TopKindShort + 1]knittest.Distances
	for stitches := 16; stitches <= 140; stitches += knittest.Sweep(1, 9) {
		for kind := TopKindWedge; kind <= TopKindShort; kind++ {
			for rows := 20; rows <= 44; rows += 4 {
				out, err := PlanMittenTop(MittenTopInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: float64(rows)}, HandStitches: &stitches, Kind: kind})
				if err != nil {
					t.Fatal(stitches, kind, err)
				}
				d[kind] = append(d[kind], offTop(t, out, kind)...)
			}
		}
	}
	d[TopKindWedge].Check(t, "wedge tops, stitches at each edge", 0.5, 1)
	d[TopKindShort].Check(t, "short tops, stitches at each edge", 0.5, 1)
	d[TopKindStar].Check(t, "star tops, decrease rounds", 0.5, 1)
	d[TopKindRound].Check(t, "round tops, stitches of a section", 0.3, 1)
}

// offTop is how far a top lies from its outline after every round, in stitches for each of its decreases.
func offTop(t *testing.T, out MittenTop, kind TopKind) (off knittest.Distances) {
	t.Helper()
	next := 0
	counts := worked(t, knittest.CastOn(t, out.HandStitches, true), out.LengthRounds, func(round int) *stitch.Instruction {
		if next == len(out.Rounds) || out.Rounds[next].RoundNumber != round {
			return nil
		}
		next++
		return &out.Rounds[next-1].Instruction
	})
	if out.Rounds[0].Adjusts { // what the round has over is decreased before
		counts = counts[out.Rounds[0].RoundNumber:]
	}
	section, more := out.section()
	each := 4.0
	for i, n := range counts {
		wanted := narrowed(float64(counts[0]), each, float64(i), kind == TopKindShort)
		if kind == TopKindRound {
			if i == 0 {
				continue // the hand
			}
			each = float64(out.HandStitches) / float64(section)
			left := float64(len(counts)-1-i+more) + 0.5 // with the rounds after the last decrease, which the book leaves out
			wanted = each * (math.Sqrt(float64(more*more)+2*left) - float64(more))
		}
		off = append(off, math.Abs(float64(n)-wanted)/each)
	}
	return off
}

// section is how many stitches the sections of a round top have, and how many rounds more than those have between decreases are even.
func (o MittenTop) section() (stitches, more int) {
	if o.kind != TopKindRound {
		return 0, 0
	}
	first := o.Rounds[0].Instruction
	stitches = o.HandStitches / (first.StartStitches - first.EndStitches)
	if len(o.Rounds) > 1 {
		more = o.Rounds[1].RoundNumber - o.Rounds[0].RoundNumber - 1 - (stitches - 2)
	}
	return stitches, more
}

// Gussets of thumbs lie within an increase of a straight line, at each edge, and a thumb is three tenths of the mitten's circumference
// long, to half a round.
func TestThumbsLieOnTheirOutline(t *testing.T) {
	var gussets, lengths knittest.Distances
	for stitches := 20; stitches <= 100; stitches += knittest.Sweep(1, 9) {
		for every := 1; every <= 6; every++ {
			in := ThumbInput{Gauge: ordinary, HandStitches: &stitches, EveryRounds: &every, StartStitches: new(1 + every%3)}
			out, err := PlanThumb(in)
			if err != nil {
				continue
			}
			next := 0
			last := out.HandRounds[len(out.HandRounds)-1].RoundNumber
			counts := worked(t, knittest.CastOn(t, stitches, true), last-1, func(round int) *stitch.Instruction {
				if out.HandRounds[next].RoundNumber != round {
					return nil
				}
				next++
				return &out.HandRounds[next-1].Right
			})
			for i, n := range counts {
				wanted := float64(stitches) + 2*float64(i)/float64(every)
				gussets = append(gussets, math.Abs(float64(n)-wanted)/2)
			}
			lengths = append(lengths, math.Abs(out.LengthCm-0.3*out.MittenCm)*ordinary.Rows/10)
		}
	}
	gussets.Check(t, "gussets of thumbs, stitches at each edge", 0.5, 0.85)
	lengths.Check(t, "lengths of thumbs, rounds", 0.3, 0.501)
}
