package yarn

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/report"
)

// worked is a row of the published examples on twist and thickness.
func worked(t *testing.T, id string) (in map[string]float64, want float64) {
	t.Helper()
	for _, row := range knittest.Table(t, "handspun/worked_examples.csv") {
		if row["id"] != id {
			continue
		}
		in = map[string]float64{}
		for part := range strings.SplitSeq(row["inputs"], ";") {
			name, value, _ := strings.Cut(part, "=")
			in[name] = knittest.Cell(t, value)
		}
		return in, knittest.Cell(t, row["expected"])
	}
	t.Fatalf("no example %s", id)
	return nil, 0
}

// An examination's twist factor of 38.28 (turns to the cm, tex) in a yarn of 29.5 tex: the
// same turns are a multiplier of 3.27 in one of 30 Ne.
func TestPublishedTwistFactor(t *testing.T) {
	in, want := worked(t, "gate_2006_31")
	got := TwistOf(in["TF"]/math.Sqrt(in["tex"]), in["tex"], 0.01, TwistDirectionZ)
	knittest.Near(t, "factor", got.Factor, in["TF"], 1e-12)
	if m := got.PerInch / math.Sqrt(in["Ne"]); math.Abs(m-want) > 0.005 {
		t.Errorf("multiplier %v, want %v", m, want)
	}
	// 956.734 times the multiplier is the factor of turns to the metre.
	knittest.Near(t, "conversion", got.Multiplier*956.734, 100*got.Factor, 1e-6)
}

// 3,360 yards to the pound, k 0.9: 52 diameters to the inch.
func TestPublishedDiameter(t *testing.T) {
	in, want := worked(t, "ashenhurst_8_2")
	if got := measure.CmPerInch / SpinningWorsted.DiameterCm(TexYards/in["yd_per_lb"]); math.Abs(got-want) > 0.5 {
		t.Errorf("%v diameters to the inch, want %v", got, want)
	}
}

// The factors are those of GNU units and ASTM D2260, to their digits.
func TestTwistFactors(t *testing.T) {
	knittest.Near(t, "yards to the pound", TexYards, 496_054.647857, 1e-11)
	knittest.Near(t, "cotton count", texCotton, 590.541247448, 1e-11)
}

// Angle and turns are inverse to one another; the angle is the slope of a turn unrolled:
// the circle against its height.
func TestAngleOfAnUnrolledTurn(t *testing.T) {
	for tex := 20.0; tex < 2_000; tex *= 1.3 {
		for spun := SpinningWorsted; spun <= SpinningSilk; spun++ {
			d := spun.DiameterCm(tex)
			for degrees := 5.0; degrees <= 50; degrees += 2.5 {
				turns := TurnsFor(degrees, d)
				knittest.Near(t, "angle", TwistOf(turns, tex, d, TwistDirectionZ).AngleDegrees, degrees, 1e-12)
				knittest.Near(t, "slope", math.Pi*d/(1/turns), math.Tan(degrees*math.Pi/180), 1e-12)
			}
		}
	}
}

// By hand: 400 tex worsted have 1240.137 yards to the pound, 31.694 diameters to the inch,
// 0.080141 cm. Twice to the cm the angle is atan(0.50354) = 26.727 degrees. The picture is
// of one turn, 0.5 cm, whose slopes cross the yarn in 0.5/pi: to the right going up for
// Z, which is what is taken where nothing is said, and to the left for S.
func TestDescribedTwist(t *testing.T) {
	tex := Count{Number: new(400.0), System: CountSystemTex}
	for _, d := range []TwistDirection{TwistDirectionUnspecified, TwistDirectionS, TwistDirectionZ} {
		in := DescribeInput{Count: &tex, TwistPerCm: new(2.0), TwistDirection: d, WithOutline: true}
		out := described(t, in)
		knittest.Near(t, "angle", out.Twist.AngleDegrees, 26.727, 1e-4)
		knittest.Near(t, "multiplier", out.Twist.Multiplier, 2*2.54/math.Sqrt(590.541247/400), 1e-8)
		outlinetest.CheckFrame(t, out.Outline)
		knittest.Near(t, "wide", out.Outline.X.Greatest, 0.080141, 1e-4)
		slope := out.Outline.Lines[2].Points
		if right := slope[1].X > slope[0].X; right != (d != TwistDirectionS) || out.Twist.Direction.String() == "S" == right {
			t.Errorf("%v is drawn %+v", d, slope)
		}
		knittest.Near(t, "across", slope[1].Y-slope[0].Y, 0.5/math.Pi, 1e-12)
		in.TwistPerCm, in.TwistDirection = nil, TwistDirectionUnspecified
		if plain := described(t, in); plain.Outline != nil || plain.Twist != nil {
			t.Errorf("without a twist: %+v", plain.Outline)
		}
	}
	_, err := DescribeYarn(DescribeInput{Count: &tex, TwistDirection: TwistDirectionS})
	knittest.WantViolations(t, err, "twist_direction CONTRADICTORY")
}

