package armhole

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Shoulders begin with a right-side row, as PlanNeckline has them: an armhole's rows are even,
// whatever is asked, and those nearest to it; of a saddle with half of its strap.
func TestArmholesEndAfterAWrongSideRow(t *testing.T) {
	for rows := 50; rows <= 70; rows++ {
		for _, style := range []Style{StyleSetIn, StyleSaddle, StyleDrop, StyleModifiedDrop} {
			in := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Style: style, ChestCm: new(92.0), ArmholeDepthRows: &rows}
			if !style.straight() {
				in.AcrossBackCm, in.UpperArmCm = new(36.0), new(28.5)
			}
			byCm := in
			byCm.ArmholeDepthRows, byCm.ArmholeDepthCm = nil, new(float64(rows)/3+0.1)
			for _, in := range []Input{in, byCm} {
				out := mustPlan(t, in)
				high := float64(out.Back.HeightRows)
				if out.Strap != nil {
					high += out.Strap.WidthCm / 2 * 3
				}
				if off := high - float64(rows); out.Back.HeightRows%2 != 0 || out.Front.HeightRows%2 != 0 || off < -1.31 || off > 1.31 {
					t.Errorf("%d rows, style %d: %d rows of the back and %d of the front", rows, style, out.Back.HeightRows, out.Front.HeightRows)
				}
			}
		}
	}
}

// The front has a width of its own: 34 cm are 74.8 stitches, of which 75 leave both edges of 107
// alike; its steps add up to what each edge loses, in right-side rows.
func TestAcrossTheFront(t *testing.T) {
	in := pullover()
	in.AcrossFrontCm = new(34.0)
	out := mustPlan(t, in)
	if out.Front.EndStitches != 75 || out.Back.EndStitches != 79 {
		t.Errorf("%d of the front, %d of the back", out.Front.EndStitches, out.Back.EndStitches)
	}
	for _, p := range []Piece{out.Front, out.Back} {
		lost := 0
		for _, s := range p.Steps {
			if lost += s.Stitches; s.RowNumber%2 == 0 || !s.BoundOff && s.Stitches != 1 {
				t.Errorf("%+v", s)
			}
		}
		if 2*lost != p.StartStitches-p.EndStitches {
			t.Errorf("%d at each edge of %d to %d", lost, p.StartStitches, p.EndStitches)
		}
	}
	in.AcrossFrontStitches = new(75)
	_, err := Plan(in)
	knittest.WantViolations(t, err, "across_front_cm CONTRADICTORY", "across_front_stitches CONTRADICTORY")
}
