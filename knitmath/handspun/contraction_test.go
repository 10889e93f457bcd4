package handspun

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

// walked is the length of a ply to a cm of yarn, walked in small steps: the middle of one
// of n round plies of a diameter that touch their neighbours, turning around the yarn's.
func walked(n int, plyCm, perCm float64) float64 {
	r := plyCm / (2 * math.Sin(math.Pi/float64(n)))
	const steps = 20_000
	length, x, y := 0.0, r, 0.0
	for i := 1; i <= steps; i++ {
		a := 2 * math.Pi * perCm * float64(i) / steps
		nx, ny := r*math.Cos(a), r*math.Sin(a)
		length += math.Sqrt((nx-x)*(nx-x) + (ny-y)*(ny-y) + 1.0/steps/steps)
		x, y = nx, ny
	}
	return length
}

// What plying takes up is what plies that are walked along take up: two and four exactly,
// three, which lie a little nearer to the middle, to an eighth of it.
func TestContractionIsThatOfTheWay(t *testing.T) {
	for _, plyCm := range []float64{0.03, 0.06, 0.12} {
		for _, perCm := range []float64{0.5, 1, 2, 3, 5} {
			for n, part := range map[int]float64{2: 1e-6, 3: 0.125, 4: 1e-6} {
				d := plyCm * math.Sqrt(float64(n))
				if perCm > mostTurns(d) {
					continue
				}
				want := 100 * (1 - 1/walked(n, plyCm, perCm))
				if got := takenUp(d, perCm); math.Abs(got-want) > part*want {
					t.Errorf("%d plies of %v cm, %v turns: %v %%, walked %v", n, plyCm, perCm, got, want)
				}
			}
		}
	}
}

// Of a twisted bundle the textbooks have (1 + sec(angle)) / 2, with fibres that wander from
// the middle to the surface and back (Hearle, Grosberg and Backer, Structural Mechanics of
// Fibers, Yarns and Fabrics, 1969; from memory): within 2.5 points up to 50 degrees.
func TestContractionAgainstTheTextbooks(t *testing.T) {
	for degrees := 5.0; degrees <= 50; degrees += 5 {
		sec := 1 / math.Cos(degrees*math.Pi/180)
		book := 100 * (1 - 2/(1+sec))
		knittest.Near(t, "contraction", takenUp(1, math.Tan(degrees*math.Pi/180)/math.Pi), book, 2.5)
	}
	// By hand, at the surface of the plies: tan(40)^2 / 2 = 0.35204, 1 - 1/sqrt(1.35204) = 14.0 %.
	knittest.Near(t, "40 degrees", takenUp(1, math.Tan(40*math.Pi/180)/math.Pi), 14.0, 0.01)
}

// A yarn that is plied hard is thicker and shorter than one that is plied softly, and the
// answer works with the contraction that it says: two of 200 tex, 0.60716 cm/10 each, 3
// turns to the cm: t = pi * 0.085866 * 3 = 0.80926, 1 - 1/sqrt(1 + t^2/2) = 13.2 %.
func TestContractionOfAPlan(t *testing.T) {
	out := planOf(t, Input{Plies: []Ply{{Count: inTex(200), Times: new(2), TwistPerCm: new(4.5)}}, WantedM: new(100.0)})
	knittest.Near(t, "turns", out.Twist.PerCm, 3, 1e-12)
	c := *out.PlyContractionPercent
	knittest.Near(t, "contraction", c, 13.2, 0.1)
	knittest.Near(t, "tex", out.Tex, 400/(1-c/100), 1e-9)
	knittest.Near(t, "singles", *out.Plies[0].LengthM, 200/(1-c/100), 1e-9)
	given := planOf(t, Input{Plies: []Ply{{Count: inTex(200), Times: new(2)}}, PlyContractionPercent: new(7.0)})
	if *given.PlyContractionPercent != 7 {
		t.Errorf("7 %% was given, %v %% taken", *given.PlyContractionPercent)
	}
	if single := planOf(t, Input{Plies: []Ply{{Count: inTex(200)}}}); single.PlyContractionPercent != nil || single.Tex != 200 {
		t.Errorf("a single is contracted: %v tex", single.Tex)
	}
}

// A ply twist that was chosen is what the sample is held against, and where it is not
// balanced the words say which way balance lies; in the unit that was asked for.
func TestSampleOfAChosenPly(t *testing.T) {
	in := Input{Plies: []Ply{{Count: inTex(180), Times: new(2), TwistPerCm: new(3.0)}}} // balanced at 1.8 to 2.25
	for _, c := range []struct {
		chosen             float64
		less, more, saying string
	}{
		{1.5, "apart still more", "nearer to balance, at 1.8 to 2.25 turns to the cm", "turns the way it was plied"},
		{2.6, "nearer to balance, at 1.8 to 2.25 turns to the cm", "harder still", "turns the way the singles were spun"},
		{2.1, "the plies stand apart; the loop", "hard and round", "should not turn"},
	} {
		in.PlyTwistPerCm = &c.chosen
		out := planOf(t, in)
		s := out.Samples[3]
		knittest.Near(t, "expected", s.Expected.Likely, c.chosen, 1e-12)
		if !strings.Contains(s.IfLess, c.less) || !strings.Contains(s.IfMore, c.more) {
			t.Errorf("%v turns: less %q, more %q", c.chosen, s.IfLess, s.IfMore)
		}
		if d := strings.Join(out.Directions(), " "); !strings.Contains(d, c.saying) {
			t.Errorf("%v turns: %q", c.chosen, d)
		}
	}
	in.PlyTwistPerCm, in.DisplayUnit = new(1.5), measure.DisplayUnitIn
	out := planOf(t, in)
	for i, unit := range map[int]string{0: "yd to the pound", 1: "to the inch", 3: "to the inch"} {
		if s := out.Samples[i]; s.Unit != unit {
			t.Errorf("sample %d is in %q: %q", i, s.Unit, s.What)
		}
	}
	knittest.Near(t, "to the inch", out.Samples[3].Expected.Likely, 1.5*2.54, 1e-12)
	all := out.Summary() + strings.Join(out.Directions(), " ")
	for _, n := range out.Notices {
		all += n.Description
	}
	for _, s := range out.Samples {
		all += s.What + s.Unit + s.IfLess + s.IfMore
	}
	if strings.Contains(all, " cm") || strings.Contains(all, "100 g") {
		t.Errorf("centimetres among inches: %q", all)
	}
}

// The wheel's caution is there whether or not its treadles are asked for.
func TestWheelCaution(t *testing.T) {
	out := planOf(t, Input{Plies: []Ply{{Count: inTex(200), Direction: yarn.TwistDirectionZ}}})
	all := strings.Join(out.Cautions, " ")
	for _, want := range []string{"flyer", "mordants", "dust"} {
		if !strings.Contains(all, want) {
			t.Errorf("cautions without %s: %q", want, out.Cautions)
		}
	}
}
