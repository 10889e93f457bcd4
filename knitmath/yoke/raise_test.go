package yoke

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// checkRaise works the raise on the needle as it stands, two rounds, and compares
// the rows under every stitch with the profile that was asked for, worked out
// again as a fraction. It gives the rows that the highest stitch has more.
func checkRaise(t *testing.T, m *stitch.Machine, in CircularInput, r BackRaisePlan) int {
	t.Helper()
	below, worked, turns := m.Heights(), m.RowsWorked(), 0
	if len(below) != r.Stitches || r.BackStitches >= r.Stitches {
		t.Fatalf("%d stitches on the needle, %+v", len(below), r)
	}
	for i, row := range r.Rows {
		if (m.Side() == stitch.WrongSide) != (row.Side == stitch.WrongSide) || row.RowNumber != i+1 {
			t.Fatalf("row %d of the raise is planned on the other side: %+v", i+1, row)
		}
		before := m.Unresolved()
		if err := m.Work(row.Instruction.Row); err != nil {
			t.Fatalf("row %d of the raise, %q: %v", i+1, row.Instruction.Row.Text(), err)
		}
		turned := i < len(r.Rows)-2
		if turned {
			turns++
		}
		// A last stitch made double was worked before the turn: with it the row may
		// reach the beginning of the round.
		reached := in.BackRaise.TurnMethod == shortrow.TurnMethodGerman && row.Side == stitch.WrongSide && row.UnworkedStitches == 0
		if (row.UnworkedStitches > 0) != (turned && !reached) || m.ShortRowOpen() != (row.UnworkedStitches > 0) ||
			turned && m.Unresolved() > before+1 {
			t.Fatalf("row %d of the raise, %q: %d left unworked", i+1, row.Instruction.Row.Text(), row.UnworkedStitches)
		}
		if row.Instruction.StartStitches != r.Stitches || row.Instruction.EndStitches != r.Stitches {
			t.Fatalf("row %d of the raise: %+v", i+1, row.Instruction)
		}
	}
	if m.Side() != stitch.RightSide || m.ToWork() != r.Stitches || m.Unresolved() != 0 || turns != r.TurnCount ||
		m.RowsWorked() != worked+turns+2 {
		t.Fatalf("after the raise %d stitches, %d gaps open, %d turns", m.ToWork(), m.Unresolved(), turns)
	}
	worst, highest := 0.0, 0
	for x, rows := range m.Heights() {
		rows -= below[x] + 2 // the two rounds
		if x >= r.BackStitches {
			if rows != 0 {
				t.Fatalf("stitch %d of the front is raised by %d rows", x, rows)
			}
			continue
		}
		highest = max(highest, rows)
		// Even from the centre of the back, where it is the rise, to both edges.
		fromCentre := math.Abs(float64(2*x+1)/float64(r.BackStitches) - 1)
		wanted := float64(r.RiseRows) * (1 - fromCentre)
		worst = max(worst, math.Abs(float64(rows)-wanted))
	}
	limit := 1.0
	if in.BackRaise.TurnMethod == shortrow.TurnMethodGerman {
		limit = 2
	}
	if worst > limit+1e-9 || math.Abs(worst-r.GreatestDepartureRows) > 1e-9 {
		t.Fatalf("the raise departs by %v rows, %v said", worst, r.GreatestDepartureRows)
	}
	if highest < r.RiseRows-1 || highest > r.RiseRows+1 {
		t.Fatalf("the middle of the back is raised by %d rows, %d said", highest, r.RiseRows)
	}
	return highest
}

// Raises of all sizes, in both places and orders, turned in all three ways, on
// small needles: the machine works them in the round.
func TestBackRaiseIsKnit(t *testing.T) {
	planned := 0
	for stitches := 8; stitches <= 20; stitches += 3 {
		for back := MinRaiseBack; back < stitches; back++ {
			for rise := 2; rise <= back-1; rise += 2 {
				for order := shortrow.OrderLongestFirst; order <= shortrow.OrderShortestFirst; order++ {
					for method := shortrow.TurnMethodUnspecified; method <= shortrow.TurnMethodYarnOver; method++ {
						raise := &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: &rise, BackStitches: &back, Order: order,
							TurnMethod: method}
						y := circular{st: gauge.NewDensity(22, 10), rw: gauge.NewDensity(30, 10),
							joining: joining{join: stitches}, rounds: 4,
							changes: []change{{round: 4}}}
						var c fault.Checks
						in := CircularInput{BackRaise: raise}
						settleRaise(&c, &y, in)
						if err := c.Err(); err != nil {
							t.Fatalf("%d of %d stitches, rise %d: %v", back, stitches, rise, err)
						}
						planned++
						checkRaise(t, knittest.CastOn(t, stitches, true), in, *y.raise)
					}
				}
			}
		}
	}
	if planned < 1000 {
		t.Errorf("planned %d raises: the sweep has shrunk", planned)
	}
}

