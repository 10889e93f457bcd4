package handspun

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/yarn"
)

// givens reads "kc=5.5;kw=4.2" into numbers; a percentage loses its sign.
func givens(t *testing.T, s string) map[string]float64 {
	t.Helper()
	out := map[string]float64{}
	for part := range strings.SplitSeq(s, ";") {
		name, value, _ := strings.Cut(part, "=")
		out[name] = knittest.Cell(t, strings.TrimSuffix(value, "%"))
	}
	return out
}

// worked is a row of the published examples.
func worked(t *testing.T, id string) (in map[string]float64, want float64) {
	t.Helper()
	for _, row := range knittest.Table(t, "handspun/worked_examples.csv") {
		if row["id"] == id {
			return givens(t, row["inputs"]), knittest.Cell(t, row["expected"])
		}
	}
	t.Fatalf("no example %s", id)
	return nil, 0
}

// inTex is a count in tex.
func inTex(tex float64) *yarn.Count { return &yarn.Count{Number: &tex, System: yarn.CountSystemTex} }

func planOf(t *testing.T, in Input) Plan {
	t.Helper()
	out, err := PlanHandspun(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	return out
}

// An examination's two-ply of 16 Ne, "contraction 10 %": the examiner adds a tenth to the
// count, which is 1/11 of the length of the singles. 35.2 Ne each.
func TestPublishedResultantCount(t *testing.T) {
	in, single := worked(t, "gate_1992_3")
	out := planOf(t, Input{PlyContractionPercent: new(100 - 100/(1+in["contraction"]/100)), Plies: []Ply{{
		Count: &yarn.Count{Number: &single, System: yarn.CountSystemCotton}, Times: new(int(in["plies"]))}}})
	knittest.Near(t, "resultant Ne", 590.541247448/out.Tex, in["resultant_Ne"], 1e-9)
}

// The balanced ply by bisection on its condition, that the turns put in are those left, for
// any plies; and two thirds and three quarters for equal ones, with 0.6 to 0.75 for two.
func TestBalance(t *testing.T) {
	for _, singles := range [][]float64{{3, 3}, {3, 3, 3}, {2, 4}, {1, 2, 3, 4}, {5, 5, 5, 5, 5, 5, 5, 5}} {
		sum := 0.0
		for _, s := range singles {
			sum += s
		}
		lo, hi := 0.0, sum
		for range 200 {
			p, left := (lo+hi)/2, 0.0
			for _, s := range singles {
				left += s - p
			}
			if p < left {
				lo = p
			} else {
				hi = p
			}
		}
		knittest.Near(t, "balanced", balancedPly(sum, len(singles)).Likely, lo, 1e-12)
	}
	two := balancedPly(6, 2)
	knittest.Near(t, "two thirds", two.Likely/3, 2.0/3, 1e-12)
	knittest.Near(t, "from", two.Low/3, 0.6, 1e-12)
	knittest.Near(t, "to", two.High/3, 0.75, 1e-12)
	knittest.Near(t, "three quarters", balancedPly(9, 3).Likely/3, 0.75, 1e-12)
}

// The yarns whose gauges made the range of tightness fit them, and not their neighbours'.
func TestUsualGauges(t *testing.T) {
	for _, c := range []struct {
		metres, stitches float64
		want             Fit
	}{
		{200, 18, FitFits}, {230, 22, FitFits}, {400, 30, FitFits}, {400, 31, FitNearly},
		{200, 24, FitTooThick}, {200, 15, FitTooThin}, {400, 22, FitTooThin}, {200, 22, FitNearly}, {200, 17, FitNearly},
	} {
		out := planOf(t, Input{Plies: []Ply{{Count: &yarn.Count{Number: &c.metres, System: yarn.CountSystemMetresPer100G}}},
			Gauge: &gauge.Gauge{Stitches: c.stitches, Rows: c.stitches}})
		if out.Fits != c.want {
			t.Errorf("%v m to 100 g at %v: %v (%+v), want %v", c.metres, c.stitches, out.Fits, out.GaugeStitches, c.want)
		}
		// What is said to fit does.
		f := out.FittingMetresPer100G
		for _, m := range []float64{f.Low * 1.0001, f.Likely, f.High * 0.9999} {
			if got := fit(usualGauge(1e5/m), c.stitches); got != FitFits {
				t.Errorf("%v m to 100 g are said to fit %v stitches: %v", m, c.stitches, got)
			}
		}
	}
}

// By hand: two singles of 180 tex with 3 turns to the cm, plied with a tenth taken up: 400
// tex, 250 m to 100 g. 1000 m are 400 g and 1111.11 m of each single, 200 g of it: 5 bobbins
// of 50 g each for them and 8 for the yarn. Fibre: 400/(0.9*0.95*0.6) = 779.73 g.
// Wheel: 57/6 = 9.5 turns, 9.025 after slip: 3*30/9.025 = 9.972 treadles a draft.
func TestTwoPlyByHand(t *testing.T) {
	in := Input{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}, PlyContractionPercent: new(10.0),
		WantedM: new(1000.0), BobbinG: new(50.0), Losses: &Losses{ScouringPercent: 40},
		Wheel: &Wheel{DriveWheelCm: new(57.0), WhorlCm: new(6.0)}}
	out := planOf(t, in)
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"tex", out.Tex, 400}, {"metres", out.MetresPer100G, 250}, {"ply", out.Twist.PerCm, 2}, {"left", *out.Plies[0].LeftPerCm, 1},
		{"grams", *out.YarnG, 400}, {"singles", *out.Plies[0].LengthM, 2 * 1000 / 0.9}, {"their grams", *out.Plies[0].MassG, 400},
		{"fibre", out.FibreG.Likely, 400 / (0.9 * 0.95 * 0.6)}, {"fibre, low", out.FibreG.Low, 400 / (0.95 * 0.975 * 0.8)},
		{"fibre, high", out.FibreG.High, 400 / (0.85 * 0.925 * 0.4)}, {"ratio", *out.WheelRatio, 9.5},
		{"treadles", *out.Plies[0].TreadlesPerDraft, 90 / 9.025}, {"plying", *out.TreadlesPerDraft, 60 / 9.025},
		// 2222.2 m at 9.972 and 1000 m at 6.648 to 30 cm: 96,029 treadles, 60 to the minute.
		{"hours", *out.Hours, (2000/0.9/0.3*90/9.025 + 1000/0.3*60/9.025) / 3600},
	} {
		knittest.Near(t, c.what, c.got, c.want, 1e-12)
	}
	if out.Twist.Direction != yarn.TwistDirectionS || *out.Plies[0].BobbinCount != 8 || *out.BobbinCount != 8 {
		t.Errorf("%v, %d and %d bobbins", out.Twist.Direction, *out.Plies[0].BobbinCount, *out.BobbinCount)
	}
	in.WantedM, in.WantedG = nil, new(400.0)
	knittest.Near(t, "by grams", *planOf(t, in).YarnM, 1000, 1e-12)
	if got, want := out.Summary(), "A 2-ply of 250 m to 100 g (R 400 tex), plied S with 2 turns to the cm. For 1000 m, 400 g, "+
		"begin with 780 g of fibre (540 g to 1272 g)."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Plies spun against one another: one gains what the other loses, and all turns together
