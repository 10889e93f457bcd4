package edge

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// Every small band is knit from its pick-up or cast-on to its last row. The holes
// are where they are said to be: the stitches cast on in a row are the only ones
// with nothing under them when it has been worked.
func TestButtonholesAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for _, direction := range []BandDirection{BandDirectionAlongStitches, BandDirectionAlongRows} {
		for length := 3; length <= 26; length++ {
			for holes := 1; holes <= 5; holes++ {
				for width := 1; width <= 3; width++ {
					for first := 0; first <= 4; first++ {
						for last := 0; last <= 3; last++ {
							for rows := shaping.ShapingRowsUnspecified; rows <= shaping.ShapingRowsAny; rows++ {
								in := ButtonholesInput{Direction: direction, BandStitches: length, BandRows: 3 + length%6,
									HoleCount: holes, HoleStitches: &width}
								if direction == BandDirectionAlongRows {
									in.BandStitches, in.BandRows, in.BindOffRows = width+2+length%2, length, rows
								} else if rows > 0 {
									continue
								}
								if first > 0 {
									in.BeforeFirst = &first
								} else if holes > 1 {
									continue
								}
								if last > 0 {
									in.AfterLast = &last
								}
								out, err := PlanButtonholes(in)
								if err != nil {
									refused++
									checkButtonholeRefusal(t, in, err)
									continue
								}
								planned++
								checkButtonholes(t, in, out)
							}
						}
					}
				}
			}
		}
	}
	if planned < 4000 || refused < 1000 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

func describeBand(in ButtonholesInput) string {
	return fmt.Sprintf("direction %d, %d stitches, %d rows, %d holes of %d, first %d, last %d, hole row %d, rows %d",
		in.Direction, in.BandStitches, in.BandRows, in.HoleCount, fault.Or(in.HoleStitches, 0), fault.Or(in.BeforeFirst, 0),
		fault.Or(in.AfterLast, 0), fault.Or(in.HoleRowNumber, 0), in.BindOffRows)
}

func checkButtonholes(t *testing.T, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	at := describeBand(in)
	along := in.Direction == BandDirectionAlongRows
	var m *stitch.Machine
	if along {
		m = knittest.CastOn(t, in.BandStitches, false)
	} else {
		m = stitch.NewMachine(stitch.Flat)
		if err := m.LoadEdge(in.BandStitches); err != nil {
			t.Fatal(err)
		}
		if err := m.Work(stitch.RowOf(stitch.ToEnd(stitch.PickUp))); err != nil {
			t.Fatal(err)
		}
	}
	next := 0
	for row := 1; row <= in.BandRows; row++ {
		work := knittest.PlainRow(m)
		if next < len(out.Rows) && out.Rows[next].RowNumber == row {
			r := out.Rows[next]
			work = r.Instruction.Row
			if (m.Side() == stitch.WrongSide) != (r.Side == stitch.WrongSide) || m.StitchCount() != r.Instruction.StartStitches {
				t.Fatalf("%s: row %d: %v, %d stitches", at, row, m.Side(), m.StitchCount())
			}
			next++
			if err := m.Work(work); err != nil {
				t.Fatalf("%s: row %d, %q: %v", at, row, work.Text(), err)
			}
			if m.StitchCount() != r.Instruction.EndStitches {
				t.Fatalf("%s: row %d leaves %d", at, row, m.StitchCount())
			}
			checkHoles(t, at, m, row, out)
			continue
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%s: row %d: %v", at, row, err)
		}
	}
	if next != len(out.Rows) || m.StitchCount() != in.BandStitches || len(out.Holes) != in.HoleCount ||
		len(m.BoundOff()) != in.HoleCount*out.HoleStitches {
		t.Fatalf("%s: ends with %d stitches, %d bound off", at, m.StitchCount(), len(m.BoundOff()))
	}
	checkGaps(t, at, in, out)
}