// Whole yokes with a raise, with bands and without, are knit to the neck.
func TestYokeWithBackRaiseIsKnit(t *testing.T) {
	planned := 0
	for body := 100; body <= 340; body += 20 {
		for place := RaisePlaceBeforeBands; place <= RaisePlaceAfterBands; place++ {
			for method := shortrow.TurnMethodWrapAndTurn; method <= shortrow.TurnMethodYarnOver; method++ {
				for bands := range 3 {
					for order := shortrow.OrderLongestFirst; order <= shortrow.OrderShortestFirst; order++ {
						in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, NeckToleranceStitches: new(2),
							BackRaise: &BackRaise{Place: place, TurnMethod: method, Order: order}}
						for range bands {
							in.Bands = append(in.Bands, Band{body / 25, 6, new(3)})
						}
						if bands == 0 {
							in.NeckToleranceStitches = nil
						}
						out, err := PlanCircularYoke(in)
						if err != nil {
							t.Errorf("body %d, place %d, %d bands: %v", body, place, bands, err)
							continue
						}
						planned++
						if out.BackRaise.RiseRows != DefaultRaiseRows {
							t.Fatalf("rise %d", out.BackRaise.RiseRows)
						}
						r := out.BackRaise.FirstRoundNumber
						if bands > 0 && (place == RaisePlaceBeforeBands) != (r < out.Bands[0].FirstRoundNumber) ||
							bands > 0 && (place == RaisePlaceAfterBands) != (r > out.Bands[bands-1].LastRoundNumber) {
							t.Fatalf("raise on round %d, bands %+v", r, out.Bands)
						}
						checkYoke(t, in, out)
					}
				}
			}
		}
	}
	if planned < 400 {
		t.Errorf("planned %d yokes: the sweep has shrunk", planned)
	}
}

