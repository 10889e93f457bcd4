package shortrow

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A back neck by hand: 12 stitches, points 6, 0, 0, 6 rows, so straight from 6 to 0
// over 4 stitches at each side. Under the middles of the four stitches lie 5.25,
// 3.75, 2.25 and 0.75 rows: 3, 2, 1 and 0 pairs.
func TestCurvedWedgeByHand(t *testing.T) {
	out, err := PlanWedge(WedgeInput{WidthStitches: 12, ProfileRows: []float64{6, 0, 0, 6}})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"k3, w&t", "p3", "k2, w&t", "p2", "k1, w&t", "p1",
		"k1, [k1 tog with its wrap] 3 times, k8", "p3, w&t", "k3", "p2, w&t", "k2", "p1, w&t", "k1",
		"p1, [p1 tog with its wrap] 3 times, p8"}
	if len(out.Rows) != len(want) {
		t.Fatalf("%d rows, want %d", len(out.Rows), len(want))
	}
	for i, r := range out.Rows {
		if got := r.Instruction.Row.Text(); got != want[i] {
			t.Errorf("row %d: %q, want %q", i+1, got, want[i])
		}
	}
	if out.GreatestDepartureRows != 0.75 || out.RiseRows != 6 {
		t.Errorf("departs by %v, rises %d", out.GreatestDepartureRows, out.RiseRows)
	}
}

// A curve says why it does not rise as it was asked to, in rows and in cm: 3.42 cm
// at 30 rows to 10 cm are 10.26 rows. Over 4 stitches there is room for one turn a
// stitch apart on each flank, so that a curve that is steep all over rises a pair.
func TestCurvedWedgeTellsItsRise(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for want, in := range map[string]WedgeInput{
		"asks for 8 rows; stitches made double have a row more, and 7 rows were planned": {
			WidthStitches: 20, ProfileRows: []float64{8, 0, 8}, TurnMethod: TurnMethodGerman},
		"asks for 10.26 rows; short rows come in pairs, for the height under the middle of each stitch, and 10 rows were planned": {
			WidthStitches: 40, ProfileCm: []float64{0, 3.42}, Gauge: standard},
		"asks for 22 rows; the turns could not follow it, and 2 rows were planned": {
			WidthStitches: 4, ProfileRows: []float64{0, 22, 0}},
	} {
		out, err := PlanWedge(in)
		if err != nil || len(out.Notices) == 0 || out.Notices[0].Reason != RiseRounded || out.Notices[0].Description != want ||
			in.ProfileRows != nil != (out.Notices[0].Field == "profile_rows") {
			t.Errorf("%+v, want %q; %v", out.Notices, want, err)
		}
	}
}

// Where a curve is too steep is told by its stitches. 12 rows over 4 stitches are
// 1.5, 4.5, 7.5 and 10.5 under their middles: 1, 2, 4 and 5 pairs. From stitch 6 to 7
// that is more than a pair, and on the way back, mirrored, from 14 to 15.
func TestSteepPlacesAreTold(t *testing.T) {
	for want, in := range map[string]WedgeInput{
		"between stitches 6 and 7 from the right edge ":  {WidthStitches: 12, ProfileRows: []float64{0, 0, 12, 12}},
		"between stitches 6 and 15 from the right edge ": {WidthStitches: 20, ProfileRows: []float64{0, 0, 12, 12, 0, 0}},
	} {
		out, err := PlanWedge(in)
		if err != nil || len(out.Notices) == 0 || !strings.HasPrefix(out.Notices[len(out.Notices)-1].Description, want) {
			t.Errorf("%+v, want %q; %v", out.Notices, want, err)
		}
	}
}

func FuzzPlanCurvedWedge(f *testing.F) {
	f.Add(30, 0.0, 8.0, 8.0, 0.0, int32(1), int32(1))
	f.Add(41, 12.0, 3.5, 9.0, 1.0, int32(2), int32(2))
	f.Fuzz(func(t *testing.T, width int, a, b, c, d float64, order, method int32) {
		in := WedgeInput{WidthStitches: width % 300, ProfileRows: []float64{a, b, c, d}, Order: Order(order),
			TurnMethod: TurnMethod(method)}
		out, err := PlanWedge(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		for i, p := range in.ProfileRows { // points are read to a millionth of a row
			in.ProfileRows[i] = math.Round(p*1e6) / 1e6
		}
		checkCurve(t, in, out)
	})
}

func BenchmarkCurvedWedge(b *testing.B) {
	in := WedgeInput{WidthStitches: 120, ProfileRows: []float64{0, 6, 11, 14, 15, 15, 15, 14, 11, 6, 0}}
	for b.Loop() {
		if _, err := PlanWedge(in); err != nil {
			b.Fatal(err)
		}
	}
}
