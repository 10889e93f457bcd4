package sock

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// alongChains is how p stitches are picked up in an edge of slipped stitches: one in each, and
// what is more twice in those nearest to the corner, or what is fewer passed over at the other
// end.
func alongChains(p, chains int, cornerFirst bool) []stitch.Step {
	var two, one, skip int
	if two = max(p-chains, 0); two > chains {
		return nil // more than two each
	}
	skip = max(chains-p, 0)
	one = chains - two - skip
	parts := []stitch.Step{stitch.Do(stitch.SkipRow, skip), stitch.Do(stitch.PickUp, one), stitch.Do(stitch.PickUpTwo, two)}
	if cornerFirst {
		parts[0], parts[2] = parts[2], parts[0]
	}
	var steps []stitch.Step
	for _, s := range parts {
		if s.Count > 0 {
			steps = append(steps, s)
		}
	}
	return steps
}

// along is the pick-up round with its stitches picked up in the chains of the edges.
func along(t *testing.T, o Heel) stitch.Row {
	t.Helper()
	var steps []stitch.Step
	second := false
	for _, s := range o.part(HeelPartPickUp)[0].Instruction.Row.Steps {
		if s.Op == stitch.PickUp {
			steps = append(steps, alongChains(s.Count, *o.FlapRows/2, second)...)
			second = true
			continue
		}
		steps = append(steps, s)
	}
	return stitch.RowOf(steps...)
}

// Every heel of flap and gusset is knit of one thread, as hands do: the instep waits on a
// holder, flap and turn are worked to and fro, the stitches are picked up in the slipped
// stitches that the flap has along its edges, and the instep is taken up between them. The
// fabric has a chain for every two rows of the flap at each edge, as long as the flap to a row,
// and when all is picked up no edge of flap or instep is left but what was passed over.
func TestGussetsArePickedUpAlongTheFlap(t *testing.T) {
	const stitchCm, rowCm = 0.33, 0.25
	flapHeels(t, func(at string, in HeelInput, o Heel) {
		m := stitch.NewMachine(stitch.InTheRound)
		f, err := m.Record()
		if err != nil {
			t.Fatal(err)
		}
		work := func(row stitch.Row) {
			t.Helper()
			if err := m.Work(row); err != nil {
				t.Fatalf("%s: %q: %v", at, row.Text(), err)
			}
		}
		must := func(err error) {
			t.Helper()
			if err != nil {
				t.Fatalf("%s: %v", at, err)
			}
		}
		must(m.CastOn(o.RoundStitches))
		work(knittest.PlainRow(m))
		for i, r := range append(o.part(HeelPartFlap), o.part(HeelPartTurn)...) {
			work(r.Instruction.Row)
			if i == 0 {
				must(m.HoldWaiting())
				must(m.WorkFlat())
			}
		}
		if got := m.Holders(); len(got) != 1 || got[0] != o.InstepStitches || m.StitchCount() != *o.TurnedStitches {
			t.Fatalf("%s: %v on hold, %d turned", at, got, m.StitchCount())
		}
		left, right := f.Selvedge(stitch.LeftHand, 2, *o.FlapRows+1), f.Selvedge(stitch.RightHand, 2, *o.FlapRows+1)
		for _, edge := range []stitch.Edge{left, right} {
			if edge.Len() != *o.FlapRows/2 || math.Abs(edge.LengthCm(stitchCm, rowCm)-float64(*o.FlapRows)*rowCm) > rowCm+1e-9 {
				t.Fatalf("%s: %d chains along %d rows: %v", at, edge.Len(), *o.FlapRows, edge.Parts())
			}
		}
		must(m.LayEdge(left))
		must(m.TakeUpAtEnd(0))
		must(m.LayEdge(right))
		must(m.JoinInTheRound())
		work(along(t, o))
		if m.StitchCount() != *o.GreatestRoundStitches {
			t.Fatalf("%s: %d stitches after the pick-ups, said %d", at, m.StitchCount(), *o.GreatestRoundStitches)
		}
		for _, r := range o.part(HeelPartGusset) {
			work(r.Instruction.Row)
		}
		if m.StitchCount() != o.RoundStitches {
			t.Fatalf("%s: %d stitches of %d", at, m.StitchCount(), o.RoundStitches)
		}
		live, castOn, open := 0, 0, 0
		for _, edge := range f.Boundary() {
			for _, p := range edge.Parts() {
				switch {
				case p.Kind == stitch.EdgeLive:
					live++
				case p.Kind == stitch.EdgeCastOn:
					castOn++
				case p.Row <= *o.FlapRows+1:
					open++ // what the turns of later rows leave is closed by the decreases over it
				}
			}
		}
		if live != o.RoundStitches || castOn != o.RoundStitches || open > max(0, 2*(*o.FlapRows/2-*o.PickUpStitches)) {
			t.Fatalf("%s: %d live, %d cast on, %d open: %v", at, live, castOn, open, shown(f))
		}
	})
}

func shown(f *stitch.Fabric) (all []string) {
	for _, e := range f.Boundary() {
		all = append(all, fmt.Sprint(e.Parts()))
	}
	return all
}
