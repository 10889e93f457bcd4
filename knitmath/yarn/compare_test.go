package yarn

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// ball is a yarn of so many metres to 50 g.
func ball(metres float64) *ComparedYarn {
	return &ComparedYarn{PutUp: &PutUp{BallM: metres, BallG: 50}}
}

func compared(t *testing.T, in CompareInput) Comparison {
	t.Helper()
	out, err := CompareYarns(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	return out
}

// Thickness goes with the root of the mass of a metre: 1.05 squared is 1.1025, 1.1 squared
// 1.21. The bounds from both sides.
func TestVerdictsByThickness(t *testing.T) {
	for _, c := range []struct {
		first, second float64
		want          Verdict
	}{
		{115, 115, VerdictFits},
		{110.25, 100, VerdictFits}, {100, 110.25, VerdictFits},
		{110.3, 100, VerdictNearly}, {100, 110.3, VerdictNearly},
		{120.9, 100, VerdictNearly}, {100, 120.9, VerdictNearly},
		{121.1, 100, VerdictNo}, {100, 121.1, VerdictNo},
		{115, 210, VerdictNo},
	} {
		out := compared(t, CompareInput{First: ball(c.first), Second: ball(c.second)})
		knittest.Near(t, "ratio", *out.ThicknessRatio, math.Sqrt(c.first/c.second), 1e-12)
		if out.Verdict != c.want || out.Aspects[0].Verdict != c.want {
			t.Errorf("%v and %v: %d (%v), want %d", c.first, c.second, out.Verdict, out.Aspects, c.want)
		}
	}
}

// A gauge at a bound is within it, however its quotient comes out: 11 stitches for 10 are 10 %
// more, 21 for 20 are 5 %. Swept over whole and half stitches, against whole numbers.
func TestGaugesAtABound(t *testing.T) {
	for a := 10; a <= 120; a++ { // half stitches
		for b := a; b <= 2*a; b++ {
			want := VerdictNo
			switch {
			case 20*b <= 21*a:
				want = VerdictFits
			case 10*b <= 11*a:
				want = VerdictNearly
			}
			for _, pair := range [][2]int{{a, b}, {b, a}} {
				first, second := ball(115), ball(115)
				first.Stitches, second.Stitches = new(float64(pair[0])/2), new(float64(pair[1])/2)
				if out := compared(t, CompareInput{First: first, Second: second}); out.Verdict != want {
					t.Errorf("%v and %v stitches: %d, want %d", *first.Stitches, *second.Stitches, out.Verdict, want)
				}
			}
		}
	}
}

// A yarn that is too thick gets no better by more strands of it.
func TestAdviceGoesTheRightWay(t *testing.T) {
	for _, c := range []struct {
		second float64
		want   string
	}{{60, "thinner yarn"}, {210, "more strands"}} {
		if d := compared(t, CompareInput{First: ball(115), Second: ball(c.second)}).Directions(); !strings.Contains(d[0], c.want) {
			t.Errorf("115 m and %v m to a ball: %q", c.second, d)
		}
	}
}

// Twelve balls of 115 m are 1,380 m: of 125 m 11.04, so 12; of 100 m 13.8, so 14; of 115 m
// to 100 g still 12, where the same mass would be 6. Two strands of 230 m take twice the
// metres, and two strands as thick as one of 115 m are as thick as it.
func TestBallsGoByLength(t *testing.T) {
	for _, c := range []struct {
		second ComparedYarn
		first  int
		needed float64
		balls  int
		says   bool
	}{
		{ComparedYarn{PutUp: &PutUp{115, 50}}, 1, 1380, 12, false},
		{ComparedYarn{PutUp: &PutUp{125, 50}}, 1, 1380, 12, false},
		{ComparedYarn{PutUp: &PutUp{100, 50}}, 1, 1380, 14, true},
		{ComparedYarn{PutUp: &PutUp{115, 100}}, 1, 1380, 12, true},
		{ComparedYarn{PutUp: &PutUp{230, 50}, Strands: new(2)}, 1, 2760, 12, false},
		{ComparedYarn{PutUp: &PutUp{115, 50}}, 2, 690, 6, true},
		{ComparedYarn{PutUp: &PutUp{0.1 + 0.2 + 114.7, 50}}, 1, 1380, 12, false}, // 115, as it is written
	} {
		first := ball(115)
		first.Strands = &c.first
		out := compared(t, CompareInput{First: first, Second: &c.second, FirstBallCount: new(12)})
		knittest.Near(t, "metres", *out.NeededM, c.needed, 1e-9)
		said := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == ByLength })
		if *out.SecondBallCount != c.balls || said != c.says {
			t.Errorf("%+v: %d balls, %v, want %d", c.second, *out.SecondBallCount, out.Notices, c.balls)
		}
	}
	out := compared(t, CompareInput{First: ball(115), Second: &ComparedYarn{PutUp: &PutUp{230, 50}, Strands: new(2), WrapsPerInch: new(14.0)}})
	knittest.Near(t, "as thick", *out.ThicknessRatio, 1, 1e-12)
	knittest.Near(t, "wraps of two strands", *out.SecondWrapsPerInch, 14/math.Sqrt2, 1e-12)
	if !slices.Equal(out.FirstCategories, []int{3}) || !slices.Equal(out.SecondCategories, []int{3}) {
		t.Errorf("categories %v and %v", out.FirstCategories, out.SecondCategories)
	}
}

