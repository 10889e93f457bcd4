package sock

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// toeUpHeels calls back with heels worked from the toe up.
func toeUpHeels(t *testing.T, each func(at string, o Heel)) {
	t.Helper()
	n := 0
	for round := MinRound; round <= 110; round += knittest.Sweep(1, 7) {
		for kind := HeelKindUnspecified; kind <= HeelKindWasteYarn; kind++ {
			for variant := range 8 {
				in := HeelInput{Kind: kind, Direction: DirectionToeUp, RoundStitches: &round, Gauge: standard, WithOutline: true}
				gussets := kind < HeelKindShortRows
				if variant&1 > 0 {
					in.HeelStitches = new(round*(4+variant%3)/10 + 1)
				}
				if variant&2 > 0 && gussets {
					in.GussetEveryRounds = new(1 + variant/2%3)
				}
				if variant&4 > 0 && gussets && kind != HeelKindHeart {
					in.FlapRows, in.FlapStitch = new(2+round/3*2), FlapStitch(variant%3)
				}
				if kind <= HeelKindRound {
					in.TurnMethod = shortrow.TurnMethod((variant + round) % 4)
				}
				o, err := PlanHeel(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				n++
				each(fmt.Sprintf("%d stitches toe-up, kind %d, variant %d", round, kind, variant), o)
			}
		}
	}
	if n < knittest.Sweep(3000, 400) {
		t.Errorf("%d heels", n)
	}
}

// Every heel worked from the toe up is knit, and the counts after every row are those it says:
// those of the whole round, which has its stitches again. The gussets grow as far as the flap
// takes them up.
func TestToeUpHeelsAreKnit(t *testing.T) {
	toeUpHeels(t, func(at string, o Heel) {
		knitHeel(t, at, o)
		knittest.CheckFinite(t, o)
		outlinetest.CheckFrame(t, o.Outline)
		if o.GreatestRoundStitches == nil {
			return
		}
		grown := *o.GreatestRoundStitches - o.RoundStitches
		if grown != 2**o.GussetIncreaseRounds || len(o.part(HeelPartGusset)) != *o.GussetRounds ||
			o.TurnedStitches != nil && *o.TurnedStitches != o.HeelStitches {
			t.Fatalf("%s: %+v", at, o)
		}
		if o.FlapRows != nil && (*o.FlapRows != grown || len(o.part(HeelPartFlap)) != grown+1) {
			t.Fatalf("%s: %d flap rows take up %d", at, *o.FlapRows, grown)
		}
	})
}

// A flap takes up the gussets alone: no stitch of the instep rises with it, and the heel has a
// row of the flap in each of its stitches, but those that it slipped.
func TestToeUpFlapsRiseOverTheHeel(t *testing.T) {
	for _, kind := range []HeelKind{HeelKindRound, HeelKindSquare} {
		o, err := PlanHeel(HeelInput{Kind: kind, Direction: DirectionToeUp, RoundStitches: new(64), FlapStitch: FlapStitchStockinette})
		if err != nil {
			t.Fatal(err)
		}
		h := knitHeel(t, "toe-up", o).Heights()
		instep := h[o.HeelStitches]
		for x := o.HeelStitches; x < len(h); x++ {
			if h[x] != instep {
				t.Fatalf("kind %d: %d rows at stitch %d of the instep, %d at its first", kind, h[x], x, instep)
			}
		}
		turned := 0
		if kind == HeelKindRound {
			turned = o.HeelStitches - *o.CentreStitches
		}
		// The last round of the turn goes over the instep too, and the flap's first row does not.
		for x := o.HeelStitches/2 - 2; x < o.HeelStitches/2+2; x++ {
			if got := h[x] - instep; got != *o.FlapRows+turned {
				t.Fatalf("kind %d: stitch %d of the heel has %d rows more than the instep, not %d", kind, x, got, *o.FlapRows+turned)
			}
		}
	}
}

// Published heels worked from the toe up come out as printed.
func TestPublishedHeelsToeUp(t *testing.T) {
	kinds := map[string]HeelKind{"round": HeelKindRound, "square": HeelKindSquare}
	for _, row := range knittest.Table(t, "sock/heels_toe_up.csv") {
		o, err := PlanHeel(HeelInput{Kind: kinds[row["kind"]], Direction: DirectionToeUp, RoundStitches: whole(t, row["round"]),
			HeelStitches: whole(t, row["heel"]), FlapRows: whole(t, row["flap_rows"])})
		if err != nil {
			t.Fatal(row["id"], err)
		}
		if got := *o.GreatestRoundStitches - o.InstepStitches; got != *whole(t, row["widened"]) {
			t.Errorf("%s: widened to %d, printed %s", row["id"], got, row["widened"])
		}
		for part, column := range map[HeelPart]string{HeelPartTurn: "turn_rows", HeelPartFlap: "flap_rows_are"} {
			for i, want := range strings.Split(row[column], "; ") {
				if want == "" {
					continue
				}
				if got := o.part(part)[i].Instruction.Row.Text(); got != want {
					t.Errorf("%s: row %d of part %d is %q, printed %q", row["id"], i+1, part, got, want)
				}
			}
		}
		if last := o.Rows[len(o.Rows)-1].Instruction; last.EndStitches-o.InstepStitches != *whole(t, row["came_to"]) ||
			o.Rows[0].Side != stitch.RightSide {
			t.Errorf("%s: comes to %d", row["id"], last.EndStitches-o.InstepStitches)
		}
	}
}

// From where its heel begins a foot has room for what lies along the sole: the rows that the machine
// knits under the middle of the heel before the flap, or of short rows half of the cup.
func TestWhereToeUpHeelsBegin(t *testing.T) {
	for kind := HeelKindRound; kind <= HeelKindWasteYarn; kind++ {
		foot := 24.0
		o, err := PlanHeel(HeelInput{Kind: kind, Direction: DirectionToeUp, RoundStitches: new(64), Gauge: standard, FootLengthCm: &foot})
		if err != nil {
			t.Fatal(kind, err)
		}
		rows := 0
		switch kind { // a heart's turn rounds the heel, half along the sole
		case HeelKindHeart:
			rows = *o.GussetRounds + len(o.part(HeelPartTurn))/2
		case HeelKindShortRows, HeelKindWasteYarn:
			rows = int(*o.DepthCm*standard.Rows/10 + 0.5)
		default:
			m := knittest.CastOn(t, o.RoundStitches, true)
			middle := o.RoundStitches/2 - o.HeelStitches/2
			for _, r := range o.Rows {
				if r.Part != HeelPartFlap {
					if err := m.Work(r.Instruction.Row); err != nil {
						t.Fatal(err)
					}
				}
				if r.Part == HeelPartGusset {
					middle = (r.Instruction.EndStitches - o.InstepStitches) / 2
				}
			}
			rows = m.Heights()[min(middle, len(m.Heights())-1)]
		}
		long := float64(rows) / standard.Rows * 10
		if off := 23 - *o.FootToHeelCm - long; off < -0.5 || off > 0.5 {
			t.Errorf("kind %d: the foot is %v cm when the heel begins, which takes %v", kind, *o.FootToHeelCm, long)
		}
	}
}
