package flat

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// TestSmallTriangles: a triangle is as wide as asked to the nearest odd count, or it is refused; one from the top gains
// stitches, or it is refused.
func TestSmallTriangles(t *testing.T) {
	planned, refused := 0, 0
	for _, g := range [][2]float64{{10, 13}, {18, 26}, {22, 30}, {28, 40}} {
		for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide, FormTriangleFromTop} {
			for tenths := 5; tenths < 120; tenths += 3 {
				cm := float64(tenths) / 10
				in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Form: form, WidthCm: &cm}
				if form != FormTriangleFromTop {
					in.HeightCm = &cm
				}
				out, err := PlanFlatShape(in)
				if err != nil {
					refused++
					continue
				}
				planned++
				if len(out.Rows) == 0 {
					t.Errorf("%v, %v cm: no row changes the count", form, cm)
				}
				if off := out.WidthCm - cm; form != FormTriangleFromTop && (off > 15/g[0] || off < -15/g[0]) { // a stitch and a half
					t.Errorf("%v at %v: %v cm wide, %v asked", form, g, out.WidthCm, cm)
				}
			}
		}
	}
	if planned < 300 || refused < 20 {
		t.Errorf("%d planned, %d refused", planned, refused)
	}
}

// TestTubesAreTold: a disc that begins with more stitches than lie flat for over an eighth of its rows says so.
func TestTubesAreTold(t *testing.T) {
	cm, wedges := 30.0, 8
	for start := 8; start <= 96; start += 8 {
		out, err := PlanFlatShape(Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Form: FormDisc, AcrossCm: &cm, WedgeCount: &wedges,
			StartStitches: &start})
		if err != nil {
			t.Fatal(err)
		}
		even := 0 // rows that want no more stitches than it begins with: row n wants 2 pi (n - 1/2) / R
		for n := 1; 4.608*(float64(n)-0.5) < float64(start); n++ {
			even = n
		}
		told := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == Ruffles })
		if told != (even > 5) {
			t.Errorf("from %d stitches, %d rows even of %d: told %v", start, even, out.TotalRows, told)
		}
	}
}
