package neck

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// pulloverArmhole is 58 rows deep and takes 107 stitches to 79: 7 and 3 bound off at each edge,
// and 4 decreases on right-side rows.
func pulloverArmhole() (rows *int, steps []ArmholeStep) {
	return new(58), []ArmholeStep{{1, 7, true}, {3, 3, true}, {5, 1, false}, {7, 1, false}, {9, 1, false}, {11, 1, false}}
}

// A V that begins beside the armhole is written on the stitches that are there. By hand: 60
// rows deep, its shoulders of 4 steps begin 6 rows below their end, so that row 1 is row 58 -
// 54 + 1 = 5 of the armhole: 4 decreases are to come, and 79 + 8 stitches on the needle. Row 1
// takes one of them at the armhole, and holds the middle stitch and the other 43.
func TestArmholeIsWorkedAlong(t *testing.T) {
	in := Input{Gauge: ordinary(), Shape: ShapeV, WidthStitches: new(79), NeckStitches: new(27), FrontDepthRows: new(60),
		ShoulderSlopeRows: new(8)}
	in.ArmholeRows, in.ArmholeSteps = pulloverArmhole()
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(out.Directions(), "\n")
	for _, want := range []string{
		"on 87 stitches: row 5 of the armholes, which are shaped along with it",
		"Row 1 (RS): k1, ssk, k40, place 1 st on hold, place 43 sts on hold: 42 stitches.",
		"Row 1 (RS, decrease row): k to last 3 sts, k2tog, k1. Repeat the decrease row every 2nd row twice more: 40 stitches.",
		"k1, ssk, k to last 3 sts, k2tog, k1",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
	if out.Front.StartStitches != 87 || out.Back.StartStitches != 79 || len(out.Notices) != 0 {
		t.Errorf("%d and %d stitches, %v", out.Front.StartStitches, out.Back.StartStitches, out.Notices)
	}
}

// A V that begins below the underarm has all of the armhole in its rows: 66 rows are 8 above
// the shoulders' beginning more than 58.
func TestArmholeAboveTheNecksFoot(t *testing.T) {
	in := Input{Gauge: ordinary(), Shape: ShapeV, WidthStitches: new(79), NeckStitches: new(27), FrontDepthRows: new(72),
		ShoulderSlopeRows: new(8)}
	in.ArmholeRows, in.ArmholeSteps = pulloverArmhole()
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Join(out.Directions(), "\n")
	for _, want := range []string{"on 107 stitches, 8 rows below the first of the armholes, which are shaped along with it",
		"Row 9 (RS): BO 7, ", "Row 10 (WS): BO 7, p to end"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
}

// A front may be wider or narrower than the back: the shoulders are alike, the neck is not.
func TestFrontOfAnotherWidth(t *testing.T) {
	in := Input{Gauge: ordinary(), WidthStitches: new(88), NeckStitches: new(30), FrontWidthStitches: new(92)}
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.Front.NeckStitches != 34 || out.Back.NeckStitches != 30 || out.ShoulderStitches != 29 || out.Front.StartStitches != 92 {
		t.Errorf("%+v", out)
	}
	if d := out.Directions()[0]; !strings.HasPrefix(d, "Work the back on 88 stitches and the front on 92, 29 for each shoulder") ||
		!strings.Contains(d, " and 30 of the back and 34 of the front for the neck. ") {
		t.Error(d)
	}
	if s := out.Summary(); !strings.HasPrefix(s, "A round neck of 30 stitches (13.6 cm), of 34 in front, between shoulders of 29") {
		t.Error(s)
	}
	in.FrontWidthStitches, in.FrontWidthCm = nil, new(41.8)
	if out, err = PlanNeckline(in); err != nil || out.Front.StartStitches != 92 {
		t.Errorf("%d stitches, %v", out.Front.StartStitches, err)
	}
}

func TestArmholeFaults(t *testing.T) {
	for _, c := range []struct {
		change func(in *Input)
		want   []string
	}{
		{func(in *Input) { in.ArmholeRows = new(57) }, []string{"armhole_rows INFEASIBLE"}},
		{func(in *Input) { in.ArmholeRows = nil }, []string{"armhole_steps CONTRADICTORY"}},
		{func(in *Input) { in.ArmholeSteps[3].RowNumber = 6 }, []string{"armhole_steps[3].row_number INFEASIBLE"}},
		{func(in *Input) { in.ArmholeSteps[3].RowNumber = 5 }, []string{"armhole_steps[3].row_number INFEASIBLE"}},
		{func(in *Input) { in.ArmholeSteps[5].RowNumber = 59 }, []string{"armhole_steps[5].row_number INFEASIBLE", "armhole_rows INFEASIBLE"}},
		{func(in *Input) { in.ArmholeSteps[3].Stitches = 2 }, []string{"armhole_steps[3].stitches INFEASIBLE"}},
		{func(in *Input) { in.ArmholeSteps = make([]ArmholeStep, 71) }, []string{"armhole_steps TOO_MANY"}},
		{func(in *Input) { in.FrontWidthStitches = new(30) }, []string{"front_width_stitches INFEASIBLE"}},
		{func(in *Input) { in.FrontWidthStitches, in.FrontWidthCm = new(90), new(40.0) },
			[]string{"front_width_stitches CONTRADICTORY", "front_width_cm CONTRADICTORY"}},
		{func(in *Input) { // a shoulder of 3 and both decreases in one row
			in.WidthStitches, in.NeckStitches, in.ShoulderSlopeRows, in.FrontDepthRows = new(9), new(5), new(0), new(14)
			in.ArmholeRows, in.ArmholeSteps = new(8), []ArmholeStep{{3, 1, false}, {5, 1, false}, {7, 1, false}}
		}, []string{"armhole_steps INFEASIBLE", "armhole_steps INFEASIBLE"}}, // in front, and behind straight after the middle
	} {
		in := Input{Gauge: ordinary(), Shape: ShapeV, WidthStitches: new(79), NeckStitches: new(27), FrontDepthRows: new(60)}
		in.ArmholeRows, in.ArmholeSteps = pulloverArmhole()
		c.change(&in)
		_, err := PlanNeckline(in)
		knittest.WantViolations(t, err, c.want...)
	}
}
