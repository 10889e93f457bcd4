package yardage

import (
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/yarn"
)

func remainingOf(t *testing.T, in RemainingInput) Remaining {
	t.Helper()
	out, err := PlanRemainingYarn(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	return out
}

// metreYarn is a yarn of which one metre makes a row of so many stitches, exactly.
func metreYarn(left float64, stitches int) YarnLeft {
	return YarnLeft{LeftM: new(float64(left)), Used: &YarnUsed{LengthM: new(1.0), FirstRowStitches: stitches}}
}

// A shape that grows by s stitches a row from a: the rows that B stitches are enough for
// are the greatest r with a*r + s*r*(r-1)/2 <= B, from the formula, never from a sum row by
// row; and half of the work is done after the least r with twice its sum at least the whole.
func TestTriangularSums(t *testing.T) {
	sum := func(a, s, r int) int { return a*r + s*r*(r-1)/2 }
	for _, a := range []int{1, 3, 7, 40} {
		for s := range 7 {
			for _, b := range []int{a, a + 1, 99, 100, 1_000, 12_345, 40_000} {
				if b < a {
					continue
				}
				out := remainingOf(t, RemainingInput{Yarns: []YarnLeft{metreYarn(float64(b)/10, 10)},
					Sections: []RowsAhead{{Stitches: new(a), ChangeStitches: s}}, SharePercents: []float64{50, 100}})
				r := 0
				for lo, hi := 0, 10_000; lo <= hi; { // bisection: the sum grows with r
					if m := (lo + hi) / 2; sum(a, s, m) <= b {
						r, lo = m, m+1
					} else {
						hi = m - 1
					}
				}
				if got := *out.MainRows.Likely; got != r || *out.MainRows.Low != r || *out.MainStitches.Likely != a+s*max(0, r-1) {
					t.Fatalf("%d growing by %d, %d stitches: %d rows of %d, want %d", a, s, b, got, *out.MainStitches.Likely, r)
				}
				half := 0
				for 2*sum(a, s, half) < sum(a, s, r) {
					half++
				}
				if out.Marks[0].Rows != half || out.Marks[1].Rows != r {
					t.Fatalf("%d growing by %d: half of the work after %d rows, want %d", a, s, out.Marks[0].Rows, half)
				}
				gone := 0
				for 2*sum(a, s, gone) < b {
					gone++
				}
				if got := out.Yarns[0].Marks[0].Rows.Likely; gone <= 10_000 && *got != gone {
					t.Fatalf("half of the yarn after %d rows, want %d", *got, gone)
				}
			}
		}
	}
}

// A triangle from the point that grows by 2 every 2nd row: 100 rows have 2*(1+3+...+99) =
// 5000 stitches, as the square of 50 twice. Half of that, 2500, is passed in row 71:
// 70 rows have 2*35*35 = 2450, and row 71 has 71.
func TestHalfOfATriangle(t *testing.T) {
	out := remainingOf(t, RemainingInput{Yarns: []YarnLeft{metreYarn(50, 100)}, SharePercents: []float64{50},
		Sections: []RowsAhead{{Rows: new(100), Stitches: new(1), ChangeStitches: 2, ChangeEveryRows: new(2)}}})
	if out.Marks[0].Rows != 71 || out.Lasts != LastsSurely || *out.MainRows.Low != 100 {
		t.Errorf("half after %d rows, %v", out.Marks[0].Rows, out.Lasts)
	}
	knittest.Near(t, "needed", out.Yarns[0].NeededM.Likely, 50, 1e-12)
}

// By hand, on a kitchen scale: 12 g (to 1 g) for 10 rows of 120 stitches are 0.01 g to the
// stitch (11/1200 to 13/1200). 84 g (83.5 to 84.5) are 8400 stitches (83.5*1200/13 = 7707.69
// to 84.5*1200/11 = 9218.18). 60 rows of 120 are 7200 stitches, 72 g (66 to 78): it
// lasts, with 5.5 g over at least.
func TestOnAKitchenScale(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftG: new(84.0), Used: &YarnUsed{MassG: new(12.0), Rows: new(10), FirstRowStitches: 120}}},
		Sections: []RowsAhead{{Rows: new(60), Stitches: new(120)}}}
	out := remainingOf(t, in)
	y := out.Yarns[0]
	knittest.Near(t, "enough", y.EnoughForStitches.Likely, 8400, 1e-12)
	knittest.Near(t, "enough, low", y.EnoughForStitches.Low, 83.5*1200/13, 1e-9)
	knittest.Near(t, "enough, high", y.EnoughForStitches.High, 84.5*1200/11, 1e-9)
	knittest.Near(t, "needed", y.NeededG.High, 78, 1e-12)
	knittest.Near(t, "margin", y.MarginG.Low, 5.5, 1e-12)
	want := "It will last: 84 g left, 72 g needed (66 g to 78 g), at least 5.5 g over. All 60 rows can be worked."
	if got := out.Summary(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	// 66 rows are 7920 stitches: likely, not surely; 72 are 8640, doubtful; 77 are 9240, no.
	for rows, want := range map[int]Lasts{64: LastsSurely, 65: LastsLikely,
		70: LastsLikely, 71: LastsDoubtful, 76: LastsDoubtful, 77: LastsNo} {
		in.Sections[0].Rows = new(rows)
		if got := remainingOf(t, in); got.Lasts != want || *got.MainRows.Low != min(rows, 64) || *got.MainRows.Likely != min(rows, 70) {
			t.Errorf("%d rows: %v, %d and %d rows", rows, got.Lasts, *got.MainRows.Low, *got.MainRows.Likely)
		}
	}
	// The border, 8 rows of 120 and a bind-off of 4/4.2 of a row: 8*120 + 114.2857 are
	// 1074.2857, so that 7325.71 are left for the rows: 61 of them.
	in.Sections[0].Rows, in.Border = new(70), &BorderAhead{Rows: 8}
	out = remainingOf(t, in)
	if *out.MainRows.Likely != 61 || out.Lasts != LastsNo {
		t.Errorf("border after %d rows, %v", *out.MainRows.Likely, out.Lasts)
	}
	knittest.Near(t, "needed", out.Yarns[0].NeededG.Likely, (70*120+8*120+120*4/4.2)*0.01, 1e-6)
	in.Border.BindOff = new(false)
	if out = remainingOf(t, in); *out.MainRows.Likely != 62 { // 8400 - 960 = 62 rows of 120
		t.Errorf("border without a bind-off after %d rows", *out.MainRows.Likely)
	}
}

