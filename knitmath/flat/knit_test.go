package flat

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// ideal is the length of a row whose middle lies so far from where the piece begins, in cm,
// by the geometry of the form alone.
func ideal(in Input, cm float64) float64 {
	switch in.Form {
	case FormDisc:
		return 2 * math.Pi * cm
	case FormRing:
		return 2 * math.Pi * (cm + *in.HoleCm/2)
	case FormSector:
		turn := 180.0
		if in.TurnDegrees != nil {
			turn = *in.TurnDegrees
		}
		return turn * math.Pi / 180 * cm
	case FormPolygon: // twice the area of a triangle over its height, n times
		n := float64(*in.CornerCount)
		return n * 2 * cm * math.Sin(math.Pi/n) / math.Cos(math.Pi/n)
	case FormMitredSquare:
		return 2 * cm
	}
	return 4 * cm // two right angles, of which each row cuts off triangles of that height
}

// checkShape knits a piece from the answer and measures it: every row can be worked and has
// the counts that are said, each lies as far from its length as is said, and never further
// than a step and what is allowed.
func checkShape(t *testing.T, in Input, out Shape) {
	t.Helper()
	if counts := knitShape(t, in, out); in.Form <= FormMitredSquare || in.Form == FormTriangleFromTop {
		checkLies(t, in, out, counts)
	}
}

// knitShape knits a piece, and gives its counts.
func knitShape(t *testing.T, in Input, out Shape) []int {
	t.Helper()
	round := out.Construction == stitch.InTheRound
	knittest.CheckDirections(t, out.Summary(), out.Directions())
	m := knittest.CastOn(t, out.StartStitches, round)
	counts := make([]int, 0, out.TotalRows)
	next := 0
	for row := 1; row <= out.TotalRows; row++ {
		work, side := knittest.PlainRow(m), m.Side()
		if next < len(out.Rows) && out.Rows[next].RowNumber == row {
			r := out.Rows[next]
			if next++; r.Instruction.StartStitches != m.StitchCount() || !round && r.Side != side {
				t.Fatalf("row %d begins with %d, %v, the needle has %d, %v", row, r.Instruction.StartStitches, r.Side, m.StitchCount(), side)
			}
			work = r.Instruction.Row
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%+v: row %d, %q: %v", in, row, work.Text(), err)
		}
		if next > 0 && out.Rows[next-1].RowNumber == row && out.Rows[next-1].Instruction.EndStitches != m.StitchCount() {
			t.Fatalf("row %d, %q: %d stitches, %d said", row, work.Text(), m.StitchCount(), out.Rows[next-1].Instruction.EndStitches)
		}
		counts = append(counts, m.StitchCount())
	}
	if next != len(out.Rows) || m.StitchCount() != out.EndStitches {
		t.Fatalf("%d of %d rows worked; %d stitches, %d said", next, len(out.Rows), m.StitchCount(), out.EndStitches)
	}
	for _, h := range m.Heights() {
		if h != out.TotalRows {
			t.Fatalf("%d rows under a stitch, want %d", h, out.TotalRows)
		}
	}
	return counts
}

// checkLies compares every row with its length.
func checkLies(t *testing.T, in Input, out Shape, counts []int) {
	t.Helper()
	knittest.CheckNotices(t, "PlanFlatShape", out.Notices)
	st, rw := in.Gauge.Stitches/10, in.Gauge.Rows/10
	inner, greatest, step := counts[0], 0.0, 1
	if in.Direction == DirectionInwards {
		inner = counts[len(counts)-1]
	}
	for _, r := range out.Rows {
		step = max(step, r.Instruction.EndStitches-r.Instruction.StartStitches, r.Instruction.StartStitches-r.Instruction.EndStitches)
	}
	want, knit := 0.0, 0.0
	for i, n := range counts {
		from := i
		if in.Direction == DirectionInwards {
			from = len(counts) - 1 - i
		}
		wanted := ideal(in, (float64(from)+0.5)/rw) * st
		if wanted >= float64(inner) { // nearer to the middle it has as many as it begins with
			want, knit = want+wanted, knit+float64(n)
		}
		if wanted >= float64(inner) {
			greatest = max(greatest, math.Abs(float64(n)-wanted))
		}
	}
	if math.Abs(greatest-out.GreatestDepartureStitches) > 1e-6*max(1, greatest, 10*float64(out.EndStitches)/in.Gauge.Rows) {
		t.Fatalf("%+v: departs by %v, said %v", in, greatest, out.GreatestDepartureStitches)
	}
	if in.Arrangement == ArrangementDoubling {
		return
	}
	// The nearest rows lie half a step off, the easiest a row or 2 % more; a ring and the opening
	// of a polygon begin with what divides, at most a step off.
	tolerance := max(1, 0.02*float64(len(counts)))
	if in.Form == FormTriangleFromTop || in.Form == FormMitredSquare { // twice that where nothing nearer is easy
		tolerance *= 2
	}
	limit := 1.5*float64(step) + (1+tolerance)*out.GrowthStitches + 1
	limit += leftShort(t, out, float64(step))
	if greatest > limit {
		t.Fatalf("%+v: %v stitches off, more than %v", in, greatest, limit)
	}
	// In all half a row more or less, what the tolerance allows, what a step is off near the middle, and at the edge half a step
	// over the rows of half of it, which are many where a row wants a hundredth of a stitch more.
	limit = (0.5+tolerance)*float64(len(counts))*out.GrowthStitches + float64(step*step+inner)
	if off := math.Abs(knit - want); off > limit+float64(step*step)/4/out.GrowthStitches {
		t.Fatalf("%+v: %v stitches in all, %v wanted", in, knit, want)
	}
}

