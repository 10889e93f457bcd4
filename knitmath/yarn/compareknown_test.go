package yarn

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// A yarn may be known by anything: what both are known by is compared, and what only one is
// known by is said. Categories stand in where they have no measure in common: 22 stitches
// are Light (3) on the chart, 18 Medium (4); 9 wraps are Bulky (5) on the spinners' and
// Medium or Bulky on the standard chart; 230 m to 100 g are 1,141 yards to the pound, Light
// (3), and 120 m 595, Bulky (5). No category has 20.5 stitches, over 10 cm or over 4 in.
func TestComparedByWhatIsKnown(t *testing.T) {
	gauge := func(stitches float64) *ComparedYarn { return &ComparedYarn{Stitches: &stitches} }
	wraps := func(w float64) *ComparedYarn { return &ComparedYarn{WrapsPerInch: &w} }
	length := &ComparedYarn{Count: &Count{Notation: "230 m/100 g"}}
	for _, c := range []struct {
		name          string
		first, second *ComparedYarn
		verdict       Verdict
		aspects       []Aspect
		says          []string
		summary       string
	}{
		{"gauge alone", gauge(22), gauge(22), VerdictFits, []Aspect{AspectGauge}, nil, "The second yarn will do."},
		{"gauge alone, a tenth less", gauge(22), gauge(20), VerdictNearly, []Aspect{AspectGauge}, nil,
			"nearly do: the second is knit to 9 % fewer"},
		{"wraps alone", wraps(12), wraps(18), VerdictNo, []Aspect{AspectWraps}, nil, "the second has 50 % more wraps"},
		{"length and gauge", length, gauge(22), VerdictNearly, []Aspect{AspectCategory},
			[]string{"second.put_up ONE_SIDED", "first.stitches ONE_SIDED"}, "The second yarn will nearly do: both may be Light (3)."},
		{"gauge and length", gauge(18), length, VerdictNo, []Aspect{AspectCategory},
			[]string{"first.put_up ONE_SIDED", "second.stitches ONE_SIDED"},
			"The second yarn will not do as it is: the second is thinner: Light (3) for Medium (4)."},
		{"gauge and wraps", gauge(18), wraps(9), VerdictNo, []Aspect{AspectCategory},
			[]string{"first.wraps_per_inch ONE_SIDED", "second.stitches ONE_SIDED"}, "the second is thicker: Bulky (5) for Medium (4)."},
		{"gauge in a gap and length", gauge(20.5), length, VerdictUnspecified, nil,
			[]string{"first.put_up ONE_SIDED", "second.stitches ONE_SIDED", "second NOTHING_IN_COMMON"}, "cannot be told"},
		{"wraps of no yarn and gauge", wraps(200), gauge(22), VerdictUnspecified, nil,
			[]string{"second.wraps_per_inch ONE_SIDED", "first.stitches ONE_SIDED", "second NOTHING_IN_COMMON"}, "cannot be told"},
		{"more known of the second", gauge(22), &ComparedYarn{Stitches: new(22.0), WrapsPerInch: new(12.0), PutUp: &PutUp{115, 50}},
			VerdictFits, []Aspect{AspectGauge}, []string{"first.put_up ONE_SIDED", "first.wraps_per_inch ONE_SIDED"}, "The second yarn will do."},
	} {
		t.Run(c.name, func(t *testing.T) {
			out := compared(t, CompareInput{First: c.first, Second: c.second})
			var aspects []Aspect
			for _, a := range out.Aspects {
				aspects = append(aspects, a.Aspect)
			}
			var says []string
			for _, n := range out.Notices {
				if n.Reason != NoComposition {
					says = append(says, n.Field+" "+string(n.Reason))
				}
			}
			if out.Verdict != c.verdict || !slices.Equal(aspects, c.aspects) || !slices.Equal(says, c.says) {
				t.Errorf("verdict %d by %v, says %q", out.Verdict, aspects, says)
			}
			if !strings.Contains(out.Summary(), c.summary) {
				t.Errorf("%q, want %q", out.Summary(), c.summary)
			}
			if out.ThicknessRatio != nil || len(out.Directions()) != 1 || len(out.Sources()) == 0 {
				t.Errorf("%+v", out)
			}
		})
	}
}

