package edge

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
)

// checkButtonholeRefusal: only what has no arrangement is refused. All of them
// are tried: holes at their legal rows or stitches, one place or more between.
func checkButtonholeRefusal(t *testing.T, in ButtonholesInput, err error) {
	t.Helper()
	knittest.CheckInputError(t, err)
	length, places, step := bandPlaces(in, *in.HoleStitches)
	for first := 1; first < length; first++ {
		for end := first + places; end < length; end++ {
			if step == 2 && (first%2 != 0 || (end-places)%2 != 0) {
				continue // the first hole or the last would be bound off on the wrong side
			}
			var fits bool
			if in.HoleCount == 1 {
				fits = end-first == places && oneAsAsked(in, first, length-end, step-1)
			} else {
				fits = end-first >= in.HoleCount*places+(in.HoleCount-1)*step && endsAsAsked(in, first, length-end, step-1)
			}
			if fits {
				t.Fatalf("%s refused, but %d before and %d after would do: %v", describeBand(in), first, length-end, err)
			}
		}
	}
}

// endsAsAsked: the outer of several holes are as far from the ends as asked, or
// inward of that by the slack, never outward. The last is as far as the first
// unless asked.
func endsAsAsked(in ButtonholesInput, first, last, slack int) bool {
	wantFirst, wantLast := *in.BeforeFirstPlaces, fault.Or(in.AfterLastPlaces, *in.BeforeFirstPlaces)
	return first >= wantFirst && first <= wantFirst+slack && last >= wantLast && last <= wantLast+slack
}

// oneAsAsked: a single hole is as far from the ends as asked, where it is asked,
// or nearer or farther by the slack. Both distances are not to be bent.
func oneAsAsked(in ButtonholesInput, first, last, slack int) bool {
	wantFirst, wantLast := fault.Or(in.BeforeFirstPlaces, first), fault.Or(in.AfterLastPlaces, last)
	if in.BeforeFirstPlaces != nil && in.AfterLastPlaces != nil && wantFirst+wantLast != first+last {
		return false
	}
	return measure.Abs(first-wantFirst) <= slack && measure.Abs(last-wantLast) <= slack
}

