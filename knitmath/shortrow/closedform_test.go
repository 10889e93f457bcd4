package shortrow

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
)

// The slope of a wedge is an arc tangent, here integrated by gonum: the integral
// of 1/(1+x^2) from 0 to rise/run.
func TestWedgeAngle(t *testing.T) {
	for _, c := range []struct {
		width, rise int
		tall        TallEnd
	}{{24, 6, TallEndLeft}, {60, 40, TallEndRight}, {90, 60, TallEndCentre}, {41, 12, TallEndSides}, {200, 4, TallEndRight}} {
		out, err := PlanWedge(WedgeInput{WidthStitches: c.width, RiseRows: &c.rise, TallEnd: c.tall,
			Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}})
		if err != nil {
			t.Fatal(err)
		}
		run := float64(c.width) / 2.2
		if c.tall == TallEndCentre || c.tall == TallEndSides {
			run /= 2
		}
		slope := float64(c.rise) / 3 / run
		want := quad.Fixed(func(x float64) float64 { return 1 / (1 + x*x) }, 0, slope, 40, nil, 0) * 180 / math.Pi
		if math.Abs(*out.RiseAngleDegrees-want) > 1e-9 {
			t.Errorf("%+v: %v degrees, want %v", c, *out.RiseAngleDegrees, want)
		}
		// And back: that angle asks for the same rise.
		back, err := PlanWedge(WedgeInput{WidthStitches: c.width, RiseAngleDegrees: &want, TallEnd: c.tall,
			Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}})
		if err != nil || back.RiseRows != c.rise {
			t.Errorf("%+v: %v degrees give %d rows, %v", c, want, back.RiseRows, err)
		}
	}
}

// The outer edge of a circle, or of a part of one, is as long as its arc, which
// gonum integrates from the speed of a point that runs round it.
func TestCircleArcLength(t *testing.T) {
	for _, degrees := range []float64{90, 200, 360} {
		width, inner := 50, 4.0
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width,
			InnerRadiusCm: &inner, TurnDegrees: &degrees})
		if err != nil {
			t.Fatal(err)
		}
		speed := func(a float64) float64 {
			return math.Hypot(-out.OuterRadiusCm*math.Sin(a), out.OuterRadiusCm*math.Cos(a))
		}
		arc := quad.Fixed(speed, 0, degrees*math.Pi/180, 20, nil, 0)
		if border := float64(out.OuterRows) / 3; math.Abs(border-arc) > 1.0/3+1e-9 {
			t.Errorf("%v degrees: an edge of %v cm, want %v to within a row", degrees, border, arc)
		}
	}
}