// The advice follows what made it not do: a second yarn of fewer stitches is thicker.
func TestAdviceByGauge(t *testing.T) {
	for stitches, want := range map[float64]string{16: "thinner yarn", 28: "more strands"} {
		out := compared(t, CompareInput{First: &ComparedYarn{Stitches: new(22.0)}, Second: &ComparedYarn{Stitches: &stitches}})
		if d := out.Directions(); !strings.Contains(d[0], want) {
			t.Errorf("%v stitches: %q", stitches, d)
		}
	}
}

// Fibres alone decide nothing where the thickness is not known.
func TestFibresDecideNothingAlone(t *testing.T) {
	wool := []FibreShare{{FibreWool, 100}}
	out := compared(t, CompareInput{First: &ComparedYarn{Stitches: new(20.5), Fibres: wool},
		Second: &ComparedYarn{WrapsPerInch: new(12.0), Fibres: wool}})
	if out.Verdict != VerdictUnspecified || len(out.Aspects) != 2 {
		t.Errorf("%+v", out)
	}
}

// What the pattern takes may be said in metres, of part of a ball too: 1,322.5 m are 11.5
// balls of 115 m and 10.58 of 125 m, so 11. A first yarn that is known by its gauge alone
// will do for that; the second must be sold in balls.
func TestLengthOfFirst(t *testing.T) {
	in := CompareInput{First: &ComparedYarn{Stitches: new(22.0)}, Second: &ComparedYarn{Stitches: new(22.0), PutUp: &PutUp{125, 50}},
		FirstLengthM: new(1322.5)}
	out := compared(t, in)
	knittest.Near(t, "needed", *out.NeededM, 1322.5, 1e-12)
	if *out.SecondBallCount != 11 || out.Summary() != "The second yarn will do. Buy 11 balls of it, for 1323 m." {
		t.Errorf("%d, %q", *out.SecondBallCount, out.Summary())
	}
	in.Second.Strands = new(2)
	if two := compared(t, in); *two.NeededM != 2645 || !strings.HasSuffix(two.Summary(), "Buy 22 balls of it, for 2645 m in 2 strands.") {
		t.Errorf("two strands: %+v", two)
	}
	in.First, in.Second = &ComparedYarn{Stitches: new(20.5)}, ball(115)
	if got := compared(t, in).Summary(); !strings.HasSuffix(got, " If it does, you need 12 balls of it, for 1323 m.") {
		t.Error(got)
	}
	in.FirstBallCount = new(12)
	_, err := CompareYarns(in)
	knittest.WantViolations(t, err, "first_ball_count CONTRADICTORY", "first_length_m CONTRADICTORY", "first_ball_count CONTRADICTORY")
	in.FirstBallCount, in.FirstLengthM = nil, new(0.0)
	_, err = CompareYarns(in)
	knittest.WantViolations(t, err, "first_length_m OUT_OF_RANGE")
	in.Second, in.FirstLengthM = &ComparedYarn{PutUp: &PutUp{1, 50}}, new(1e7)
	_, err = CompareYarns(in)
	knittest.WantViolations(t, err, "first_length_m INFEASIBLE")
}

// A second yarn that is sold by mass, or of which nothing tells its balls, is told in metres,
// and in grams where its count is known: 28/2 Nm has 14 m to a gram, so that 1,400 m weigh
// 100 g, and two strands of it 200. Balls of the first are metres as well.
func TestNeededWithoutBalls(t *testing.T) {
	in := CompareInput{First: ball(115), Second: &ComparedYarn{Count: &Count{Notation: "28/2 Nm"}}, FirstLengthM: new(1400.0)}
	for _, c := range []struct {
		strands    int
		grams      float64
		first, end string
	}{
		{1, 100, "", ""},
		{6, 600, "will do", " You need 8400 m of it in 6 strands, 600 g."},
	} {
		in.Second.Strands = &c.strands
		out := compared(t, in)
		knittest.Near(t, "grams", *out.NeededG, c.grams, 1e-9)
		if out.SecondBallCount != nil || !strings.HasSuffix(out.Summary(), c.end) {
			t.Errorf("%d strands: %v, %q", c.strands, out.SecondBallCount, out.Summary())
		}
	}
	in.Second, in.FirstLengthM, in.FirstBallCount = &ComparedYarn{Stitches: new(20.0)}, nil, new(12)
	out := compared(t, in)
	if out.NeededG != nil || out.SecondBallCount != nil || *out.NeededM != 1380 {
		t.Errorf("of a yarn known by its gauge alone: %+v", out)
	}
}

