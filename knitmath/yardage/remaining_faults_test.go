package yardage

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yarn"
)

func TestRemainingRefusals(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	used := &YarnUsed{MassG: new(12.0), FirstRowStitches: 120}
	ball := YarnLeft{LeftG: new(84.0), Used: used}
	rows := []RowsAhead{{Rows: new(10), Stitches: new(100)}}
	ask := func(y ...YarnLeft) RemainingInput { return RemainingInput{Yarns: y, Sections: rows} }
	ahead := func(s ...RowsAhead) RemainingInput { return RemainingInput{Yarns: []YarnLeft{ball}, Sections: s} }
	share := func(p float64) YarnLeft { return YarnLeft{LeftM: new(10.0), SharePercent: new(float64(p))} }
	withGauge := func(in RemainingInput) RemainingInput {
		in.Gauge = &gauge.Gauge{Stitches: 22, Rows: 30}
		return in
	}
	long := strings.Repeat("x", 101)
	for _, c := range []struct {
		name string
		in   RemainingInput
		want []string
	}{
		{"nothing", RemainingInput{}, []string{"yarns REQUIRED", "sections REQUIRED"}},
		{"empty parts", RemainingInput{Yarns: []YarnLeft{{Used: &YarnUsed{}, PutUp: &yarn.PutUp{}}}, Sections: []RowsAhead{{}},
			Border: &BorderAhead{}, Stripes: []Stripe{{}}},
			[]string{"yarns[0].left_g REQUIRED", "yarns[0].left_m REQUIRED", "yarns[0].put_up.ball_m REQUIRED", "yarns[0].put_up.ball_g REQUIRED",
				"yarns[0].used.mass_g REQUIRED", "yarns[0].used.length_m REQUIRED", "yarns[0].used.first_row_stitches REQUIRED",
				"sections[0].stitches REQUIRED", "sections[0].row_stitches REQUIRED",
				"stripes[0].yarn_number REQUIRED", "stripes[0].rows REQUIRED"}},
		{"two amounts", ask(YarnLeft{LeftG: new(1000.0), LeftM: new(5.0), PutUp: &yarn.PutUp{BallM: 100, BallG: 50},
			Used: &YarnUsed{MassG: new(10.0), LengthM: new(5.0), FirstRowStitches: 1}}), []string{"yarns[0].left_g CONTRADICTORY",
			"yarns[0].left_m CONTRADICTORY", "yarns[0].used.mass_g CONTRADICTORY", "yarns[0].used.length_m CONTRADICTORY"}},
		{"not finite", RemainingInput{Yarns: []YarnLeft{{LeftG: &nan, ScaleStepG: &inf, Used: &YarnUsed{MassG: &inf, FirstRowStitches: 1}}},
			Sections: []RowsAhead{{Rows: new(1), Stitches: new(1), PatternFactor: &nan}}, Border: &BorderAhead{PatternFactor: &inf},
			GaugeOffPercent: nan, SharePercents: []float64{nan}},
			[]string{"yarns[0].left_g NOT_FINITE", "yarns[0].scale_step_g NOT_FINITE", "yarns[0].used.mass_g NOT_FINITE",
				"sections[0].pattern_factor NOT_FINITE", "border.pattern_factor NOT_FINITE",
				"gauge_off_percent NOT_FINITE", "share_percents[0] NOT_FINITE"}},
		{"too large", RemainingInput{Yarns: []YarnLeft{{Name: long, LeftM: new(2e6), ScaleStepG: new(101.0),
			Used: &YarnUsed{LengthM: new(2e6), Rows: new(10_001), FirstRowStitches: 10_001, LastRowStitches: new(10_001)}}},
			Sections: []RowsAhead{{Name: long, Rows: new(10_001), Stitches: new(10_001), ChangeStitches: 1_001, ChangeEveryRows: new(1_001)}},
			Border:   &BorderAhead{Rows: 10_001, Stitches: new(10_001), YarnNumber: new(11)}, Stripes: []Stripe{{11, 10_001}},
			GaugeOffPercent: 21, SharePercents: []float64{101}, State: 4, DisplayUnit: 3},
			[]string{"yarns[0].name TOO_MANY", "yarns[0].left_m OUT_OF_RANGE", "yarns[0].scale_step_g OUT_OF_RANGE",
				"yarns[0].used.length_m OUT_OF_RANGE", "yarns[0].used.rows OUT_OF_RANGE", "yarns[0].used.first_row_stitches OUT_OF_RANGE",
				"yarns[0].used.last_row_stitches OUT_OF_RANGE", "sections[0].name TOO_MANY", "sections[0].rows OUT_OF_RANGE",
				"sections[0].stitches OUT_OF_RANGE", "sections[0].change_stitches OUT_OF_RANGE", "sections[0].change_every_rows OUT_OF_RANGE",
				"border.rows OUT_OF_RANGE", "border.stitches OUT_OF_RANGE", "border.yarn_number OUT_OF_RANGE",
				"stripes[0].yarn_number OUT_OF_RANGE", "stripes[0].rows OUT_OF_RANGE", "state UNKNOWN_VALUE",
				"gauge_off_percent OUT_OF_RANGE", "share_percents[0] OUT_OF_RANGE", "display_unit UNKNOWN_VALUE"}},
		{"too many", RemainingInput{Yarns: make([]YarnLeft, 11), Sections: make([]RowsAhead, 51), Stripes: make([]Stripe, 101),
			Gauge: gateGauge(), SharePercents: make([]float64, 21)},
			[]string{"yarns TOO_MANY", "sections TOO_MANY", "stripes TOO_MANY", "share_percents TOO_MANY"}},
		{"no gauge", ask(YarnLeft{LeftM: new(10.0)}), []string{"gauge REQUIRED"}},
		{"grams by loop", withGauge(ask(YarnLeft{LeftG: new(10.0)})), []string{"yarns[0].put_up REQUIRED"}},
		{"grams and metres", ask(YarnLeft{LeftG: new(10.0), Used: &YarnUsed{LengthM: new(1.0), FirstRowStitches: 100}}),
			[]string{"yarns[0].put_up REQUIRED"}},
		{"less than the scale shows", ask(YarnLeft{LeftG: new(5.0), Used: &YarnUsed{MassG: new(1.0), FirstRowStitches: 100}}),
			[]string{"yarns[0].used.mass_g INFEASIBLE", "yarns[0].scale_step_g INFEASIBLE"}},
		{"next to nothing left", ask(YarnLeft{LeftG: new(0.5), Used: used}),
			[]string{"yarns[0].left_g INFEASIBLE", "yarns[0].scale_step_g INFEASIBLE"}},
		{"share of one", withGauge(ask(share(50))), []string{"yarns[0].share_percent CONTRADICTORY"}},
		{"shares that make 90", withGauge(ask(share(50), share(40))),
			[]string{"yarns[0].share_percent INFEASIBLE", "yarns[1].share_percent INFEASIBLE"}},
		{"no shares", withGauge(ask(YarnLeft{LeftM: new(10.0)}, YarnLeft{LeftM: new(10.0)})),
			[]string{"yarns[0].share_percent REQUIRED", "yarns[1].share_percent REQUIRED"}},
		{"some weighed", withGauge(ask(ball, share(40))), []string{"yarns[0].used CONTRADICTORY"}},
		{"open in the middle", ahead(RowsAhead{Stitches: new(10)}, rows[0]), []string{"sections[0].rows REQUIRED"}},
		{"list and rows", ahead(RowsAhead{Rows: new(2), RowStitches: []int{1, 2}}), []string{"sections[0].rows CONTRADICTORY"}},
		{"list and stitches", ahead(RowsAhead{Stitches: new(2), RowStitches: []int{1, 2}}),
			[]string{"sections[0].stitches CONTRADICTORY", "sections[0].row_stitches CONTRADICTORY"}},
		{"list and change", ahead(RowsAhead{ChangeStitches: 2, RowStitches: []int{1, 2}}),
			[]string{"sections[0].change_stitches CONTRADICTORY"}},
		{"list out of range", ahead(RowsAhead{RowStitches: []int{1, 0, 10_001}}),
			[]string{"sections[0].row_stitches[1] OUT_OF_RANGE", "sections[0].row_stitches[2] OUT_OF_RANGE"}},
		{"narrower than nothing", ahead(RowsAhead{Rows: new(11), Stitches: new(20), ChangeStitches: -2}),
			[]string{"sections[0].rows INFEASIBLE", "sections[0].change_stitches INFEASIBLE"}},
		{"rows together", ahead(RowsAhead{Rows: new(6_000), Stitches: new(10)}, RowsAhead{Rows: new(4_001), Stitches: new(10)}),
			[]string{"sections[1].rows TOO_MANY"}},
		{"lists together", ahead(RowsAhead{Rows: new(6_000), Stitches: new(10)}, RowsAhead{RowStitches: slices.Repeat([]int{5}, 4_001)}),
			[]string{"sections[1].row_stitches TOO_MANY"}},
		{"no such yarn", RemainingInput{Yarns: []YarnLeft{ball}, Sections: rows,
			Border: &BorderAhead{YarnNumber: new(2)}, Stripes: []Stripe{{3, 1}, {1, 1}}},
			[]string{"border.yarn_number INFEASIBLE", "stripes[0].yarn_number INFEASIBLE"}},
		{"a yarn without a stripe", RemainingInput{Yarns: []YarnLeft{ball, ball}, Sections: rows, Stripes: []Stripe{{1, 1}}},
			[]string{"stripes CONTRADICTORY"}},
		{"more than there is", RemainingInput{Yarns: []YarnLeft{{LeftM: new(10.0), Used: &YarnUsed{LengthM: new(1e6), FirstRowStitches: 1}}},
			Sections: []RowsAhead{{Rows: new(10_000), Stitches: new(10_000)}}}, []string{"yarns[0].used INFEASIBLE", "sections INFEASIBLE"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := PlanRemainingYarn(c.in)
			knittest.WantViolations(t, err, c.want...)
			knittest.CheckInputError(t, err)
		})
	}
}

