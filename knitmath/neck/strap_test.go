package neck

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The strap of a saddle, by hand: 30 stitches bound off behind, 17 of each strap taken as they
// are, and in front what there would be without straps.
func TestStrapsAreCounted(t *testing.T) {
	in := Input{Gauge: ordinary(), WidthStitches: new(80), NeckStitches: new(30), FrontDepthRows: new(16), BackDepthRows: new(0),
		ShoulderSlopeRows: new(0)}
	plain, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	in.StrapStitches = new(17)
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	places := []SectionPlace{SectionPlaceBack, SectionPlaceLeftStrap, SectionPlaceLeftFront, SectionPlaceFrontCentre,
		SectionPlaceRightFront, SectionPlaceRightStrap}
	for i, s := range out.Sections {
		strap := s.Place == SectionPlaceLeftStrap || s.Place == SectionPlaceRightStrap
		if s.Place != places[i] || strap && (s.Stitches != 17 || s.LiveStitches != 17) {
			t.Errorf("section %d: %+v", i+1, s)
		}
	}
	if out.PickedUpStitches != plain.PickedUpStitches+34 {
		t.Errorf("%d stitches around, and %d without straps", out.PickedUpStitches, plain.PickedUpStitches)
	}
	knittest.Near(t, "opening", out.OpeningCm, plain.OpeningCm+340/22.0, 1e-9)
}

// What nobody says of a saddle's neck: no slope, no depth behind, half a strap less in front;
// and the same front, back and shoulders otherwise.
func TestDefaultsBesideStraps(t *testing.T) {
	in := Input{Gauge: ordinary(), WidthStitches: new(80), NeckStitches: new(34), StrapStitches: new(13)}
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	// 7.5 cm less half of 13 stitches, 2.95 cm, are 13.6 rows: the 12 below them.
	if out.SlopeRows != 0 || out.Back.DepthRows != 0 || out.Front.DepthRows != 12 {
		t.Errorf("a slope of %d rows, %d behind, %d in front", out.SlopeRows, out.Back.DepthRows, out.Front.DepthRows)
	}
	if len(out.Notices) > 0 || !*out.GoesOverHead {
		t.Error(out.Notices)
	}
	in.ShoulderMethod = ShoulderMethodShortRows
	_, err = PlanNeckline(in)
	knittest.WantViolations(t, err, "shoulder_method CONTRADICTORY")
}

// Fronts may have armholes of their own: both pieces are as if each were asked for alone.
func TestArmholesOfTheFront(t *testing.T) {
	back := []ArmholeStep{{1, 4, true}, {3, 2, true}, {5, 1, false}, {7, 1, false}}
	front := []ArmholeStep{{1, 4, true}, {3, 3, true}, {5, 2, true}, {7, 1, false}, {9, 1, false}, {11, 1, false}}
	ask := func(back, front []ArmholeStep) Neckline {
		out, err := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(78), Shape: ShapeV, FrontDepthRows: new(54), BackDepthRows: new(54),
			ArmholeRows: new(56), ArmholeSteps: back, FrontArmholeSteps: front})
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	both, backs, fronts := ask(back, front), ask(back, nil), ask(front, nil)
	if both.Front.StartStitches == both.Back.StartStitches {
		t.Errorf("both pieces begin on %d stitches", both.Front.StartStitches)
	}
	same := func(name string, a, b Piece) {
		if a.StartStitches != b.StartStitches || len(a.Rows) != len(b.Rows) {
			t.Fatalf("%s: %d stitches and %d rows, alone %d and %d", name, a.StartStitches, len(a.Rows), b.StartStitches, len(b.Rows))
		}
		for i := range a.Rows {
			if a.Rows[i].Instruction.Row.Text() != b.Rows[i].Instruction.Row.Text() {
				t.Errorf("%s, row %d: %s, alone %s", name, a.Rows[i].RowNumber, a.Rows[i].Instruction.Row.Text(), b.Rows[i].Instruction.Row.Text())
			}
		}
	}
	same("front", both.Front, fronts.Front)
	same("back", both.Back, backs.Back)
	_, err := PlanNeckline(Input{Gauge: ordinary(), WidthStitches: new(78), FrontArmholeSteps: front})
	knittest.WantViolations(t, err, "front_armhole_steps CONTRADICTORY")
}

// Between straps the middle is held, as package armhole has it, unless somebody says; and
// only where an armhole is shaped beside the neck do the directions say so.
func TestMiddleBetweenStrapsIsHeld(t *testing.T) {
	in := Input{Gauge: ordinary(), WidthStitches: new(80), NeckStitches: new(30), StrapStitches: new(17), ArmholeRows: new(56)}
	for centre, want := range map[Centre]int{CentreUnspecified: 30, CentreHeld: 30, CentreBoundOff: 0} {
		in.Centre = centre
		out, err := PlanNeckline(in)
		if err != nil || out.Sections[0].LiveStitches != want {
			t.Errorf("centre %d: %+v, %v", centre, out.Sections, err)
		}
		text := strings.Join(out.Directions(), " ")
		if strings.Contains(text, "shaped along with it") || !strings.Contains(text, "of the armholes;") {
			t.Error(text)
		}
	}
}
