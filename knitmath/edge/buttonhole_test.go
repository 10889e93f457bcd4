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
								in := ButtonholesInput{Direction: direction, StitchCount: length, RowCount: 3 + length%6,
									HoleCount: holes, HoleStitchCount: &width}
								if direction == BandDirectionAlongRows {
									in.StitchCount, in.RowCount, in.HoleRows = width+2+length%2, length, rows
								} else if rows > 0 {
									continue
								}
								if first > 0 {
									in.FirstCount = &first
								} else if holes > 1 {
									continue
								}
								if last > 0 {
									in.LastCount = &last
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
		in.Direction, in.StitchCount, in.RowCount, in.HoleCount, fault.Or(in.HoleStitchCount, 0), fault.Or(in.FirstCount, 0),
		fault.Or(in.LastCount, 0), fault.Or(in.HoleRow, 0), in.HoleRows)
}

func checkButtonholes(t *testing.T, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	at := describeBand(in)
	along := in.Direction == BandDirectionAlongRows
	var m *stitch.Machine
	if along {
		m = knittest.CastOn(t, in.StitchCount, false)
	} else {
		m = stitch.NewMachine(stitch.Flat)
		if err := m.LoadEdge(in.StitchCount); err != nil {
			t.Fatal(err)
		}
		if err := m.Work(stitch.RowOf(stitch.ToEnd(stitch.PickUp))); err != nil {
			t.Fatal(err)
		}
	}
	next := 0
	for row := 1; row <= in.RowCount; row++ {
		work := knittest.PlainRow(m)
		if next < len(out.Rows) && out.Rows[next].RowNumber == row {
			r := out.Rows[next]
			work = r.Instruction.Row
			if (m.Side() == stitch.WrongSide) != (r.Side == stitch.WrongSide) || m.StitchCount() != r.Instruction.StartCount {
				t.Fatalf("%s: row %d: %v, %d stitches", at, row, m.Side(), m.StitchCount())
			}
			next++
			if err := m.Work(work); err != nil {
				t.Fatalf("%s: row %d, %q: %v", at, row, work.Text(), err)
			}
			if m.StitchCount() != r.Instruction.EndCount {
				t.Fatalf("%s: row %d leaves %d", at, row, m.StitchCount())
			}
			checkHoles(t, at, m, row, out)
			continue
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%s: row %d: %v", at, row, err)
		}
	}
	if next != len(out.Rows) || m.StitchCount() != in.StitchCount || len(out.Holes) != in.HoleCount ||
		len(m.BoundOff()) != in.HoleCount*out.HoleStitchCount {
		t.Fatalf("%s: ends with %d stitches, %d bound off", at, m.StitchCount(), len(m.BoundOff()))
	}
	checkGaps(t, at, in, out)
}

