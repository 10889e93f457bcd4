package armhole

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// styled are bodies of all sizes in the styles that are not set in.
func styled() []Input {
	var list []Input
	for _, g := range [][2]float64{{22, 30}, {18, 24}, {28, 36}, {13, 18}, {24, 40}} {
		for chest := 50.0; chest <= 146; chest += 3 * knittestStep() {
			for i, style := range []Style{StyleDrop, StyleModifiedDrop, StyleModifiedDrop, StyleSaddle, StyleSaddle} {
				in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Style: style, ChestCm: &chest,
					ArmholeDepthCm: new(8 + chest*0.14), WithOutline: i%2 == 0, DisplayUnit: measure.DisplayUnit(i % 3)}
				switch i {
				case 2:
					in.AcrossBackCm, in.UpperArmCm = new(chest*0.43), new(chest*0.33)
				case 3:
					in.AcrossBackCm, in.UpperArmCm = new(chest*0.4), new(chest*0.31)
				case 4:
					in.AcrossBackCm, in.UpperArmCm, in.CapTopCm, in.NeckCm = new(chest*0.38), new(chest*0.34), new(5.0), new(chest*0.16)
				}
				if int(chest)%3 == 0 && i != 4 {
					in.SleeveRule = &gauge.CountRule{Multiple: new(2), Remainder: new(1)}
				}
				list = append(list, in)
			}
		}
	}
	return list
}

// Every piece of every style is knit and its fabric measured: straight sleeves with their
// even rows, caps with their straps.
func TestStylesAreKnit(t *testing.T) {
	planned := map[Style]int{}
	for _, in := range styled() {
		out, err := Plan(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		planned[in.Style]++
		knittest.CheckFinite(t, out)
		around := knitStyled(t, in, out.Back, 0) + knitStyled(t, in, out.Front, 0)
		strap := 0
		if out.Strap != nil {
			strap = out.Strap.Rows
		}
		long := 2 * knitStyled(t, in, out.Cap, strap)
		knittest.Near(t, "armhole", out.ArmholeEdgeCm, around, 1e-9)
		knittest.Near(t, "sleeve", out.CapEdgeCm, long, 1e-9)
		if more := (long/around - 1) * 100; math.Abs(more-out.CapExcessPercent) > 1e-6 || more < -1e-9 || more > 5+1e-9 {
			t.Fatalf("%+v: %v %% longer, %v said", in, more, out.CapExcessPercent)
		}
		if r := in.SleeveRule; r != nil && out.Cap.StartStitches%2 != 1 {
			t.Fatalf("%d stitches", out.Cap.StartStitches)
		}
		checkStrap(t, in, out)
		for _, l := range append(out.Directions(), out.Summary()) {
			if m := odd.FindString(l); m != "" {
				t.Errorf("%q: %q", m, l)
			}
		}
		if out.Outline != nil {
			outlinetest.CheckFrame(t, out.Outline)
		}
		if t.Failed() {
			t.Fatalf("%+v\n%s\n%s", in, out.Summary(), strings.Join(out.Directions(), "\n"))
		}
	}
	t.Log(planned)
	for style, least := range map[Style]int{StyleDrop: 80, StyleModifiedDrop: 160, StyleSaddle: 150} {
		if planned[style] < least/knittest.Sweep(1, 7) {
			t.Errorf("style %d: %d planned", style, planned[style])
		}
	}
}

// knitStyled knits a piece, and for a strap its rows, and measures the seam's line on the fabric.
func knitStyled(t *testing.T, in Input, p Piece, strap int) float64 {
	t.Helper()
	m := stitch.NewMachine(stitch.Flat)
	f, err := m.Record()
	if err != nil {
		t.Fatal(err)
	}
	if err := m.CastOn(p.StartStitches); err != nil {
		t.Fatal(err)
	}
	next, last := 0, p.HeightRows+strap
	if n := len(p.Rows); n > 0 {
		last = max(last, p.Rows[n-1].RowNumber)
	}
	for row := 1; row <= last; row++ {
		work := knittest.PlainRow(m)
		if next < len(p.Rows) && p.Rows[next].RowNumber == row {
			work = p.Rows[next].Instruction.Row
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%+v: row %d, %q: %v", in, row, work.Text(), err)
		}
	}
	left := 0
	if strap > 0 || in.Style != StyleSaddle && last == p.HeightRows {
		left = p.EndStitches // on the needle, for the neck or the shoulders
	}
	if in.Style == StyleSaddle && strap == 0 {
		left = p.EndStitches
	}
	if m.StitchCount() != left {
		t.Fatalf("%+v: %d stitches are left, not %d", in, m.StitchCount(), left)
	}
	st, rw := 10/in.Gauge.Stitches, 10/in.Gauge.Rows
	shapes := p.EndStitches < p.StartStitches
	over, from := 0.0, 1
	if shapes {
		from = 2
	}
	right, length := f.Selvedge(stitch.RightHand, 1, p.HeightRows), 0.0
	other := f.Selvedge(stitch.LeftHand, from, p.HeightRows)
	if p.HeightRows > 0 {
		length = (right.SewnCm(st, rw, over) + other.SewnCm(st, rw, over)) / 2
	}
	if in.Style.straight() && len(p.Rows) == 1 { // the sleeve: half of what is bound off
		length += float64(p.EndStitches) / 2 * st
	}
	return length
}

// checkStrap: a saddle's strap is as long as the shoulder to half a row, the shoulders are
// lowered by half of its width.
func checkStrap(t *testing.T, in Input, out Armhole) {
	t.Helper()
	if in.Style != StyleSaddle {
		if out.Strap != nil {
			t.Errorf("%+v", out.Strap)
		}
		return
	}
	row := 10 / in.Gauge.Rows
	if s := out.Strap; math.Abs(s.LengthCm-s.ShoulderCm) > row/2+1e-6 || s.Stitches != out.Cap.EndStitches ||
		math.Abs(out.Back.HeightCm+s.WidthCm/2-*in.ArmholeDepthCm) > row+1e-6 {
		t.Errorf("%+v, back %v", s, out.Back.HeightCm)
	}
}

// Counts by hand at 20 stitches and 30 rows: (90 + 10)/2 cm are 100 stitches; 20 cm are 60
// rows, and twice 20 cm are 80 stitches. A modified drop binds off a tenth, 10 stitches: 5 cm,
// which are 15 rows of the sleeve. A saddle of 3 inches, 15 stitches, 16 with the even sleeve:
// 8 cm, of which 4, 12 rows, go off the back; across 36 cm 72 stitches, a neck of 24, shoulders
// of 24 stitches, 12 cm, 36 rows.
func TestStylesByHand(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, Style: StyleDrop, ChestCm: new(90.0), ChestEaseCm: new(10.0),
		ArmholeDepthCm: new(20.0)}
	if out := mustPlan(t, in); out.Back.StartStitches != 100 || out.Back.EndStitches != 100 || out.Back.HeightRows != 60 ||
		out.Cap.StartStitches != 80 || out.Cap.HeightRows != 0 || out.UnderarmStitches != 0 || out.ArmholeEdgeCm != 40 {
		t.Errorf("drop: %+v", out)
	}
	in.Style = StyleModifiedDrop
	if out := mustPlan(t, in); out.Back.EndStitches != 80 || out.UnderarmStitches != 10 ||
		out.Cap.StartStitches != 80 || out.Cap.HeightRows != 15 {
		t.Errorf("modified drop: %+v", out)
	}
	in.Style, in.AcrossBackCm, in.SleeveStitches = StyleSaddle, new(36.0), new(70)
	if out := mustPlan(t, in); out.Back.HeightRows != 48 ||
		*out.Strap != (Strap{Stitches: 16, WidthCm: 8, Rows: 36, LengthCm: 12, ShoulderCm: 12,
			ShoulderStitches: 24, BackNeckStitches: 24, FrontNeckStitches: 24}) {
		t.Errorf("saddle: %+v, %+v", out.Back, out.Strap)
	}
	// Published: 26 cm of armhole, 12 stitches to 10 cm, 62 stitches of sleeve.
	in = Input{Gauge: &gauge.Gauge{Stitches: 12, Rows: 36}, Style: StyleDrop, BackStitches: new(64), ArmholeDepthCm: new(26.0),
		SleeveStitches: new(62)}
	if _, err := Plan(in); err == nil || !strings.Contains(err.Error(), "from 63 to 65 stitches are") {
		t.Errorf("52 cm are 62.4 stitches, and the book's 62 a little less: %v", err)
	}
}