// leftShort is what a piece in rows lacks in its longest row where every right-side row gains a step and two rows want a little
// more: at most a twentieth of it.
func leftShort(t *testing.T, out Shape, step float64) float64 {
	t.Helper()
	if out.Construction != stitch.Flat || out.of.anyRow || len(out.Rows) == 0 {
		return 0
	}
	short := max(0, float64(out.TotalRows)*(out.GrowthStitches-step/2))
	if short > 0.05*out.WantedRimStitches {
		t.Fatalf("%v stitches short of %v: right-side rows alone are too few", short, out.WantedRimStitches)
	}
	return short
}

// wide are the shapes of one gauge, large and small.
func wide(g *gauge.Gauge, cm float64) []Input {
	var list []Input
	add := func(in Input) {
		in.Gauge, in.WithOutline = g, true
		list = append(list, in)
	}
	hole, half := cm/3, cm/2
	for _, way := range []Direction{DirectionOutwards, DirectionInwards} {
		for _, a := range []Arrangement{ArrangementStaggered, ArrangementWedges} {
			add(Input{Form: FormDisc, AcrossCm: &cm, Arrangement: a, Direction: way})
			add(Input{Form: FormRing, AcrossCm: &cm, HoleCm: &hole, Arrangement: a, Direction: way})
			for _, w := range []int{7, 12, 16} {
				add(Input{Form: FormDisc, AcrossCm: &cm, Arrangement: a, Direction: way, WedgeCount: &w})
			}
		}
		add(Input{Form: FormDisc, AcrossCm: &cm, Arrangement: ArrangementDoubling, Direction: way})
		add(Input{Form: FormMitredSquare, SideCm: &half, Direction: way})
		for n := MinCorners; n <= MaxCorners; n++ {
			add(Input{Form: FormPolygon, SideCm: &hole, CornerCount: &n, Direction: way})
		}
	}
	for _, turn := range []float64{20, 90, 180, 270, 350} {
		add(Input{Form: FormSector, AcrossCm: &cm, TurnDegrees: &turn})
		add(Input{Form: FormSector, AcrossCm: &cm, TurnDegrees: &turn, StartStitches: knittest.Ptr(17), Arrangement: ArrangementWedges})
	}
	for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide} {
		for _, high := range []float64{cm / 4, cm / 2, cm} {
			add(Input{Form: form, WidthCm: &cm, HeightCm: &high})
		}
	}
	add(Input{Form: FormTriangleFromTop, WidthCm: &cm})
	add(Input{Form: FormBiasStrip, WidthCm: &hole, LengthCm: &cm})
	return list
}

// Shapes of every form, gauge and size are knit and lie as they should.
func TestShapesAreKnit(t *testing.T) {
	planned, refused := 0, 0
	reasons := map[report.Reason]int{}
	for _, rows := range []float64{17, 22, 26, 28.5, 32, 40} {
		for cm := 6.0; cm < 90; cm += float64(knittest.Sweep(7, 28)) {
			for _, in := range wide(&gauge.Gauge{Stitches: 20, Rows: rows}, cm) {
				out, err := PlanFlatShape(in)
				if err != nil {
					knittest.CheckInputError(t, err)
					refused++
					continue
				}
				planned++
				checkShape(t, in, out)
				knittest.CheckFinite(t, out)
				for _, n := range out.Notices {
					reasons[n.Reason]++
				}
			}
		}
	}
	if planned < knittest.Sweep(3500, 900) || refused > planned/8 {
		t.Errorf("planned %d shapes, refused %d: the sweep has shrunk", planned, refused)
	}
	for _, reason := range []report.Reason{Cups, Ruffles, SlantedEnds, ShapedOnBothSides} {
		if reasons[reason] < 5 {
			t.Errorf("%v: the sweep has shrunk", reasons)
		}
	}
	t.Logf("planned %d, refused %d, %v", planned, refused, reasons)
}