// Worked by hand. 100 stitches on the needle, a back of 24, 4 rows: 2 pairs. The
// profile 4 * (1 - |2x - 23|/24) passes 1 and 3 rows where |2x - 23| = 18 and 6,
// so that the pairs turn 3 and 9 stitches from the edges.
func TestBackRaiseByHand(t *testing.T) {
	for _, c := range []struct {
		method shortrow.TurnMethod
		order  shortrow.Order
		want   []string
	}{
		{shortrow.TurnMethodWrapAndTurn, shortrow.OrderLongestFirst, []string{
			"k21, w&t", "p18, w&t", "k12, w&t", "p6, w&t",
			"k6, [k1 tog with its wrap, k5] twice, k73",
			"[k2, k1 tog with its wrap, k3] twice, k88"}},
		// The wrong side passes its first turn and closes it; the last one waits.
		{shortrow.TurnMethodWrapAndTurn, shortrow.OrderShortestFirst, []string{
			"k15, w&t", "p6, w&t", "k6, k1 tog with its wrap, k5, w&t", "p12, p1 tog with its wrap, p5, w&t",
			"k18, k1 tog with its wrap, k78", "k2, k1 tog with its wrap, k97"}},
		{shortrow.TurnMethodYarnOver, shortrow.OrderLongestFirst, []string{
			"k21, turn", "yo, p18, turn", "yo, k12, turn", "yo, p6, turn",
			"yo, k6, k2tog, k5, k2tog, k78", // each k2tog takes a yarn over and the stitch after it
			"k2, ssk, k5, ssk, k91"}},       // each ssk takes a stitch and the yarn over after it
		{shortrow.TurnMethodGerman, shortrow.OrderLongestFirst, []string{
			"k22, turn", "make DS, p19, turn", "make DS, k13, turn", "make DS, p7, turn",
			"make DS, k6, k DS, k5, k DS, k78", "k2, k DS, k5, k DS, k91"}},
	} {
		raise := &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: new(4), BackStitches: new(24), Order: c.order, TurnMethod: c.method}
		y := circular{st: gauge.NewDensity(22, 10), rw: gauge.NewDensity(30, 10),
			joining: joining{join: 100}, rounds: 4, changes: []change{{round: 4}}}
		var faults fault.Checks
		settleRaise(&faults, &y, CircularInput{BackRaise: raise})
		var got []string
		for _, r := range y.raise.Rows {
			got = append(got, r.Instruction.Row.Text())
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("method %d, order %d:\n%q, want\n%q", c.method, c.order, got, c.want)
		}
		if y.raise.BeginBeforeCentreStitches != 12 || math.Abs(y.raise.RiseCm-4.0/3) > 1e-12 {
			t.Errorf("%+v", y.raise)
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
		{RaisePlaceAfterBands, []Band{{10, 4, new(4)}}, 68, 134, 67},
		{RaisePlaceAfterBands, []Band{{10, 4, new(4)}, {50, 1, nil}}, 68, 160, 67}, // 16-65 on 160, of which k2tog leaves 80 in round 70
	} {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Bands: c.bands,
			BackRaise: &BackRaise{Place: c.place}}
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

func TestBackRaiseRefusals(t *testing.T) {
	nan := math.NaN()
	tiny, high := 0.1, 100.0
	before, after := RaisePlaceBeforeBands, RaisePlaceAfterBands
	base := func(raise BackRaise, bands ...Band) CircularInput {
		return CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, DepthRounds: new(60), Bands: bands,
			BackRaise: &raise}
	}
	shallow := base(BackRaise{Place: before})
	shallow.DepthRounds = new(4)
	cone := base(BackRaise{Place: after})
	cone.Schedule, cone.DecreaseRoundCount = ScheduleCone, new(60)
	loops := base(BackRaise{Place: before, TurnMethod: shortrow.TurnMethodYarnOver})
	loops.BodyStitches, loops.SleeveStitches, loops.UnderarmStitches, loops.NeckStitches = 5000, new(2500), new(0), new(4000)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {base(BackRaise{}), []string{"back_raise.place REQUIRED"}},
		"ranges": {base(BackRaise{Place: 3, RiseRows: new(201), BackStitches: new(2), Order: 3, TurnMethod: 4, Rounding: 4}),
			[]string{"back_raise.place UNKNOWN_VALUE", "back_raise.rise_rows OUT_OF_RANGE", "back_raise.back_stitches OUT_OF_RANGE",
				"back_raise.order UNKNOWN_VALUE", "back_raise.turn_method UNKNOWN_VALUE", "back_raise.rounding UNKNOWN_VALUE"}},
		"nan": {base(BackRaise{Place: before, RiseCm: &nan}), []string{"back_raise.rise_cm NOT_FINITE"}},
		"twice": {base(BackRaise{Place: before, RiseRows: new(6), RiseCm: &high}),
			[]string{"back_raise.rise_rows CONTRADICTORY", "back_raise.rise_cm CONTRADICTORY"}},
		"no pair":  {base(BackRaise{Place: before, RiseCm: &tiny}), []string{"back_raise.rise_cm INFEASIBLE"}},
		"too high": {base(BackRaise{Place: before, RiseCm: &high}), []string{"back_raise.rise_cm INFEASIBLE"}},
		"no front": {base(BackRaise{Place: before, BackStitches: new(268)}), []string{"back_raise.back_stitches INFEASIBLE"}},
		"narrow back": {base(BackRaise{Place: before, BackStitches: new(6)}),
			[]string{"back_raise.rise_rows INFEASIBLE", "back_raise.back_stitches INFEASIBLE"}},
		"no room before bands": {base(BackRaise{Place: before}, Band{10, 6, new(2)}),
			[]string{"bands[0].even_before_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room after bands": {base(BackRaise{Place: after}, Band{57, 4, nil}),
			[]string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room below rounds": {shallow, []string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"no room at all":       {cone, []string{"depth_rounds INFEASIBLE", "back_raise.place INFEASIBLE"}},
		"loops":                {loops, []string{"back_raise.turn_method INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
	// What a refusal says would do, does.
	for _, in := range []CircularInput{
		base(BackRaise{Place: before, BackStitches: new(6), RiseRows: new(4)}), // (6-1)/2 = 2 turns
		base(BackRaise{Place: before, BackStitches: new(267)}),
		base(BackRaise{Place: before}, Band{10, 6, new(3)}),
	} {
		if out, err := PlanCircularYoke(in); err != nil {
			t.Error(err)
		} else {
			checkYoke(t, in, out)
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
			BackRaise: &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: &c.rise, Rounding: c.rounding}}
		out, err := PlanCircularYoke(in)
		if err != nil || out.BackRaise.RiseRows != c.want || (len(out.Notices) == 1) != (c.rise != c.want) {
			t.Errorf("%+v: %+v, %v, %v", c, out.BackRaise, out.Notices, err)
		}
	}
	cm := 2.0 // 6 rows at 30 to 10 cm
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200,
		BackRaise: &BackRaise{Place: RaisePlaceAfterBands, RiseCm: &cm}}
	out, err := PlanCircularYoke(in)
	if err != nil || out.BackRaise.RiseRows != 6 || math.Abs(out.BackRaise.RiseCm-2) > 1e-12 || len(out.Notices) != 0 {
		t.Errorf("%+v, %v", out.BackRaise, err)
	}
}

func TestBackRaiseAtTheLimit(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 5_000, SleeveStitches: new(2_400),
		UnderarmStitches: new(0), NeckStitches: new(4_000), DepthRounds: new(200),
		BackRaise: &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: new(MaxRaiseRows), TurnMethod: shortrow.TurnMethodYarnOver,
			Order: shortrow.OrderShortestFirst}}
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