// Fibres make a fit no worse than nearly, and say why.
func TestFibres(t *testing.T) {
	of := func(f Fibre, rest ...FibreShare) *ComparedYarn {
		y := ball(115)
		y.Fibres = append([]FibreShare{{f, 100}}, rest...)
		for _, r := range rest {
			y.Fibres[0].Percent -= r.Percent
		}
		return y
	}
	for _, c := range []struct {
		first, second  *ComparedYarn
		drape, washing Verdict
		says           []report.Reason
	}{
		{of(FibreWool), of(FibreWool), VerdictFits, VerdictFits, nil},
		{of(FibreWashableWool), of(FibreWool), VerdictFits, VerdictNearly, nil},
		{of(FibreWool), of(FibreCotton), VerdictNearly, VerdictFits, nil},
		{of(FibreCotton), of(FibreLinen), VerdictFits, VerdictFits, nil},
		{of(FibreAcrylic), of(FibreAcrylic, FibreShare{FibreWool, 29}), VerdictFits, VerdictFits, nil},
		{of(FibreAcrylic), of(FibreAcrylic, FibreShare{FibreWool, 30}), VerdictFits, VerdictNearly, nil},
		{of(FibreOther), of(FibreOther), VerdictNearly, VerdictFits, nil},
		{of(FibreSilk), of(FibreMohair, FibreShare{FibreSilk, 30}), VerdictFits, VerdictNearly, []report.Reason{Sheds}},
	} {
		out := compared(t, CompareInput{First: c.first, Second: c.second})
		var says []report.Reason
		for _, n := range out.Notices {
			says = append(says, n.Reason)
		}
		if len(out.Aspects) != 3 || out.Aspects[1].Verdict != c.drape || out.Aspects[2].Verdict != c.washing || !slices.Equal(says, c.says) {
			t.Errorf("%v and %v: %+v %v", c.first.Fibres, c.second.Fibres, out.Aspects, says)
		}
		if want := max(c.drape, c.washing); out.Verdict != want {
			t.Errorf("%v and %v: verdict %d, want %d", c.first.Fibres, c.second.Fibres, out.Verdict, want)
		}
	}
	out := compared(t, CompareInput{First: ball(115), Second: of(FibreWool)})
	if len(out.Notices) != 1 || out.Notices[0].Reason != NoComposition {
		t.Errorf("%+v", out.Notices)
	}
}

// Wraps and gauge are compared where both yarns have them.
func TestWrapsAndGauge(t *testing.T) {
	first, second := ball(115), ball(115)
	first.WrapsPerInch, second.WrapsPerInch = new(12.0), new(14.0)
	first.Stitches, second.Stitches, second.OverCm = new(22.0), new(22.0), new(10.16)
	out := compared(t, CompareInput{First: first, Second: second})
	if len(out.Aspects) != 3 || out.Aspects[1].Verdict != VerdictNo || out.Aspects[2].Verdict != VerdictFits || out.Verdict != VerdictNo {
		t.Errorf("%+v", out)
	}
	if !strings.Contains(out.Summary(), "17 % more wraps") {
		t.Error(out.Summary())
	}
}

