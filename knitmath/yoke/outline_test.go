package yoke

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/integrate"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// Yokes of every schedule are knit round by round: at the height of each the line
// has the circumference of the stitches on the needle.
func TestYokeOutlineIsKnit(t *testing.T) {
	for body := 60; body <= 240; body += 36 {
		for _, schedule := range []Schedule{SchedulePercentage, ScheduleCone} {
			in := CircularInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: 25}, BodyStitches: body, Schedule: schedule, WithOutline: true}
			out, err := PlanCircularYoke(in)
			if err != nil {
				t.Fatal(err)
			}
			outlinetest.CheckFrame(t, out.Outline)
			line := out.Outline.Lines[0]
			outlinetest.CheckCorners(t, line)
			if len(line.Points) > 2*len(out.Rounds)+2 {
				t.Errorf("%d points", len(line.Points))
			}
			m := knittest.CastOn(t, out.JoinStitches, true)
			next := 0
			for round := 0; round <= out.DepthRounds; round++ {
				row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
				if next < len(out.Rounds) && out.Rounds[next].RoundNumber == round {
					row = out.Rounds[next].Instruction.Row
					next++
				}
				if round > 0 {
					if err := m.Work(row); err != nil {
						t.Fatal(err)
					}
				}
				knittest.Near(t, "circumference", outlinetest.At(line, t, float64(round)/2.5), float64(m.StitchCount())/1.8, 1e-9)
			}
			// A cone that loses its stitches evenly encloses, unrolled, the area of a
			// trapezoid; in steps it is off by half a step of decreases at most.
			if schedule == ScheduleCone {
				var x, y []float64
				for _, p := range line.Points {
					x, y = append(x, p.X), append(y, p.Y)
				}
				cone := (out.JoinCm + out.NeckCm) / 2 * out.DepthCm
				step := (out.JoinCm - out.NeckCm) / float64(len(out.Rounds)) * out.DepthCm
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
					in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body,
						BackRaise: &BackRaise{Place: place, RiseRows: &rise}, WithOutline: true}
					if bands > 0 {
						in.NeckToleranceStitches = new(2)
						in.Bands = []Band{{body / 25, 6, new(3)}}
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

func checkRaisedLine(t *testing.T, in CircularInput, out Circular) {
	t.Helper()
	outlinetest.CheckFrame(t, out.Outline)
	if len(out.Outline.Lines) != 2 {
		t.Fatalf("lines %+v", out.Outline.Lines)
	}
	front, back := out.Outline.Lines[0], out.Outline.Lines[1]
	outlinetest.CheckCorners(t, front)
	outlinetest.CheckCorners(t, back)
	top := func(l outline.Line) float64 { return l.Points[len(l.Points)-1].Y }
	knittest.Near(t, "front", top(front), out.DepthCm, 1e-9)
	knittest.Near(t, "back", top(back), out.DepthCm+out.BackRaise.RiseCm, 1e-9)

	m := knittest.CastOn(t, out.JoinStitches, true)
	next := 0
	for round := 1; round <= out.DepthRounds; round++ {
		rows := []stitch.Row{stitch.RowOf(stitch.ToEnd(stitch.Knit))}
		switch {
		case round == out.BackRaise.FirstRoundNumber:
			rows = nil
			for _, r := range out.BackRaise.Rows {
				rows = append(rows, r.Instruction.Row)
			}
			round++ // the two rounds that it takes
		case next < len(out.Rounds) && out.Rounds[next].RoundNumber == round:
			rows[0] = out.Rounds[next].Instruction.Row
			next++
		}
		for _, row := range rows {
			if err := m.Work(row); err != nil {
				t.Fatalf("body %d, round %d: %v", in.BodyStitches, round, err)
			}
		}
		cm := float64(m.StitchCount()) / 2.2
		knittest.Near(t, "circumference in front", outlinetest.At(front, t, float64(round)/3), cm, 1e-9)
		knittest.Near(t, "circumference at the back", outlinetest.At(back, t, float64(slices.Max(m.Heights()))/3), cm, 1e-9)
	}
	if got := float64(slices.Max(m.Heights())) / 3; math.Abs(got-top(back)) > 1e-9 {
		t.Fatalf("the back is %v cm high, drawn to %v", got, top(back))
	}
}

func BenchmarkYokeOutline(b *testing.B) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: 25}, BodyStitches: 200, WithOutline: true}
	for b.Loop() {
		if _, err := PlanCircularYoke(in); err != nil {
			b.Fatal(err)
		}
	}
}
