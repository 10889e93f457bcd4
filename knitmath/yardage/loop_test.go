package yardage

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/yarn"
)

// givens reads "kc=5.5;kw=4.2" into numbers.
func givens(t *testing.T, s string) map[string]float64 {
	t.Helper()
	out := map[string]float64{}
	for part := range strings.SplitSeq(s, ";") {
		name, value, found := strings.Cut(part, "=")
		if !found {
			t.Fatalf("no value in %q", part)
		}
		out[name] = knittest.Cell(t, value)
	}
	return out
}

// squareMetre asks for one square metre of plain fabric at w wales to 10 cm and
// a state's own ratio of courses.
func squareMetre(t *testing.T, stitches, rows float64, state FabricState, p *yarn.PutUp) Estimate {
	t.Helper()
	out, err := EstimateYarn(EstimateInput{
		Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, State: state, PutUp: p,
		Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(100.0), new(100.0), 100}}},
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// The published examination question: kc 5.5, kw 4.2, loops of 0.5 cm make 92.4
// to the cm2. Backwards: 84 wales and 110 courses to 10 cm have loops of 0.5 cm.
func TestPublishedLoopDensity(t *testing.T) {
	for _, row := range knittest.Table(t, "yarn/worked_examples.csv") {
		if row["id"] != "gate_2015_54" {
			continue
		}
		in := givens(t, row["inputs"])
		density := knittest.Cell(t, row["expected"])
		knittest.Near(t, "density", in["kc"]*in["kw"]/(in["l_cm"]*in["l_cm"]), density, 1e-12)
		knittest.Near(t, "loop", loopLength(loopConstants[FabricStateFullyRelaxed].Likely, density), in["l_cm"], 1e-12)
		out := squareMetre(t, 10*in["kw"]/in["l_cm"], 10*in["kc"]/in["l_cm"], FabricStateFullyRelaxed, nil)
		knittest.Near(t, "loop of the gauge", out.LoopLengthCm, in["l_cm"], 1e-12)
		knittest.Near(t, "stitches to the m2", out.Stitches, density*1e4, 1e-12)
		return
	}
	t.Fatal("the question is missing")
}

// Worked cases: yarn and gauge in, loop length, metres and grams to the square
// metre out, to the digits printed.
func TestLoopWorkedCases(t *testing.T) {
	cases := 0
	for _, row := range knittest.Table(t, "yarn/worked_examples.csv") {
		if row["kind"] != "loop geometry" {
			continue
		}
		cases++
		in, want := givens(t, row["inputs"]), givens(t, row["expected"])
		state := FabricStateFullyRelaxed
		if in["kc"] == 5.0 {
			state = FabricStateDryRelaxed
		}
		rows := in["stitches"] * in["kc"] / in["kw"]
		knittest.Near(t, row["id"]+" rows", rows, want["rows"], 2e-4)
		out := squareMetre(t, in["stitches"], rows, state, &yarn.PutUp{BallM: in["ball_m"], BallG: in["ball_g"]})
		knittest.Near(t, row["id"]+" loop", out.LoopLengthCm, want["l_cm"], 5e-5)
		knittest.Near(t, row["id"]+" m/m2", out.ByLoop.LengthM.Likely, want["m_per_m2"], 1e-7)
		knittest.Near(t, row["id"]+" g/m2", out.ByLoop.MassG.Likely, want["g_per_m2"], 2e-4)
	}
	if cases != 4 {
		t.Errorf("%d worked cases", cases)
	}
}