// decide which way it is plied.
func TestMixedDirections(t *testing.T) {
	out := planOf(
		t,
		Input{Plies: []Ply{{Count: inTex(100), TwistPerCm: new(2.0)},
			{Count: inTex(100), TwistPerCm: new(5.0), Direction: yarn.TwistDirectionS}}},
	)
	if out.Twist.Direction != yarn.TwistDirectionZ {
		t.Errorf("plied %v", out.Twist.Direction)
	}
	knittest.Near(t, "plied", out.Twist.PerCm, 1, 1e-12) // (5 - 2) / 3
	knittest.Near(t, "gains", *out.Plies[0].LeftPerCm, 3, 1e-12)
	knittest.Near(t, "loses", *out.Plies[1].LeftPerCm, 4, 1e-12)
}

// Singles of 20 degrees up to five plies, and softer ones for more: the balanced ply of any
// number is no steeper than a sock yarn, 35 degrees, but for what plying takes up, and says
// nothing of being hard.
func TestSoftSinglesForManyPlies(t *testing.T) {
	for n := 1; n <= MaxPlies; n++ {
		out := planOf(t, Input{Plies: []Ply{{Count: inTex(400 / float64(n)), Times: &n}}})
		single, ply := out.Plies[0].Twist.AngleDegrees, out.Twist.AngleDegrees
		if n <= 5 {
			knittest.Near(t, "single", single, 20, 1e-9)
		} else if single >= 20 || single < littleAngle {
			t.Errorf("%d plies: singles of %v degrees", n, single)
		}
		if ply > steepestPly+3 {
			t.Errorf("%d plies of %v degrees: plied at %v", n, single, ply)
		}
		for _, notice := range out.Notices {
			if notice.Reason != Single {
				t.Errorf("%d plies: %v", n, notice)
			}
		}
	}
	// tan(35) * 9 / (8 * sqrt(8)) = 0.27850, of 15.56 degrees.
	knittest.Near(t, "eight", softAngleOf(8), 15.56, 1e-3)
}

