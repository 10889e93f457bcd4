package sock

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// Every heel and toe of short rows is knit: no gap is left open, the cup is even on both
// sides, highest over its centre, and no stitch but those of the heel has more than the two
// rounds.
func TestShortRowHeelsAreKnit(t *testing.T) {
	for round := 20; round <= 90; round += knittest.Sweep(3, 17) {
		for _, method := range []shortrow.TurnMethod{0, shortrow.TurnMethodWrapAndTurn, shortrow.TurnMethodGerman} {
			for _, heel := range []int{round / 2, round * 6 / 10} {
				for centre := 2 - heel%2; centre <= heel-2; centre += 2 * knittest.Sweep(3, 7) {
					at := fmt.Sprintf("%d of %d, centre %d, method %d", heel, round, centre, method)
					o, err := PlanHeel(HeelInput{Kind: HeelKindShortRows, RoundStitches: &round, HeelStitches: &heel, CentreStitches: &centre,
						TurnMethod: method})
					if err != nil {
						t.Fatalf("%s: %v", at, err)
					}
					checkCup(t, at, knitHeel(t, at, o), heel, centre, len(o.Rows), 1)
				}
			}
		}
	}
}

// checkCup looks at the rows under every stitch of a cup, beyond those before it.
func checkCup(t *testing.T, at string, m *stitch.Machine, heel, centre, rows, before int) {
	t.Helper()
	h := m.Heights()
	beside := (heel - centre) / 2
	for x := range heel {
		if other := h[heel-1-x]; measureAbs(h[x]-other) > 1 {
			t.Fatalf("%s: %d rows at stitch %d, %d at its mirror", at, h[x], x, other)
		}
		if x > 0 && x <= beside && h[x] < h[x-1] {
			t.Fatalf("%s: the cup falls at stitch %d: %v", at, x, h)
		}
	}
	if got := h[heel/2] - before; got != rows {
		t.Fatalf("%s: %d rows at the centre of %d", at, got, rows)
	}
	for x := heel; x < len(h); x++ {
		if h[x] != 2+before {
			t.Fatalf("%s: %d rows at stitch %d of the instep", at, h[x], x)
		}
	}
}

func measureAbs(n int) int { return max(n, -n) }

// Every opening of a heel knit in afterwards is closed as it says.
func TestWasteYarnHeelsAreKnit(t *testing.T) {
	for round := 20; round <= 120; round += knittest.Sweep(1, 9) {
		for corner := range MaxCorner + 1 {
			o, err := PlanHeel(HeelInput{Kind: HeelKindWasteYarn, RoundStitches: &round, CornerStitches: &corner})
			if err != nil {
				t.Fatalf("%d: %v", round, err)
			}
			at := fmt.Sprintf("%d, corner %d", round, corner)
			knitHeel(t, at, o)
			m := knittest.CastOn(t, *o.ClosingStitches, true)
			for _, r := range o.part(HeelPartClosing) {
				if m.StitchCount() != r.Instruction.StartStitches {
					t.Fatalf("%s: %d stitches", at, m.StitchCount())
				}
				if err := m.Work(r.Instruction.Row); err != nil {
					t.Fatalf("%s: %v", at, err)
				}
			}
			checkHalves(t, at, o, corner)
			if m.StitchCount() != *o.EndStitches || *o.ClosingStitches != 2*(o.HeelStitches+corner) || *o.EndStitches%2 > 0 {
				t.Fatalf("%s: %d stitches of %d", at, m.StitchCount(), *o.EndStitches)
			}
		}
	}
}

// checkHalves reads where the round of an opening begins: after so many stitches of a corner, what is left of it, a needle and as many
// of the next corner are half of the round, which decreases as the other.
func checkHalves(t *testing.T, at string, o Heel, corner int) {
	t.Helper()
	after := map[string]int{"Leave the corners, join the yarn at one of them, and": 0,
		"join the yarn before the stitch of one of them, and": 0, "join the yarn between the stitches of one of them, and": 1,
		"join the yarn after the first stitch of one of them, and": 1}
	ok := false
	all := strings.Join(o.Directions(), "\n")
	for words, passed := range after {
		if !strings.Contains(all, words+" begin the round there") {
			continue
		}
		ok = true
		half := fmt.Sprintf("Each half of the round is %d of a corner, %d of a needle and %d of the next corner.", corner-passed,
			o.HeelStitches, passed)
		if passed == 0 {
			half = fmt.Sprintf("Each half of the round is %d of a corner and %d of a needle.", corner, o.HeelStitches)
		}
		if corner > 0 && !strings.Contains(all, half) || corner+o.HeelStitches != *o.ClosingStitches/2 {
			t.Fatalf("%s: no %q:\n%s", at, half, all)
		}
	}
	if !ok {
		t.Fatalf("%s: nobody says where the round begins:\n%s", at, all)
	}
}