// checkHoles compares the stitches just cast on with the holes said.
func checkHoles(t *testing.T, at string, m *stitch.Machine, row int, out Buttonholes) {
	t.Helper()
	cast := map[int]bool{}
	for _, h := range out.Holes {
		if h.CastOnRowNumber == row {
			for s := h.FirstStitchNumber; s <= h.LastStitchNumber; s++ {
				cast[s] = true
			}
		}
	}
	if len(cast) == 0 {
		return
	}
	for i, h := range m.Heights() {
		if (h == 0) != cast[i+1] {
			t.Fatalf("%s: row %d: heights %v, holes %+v", at, row, m.Heights(), out.Holes)
		}
	}
}

// checkGaps compares distances and gaps with what was asked.
func checkGaps(t *testing.T, at string, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	along := in.Direction == BandDirectionAlongRows
	step, places, length := 1, out.HoleStitches, in.BandStitches
	if along {
		places, length = 2, in.BandRows
		if in.BindOffRows != shaping.ShapingRowsAny {
			step = 2
		}
	}
	sum, low, high := out.BeforeFirst+out.AfterLast+in.HoleCount*places, 1<<30, 0
	mirrored := true
	for i, g := range out.Gaps {
		sum += g
		low, high = min(low, g), max(high, g)
		mirrored = mirrored && g == out.Gaps[len(out.Gaps)-1-i]
	}
	if sum != length || len(out.Gaps) != in.HoleCount-1 || len(out.Gaps) > 0 && (low < 1 || high-low > step) {
		t.Fatalf("%s: %d, gaps %v, %d", at, out.BeforeFirst, out.Gaps, out.AfterLast)
	}
	noted := map[string]bool{}
	for _, n := range out.Notices {
		noted[string(n.Reason)] = true
	}
	if noted["NOT_MIRRORED"] == mirrored {
		t.Fatalf("%s: gaps %v, notices %v", at, out.Gaps, out.Notices)
	}
	// An odd number of larger gaps among an even number: there is no palindrome.
	if !mirrored && (len(out.Gaps)%2 != 0 || (sum-out.BeforeFirst-out.AfterLast-in.HoleCount*places)/step%2 == 0) {
		t.Fatalf("%s: gaps %v could read the same both ways", at, out.Gaps)
	}
	moved := 0
	if in.BeforeFirst != nil {
		moved = max(moved, measure.Abs(out.BeforeFirst-*in.BeforeFirst))
	}
	switch {
	case in.AfterLast != nil:
		moved = max(moved, measure.Abs(out.AfterLast-*in.AfterLast))
	case in.HoleCount > 1:
		moved = max(moved, measure.Abs(out.AfterLast-*in.BeforeFirst))
	}
	if moved > 0 != noted["MOVED_TO_RIGHT_SIDE"] || moved > 1 || moved > 0 && step == 1 {
		t.Fatalf("%s: %d and %d, notices %v", at, out.BeforeFirst, out.AfterLast, out.Notices)
	}
	if step == 2 && out.BeforeFirst%2 != 0 {
		t.Fatalf("%s: bound off on the wrong side", at)
	}
}

// checkButtonholeRefusal: only what has no arrangement is refused. All of them
// are tried: holes at their legal rows or stitches, one place or more between.
func checkButtonholeRefusal(t *testing.T, in ButtonholesInput, err error) {
	t.Helper()
	knittest.CheckInputError(t, err)
	along := in.Direction == BandDirectionAlongRows
	places, length, step, gap := *in.HoleStitches, in.BandStitches, 1, 1
	if along {
		places, length = 2, in.BandRows
		if in.BindOffRows != shaping.ShapingRowsAny {
			step = 2
		}
	}
	for first := 1; first < length; first++ {
		for end := first + places; end < length; end++ {
			last := length - end
			if step == 2 && (first%2 != 0 || (end-places)%2 != 0) {
				continue
			}
			slack := 0
			if step == 2 {
				slack = 1
			}
			if in.BeforeFirst != nil && measure.Abs(first-*in.BeforeFirst) > slack ||
				in.AfterLast != nil && measure.Abs(last-*in.AfterLast) > slack {
				continue
			}
			if in.HoleCount > 1 && step == 2 && (first < *in.BeforeFirst || in.AfterLast != nil && last < *in.AfterLast) {
				continue // the outer holes move inward, never outward
			}
			if in.HoleCount > 1 && in.AfterLast == nil && (last < *in.BeforeFirst || last > *in.BeforeFirst+slack) {
				continue
			}
			if in.HoleCount == 1 && (end != first+places ||
				in.BeforeFirst != nil && in.AfterLast != nil && *in.BeforeFirst+*in.AfterLast != first+last) {
				continue
			}
			if step == 2 {
				gap = 2
			}
			if in.HoleCount == 1 || end-first >= in.HoleCount*places+(in.HoleCount-1)*gap {
				t.Fatalf("%s refused, but %d before and %d after would do: %v", describeBand(in), first, last, err)
			}
		}
	}
}

