package neck

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// widthOfBoat is the narrowest neck of an ordinary boat that lets a head through, by another
// way than the planner's: both edges straight, so that the band has as many stitches as both
// necks; counted up from a third of the width.
func widthOfBoat(width int, perCm, head float64) (neck int, ok bool) {
	for neck = 1; 3*neck < width-1 || (width-neck)%2 != 0; neck++ { // the nearest to a third that leaves two equal shoulders
	}
	for n := neck; 3*n <= 2*width; n += 2 {
		if 1.6*float64(2*n)/perCm >= head-0.1 {
			return n, true
		}
	}
	return neck, false
}

// A boat neck whose width nobody says is the narrowest that goes over the head; where none up
// to two thirds does, it is said.
func TestDefaultBoats(t *testing.T) {
	wide, none := 0, 0
	for _, g := range [][2]float64{{28, 36}, {24, 32}, {22, 30}, {18, 24}, {14, 19}} {
		for width := 20; width <= 50; width++ {
			in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Shape: ShapeBoat, WidthCm: new(float64(width))}
			out, err := PlanNeckline(in)
			if err != nil {
				t.Fatal(err)
			}
			want, ok := widthOfBoat(out.WidthStitches, g[0]/10, *out.HeadCm)
			if ok && out.NeckStitches != want && math.Abs(float64(3*out.NeckStitches-out.WidthStitches)) > 3 || *out.GoesOverHead != ok {
				t.Errorf("%v by %d cm: a neck of %d of %d, want %d", g, width, out.NeckStitches, out.WidthStitches, want)
			}
			if ok {
				wide++
			} else if none++; reasonsOf(out.Notices) != "NECK_BELOW_HEAD" && reasonsOf(out.Notices) != "HALFWAY width_cm, NECK_BELOW_HEAD" {
				t.Errorf("%v by %d cm: nothing is said: %v", g, width, out.Notices)
			}
		}
	}
	if wide < 100 || none < 10 {
		t.Errorf("%d go over a head, %d do not: the sweep has shrunk", wide, none)
	}
}

// A rule of counts is heeded, and a width that is given is taken as it is.
func TestBoatsOfARule(t *testing.T) {
	in := Input{Gauge: ordinary(), Shape: ShapeBoat, WidthStitches: new(90), NeckRule: &gauge.CountRule{Multiple: new(6)}}
	out, err := PlanNeckline(in)
	if err != nil || out.NeckStitches != 42 || !*out.GoesOverHead { // 36 of 22 to 10 cm are 32.7 cm twice, 52.4 of a head of 56.9
		t.Errorf("a neck of %d, %v", out.NeckStitches, err)
	}
	in.NeckStitches = new(30)
	if out, err = PlanNeckline(in); err != nil || out.NeckStitches != 30 || *out.GoesOverHead {
		t.Errorf("a neck of %d, %v", out.NeckStitches, err)
	}
}

// A neck whose width nobody says goes over the head of whoever the width across the shoulders
// is for, from a child born early to a man: of the necks counted up from a third of the width
// by twos, each asked for, the first that does, and none wider than the 38 of 78 stitches of
// Hoyer's jerkin for the young.
func TestDefaultNecksGoOverTheHead(t *testing.T) {
	widened := 0
	for _, g := range [][2]float64{{30, 42}, {28, 36}, {22, 30}, {18, 24}, {14, 19}} {
		for width := 17.0; width <= 46; width += 0.7 {
			for _, shape := range []Shape{ShapeRound, ShapeV, ShapeSquare} {
				in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Shape: shape, WidthCm: new(width)}
				out, err := PlanNeckline(in)
				if err != nil || !*out.GoesOverHead {
					t.Fatalf("%v by %v cm: %v, %s", g, width, err, out.Summary())
				}
				if 78*out.NeckStitches > 38*out.WidthStitches {
					t.Errorf("%v by %v cm: a neck of %d of %d", g, width, out.NeckStitches, out.WidthStitches)
				}
				narrower := in
				if narrower.NeckStitches = new(out.NeckStitches - 2); 3**narrower.NeckStitches < out.WidthStitches-3 {
					continue
				}
				widened++
				if less, err := PlanNeckline(narrower); err != nil || *less.GoesOverHead {
					t.Errorf("%v by %v cm: a neck of %d, and %d do: %v", g, width, out.NeckStitches, *narrower.NeckStitches, err)
				}
			}
		}
	}
	if widened < 50 {
		t.Errorf("%d are wider than a third: the sweep has shrunk", widened)
	}
}

// A front that is given is heeded, and the neck as wide as it wants it; between straps, whose
// length is that of the shoulders beside a third, it stays a third, and where none is wide
// enough too, of which it is said what would do.
func TestDefaultWidthsBesideOthers(t *testing.T) {
	in := Input{Gauge: ordinary(), WidthCm: new(26.5), FrontDepthCm: new(6.0)}
	out, err := PlanNeckline(in)
	if err != nil || out.Front.DepthRows != 18 || !*out.GoesOverHead || out.NeckStitches <= 20 {
		t.Errorf("%s, %v", out.Summary(), err)
	}
	in.StrapStitches, in.FrontDepthCm, in.HeadCm = new(14), nil, new(70.0)
	if out, err = PlanNeckline(in); err != nil || out.NeckStitches != 20 || reasonsOf(out.Notices) != "NECK_BELOW_HEAD" {
		t.Errorf("%s, %v, %v", out.Summary(), out.Notices, err)
	}
	in.StrapStitches = nil
	if out, err = PlanNeckline(in); err != nil || out.NeckStitches != 20 || reasonsOf(out.Notices) != "NECK_BELOW_HEAD" {
		t.Errorf("%s, %v, %v", out.Summary(), out.Notices, err)
	}
}
