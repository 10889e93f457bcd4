package shaping

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// The edges of every small taper, knit row by row, stand as far apart as the row
// is wide; an edge that is not shaped stays where it was.
func TestTaperOutlineIsKnit(t *testing.T) {
	for start := 6; start <= 12; start += 3 {
		for end := 6; end <= 20; end += knittest.Sweep(1, 3) {
			for rows := 1; rows <= 24; rows += 3 {
				for variant := range 3 * 2 * 3 {
					in := TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows, Edges: ShapedEdges(1 + variant%3),
						RowChoice: RowChoice(1 + variant/3%2), Spread: IntervalSpread(1 + variant/6), WithOutline: true}
					out, err := PlanTaper(in)
					if err != nil {
						continue
					}
					checkEdges(t, in, out)
				}
			}
		}
	}
}

func checkEdges(t *testing.T, in TaperInput, out Taper) {
	t.Helper()
	at := describeTaper(in)
	right, left := out.Outline.Lines[0], out.Outline.Lines[1]
	if right.Name != "right edge" || left.Name != "left edge" || len(right.Points) > 2*len(out.Rows)+2 {
		t.Fatalf("%s: lines %+v", at, out.Outline.Lines)
	}
	outlinetest.CheckFrame(t, out.Outline)
	outlinetest.CheckCorners(t, right)
	outlinetest.CheckCorners(t, left)
	counts := piece{in.StartStitches, out.HeightRows, in.Construction, in.FirstSide, out.Rows,
		func(s ShapingRow) *stitch.Instruction { return ofSide(s, out.RightSideRow, out.WrongSideRow) }}.knit(t, at)
	half := float64(in.StartStitches) / 2
	for row, count := range counts {
		r, l := outlinetest.At(right, t, float64(row)), outlinetest.At(left, t, float64(row))
		if math.Abs(r-l-float64(count)) > 1e-9 {
			t.Fatalf("%s: %v wide after row %d, knit %d", at, r-l, row, count)
		}
		if in.Edges == ShapedEdgesBeginning && l != -half || in.Edges == ShapedEdgesEnd && r != half ||
			in.Edges == ShapedEdgesBoth && math.Abs(r+l) > 1e-9 {
			t.Fatalf("%s: edges at %v and %v after row %d", at, l, r, row)
		}
	}
}

// Shaped in every row from the first to the last a taper is a trapezoid: four
// corners, and the area of the closed form, integrated over the outline. 40 to 60
// stitches in 10 rows at 20 and 30 to 10 cm: (20 + 30) / 2 * 10/3 cm2.
func TestTaperOutlineIsTrapezoid(t *testing.T) {
	rows := 10
	out, err := PlanTaper(TaperInput{StartStitches: 40, EndStitches: 60, HeightRows: &rows, Gauge: &gauge.Gauge{Stitches: 20, Rows: 30},
		RowChoice: RowChoiceAny, WithOutline: true})
	if err != nil {
		t.Fatal(err)
	}
	right, left := out.Outline.Lines[0].Points, out.Outline.Lines[1].Points
	if len(right) != 2 || len(left) != 2 || out.Outline.X.Unit != outline.UnitCm || out.Outline.Y.Unit != outline.UnitCm {
		t.Fatalf("%+v", out.Outline)
	}
	knittest.Near(t, "area", outlineArea(out.Outline), (20.0+30)/2*10/3, 1e-12)
	knittest.Near(t, "top right", right[1].X, 15, 1e-12)
	knittest.Near(t, "top left", left[1].X, -15, 1e-12)
	knittest.Near(t, "top", left[1].Y, 10.0/3, 1e-12)

	// A sleeve of 52 to 84 stitches in 100 rows: its area is within the greatest
	// departure of both edges on every row of that of the trapezoid.
	hundred := 100
	if out, err = PlanTaper(TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: &hundred, WithOutline: true}); err != nil {
		t.Fatal(err)
	}
	if got, want := outlineArea(out.Outline), (52.0+84)/2*100; math.Abs(got-want) > 2*out.GreatestDepartureStitches*100 || got == want {
		t.Errorf("area %v stitches, trapezoid %v", got, want)
	}
}

