package neck

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The edge of a round neck as knit, corner by corner, beside the ellipse, whose points are
// worked out here once more from its equation: a corner is so many stitches across from it
// or so many rows up, the less of which counts. The greatest distance of the sweep is told.
func TestRoundEdgesFollowTheirCurve(t *testing.T) {
	greatest, beyond := 0.0, 0.0
	eachDrawn(t, func(at string, in Input, out Neckline) {
		if in.Shape > ShapeRound || len(out.Front.Steps) == 0 {
			return
		}
		p := out.Front
		rowsPerStitch := in.Gauge.Rows / in.Gauge.Stitches
		half, top := float64(p.NeckStitches)/2, float64(p.DepthRows-1)
		x, far := float64(p.CentreStitches)/2, 0.0
		off := func(x, y float64) {
			wanted := half * math.Sqrt(math.Max(0, 1-math.Pow(1-math.Min(y/top, 1), 2)))
			across := math.Abs(x - math.Max(wanted, float64(p.CentreStitches)/2)) // the middle goes at once, whatever it is
			lies := top * (1 - math.Sqrt(math.Max(0, 1-math.Pow(x/half, 2))))
			up := math.Abs(y - math.Max(lies, 1)) // nothing beside the middle lies lower than the end of row 1
			far = math.Max(far, math.Min(across, up/rowsPerStitch))
		}
		middle := x
		for side := range 2 {
			x = middle
			for _, s := range p.Steps {
				// A side's row 1 is the one that divides, whose end is a row above the middle. Bound-off
				// stitches lie on the row before theirs, a decrease slants over its own.
				height := float64([2]int{s.FirstSideRowNumber, s.SecondSideRowNumber}[side] - p.NeckRowNumber)
				off(x, height)
				x += float64(s.Stitches)
				if !s.BoundOff {
					height++
				}
				off(x, height)
			}
		}
		if math.Abs(far-p.GreatestDepartureStitches) > 0.35 {
			t.Errorf("%s: %v stitches from the ellipse, said to be %v", at, far, p.GreatestDepartureStitches)
		}
		greatest = math.Max(greatest, far)
		beyond = math.Max(beyond, p.GreatestDepartureStitches-p.LeastDepartureStitches)
	})
	t.Logf("at most %.2f stitches from the ellipse, %.2f beyond the nearest plan", greatest, beyond)
}

// A round neck never takes more stitches in a later step than in an earlier one where it is
// as deep as it is wide or so.
func TestStepsOfARoundNeckFall(t *testing.T) {
	for neck := 20; neck <= 60; neck++ {
		for depth := 14; depth <= 30; depth += 2 {
			in := Input{Gauge: ordinary(), WidthStitches: new(neck + 60), NeckStitches: new(neck), FrontDepthRows: new(depth)}
			out, err := PlanNeckline(in)
			if err != nil {
				t.Fatal(err)
			}
			for i, s := range out.Front.Steps {
				if i > 0 && s.Stitches > out.Front.Steps[i-1].Stitches {
					t.Errorf("a neck of %d, %d rows deep: %+v", neck, depth, out.Front.Steps)
				}
			}
			if 3*out.Front.CentreStitches < neck || 3*out.Front.CentreStitches > 2*neck {
				t.Errorf("a neck of %d, %d rows deep, has a middle of %d", neck, depth, out.Front.CentreStitches)
			}
		}
	}
}

// The published V loses 29 stitches a side over 180 rows, every 6th row (Hugur og hönd, June
// 1986, p. 47): 2 more rows are even below the shoulder here.
func TestPublishedSlant(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: ordinary(), Shape: ShapeV, WidthStitches: new(58 + 54), NeckStitches: new(58),
		FrontCentreStitches: new(0), FrontDepthRows: new(182)})
	if err != nil {
		t.Fatal(err)
	}
	if n := len(out.Front.Steps); n != 29 {
		t.Fatalf("%d decreases", n)
	}
	for i, s := range out.Front.Steps[1:] {
		if every := s.SecondSideRowNumber - out.Front.Steps[i].SecondSideRowNumber; every != 6 {
			t.Errorf("decrease %d is %d rows after the last", i+2, every)
		}
	}
}

// The length of a V's edge: 15 stitches of 10 / 22 cm and 58 rows of 1/3 cm on the slant, to the
// top of the last decrease, and straight up from there.
func TestLengthOfTheEdge(t *testing.T) {
	out, err := PlanNeckline(Input{Gauge: ordinary(), Shape: ShapeV, WidthStitches: new(90), NeckStitches: new(30),
		FrontCentreStitches: new(0), FrontDepthRows: new(62)})
	if err != nil {
		t.Fatal(err)
	}
	last := out.Front.Steps[14].SecondSideRowNumber - out.Front.NeckRowNumber + 1
	want := 0.0
	at := 0
	for _, s := range out.Front.Steps {
		row := s.SecondSideRowNumber - out.Front.NeckRowNumber + 1
		want += math.Hypot(10.0/22, float64(row-at)/3)
		at = row
	}
	knittest.Near(t, "edge", out.Front.EdgeCm, want+float64(62-last)/3, 1e-9)
	if straight := math.Hypot(15*10.0/22, 62.0/3); out.Front.EdgeCm < straight || out.Front.EdgeCm > 1.01*straight {
		t.Errorf("the edge is %v cm long, a straight line %v", out.Front.EdgeCm, straight)
	}
}