// The slope of the picture is that of the letter, and stands at the angle that is said.
func TestTwistOutline(t *testing.T) {
	for _, d := range []yarn.TwistDirection{yarn.TwistDirectionS, yarn.TwistDirectionZ} {
		out := planOf(t, Input{Plies: []Ply{{Count: inTex(200), TwistPerCm: new(2.0), Direction: d}}, WithOutline: true})
		outlinetest.CheckFrame(t, out.Outline)
		slope := out.Outline.Lines[2].Points
		if leans := slope[1].X > slope[0].X; leans != (d == yarn.TwistDirectionZ) {
			t.Errorf("%v is drawn %+v", d, slope)
		}
		drawn := math.Atan(math.Abs(slope[1].X-slope[0].X)/(slope[1].Y-slope[0].Y)) * 180 / math.Pi
		knittest.Near(t, "drawn", drawn, out.Twist.AngleDegrees, 1e-9)
	}
}

func BenchmarkPlanHandspun(b *testing.B) {
	in := Input{
		Plies:   []Ply{{Count: inTex(180), Times: new(2)}},
		Gauge:   &gauge.Gauge{Stitches: 22, Rows: 30},
		WantedM: new(1250.0),
		Wheel:   &Wheel{Ratio: new(9.5)},
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := PlanHandspun(in); err != nil {
			b.Fatal(err)
		}
	}
}

// Twist out of treadles: 12 of them at 9 to 1, a tenth lost, into drafts of 30 cm are
// 12 * 9 * 0.9 / 30 = 3.24 turns to the cm, and 8 of the plying 2.16, two thirds. It is the
// way back of the treadles that are answered.
func TestTwistOfTreadles(t *testing.T) {
	w := &Wheel{Ratio: new(9.0), SlipPercent: new(10.0), DraftCm: new(30.0)}
	in := Input{Plies: []Ply{{Count: inTex(200), Times: new(2), TreadlesPerDraft: new(12.0)}}, PlyTreadlesPerDraft: new(8.0), Wheel: w}
	out := planOf(t, in)
	knittest.Near(t, "singles", out.Plies[0].Twist.PerCm, 3.24, 1e-12)
	knittest.Near(t, "plying", out.Twist.PerCm, 2.16, 1e-12)
	knittest.Near(t, "treadles of the singles", *out.Plies[0].TreadlesPerDraft, 12, 1e-12)
	knittest.Near(t, "treadles of the plying", *out.TreadlesPerDraft, 8, 1e-12)
	if len(out.Notices) > 0 {
		t.Errorf("%v", out.Notices)
	}
	in.PlyTreadlesPerDraft = new(16.0)
	if n := planOf(t, in).Notices; len(n) == 0 || n[0].Field != "ply_treadles_per_draft" || n[0].Reason != NotBalanced {
		t.Errorf("%v", n)
	}
	in.PlyTreadlesPerDraft = new(80.0)
	_, err := PlanHandspun(in)
	knittest.WantViolations(t, err, "ply_treadles_per_draft INFEASIBLE")
	one := Input{Plies: []Ply{{Count: inTex(200)}}, PlyTreadlesPerDraft: new(8.0), Wheel: w}
	_, err = PlanHandspun(one)
	knittest.WantViolations(t, err, "ply_treadles_per_draft CONTRADICTORY")
	in.PlyTreadlesPerDraft, in.Plies[0].TreadlesPerDraft, in.Plies[0].Times = nil, new(0.1), new(1)
	_, err = PlanHandspun(in)
	knittest.WantViolations(t, err, "plies[0].treadles_per_draft INFEASIBLE")
}
