package yardage

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/yarn"
)

// 20,000 stitches of 0.5 cm, 100 m, without a reserve: the ground of the cases below.
func hundredMetres() EstimateInput {
	return EstimateInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, ReservePercent: new(0.0),
		Pieces: []Piece{{Counted: &CountedPiece{200, 100}}}}
}

// Edges by hand: 84 stitches to 10 cm, so that 210 are 25 cm. Tail of the cast-on 3.5 times,
// bind-off 4 times, two seams of 30 cm twice, 1.2 m; in all 87.5 + 100 + 120 cm.
func TestEdges(t *testing.T) {
	in := hundredMetres()
	in.Edges = []EdgeWork{
		{Name: "hem", Kind: EdgeKindLongTailCastOn, Stitches: new(210)},
		{Kind: EdgeKindBindOff, Stitches: new(210)},
		{Kind: EdgeKindSeam, LengthCm: new(30.0), Times: new(2)},
	}
	out := estimateOf(t, in)
	for i, want := range []Range{{0.75, 0.875, 1}, {0.75, 1, 1.25}, {0.9, 1.2, 1.5}} {
		got := out.Edges[i].LengthM
		for _, p := range [][2]float64{{got.Low, want.Low}, {got.Likely, want.Likely}, {got.High, want.High}} {
			knittest.Near(t, "edge", p[0], p[1], 1e-12)
		}
	}
	knittest.Near(t, "trimmings", out.TrimmingsM.Likely, 3.075, 1e-12)
	knittest.Near(t, "in all", out.LengthM.Likely, 103.075, 1e-12)
	knittest.Near(t, "in all, high", out.LengthM.High, 105.10766+3.75, 1e-6)
	// Four times 25 cm and 15 to weave in.
	if got := out.Directions(); !slices.Equal(got, []string{"Leave a tail of 115 cm for the cast-on of hem."}) {
		t.Errorf("%q", got)
	}
}

// A fringe of 60 tassels of 4 strands, 12 cm long and with 3 cm of knot: 240 * 27 cm are
// 64.8 m. Two pompoms of 6 cm wound around 150 times: 2*150*12 cm are 36 m.
func TestFringeAndPompoms(t *testing.T) {
	in := hundredMetres()
	in.Fringe = &Fringe{Tassels: 60, Strands: new(4), FinishedCm: 12}
	in.Pompoms = &Pompoms{Times: new(2), DiameterCm: 6, Windings: 150}
	out := estimateOf(t, in)
	knittest.Near(t, "trimmings", out.TrimmingsM.High, 100.8, 1e-12)
	knittest.Near(t, "in all", out.LengthM.Likely, 200.8, 1e-12)
	// By swatch they weigh what the put-up says: 2 m to the gram.
	in.Swatch, in.PutUp = &WeighedSwatch{MassG: 10, WidthCm: 10, HeightCm: 10}, &yarn.PutUp{BallM: 100, BallG: 50}
	knittest.Near(t, "grams", estimateOf(t, in).MassG.Likely, estimateOf(t, in).AreaCm2/10+50.4, 1e-9)
}

// The colours by the way they are worked: stripes and fields have no floats; of slipped
// work a quarter of the stitches takes a float instead of a loop, which is 0.30 of one.
func TestColourWork(t *testing.T) {
	in := hundredMetres()
	in.Colours = []ColourShare{{"a", 60}, {"b", 40}}
	for _, c := range []struct {
		work ColourWork
		slip *float64
		want float64
	}{
		{ColourWorkUnspecified, nil, 130}, {ColourWorkStranded, nil, 130},
		{ColourWorkStripes, nil, 100}, {ColourWorkIntarsia, nil, 100},
		{ColourWorkSlipped, new(25.0), 75 + 0.25*30}, {ColourWorkSlipped, new(0.0), 100},
	} {
		in.ColourWork, in.SlippedPercent = c.work, c.slip
		out := estimateOf(t, in)
		knittest.Near(t, "in all", out.LengthM.Likely, c.want, 1e-12)
		knittest.Near(t, "colours", out.Colours[0].LengthM.Likely+out.Colours[1].LengthM.Likely, c.want, 1e-12)
		if c.work == ColourWorkStripes {
			knittest.Near(t, "first", out.Colours[0].LengthM.Likely, 60, 1e-12)
			in.Fringe = &Fringe{Tassels: 10, FinishedCm: 100, KnotCm: new(0.0)} // 20 m, in the first colour
			out = estimateOf(t, in)
			knittest.Near(t, "first with the fringe", out.Colours[0].LengthM.Likely, 80, 1e-12)
			knittest.Near(t, "second", out.Colours[1].LengthM.Likely, 40, 1e-12)
			in.Fringe = nil
		}
	}
}

