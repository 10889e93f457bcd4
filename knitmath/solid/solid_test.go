package solid

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Solid{}

// Solids of all forms, sizes, gauges and wedges are knit and have the surface they should.
func TestSolidsAreKnit(t *testing.T) {
	planned := 0
	for _, in := range solids(float64(knittest.Sweep(2, 9))) {
		out, err := PlanSolid(in)
		if err != nil {
			t.Errorf("%+v: %v", in, err)
			continue
		}
		planned++
		checkSolid(t, in, out, surface(in))
		knittest.CheckDirections(t, out.Summary(), out.Directions())
		knittest.CheckFinite(t, out)
		outlinetest.CheckFrame(t, out.Outline)
		if s := out.StuffBeforeRoundNumber; s == nil || *s < 2 || *s > out.TotalRounds {
			t.Fatalf("stuffed before round %v", s)
		}
		stuffed := 0
		for _, line := range append(out.Directions(), out.Summary()) {
			checkLine(t, line, ".")
			if strings.HasPrefix(line, "Stuff") {
				stuffed++
			}
		}
		small := out.AcrossCm < 3.17 && out.HeightCm < 5.71
		if stuffed != 1 || told(out.Notices, SmallPart) != small || !told(out.Notices, ToyCare) {
			t.Errorf("%+v: stuffed %d times, %v", in, stuffed, out.Notices)
		}
	}
	if planned < knittest.Sweep(1500, 300) {
		t.Errorf("planned %d solids: the sweep has shrunk", planned)
	}
}

// A profile through the corners of a cylinder and a cone is that cylinder and that cone, and
// one that begins elsewhere is closed by a flat base.
func TestProfilesAreForms(t *testing.T) {
	across, high := 9.0, 11.0
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	for form, points := range map[Form][]ProfilePoint{
		FormCylinder: {{0, 9}, {11, 9}}, FormCone: {{0, 0}, {0, 9}, {11, 0}},
	} {
		want, err := PlanSolid(SolidInput{Gauge: g, Form: form, AcrossCm: &across, HeightCm: &high})
		if err != nil {
			t.Fatal(err)
		}
		got, err := PlanSolid(SolidInput{Gauge: g, Form: FormProfile, Points: points})
		if err != nil {
			t.Fatal(err)
		}
		if !slices.Equal(want.of.counts, got.of.counts) || !slices.Equal(want.EdgeRoundNumbers, got.EdgeRoundNumbers) {
			t.Errorf("form %d: %v, %v; by points %v, %v", form, want.of.counts, want.EdgeRoundNumbers, got.of.counts, got.EdgeRoundNumbers)
		}
	}
}

// Openings: a ball open at the top ends where it is so wide, and is not stuffed shut; a
// cylinder open at both ends keeps its count.
func TestOpenings(t *testing.T) {
	across, high, hole := 8.0, 12.0, 3.0
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	ball, err := PlanSolid(SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &across, TopOpeningCm: &hole})
	if err != nil {
		t.Fatal(err)
	}
	if off := math.Abs(float64(ball.EndStitches) - math.Pi*6); off > 3+2.3 || ball.StuffBeforeRoundNumber != nil || len(ball.Notices) > 0 {
		t.Errorf("ends with %d, %v", ball.EndStitches, ball.Notices)
	}
	// The meridian stops where the sine is 3/8: pi less asin(3/8), of 4 cm.
	if want := 4 * (math.Pi - math.Asin(3.0/8)); math.Abs(ball.MeridianCm-want) > 1e-3 {
		t.Errorf("meridian %v, want %v", ball.MeridianCm, want)
	}
	tube, err := PlanSolid(SolidInput{Gauge: g, Form: FormCylinder, AcrossCm: &across, HeightCm: &high, BaseOpeningCm: &across,
		TopOpeningCm: &across})
	if err != nil || len(tube.Rounds) > 0 || tube.TotalRounds != 34 || !strings.HasPrefix(tube.Directions()[2], "Bind off") {
		t.Errorf("%+v, %v", tube, err)
	}
}

