package flat

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// What digests and derivations print, by gauge: growth a row, lean, rim.
func TestWorkedExamples(t *testing.T) {
	for _, row := range knittest.Table(t, "flat/worked_examples.csv") {
		over, cm, corners := knittest.Cell(t, row["over_cm"]), 24*2.54, 4
		in := Input{Gauge: &gauge.Gauge{Stitches: knittest.Cell(t, row["stitches"]), Rows: knittest.Cell(t, row["rows"]), OverCm: &over}}
		value := func(o Shape) float64 { return o.GrowthStitches }
		switch figure := row["figure"]; {
		case strings.HasSuffix(figure, "square"), strings.HasSuffix(figure, "hexagon"):
			in.Form, in.SideCm, in.CornerCount = FormPolygon, &cm, &corners
			if strings.HasSuffix(figure, "hexagon") {
				corners = 6
			}
		case strings.HasPrefix(figure, "lean"):
			in.Form, in.WidthCm, in.LengthCm = FormBiasStrip, &cm, &cm
			value = func(o Shape) float64 { return *o.LeanDegrees }
		default:
			in.Form, in.AcrossCm = FormDisc, &cm
			if strings.HasPrefix(figure, "rim") {
				value = func(o Shape) float64 { return o.WantedRimStitches }
			}
		}
		out, err := PlanFlatShape(in)
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		if got := value(out); math.Abs(got-knittest.Cell(t, row["expected"])) > knittest.Cell(t, row["tolerance"]) {
			t.Errorf("%s: %v, want %s", row["id"], got, row["expected"])
		}
	}
}

// Shawls by doubling keep 8, 16, 32 and so on to twice the round each, 16 from round 4 (read
// in a digest): as many stitches as a disc has there where a round wants 8/3 more, which is
// at 2.356 rounds to a stitch; half a round more or less is the digest's rounding.
func TestDoublingAsPublished(t *testing.T) {
	cm := 40.0
	out, err := PlanFlatShape(Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20 * 3 * math.Pi / 4}, Form: FormDisc, AcrossCm: &cm,
		Arrangement: ArrangementDoubling})
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range [][2]int{{4, 16}, {8, 32}, {16, 64}, {32, 128}} {
		if r := out.Rows[i]; r.RowNumber != want[0] || r.Instruction.EndStitches != want[1] {
			t.Errorf("round %d has %d, want %v", r.RowNumber, r.Instruction.EndStitches, want)
		}
	}
}

// A crescent of 13 stitches that gains 8 in every right-side row has 61 after 6 of them
// (read in a shawl designer's notes). That lies flat over 4 R radians.
func TestCrescentAsPublished(t *testing.T) {
	cm, turn, start, wedges := 20.0, 4*1.4*180/math.Pi, 13, 8
	out, err := PlanFlatShape(Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSector, AcrossCm: &cm, TurnDegrees: &turn,
		StartStitches: &start, WedgeCount: &wedges})
	if err != nil {
		t.Fatal(err)
	}
	for i := range 6 {
		r := out.Rows[i]
		if r.Instruction.EndStitches != 13+8*(i+1) || r.RowNumber != out.Rows[0].RowNumber+2*i {
			t.Errorf("row %d has %d stitches", r.RowNumber, r.Instruction.EndStitches)
		}
	}
	if r := out.Recipes; len(r) != 1 || r[0].Name != "8 stitches every right-side row" || r[0].Effect != EffectFlat {
		t.Errorf("%+v does not lie flat", r)
	}
}

// The rules of half discs and crescents are told of sectors that they are meant for, and where
// one comes to the same count as the plan that is said.
func TestRulesOfSectors(t *testing.T) {
	cm := 40.0
	for _, c := range []struct {
		turn float64
		want int
		says string
	}{{90, 0, "then every 2nd row"}, {180, 1, "4 stitches every right-side row leaves the rim 1.9 %"},
		{177, 1, "4 stitches every right-side row leaves"}, {186, 1, "4 stitches every right-side row comes to the same"},
		{330, 1, "8 stitches every"}} {
		out, err := PlanFlatShape(Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 32}, Form: FormSector, AcrossCm: &cm, TurnDegrees: &c.turn})
		if err != nil || len(out.Recipes) != c.want || !strings.Contains(out.Summary(), c.says) {
			t.Errorf("%v degrees: %v, %q, %v", c.turn, out.Recipes, out.Summary(), err)
		}
	}
}

// The rules of the trade at 20 stitches and 28 rows, worked by hand: 8 every 2nd round are 4
// a round, of 4.488 wanted, 10.87 % too few for a disc; for a square, which wants 5.714, 30 %.
func TestRulesOfTheTrade(t *testing.T) {
	cm, corners := 20.0, 4
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	for _, c := range []struct {
		in      Input
		percent float64
		cm      float64 // 2 pi 10 cm, or 4 sides of 20 cm
		effect  Effect
	}{
		{Input{Gauge: g, Form: FormDisc, AcrossCm: &cm}, -10.873, -0.10873 * 62.832, EffectCups},
		{Input{Gauge: g, Form: FormPolygon, SideCm: &cm, CornerCount: &corners}, -30, -0.3 * 80, EffectCups},
		{Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}, Form: FormPolygon, SideCm: &cm, CornerCount: &corners}, 0, 0, EffectFlat},
		{Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}, Form: FormDisc, AcrossCm: &cm}, 27.324, 0.27324 * 62.832, EffectRuffles},
	} {
		out, err := PlanFlatShape(c.in)
		if err != nil {
			t.Fatal(err)
		}
		r := out.Recipes[0]
		if math.Abs(r.DeparturePercent-c.percent) > 0.001 || math.Abs(r.DepartureCm-c.cm) > 0.01 || r.Effect != c.effect {
			t.Errorf("%+v, want %v %%, %v cm", r, c.percent, c.cm)
		}
	}
}