// A gauge that is off goes to a counted stitch by its inverse and to an area by itself:
// l is sqrt(ks/S), and an area has S of them. The range is the one at the two ends.
func TestGaugeOff(t *testing.T) {
	for _, c := range []struct {
		name      string
		piece     Piece
		low, high float64
	}{
		{"counted", Piece{Counted: &CountedPiece{200, 100}}, 1 / 1.05, 1 / 0.95},
		{"area", Piece{Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}, 0.95, 1.05},
	} {
		in := hundredMetres()
		in.Pieces = []Piece{c.piece}
		exact := estimateOf(t, in).LengthM
		in.GaugeOffPercent = 5
		off := estimateOf(t, in).LengthM
		knittest.Near(t, c.name+" low", off.Low/exact.Low, c.low, 1e-12)
		knittest.Near(t, c.name+" likely", off.Likely/exact.Likely, 1, 1e-12)
		knittest.Near(t, c.name+" high", off.High/exact.High, c.high, 1e-12)
	}
}

// A ruler that is off widens the range by swatch: 10 g to (10±0.5)^2 cm2.
func TestRulerOff(t *testing.T) {
	in := hundredMetres()
	in.Pieces = []Piece{{Trapezoid: &TrapezoidPiece{new(100.0), new(100.0), 100}}}
	in.Swatch = &WeighedSwatch{MassG: 10, WidthCm: 10, HeightCm: 10, ScaleStepG: new(0.001), RulerStepCm: 0.5}
	m := estimateOf(t, in).BySwatch.MassG
	knittest.Near(t, "low", m.Low, 1e4*(10-0.0005)/(10.5*10.5), 1e-12)
	knittest.Near(t, "high", m.High, 1e4*(10+0.0005)/(9.5*9.5), 1e-12)
}

// Balls: 100 m in balls of 25 m are 4 and leave nothing over; with half a metre lost of each
// 5, which leave 22.5 m; and one to spare makes 6.
func TestBallsBesides(t *testing.T) {
	in := hundredMetres()
	in.PutUp, in.DyeLot = &yarn.PutUp{BallM: 25, BallG: 10}, DyeLotMoreLater
	for _, c := range []struct {
		waste       float64
		spare, want int
		over        float64
	}{{0, 0, 4, 0}, {0.5, 0, 5, 22.5}, {0.5, 1, 6, 47}, {0, 2, 6, 50}} {
		in.BallWasteM, in.SpareBalls = c.waste, c.spare
		out := estimateOf(t, in)
		if *out.BallCount != c.want {
			t.Errorf("%v m lost, %d to spare: %d balls, want %d", c.waste, c.spare, *out.BallCount, c.want)
		}
		knittest.Near(t, "left over", out.LeftOverM.Likely, c.over, 1e-9)
	}
}

