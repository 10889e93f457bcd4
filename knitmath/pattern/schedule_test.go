package pattern

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// A row that is worked again every so many rows. Counts and rows are worked beside
// each case, in the sizes.
func TestSchedules(t *testing.T) {
	const dec = "Decrease row (RS): ssk, k to last 2 sts, k2tog\n"
	for _, c := range []struct {
		text      string
		on        []int
		end, rows string
		found     string
	}{
		// 80 - 2 - 2*5 - 2*3; 1 + 8*5 + 6*3.
		{dec + "Repeat the decrease row every 8th row 5 more times, then every 6th row 3 times: 62 stitches.", []int{80}, "[62]", "[59]", ""},
		// 2 off in each of 1+5+3, 1+6+2, 1+7+0, 1+8+4 rows; the third has no 6th rows.
		{"Work 2 (4, 0, 0) rows even.\n" + dec + "Repeat the decrease row every 8th (8th, 6th, 6th) row 5 (6, 7, 8) more times, " +
			"then every 6th (6th, 4th, 4th) row 3 (2, 0, 4) times: 62 (72, 84, 74) stitches.\nWhere your size has 0, skip that part.",
			[]int{80, 90, 100, 100}, "[62 72 84 74]", "[61 65 43 65]", "4:1 PASSED_OVER"},
		// The first sizes have no 8th rows, and do without a run.
		{"Where your size has 0, skip that part.\n" + dec + "Repeat the decrease row every - (-, 8th) row 0 (0, 2) more times, " +
			"then every 6th row 3 (2, 0) times: 72 (84, 94) stitches.", []int{80, 90, 100}, "[72 84 94]", "[19 13 17]", "1:1 PASSED_OVER"},
		// Of a pair one is every row.
		{dec + "Repeat the decrease row every row and every 2nd row alternately twice more each.", []int{30}, "[20]", "[7]",
			"1:15 SIDE_DISAGREES"},
		// The same in other words, with the claim wrong in one size.
		{dec + "Rep dec row every 8 (8, 6)th row 5 (6, 7) more times; then every 6 (6, -) rows 3 (2, 0) times (62, 72, 85 sts).",
			[]int{80, 90, 100}, "[62 72 84]", "[59 61 43]", "2:104 COUNT_DISAGREES"},
		{dec + "Work dec row every other row twice, then every 4th row once", []int{20}, "[12]", "[9]", "2:30 READING_TAKEN"},
		// The first is worked where it is, and the turns begin after it: of 20 stitches 2 and 4 times 2.
		{"Dec 1 st each end of next row, then every 4th and 2nd row alternately twice each: 10 stitches.", []int{20}, "[10]", "[13]", ""},
		{dec + "Rep Dec Row every 4th and 6th row alternately 2 more times, and then every row once", []int{20}, "[8]", "[22]",
			"1:15 SIDE_DISAGREES"},
		{"Row 1 (RS): ssk, k to end\nRep row 1 every 4th row 3 more times\nRep last row every 2nd row once more", []int{20}, "[15]", "[15]", ""},
		// More than two in turn: 60 - 2 - 2*(3*4 + 5); 1 + 4*(1+1+2) + 5*2.
		{dec + "Repeat the decrease row [every row twice, then on the following 2nd row] 4 more times, then every 2nd row 5 times: " +
			"24 stitches.", []int{60}, "[24]", "[27]", "1:15 SIDE_DISAGREES"},
		// 60 - 2 - 2*3 - 2*6; 1 + 3*4 + 2*(2+2+4), right-side rows all.
		{dec + "Repeat the decrease row every 4th row 3 more times, then [every 2nd row twice, then on the following 4th row] twice: " +
			"40 stitches.", []int{60}, "[40]", "[29]", ""},
		// What is in brackets was not worked before: so many times are all of them, "more" or not.
		{dec + "Repeat the decrease row [every 2nd row twice, then on the following 4th row] 4 times, then every 2nd row 5 times: " +
			"30 stitches.", []int{66}, "[30]", "[43]", ""},
		{dec + "Repeat the decrease row [on the next row, then every 3rd row twice] once more: 12 stitches.", []int{20}, "[12]", "[8]",
			"1:15 SIDE_DISAGREES"},
		{dec + "Repeat the decrease row [every 2nd row twice, then on the following 4th row] 4 more times: 41 stitches.", []int{66}, "[40]",
			"[33]", "2:92 COUNT_DISAGREES"},
		{dec + "Rep dec row [every 9999th row twice, then on the following 4th row] 4 more times", []int{66}, "[-1]", "[2]", "2:13 TOO_LARGE"},
		{dec + "Rep dec row [every row twice, then on the following 2nd row]", []int{66}, "[-1]", "[2]", "2:13 NOT_READ"},
		// What is not understood is asked.
		{dec + "Rep dec row every 4th row", []int{20}, "[-1]", "[2]", "2:13 NOT_READ"},
		{dec + "Rep dec row every RS row 3 more times", []int{20}, "[12]", "[7]", ""},
		{dec + "Rep dec row every 4th and 6th row 3 more times", []int{20}, "[-1]", "[2]", "2:13 NOT_READ"},
		{dec + "Rep dec row every 4th row 3 more times, work 9 rows", []int{20}, "[12]", "[22]", ""},
		{dec + "Rep dec row every 4th (6th, 8th) row 3 more times", []int{20}, "[-1]", "[2]", "2:19 SIZES_DISAGREE"},
		{dec + "Rep dec row every 0th row 3 more times", []int{20}, "[-1]", "[2]", "2:13 TOO_LARGE"},
		{dec + "Rep increase row every 4th row 3 more times", []int{20}, "[-1]", "[2]", "2:5 NOT_READ"},
		{"Rows 1-2: ssk, k to end\nRep rows 1-2 every 4th row 3 more times", []int{20}, "[-1]", "[3]", "2:14 NOT_READ"},
		{"Row 1: k1\nRep row 9 every 4th row 3 more times", []int{1}, "[-1]", "[1]", "2:1 ROW_NOT_WRITTEN"},
		{"Row 1: k to end\nRep row 1 every 9999th row twice more", []int{1}, "[-1]", "[10000]", "2:1 TOO_MANY"},
	} {
		w := Read(c.text, Options{SizeCount: len(c.on)}).Work(Start{Counts: c.on})
		if got := found(w.Findings); got != c.found || fmt.Sprint(w.EndStitches) != c.end || fmt.Sprint(w.WorkedRows) != c.rows {
			t.Errorf("%q: %v stitches after %v rows, found %s; want %s, %s, %s", c.text, w.EndStitches, w.WorkedRows, got, c.end, c.rows, c.found)
			for _, f := range w.Findings {
				t.Log(f.Description)
			}
		}
	}
}

