package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// 83 to 81 in the round, mirrored: two decreases take 4, and of the 79 others the
// gap across the start has 40, 20 on each side of it, the other one 39.
func TestSummaryTellsTheGapAcrossTheStart(t *testing.T) {
	for _, c := range []struct {
		start, end int
		spread     GapSpread
		want       string
	}{
		{83, 81, GapSpreadMirrored, "39 or 40 stitches between changes."},
		{84, 82, GapSpreadMirrored, "40 stitches between changes."},
		{83, 82, GapSpreadGrouped, "from 83 to 82."}, // a lone change has none to be apart from
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end, Construction: stitch.InTheRound,
			Spread: c.spread})
		if err != nil {
			t.Fatal(err)
		}
		if !strings.HasSuffix(out.Summary(), c.want) {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, out.Summary(), c.want)
		}
	}
}

// Neighbours are told as one run: 32 decreases on 64 stitches, and 3 on 7 where the
// last is followed by one stitch. The one stitch that 2 leave of 5 lies between them.
func TestNeighbouringChangesAreOneRun(t *testing.T) {
	for _, c := range []struct {
		start, end int
		want       string
	}{
		{64, 32, "[k2tog] 32 times"},
		{5, 3, "k2tog, k1, k2tog"},
		{7, 4, "[k2tog] 3 times, k1"},
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end})
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Instruction.Row.Text(); got != c.want {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, got, c.want)
		}
	}
}

// One of a thing is told in the singular.
func TestWordsOfOne(t *testing.T) {
	ten, eleven := 10, 11
	taper, err := PlanTaper(TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten})
	if err != nil || !strings.HasSuffix(taper.Summary(), "no edge more than 0.5 stitches from a straight line.") {
		t.Errorf("%q, %v", taper.Summary(), err)
	}
	side, err := PlanShapedSide(ShapedSideInput{StartStitches: 10, Points: []SidePoint{{HeightRows: &ten, Stitches: 12}}})
	if err != nil || !strings.HasSuffix(side.Summary(), "no edge more than 0.5 stitches from the straight lines between the points.") {
		t.Errorf("%q, %v", side.Summary(), err)
	}
	_, err = PlanTaper(TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, EvenBeforeRows: &ten})
	if err == nil || !strings.Contains(err.Error(), "1 shaping row is needed and none may shape") {
		t.Errorf("%v", err)
	}
	_, err = PlanTaper(TaperInput{StartStitches: 10, EndStitches: 40, HeightRows: &eleven})
	if err == nil || !strings.Contains(err.Error(), "15 shaping rows are needed and 6 may shape") {
		t.Errorf("%v", err)
	}
	_, err = PlanEvenSpacing(EvenSpacingInput{StartStitches: 3, EndStitches: 2, Operation: stitch.P2tog, EdgeStitches: new(1)})
	if err == nil || !strings.Contains(err.Error(), "p2tog is needed once and does not fit;") {
		t.Errorf("%v", err)
	}
	_, err = PlanEvenSpacing(EvenSpacingInput{StartStitches: 20, EndStitches: 9})
	if err == nil || !strings.Contains(err.Error(), "k2tog is needed 11 times and fits at most 10 times, which gives 10 stitches;") {
		t.Errorf("%v", err)
	}
}

// Where the first row shapes, or the last, no rows are worked even beside it.
func TestNoEvenRowsAreTold(t *testing.T) {
	out, err := PlanTaper(TaperInput{StartStitches: 10, EndStitches: 16, HeightRows: new(3), RowChoice: RowChoiceAny})
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range out.Directions() {
		if strings.Contains(d, "even") {
			t.Errorf("%q", d)
		}
	}
	side, err := PlanShapedSide(ShapedSideInput{StartStitches: 10, RowChoice: RowChoiceAny,
		Points: []SidePoint{{HeightRows: new(3), Stitches: 16}}})
	if err != nil {
		t.Fatal(err)
	}
	d := side.Directions()
	if want := ": 16 stitches."; !strings.HasSuffix(d[len(d)-1], want) {
		t.Errorf("%q", d)
	}
}

// Up to six different intervals are told in words, more as the rows themselves.
func TestSixIntervalsAreWordsAndSevenAList(t *testing.T) {
	rows := []ShapingRow{{RowNumber: 1}}
	every := []int{2, 4, 2, 4, 2, 4, 2}
	for i, n := range every {
		rows = append(rows, ShapingRow{RowNumber: rows[i].RowNumber + n})
	}
	const words = "on the following 2nd row, then on the following 4th row, then on the following 2nd row, then on the following 4th row, " +
		"then on the following 2nd row, then on the following 4th row"
	if got := intervalWords(schedule.Of(every[:6]), rows[:7], "row", false); got != words {
		t.Errorf("got %q", got)
	}
	if got, want := intervalWords(schedule.Of(every), rows, "row", false), "on rows 3, 7, 9, 13, 15, 19 and 21"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Two intervals that alternate are told together; "every row" would leave none for the other.
func TestWordsOfAlternation(t *testing.T) {
	for want, run := range map[string]schedule.Run{
		"every 6th and 8th row alternately 4 times each":           {EveryRows: []int{6, 8}, Times: 4},
		"[on the next row, then on the following 2nd row] twice":   {EveryRows: []int{1, 2}, Times: 2},
		"[on the following 2nd row, then on the next row] 7 times": {EveryRows: []int{2, 1}, Times: 7},
		"every row 3 times": {EveryRows: []int{1}, Times: 3},
	} {
		if got := everyWords(run, "row", false); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// A taper that ends with a right-side row says so, since what comes next begins on the wrong
// side: 111 rows from a right-side row, and 110 from a wrong-side one.
func TestTaperSaysOnWhichSideItEnds(t *testing.T) {
	for _, c := range []struct {
		rows  int
		side  stitch.Side
		round bool
		want  bool
	}{
		{111, stitch.RightSide, false, true}, {110, stitch.RightSide, false, false}, {110, stitch.WrongSide, false, true},
		{111, stitch.WrongSide, false, false}, {111, 0, true, false},
	} {
		in := TaperInput{StartStitches: 40, EndStitches: 60, HeightRows: &c.rows, FirstSide: c.side}
		if c.round {
			in.Construction = stitch.InTheRound
		}
		out, err := PlanTaper(in)
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Contains(strings.Join(out.Directions(), " "), "the last row is a right-side row"); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}
