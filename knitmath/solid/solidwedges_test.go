package solid

import (
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/shortrow"
)

// checkWedges knits all wedges one after the other and compares the rows under every stitch with
// what is said, and all stitches together with the surface.
func checkWedges(t *testing.T, in SolidInput, out Solid, area float64) {
	t.Helper()
	m := knittest.CastOn(t, out.StartStitches, false)
	for _, run := range out.Sequence {
		for range run.Times {
			for _, r := range out.Wedges[run.WedgeNumber-1].Rows {
				if m.Side() != r.Side {
					t.Fatalf("row %d is a %v row, the needle shows %v", r.RowNumber, r.Side, m.Side())
				}
				if err := m.Work(r.Instruction.Row); err != nil {
					t.Fatalf("%+v: row %d, %q: %v", in, r.RowNumber, r.Instruction.Row.Text(), err)
				}
			}
		}
	}
	total, most := 0, 0
	for _, rows := range m.Heights() {
		total, most = total+rows, max(most, rows)
	}
	if total != out.TotalStitches || most != out.GreatestRows || m.StitchCount() != out.EndStitches {
		t.Fatalf("%+v: %d stitches, %d said; %d rows, %d said", in, total, out.TotalStitches, most, out.GreatestRows)
	}
	// Round the widest place, under the middle of a stitch, lie the rows that are wanted, to 3 % or a
	// pair. A cone is widest at the end of a stitch.
	round := 0.0
	for _, wanted := range out.of.wanted {
		round = max(round, wanted)
	}
	if in.Form != FormCone {
		knittest.Near(t, "what is wanted round it", round, math.Pi**in.AcrossCm*in.Gauge.Rows/10, 0.01*round)
	}
	if off := math.Abs(float64(most) - round); off > max(0.03*round, 2) {
		t.Fatalf("%+v: %d rows round it, %v wanted", in, most, round)
	}
	wanted := area * in.Gauge.Stitches * in.Gauge.Rows / 100
	if off := math.Abs(float64(total) - wanted); off > max(0.0102*wanted, float64(most)) { // curves are pieces of straight lines
		t.Fatalf("%+v: %d stitches of wedges, the surface has %v", in, total, wanted)
	}
}

// Solids of all forms are knit in wedges, by all ways of turning, and have the surface they should.
func TestSolidsOfWedges(t *testing.T) {
	planned, refused, beyond, worst := 0, 0, 0, 0.0
	for i, in := range solids(float64(knittest.Sweep(3, 7))) {
		if *in.AcrossCm < 4 {
			continue
		}
		in.Way, in.Lines, in.WedgeCount = WayWedges, 0, nil
		in.TurnMethod = shortrow.TurnMethod(i % 4)
		out, err := PlanSolid(in)
		if err != nil {
			refused++
			if *in.AcrossCm > 6 {
				t.Errorf("%v cm: %v", *in.AcrossCm, err)
			}
			continue
		}
		planned++
		checkWedges(t, in, out, surface(in))
		if math.Abs(float64(out.TotalStitches)/out.WantedTotalStitches-1) > 0.01 {
			beyond++
		}
		knittest.CheckFinite(t, out)
		outlinetest.CheckFrame(t, out.Outline)
		worst = max(worst, out.GreatestDepartureRows/float64(out.WedgeCount))
		for _, line := range append(out.Directions(), out.Summary()) {
			end := "."
			if strings.HasPrefix(line, "Wedge ") {
				end = ":"
			}
			checkLine(t, line, end)
		}
	}
	if planned < knittest.Sweep(900, 250) || refused > planned/10 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
	t.Logf("planned %d, refused %d; %d beyond 1 %% of the surface; at most %.2f rows a wedge from it", planned, refused, beyond, worst)
}

// A published ball of short rows is of 8 wedges on 16 stitches, each of 6 rows, in garter stitch
// (read in a digest): 48 rows round 16 stitches, of 2 rows a stitch. A ball as large has our 8
// wedges on 16 stitches and as many rows round it, two more or less for each wedge.
func TestBallOfWedgesAsPublished(t *testing.T) {
	across := 16 * 2 / math.Pi / 2 // at 2 stitches to the cm half a turn is 16
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}, Form: FormSphere, AcrossCm: &across, Way: WayWedges})
	if err != nil || out.StartStitches != 16 || out.WedgeCount != 8 {
		t.Fatalf("%d wedges on %d stitches, %v", out.WedgeCount, out.StartStitches, err)
	}
	if rows := out.GreatestRows; rows < 48 || rows > 64 {
		t.Errorf("%d rows round it", rows)
	}
}

// The stitches of a ball are those of its surface as gonum integrates it from the circumferences
// along half a turn.
func TestWedgesByQuadrature(t *testing.T) {
	across := 20.0
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across, Way: WayWedges})
	if err != nil {
		t.Fatal(err)
	}
	area := quad.Fixed(func(s float64) float64 { return 2 * math.Pi * 10 * math.Sin(s/10) }, 0, 10*math.Pi, 40, nil, 0)
	knittest.Near(t, "stitches", float64(out.TotalStitches), area*2*2.8, 0.01*area*2*2.8)
}

// Refusals of wedges, by field and reason.
func TestWedgeRefusals(t *testing.T) {
	g, cm, high, tiny := &gauge.Gauge{Stitches: 20, Rows: 28}, 8.0, 12.0, 0.8
	for _, c := range []struct {
		in   SolidInput
		want []string
	}{
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, Way: WayWedges, WedgeCount: knittest.Ptr(4)},
			[]string{"wedge_count INFEASIBLE", "gauge.rows INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, Way: WayWedges, Lines: LinesStacked, PickedUp: true},
			[]string{"picked_up CONTRADICTORY", "lines CONTRADICTORY"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, TurnMethod: shortrow.TurnMethodGerman}, []string{"turn_method CONTRADICTORY"}},
		{SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &tiny, Way: WayWedges}, []string{"across_cm INFEASIBLE", "gauge.stitches INFEASIBLE"}},
		{SolidInput{Gauge: g, Form: FormCylinder, AcrossCm: &cm, HeightCm: &high, BaseOpeningCm: &cm, TopOpeningCm: &cm, Way: WayWedges},
			[]string{"across_cm INFEASIBLE", "height_cm INFEASIBLE", "base_opening_cm INFEASIBLE", "top_opening_cm INFEASIBLE", "way INFEASIBLE"}},
		{SolidInput{Gauge: &gauge.Gauge{Stitches: 2, Rows: 40}, Form: FormSphere, AcrossCm: &high, Way: WayWedges},
			[]string{"gauge.rows INFEASIBLE"}},
	} {
		_, err := PlanSolid(c.in)
		knittest.WantViolations(t, err, c.want...)
	}
}

func BenchmarkPlanSolidOfWedges(b *testing.B) {
	across := 12.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across, Way: WayWedges}
	for b.Loop() {
		if _, err := PlanSolid(in); err != nil {
			b.Fatal(err)
		}
	}
}

// One wedge is not repeated.
func TestOneWedgeIsNotRepeated(t *testing.T) {
	for wedges := 1; wedges <= 2; wedges++ {
		out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 6}, Form: FormSphere, AcrossCm: new(3.0), Way: WayWedges,
			Start: StartTop, TurnMethod: shortrow.TurnMethodYarnOver, WedgeCount: &wedges})
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		if text := strings.Join(out.Directions(), "\n"); strings.Contains(text, "Repeat") != (wedges > 1) {
			t.Errorf("%d: %s", wedges, text)
		}
	}
}
