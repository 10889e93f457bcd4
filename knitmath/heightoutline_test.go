package knitmath

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/integrate"

	"example.com/knitmath/knitmath/stitch"
)

// Small wedges of every kind, straight and curved, are knit: the top edge has over
// every stitch the rows that the machine finds under it, and the area under the
// profile is that of its straight pieces.
func TestWedgeOutlineIsKnit(t *testing.T) {
	planned := 0
	try := func(in WedgeInput) {
		in.WithOutline = true
		out, err := PlanWedge(in)
		if err != nil {
			return
		}
		planned++
		checkTopEdge(t, in, out)
	}
	for width := 2; width <= 14; width += 3 {
		for rise := 2; rise <= width; rise += 2 {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
					try(WedgeInput{StitchCount: width, RiseRows: &rise, TallEnd: tall, TurnMethod: method})
					try(WedgeInput{StitchCount: width, ProfileRows: []float64{0, float64(rise), 1, float64(rise) / 2}, TurnMethod: method})
				}
			}
		}
	}
	if planned < 100 {
		t.Errorf("planned %d wedges: the sweep has shrunk", planned)
	}
}

func checkTopEdge(t *testing.T, in WedgeInput, out Wedge) {
	t.Helper()
	m := castOn(t, in.StitchCount, false)
	if out.Rows[0].Side == SideWrong {
		if err := m.Work(plainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	below := m.RowsWorked()
	for _, r := range out.Rows {
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("%s: %v", describe(in), err)
		}
	}
	checkFrame(t, out.Outline)
	top := out.Outline.Lines[0]
	checkCorners(t, top)
	if top.Points[0].X != 0 || top.Points[len(top.Points)-1].X != float64(in.StitchCount) {
		t.Fatalf("%s: top edge %v", describe(in), top.Points)
	}
	for x, rows := range m.Heights() { // from the right edge
		middle := float64(in.StitchCount-1-x) + 0.5
		if got := stepAt(t, top, middle); got != float64(rows-below) {
			t.Fatalf("%s: %v rows at %v, knit %d: %v", describe(in), got, middle, rows-below, top.Points)
		}
	}
	// The profile, integrated point by point, in stitches times rows.
	want := float64(out.ShortRows * in.StitchCount)
	switch {
	case in.ProfileRows != nil:
		for i := 1; i < len(in.ProfileRows); i++ {
			want += (in.ProfileRows[i-1] + in.ProfileRows[i]) / 2 * float64(in.StitchCount) / float64(len(in.ProfileRows)-1)
		}
	default: // one triangle, or two of half the width
		want += float64(out.RiseRows*in.StitchCount) / 2
	}
	var x, y []float64
	for _, p := range out.Outline.Lines[1].Points {
		x, y = append(x, p.X), append(y, p.Y)
	}
	near(t, "area of "+describe(in), integrate.Trapezoidal(x, y), want, 1e-9)
}

// stepAt is the height of the flat stroke over a place.
func stepAt(t *testing.T, l OutlineLine, x float64) float64 {
	t.Helper()
	for i := 1; i < len(l.Points); i++ {
		a, b := l.Points[i-1], l.Points[i]
		if a.X != b.X && a.Y != b.Y {
			t.Fatalf("%s slants at point %d: %v", l.Name, i, l.Points)
		}
		if a.X < x && x < b.X {
			return a.Y
		}
	}
	t.Fatalf("nothing over %v: %v", x, l.Points)
	return 0
}

// A wedge by hand: 4 stitches, tall at the right, a rise of 4 rows, which are two
// pairs. The profile is 3.5, 2.5, 1.5, 0.5 rows from the right, so 2, 1, 1, 0
// pairs; one row more picks the wraps up. At 2 stitches and 4 rows to the cm, from
// the left: 1 row for 0.5 cm, 3 rows for 1 cm, 5 rows for 0.5 cm.
func TestWedgeOutlineByHand(t *testing.T) {
	rise := 4
	out, err := PlanWedge(WedgeInput{StitchCount: 4, RiseRows: &rise, TallEnd: TallEndRight,
		Gauge: &Gauge{Stitches: 20, Rows: 40}, WithOutline: true})
	if err != nil {
		t.Fatal(err)
	}
	low := float64(out.ShortRows) / 4
	want := []OutlinePoint{{0, low}, {0.5, low}, {0.5, low + 0.5}, {1.5, low + 0.5}, {1.5, low + 1}, {2, low + 1}}
	got := out.Outline.Lines[0].Points
	if len(got) != len(want) {
		t.Fatalf("top edge %v, want %v", got, want)
	}
	for i := range want {
		near(t, "x", got[i].X, want[i].X, 1e-12)
		near(t, "y", got[i].Y, want[i].Y, 1e-12)
	}
	if l := out.Outline.Lines[1].Points; len(l) != 2 || l[0] != (OutlinePoint{0, low}) || math.Abs(l[1].Y-low-1) > 1e-12 || l[1].X != 2 {
		t.Errorf("wanted %v", l)
	}
}

// Yokes of every schedule are knit round by round: at the height of each the line
// has the circumference of the stitches on the needle.
func TestYokeOutlineIsKnit(t *testing.T) {
	for body := 60; body <= 240; body += 36 {
		for _, schedule := range []YokeSchedule{YokeSchedulePercentage, YokeScheduleCone} {
			in := CircularYokeInput{Gauge: &Gauge{Stitches: 18, Rows: 25}, BodyCount: body, Schedule: schedule, WithOutline: true}
			out, err := PlanCircularYoke(in)
			if err != nil {
				t.Fatal(err)
			}
			checkFrame(t, out.Outline)
			line := out.Outline.Lines[0]
			checkCorners(t, line)
			if len(line.Points) > 2*len(out.DecreaseRounds)+2 {
				t.Errorf("%d points", len(line.Points))
			}
			m := castOn(t, out.JoinCount, true)
			next := 0
			for round := 0; round <= out.RoundCount; round++ {
				row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
				if next < len(out.DecreaseRounds) && out.DecreaseRounds[next].RoundNumber == round {
					row = out.DecreaseRounds[next].Instruction.Row
					next++
				}
				if round > 0 {
					if err := m.Work(row); err != nil {
						t.Fatal(err)
					}
				}
				near(t, "circumference", line.at(t, float64(round)/2.5), float64(m.StitchCount())/1.8, 1e-9)
			}
			// A cone that loses its stitches evenly encloses, unrolled, the area of a
			// trapezoid; in steps it is off by half a step of decreases at most.
			if schedule == YokeScheduleCone {
				var x, y []float64
				for _, p := range line.Points {
					x, y = append(x, p.X), append(y, p.Y)
				}
				cone := (out.JoinCm + out.NeckCm) / 2 * out.DepthCm
				step := (out.JoinCm - out.NeckCm) / float64(len(out.DecreaseRounds)) * out.DepthCm
				if got := integrate.Trapezoidal(y, x); got < cone || got > cone+step {
					t.Errorf("body %d: area %v, cone %v", body, got, cone)
				}
			}
		}
	}
}

// Yokes with a raise are knit to the neck. The highest stitch, up the centre of the
// back, stands after every round at the height of the back's line, which there has
// the circumference of the needle; the front's line ends lower by the rise.
func TestYokeOutlineWithRaiseIsKnit(t *testing.T) {
	planned := 0
	for body := 100; body <= 340; body += 40 {
		for place := RaisePlaceBeforeBands; place <= RaisePlaceAfterBands; place++ {
			for rise := 2; rise <= 10; rise += 4 {
				for bands := range 2 {
					in := CircularYokeInput{Gauge: &Gauge{Stitches: 22, Rows: 30}, BodyCount: body,
						BackRaise: &BackRaise{Place: place, RiseRows: &rise}, WithOutline: true}
					if bands > 0 {
						in.NeckToleranceCount = new(2)
						in.Bands = []YokeBand{{body / 25, 6, new(3)}}
					}
					out, err := PlanCircularYoke(in)
					if err != nil {
						t.Fatalf("body %d, place %d, %d bands: %v", body, place, bands, err)
					}
					planned++
					checkRaisedLine(t, in, out)
				}
			}
		}
	}
	if planned != 84 {
		t.Errorf("planned %d yokes", planned)
	}
}

func checkRaisedLine(t *testing.T, in CircularYokeInput, out CircularYoke) {
	t.Helper()
	checkFrame(t, out.Outline)
	if len(out.Outline.Lines) != 2 {
		t.Fatalf("lines %+v", out.Outline.Lines)
	}
	front, back := out.Outline.Lines[0], out.Outline.Lines[1]
	checkCorners(t, front)
	checkCorners(t, back)
	top := func(l OutlineLine) float64 { return l.Points[len(l.Points)-1].Y }
	near(t, "front", top(front), out.DepthCm, 1e-9)
	near(t, "back", top(back), out.DepthCm+out.BackRaise.RiseCm, 1e-9)

	m := castOn(t, out.JoinCount, true)
	next := 0
	for round := 1; round <= out.RoundCount; round++ {
		rows := []stitch.Row{stitch.RowOf(stitch.ToEnd(stitch.Knit))}
		switch {
		case round == out.BackRaise.FirstRoundNumber:
			rows = nil
			for _, r := range out.BackRaise.Rows {
				rows = append(rows, r.Instruction.Row)
			}
			round++ // the two rounds that it takes
		case next < len(out.DecreaseRounds) && out.DecreaseRounds[next].RoundNumber == round:
			rows[0] = out.DecreaseRounds[next].Instruction.Row
			next++
		}
		for _, row := range rows {
			if err := m.Work(row); err != nil {
				t.Fatalf("body %d, round %d: %v", in.BodyCount, round, err)
			}
		}
		cm := float64(m.StitchCount()) / 2.2
		near(t, "circumference in front", front.at(t, float64(round)/3), cm, 1e-9)
		near(t, "circumference at the back", back.at(t, float64(slices.Max(m.Heights()))/3), cm, 1e-9)
	}
	if got := float64(slices.Max(m.Heights())) / 3; math.Abs(got-top(back)) > 1e-9 {
		t.Fatalf("the back is %v cm high, drawn to %v", got, top(back))
	}
}

func BenchmarkWedgeOutline(b *testing.B) {
	rise := 24
	in := WedgeInput{StitchCount: 100, RiseRows: &rise, TallEnd: TallEndRight, WithOutline: true}
	for b.Loop() {
		if _, err := PlanWedge(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkYokeOutline(b *testing.B) {
	in := CircularYokeInput{Gauge: &Gauge{Stitches: 18, Rows: 25}, BodyCount: 200, WithOutline: true}
	for b.Loop() {
		if _, err := PlanCircularYoke(in); err != nil {
			b.Fatal(err)
		}
	}
}