// outlineArea integrates the width between two edges over the height.
func outlineArea(o *outline.Outline) float64 {
	area := 0.0
	for i, l := range o.Lines[:2] {
		var x, y []float64
		for _, p := range l.Points {
			x, y = append(x, p.X), append(y, p.Y)
		}
		side := integrate.Trapezoidal(y, x)
		if i == 1 {
			side = -side
		}
		area += side
	}
	return area
}

// A shaped side by hand: 20 stitches, in by 2 on row 1, straight, out by 2 on row
// 7, 8 rows.
func TestShapedSideOutlineByHand(t *testing.T) {
	in := sideOf(20, [2]int{1, 18}, [2]int{6, 18}, [2]int{8, 20})
	in.WithOutline = true
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	want := []outline.Point{{X: 10, Y: 0}, {X: 9, Y: 1}, {X: 9, Y: 6}, {X: 10, Y: 7}, {X: 10, Y: 8}}
	for i, p := range out.Outline.Lines[0].Points {
		if i >= len(want) || p != want[i] {
			t.Errorf("right edge %v, want %v", out.Outline.Lines[0].Points, want)
			break
		}
	}
	for i, p := range out.Outline.Lines[1].Points {
		if i >= len(want) || p != (outline.Point{X: -want[i].X, Y: want[i].Y}) {
			t.Errorf("left edge %v", out.Outline.Lines[1].Points)
			break
		}
	}
	outlinetest.CheckFrame(t, out.Outline)
	in.WithOutline = false
	if out, err = PlanShapedSide(in); err != nil || out.Outline != nil {
		t.Errorf("an outline not asked for: %+v, %v", out.Outline, err)
	}
}

// The changes of every small row lie where the row, written out, works them.
func TestEvenSpacingOutline(t *testing.T) {
	planned := 0
	for start := 2; start <= 16; start++ {
		for _, op := range []stitch.Op{stitch.K2tog, stitch.CDD, stitch.M1L, stitch.KFB} {
			for k := 1; k <= start; k++ {
				for variant := range 2 * 3 * 2 {
					border := variant % 2
					in := EvenSpacingInput{StartStitches: start, EndStitches: start + k*op.Net(), Operation: op,
						Spread: GapSpread(1 + variant/2%3), EdgeStitches: &border, WithOutline: true}
					if variant/6 == 1 {
						in.Construction = stitch.InTheRound
						border = 0
					}
					out, err := PlanEvenSpacing(in)
					if err != nil {
						continue
					}
					planned++
					checkChanges(t, in, out)
				}
			}
		}
	}
	if planned < 1000 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

func checkChanges(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	var want []outline.Point
	at := 0
	for _, op := range knittest.OpWord(t, out.Instruction.Row, in.StartStitches) {
		if op == out.Operation {
			want = append(want, outline.Point{X: float64(at) + float64(op.Takes())/2, Y: 1})
		}
		at += op.Takes()
	}
	got := out.Outline.Lines[1].Points
	if len(got) != len(want) || len(got) != out.ChangeCount {
		t.Fatalf("%+v: changes at %v, want %v", in, got, want)
	}
	for i := range got {
		if got[i] != want[i] {
			t.Fatalf("%+v: changes at %v, want %v", in, got, want)
		}
	}
	outlinetest.CheckFrame(t, out.Outline)
	if row := out.Outline.Lines[0].Points; len(row) != 2 || row[0] != (outline.Point{}) ||
		row[1] != (outline.Point{X: float64(in.StartStitches), Y: 0}) {
		t.Fatalf("%+v: row %v", in, row)
	}
}

func BenchmarkTaperOutline(b *testing.B) {
	rows := 120
	in := TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WithOutline: true}
	for b.Loop() {
		if _, err := PlanTaper(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkEvenSpacingOutline(b *testing.B) {
	in := EvenSpacingInput{StartStitches: 300, EndStitches: 240, WithOutline: true}
	for b.Loop() {
		if _, err := PlanEvenSpacing(in); err != nil {
			b.Fatal(err)
		}
	}
}
