package sock

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Without gauge, too, a round toe is about a quarter of the foot long, by the rows of stockinette, and no sections of as many
// stitches leave fewer over. The summary tells both.
func TestSectionsOfRoundToes(t *testing.T) {
	for round := MinRound; round <= MaxRound; round++ {
		o, err := PlanToe(ToeInput{Kind: ToeKindRound, RoundStitches: &round})
		if err != nil {
			t.Fatal(round, err)
		}
		each, over := round / *o.WedgeCount, round%*o.WedgeCount
		for wedges := MinWedges; wedges <= MaxWedges; wedges++ {
			if round/wedges == each && round%wedges < over {
				t.Errorf("%d stitches: %d sections of %d, and %d would leave %d over", round, *o.WedgeCount, each, wedges, round%wedges)
			}
		}
		quarter := float64(round) / 0.9 / 3
		if rows := float64(len(o.Rows)); round >= 24 && round <= 240 && (rows < 0.6*quarter || rows > 1.5*quarter) {
			t.Errorf("%d stitches: %d sections of %d, %v rounds of about %.0f", round, *o.WedgeCount, each, rows, quarter)
		}
		adjusted := o.Rows[0].Instruction.EndStitches
		told := strings.Contains(o.Summary(), fmt.Sprintf("%d sections: a round to %d stitches and ", *o.WedgeCount, adjusted))
		if adjusts := strings.Contains(o.Directions()[len(o.Directions())-len(o.closing)-1], "(to adjust the count)"); told != adjusts {
			t.Errorf("%d stitches: %s\n%s", round, o.Summary(), strings.Join(o.Directions(), "\n"))
		}
	}
}

// Of any gauge, child to man, either way: a round toe is about a quarter of the foot long (Th. de Dillmont, c. 1886), by
// the rounds that are written. The steps between sections of 4 to 12 stitches are a few rounds: half of such a
// step, and what a round that adjusts the count and the last even one add or are worth, is how far off it may be.
func TestRoundToesAreAQuarterOfTheFoot(t *testing.T) {
	for _, stitches := range []float64{9, 12, 16, 20, 24, 30, 36} {
		for foot := 11.0; foot <= 30; foot++ {
			for _, long := range []*float64{nil, &foot} {
				for direction := DirectionCuffDown; direction <= DirectionToeUp; direction++ {
					rows := stitches * 1.36
					in := ToeInput{Kind: ToeKindRound, Direction: direction, FootCircumferenceCm: &foot, FootLengthCm: long,
						Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}}
					o, err := PlanToe(in)
					if err != nil {
						knittest.CheckInputError(t, err)
						if foot/10*stitches*0.9 > MinRound+2 {
							t.Errorf("%v stitches, foot %v: %v", stitches, foot, err)
						}
						continue
					}
					quarter, row := foot/4, 10/rows
					section := 0.5
					for section*(section-1)/2*row < quarter {
						section++
					}
					room := (section/2 + 5) * row
					if off := math.Abs(float64(len(o.Rows))*row - quarter); off > room {
						t.Errorf("%v stitches, foot %v: a toe of %d rounds, %v cm, of a quarter %v", stitches, foot, len(o.Rows), *o.LengthCm, quarter)
					}
				}
			}
		}
	}
}

// A round toe from its tip is compared with the foot as one from the cuff is: the same feet are too short for both, but for the
// round after the cast-on.
func TestToesFromTheTipFitTheFoot(t *testing.T) {
	refused := 0
	for round := 24; round <= 96; round += 8 {
		for wedges := 3; wedges <= 8; wedges++ {
			for foot := 6.0; foot <= 30; foot += float64(knittest.Sweep(2, 6)) {
				in := ToeInput{Kind: ToeKindRound, RoundStitches: &round, WedgeCount: &wedges, Gauge: standard, FootLengthCm: &foot}
				_, down := PlanToe(in)
				in.Direction = DirectionToeUp
				o, up := PlanToe(in)
				in.FootLengthCm = new(foot - 10/standard.Rows - 1e-6)
				in.Direction = DirectionCuffDown
				_, shorter := PlanToe(in)
				if down != nil && up == nil || up != nil && shorter == nil {
					t.Errorf("%d stitches in %d, foot %v: %v from the cuff, %v from the tip", round, wedges, foot, down, up)
				}
				if up != nil {
					refused++
				} else if o.FootToToeCm != nil {
					t.Errorf("%d stitches in %d: a foot worked before its toe", round, wedges)
				}
			}
		}
	}
	if refused < knittest.Sweep(100, 30) {
		t.Errorf("%d refused", refused)
	}
}

// No two rounds running of a round toe change the count while it has many stitches, in either direction, whether or not a round of its
// own adjusts it.
func TestRoundToesAreGentle(t *testing.T) {
	adjusted := 0
	for round := MinRound; round <= 120; round += knittest.Sweep(1, 3) {
		for _, way := range []Direction{DirectionCuffDown, DirectionToeUp} {
			o, err := PlanToe(ToeInput{Kind: ToeKindRound, Direction: way, RoundStitches: &round, Gauge: standard})
			if err != nil {
				continue
			}
			if o.adjusted > 0 {
				adjusted++
			}
			for i, r := range o.Rows[1:] {
				was, now := o.Rows[i].Instruction, r.Instruction
				if was.StartStitches != was.EndStitches && now.StartStitches != now.EndStitches &&
					min(was.StartStitches, now.EndStitches)*2 > round {
					t.Fatalf("%d: rounds %d and %d: %d, %d, %d stitches", round, i+1, i+2, was.StartStitches, was.EndStitches, now.EndStitches)
				}
			}
		}
	}
	if adjusted < knittest.Sweep(30, 10) {
		t.Errorf("%d adjusted", adjusted)
	}
}