// Where it does not last and no ball is known, what to do is said with figures: 77 rows of
// 120 at 0.01 g or more.
func TestShortYarnSaysWhatToDo(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftM: new(100.0)}}, Gauge: gateGauge(),
		State: FabricStateFullyRelaxed, Sections: []RowsAhead{{Rows: new(250), Stitches: new(100)}}}
	out := remainingOf(t, in)
	short := yarn.LengthWords(0, -out.Yarns[0].MarginM.Low)
	d := strings.Join(out.Directions(), " ")
	for _, want := range []string{"Have " + short + " more to be safe", "same dye lot",
		"stop after " + strconv.Itoa(*out.MainRows.Low) + " rows"} {
		if !strings.Contains(d, want) {
			t.Errorf("%v: directions %q, want %q", out.Yarns[0].Lasts, d, want)
		}
	}
}

// By the geometry of the loop a stitch of 84 and 110 to 10 cm takes 0.5 cm: 100 m are
// 20,000 stitches; a tenth of a ball of 50 m to 25 g more is missing.
func TestRemainingByLoop(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftM: new(100.0), PutUp: &yarn.PutUp{BallM: 50, BallG: 25}}}, Gauge: gateGauge(),
		State: FabricStateFullyRelaxed, Sections: []RowsAhead{{Rows: new(210), Stitches: new(100)}}}
	y := remainingOf(t, in).Yarns[0]
	knittest.Near(t, "enough", y.EnoughForStitches.Likely, 20_000, 1e-9)
	knittest.Near(t, "needed", y.NeededM.Likely, 105, 1e-9)
	knittest.Near(t, "grams", y.NeededG.Likely, 52.5, 1e-9)
	knittest.Near(t, "high", y.NeededM.High, 105*1.0510766, 1e-6) // sqrt(25.52/23.1)
	if *y.MoreBalls != 1 || y.Lasts != LastsNo {
		t.Errorf("%d balls more, %v", *y.MoreBalls, y.Lasts)
	}
	// A gauge 5 % looser has loops 1/0.95 as long.
	in.GaugeOffPercent = 5
	y = remainingOf(t, in).Yarns[0]
	knittest.Near(t, "loose", y.NeededM.High, 105*1.0510766/0.95, 1e-6)
	knittest.Near(t, "dense", y.NeededM.Low, 105*0.9579912/1.05, 1e-6)
	// In grams it is the same yarn: 50 g are 100 m.
	in.Yarns[0].LeftM, in.Yarns[0].LeftG, in.GaugeOffPercent = nil, new(50.0), 0
	knittest.Near(t, "by grams", remainingOf(t, in).Yarns[0].EnoughForStitches.Likely, 20_000, 1e-9)
}

