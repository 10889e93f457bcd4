package yoke

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
)

// Worked by hand. 100 stitches on the needle, a back of 24, 4 rows: 2 pairs, whose
// turns cut each half of 12 stitches into three groups of 4. With the shortest row first
// the work begins in the middle, where there is no group to count, so that its turns may
// as well lie nearest to the profile: 4 * (1 - |2x - 23|/24) passes 1 and 3 rows where
// |2x - 23| = 18 and 6, 3 and 9 stitches from the edges.
func TestBackRaiseByHand(t *testing.T) {
	for _, c := range []struct {
		method shortrow.TurnMethod
		order  shortrow.Order
		want   []string
	}{
		{shortrow.TurnMethodWrapAndTurn, shortrow.OrderLongestFirst, []string{
			"k20, w&t", "p16, w&t", "k12, w&t", "p8, w&t",
			"k8, [k1 tog with its wrap, k3] twice, k76",
			"[k3, k1 tog with its wrap] twice, k92"}},
		// The wrong side passes its first turn and closes it; the last one waits.
		{shortrow.TurnMethodWrapAndTurn, shortrow.OrderShortestFirst, []string{
			"k15, w&t", "p6, w&t", "k6, k1 tog with its wrap, k5, w&t", "p12, p1 tog with its wrap, p5, w&t",
			"k18, k1 tog with its wrap, k78", "k2, k1 tog with its wrap, k97"}},
		{shortrow.TurnMethodYarnOver, shortrow.OrderLongestFirst, []string{
			"k20, turn", "yo, p16, turn", "yo, k12, turn", "yo, p8, turn",
			"yo, k8, k2tog, k3, k2tog, k79", // each k2tog takes a yarn over and the stitch after it
			"[k3, ssk] twice, k92"}},        // each ssk takes a stitch and the yarn over after it
		{shortrow.TurnMethodGerman, shortrow.OrderLongestFirst, []string{
			"k21, turn", "make DS, p17, turn", "make DS, k13, turn", "make DS, p9, turn",
			"make DS, k8, k DS, k3, k DS, k79", "[k3, k DS] twice, k92"}},
	} {
		raise := &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: new(4), BackStitches: new(24), Order: c.order, TurnMethod: c.method}
		plan := raiseOn(t, 100, raise)
		var got []string
		for _, r := range plan.Rows {
			got = append(got, r.Instruction.Row.Text())
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("method %d, order %d:\n%q, want\n%q", c.method, c.order, got, c.want)
		}
		if plan.BeginBeforeCentreStitches != 12 || math.Abs(plan.RiseCm-4.0/3) > 1e-12 {
			t.Errorf("%+v", plan)
		}
	}
}

// The raise lies where it was asked for: of 70 rounds the percentage system
// decreases in 35, 53 and 70.
func TestBackRaisePlace(t *testing.T) {
	for _, c := range []struct {
		place RaisePlace
		bands []Band
		round int
		count int
		begin int
	}{
		{RaisePlaceBeforeBands, nil, 1, 268, 67},
		{RaisePlaceAfterBands, nil, 68, 134, 67}, // half of 134 is 67 stitches, half of which is a quarter of the round: 67 of 268
		{RaisePlaceBeforeBands, []Band{{10, 4, new(4)}}, 1, 268, 67},
		// Between 134 and 80 a third is taken twice, first on round 62: to 103, since 103 * 103 is about 134 * 80.
		{RaisePlaceAfterBands, []Band{{10, 4, new(4)}}, 68, 103, 66},
		// 16-61 on 189, three rounds to 80: to 142, 107 and 80, since each leaves three quarters.
		{RaisePlaceAfterBands, []Band{{10, 4, new(4)}, {46, 1, nil}}, 68, 107, 66},
	} {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Bands: c.bands,
			TolerancePercent: new(0.0), BackRaise: &BackRaise{Place: c.place}}
		out, err := PlanCircularYoke(in)
		if err != nil {
			t.Errorf("%+v: %v", c, err)
			continue
		}
		checkYoke(t, in, out)
		r := out.BackRaise
		if r.FirstRoundNumber != c.round || r.Stitches != c.count || r.BackStitches != c.count/2 || r.BeginBeforeCentreStitches != c.begin {
			t.Errorf("%+v: round %d, back %d of %d, begins %d before the centre", c, r.FirstRoundNumber, r.BackStitches, r.Stitches,
				r.BeginBeforeCentreStitches)
		}
	}
}