func TestCompareFaults(t *testing.T) {
	_, err := CompareYarns(CompareInput{})
	knittest.WantViolations(t, err, "first REQUIRED", "second REQUIRED")
	_, err = CompareYarns(CompareInput{First: &ComparedYarn{}, Second: &ComparedYarn{PutUp: &PutUp{115, 50}, Count: &Count{Notation: "4 ply"},
		Strands: new(11), WrapsPerInch: new(0.1), Stitches: new(math.Inf(1)), OverCm: new(0.0), Fibres: []FibreShare{{}, {99, 101}}},
		FirstBallCount: new(0), DisplayUnit: 3})
	knittest.WantViolations(t, err, "first.put_up REQUIRED", "first.count REQUIRED", "first.wraps_per_inch REQUIRED",
		"first.stitches REQUIRED", "second.put_up CONTRADICTORY",
		"second.count CONTRADICTORY",
		"second.count.notation UNREADABLE_TEXT", "second.strands OUT_OF_RANGE",
		"second.wraps_per_inch OUT_OF_RANGE", "second.stitches NOT_FINITE",
		"second.over_cm OUT_OF_RANGE", "second.fibres[0].fibre REQUIRED", "second.fibres[0].percent REQUIRED",
		"second.fibres[1].fibre UNKNOWN_VALUE", "second.fibres[1].percent OUT_OF_RANGE", "first_ball_count OUT_OF_RANGE",
		"first_ball_count CONTRADICTORY", "display_unit UNKNOWN_VALUE")
	uneven := ball(115)
	uneven.Fibres = []FibreShare{{FibreWool, 60}, {FibreNylon, 30}}
	_, err = CompareYarns(CompareInput{First: uneven, Second: ball(115)})
	knittest.WantViolations(t, err, "first.fibres INFEASIBLE")
	_, err = CompareYarns(CompareInput{First: &ComparedYarn{PutUp: &PutUp{100_000, 50}}, Second: ball(1), FirstBallCount: new(10_000)})
	knittest.WantViolations(t, err, "first_ball_count INFEASIBLE")
	many := ball(115)
	many.Fibres = make([]FibreShare, MaxFibres+1)
	if _, err = CompareYarns(CompareInput{First: many, Second: ball(115)}); err == nil {
		t.Error("eleven fibres are compared")
	}
}

func TestComparisonWords(t *testing.T) {
	first, second := ball(115), ball(105)
	out := compared(t, CompareInput{First: first, Second: second, FirstBallCount: new(12)})
	if got, want := out.Summary(), "The second yarn will do. Buy 14 balls of it, for 1380 m."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	out = compared(t, CompareInput{First: first, Second: ball(60)})
	if got, want := out.Summary(), "The second yarn will not do as it is: the second is 38 % thicker."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if d := out.Directions(); len(d) != 1 || len(out.Sources()) == 0 {
		t.Errorf("%q", d)
	}
}

func FuzzCompareYarns(f *testing.F) {
	f.Add(115.0, 50.0, 230.0, 100.0, int64(2), 12.0, int32(1), 100.0, int64(12), 22.0, uint8(0xff))
	f.Add(115.0, 50.0, 230.0, 100.0, int64(2), 12.0, int32(1), 100.0, int64(12), 22.0, uint8(0b01_1001))
	f.Fuzz(func(t *testing.T, m1, g1, m2, g2 float64, strands int64, wraps float64, fibre int32, percent float64, balls int64,
		stitches float64, known uint8) {
		n, b := int(strands), int(balls)
		first, second := &ComparedYarn{}, &ComparedYarn{Strands: &n, Fibres: []FibreShare{{Fibre(fibre), percent}}}
		first.Fibres = second.Fibres
		for i, y := range []*ComparedYarn{first, second} {
			has := known >> (3 * i)
			if has&1 != 0 {
				y.PutUp = &PutUp{[]float64{m1, m2}[i], []float64{g1, g2}[i]}
			}
			if has&2 != 0 {
				y.WrapsPerInch = &wraps
			}
			if has&4 != 0 {
				y.Stitches = &stitches
			}
		}
		in := CompareInput{First: first, Second: second}
		if known&0x40 != 0 {
			in.FirstBallCount = &b
		}
		if known&0x80 != 0 {
			in.FirstLengthM = &m1
		}
		out, err := CompareYarns(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		_, _, _ = out.Summary(), out.Directions(), out.Sources()
		if out.SecondBallCount != nil && (*out.SecondBallCount < 1 || float64(*out.SecondBallCount)*m2 < *out.NeededM*(1-1e-12)) {
			t.Fatalf("%d balls of %v m for %v m", *out.SecondBallCount, m2, *out.NeededM)
		}
	})
}

func BenchmarkCompareYarns(b *testing.B) {
	in := CompareInput{First: ball(115), Second: ball(125), FirstBallCount: new(12)}
	in.First.Fibres, in.Second.Fibres = []FibreShare{{FibreWool, 100}}, []FibreShare{{FibreCotton, 100}}
	for b.Loop() {
		out, err := CompareYarns(in)
		if err != nil || out.Summary() == "" || len(out.Sources()) == 0 {
			b.Fatal(err)
		}
	}
}