// Textbook identities of areal density, over gauges, with tex from the put-up:
//
//	g/m2 = 0.1 * S * l * tex = S[cm-2] * l[mm] * tex / 100 = 0.1 * ks * tex / l
//	m/m2 = 100 * S * l = 100 * kc * w at the state's own ratio of rows
//	ounces to the square yard = g/m2 / 33.906
//
// Source: Texcoms textile handbook (2023) for the second form; the others follow.
func TestArealDensityIdentities(t *testing.T) {
	put := &yarn.PutUp{BallM: 210, BallG: 50}
	tex := put.BallG / put.BallM * 1000
	for stitches := 8.0; stitches <= 40; stitches += 0.5 {
		rows := stitches * 5.5 / 4.2
		s := stitches * rows / 100
		out := squareMetre(t, stitches, rows, FabricStateFullyRelaxed, put)
		l, grams, metres := out.LoopLengthCm, out.ByLoop.MassG.Likely, out.ByLoop.LengthM.Likely
		knittest.Near(t, "0.1 S l tex", grams, 0.1*s*l*tex, 1e-6)
		knittest.Near(t, "S l tex / 100", grams, s*(l*10)*tex/100, 1e-6)
		knittest.Near(t, "0.1 ks tex / l", grams, 0.1*out.LoopConstant*tex/l, 1e-6)
		knittest.Near(t, "100 S l", metres, 100*s*l, 1e-6)
		knittest.Near(t, "100 kc w", metres, 100*5.5*stitches/10, 1e-6)
		// A square yard of it, by area.
		yard, err := EstimateYarn(EstimateInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, State: FabricStateFullyRelaxed,
			PutUp: put, Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(91.44), new(91.44), 91.44}}}})
		if err != nil {
			t.Fatal(err)
		}
		knittest.Near(t, "oz/yd2", yard.ByLoop.MassG.Likely/yarn.GramsPerOunce, grams/33.906, 2e-5)
	}
}

// Peirce's compact loop is another model altogether, built from the diameter d
// of the yarn: w = 4d, p = 2*sqrt(3)*d, l = 2p + w + 5.94d = 16.868d. Its loop
// lies within the range given for a state that is not known.
// Source: abstract of Fletcher & Roberts (1952) for the formula; w and p from
// memory.
func TestPeirceCompactLoop(t *testing.T) {
	const d = 0.1 // cm
	w, p := 4*d, 2*math.Sqrt(3)*d
	l := 2*p + w + 5.94*d
	for _, row := range knittest.Table(t, "yarn/worked_examples.csv") {
		if row["id"] == "peirce_compact" {
			knittest.Near(t, "l/d", l/d, knittest.Cell(t, row["expected"]), 1e-5)
		}
	}
	knittest.Near(t, "kc", l/p, 4.87, 1e-3)
	knittest.Near(t, "kw", l/w, 4.22, 1e-3)
	metres := 100 * l / (w * p) // to the m2
	out := squareMetre(t, 10/w, 10/p, FabricStateUnspecified, nil)
	if r := out.ByLoop.LengthM; metres < r.Low || metres > r.High {
		t.Errorf("Peirce's loop takes %.0f m/m2, outside %.0f to %.0f", metres, r.Low, r.High)
	}
}

// The constants are products of their parts, ordered, and an unknown state
// covers all three.
func TestLoopConstants(t *testing.T) {
	for state, want := range map[FabricState]float64{
		FabricStateDryRelaxed: 19.0, FabricStateWetRelaxed: 21.6, FabricStateFullyRelaxed: 23.1, FabricStateUnspecified: 23.1,
	} {
		ks, all := loopConstants[state], loopConstants[FabricStateUnspecified]
		knittest.Near(t, state.String(), ks.Likely, want, 1e-12)
		if !(ks.Low < ks.Likely && ks.Likely < ks.High) {
			t.Errorf("%v: %+v is out of order", state, ks)
		}
		if ks.Low < all.Low || ks.High > all.High {
			t.Errorf("%v: %+v is not covered by %+v", state, ks, all)
		}
	}
	// Dry: kc 5.0 and kw 3.8. Wet: 5.3 * 4.1 = 21.73 is printed as 21.6, within the 3 %.
	knittest.Near(t, "dry", 5.0*3.8, 19.0, 1e-12)
	if wet := loopConstants[FabricStateWetRelaxed]; 5.3*4.1 > wet.High || 5.3*4.1 < wet.Low {
		t.Errorf("the product of kc and kw is outside %+v", wet)
	}
}