// Refusals, by field and reason.
func TestSolidRefusals(t *testing.T) {
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	cm, low, tiny := 8.0, 5.0, 0.2
	for _, c := range []struct {
		in   SolidInput
		want []string
	}{
		{SolidInput{}, []string{"gauge REQUIRED", "form REQUIRED"}},
		{SolidInput{Gauge: g, Form: FormSphere}, []string{"across_cm REQUIRED"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, HeightCm: &cm}, []string{"height_cm CONTRADICTORY"}},
		{SolidInput{Gauge: g, Form: FormCone, AcrossCm: &cm}, []string{"height_cm REQUIRED"}},
		{SolidInput{Gauge: g, Form: FormDrop, AcrossCm: &cm, HeightCm: &low}, []string{"height_cm INFEASIBLE", "across_cm INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &low, BaseOpeningCm: &cm},
			[]string{"across_cm INFEASIBLE", "base_opening_cm INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, TopOpeningCm: &cm, BaseOpeningCm: &cm},
			[]string{"across_cm INFEASIBLE", "base_opening_cm INFEASIBLE", "top_opening_cm INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &tiny}, []string{"across_cm INFEASIBLE", "gauge.rows INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormProfile, Points: []ProfilePoint{{5, 3}, {4, 3}}}, []string{"points[1].height_cm CONTRADICTORY"}},
		{SolidInput{Gauge: g, Form: FormProfile}, []string{"points REQUIRED"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, Points: []ProfilePoint{{0, 1}}}, []string{"points CONTRADICTORY"}},
		{SolidInput{Gauge: &gauge.Gauge{Stitches: 100, Rows: 5}, Form: FormSphere, AcrossCm: &cm}, []string{"gauge.rows INFEASIBLE"}},
	} {
		_, err := PlanSolid(c.in)
		knittest.WantViolations(t, err, c.want...)
	}
}

func FuzzPlanSolid(f *testing.F) {
	f.Add(20.0, 28.0, int32(1), 8.0, 10.0, 0.0, 0.0, 6, int32(1), int32(1), 18, 4.0)
	f.Add(20.0, 28.0, int32(6), 8.0, 10.0, 1.0, 0.5, 1, int32(2), int32(0), 8, 9.0)
	f.Add(33.0, 20.0, int32(5), 8.0, 20.0, 0.0, 3.0, 9, int32(0), int32(2), 0, 0.0)
	f.Fuzz(func(t *testing.T, stitches, rows float64, form int32, across, high, base, top float64, wedges int, start, way int32,
		limb int, from float64) {
		in := SolidInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, Form: Form(form), AcrossCm: &across, HeightCm: &high,
			BaseOpeningCm: &base, TopOpeningCm: &top, WedgeCount: &wedges, Start: Start(start), Way: Way(way), WithOutline: true}
		if limb != 0 {
			in.Limbs = []LimbInput{{limb, from, 30}, {limb, from, 150}}
		}
		switch in.Form {
		case FormSphere:
			in.HeightCm = nil
		case FormProfile:
			in.AcrossCm, in.HeightCm = nil, nil
			in.Points = []ProfilePoint{{0, across}, {high / 2, base}, {high / 2, top}, {high, across / 3}}
			in.BaseOpeningCm = nil
		}
		out, err := PlanSolid(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		for _, l := range out.Limbs {
			checkLimb(t, out, l)
		}
		count := out.StartStitches
		for _, r := range out.Rounds {
			if r.Instruction.StartStitches != count || r.Instruction.EndStitches > 2*count || 2*r.Instruction.EndStitches < count {
				t.Fatalf("round %d goes from %d to %d, %d were left", r.RoundNumber, r.Instruction.StartStitches, r.Instruction.EndStitches, count)
			}
			count = r.Instruction.EndStitches
		}
		if count != out.EndStitches {
			t.Fatalf("%d at the end, %d said", count, out.EndStitches)
		}
		out.Directions()
	})
}

func BenchmarkPlanSolid(b *testing.B) {
	across := 12.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across}
	for b.Loop() {
		if _, err := PlanSolid(in); err != nil {
			b.Fatal(err)
		}
	}
}