// In the round the row has the name of a round; the name belongs to the last row of
// that name.
func TestScheduledRounds(t *testing.T) {
	text := "Inc rnd: k1, M1L, k to last st, M1R, k1\nRep the increase round every 3rd rnd twice more (26 sts)\n" +
		"Inc rnd: k1, M1L, k to end\nRep inc rnd every 5th rnd 4 more times (31 sts)"
	w := Read(text, Options{}).Work(Start{Counts: []int{20}, Construction: stitch.InTheRound})
	if len(w.Findings) != 0 || w.EndStitches[0] != 31 || w.WorkedRows[0] != 1+6+1+20 {
		t.Errorf("%v after %v, %+v", w.EndStitches, w.WorkedRows, w.Findings)
	}
}

// Rows that are repeated at once are still that, and "where" begins other sentences.
func TestWhatIsNoSchedule(t *testing.T) {
	for text, want := range map[string]lineKind{
		"Rep Row 1 twice more":                       lineRepeat,
		"Rep the last row 4 more times":              lineRepeat,
		"Work 10 rows even":                          lineEven,
		"Work in patt every row":                     lineEven,
		"Rep dec row every 4th row 3 more times":     lineShape,
		"Work the inc rnd every rnd 3 more times":    lineShape,
		"Where there are 0 sts, skip that":           linePassed,
		"Where your size has 0, skip that part. k 4": linePassed,
	} {
		lines := Read("Dec row: k\nInc row: k\nRow 1: k\n"+text, Options{}).Lines
		if got := lines[3].info.kind; got != want {
			t.Errorf("%q is of kind %d, want %d", text, got, want)
		}
	}
	if Read("where the 4 sts are, skip that", Options{}).Lines[0].info.kind == linePassed {
		t.Error("4 is taken for 0")
	}
}

// A schedule costs no more than its price: the longest that may be worked, and lists
// of many sizes.
func TestSchedulesAreWithinTheirPrice(t *testing.T) {
	for _, text := range []string{
		"Dec row: ssk, k to end\nRep dec row every 50th row 49 more times, then every 50th row 49 times",
		"Dec row: ssk, k to end\nRep dec row every 2nd row 100 more times, then every 90th row twice",
		"Dec row: ssk, k to end\n" + strings.Repeat("Work dec row every 8th row 12 more times, then every 6th row 10 times\n", 40),
		"Dec row: k to end\nWork the dec row every row 9000 more times",
	} {
		in := CheckInstructionsInput{Text: text, StartStitches: []int{8000, 8000, 8000}}
		piece := Read(in.Text, Options{SizeCount: 3})
		w, err := new(room).work(context.Background(), piece, Start{Counts: in.StartStitches}, maxCharge)
		if err != nil || w.charge > in.charge(glanceAt(text)) {
			t.Errorf("%.80q: charged %d of %d, %v", text, w.charge, in.charge(glanceAt(text)), err)
		}
	}
}