// A tenth of the width, 3 inches at most: at 20 stitches a baby's 25 cm of back are 50 stitches,
// and 40 are left across, 20 cm, where 2 inches at each edge left 15; 80 cm are 160, and 3
// inches 15.
func TestModifiedDropGoesWithTheWidth(t *testing.T) {
	for _, c := range []struct {
		chest    float64
		underarm int
	}{{45, 5}, {95, 10}, {155, 15}} {
		in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, Style: StyleModifiedDrop, ChestCm: &c.chest, ArmholeDepthCm: new(20.0)}
		if out := mustPlan(t, in); out.UnderarmStitches != c.underarm {
			t.Errorf("chest %v: %d", c.chest, out.UnderarmStitches)
		}
	}
}

// Where fewer are left across the front, the shoulders are alike still and the strap fits
// both: the neck of the front is narrower. One that leaves no neck is refused.
func TestStrapFitsBothShoulders(t *testing.T) {
	in := pullover()
	in.Style, in.NeckStitches, in.AcrossFrontStitches = StyleSaddle, new(27), new(75) // of 79, shoulders of 26
	if s := mustPlan(t, in).Strap; s.ShoulderStitches != 26 || s.BackNeckStitches != 27 || s.FrontNeckStitches != 23 {
		t.Errorf("%+v", s)
	}
	in.NeckStitches = new(5) // shoulders of 37, of which the front's 75 leave one stitch
	if s := mustPlan(t, in).Strap; s.FrontNeckStitches != 1 {
		t.Errorf("%+v", s)
	}
	in.NeckStitches = new(3)
	_, err := Plan(in)
	knittest.WantViolations(t, err, "across_front_stitches INFEASIBLE")
}

// However far off a measure is, the refusal says what to move and by how much, and that does.
func TestFarOffIsTold(t *testing.T) {
	for _, arm := range []float64{43, 45, 50, 60, 90} {
		in := pullover()
		in.UpperArmCm = &arm
		_, err := Plan(in)
		if err == nil || !strings.Contains(err.Error(), "a sleeve of ") || !strings.Contains(err.Error(), " narrower)") {
			t.Fatalf("%v cm: %v", arm, err)
		}
		s, _ := settledOf(in)
		moved, _ := s.moved(s.moves()[0])
		in.UpperArmCm, in.SleeveStitches = nil, &moved.sleeve
		mustPlan(t, in)
	}
}