// checkHoles compares the stitches just cast on with the holes said.
func checkHoles(t *testing.T, at string, m *stitch.Machine, row int, out Buttonholes) {
	t.Helper()
	cast := map[int]bool{}
	for _, h := range out.Holes {
		if h.CastOnRow == row {
			for s := h.FirstStitch; s <= h.LastStitch; s++ {
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
	step, places, length := 1, out.HoleStitchCount, in.StitchCount
	if along {
		places, length = 2, in.RowCount
		if in.HoleRows != shaping.ShapingRowsAny {
			step = 2
		}
	}
	sum, low, high := out.FirstCount+out.LastCount+in.HoleCount*places, 1<<30, 0
	mirrored := true
	for i, g := range out.GapCounts {
		sum += g
		low, high = min(low, g), max(high, g)
		mirrored = mirrored && g == out.GapCounts[len(out.GapCounts)-1-i]
	}
	if sum != length || len(out.GapCounts) != in.HoleCount-1 || len(out.GapCounts) > 0 && (low < 1 || high-low > step) {
		t.Fatalf("%s: %d, gaps %v, %d", at, out.FirstCount, out.GapCounts, out.LastCount)
	}
	noted := map[string]bool{}
	for _, n := range out.Notices {
		noted[string(n.Reason)] = true
	}
	if noted["NOT_MIRRORED"] == mirrored {
		t.Fatalf("%s: gaps %v, notices %v", at, out.GapCounts, out.Notices)
	}
	// An odd number of larger gaps among an even number: there is no palindrome.
	if !mirrored && (len(out.GapCounts)%2 != 0 || (sum-out.FirstCount-out.LastCount-in.HoleCount*places)/step%2 == 0) {
		t.Fatalf("%s: gaps %v could read the same both ways", at, out.GapCounts)
	}
	moved := 0
	if in.FirstCount != nil {
		moved = max(moved, measure.Abs(out.FirstCount-*in.FirstCount))
	}
	switch {
	case in.LastCount != nil:
		moved = max(moved, measure.Abs(out.LastCount-*in.LastCount))
	case in.HoleCount > 1:
		moved = max(moved, measure.Abs(out.LastCount-*in.FirstCount))
	}
	if moved > 0 != noted["MOVED_TO_RIGHT_SIDE"] || moved > 1 || moved > 0 && step == 1 {
		t.Fatalf("%s: %d and %d, notices %v", at, out.FirstCount, out.LastCount, out.Notices)
	}
	if step == 2 && out.FirstCount%2 != 0 {
		t.Fatalf("%s: bound off on the wrong side", at)
	}
}

// checkButtonholeRefusal: only what has no arrangement is refused. All of them
// are tried: holes at their legal rows or stitches, one place or more between.
func checkButtonholeRefusal(t *testing.T, in ButtonholesInput, err error) {
	t.Helper()
	knittest.CheckInputError(t, err)
	along := in.Direction == BandDirectionAlongRows
	places, length, step, gap := *in.HoleStitchCount, in.StitchCount, 1, 1
	if along {
		places, length = 2, in.RowCount
		if in.HoleRows != shaping.ShapingRowsAny {
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
			if in.FirstCount != nil && measure.Abs(first-*in.FirstCount) > slack || in.LastCount != nil && measure.Abs(last-*in.LastCount) > slack {
				continue
			}
			if in.HoleCount > 1 && step == 2 && (first < *in.FirstCount || in.LastCount != nil && last < *in.LastCount) {
				continue // the outer holes move inward, never outward
			}
			if in.HoleCount > 1 && in.LastCount == nil && (last < *in.FirstCount || last > *in.FirstCount+slack) {
				continue
			}
			if in.HoleCount == 1 && (end != first+places ||
				in.FirstCount != nil && in.LastCount != nil && *in.FirstCount+*in.LastCount != first+last) {
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
	in := ButtonholesInput{StitchCount: 100, RowCount: 7, HoleCount: 7, HoleStitchCount: &three, FirstCount: &four,
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}}
	out, err := PlanButtonholes(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Notices) != 2 || out.Notices[0].Reason != "NOT_MIRRORED" {
		t.Errorf("notices %v", out.Notices)
	}
	in.LastCount = &five
	if out, err = PlanButtonholes(in); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(out.GapCounts, []int{12, 12, 11, 11, 12, 12}) || len(out.Notices) != 1 || out.Notices[0].Reason != "SMALL_PARTS" {
		t.Errorf("gaps %v, notices %v", out.GapCounts, out.Notices)
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
	if h := out.Holes[1]; h.FirstStitch != 20 || h.LastStitch != 22 || math.Abs(*h.MiddleCm-10.25) > 1e-12 {
		t.Errorf("second hole %+v, %v", h, *h.MiddleCm)
	}
	// A band of 9 stitches knit upward, 150 rows at 30 to 10 cm, holes 1.1 cm from
	// both ends, 2 cm wide: 3.3 rows, so 3; row 4 is a wrong-side row, so 4 rows
	// and row 5. At the other end 3 rows after rows 146 and 147 would bind off on
	// the wrong side; row 145, and 4 rows. 150 - 8 - 10 = 132 rows in 4 gaps.
	cm, wide := 1.1, 1.5
	in = ButtonholesInput{Direction: BandDirectionAlongRows, StitchCount: 9, RowCount: 150, HoleCount: 5, HoleCm: &wide, FirstCm: &cm,
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}}
	if out, err = PlanButtonholes(in); err != nil {
		t.Fatal(err)
	}
	if out.FirstCount != 4 || out.LastCount != 4 || out.HoleStitchCount != 3 || len(out.Notices) != 3 {
		t.Errorf("%d, %d, %d, %v", out.FirstCount, out.LastCount, out.HoleStitchCount, out.Notices)
	}
	// 132 rows in four even gaps: 34, 32, 32, 34.
	if !reflect.DeepEqual(out.GapCounts, []int{34, 32, 32, 34}) {
		t.Errorf("gaps %v", out.GapCounts)
	}
	want := []string{
		"k and p stand for the stitch pattern of the band. The stitch left on the right needle by binding off is the first of those worked next.",
		"Hole (RS): k3, bo 3, k3; next row p3, co 3, p3.",
		"Bind a hole off in rows 5, 41, 75, 109, 145; work all other rows plain, to row 150.",
	}
	if !reflect.DeepEqual(out.Directions, want) {
		t.Errorf("directions %q", out.Directions)
	}
}

// The row of the holes is the right-side row nearest the middle: tried over all.
func TestButtonholeRowIsMiddle(t *testing.T) {
	one := 1
	for rows := MinBandRows; rows <= 40; rows++ {
		out, err := PlanButtonholes(ButtonholesInput{StitchCount: 3, RowCount: rows, HoleCount: 1, HoleStitchCount: &one})
		if err != nil {
			t.Fatal(err)
		}
		best := 0
		for r := 2; r+1 <= rows; r += 2 {
			if best == 0 || measure.Abs(r-1-(rows-r-1)) < measure.Abs(best-1-(rows-best-1)) {
				best = r
			}
		}
		if got := out.Holes[0].BindOffRow; got != best {
			t.Errorf("%d rows: row %d, want %d", rows, got, best)
		}
		// The same when asked for, and with one hole the stitches left over are
		// equal on both sides.
		in := ButtonholesInput{StitchCount: 5, RowCount: rows, HoleCount: 1, HoleStitchCount: &one, HoleRow: &best}
		if out, err = PlanButtonholes(in); err != nil || out.FirstCount != 2 || out.LastCount != 2 {
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
		in := ButtonholesInput{StitchCount: 100, RowCount: 7, HoleCount: 7, HoleStitchCount: &three, FirstCount: &three}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*ButtonholesInput)
		want   []string
	}{
		"empty": {func(in *ButtonholesInput) { *in = ButtonholesInput{} }, []string{"stitch_count REQUIRED", "row_count REQUIRED",
			"hole_count REQUIRED", "hole_stitch_count REQUIRED", "hole_cm REQUIRED", "first_count REQUIRED", "first_cm REQUIRED"}},
		"ranges": {func(in *ButtonholesInput) {
			*in = ButtonholesInput{StitchCount: 2, RowCount: tooBig, HoleCount: many, HoleStitchCount: &many, FirstCount: &zero, LastCount: &tooBig, HoleRow: &one}
		}, []string{"stitch_count OUT_OF_RANGE", "row_count OUT_OF_RANGE", "hole_count OUT_OF_RANGE", "hole_stitch_count OUT_OF_RANGE",
			"first_count OUT_OF_RANGE", "last_count OUT_OF_RANGE", "hole_row OUT_OF_RANGE"}},
		"both": {func(in *ButtonholesInput) {
			in.HoleCm, in.FirstCm, in.LastCount, in.LastCm, in.Gauge = &cm, &cm, &three, &cm, standard
		}, []string{"hole_stitch_count CONTRADICTORY", "hole_cm CONTRADICTORY", "first_count CONTRADICTORY", "first_cm CONTRADICTORY",
			"last_count CONTRADICTORY", "last_cm CONTRADICTORY"}},
		"not finite": {func(in *ButtonholesInput) {
			in.HoleStitchCount, in.FirstCount, in.HoleCm, in.FirstCm, in.LastCm, in.Gauge = nil, nil, &nan, &nan, &nan, standard
		}, []string{"hole_cm NOT_FINITE", "first_cm NOT_FINITE", "last_cm NOT_FINITE"}},
		"no gauge":     {func(in *ButtonholesInput) { in.LastCm = &cm }, []string{"gauge REQUIRED"}},
		"bad gauge":    {func(in *ButtonholesInput) { in.Gauge = &gauge.Gauge{Stitches: -1, Rows: 1} }, []string{"gauge.stitches OUT_OF_RANGE"}},
		"too many":     {func(in *ButtonholesInput) { in.HoleCount = 30 }, []string{"stitch_count INFEASIBLE", "hole_count INFEASIBLE", "hole_stitch_count INFEASIBLE", "first_count INFEASIBLE"}},
		"no hole":      {func(in *ButtonholesInput) { in.HoleStitchCount, in.HoleCm, in.Gauge = nil, &tiny, standard }, []string{"hole_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"one, twice":   {func(in *ButtonholesInput) { in.HoleCount, in.LastCount = 1, &three }, []string{"stitch_count INFEASIBLE", "hole_count INFEASIBLE", "hole_stitch_count INFEASIBLE", "first_count INFEASIBLE", "last_count INFEASIBLE"}},
		"wrong side":   {func(in *ButtonholesInput) { in.HoleRow = &odd }, []string{"hole_row INFEASIBLE"}},
		"row too late": {func(in *ButtonholesInput) { in.HoleRow = &big }, []string{"row_count INFEASIBLE", "hole_row INFEASIBLE"}},
		"rows across":  {func(in *ButtonholesInput) { in.HoleRows = shaping.ShapingRowsAny }, []string{"hole_rows CONTRADICTORY"}},
		"row up":       {func(in *ButtonholesInput) { in.Direction, in.HoleRow = BandDirectionAlongRows, &three }, []string{"hole_row CONTRADICTORY"}},
		"narrow":       {func(in *ButtonholesInput) { in.Direction, in.StitchCount = BandDirectionAlongRows, 4 }, []string{"stitch_count INFEASIBLE", "hole_stitch_count INFEASIBLE"}},
		"short":        {func(in *ButtonholesInput) { in.Direction = BandDirectionAlongRows }, []string{"row_count INFEASIBLE", "hole_count INFEASIBLE", "first_count INFEASIBLE"}},
		"enums":        {func(in *ButtonholesInput) { in.Direction, in.HoleRows, in.DisplayUnit = 3, 3, 3 }, []string{"direction UNKNOWN_VALUE", "hole_rows UNKNOWN_VALUE", "hole_rows CONTRADICTORY", "display_unit UNKNOWN_VALUE"}},
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
				in := ButtonholesInput{Direction: direction, StitchCount: length, RowCount: length, HoleCount: 12, HoleStitchCount: &three, FirstCount: &first}
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
				n, _ := fmt.Sscanf(text, "these distances and 12 holes need a band of at least %d "+noun+", and it has %d; %d holes would fit", &need, &had, &fit)
				if n < 2 {
					t.Fatalf("%q", text)
				}
				longer := in
				longer.StitchCount, longer.RowCount = need, need
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
		in := ButtonholesInput{Direction: BandDirection(direction), StitchCount: stitches % 500, RowCount: rows % 500, HoleCount: holes,
			HoleStitchCount: &width, HoleRows: shaping.ShapingRows(which), WithOutline: true}
		if first != 0 {
			in.FirstCount = &first
		}
		if last != 0 {
			in.LastCount = &last
		}
		if row != 0 {
			in.HoleRow = &row
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
	in := ButtonholesInput{StitchCount: 120, RowCount: 8, HoleCount: 7, HoleStitchCount: &three, FirstCount: &four}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkButtonholesMost(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{Direction: BandDirectionAlongRows, StitchCount: 9, RowCount: stitch.MaxRows, HoleCount: MaxButtonholes,
		HoleStitchCount: &three, FirstCount: &four, HoleRows: shaping.ShapingRowsAny}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}