// Two colours of a stranded row: by their shares, as EstimateYarn divides them.
func TestStrandedRemains(t *testing.T) {
	put := &yarn.PutUp{BallM: 25, BallG: 10}
	shares := []ColourShare{{"main", 60}, {"contrast", 40}}
	est := estimateOf(t, EstimateInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, ReservePercent: new(0.0),
		Pieces: []Piece{{Counted: &CountedPiece{200, 100}}}, Colours: shares, PutUp: put})
	in := RemainingInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, Sections: []RowsAhead{{Rows: new(100), Stitches: new(200)}}}
	for _, s := range shares {
		in.Yarns = append(in.Yarns, YarnLeft{Name: s.Name, LeftM: new(75.0), SharePercent: new(float64(s.SharePercent)), PutUp: put})
	}
	out := remainingOf(t, in)
	for i, y := range out.Yarns {
		for k, got := range []float64{y.NeededM.Low, y.NeededM.Likely, y.NeededM.High} {
			want := est.Colours[i].LengthM
			knittest.Near(t, y.Name, got, []float64{want.Low, want.Likely, want.High}[k], 1e-9)
		}
	}
	// 72 m of 75 for the main colour, 58 of the contrast; at the worst 60*1.051 + 0.4*35 = 77.06.
	if out.Yarns[0].Lasts != LastsLikely || out.Yarns[1].Lasts != LastsSurely || out.Lasts != LastsLikely {
		t.Errorf("%v and %v", out.Yarns[0].Lasts, out.Yarns[1].Lasts)
	}
	want := "Main will probably last: 30 g left, 29 g needed (27 g to 31 g), but at the worst 0.83 g short."
	if got := out.Summary(); !strings.HasPrefix(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// The outline falls from what is left to what will be, line by line, and ends at nothing.
func TestRemainingOutline(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftG: new(84.0), Used: &YarnUsed{MassG: new(12.0), Rows: new(10), FirstRowStitches: 120}}},
		Sections: []RowsAhead{{Rows: new(70), Stitches: new(120)}}, WithOutline: true}
	out := remainingOf(t, in)
	if len(out.Outline.Lines) != 3 {
		t.Fatalf("%d lines", len(out.Outline.Lines))
	}
	likely := out.Outline.Lines[1]
	first, last := likely.Points[0], likely.Points[len(likely.Points)-1]
	knittest.Near(t, "at first", first.Y, 100, 1e-12)
	if last.X != 70 || last.Y > 1e-9 || last.Y < 0 { // 70 rows of 1.2 g are 84 g
		t.Errorf("the likely line ends at %+v", last)
	}
	if n := len(out.Outline.Lines[0].Points); n != 65 { // 64 rows by the low figures
		t.Errorf("the low line has %d points", n)
	}
	in.Sections[0].Rows, in.Yarns[0].LeftG = new(10_000), new(100_000.0)
	long := remainingOf(t, in).Outline
	outlinetest.CheckFrame(t, long)
	for _, l := range long.Lines {
		if len(l.Points) > 102 {
			t.Errorf("%d points", len(l.Points))
		}
	}
}

func BenchmarkPlanRemainingYarn(b *testing.B) {
	shawl := RemainingInput{Yarns: []YarnLeft{{LeftG: new(84.0), Used: &YarnUsed{MassG: new(12.0), Rows: new(10), FirstRowStitches: 120}}},
		Sections: []RowsAhead{{Stitches: new(139), ChangeStitches: 2}}, Border: &BorderAhead{Rows: 8}, SharePercents: []float64{50}}
	stripes := shawl
	stripes.Yarns = []YarnLeft{shawl.Yarns[0], shawl.Yarns[0]}
	stripes.Stripes = []Stripe{{1, 2}, {2, 4}}
	loop := shawl
	loop.Yarns = []YarnLeft{{LeftM: new(200.0)}}
	loop.Gauge = &gauge.Gauge{Stitches: 22, Rows: 30}
	for name, in := range map[string]RemainingInput{"shawl": shawl, "stripes": stripes, "loop": loop} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := PlanRemainingYarn(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// What should be there at a second weighing is said in grams wherever they can be had: by
// loop too, of a yarn whose put-up is known, 20 g of which are 80 m.
func TestWeighedAgainInGrams(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftG: new(20.0), PutUp: &yarn.PutUp{BallM: 400, BallG: 100}}}, State: FabricStateFullyRelaxed,
		Sections: []RowsAhead{{Stitches: new(3), ChangeStitches: 2}}, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}}
	out, err := PlanRemainingYarn(in)
	if err != nil {
		t.Fatal(err)
	}
	if d := out.Directions()[0]; !strings.Contains(d, "there should be 15 g.") {
		t.Error(d)
	}
	in.Yarns[0].LeftG, in.Yarns[0].LeftM = nil, new(80.0)
	in.Yarns[0].PutUp = nil
	if out, err = PlanRemainingYarn(in); err != nil || !strings.Contains(out.Directions()[0], "there should be 60 m.") {
		t.Error(err, out.Directions())
	}
}