func TestRemainingNotices(t *testing.T) {
	base := RemainingInput{Yarns: []YarnLeft{{LeftG: new(84.0), Used: &YarnUsed{MassG: new(20.0), Rows: new(10), FirstRowStitches: 120}}},
		Sections: []RowsAhead{{Rows: new(30), Stitches: new(120)}}}
	for _, c := range []struct {
		name   string
		change func(*RemainingInput)
		want   []string
	}{
		{"quiet", func(*RemainingInput) {}, nil},
		{"coarse", func(in *RemainingInput) { in.Yarns[0].Used.MassG = new(9.9) }, []string{"yarns[0].scale_step_g COARSE_SCALE"}},
		{"small sample", func(in *RemainingInput) { in.Sections[0].Rows = new(101) }, []string{"yarns[0].used SMALL_SAMPLE"}},
		{"state", func(in *RemainingInput) { in.Yarns[0], in.Gauge = YarnLeft{LeftM: new(300.0)}, gateGauge() },
			[]string{"state STATE_UNKNOWN"}},
		{"narrows away", func(in *RemainingInput) { in.Sections[0] = RowsAhead{Stitches: new(10), ChangeStitches: -1} },
			[]string{"sections ROWS_END"}},
		{"too many rows", func(in *RemainingInput) { in.Yarns[0].LeftG, in.Sections[0] = new(500.0), RowsAhead{Stitches: new(1)} },
			[]string{"sections ROWS_END"}},
	} {
		in := base
		u := *base.Yarns[0].Used
		in.Yarns, in.Sections = slices.Clone(base.Yarns), slices.Clone(base.Sections)
		in.Yarns[0].Used = &u
		c.change(&in)
		var got []string
		for _, n := range remainingOf(t, in).Notices {
			got = append(got, n.Field+" "+string(n.Reason))
		}
		// A yarn for more than ten thousand rows of one stitch was weighed over few.
		got = slices.DeleteFunc(got, func(s string) bool { return c.name == "too many rows" && strings.HasSuffix(s, "SMALL_SAMPLE") })
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

func FuzzPlanRemainingYarn(f *testing.F) {
	f.Add(84.0, 12.0, 1.0, 120, 140, 60, 2, 3, 120, 8, 1.0, 50.0, 22.0, int32(3), uint16(0x3ff))
	f.Add(0.1, 0.001, 0.001, 1, 1, 10_000, -1, 1, 10_000, 10_000, 3.0, 1e-6, 1000.0, int32(0), uint16(0x2a5))
	f.Add(1e5, 1e5, 100.0, 10_000, 10_000, 0, 1_000, 1_000, 1, 0, 0.5, 100.0, 1e-6, int32(1), uint16(0x15a))
	f.Fuzz(func(t *testing.T, left, used, step float64, first, stitches, rows, change, every, last, border int, factor, share, st float64,
		enums int32, given uint16) {
		y := YarnLeft{Name: "a", LeftG: new(float64(left))}
		if given&1 != 0 {
			y.LeftG, y.LeftM = nil, &left
		}
		if given&2 != 0 {
			y.Used = &YarnUsed{MassG: new(float64(used)), Rows: &every, FirstRowStitches: first, LastRowStitches: &last}
			if given&4 != 0 {
				y.Used.MassG, y.Used.LengthM = nil, &used
			}
		}
		if given&8 != 0 {
			y.PutUp = &yarn.PutUp{BallM: 100, BallG: 50}
		}
		if given&16 != 0 {
			y.ScaleStepG = &step
		}
		in := RemainingInput{
			Yarns:       []YarnLeft{y},
			State:       FabricState(enums),
			DisplayUnit: measure.DisplayUnit(enums >> 2),
			WithOutline: given&512 != 0,
			Sections: []RowsAhead{
				{Stitches: new(stitches), Rows: new(rows), ChangeStitches: change, ChangeEveryRows: &every, PatternFactor: &factor},
			},
			SharePercents: []float64{share},
			Gauge:         &gauge.Gauge{Stitches: st, Rows: st},
		}
		if given&32 != 0 {
			in.Border = &BorderAhead{Rows: border, Stitches: &last, BindOff: new(given&64 != 0)}
		}
		if given&128 != 0 {
			in.Yarns = append(in.Yarns, y)
			if given&256 != 0 {
				in.Stripes = []Stripe{{1, every}, {2, border}}
			}
		}
		out, err := PlanRemainingYarn(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkRemaining(t, out)
		if strings.Contains(out.Summary(), "NaN") || len(out.Sources()) == 0 {
			t.Fatal(out.Summary())
		}
		_ = out.Directions()
	})
}

// ordered tells whether what is known of a range is in order, within the rows of a piece.
func ordered(r CountRange) bool {
	lo, mid, hi := fault.Or(r.Low, -1), fault.Or(r.Likely, -1), fault.Or(r.High, -1)
	return lo <= mid && mid <= hi && hi <= stitch.MaxRows
}

// checkRemaining holds for every answer.
func checkRemaining(t *testing.T, out Remaining) {
	t.Helper()
	if asked := out.PlannedRows != nil; !ordered(out.MainRows) || asked == (out.Lasts == LastsUnspecified) {
		t.Fatalf("%+v", out)
	}
	for _, y := range out.Yarns {
		e := y.EnoughForStitches
		if !ordered(y.MainRows) || e.Low < 0 || e.Low > e.Likely || e.Likely > e.High || y.LeftG == nil && y.LeftM == nil {
			t.Fatalf("%+v", y)
		}
		for _, m := range y.Marks {
			if r := m.Rows; r.Low != nil && r.Likely != nil && *r.Low > *r.Likely {
				t.Fatalf("%+v", m)
			}
		}
		if m := y.MoreBalls; m != nil && (*m < 0 || *m > math.MaxInt32) {
			t.Fatalf("%d balls", *m)
		}
	}
}

// As many rows as a refusal says that the changes allow are planned, and one more is not.
func TestRowsThatChangesAllow(t *testing.T) {
	allow := regexp.MustCompile(`creases allow (\d+) rows?, of which the last has (\d+) stitch`)
	for _, stitches := range []int{1, 2, 20, 60, 9_950, 10_000} {
		for _, change := range []int{-7, -4, -1, 1, 3} {
			for every := 1; every <= 3; every++ {
				rows := 10_000
				ask := func() error {
					_, err := PlanRemainingYarn(RemainingInput{Yarns: []YarnLeft{{LeftG: new(50.0), PutUp: &yarn.PutUp{BallG: 50, BallM: 100}}},
						Gauge:    &gauge.Gauge{Stitches: 22, Rows: 30},
						Sections: []RowsAhead{{Stitches: &stitches, Rows: &rows, ChangeStitches: change, ChangeEveryRows: &every}}})
					return err
				}
				err := ask()
				if err == nil {
					continue // 10,000 rows fit
				}
				m := allow.FindStringSubmatch(err.Error())
				if m == nil {
					t.Fatal(err)
				}
				rows, _ = strconv.Atoi(m[1])
				if now := stitches + (rows-1)/every*change; ask() != nil || m[2] != strconv.Itoa(now) {
					t.Errorf("%d, %d every %d: %v; then %v, %d stitches", stitches, change, every, err, ask(), now)
				}
				if rows++; ask() == nil {
					t.Errorf("%d, %d every %d: %v; %d are planned", stitches, change, every, err, rows)
				}
			}
		}
	}
}
