package shortrow

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// Discs and rings, full, partial and more than full, are knit wedge by wedge: each
// begins at the part of the turn that the machine has knit of the outer edge by
// then. The edges are as long as their arcs and the whole encloses
//
//	pi (R^2 - r^2) * degrees / 360
//
// by the shoelace formula, less what strokes of 3 degrees lose: sin(1.5)/1.5 of
// the length, 0.012 %, and sin(3)/3 of the area, 0.046 %.
func TestCircleOutlineIsKnit(t *testing.T) {
	planned := 0
	for _, degrees := range []float64{20, 90, 271.3, 360, 540, 720} {
		for _, inner := range []float64{0, 5} {
			for _, wedges := range []int{1, 4, 7, 12} {
				for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
					width := 40
					in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, InnerRadiusCm: &inner,
						WedgeCount: &wedges, TurnDegrees: &degrees, TurnMethod: method, WithOutline: true}
					out, err := PlanCircleOfWedges(in)
					if err != nil {
						continue // too few or too many wedges for the turn
					}
					planned++
					checkDisc(t, in, out)
				}
			}
		}
	}
	if planned < 60 {
		t.Errorf("planned %d circles: the sweep has shrunk", planned)
	}
}

func checkDisc(t *testing.T, in CircleInput, out Circle) {
	t.Helper()
	degrees := *in.TurnDegrees
	outlinetest.CheckFrame(t, out.Outline)
	lines := out.Outline.Lines
	outer, inner := lines[0].Points, lines[1].Points
	if out.InnerRadiusCm >= out.OuterRadiusCm {
		t.Fatalf("radii %v and %v", out.InnerRadiusCm, out.OuterRadiusCm)
	}
	checkArc(t, degrees, outer, out.OuterRadiusCm)
	checkArc(t, degrees, inner, out.InnerRadiusCm)
	area := 0.0
	ring := append([]outline.Point(nil), outer...)
	for i := range inner {
		ring = append(ring, inner[len(inner)-1-i])
	}
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		area += (p.X*q.Y - q.X*p.Y) / 2
	}
	want := math.Pi * (out.OuterRadiusCm*out.OuterRadiusCm - out.InnerRadiusCm*out.InnerRadiusCm) * degrees / 360
	if area > want || area < want*(1-0.0005) {
		t.Errorf("%v degrees: area %v, want %v", degrees, area, want)
	}
	checkMeetings(t, in, out)
}

// checkArc: an edge lies on its circle, in steps of 3 degrees at most, and is as
// long as the arc, which is an integral of the constant radius over the turn.
func checkArc(t *testing.T, degrees float64, points []outline.Point, radius float64) {
	t.Helper()
	length := 0.0
	for i, p := range points {
		if math.Abs(math.Hypot(p.X, p.Y)-radius) > 1e-9 {
			t.Fatalf("%v degrees: %v is not on the circle of %v", degrees, p, radius)
		}
		if i > 0 {
			q := points[i-1]
			length += math.Hypot(p.X-q.X, p.Y-q.Y)
			if angle := math.Atan2(q.X*p.Y-p.X*q.Y, q.X*p.X+q.Y*p.Y) * 180 / math.Pi; angle <= 0 || angle > 3+1e-9 {
				t.Fatalf("%v degrees: a step of %v", degrees, angle)
			}
		}
	}
	want := quad.Fixed(func(float64) float64 { return radius }, 0, degrees*math.Pi/180, 5, nil, 0)
	if length > want || length < want*(1-0.00012) {
		t.Errorf("%v degrees: an edge of %v, want %v", degrees, length, want)
	}
}

// checkMeetings knits the circle and compares each line across with the rows at
// the outer edge so far.
func checkMeetings(t *testing.T, in CircleInput, out Circle) {
	t.Helper()
	degrees := *in.TurnDegrees
	across := out.Outline.Lines[2:]
	last := *in.WedgeCount
	if degrees != 360 {
		last++
	}
	if len(across) != last {
		t.Fatalf("%v degrees: %d lines across, want %d", degrees, len(across), last)
	}
	all := 0 // rows of the outer edge, counted from the wedges, as the scale
	for _, run := range out.Sequence {
		all += run.Times * (2*out.Wedges[run.WedgeNumber-1].PairCount + out.Wedges[run.WedgeNumber-1].FullRows)
	}
	next := 0
	meets := func(rows int) {
		if next == len(across) {
			return // a full turn ends where it began
		}
		l := across[next].Points
		a := degrees * float64(rows) / float64(all) * math.Pi / 180
		for i, radius := range []float64{out.InnerRadiusCm, out.OuterRadiusCm} {
			if math.Hypot(l[i].X-radius*math.Cos(a), l[i].Y-radius*math.Sin(a)) > 1e-6 {
				t.Fatalf("%+v: line %d, %q, is %v, knit to %v degrees", in, next, across[next].Name, l, a*180/math.Pi)
			}
		}
		if (across[next].Name == "end of the last wedge") != (next == *in.WedgeCount) {
			t.Fatalf("line %d is called %q", next, across[next].Name)
		}
		next++
	}
	meets(0)
	knitCircle(t, in, out, func(m *stitch.Machine) { meets(m.Heights()[0]) })
	if next != len(across) {
		t.Fatalf("%d lines met of %d", next, len(across))
	}
}

// The most points there are: two full turns of 100 wedges, 241 on each edge and
// two on each of 101 lines.
func TestCircleOutlineAtTheLimit(t *testing.T) {
	width, wedges, degrees := 1_000, MaxWedges, MaxTurn
	out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, WedgeCount: &wedges,
		TurnDegrees: &degrees, WithOutline: true})
	if err != nil {
		t.Fatal(err)
	}
	points := 0
	for _, l := range out.Outline.Lines {
		points += len(l.Points)
	}
	if points != 684 {
		t.Errorf("%d points", points)
	}
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width}
	if out, err = PlanCircleOfWedges(in); err != nil || out.Outline != nil {
		t.Errorf("an outline not asked for: %+v, %v", out.Outline, err)
	}
}

func BenchmarkCircleOutline(b *testing.B) {
	width := 40
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, WithOutline: true}
	for b.Loop() {
		if _, err := PlanCircleOfWedges(in); err != nil {
			b.Fatal(err)
		}
	}
}
