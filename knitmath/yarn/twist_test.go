package yarn

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outlinetest"
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
// of one turn, 0.5 cm, whose slopes cross the yarn in half of it: to the right going up for
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
		knittest.Near(t, "half a turn", slope[1].Y-slope[0].Y, 0.25, 1e-12)
		in.TwistPerCm, in.TwistDirection = nil, TwistDirectionUnspecified
		if plain := described(t, in); plain.Outline != nil || plain.Twist != nil {
			t.Errorf("without a twist: %+v", plain.Outline)
		}
	}
	_, err := DescribeYarn(DescribeInput{Count: &tex, TwistDirection: TwistDirectionS})
	knittest.WantViolations(t, err, "twist_direction CONTRADICTORY")
}