func TestTrimmingRefusals(t *testing.T) {
	with := func(change func(*EstimateInput)) EstimateInput {
		in := hundredMetres()
		change(&in)
		return in
	}
	long := strings.Repeat("x", 101)
	for _, c := range []struct {
		name string
		in   EstimateInput
		want []string
	}{
		{"two gauges", with(func(in *EstimateInput) { in.StitchGauge = &StitchGauge{Stitches: 20} }),
			[]string{"gauge CONTRADICTORY", "stitch_gauge CONTRADICTORY"}},
		{"empty stitch gauge", with(func(in *EstimateInput) { in.Gauge, in.StitchGauge = nil, &StitchGauge{OverCm: new(101.0)} }),
			[]string{"stitch_gauge.stitches REQUIRED", "stitch_gauge.over_cm OUT_OF_RANGE"}},
		{"empty parts", with(func(in *EstimateInput) { in.Edges, in.Fringe, in.Pompoms = []EdgeWork{{}}, &Fringe{}, &Pompoms{} }),
			[]string{"edges[0].kind REQUIRED", "edges[0].stitches REQUIRED", "edges[0].length_cm REQUIRED", "fringe.tassels REQUIRED",
				"fringe.finished_cm REQUIRED", "pompoms.diameter_cm REQUIRED", "pompoms.windings REQUIRED"}},
		{"out of range", with(func(in *EstimateInput) {
			in.Edges = []EdgeWork{{Name: long, Kind: 7, Stitches: new(0), Times: new(0)}, {Kind: EdgeKindSeam, LengthCm: new(10_001.0)}}
			in.Fringe = &Fringe{10_001, new(0), 1_001, new(-1.0)}
			in.Pompoms = &Pompoms{new(0), 101, 10_001}
			in.GaugeOffPercent, in.ColourWork = 21, 5
		}), []string{"colour_work UNKNOWN_VALUE", "colour_work CONTRADICTORY", "gauge_off_percent OUT_OF_RANGE", "edges[0].name TOO_MANY",
			"edges[0].kind UNKNOWN_VALUE", "edges[0].stitches OUT_OF_RANGE", "edges[0].times OUT_OF_RANGE", "edges[1].length_cm OUT_OF_RANGE",
			"fringe.tassels OUT_OF_RANGE", "fringe.strands OUT_OF_RANGE", "fringe.finished_cm OUT_OF_RANGE", "fringe.knot_cm OUT_OF_RANGE",
			"pompoms.times OUT_OF_RANGE", "pompoms.diameter_cm OUT_OF_RANGE", "pompoms.windings OUT_OF_RANGE"}},
		{"too many edges", with(func(in *EstimateInput) { in.Edges = make([]EdgeWork, 51) }), []string{"edges TOO_MANY"}},
		{"slipped and no share", with(func(in *EstimateInput) {
			in.Colours, in.ColourWork = []ColourShare{{"", 50}, {"", 50}}, ColourWorkSlipped
		}), []string{"slipped_percent REQUIRED"}},
		{"share and nothing slipped", with(func(in *EstimateInput) { in.SlippedPercent = new(25.0) }),
			[]string{"slipped_percent CONTRADICTORY"}},
		{"all slipped", with(func(in *EstimateInput) {
			in.Colours, in.ColourWork, in.SlippedPercent = []ColourShare{{"", 50}, {"", 50}}, ColourWorkSlipped, new(76.0)
		}), []string{"slipped_percent OUT_OF_RANGE"}},
		{"balls of nothing", with(func(in *EstimateInput) { in.BallWasteM, in.SpareBalls = 1, 1 }),
			[]string{"ball_waste_m CONTRADICTORY", "spare_balls CONTRADICTORY"}},
		{"balls out of range", with(func(in *EstimateInput) {
			in.BallWasteM, in.SpareBalls, in.PutUp = 101, 101, &yarn.PutUp{BallM: 300, BallG: 1}
		}),
			[]string{"ball_waste_m OUT_OF_RANGE", "spare_balls OUT_OF_RANGE"}},
		{"half of a ball lost", with(func(in *EstimateInput) { in.BallWasteM, in.PutUp = 5, &yarn.PutUp{BallM: 10, BallG: 1} }),
			[]string{"ball_waste_m INFEASIBLE"}},
		{"ruler too coarse", with(func(in *EstimateInput) {
			in.Swatch = &WeighedSwatch{MassG: 10, WidthCm: 5, HeightCm: 10, RulerStepCm: 2.5}
		}), []string{"swatch.ruler_step_cm INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := EstimateYarn(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// Random questions with everything in them add up, and every range is one.
func FuzzEstimateTrimmings(f *testing.F) {
	f.Add(22.0, 5.0, 40.0, 12.0, 25.0, 0.5, 1, int32(1), uint8(0xff))
	f.Add(1000.0, 20.0, 10_000.0, 1000.0, 75.0, 100.0, 100, int32(6), uint8(0x3f))
	f.Fuzz(func(t *testing.T, st, off, cm, hang, slip, waste float64, n int, kind int32, given uint8) {
		in := EstimateInput{StitchGauge: &StitchGauge{Stitches: st}, GaugeOffPercent: off, BallWasteM: waste, SpareBalls: n,
			Pieces: []Piece{{Pattern: StitchPattern(kind), Counted: &CountedPiece{100, 100}}}, PutUp: &yarn.PutUp{BallM: 300, BallG: 100}}
		if given&1 != 0 {
			in.Edges = []EdgeWork{{Kind: EdgeKind(kind), LengthCm: &cm}, {Kind: EdgeKind(kind), Stitches: &n, Times: &n}}
		}
		if given&2 != 0 {
			in.Fringe = &Fringe{Tassels: n, FinishedCm: hang}
		}
		if given&4 != 0 {
			in.Pompoms = &Pompoms{DiameterCm: cm, Windings: n}
		}
		if given&8 != 0 {
			in.Colours, in.ColourWork = []ColourShare{{"a", 30}, {"b", 70}}, ColourWork(kind)
			if given&16 != 0 {
				in.SlippedPercent = &slip
			}
		}
		if given&32 != 0 {
			in.Swatch = &WeighedSwatch{MassG: 10, WidthCm: 10, HeightCm: 10, RulerStepCm: off}
		}
		out, err := EstimateYarn(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkYarnAddsUp(t, in, out)
		knittest.Near(t, "left over", out.LeftOverM.Likely, float64(*out.BallCount)*(300-waste)-out.LengthM.Likely, 1e-9)
		_, _, _ = out.Summary(), out.Sources(), out.Directions()
	})
}
