package sock

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// The ideal outlines are drawn by what the trade says of each kind alone: a wedge and a star narrow along a straight line until half of
// the stitches are left and along one half as long to the stitch for the rest; a round toe has as many rounds at every width as its
// sections have stitches, a parabola; short rows leave out a stitch at each end, of two rows; a flap is a rectangle, and a gusset a
// straight line. Own derivation. What is measured is what the machine knits.

// knitCounts are the stitches after every round of a toe, from those it begins with, on the machine.
func knitCounts(t *testing.T, at string, from int, rows []stitch.Instruction) []int {
	t.Helper()
	m := knittest.CastOn(t, from, true)
	counts := []int{from}
	for _, in := range rows {
		if err := m.Work(in.Row); err != nil {
			t.Fatalf("%s: %q: %v", at, in.Row.Text(), err)
		}
		counts = append(counts, m.StitchCount())
	}
	return counts
}

// halved is how many stitches are wanted when so many rounds have been worked of a toe that loses each in a decrease round,
// every 2nd round until half are left, then every round.
func halved(all, each, worked float64) float64 {
	slow := all / each // rounds to half
	if worked <= slow {
		return all - worked*each/2
	}
	return all/2 - (worked-slow)*each
}

// parabola is how many stitches a section is wide where so many rounds are left to its point.
func parabola(left float64) float64 { return math.Sqrt(2 * left) }

// Wedge, star and round toes lie within a decrease of their ideal outline all the way: of a wedge that is a stitch at each edge.
func TestToesLieOnTheirOutline(t *testing.T) {
	var d [ToeKindShortRows]knittest.Distances
	for round := 16; round <= 200; round += knittest.Sweep(1, 9) {
		for kind := ToeKindWedge; kind <= ToeKindStar; kind++ {
			for direction := DirectionCuffDown; direction <= DirectionToeUp; direction++ {
				o, err := PlanToe(ToeInput{Kind: kind, RoundStitches: &round, Direction: direction, Gauge: standard})
				if err != nil {
					t.Fatal(err)
				}
				var rows []stitch.Instruction
				for _, r := range o.Rows {
					rows = append(rows, r.Instruction)
				}
				from := o.RoundStitches
				if o.toeUp {
					from = o.TipStitches
				}
				counts := knitCounts(t, fmt.Sprintf("%d stitches, kind %d", round, kind), from, rows)
				d[kind] = append(d[kind], offToe(o, kind, counts)...)
			}
		}
	}
	d[ToeKindWedge].Check(t, "wedge toes, stitches at each edge", 0.5, 1)
	d[ToeKindStar].Check(t, "star toes, decrease rounds", 0.5, 1)
	d[ToeKindRound].Check(t, "round toes, stitches of a section", 0.3, 0.75)
}

// offToe is how far a toe lies from its outline after every round, in the stitches of a decrease for each of its decreases.
func offToe(o Toe, kind ToeKind, counts []int) (off knittest.Distances) {
	if o.toeUp { // from the round to the tip; the first after the cast-on is even
		var down []int
		for i := len(counts) - 1; i > 0; i-- {
			down = append(down, counts[i])
		}
		counts = down
	}
	all, each := counts[0], float64(4)
	for i := 1; i < len(counts) && o.adjusted > 0 && counts[0] != o.adjusted; i++ {
		if counts[i] == o.adjusted { // what the round has over is decreased before
			all, counts = o.adjusted, counts[i:]
		}
	}
	if kind != ToeKindWedge {
		each = float64(*o.WedgeCount)
	}
	for worked, n := range counts {
		wanted := halved(float64(all), each, float64(worked))
		if kind == ToeKindRound {
			wanted = each * parabola(float64(len(counts)-1-worked)+0.5)
			if worked == 0 {
				continue // the foot
			}
		}
		off = append(off, math.Abs(float64(n)-wanted)/each)
	}
	return off
}

// Gussets lie within an increase or a decrease of the straight line that their sole follows, at each edge; a heel knit in afterwards
// within one of a wedge; and under every stitch of a cup of short rows there are as many rows as a fold from corner to corner wants, to
// two rows.
func TestHeelsLieOnTheirOutline(t *testing.T) {
	var gussets, closings, cups knittest.Distances
	each := func(at string, o Heel) {
		gusset := o.part(HeelPartGusset)
		if o.quick > 1 {
			gusset = nil // its first decreases are asked to follow one another
		}
		for i, r := range gusset {
			from, to := float64(*o.GreatestRoundStitches), float64(o.RoundStitches)
			if o.toeUp {
				from, to = to, from
			}
			wanted := from + (to-from)*(float64(i)+0.5)/float64(len(gusset))
			gussets = append(gussets, math.Abs(float64(r.Instruction.EndStitches)-wanted)/2)
		}
		if closing := o.part(HeelPartClosing); len(closing) > 0 {
			var rows []stitch.Instruction
			for _, r := range closing {
				rows = append(rows, r.Instruction)
			}
			counts := knitCounts(t, at, *o.ClosingStitches, rows)
			for worked, n := range counts {
				closings = append(closings, math.Abs(float64(n)-halved(float64(counts[0]), 4, float64(worked)))/4)
			}
		}
		if o.kind != HeelKindShortRows {
			return
		}
		heights := knitHeel(t, at, o).Heights()
		for x := range o.HeelStitches {
			in := math.Min(float64(x), float64(o.HeelStitches-1-x)) + 0.5 // from the edge of the heel to the middle of the stitch
			wanted := 4 * math.Min(in, float64(o.HeelStitches-*o.CentreStitches)/2)
			cups = append(cups, math.Abs(float64(heights[x]-heights[o.HeelStitches])-wanted))
		}
	}
	toeUpHeels(t, each)
	flapHeels(t, func(at string, _ HeelInput, o Heel) { each(at, o) })
	gussets.Check(t, "gussets, stitches at each edge", 0.5, 1)
	closings.Check(t, "heels knit in afterwards, stitches at each edge", 0.5, 1)
	cups.Check(t, "heels of short rows, rows under a stitch", 2, 2)
}
