package sock

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// toes calls back with thousands of toes.
func toes(t *testing.T, each func(at string, o Toe)) int {
	t.Helper()
	n := 0
	for round := MinRound; round <= 140; round += knittest.Sweep(3, 9) {
		for kind := ToeKindUnspecified; kind <= ToeKindShortRows; kind++ {
			for variant := range 8 {
				in := ToeInput{Kind: kind, RoundStitches: &round, Direction: Direction((round + variant) % 3), WithOutline: true, Gauge: standard}
				switch {
				case kind == ToeKindShortRows:
					in.TurnMethod = shortrow.TurnMethod(variant % 3)
					if variant > 3 {
						in.CentreStitches = new(round/6*2/3*2 + round/2%2)
					}
				case variant&1 > 0:
					in.TipStitches = new(round/3 + variant)
				case variant&2 > 0 && kind == ToeKindRound:
					in.WedgeCount, in.MoreEvenRounds = new(3+variant), new(variant/2)
				case variant&2 > 0 && kind != ToeKindRound:
					in.Rates = []solid.Rate{rate(3, 1), rate(2, variant), rate(1, 1)}
				}
				o, err := PlanToe(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				n++
				each(fmt.Sprintf("%d stitches, kind %d, variant %d", round, kind, variant), o)
			}
		}
	}
	return n
}

// Every toe is knit: the counts after every round are those it says, and what is left is
// what it ends with.
func TestToesAreKnit(t *testing.T) {
	n := toes(t, func(at string, o Toe) {
		m := knitToe(t, at, o)
		knittest.CheckFinite(t, o)
		if o.kind == ToeKindShortRows {
			before := 1 // a round of the foot
			if o.toeUp {
				before = 0
			}
			checkCup(t, at, m, o.RoundStitches/2, *o.CentreStitches, len(o.Rows), before)
			return
		}
		if len(o.Rows) != o.LengthRows {
			t.Fatalf("%s: %d rounds of %d", at, len(o.Rows), o.LengthRows)
		}
		outlinetest.CheckFrame(t, o.Outline)
		if o.kind == ToeKindWedge && o.TipStitches%2 > 0 {
			t.Fatalf("%s: %d stitches cannot be grafted", at, o.TipStitches)
		}
	})
	if n < knittest.Sweep(1200, 400) {
		t.Errorf("%d toes", n)
	}
}

// knitToe knits every row after a round of the foot.
func knitToe(t *testing.T, at string, o Toe) *stitch.Machine {
	t.Helper()
	first, last := o.RoundStitches, o.TipStitches
	if o.toeUp {
		first, last = last, first
	}
	m := knittest.CastOn(t, first, true)
	if !o.toeUp {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	for i, r := range o.Rows {
		if m.Side() != r.Side || m.StitchCount() != r.Instruction.StartStitches || r.RowNumber != i+1 {
			t.Fatalf("%s: %d stitches before row %d, said %d", at, m.StitchCount(), i+1, r.Instruction.StartStitches)
		}
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("%s: row %d, %q: %v", at, i+1, r.Instruction.Row.Text(), err)
		}
	}
	if m.StitchCount() != last || m.Unresolved() != 0 || m.ShortRowOpen() {
		t.Fatalf("%s: %d stitches of %d", at, m.StitchCount(), last)
	}
	return m
}

// A wedge toe comes down on both halves alike, and a star and a round toe keep their wedges
// within a stitch of one another: what a flat toe or a dome is.
func TestWedgeToesAreEven(t *testing.T) {
	toes(t, func(at string, o Toe) {
		if o.kind != ToeKindWedge {
			return
		}
		for _, r := range o.Rows {
			text := r.Instruction.Row.Text()
			if lost := r.Instruction.StartStitches - r.Instruction.EndStitches; lost == 4 {
				plain := r.Instruction.StartStitches/2 - 6
				want := fmt.Sprintf("[k1, ssk, k%d, k2tog, k1] twice", plain)
				if plain == 0 {
					want = "[k1, ssk, k2tog, k1] twice"
				}
				if text != want && plain > 0 {
					t.Fatalf("%s: %q, want %q", at, text, want)
				}
			} else if lost > 1 {
				t.Fatalf("%s: %q loses %d", at, text, lost)
			}
		}
	})
}

func rate(everyRounds, times int) solid.Rate {
	return solid.Rate{EveryRounds: everyRounds, Times: times}
}

// A toe from its tip is that from the cuff down the other way round: the same counts, each as often,
// and a round even after the cast-on.
func TestToesFromTheTipMirrorTheOthers(t *testing.T) {
	counts := func(in ToeInput, skip int) map[int]int {
		o, err := PlanToe(in)
		if err != nil {
			t.Fatal(err)
		}
		worked := map[int]int{}
		for _, r := range o.Rows[skip:] {
			count := r.Instruction.EndStitches
			if in.Direction == DirectionToeUp {
				count = r.Instruction.StartStitches
			}
			worked[count]++
		}
		return worked
	}
	for round := 24; round <= 120; round++ {
		for kind := ToeKindWedge; kind <= ToeKindStar; kind++ {
			in := ToeInput{Kind: kind, RoundStitches: &round}
			down := counts(in, 0)
			in.Direction = DirectionToeUp
			if up := counts(in, 1); !maps.Equal(up, down) {
				t.Errorf("%d stitches, kind %d: %v from the tip, %v from the cuff", round, kind, up, down)
			}
		}
	}
}

// A toe of short rows folds where sole and instep have as many rows: it is as long as half of
// both together, measured on the fabric, at the deepest.
func TestShortRowToesAreAsLongAsSaid(t *testing.T) {
	toes(t, func(at string, o Toe) {
		if o.kind != ToeKindShortRows || o.method == shortrow.TurnMethodGerman || o.RoundStitches%2 > 0 {
			return // a double stitch has a row more
		}
		m := knitToe(t, at, o)
		heights := m.Heights()
		foot := slices.Min(heights) - closingRounds // before the toe
		if got := (slices.Max(heights) + slices.Min(heights) - 2*foot) / 2; got != o.LengthRows {
			t.Fatalf("%s: %d rows long, said %d", at, got, o.LengthRows)
		}
	})
}