// A front band by hand: 100 stitches, 7 holes of 3, 4 stitches from each end.
// 100 - 8 - 21 = 71 stitches lie in 6 gaps: five of 12 and one of 11, which
// cannot be laid the same from both ends; with 5 at the far end 70 are four of
// 12 and two of 11, the larger outermost.
func TestButtonholesByHand(t *testing.T) {
	three, four, five := 3, 4, 5
	in := ButtonholesInput{BandStitches: 100, BandRows: 7, HoleCount: 7, HoleStitches: &three, BeforeFirst: &four,
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}}
	out, err := PlanButtonholes(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Notices) != 2 || out.Notices[0].Reason != "NOT_MIRRORED" {
		t.Errorf("notices %v", out.Notices)
	}
	in.AfterLast = &five
	if out, err = PlanButtonholes(in); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(out.Gaps, []int{12, 12, 11, 11, 12, 12}) || len(out.Notices) != 1 || out.Notices[0].Reason != "SMALL_PARTS" {
		t.Errorf("gaps %v, notices %v", out.Gaps, out.Notices)
	}
	// Of 7 rows, 2*4 - 7 = 1: row 4 leaves three before and two after.
	if got := out.Rows[0].Instruction.Row.Text(); got != "k4, [bo 3, k12] twice, [bo 3, k11] twice, [bo 3, k12] twice, bo 3, k5" ||
		out.Rows[0].RowNumber != 4 {
		t.Errorf("row %d %q", out.Rows[0].RowNumber, got)
	}
	if got := out.Rows[1].Instruction.Row.Text(); got != "p5, [co 3, p12] twice, [co 3, p11] twice, [co 3, p12] twice, co 3, p4" {
		t.Errorf("row %q", got)
	}
	// The second hole lies on stitches 20 to 22; its middle 20.5 stitches from
	// the start, which at 2 to the cm are 10.25 cm.
	if h := out.Holes[1]; h.FirstStitchNumber != 20 || h.LastStitchNumber != 22 || math.Abs(*h.MiddleCm-10.25) > 1e-12 {
		t.Errorf("second hole %+v, %v", h, *h.MiddleCm)
	}
	// A band of 9 stitches knit upward, 150 rows at 30 to 10 cm, holes 1.1 cm from
	// both ends, 2 cm wide: 3.3 rows, so 3; row 4 is a wrong-side row, so 4 rows
	// and row 5. At the other end 3 rows after rows 146 and 147 would bind off on
	// the wrong side; row 145, and 4 rows. 150 - 8 - 10 = 132 rows in 4 gaps.
	cm, wide := 1.1, 1.5
	in = ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: 150, HoleCount: 5, HoleCm: &wide,
		BeforeFirstCm: &cm,
		Gauge:         &gauge.Gauge{Stitches: 20, Rows: 30}}
	if out, err = PlanButtonholes(in); err != nil {
		t.Fatal(err)
	}
	if out.BeforeFirst != 4 || out.AfterLast != 4 || out.HoleStitches != 3 || len(out.Notices) != 3 {
		t.Errorf("%d, %d, %d, %v", out.BeforeFirst, out.AfterLast, out.HoleStitches, out.Notices)
	}
	// 132 rows in four even gaps: 34, 32, 32, 34.
	if !reflect.DeepEqual(out.Gaps, []int{34, 32, 32, 34}) {
		t.Errorf("gaps %v", out.Gaps)
	}
	want := []string{
		"k and p stand for the stitch pattern of the band. " +
			"The stitch left on the right needle by binding off is the first of those worked next.",
		"Hole (RS): k3, bo 3, k3; next row p3, co 3, p3.",
		"Bind a hole off in rows 5, 41, 75, 109, 145; work all other rows plain, to row 150.",
	}
	if !reflect.DeepEqual(out.Directions(), want) {
		t.Errorf("directions %q", out.Directions())
	}
}

