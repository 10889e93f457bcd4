package shortrow

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// checkCurveRefusal: a curve is refused where it rounds to nothing, or where a
// double stitch leaves no stitch beside it.
func checkCurveRefusal(t *testing.T, in WedgeInput, err error) {
	t.Helper()
	if in.TurnMethod == TurnMethodGerman {
		wrapped := in
		wrapped.TurnMethod = TurnMethodWrapAndTurn
		if out, e := PlanWedge(wrapped); e == nil {
			knittest.WantViolations(t, err, "profile_rows INFEASIBLE", "turn_method INFEASIBLE")
			if !slices.ContainsFunc(out.Turns, func(s TurnSequence) bool { return s.FirstUnworkedStitches == 1 }) {
				t.Fatalf("%v over %d: German turns refused, and none would be at an edge", in.ProfileRows, in.WidthStitches)
			}
			return
		}
	}
	knittest.WantViolations(t, err, "profile_rows INFEASIBLE")
}

func TestCurvedWedgeRefusals(t *testing.T) {
	nan := math.NaN()
	six := 6
	zigzag := make([]float64, MaxProfilePoints)
	for i := range zigzag {
		zigzag[i] = float64(i%2) * 40
	}
	for name, c := range map[string]struct {
		in   WedgeInput
		want []string
	}{
		"one point": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{4}}, []string{"profile_rows OUT_OF_RANGE"}},
		"points": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{-1, nan, 3000}},
			[]string{"profile_rows[0] OUT_OF_RANGE", "profile_rows[1] NOT_FINITE", "profile_rows[2] OUT_OF_RANGE"}},
		"both": {WedgeInput{WidthStitches: 20, RiseRows: &six, ProfileRows: []float64{0, 6}},
			[]string{"rise_rows CONTRADICTORY", "profile_rows CONTRADICTORY"}},
		"tall end": {WedgeInput{WidthStitches: 20, TallEnd: TallEndLeft, ProfileRows: []float64{0, 6}},
			[]string{"tall_end CONTRADICTORY"}},
		"grouped": {WedgeInput{WidthStitches: 20, Spread: TurnSpreadGrouped, ProfileRows: []float64{0, 6}},
			[]string{"spread CONTRADICTORY"}},
		"level": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{5, 5}}, []string{"profile_rows INFEASIBLE"}},
		"level in pairs": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{5.2, 6.8, 5}, TurnMethod: TurnMethodGerman},
			[]string{"profile_rows INFEASIBLE"}},
		"levelled by doubles": {WedgeInput{WidthStitches: 2, ProfileRows: []float64{8, 4}, TurnMethod: TurnMethodGerman},
			[]string{"profile_rows INFEASIBLE", "turn_method INFEASIBLE"}},
		"flat":     {WedgeInput{WidthStitches: 20, ProfileRows: []float64{0, 0.9, 0}}, []string{"profile_rows INFEASIBLE"}},
		"no gauge": {WedgeInput{WidthStitches: 20, ProfileCm: []float64{0, 5}}, []string{"gauge REQUIRED"}},
		"too high": {WedgeInput{WidthStitches: 20, ProfileCm: []float64{0, 900}, Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}},
			[]string{"profile_cm INFEASIBLE"}},
		"too many":   {WedgeInput{WidthStitches: 20, ProfileRows: make([]float64, MaxProfilePoints+1)}, []string{"profile_rows TOO_MANY"}},
		"many humps": {WedgeInput{WidthStitches: stitch.MaxStitches, ProfileRows: zigzag}, []string{"profile_rows INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanWedge(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}
