package yardage

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yarn"
)

func TestYarnRefusals(t *testing.T) {
	n := func(i int) *int { return &i }
	nan, inf := math.NaN(), math.Inf(1)
	g := &gauge.Gauge{Stitches: 18, Rows: 24}
	square := []Piece{{Counted: &CountedPiece{20, 20}}}
	piece := func(p Piece) EstimateInput { return EstimateInput{Gauge: g, Pieces: []Piece{p}} }
	for _, c := range []struct {
		name string
		in   EstimateInput
		want []string
	}{
		{"nothing", EstimateInput{}, []string{"gauge REQUIRED", "stitch_gauge REQUIRED", "pieces REQUIRED"}},
		{"empty parts", EstimateInput{Gauge: g, Pieces: []Piece{{}}, Swatch: &WeighedSwatch{}, PutUp: &yarn.PutUp{},
			Colours: make([]ColourShare, 2)},
			[]string{"pieces[0].counted REQUIRED", "pieces[0].trapezoid REQUIRED", "pieces[0].rowwise REQUIRED",
				"swatch.mass_g REQUIRED", "swatch.width_cm REQUIRED", "swatch.height_cm REQUIRED", "put_up.ball_m REQUIRED",
				"put_up.ball_g REQUIRED", "colours[0].share_percent REQUIRED", "colours[1].share_percent REQUIRED"}},
		{"empty counted", piece(Piece{Counted: &CountedPiece{}}),
			[]string{"pieces[0].counted.stitches REQUIRED", "pieces[0].counted.rows REQUIRED"}},
		{"empty trapezoid", piece(Piece{Trapezoid: &TrapezoidPiece{}}), []string{"pieces[0].trapezoid.start_width_cm REQUIRED",
			"pieces[0].trapezoid.end_width_cm REQUIRED", "pieces[0].trapezoid.height_cm REQUIRED"}},
		{"empty rowwise", piece(Piece{Rowwise: &RowwisePiece{}}), []string{"pieces[0].rowwise.row_stitches REQUIRED"}},
		{"rows of nothing", piece(Piece{Rowwise: &RowwisePiece{[]int{20, 0, 20, -1, 10_001}}}),
			[]string{"pieces[0].rowwise.row_stitches[1] OUT_OF_RANGE", "pieces[0].rowwise.row_stitches[3] OUT_OF_RANGE",
				"pieces[0].rowwise.row_stitches[4] OUT_OF_RANGE"}},
		{"several shapes", piece(Piece{Counted: &CountedPiece{1, 1}, Rowwise: &RowwisePiece{[]int{1}}}),
			[]string{"pieces[0].counted CONTRADICTORY", "pieces[0].rowwise CONTRADICTORY"}},
		{"pattern and factor", piece(Piece{Counted: &CountedPiece{1, 1}, Pattern: StitchPatternStockinette, PatternFactor: knittest.Ptr(1.0)}),
			[]string{"pieces[0].pattern CONTRADICTORY", "pieces[0].pattern_factor CONTRADICTORY"}},
		{"not finite", EstimateInput{Gauge: &gauge.Gauge{Stitches: nan, Rows: inf, OverCm: nil},
			Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(nan), new(inf), nan}, PatternFactor: &nan}},
			Swatch: &WeighedSwatch{nan, inf, nan, &inf, 0}, PutUp: &yarn.PutUp{BallM: nan, BallG: inf}, ReservePercent: &nan,
			Colours: []ColourShare{{"", nan}, {"", inf}}},
			[]string{"gauge.stitches NOT_FINITE", "gauge.rows NOT_FINITE", "pieces[0].pattern_factor NOT_FINITE",
				"pieces[0].trapezoid.start_width_cm NOT_FINITE", "pieces[0].trapezoid.end_width_cm NOT_FINITE",
				"pieces[0].trapezoid.height_cm NOT_FINITE", "swatch.mass_g NOT_FINITE", "swatch.width_cm NOT_FINITE",
				"swatch.height_cm NOT_FINITE", "swatch.scale_step_g NOT_FINITE", "put_up.ball_m NOT_FINITE", "put_up.ball_g NOT_FINITE",
				"reserve_percent NOT_FINITE", "colours[0].share_percent NOT_FINITE", "colours[1].share_percent NOT_FINITE"}},
		{"zero and negative", EstimateInput{Gauge: g, Pieces: []Piece{{Times: n(0), PatternFactor: knittest.Ptr(0.0),
			Trapezoid: &TrapezoidPiece{new(-1.0), new(1.0), -1}}},
			Swatch: &WeighedSwatch{-1, -1, -1, knittest.Ptr(0.0), 0}, PutUp: &yarn.PutUp{BallM: -1, BallG: -1}, ReservePercent: knittest.Ptr(-1.0),
			Colours: []ColourShare{{"", -1}, {"", 101}}},
			[]string{"pieces[0].times OUT_OF_RANGE", "pieces[0].pattern_factor OUT_OF_RANGE",
				"pieces[0].trapezoid.start_width_cm OUT_OF_RANGE", "pieces[0].trapezoid.height_cm OUT_OF_RANGE",
				"swatch.mass_g OUT_OF_RANGE", "swatch.width_cm OUT_OF_RANGE", "swatch.height_cm OUT_OF_RANGE",
				"swatch.scale_step_g OUT_OF_RANGE", "put_up.ball_m OUT_OF_RANGE", "put_up.ball_g OUT_OF_RANGE",
				"reserve_percent OUT_OF_RANGE", "colours[0].share_percent OUT_OF_RANGE", "colours[1].share_percent OUT_OF_RANGE"}},
		{"too large", EstimateInput{Gauge: g, Pieces: []Piece{{Name: strings.Repeat("x", 101), Times: n(101), PatternFactor: knittest.Ptr(3.1),
			Counted: &CountedPiece{10_001, 10_001}}}, Swatch: &WeighedSwatch{10_001, 1001, 1001, knittest.Ptr(101.0), 0},
			PutUp: &yarn.PutUp{BallM: 100_001, BallG: 10_001}, ReservePercent: knittest.Ptr(101.0),
			Colours: []ColourShare{{strings.Repeat("x", 101), 50}, {"", 50}}},
			[]string{"pieces[0].name TOO_MANY", "pieces[0].times OUT_OF_RANGE", "pieces[0].pattern_factor OUT_OF_RANGE",
				"pieces[0].counted.stitches OUT_OF_RANGE", "pieces[0].counted.rows OUT_OF_RANGE",
				"swatch.mass_g OUT_OF_RANGE", "swatch.width_cm OUT_OF_RANGE", "swatch.height_cm OUT_OF_RANGE",
				"swatch.scale_step_g OUT_OF_RANGE", "put_up.ball_m OUT_OF_RANGE", "put_up.ball_g OUT_OF_RANGE",
				"reserve_percent OUT_OF_RANGE", "colours[0].name TOO_MANY"}},
		{"too many", EstimateInput{Gauge: g, Pieces: make([]Piece, 101), Colours: make([]ColourShare, 6)},
			[]string{"pieces TOO_MANY", "colours TOO_MANY"}},
		{"too many rows", piece(Piece{Rowwise: &RowwisePiece{make([]int, 10_001)}}), []string{"pieces[0].rowwise.row_stitches TOO_MANY"}},
		{"too many rows together", EstimateInput{Gauge: g, Pieces: slices.Repeat(
			[]Piece{{Rowwise: &RowwisePiece{slices.Repeat([]int{5}, stitch.MaxRows)}}}, 5)},
			[]string{"pieces[2].rowwise.row_stitches TOO_MANY"}},
		{"unknown enums", EstimateInput{Gauge: g, Pieces: []Piece{{Pattern: 9, Counted: &CountedPiece{1, 1}}},
			State: 4, DyeLot: -1, DisplayUnit: 3},
			[]string{"pieces[0].pattern UNKNOWN_VALUE", "state UNKNOWN_VALUE", "dye_lot UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		{"one colour", EstimateInput{Gauge: g, Pieces: square, Colours: []ColourShare{{"", 100}}}, []string{"colours OUT_OF_RANGE"}},
		{"shares short of 100", EstimateInput{Gauge: g, Pieces: square, Colours: []ColourShare{{"", 60}, {"", 39.98}}},
			[]string{"colours[0].share_percent INFEASIBLE", "colours[1].share_percent INFEASIBLE"}},
		{"shares over 100", EstimateInput{Gauge: g, Pieces: square, Colours: []ColourShare{{"", 60}, {"", 40.02}}},
			[]string{"colours[0].share_percent INFEASIBLE", "colours[1].share_percent INFEASIBLE"}},
		{"scale too coarse", EstimateInput{Gauge: g, Pieces: square, Swatch: &WeighedSwatch{MassG: 0.5, WidthCm: 5, HeightCm: 5}},
			[]string{"swatch.mass_g INFEASIBLE", "swatch.scale_step_g INFEASIBLE"}},
		// A hundred times a hundred pieces of 1e8 stitches of metres each.
		{"more than there is", EstimateInput{Gauge: &gauge.Gauge{Stitches: 0.001, Rows: 0.001},
			Pieces: []Piece{{Times: n(100), Counted: &CountedPiece{10_000, 10_000}}}},
			[]string{"gauge INFEASIBLE", "pieces INFEASIBLE"}},
		{"heavier than there is", EstimateInput{Gauge: g, Pieces: []Piece{{Times: n(100), Trapezoid: &TrapezoidPiece{new(1000.0), nil, 1000}}},
			Swatch: &WeighedSwatch{MassG: 10_000, WidthCm: 1, HeightCm: 1}},
			[]string{"gauge INFEASIBLE", "pieces INFEASIBLE", "swatch INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := EstimateYarn(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

// At the limits there is an answer, of bounded size; the shares may be off by a
// hundredth; and a question full of faults lists the first hundred.
func TestYarnLimits(t *testing.T) {
	rows := make([]int, stitch.MaxRows)
	for i := range rows {
		rows[i] = stitch.MaxStitches
	}
	in := EstimateInput{
		Gauge:          &gauge.Gauge{Stitches: 40, Rows: 50},
		PutUp:          &yarn.PutUp{BallM: yarn.MinBallM, BallG: yarn.MaxBallG},
		ReservePercent: knittest.Ptr(0.0),
	}
	for range 5 {
		in.Colours = append(in.Colours, ColourShare{strings.Repeat("é", fault.MaxNameLength), 20})
	}
	in.Colours[4].SharePercent = 20.01
	for range MaxPieces - 1 {
		in.Pieces = append(in.Pieces, Piece{Name: strings.Repeat("é", fault.MaxNameLength), Counted: &CountedPiece{1, 1}})
	}
	in.Pieces = append(in.Pieces, Piece{Rowwise: &RowwisePiece{rows}})
	in.PutUp.BallG = 1
	out := estimateOf(t, in)
	if len(out.Pieces) != MaxPieces || out.Stitches != 1e8+MaxPieces-1 {
		t.Errorf("%d pieces, %v stitches", len(out.Pieces), out.Stitches)
	}
	for i := range rows {
		rows[i] = 0
	}
	_, err := EstimateYarn(in)
	if got := len(knittest.Reasons(err)); got != fault.MaxViolations {
		t.Errorf("%d faults listed, want %d", got, fault.MaxViolations)
	}
}

func FuzzEstimateYarn(f *testing.F) {
	f.Add(18.0, 24.0, 10.0, 100, 60, 50.0, 60.0, 40.0, 1.2, 5.0, 10.0, 1.0, 200.0, 100.0, 10.0, 60.0, int32(3), uint16(0x7fff))
	f.Add(1e-6, 1e-6, 100.0, 10_000, 10_000, 1000.0, 0.0, 1000.0, 3.0, 10_000.0, 1.0,
		100.0, 1.0, 10_000.0, 100.0, 99.999, int32(0), uint16(0x7fff))
	f.Add(1000.0, 1000.0, 0.1, 1, 1, 0.0, 0.1, 0.1, 0.5, 0.1, 1000.0, 0.1, 100_000.0, 1.0, 0.0, 1e-6, int32(1), uint16(0x3fff))
	f.Add(math.NaN(), math.Inf(1), -1.0, 0, -1, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, int32(9), uint16(0x1ff))
	// A gauge without width: floats beyond counting by loop, and a swatch that the answer goes by.
	f.Add(1e-06, 455.0, 100.0, 9926, 10_000, 945.0, 0.0, 1000.0, 3.0, 10_000.0, 34.0, 33.0, 1.0, 9901.0, 8.0, 25.0, int32(0), uint16(32756))
	f.Fuzz(func(t *testing.T, st, rw, over float64, a, b int, w1, w2, h, factor, mass, side, step, ballM, ballG, reserve, share float64,
		enums int32, given uint16) {
		in := EstimateInput{Gauge: &gauge.Gauge{Stitches: st, Rows: rw}, State: FabricState(enums),
			DyeLot: DyeLot(enums >> 1), DisplayUnit: measure.DisplayUnit(given >> 14)}
		if given&1 != 0 {
			in.Gauge.OverCm = &over
		}
		if given&2 != 0 {
			in.Pieces = append(in.Pieces, Piece{Name: "a", Times: &b, Pattern: StitchPattern(enums >> 2), Counted: &CountedPiece{a, b}})
		}
		if given&4 != 0 {
			in.Pieces = append(in.Pieces, Piece{PatternFactor: &factor, Trapezoid: &TrapezoidPiece{new(w1), new(w2), h}})
		}
		if given&8 != 0 {
			in.Pieces = append(in.Pieces, Piece{Rowwise: &RowwisePiece{[]int{a, b, a}}})
		}
		if given&16 != 0 {
			in.Swatch = &WeighedSwatch{MassG: mass, WidthCm: side, HeightCm: side}
			if given&32 != 0 {
				in.Swatch.ScaleStepG = &step
			}
		}
		if given&64 != 0 {
			in.PutUp = &yarn.PutUp{BallM: ballM, BallG: ballG}
		}
		if given&128 != 0 {
			in.ReservePercent = &reserve
		}
		if given&256 != 0 {
			in.Colours = []ColourShare{{"a", share}, {"b", 100 - share}}
		}
		out, err := EstimateYarn(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkYarnAddsUp(t, in, out)
		_, _ = out.Summary(), out.Sources()
	})
}

// checkYarnAddsUp checks that the parts make the whole and the ranges are ranges.
func checkYarnAddsUp(t *testing.T, in EstimateInput, out Estimate) {
	t.Helper()
	stitches, area, length := 0.0, 0.0, 0.0
	for _, p := range out.Pieces {
		stitches, area, length = stitches+p.Stitches, area+p.AreaCm2, length+p.LengthM
	}
	knittest.Near(t, "stitches", stitches, out.Stitches, 1e-9)
	knittest.Near(t, "area", area, out.AreaCm2, 1e-9)
	if out.TrimmingsM != nil {
		length += out.TrimmingsM.Likely
	}
	knittest.Near(t, "metres", length, out.ByLoop.LengthM.Likely, 1e-9)
	for _, r := range []*Range{&out.LengthM, out.MassG, out.ByLoop.LengthM, out.ByLoop.MassG} {
		if r != nil && !(0 < r.Low && r.Low <= r.Likely && r.Likely <= r.High && r.High <= MaxYarn) {
			t.Fatalf("range %+v", *r)
		}
	}
	if (out.BallCount == nil) != (in.PutUp == nil) || len(out.Colours) != len(in.Colours) {
		t.Fatalf("parts of %+v", out)
	}
	if len(out.Colours) > 0 {
		checkColoursAddUp(t, out)
	}
	if out.BallCount != nil && (*out.BallCount < 1 || *out.BallCount > math.MaxInt32) {
		t.Fatalf("%d balls", *out.BallCount)
	}
}

// checkColoursAddUp checks that the colours make the whole.
func checkColoursAddUp(t *testing.T, out Estimate) {
	t.Helper()
	sum, balls := Range{}, 0
	for _, c := range out.Colours {
		sum = Range{sum.Low + c.LengthM.Low, sum.Likely + c.LengthM.Likely, sum.High + c.LengthM.High}
		balls += fault.Or(c.BallCount, 0)
	}
	knittest.Near(t, "colours, low", sum.Low, out.LengthM.Low, 1e-9)
	knittest.Near(t, "colours, likely", sum.Likely, out.LengthM.Likely, 1e-9)
	knittest.Near(t, "colours, high", sum.High, out.LengthM.High, 1e-9)
	if balls != fault.Or(out.BallCount, 0) {
		t.Fatalf("%d balls by colour, %d in all", balls, fault.Or(out.BallCount, 0))
	}
}
