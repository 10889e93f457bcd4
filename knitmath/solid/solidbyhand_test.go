package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Worked by hand: a cone of 5 cm radius and 12 cm height at 2 stitches and 2.6 rounds to the
// cm slants over 13 cm, 33.8 rounds; its base wants 2 pi 5 2 = 62.8 stitches, and every round
// 62.8 / 33.8 = 1.859 fewer. Open below it begins with the multiple of 6 nearest to half a
// round less.
func TestConeByHand(t *testing.T) {
	across, high := 10.0, 12.0
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 26}, Form: FormCone, AcrossCm: &across, HeightCm: &high,
		BaseOpeningCm: &across, WedgeCount: knittest.Ptr(1)})
	if err != nil {
		t.Fatal(err)
	}
	if out.TotalRounds != 34 || math.Abs(out.MeridianCm-13) > 1e-9 || out.StartStitches != 62 {
		t.Errorf("%d rounds, %v cm, from %d", out.TotalRounds, out.MeridianCm, out.StartStitches)
	}
	wanted := func(i int) float64 { return out.of.wanted[i] }
	for i := 1; i < 34; i++ {
		if math.Abs(wanted(i-1)-wanted(i)-62.832/34) > 1e-3 {
			t.Errorf("round %d wants %v after %v", i+1, wanted(i), wanted(i-1))
		}
	}
}

// Worked by hand: a drop of 6 cm across and 12 cm high is a ball of 3 cm radius with its middle
// 9 cm below the point. The cone touches it where the cosine from the axis is 3/9, 1.23096, so
// that the ball has pi less that of its half turn, 5.732 cm, and the cone sqrt(81 - 9) = 8.485.
func TestDropByHand(t *testing.T) {
	across, high := 6.0, 12.0
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormDrop, AcrossCm: &across, HeightCm: &high})
	if err != nil || math.Abs(out.MeridianCm-5.732-8.485) > 2e-3 || math.Abs(out.HeightCm-12) > 1e-9 {
		t.Errorf("meridian %v, height %v, %v", out.MeridianCm, out.HeightCm, err)
	}
}

// A traditional stuffed ball of square stitches (read in a digest): 6 stitches more a round to
// 36, as many even rounds as there were increases, and down again, 17 rounds; the ideal is 18
// rounds for 36 stitches at the widest, and ours has the same widest round and as many stitches
// to within one a round.
func TestBallAsPublished(t *testing.T) {
	across := 36 / math.Pi / 2 // at 2 stitches to the cm
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}, Form: FormSphere, AcrossCm: &across, Lines: LinesStacked,
		WedgeCount: knittest.Ptr(6)})
	if err != nil {
		t.Fatal(err)
	}
	published := 0
	for _, n := range []int{6, 12, 18, 24, 30, 36, 36, 36, 36, 36, 36, 36, 30, 24, 18, 12, 6} {
		published += n
	}
	if out.TotalRounds != 18 || out.GreatestStitches != 36 || math.Abs(float64(published-out.TotalStitches)) > 18*3 {
		t.Errorf("%d rounds, at most %d, %d stitches; published %d", out.TotalRounds, out.GreatestStitches, out.TotalStitches, published)
	}
}
