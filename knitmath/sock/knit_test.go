package sock

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// castingOn is a row in which stitches are cast on where it picks them up: what the counts
// come to where no edge is looked at.
func castingOn(row stitch.Row) stitch.Row {
	steps := slices.Clone(row.Steps)
	for i := range steps {
		if steps[i].Op == stitch.PickUp {
			steps[i].Op = stitch.CastOn
		}
	}
	return stitch.Row{Steps: steps}
}

// knitHeel knits every row on one machine, the leg before it, and looks at the counts after
// each; what it returns is the machine after the heel.
func knitHeel(t *testing.T, at string, o Heel) *stitch.Machine {
	t.Helper()
	m := knittest.CastOn(t, o.RoundStitches, true)
	if err := m.Work(knittest.PlainRow(m)); err != nil {
		t.Fatal(err)
	}
	for i, r := range o.Rows {
		if r.Part == HeelPartClosing {
			break // of an opening, which is another round
		}
		if m.Side() != r.Side {
			t.Fatalf("%s: row %d faces %v", at, i+1, m.Side())
		}
		resting := 0
		// Yarn overs that wait are no stitches.
		count := func() int {
			if o.method == shortrow.TurnMethodYarnOver {
				return m.StitchCount() - resting - m.Unresolved()
			}
			return m.StitchCount() - resting
		}
		if !o.toeUp && (r.Part == HeelPartFlap || r.Part == HeelPartTurn) {
			resting = o.InstepStitches
		}
		if got := count(); got != r.Instruction.StartStitches {
			t.Fatalf("%s: %d stitches before row %d, said %d", at, got, i+1, r.Instruction.StartStitches)
		}
		if err := m.Work(castingOn(r.Instruction.Row)); err != nil {
			t.Fatalf("%s: row %d, %q: %v", at, i+1, r.Instruction.Row.Text(), err)
		}
		if got := count(); got != r.Instruction.EndStitches {
			t.Fatalf("%s: %d stitches after row %d, said %d", at, got, i+1, r.Instruction.EndStitches)
		}
	}
	if m.StitchCount() != o.RoundStitches || m.ShortRowOpen() || m.Side() != stitch.RightSide || m.Unresolved() != 0 {
		t.Fatalf("%s: %d stitches of %d, %d gaps", at, m.StitchCount(), o.RoundStitches, m.Unresolved())
	}
	return m
}

// gapTurn works a turn as a knitter is told to, with no formula: the first row as given, and
// then to the stitch before the gap that the row of this side left, the decrease over the
// gap, and so many stitches beyond it. waiting are those beyond the gaps of either side.
func gapTurn(between, before, after, beyond int) (rows []string, left int) {
	waiting := [...]int{after, before}
	centre := between
	for i := 0; waiting[0]+waiting[1] > 0; i++ {
		dec, work := stitch.SSK, stitch.Knit
		if i%2 == 1 {
			dec, work = stitch.P2tog, stitch.Purl
		}
		more := min(beyond, waiting[i%2]-1)
		waiting[i%2] -= 1 + more
		centre += more // the decrease makes one of two
		steps := []stitch.Step{stitch.Do(stitch.Slip, 1)}
		if plain := centre - 2 - more; plain > 0 {
			steps = append(steps, stitch.Do(work, plain))
		}
		steps = append(steps, stitch.Do(dec, 1))
		if more > 0 {
			steps = append(steps, stitch.Do(work, more))
		}
		rows = append(rows, stitch.RowOf(append(steps, stitch.Do(stitch.Turn, 1))...).Text())
	}
	return rows, centre
}

// flapHeels calls back with thousands of heels of flap and gusset.
func flapHeels(t *testing.T, each func(at string, in HeelInput, o Heel)) int {
	t.Helper()
	n := 0
	for round := 20; round <= 100; round += knittest.Sweep(2, 9) {
		for _, kind := range []HeelKind{HeelKindRound, HeelKindSquare, HeelKindHeart} {
			for variant := range 8 {
				in := HeelInput{Kind: kind, RoundStitches: &round, FlapStitch: FlapStitch(variant % 3)}
				if variant&1 > 0 {
					in.HeelStitches = new(round*(4+variant%3)/10 + 1)
				}
				if variant&2 > 0 {
					in.GussetEveryRounds, in.SuccessiveRounds = new(1+variant%4), new(1+variant/2%3)
				}
				if variant&4 > 0 {
					in.FlapRows = new(round/2 + round/2%2 + 4)
				}
				o, err := PlanHeel(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				n++
				each(fmt.Sprintf("%d stitches, kind %d, variant %d", round, kind, variant), in, o)
			}
		}
	}
	return n
}

// Every heel of flap and gusset is knit: the counts after every row are those it says, and
// the round has its stitches again.
func TestFlapHeelsAreKnit(t *testing.T) {
	n := flapHeels(t, func(at string, _ HeelInput, o Heel) {
		knitHeel(t, at, o)
		knittest.CheckFinite(t, o)
		turn, gusset := o.part(HeelPartTurn), o.part(HeelPartGusset)
		if got := turn[len(turn)-1].Instruction.EndStitches; got != *o.TurnedStitches {
			t.Fatalf("%s: the turn leaves %d, said %d", at, got, *o.TurnedStitches)
		}
		if got := turns[o.kind].left(o.HeelStitches, *o.CentreStitches); got != *o.TurnedStitches {
			t.Fatalf("%s: by its formula the turn leaves %d, not %d", at, got, *o.TurnedStitches)
		}
		if *o.TurnedStitches+2**o.PickUpStitches+o.InstepStitches != *o.GreatestRoundStitches || len(gusset) != *o.GussetRounds ||
			len(o.part(HeelPartFlap)) != *o.FlapRows {
			t.Fatalf("%s: %+v", at, o)
		}
	})
	if n < knittest.Sweep(800, 180) {
		t.Errorf("%d heels", n)
	}
}

// The turn is what comes of going to the gap and decreasing over it.
func TestTurnsMeetTheirGaps(t *testing.T) {
	flapHeels(t, func(at string, in HeelInput, o Heel) {
		beyond, beside := 1, (o.HeelStitches-*o.CentreStitches)/2
		if in.Kind == HeelKindSquare {
			beyond = 0
		}
		// Of a round turn the first decreases lie beside the centre.
		rows, left := gapTurn(*o.CentreStitches, beside, beside, beyond)
		if left != *o.TurnedStitches || len(rows) != len(o.part(HeelPartTurn)) {
			t.Fatalf("%s: %d rows leave %d by going to the gaps, and %d leave %d", at, len(rows), left, len(o.part(HeelPartTurn)),
				*o.TurnedStitches)
		}
		for i, r := range o.part(HeelPartTurn) {
			want := rows[i]
			if i == 0 {
				continue // it comes from the edge
			}
			if got := r.Instruction.Row.Text(); got != want {
				t.Fatalf("%s: row %d is %q, going to the gap it is %q", at, i+1, got, want)
			}
		}
	})
}