// The row of the holes is the right-side row nearest the middle: tried over all.
func TestButtonholeRowIsMiddle(t *testing.T) {
	one := 1
	for rows := MinBandRows; rows <= 40; rows++ {
		out, err := PlanButtonholes(ButtonholesInput{BandStitches: 3, BandRows: rows, HoleCount: 1, HoleStitches: &one})
		if err != nil {
			t.Fatal(err)
		}
		best := 0
		for r := 2; r+1 <= rows; r += 2 {
			if best == 0 || measure.Abs(r-1-(rows-r-1)) < measure.Abs(best-1-(rows-best-1)) {
				best = r
			}
		}
		if got := out.Holes[0].BindOffRowNumber; got != best {
			t.Errorf("%d rows: row %d, want %d", rows, got, best)
		}
		// The same when asked for, and with one hole the stitches left over are
		// equal on both sides.
		in := ButtonholesInput{BandStitches: 5, BandRows: rows, HoleCount: 1, HoleStitches: &one, HoleRowNumber: &best}
		if out, err = PlanButtonholes(in); err != nil || out.BeforeFirst != 2 || out.AfterLast != 2 {
			t.Errorf("%d rows: %+v, %v", rows, out, err)
		} else {
			checkButtonholes(t, in, out)
		}
	}
}

