package curve

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// The edges of a sweep are knit, and both their lengths measured on the fabric.
func TestEdgesAreAsLongOnTheFabric(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 1))
	measured := 0
	for range knittest.Sweep(400, 100) {
		in := randomQuestion(r)
		out, err := PlanCurvedEdge(in)
		if err != nil || out.EndStitches == 0 {
			continue
		}
		f, before := fabricOf(t, in, out)
		st, rw := out.edge.st.SizeCm(1), out.edge.rw.SizeCm(1)
		for i, e := range [2]*KnitEdge{out.RightEdge, out.LeftEdge} {
			if e == nil {
				continue
			}
			knit := f.Selvedge([2]stitch.Hand{stitch.RightHand, stitch.LeftHand}[i], 1+before, out.HeightRows+before)
			knittest.Near(t, "along its steps", e.LengthCm, knit.LengthCm(st, rw), 1e-9)
			knittest.Near(t, "along the seam", e.SewnCm, knit.SewnCm(st, rw, 0), 1e-9)
			if e.SewnCm > e.LengthCm+1e-9 {
				t.Errorf("%+v: %v cm along the seam, %v along the steps", in, e.SewnCm, e.LengthCm)
			}
			measured++
		}
		if t.Failed() {
			t.Fatalf("%+v\n%v\n%v", in, out.Summary(), out.Directions())
		}
	}
	if measured < knittest.Sweep(200, 50) {
		t.Errorf("%d edges were measured", measured)
	}
}

// fabricOf knits an answer. Where its first row is none that follows the cast-on, a row lies below it.
func fabricOf(t *testing.T, in CurvedEdgeInput, out CurvedEdge) (f *stitch.Fabric, below int) {
	t.Helper()
	all, _ := Worked(in.StartStitches, out.plan.Right, out.plan.Left, out.edge.working())
	m := stitch.NewMachine(stitch.Flat)
	f, err := m.Record()
	if err != nil {
		t.Fatal(err)
	}
	if err := m.CastOn(in.StartStitches); err != nil {
		t.Fatal(err)
	}
	if m.Side() != out.edge.firstSide() {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
		below = 1
	}
	for _, row := range all {
		if err := m.Work(row.Instruction.Row); err != nil {
			t.Fatalf("%+v: row %d: %v", in, row.RowNumber, err)
		}
	}
	return f, below
}

// A stair of 3 stitches every 2nd row, at stitches of 4 mm and rows of 2: what is bound
// off first lies flat, 12 mm; from its end to that of the next it is 12 mm across and 4
// up, and 4 mm are left upright.
func TestSeamOfAStairByHand(t *testing.T) {
	st, rw := gauge.NewDensity(25, 10), gauge.NewDensity(50, 10)
	steps := []Step{{1, KindBindOff, 3}, {3, KindBindOff, 3}}
	knittest.Near(t, "seam", SewnCm(steps, 1, 4, 0, st, rw), 1.2+1.2649110640673518+0.4, 1e-12)
	knittest.Near(t, "to a middle 12 mm beyond", SewnCm(steps, 1, 4, 1.2, st, rw), 1.2+2*1.2649110640673518, 1e-12)
	knittest.Near(t, "steps", LengthCm(steps, 1, 4, st, rw), 1.2+0.4+1.2+0.4, 1e-12)
	// The same the other way: cast on where the edge begins, and its last lies beside the next row.
	out := []Step{{1, KindCastOn, 3}, {3, KindCastOn, 3}}
	knittest.Near(t, "seam that gains", SewnCm(out, 1, 4, 0, st, rw), 2*1.2649110640673518, 1e-12)
}