// Plies tell how stitches show: told where both are known, from a count too, and never worse
// than nearly. A count without plies says nothing of them.
func TestPlies(t *testing.T) {
	plied := func(n int) *ComparedYarn {
		y := ball(115)
		y.Plies = &n
		return y
	}
	counted := func(text string) *ComparedYarn { return &ComparedYarn{Count: &Count{Notation: text}} }
	for _, c := range []struct {
		first, second *ComparedYarn
		want          Verdict
		says          string
	}{
		{plied(2), plied(2), VerdictFits, "both have 2 plies"},
		{plied(2), plied(4), VerdictNearly, "4 plies for the 2 of the first, so it is likely rounder"},
		{plied(3), plied(1), VerdictNearly,
			"1 ply for the 3 of the first, so it is likely flatter and softer, and stitches run together more; of the two"},
		{counted("8/4 Ne"), counted("4/2 Ne"), VerdictNearly, "2 plies for the 4 of the first"},
		{counted("8/4 Ne"), counted("2 Ne"), VerdictFits, ""},
		{plied(2), ball(115), VerdictFits, ""},
	} {
		out := compared(t, CompareInput{First: c.first, Second: c.second})
		said := ""
		for _, a := range out.Aspects {
			if a.Aspect == AspectPlies {
				said = a.Why
			}
		}
		if out.Verdict != c.want || !strings.Contains(said, c.says) || (said == "") != (c.says == "") {
			t.Errorf("verdict %d, %q; want %d, %q", out.Verdict, said, c.want, c.says)
		}
		if c.want == VerdictNearly && !strings.HasPrefix(out.Summary(), "The second yarn will nearly do: it is plied otherwise.") {
			t.Error(out.Summary())
		}
	}
}

// 434.8 tex against two strands of 250: sqrt(500/434.8) = 1.072 by length and mass, 22/30 =
// 0.733 by gauge. Neither is followed alone; measures that agree, or scatter as gauges do,
// are not remarked.
func TestMeasuresThatContradict(t *testing.T) {
	first := ComparedYarn{PutUp: &PutUp{BallM: 115, BallG: 50}, Stitches: new(22.0)}
	for _, c := range []struct {
		name     string
		stitches float64
		wraps    [2]float64
		want     bool
	}{
		{"thicker and finer", 30, [2]float64{}, true},
		{"far apart one way", 16, [2]float64{}, true}, // 1.375 to 1.072
		{"agreeing", 20.5, [2]float64{}, false},
		{"scattering", 21.5, [2]float64{10, 9.5}, false},
		{"by wraps", 20.5, [2]float64{10, 11}, true},
	} {
		a, b := first, ComparedYarn{PutUp: &PutUp{BallM: 400, BallG: 100}, Strands: new(2), Stitches: &c.stitches}
		if c.wraps[0] != 0 {
			one := c.wraps[1] * math.Sqrt2 // of one strand of the two
			a.WrapsPerInch, b.WrapsPerInch = &c.wraps[0], &one
		}
		out, err := CompareYarns(CompareInput{First: &a, Second: &b})
		if err != nil {
			t.Fatal(err)
		}
		got := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == MeasuresContradict && n.Field == "second" })
		directions := strings.Join(out.Directions(), " ")
		if got != c.want || c.want && (strings.Contains(directions, "Hold more") || strings.Contains(directions, "hold fewer")) {
			t.Errorf("%s: %v, %q, %+v", c.name, got, directions, out.Notices)
		}
	}
}