// Where the count is adjusted on round 1, a raise below everything lies on the two
// rounds after it, and there is no adjusting where they would not be even.
func TestBackRaiseAboveTheAdjustingRound(t *testing.T) {
	for rounds, want := range map[int]int{70: 2, 7: 2, 6: 1} { // the first decrease round is half-way up: 35, 4 and 3
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 228, NeckCm: new(42.0), DepthRounds: &rounds,
			BackRaise: &BackRaise{Place: RaisePlaceBeforeBands}}
		out, err := PlanCircularYoke(in)
		if err != nil {
			t.Fatal(err)
		}
		checkYoke(t, in, out)
		if got := out.BackRaise.FirstRoundNumber; got != want || out.Rounds[0].Adjusts != (want == 2) {
			t.Errorf("%d rounds deep: raised on round %d, want %d; %+v", rounds, got, want, out.Rounds[0])
		}
	}
}

// An odd rise goes as asked, and the answer says so.
func TestBackRaiseRounds(t *testing.T) {
	for _, c := range []struct {
		rise     int
		rounding measure.Rounding
		want     int
	}{{5, measure.RoundingUnspecified, 6}, {5, measure.RoundingUp, 6}, {5, measure.RoundingDown, 4}, {6, measure.RoundingDown, 6}} {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200,
			TolerancePercent: new(0.0), BackRaise: &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: &c.rise, Rounding: c.rounding}}
		out, err := PlanCircularYoke(in)
		if err != nil || out.BackRaise.RiseRows != c.want || (len(out.Notices) == 1) != (c.rise != c.want) {
			t.Errorf("%+v: %+v, %v, %v", c, out.BackRaise, out.Notices, err)
		}
	}
	cm := 2.0 // 6 rows at 30 to 10 cm
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200,
		TolerancePercent: new(0.0), BackRaise: &BackRaise{Place: RaisePlaceAfterBands, RiseCm: &cm}}
	out, err := PlanCircularYoke(in)
	if err != nil || out.BackRaise.RiseRows != 6 || math.Abs(out.BackRaise.RiseCm-2) > 1e-12 || len(out.Notices) != 0 {
		t.Errorf("%+v, %v", out.BackRaise, err)
	}
}

func TestBackRaiseAtTheLimit(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 5_000, SleeveStitches: new(2_400),
		UnderarmStitches: new(0), NeckStitches: new(4_000), DepthRounds: new(200),
		BackRaise: &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: new(MaxRaiseRows), TurnMethod: shortrow.TurnMethodYarnOver,
			Order: shortrow.OrderShortestFirst},
		Spread: shaping.GapSpreadGrouped} // 9,800 to 4,000: more than may be mixed evenly
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	if words := len(strings.Join(out.Directions(), "")); words > 100_000 || len(out.BackRaise.Rows) != MaxRaiseRows+2 {
		t.Errorf("%d rows, directions of %d characters", len(out.BackRaise.Rows), words)
	}
	if !testing.Short() {
		checkYoke(t, in, out)
	}
}

func FuzzBackRaise(f *testing.F) {
	f.Add(200, 100, 6, int32(1), int32(0), int32(0), 0, 60)
	f.Add(150, 31, 9, int32(2), int32(2), int32(2), 5, 50)
	f.Fuzz(func(t *testing.T, body, back, rise int, place, order, method int32, bands, rounds int) {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body % 400, DepthRounds: &rounds,
			BackRaise: &BackRaise{Place: RaisePlace(place), RiseRows: &rise, BackStitches: &back, Order: shortrow.Order(order),
				TurnMethod: shortrow.TurnMethod(method)}}
		for i := range max(0, bands%6) {
			in.Bands = append(in.Bands, Band{3 + i, 2 + i, new(3)})
		}
		out, err := PlanCircularYoke(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkYoke(t, in, out)
	})
}

func BenchmarkYokeBackRaise(b *testing.B) {
	b.ReportAllocs()
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 220, BackRaise: &BackRaise{Place: RaisePlaceAfterBands}}
	for b.Loop() {
		if _, err := PlanCircularYoke(in); err != nil {
			b.Fatal(err)
		}
	}
}