func TestButtonholesRefusals(t *testing.T) {
	zero, one, three, odd, many := 0, 1, 3, 5, 101
	big, tooBig := 10_000, 10_001
	nan, cm, tiny := math.NaN(), 2.0, 0.1
	standard := &gauge.Gauge{Stitches: 20, Rows: 30}
	base := func(change func(*ButtonholesInput)) ButtonholesInput {
		in := ButtonholesInput{BandStitches: 100, BandRows: 7, HoleCount: 7, HoleStitches: &three, BeforeFirst: &three}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*ButtonholesInput)
		want   []string
	}{
		"empty": {func(in *ButtonholesInput) { *in = ButtonholesInput{} }, []string{"band_stitches REQUIRED", "band_rows REQUIRED",
			"hole_count REQUIRED", "hole_stitches REQUIRED", "hole_cm REQUIRED", "before_first REQUIRED", "before_first_cm REQUIRED"}},
		"ranges": {func(in *ButtonholesInput) {
			*in = ButtonholesInput{BandStitches: 2, BandRows: tooBig, HoleCount: many, HoleStitches: &many, BeforeFirst: &zero,
				AfterLast: &tooBig, HoleRowNumber: &one}
		}, []string{"band_stitches OUT_OF_RANGE", "band_rows OUT_OF_RANGE", "hole_count OUT_OF_RANGE", "hole_stitches OUT_OF_RANGE",
			"before_first OUT_OF_RANGE", "after_last OUT_OF_RANGE", "hole_row_number OUT_OF_RANGE"}},
		"both": {func(in *ButtonholesInput) {
			in.HoleCm, in.BeforeFirstCm, in.AfterLast, in.AfterLastCm, in.Gauge = &cm, &cm, &three, &cm, standard
		}, []string{"hole_stitches CONTRADICTORY", "hole_cm CONTRADICTORY", "before_first CONTRADICTORY", "before_first_cm CONTRADICTORY",
			"after_last CONTRADICTORY", "after_last_cm CONTRADICTORY"}},
		"not finite": {func(in *ButtonholesInput) {
			in.HoleStitches, in.BeforeFirst, in.HoleCm, in.BeforeFirstCm, in.AfterLastCm, in.Gauge = nil, nil, &nan, &nan, &nan, standard
		}, []string{"hole_cm NOT_FINITE", "before_first_cm NOT_FINITE", "after_last_cm NOT_FINITE"}},
		"no gauge": {func(in *ButtonholesInput) { in.AfterLastCm = &cm }, []string{"gauge REQUIRED"}},
		"bad gauge": {func(in *ButtonholesInput) { in.Gauge = &gauge.Gauge{Stitches: -1, Rows: 1} },
			[]string{"gauge.stitches OUT_OF_RANGE"}},
		"too many": {func(in *ButtonholesInput) { in.HoleCount = 30 },
			[]string{"band_stitches INFEASIBLE", "hole_count INFEASIBLE", "hole_stitches INFEASIBLE", "before_first INFEASIBLE"}},
		"no hole": {func(in *ButtonholesInput) { in.HoleStitches, in.HoleCm, in.Gauge = nil, &tiny, standard },
			[]string{"hole_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"one, twice": {func(in *ButtonholesInput) { in.HoleCount, in.AfterLast = 1, &three },
			[]string{"band_stitches INFEASIBLE", "hole_count INFEASIBLE", "hole_stitches INFEASIBLE", "before_first INFEASIBLE",
				"after_last INFEASIBLE"}},
		"wrong side": {func(in *ButtonholesInput) { in.HoleRowNumber = &odd }, []string{"hole_row_number INFEASIBLE"}},
		"row too late": {func(in *ButtonholesInput) { in.HoleRowNumber = &big },
			[]string{"band_rows INFEASIBLE", "hole_row_number INFEASIBLE"}},
		"rows across": {func(in *ButtonholesInput) { in.BindOffRows = shaping.ShapingRowsAny }, []string{"bind_off_rows CONTRADICTORY"}},
		"row up": {func(in *ButtonholesInput) { in.Direction, in.HoleRowNumber = BandDirectionAlongRows, &three },
			[]string{"hole_row_number CONTRADICTORY"}},
		"narrow": {func(in *ButtonholesInput) { in.Direction, in.BandStitches = BandDirectionAlongRows, 4 },
			[]string{"band_stitches INFEASIBLE", "hole_stitches INFEASIBLE"}},
		"short": {func(in *ButtonholesInput) { in.Direction = BandDirectionAlongRows },
			[]string{"band_rows INFEASIBLE", "hole_count INFEASIBLE", "before_first INFEASIBLE"}},
		"enums": {func(in *ButtonholesInput) { in.Direction, in.BindOffRows, in.DisplayUnit = 3, 3, 3 },
			[]string{"direction UNKNOWN_VALUE", "bind_off_rows UNKNOWN_VALUE", "bind_off_rows CONTRADICTORY",
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
					BeforeFirst: &first}
				_, err := PlanButtonholes(in)
				if err == nil {
					continue
				}
				var refusal *fault.InputError
				if !errors.As(err, &refusal) {
					t.Fatal(err)
				}
				var had, need, fit int
				text := refusal.Violations[0].Detail
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

func FuzzPlanButtonholes(f *testing.F) {
	f.Add(int32(1), 100, 7, 7, 3, 4, 0, 0, int32(0), 0.0)
	f.Add(int32(2), 9, 150, 5, 3, 4, 4, 0, int32(2), 20.0)
	f.Fuzz(func(t *testing.T, direction int32, stitches, rows, holes, width, first, last, row int, which int32, standard float64) {
		in := ButtonholesInput{Direction: BandDirection(direction), BandStitches: stitches % 500, BandRows: rows % 500, HoleCount: holes,
			HoleStitches: &width, BindOffRows: shaping.ShapingRows(which), WithOutline: true}
		if first != 0 {
			in.BeforeFirst = &first
		}
		if last != 0 {
			in.AfterLast = &last
		}
		if row != 0 {
			in.HoleRowNumber = &row
		}
		if standard != 0 {
			in.Gauge = &gauge.Gauge{Stitches: standard, Rows: standard}
		}
		out, err := PlanButtonholes(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkButtonholes(t, in, out)
	})
}

func BenchmarkButtonholes(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{BandStitches: 120, BandRows: 8, HoleCount: 7, HoleStitches: &three, BeforeFirst: &four}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkButtonholesMost(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: stitch.MaxRows, HoleCount: MaxButtonholes,
		HoleStitches: &three, BeforeFirst: &four, BindOffRows: shaping.ShapingRowsAny}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}