// The line that is drawn stands at the angle that is said, measured from the length of the
// yarn, and leans as the letter: over fine and thick yarn, little twist and much.
func TestTwistIsDrawnAtItsAngle(t *testing.T) {
	for tex := 20.0; tex < 2_000; tex *= 2.3 {
		for turns := 0.1; ; turns *= 1.4 {
			in := DescribeInput{Count: &Count{Number: &tex, System: CountSystemTex}, TwistPerCm: &turns, WithOutline: true}
			out, err := DescribeYarn(in)
			if err != nil {
				break // more than a yarn takes
			}
			outlinetest.CheckFrame(t, out.Outline)
			for _, line := range out.Outline.Lines[2:] {
				a, b := line.Points[0], line.Points[1]
				knittest.Near(t, "drawn", math.Atan((b.X-a.X)/(b.Y-a.Y))*180/math.Pi, out.Twist.AngleDegrees, 1e-9)
				if b.X-a.X < out.Outline.X.Greatest*(1-1e-9) || min(a.Y, b.Y) < 0 || max(a.Y, b.Y) > max(1/turns, *out.DiameterMm/10) {
					t.Errorf("%v tex, %v turns: the slope %+v is not across the yarn", tex, turns, line.Points)
				}
			}
		}
	}
}

// Of so much fibre, twisted on and on, the turns are greatest at the tightest angle: found
// here by twisting, with the length and the thickness worked out anew each time.
func TestTightestAngle(t *testing.T) {
	const untwisted, thin = 100.0, 0.05 // cm
	turnsAt := func(degrees float64) float64 {
		a := degrees * math.Pi / 180
		shorter := (1 + 1/math.Cos(a)) / 2
		length, diameter := untwisted/shorter, thin*math.Sqrt(shorter)
		return length * TurnsFor(degrees, diameter)
	}
	best := 0.0
	for a := 1.0; a < 90; a += 0.01 {
		if turnsAt(a) > turnsAt(best+1e-9) {
			best = a
		}
	}
	knittest.Near(t, "tightest", best, TightestAngle, 2e-4)
}

// What is impossible is refused, what kinks is remarked, and up to there is nothing to say.
func TestMuchTwist(t *testing.T) {
	band := &PutUp{BallM: 200, BallG: 100}
	ask := func(turns float64) (Description, error) {
		return DescribeYarn(DescribeInput{PutUp: band, Spinning: SpinningWoollen, TwistPerCm: &turns, TwistDirection: TwistDirectionZ})
	}
	d := SpinningWoollen.DiameterCm(500)
	for _, c := range []struct {
		degrees float64
		want    bool
	}{{20, false}, {49.9, false}, {50.1, true}, {70, true}} {
		out, err := ask(TurnsFor(c.degrees, d))
		got := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == MuchTwist && n.Field == "twist_per_cm" })
		if err != nil || got != c.want {
			t.Errorf("%v degrees: %v %+v", c.degrees, err, out.Notices)
		}
	}
	_, err := ask(30)
	knittest.WantViolations(t, err, "twist_per_cm INFEASIBLE")
}

// Of plied yarn the twist is that of the plies, which turn against their singles; what was
// not said is assumed and remarked.
func TestPliedTwist(t *testing.T) {
	for _, c := range []struct {
		notation string
		said     TwistDirection
		want     TwistDirection
		lies     string
	}{
		{"2-ply 28 Nm", TwistDirectionUnspecified, TwistDirectionS, "Its plies lie at"},
		{"2-ply 28 Nm", TwistDirectionZ, TwistDirectionZ, "Its plies lie at"},
		{"14 Nm", TwistDirectionUnspecified, TwistDirectionZ, "Its twist lies at"},
	} {
		out := described(t, DescribeInput{Count: &Count{Notation: c.notation}, TwistPerCm: new(4.0), TwistDirection: c.said})
		assumed := slices.ContainsFunc(out.Notices, func(n report.Notice) bool {
			return n.Reason == DirectionAssumed && strings.Contains(n.Description, "for "+c.want.String())
		})
		if out.Twist.Direction != c.want || !strings.Contains(out.Summary(), c.lies) || assumed != (c.said == TwistDirectionUnspecified) {
			t.Errorf("%s: %v, %q, %+v", c.notation, out.Twist.Direction, out.Summary(), out.Notices)
		}
	}
}
