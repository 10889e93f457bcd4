package shortrow

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// Curves of up to four points and six rows over small widths, in both orders and
// all three ways of turning, are knit, and the rows under every stitch compared
// with the curve, worked out again here as a fraction.
func TestCurvedWedgeIsKnit(t *testing.T) {
	planned, steep := 0, 0
	for width := 2; width <= 13; width += knittest.Sweep(1, 4) {
		for n := 2; n <= 4; n++ {
			for _, points := range allProfiles(n) {
				for variant := range 2 * 3 {
					in := WedgeInput{WidthStitches: width, ProfileRows: points, Order: Order(1 + variant%2),
						TurnMethod: TurnMethod(1 + variant/2)}
					out, err := PlanWedge(in)
					if err != nil {
						checkCurveRefusal(t, in, err)
						continue
					}
					planned++
					if checkCurve(t, in, out) {
						steep++
					}
				}
			}
		}
	}
	if planned < knittest.Sweep(10000, 2500) || steep < knittest.Sweep(1000, 250) {
		t.Errorf("planned %d curves, %d steep: the sweep has shrunk", planned, steep)
	}
}

// allProfiles are all profiles of n points that are 0, 2, 5 or 6 rows high.
func allProfiles(n int) [][]float64 {
	profiles := [][]float64{nil}
	for range n {
		var longer [][]float64
		for _, p := range profiles {
			for _, height := range []float64{0, 2, 5, 6} {
				longer = append(longer, append(slices.Clone(p), height))
			}
		}
		profiles = longer
	}
	return profiles
}

// wantedOnCurve is the height under the middle of stitch x, by interpolation.
func wantedOnCurve(points []float64, width, x int) float64 {
	at := new(big.Rat).Mul(big.NewRat(int64(2*x+1), int64(2*width)), big.NewRat(int64(len(points)-1), 1))
	i := int(new(big.Int).Quo(at.Num(), at.Denom()).Int64())
	part, _ := new(big.Rat).Sub(at, big.NewRat(int64(i), 1)).Float64()
	return points[i] + (points[i+1]-points[i])*part
}

// checkCurve knits a curved wedge and reports whether it was eased.
func checkCurve(t *testing.T, in WedgeInput, out Wedge) bool {
	t.Helper()
	at := fmt.Sprintf("%v over %d, order %d, method %d", in.ProfileRows, in.WidthStitches, in.Order, in.TurnMethod)
	if out.TurnCount == 0 {
		t.Fatalf("%s: a wedge without a turn", at)
	}
	worst := checkHeights(t, at, out, knitWedge(t, at, in.WidthStitches, out.Rows), func(x int) float64 {
		return wantedOnCurve(in.ProfileRows, in.WidthStitches, x)
	})
	told := map[report.Reason]bool{}
	for _, n := range out.Notices {
		told[n.Reason] = true
	}
	asked := slices.Max(in.ProfileRows) - slices.Min(in.ProfileRows)
	if told[RiseRounded] != (math.Abs(asked-float64(out.RiseRows)) > 1e-9) {
		t.Fatalf("%s: rises %d rows, and says so: %v", at, out.RiseRows, told[RiseRounded])
	}
	limit := 1.0
	if in.TurnMethod == TurnMethodGerman {
		limit = 2
	}
	if !told[SteeperThanOneStitchATurn] && !told[DoublesStandOut] && worst > limit+1e-9 {
		t.Fatalf("%s: departs by %v rows and says nothing", at, worst)
	}
	if told[DoublesStandOut] && (in.TurnMethod != TurnMethodGerman || worst <= limit) {
		t.Fatalf("%s: departs by %v rows and says so", at, worst)
	}
	return told[SteeperThanOneStitchATurn]
}
