package curve

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// An ideal is a curve from 0 in whole stitches and rows, by its closed form: how far in it lies at
// a height, and how high where it lies so far in.
type ideal struct {
	across, up func(float64) float64
}

// idealOf is a straight line, a quarter of an ellipse or an arc of a circle, so many stitches in and
// rows up. The circle is one of the two through both ends: the one whose centre lies higher leaves
// across.
func idealOf(shape Shape, leaving Leaving, wide, high, radius, st, rw float64) ideal {
	leg := func(a float64) float64 { return math.Sqrt(max(0, 1-a*a)) }
	switch {
	case shape == ShapeLine:
		return ideal{func(y float64) float64 { return wide * y / high }, func(x float64) float64 { return high * x / wide }}
	case shape == ShapeQuarterEllipse && leaving != LeavingUp:
		return ideal{func(y float64) float64 { return wide * leg(1-y/high) }, func(x float64) float64 { return high * (1 - leg(x/wide)) }}
	case shape == ShapeQuarterEllipse:
		return ideal{func(y float64) float64 { return wide * (1 - leg(y/high)) }, func(x float64) float64 { return high * leg(1-x/wide) }}
	}
	w, h := wide*st, high*rw
	chord := math.Hypot(w, h)
	away, way := math.Sqrt(radius*radius-chord*chord/4), 1.0
	if leaving == LeavingUp {
		way = -1
	}
	x0, y0 := w/2-way*away*h/chord, h/2+way*away*w/chord
	return ideal{
		func(y float64) float64 { return (x0 + way*radius*leg((y*rw-y0)/radius)) / st },
		func(x float64) float64 { return (y0 - way*radius*leg((x*st-x0)/radius)) / rw },
	}
}

// off is how far a corner lies off: across the row and up the piece, the less of the two, in stitches.
func (i ideal) off(c knittest.Corner, wide, high, perRow float64) float64 {
	across := math.Abs(c.Across - i.across(min(max(c.Up, 0), high)))
	return min(across, math.Abs(c.Up-i.up(min(max(c.Across, 0), wide)))*perRow)
}

// places are many of a curve, as close at its level end as at its upright one.
func (i ideal) places(wide, high float64) []knittest.Corner {
	var list []knittest.Corner
	for k := range 201 {
		x, y := wide*float64(k)/200, high*float64(k)/200
		list = append(list, knittest.Corner{Across: x, Up: i.up(x)}, knittest.Corner{Across: i.across(y), Up: y})
	}
	return list
}

// How far the edges of a sweep lie from their curve is measured on the fabric: its corners against
// the closed form of the curve, which nothing of the planner knows. The farthest is what the answer
// says; as the crow flies it is no farther, and never far.
func TestDeparturesOnTheFabric(t *testing.T) {
	measured, stitches, rows := 0, 0.0, 0.0
	sum := 0.0
	for seed := range knittest.Sweep(2_000, 200) {
		r := rand.New(rand.NewPCG(uint64(seed), 67))
		wide, high := 3+r.IntN(40), 8+r.IntN(90)
		g := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {14, 20}, {20, 40}}[r.IntN(5)]
		st, rw := 10/g[0], 10/g[1]
		p := CurvePoint{HeightRows: &high, InwardStitches: &wide, Shape: ShapeLine + Shape(r.IntN(3))}
		chord := math.Hypot(float64(wide)*st, float64(high)*rw)
		radius := chord * (0.75 + 3*r.Float64())
		if p.Shape > ShapeLine {
			p.Leaving = LeavingAcross + Leaving(r.IntN(2))
		}
		if p.Shape == ShapeArc {
			p.RadiusCm = &radius
		}
		in := CurvedEdgeInput{StartStitches: 2*wide + 20, Points: []CurvePoint{p}, Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]},
			Edges: EdgesBoth + Edges(r.IntN(3)), RowChoice: RowChoice(r.IntN(3))}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			continue
		}
		if slices.ContainsFunc(out.Runs, func(r Run) bool { return r.Kind.Gains() }) {
			continue // an arc that bends back
		}
		curve := idealOf(p.Shape, p.Leaving, float64(wide), float64(high), radius, st, rw)
		places := curve.places(float64(wide), float64(high))
		f, _ := fabricOf(t, in, out) // the first row is a right-side row
		farthest := 0.0
		for i, e := range [2]*KnitEdge{out.RightEdge, out.LeftEdge} {
			if e == nil {
				continue
			}
			for _, c := range knittest.Corners(f.Selvedge([2]stitch.Hand{stitch.RightHand, stitch.LeftHand}[i], 1, high)) {
				farthest = max(farthest, curve.off(c, float64(wide), float64(high), rw/st))
				cm := knittest.DistanceCm(c, places, st, rw)
				stitches, rows = max(stitches, cm/st), max(rows, cm/rw)
				if cm/st > out.GreatestDepartureStitches+3e-2 {
					t.Fatalf("%d in over %d, %+v: %v stitches off at %+v, %v said", wide, high, in, cm/st, c, out.GreatestDepartureStitches)
				}
			}
		}
		measured++
		sum += farthest
		if math.Abs(farthest-out.GreatestDepartureStitches) > 1e-5 {
			t.Fatalf("%+v: %v stitches off on the fabric, %v said: %v", in, farthest, out.GreatestDepartureStitches, out.Directions())
		}
	}
	t.Logf("%d edges: at most %.2f stitches and %.2f rows from the curve as the crow flies; farthest corners are %.2f stitches off on average",
		measured, stitches, rows, sum/float64(measured))
	if measured < knittest.Sweep(1_500, 150) || stitches > 3 || rows > 5 {
		t.Errorf("%d edges, %v stitches, %v rows", measured, stitches, rows)
	}
}
