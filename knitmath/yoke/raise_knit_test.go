package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// checkRaise works the raise on the needle as it stands, two rounds, and compares
// the rows under every stitch with the profile that was asked for, worked out
// again as a fraction. It gives the rows that the highest stitch has more.
func checkRaise(t *testing.T, m *stitch.Machine, in CircularInput, r BackRaisePlan) int {
	t.Helper()
	below, worked, turns := m.Heights(), m.RowsWorked(), len(r.Rows)-2
	if len(below) != r.Stitches || r.BackStitches >= r.Stitches {
		t.Fatalf("%d stitches on the needle, %+v", len(below), r)
	}
	for i, row := range r.Rows {
		if row.RowNumber != i+1 {
			t.Fatalf("row %d of the raise is called %d", i+1, row.RowNumber)
		}
		workRaiseRow(t, m, row, i < turns, in.BackRaise.TurnMethod == shortrow.TurnMethodGerman)
		if row.Instruction.StartStitches != r.Stitches || row.Instruction.EndStitches != r.Stitches {
			t.Fatalf("row %d of the raise: %+v", i+1, row.Instruction)
		}
	}
	if m.Side() != stitch.RightSide || m.ToWork() != r.Stitches || m.Unresolved() != 0 || turns != r.TurnCount ||
		m.RowsWorked() != worked+turns+2 {
		t.Fatalf("after the raise %d stitches, %d gaps open, %d turns", m.ToWork(), m.Unresolved(), turns)
	}
	rows := m.Heights()
	for x := range rows {
		rows[x] -= below[x] + 2 // the two rounds
	}
	return checkRaisedRows(t, in, r, rows)
}

// workRaiseRow works a row of a raise, which turns before its end or not.
func workRaiseRow(t *testing.T, m *stitch.Machine, row shortrow.WedgeRow, turns, german bool) {
	t.Helper()
	if (m.Side() == stitch.WrongSide) != (row.Side == stitch.WrongSide) {
		t.Fatalf("row %d of the raise is planned on the other side: %+v", row.RowNumber, row)
	}
	before := m.Unresolved()
	if err := m.Work(row.Instruction.Row); err != nil {
		t.Fatalf("row %d of the raise, %q: %v", row.RowNumber, row.Instruction.Row.Text(), err)
	}
	// A last stitch made double was worked before the turn: with it the row may
	// reach the beginning of the round.
	reached := german && row.Side == stitch.WrongSide && row.UnworkedStitches == 0
	if (row.UnworkedStitches > 0) != (turns && !reached) || m.ShortRowOpen() != (row.UnworkedStitches > 0) ||
		turns && m.Unresolved() > before+1 {
		t.Fatalf("row %d of the raise, %q: %d left unworked", row.RowNumber, row.Instruction.Row.Text(), row.UnworkedStitches)
	}
}

// checkRaisedRows compares the rows of a raise under every stitch with its profile,
// and gives the most.
func checkRaisedRows(t *testing.T, in CircularInput, r BackRaisePlan, raised []int) int {
	t.Helper()
	worst := 0.0
	for x, rows := range raised[:r.BackStitches] {
		// Even from the centre of the back, where it is the rise, to both edges.
		fromCentre := math.Abs(float64(2*x+1)/float64(r.BackStitches) - 1)
		worst = max(worst, math.Abs(float64(rows)-float64(r.RiseRows)*(1-fromCentre)))
	}
	if front := raised[r.BackStitches:]; slices.Min(front) != 0 || slices.Max(front) != 0 {
		t.Fatalf("the front is raised: %v", front)
	}
	limit := 2.0
	if in.BackRaise.TurnMethod == shortrow.TurnMethodGerman {
		limit = 3
	}
	if worst > limit+1e-9 || math.Abs(worst-r.GreatestDepartureRows) > 1e-9 {
		t.Fatalf("the raise departs by %v rows, %v said", worst, r.GreatestDepartureRows)
	}
	highest := slices.Max(raised)
	if highest < r.RiseRows-1 || highest > r.RiseRows+1 {
		t.Fatalf("the middle of the back is raised by %d rows, %d said", highest, r.RiseRows)
	}
	return highest
}

// Raises of all sizes, in both places and orders, turned in all three ways, on
// small needles: the machine works them in the round.
func TestBackRaiseIsKnit(t *testing.T) {
	planned := 0
	for stitches := 8; stitches <= 20; stitches += knittest.Sweep(3, 6) {
		for back := MinRaiseBack; back < stitches; back++ {
			for rise := 2; rise <= back-1; rise += 2 {
				for variant := range 2 * 4 {
					raise := &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: &rise, BackStitches: &back,
						Order: shortrow.Order(1 + variant%2), TurnMethod: shortrow.TurnMethod(variant / 2)}
					planned++
					checkRaise(t, knittest.CastOn(t, stitches, true), CircularInput{BackRaise: raise}, raiseOn(t, stitches, raise))
				}
			}
		}
	}
	if planned < knittest.Sweep(1000, 400) {
		t.Errorf("planned %d raises: the sweep has shrunk", planned)
	}
}

// raiseOn plans a raise on so many stitches of a yoke of four rounds.
func raiseOn(t *testing.T, stitches int, raise *BackRaise) BackRaisePlan {
	t.Helper()
	y := circular{st: gauge.NewDensity(22, 10), rw: gauge.NewDensity(30, 10), joining: joining{join: stitches}, rounds: 4,
		changes: []change{{round: 4}}}
	var c fault.Checks
	settleRaise(&c, &y, CircularInput{BackRaise: raise})
	if err := c.Err(); err != nil {
		t.Fatalf("%d of %d stitches, rise %d: %v", *raise.BackStitches, stitches, *raise.RiseRows, err)
	}
	return *y.raise
}

// Whole yokes with a raise, with bands and without, are knit to the neck.
func TestYokeWithBackRaiseIsKnit(t *testing.T) {
	planned := 0
	for body := 100; body <= 340; body += knittest.Sweep(20, 80) {
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
	if planned < knittest.Sweep(400, 100) {
		t.Errorf("planned %d yokes: the sweep has shrunk", planned)
	}
}