func TestButtonholesRefusals(t *testing.T) {
	zero, one, three, odd, many := 0, 1, 3, 5, 101
	big, tooBig := 10_000, 10_001
	nan, cm, tiny, wide := math.NaN(), 2.0, 0.1, 50.5
	standard := &gauge.Gauge{Stitches: 20, Rows: 30}
	base := func(change func(*ButtonholesInput)) ButtonholesInput {
		in := ButtonholesInput{BandStitches: 100, BandRows: 7, HoleCount: 7, HoleStitches: &three, BeforeFirstPlaces: &three}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*ButtonholesInput)
		want   []string
	}{
		"empty": {func(in *ButtonholesInput) { *in = ButtonholesInput{} }, []string{"band_stitches REQUIRED", "band_rows REQUIRED",
			"hole_count REQUIRED", "hole_stitches REQUIRED", "hole_cm REQUIRED", "before_first_places REQUIRED", "before_first_cm REQUIRED"}},
		"ranges": {func(in *ButtonholesInput) {
			*in = ButtonholesInput{BandStitches: 2, BandRows: tooBig, HoleCount: many, HoleStitches: &many, BeforeFirstPlaces: &zero,
				AfterLastPlaces: &tooBig, HoleRowNumber: &one}
		}, []string{"band_stitches OUT_OF_RANGE", "band_rows OUT_OF_RANGE", "hole_count OUT_OF_RANGE", "hole_stitches OUT_OF_RANGE",
			"before_first_places OUT_OF_RANGE", "after_last_places OUT_OF_RANGE", "hole_row_number OUT_OF_RANGE"}},
		"both": {func(in *ButtonholesInput) {
			in.HoleCm, in.BeforeFirstCm, in.AfterLastPlaces, in.AfterLastCm, in.Gauge = &cm, &cm, &three, &cm, standard
		}, []string{"hole_stitches CONTRADICTORY", "hole_cm CONTRADICTORY", "before_first_places CONTRADICTORY", "before_first_cm CONTRADICTORY",
			"after_last_places CONTRADICTORY", "after_last_cm CONTRADICTORY"}},
		"not finite": {func(in *ButtonholesInput) {
			in.HoleStitches, in.BeforeFirstPlaces, in.HoleCm, in.BeforeFirstCm, in.AfterLastCm, in.Gauge = nil, nil, &nan, &nan, &nan, standard
		}, []string{"hole_cm NOT_FINITE", "before_first_cm NOT_FINITE", "after_last_cm NOT_FINITE"}},
		"one, in both": {func(in *ButtonholesInput) { in.HoleCount, in.BeforeFirstCm, in.Gauge = 1, &cm, standard },
			[]string{"before_first_places CONTRADICTORY", "before_first_cm CONTRADICTORY"}},
		"no gauge": {func(in *ButtonholesInput) { in.AfterLastCm = &cm }, []string{"gauge REQUIRED"}},
		"bad gauge": {func(in *ButtonholesInput) { in.Gauge = &gauge.Gauge{Stitches: -1, Rows: 1} },
			[]string{"gauge.stitches OUT_OF_RANGE"}},
		"too many": {func(in *ButtonholesInput) { in.HoleCount = 30 },
			[]string{"band_stitches INFEASIBLE", "hole_count INFEASIBLE", "hole_stitches INFEASIBLE", "before_first_places INFEASIBLE"}},
		"no hole": {func(in *ButtonholesInput) { in.HoleStitches, in.HoleCm, in.Gauge = nil, &tiny, standard },
			[]string{"hole_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"wide": {func(in *ButtonholesInput) { in.HoleStitches, in.HoleCm, in.Gauge = nil, &wide, standard },
			[]string{"hole_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"one, twice": {func(in *ButtonholesInput) { in.HoleCount, in.AfterLastPlaces = 1, &three },
			[]string{"band_stitches INFEASIBLE", "hole_count INFEASIBLE", "hole_stitches INFEASIBLE", "before_first_places INFEASIBLE",
				"after_last_places INFEASIBLE"}},
		"wrong side": {func(in *ButtonholesInput) { in.HoleRowNumber = &odd }, []string{"hole_row_number INFEASIBLE"}},
		"row too late": {func(in *ButtonholesInput) { in.HoleRowNumber = &big },
			[]string{"band_rows INFEASIBLE", "hole_row_number INFEASIBLE"}},
		"rows across": {func(in *ButtonholesInput) { in.RowChoice = shaping.RowChoiceAny }, []string{"row_choice CONTRADICTORY"}},
		"row up": {func(in *ButtonholesInput) { in.Direction, in.HoleRowNumber = BandDirectionAlongRows, &three },
			[]string{"hole_row_number CONTRADICTORY"}},
		"narrow": {func(in *ButtonholesInput) { in.Direction, in.BandStitches, in.BandRows = BandDirectionAlongRows, 4, 40 },
			[]string{"band_stitches INFEASIBLE", "hole_stitches INFEASIBLE"}},
		"narrow and short": {func(in *ButtonholesInput) { in.Direction, in.BandStitches = BandDirectionAlongRows, 4 },
			[]string{"band_stitches INFEASIBLE", "hole_stitches INFEASIBLE", "band_rows INFEASIBLE", "hole_count INFEASIBLE",
				"before_first_places INFEASIBLE"}},
		"short": {func(in *ButtonholesInput) { in.Direction = BandDirectionAlongRows },
			[]string{"band_rows INFEASIBLE", "hole_count INFEASIBLE", "before_first_places INFEASIBLE"}},
		"enums": {func(in *ButtonholesInput) { in.Direction, in.RowChoice, in.DisplayUnit = 3, 3, 3 },
			[]string{"direction UNKNOWN_VALUE", "row_choice UNKNOWN_VALUE", "row_choice CONTRADICTORY",
				"display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanButtonholes(base(c.change))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// What a refusal says would fit does fit, and a stitch less does not.
func TestButtonholeRemediesFit(t *testing.T) {
	three := 3
	for _, direction := range []BandDirection{BandDirectionAlongStitches, BandDirectionAlongRows} {
		for length := 10; length <= 60; length++ {
			for first := 1; first <= 5; first++ {
				in := ButtonholesInput{Direction: direction, BandStitches: length, BandRows: length, HoleCount: 12, HoleStitches: &three,
					BeforeFirstPlaces: &first}
				if _, err := PlanButtonholes(in); err == nil {
					continue
				}
				var had, need, fit int
				text := detail(t, in)
				noun := "stitches"
				if direction == BandDirectionAlongRows {
					noun = "rows"
				}
				n, _ := fmt.Sscanf(text,
					"these distances and 12 holes need a band of at least %d "+noun+", and it has %d; %d holes would fit",
					&need, &had, &fit)
				if n < 2 {
					t.Fatalf("%q", text)
				}
				longer := in
				longer.BandStitches, longer.BandRows = need, need
				if _, err := PlanButtonholes(longer); err != nil {
					t.Errorf("%q, but: %v", text, err)
				}
				if n == 3 {
					fewer := in
					fewer.HoleCount = fit
					if _, err := PlanButtonholes(fewer); err != nil {
						t.Errorf("%q, but: %v", text, err)
					}
				}
			}
		}
	}
}

// detail is what the first violation of a refusal says.
func detail(t *testing.T, in ButtonholesInput) string {
	t.Helper()
	_, err := PlanButtonholes(in)
	var refusal *fault.InputError
	if !errors.As(err, &refusal) {
		t.Fatalf("%s: %v", describeBand(in), err)
	}
	return refusal.Violations[0].Detail
}

// The longest band there is takes 100 holes of 98 stitches, 99 gaps of one and
// 101 stitches at the ends. With one stitch more no band does.
func TestButtonholeRemediesEndAtTheLongestBand(t *testing.T) {
	in := ButtonholesInput{BandStitches: 9000, BandRows: 7, HoleCount: 100, HoleStitches: new(98), BeforeFirstPlaces: new(50),
		AfterLastPlaces: new(51)}
	for last, want := range map[int]string{
		51: "these distances and 100 holes need a band of at least 10000 stitches, and it has 9000; ",
		52: "these distances and 100 holes fit no band of at most 10000 stitches; ",
	} {
		in.AfterLastPlaces = &last
		if got := detail(t, in); !strings.HasPrefix(got, want) {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// Two holes of 3 with 4 stitches at both ends need 15 stitches. On 12 not even
// two fit, and a single one is not offered for two.
func TestTwoHolesTooManyAreNotMadeOne(t *testing.T) {
	in := ButtonholesInput{BandStitches: 12, BandRows: 7, HoleCount: 2, HoleStitches: new(3), BeforeFirstPlaces: new(4)}
	want := "these distances and 2 holes need a band of at least 15 stitches, and it has 12; " +
		"distances of at most 2 stitches, or holes of 1 stitch would fit"
	if got := detail(t, in); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A single hole between two distances: the refusal adds up what was asked, and
// that is the band they would fill.
func TestTwoDistancesToASingleHole(t *testing.T) {
	in := ButtonholesInput{BandStitches: 20, BandRows: 7, HoleCount: 1, HoleStitches: new(3), BeforeFirstPlaces: new(4),
		AfterLastPlaces: new(5)}
	var sum, has int
	text := detail(t, in)
	if _, err := fmt.Sscanf(text, "the distances and the hole come to %d stitches, and the band has %d", &sum, &has); err != nil ||
		sum != 4+3+5 || has != 20 {
		t.Errorf("%q", text)
	}
	in.BandStitches = sum
	if _, err := PlanButtonholes(in); err != nil {
		t.Error(err)
	}
}

// A row of holes too near the end of the band: the band that is said to be long
// enough is, and no shorter one; the row said to be the last that will do does,
// and no later one.
func TestButtonholeRowRemediesFit(t *testing.T) {
	ask := func(rows, row int) ButtonholesInput {
		return ButtonholesInput{BandStitches: 5, BandRows: rows, HoleCount: 1, HoleStitches: new(1), HoleRowNumber: &row}
	}
	fits := func(rows, row int) bool {
		_, err := PlanButtonholes(ask(rows, row))
		return err == nil
	}
	for rows := MinBandRows; rows <= 20; rows++ {
		for row := 2; row <= 24; row += 2 {
			if fits(rows, row) != (row < rows) {
				t.Errorf("row %d of %d fits: %v", row, rows, row >= rows)
			}
			if row < rows {
				continue
			}
			var at, had, need, most int
			text := detail(t, ask(rows, row))
			if _, err := fmt.Sscanf(text, "the holes are cast on again in the row after %d, and the band has %d rows; "+
				"it needs at least %d, or the holes at most row %d", &at, &had, &need, &most); err != nil || at != row || had != rows {
				t.Fatalf("row %d of %d: %q, %v", row, rows, text, err)
			}
			if !fits(need, row) || fits(need-1, row) || !fits(rows, most) || fits(rows, most+2) {
				t.Errorf("%q is not so", text)
			}
		}
	}
}

// The widest hole is of 100 stitches, given in cm as in stitches.
func TestWidestHoleInCm(t *testing.T) {
	out, err := PlanButtonholes(ButtonholesInput{BandStitches: 120, BandRows: 7, HoleCount: 1, HoleCm: new(50.0),
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}})
	if err != nil || out.HoleStitches != MaxHoleStitches {
		t.Errorf("%d, %v", out.HoleStitches, err)
	}
}
