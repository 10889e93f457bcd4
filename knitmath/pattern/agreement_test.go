package pattern

import (
	"errors"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestCountsAgreeWithMachine works random rows in random sizes twice: counted
// here, and stitch by stitch by the machine, which shares no code with it.
func TestCountsAgreeWithMachine(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	ops := []stitch.Op{stitch.Knit, stitch.Purl, stitch.K2tog, stitch.SSK, stitch.CDD, stitch.KFB, stitch.YO, stitch.Slip, stitch.BindOff,
		stitch.CastOn}
	fits, rows := 0, 0
	for range 8000 {
		sizes := 1 + rng.IntN(3)
		steps := randomRow(rng, ops, sizes)
		p := &Piece{SizeCount: sizes, Lines: []Line{{Steps: steps}}}
		p = Read(p.Lines[0].Text(RepeatStyle(rng.IntN(4))), Options{SizeCount: sizes, Began: true})
		counts := make([]int, sizes)
		for size := range counts {
			// Most rows are given as many stitches as they take.
			prof := profileOf(steps, size)
			counts[size] = 1 + rng.IntN(40)
			if !prof.stretches && prof.rest.takes > 0 && prof.rest.takes < 300 && rng.IntN(4) > 0 {
				counts[size] = int(prof.rest.takes)
			}
		}
		asked := func(f Finding) bool { return f.Kind == KindQuestion }
		if list, _ := p.Findings(); slices.ContainsFunc(list, asked) || p.Lines[0].info.kind == lineOff {
			continue // points, of stitches cast on and bound off at once, to a place: see TestPicotsInARow
		}
		w := p.Work(Start{Counts: counts})
		r := &runner{engine: &engine{piece: p}}
		for size, on := range counts {
			rows++
			r.size = size
			row, _, ok := r.rowOf(p.Lines[0].Steps, int64(on))
			wrong := false
			for _, f := range w.Findings {
				if f.Kind == KindMistake {
					for _, n := range f.SizeNumbers {
						wrong = wrong || n == size+1
					}
				}
			}
			if !ok {
				if !wrong {
					t.Fatalf("%q on %d: no row, but nothing found", p.Lines[0].Text(0), on)
				}
				continue
			}
			m := stitch.NewMachine(stitch.Flat)
			if err := m.CastOn(on); err != nil {
				t.Fatal(err)
			}
			err := m.Work(row)
			var fault *stitch.RowError
			if errors.As(err, &fault) && (fault.Reason == stitch.ReasonNoStrand || fault.Reason == stitch.ReasonOnNeedle) {
				continue // a yarn over on empty needles; a decrease straight after a bind-off, which is printed
			}
			if (err != nil) != wrong {
				t.Fatalf("%q, size %d, on %d: machine says %v, found %+v", p.Lines[0].Text(0), size+1, on, err, w.Findings)
			}
			if err == nil {
				fits++
				if m.StitchCount() != w.EndStitches[size] || w.Lines[0].EndStitches[size] != m.StitchCount() {
					t.Fatalf("%q on %d: machine has %d, counted %d", p.Lines[0].Text(0), on, m.StitchCount(), w.EndStitches[size])
				}
			}
		}
	}
	if fits < rows/3 || fits > rows*9/10 {
		t.Errorf("%d of %d rows fit: too one-sided to prove anything", fits, rows)
	}
}

// randomRow is a row of counted steps and groups, and perhaps one stretch.
func randomRow(rng *rand.Rand, ops []stitch.Op, sizes int) []Step {
	number := func() []int {
		n := make([]int, sizes)
		for i := range n {
			n[i] = 1 + rng.IntN(4)
		}
		return tidy(n)
	}
	run := func() Step {
		op := ops[rng.IntN(len(ops))]
		return Step{Operation: op, Times: number(), takes: int16(op.Takes()), leaves: int16(op.Leaves())}
	}
	var steps []Step
	for range 1 + rng.IntN(4) {
		s := run()
		if rng.IntN(2) == 0 {
			s = simple(Step{Steps: []Step{run(), run()}, Times: number()})
		}
		steps = append(steps, s)
	}
	if rng.IntN(4) == 0 {
		i := rng.IntN(len(steps))
		if steps[i].pass(0).takes > 0 {
			var last []int
			for size := range sizes {
				last = append(last, int(fixed(steps[i+1:], size).takes))
			}
			steps[i].Times, steps[i].RemainingStitches = nil, tidy(last)
			steps[i] = simple(steps[i])
		}
	}
	return steps
}

// TestShortRowsByHand: a short-row shoulder is counted and worked by the machine;
// what hands cannot do is asked about.
func TestShortRowsByHand(t *testing.T) {
	cases := []struct {
		text  string
		on    int
		end   int
		found string
	}{
		{"Row 1 (RS): k15, w&t\nRow 2: p10, w&t\nRow 3: k10, k1 tog with its wrap, k to end\nRow 4: p15, p1 tog with its wrap, p to end",
			20, 20, ""},
		{"Row 1: k15, turn\nRow 2: make DS, p9, turn\nRow 3: make DS, k8, k DS, k to end\nRow 4: p14, p DS, p to end", 20, 20, ""},
		{"Row 1: k15, turn\nRow 2: make DS, p14\nRow 3: k14, k DS, k5", 20, 20, ""},
		{"Row 1: k15, turn\nRow 2: make DS, p14\nRow 3: k to end", 20, 20, "3:8 CANNOT_BE_WORKED"},
		{"Row 1: k15, w&t\nRow 2: p15\nRow 3: k to end", 20, 20, "3:8 PASSED_OVER"},
		{"Row 1: k15, turn\nRow 2: yo, p15\nRow 3: k15, k2tog, k4", 20, 20, ""},
		{"Row 1: M1L, k to end", 20, 21, "1:8 CANNOT_BE_WORKED"},
		{"Row 1: k5, M1L, M1R, k to end", 20, 22, "1:17 CANNOT_BE_WORKED"},
		{"Row 1: k5, M1L, k1, M1R, k to end", 20, 22, ""},
		{"Row 1: k20, w&t", 20, 20, "1:13 CANNOT_BE_WORKED"},
		{"Row 1: k5, k DS, k to end", 20, 20, "1:12 CANNOT_BE_WORKED"},
	}
	for _, c := range cases {
		w := Read(c.text, Options{}).Work(Start{Counts: []int{c.on}})
		if got := found(w.Findings); got != c.found || w.EndStitches[0] != c.end {
			t.Errorf("%q: %d stitches, found %s; want %d, %s", c.text, w.EndStitches[0], got, c.end, c.found)
		}
	}
}

// TestRowsOfThePiece: how rows follow one another. The counts are worked beside
// each case.
func TestRowsOfThePiece(t *testing.T) {
	cases := []struct {
		text      string
		on        int
		round     bool
		end, rows int
		found     string
	}{
		// Rows 1 to 5, of which 2 and 4 are the same: 40 - 2*3; and a sixth where what follows needs it.
		{"Row 1: ssk, k to last 2 sts, k2tog\nRow 2 and all WS rows: purl\n" +
			"Row 3: ssk, k to last 2 sts, k2tog\nRow 5: ssk, k to last 2 sts, k2tog", 40, false, 34, 5, ""},
		{"Row 1: ssk, k to last 2 sts, k2tog\nRow 2 and all WS rows: purl\nRow 3: knit\nRep Rows 1-4 once more", 40, false, 36, 8, ""},
		{"Rows 1 and 3: ssk, k to end\nRows 2 and 4: purl", 40, false, 38, 4, ""},
		{"All WS rows: purl\nRow 1: ssk, k to end\nRow 3: ssk, k to end", 40, false, 38, 3, ""},
		{"Row 1: ssk, k to end. Row 2: purl. Rep Rows 1 and 2 five more times (34 sts)", 40, false, 34, 12, ""},
		{"Row 1: ssk, k to end. Row 2: purl. Rep Rows 1 and 2 until 30 sts rem.", 40, false, 30, 20, ""},
		{"Row 1: ssk, k to last 2 sts, k2tog. Row 2: purl. Rep Rows 1 and 2 until 31 sts rem.", 40, false, 31, 2, "1:50 DOES_NOT_COME_OUT"},
		{"Row 1: ssk, k to end. Row 2: purl. Rep Rows 1 and 2 until piece measures 10 cm.", 40, false, -1, 2, "1:36 ROWS_OPEN"},
		{"Row 1: ssk, k to end. Row 2: purl. Rep Rows 1 and 2 until piece measures 10 cm. (30 sts)", 40, false, 30, 20, ""},
		{"Row 1: knit. Row 2: purl. Rep last 2 rows 4 more times. Rep these 2 rows until piece measures 10 cm", 40, false, 40, 10,
			"1:57 LENGTH_OPEN"},
		{"Rep Rows 1 and 2 twice more", 40, false, -1, 0, "1:1 ROW_NOT_WRITTEN"},
		{"knit\nRep last 3 rows twice more", 40, false, -1, 1, "2:1 ROW_NOT_WRITTEN"},
		{"Row 1: knit\nRow 3: purl", 40, false, 40, 2, "2:5 ROW_NUMBER"},
		{"Row 1: knit\nRow 2: purl\nRow 2: knit", 40, false, 40, 3, "3:5 ROW_NUMBER"},
		{"Row 1 (RS): knit\nRow 2 (RS): purl", 40, false, 40, 2, "2:8 SIDE_DISAGREES"},
		{"Rnd 1: knit\nRnd 2 (WS): purl", 40, true, 40, 2, "2:8 SIDE_DISAGREES"},
		{"Rnd 1: *k2, p2; rep from * around\nRep Rnd 1 9 more times", 40, true, 40, 10, ""},
		{"Rnd 1: *k2, p2; rep from * around", 42, true, 42, 1, "1:8 DOES_NOT_COME_OUT"},
		// A claim that is wrong by itself, and one that shows the row before to be wrong.
		{"Row 1: k20, k2tog, k to end (39 sts)\nRow 2: p to end (38 sts)\nRow 3: k39", 40, false, 39, 3, "2:18 COUNT_DISAGREES"},
		{"Row 1: k20, k2tog, k to end (38 sts)\nRow 2: p38\nRow 3: k38", 40, false, 38, 3, "1:30 COUNT_DISAGREES"},
		{"Row 1: [k2tog, k2] 9 times\nRow 2: p30", 40, false, 30, 2, "1:8 STITCHES_UNWORKED"}, // ten repeats were meant: 40 - 10
		{"Row 1: [k2tog, k2] 11 times\nRow 2: p30", 40, false, 30, 2, "1:8 STITCHES_MISSING"},
		{"Knit 4 rows. Work 10 rows even. Purl 1 row (40 sts)", 40, false, 40, 15, ""},
		{"Work even until piece measures 9 cm, ending with a WS row. Row 1 (WS): p", 40, false, 40, 1,
			"1:1 LENGTH_OPEN, 1:67 SIDE_DISAGREES, 1:72 READING_TAKEN"},
		{"BO 3 sts at beg of next 2 rows, k", 40, false, 34, 3, "1:33 READING_TAKEN"},
		{"BO 21 sts at beg of next 2 rows", 40, false, -1, 2, "1:1 STITCHES_MISSING"},
		{"CO 5 sts at beg of next 2 rows (50 sts)", 40, false, 50, 2, ""},
		{"k40, join. Join in the rnd", 40, false, 40, 1, "1:6 PASSED_OVER"},
		{"pick up and knit 3, k to end\nk9", 40, false, -1, 2, "1:1 NOT_READ"},
		{"pick up and knit 3, k to end (12 sts)\nk12", 40, false, 12, 2, "1:1 NOT_READ, 1:30 COUNT_TAKEN"},
		// The yarn over is a loop on the needle, but no stitch of the row.
		{"k10, turn\nyo, p10 (20 sts)\nk10, k2tog, k9 (20 sts)", 20, false, 20, 3, ""},
		{"CO 30 sts\nk30", 40, false, 40, 1, "1:1 COUNT_DISAGREES, 2:1 STITCHES_UNWORKED"},
		{"foo\nk3\nk to end (30 sts)\nk3", 40, false, 30, 4, "1:1 UNKNOWN_ABBREVIATION, 3:10 COUNT_TAKEN, 4:1 STITCHES_UNWORKED"},
		{"Row 1: kfb to end\nRep Row 1 20 more times", 40, false, -1, 21, "1:1 TOO_LARGE"},
		{"Row 1: knit\nRep Row 1 10000 more times", 40, false, -1, 10000, "1:1 TOO_MANY"},
		{"k to last 41 sts, k41", 40, false, 40, 1, "1:1 STITCHES_MISSING"},
	}
	for _, c := range cases {
		start := Start{Counts: []int{c.on}}
		if c.round {
			start.Construction = stitch.InTheRound
		}
		w := Read(c.text, Options{}).Work(start)
		if got := found(w.Findings); got != c.found || w.EndStitches[0] != c.end || w.WorkedRows[0] != c.rows {
			t.Errorf("%q: %d stitches, %d rows, found %s; want %d, %d, %s\n%+v", c.text, w.EndStitches[0], w.WorkedRows[0], got, c.end,
				c.rows, c.found, w.Findings)
		}
	}
}

// TestWhatWouldFit: the description says what would make it right.
func TestWhatWouldFit(t *testing.T) {
	for _, c := range []struct {
		text string
		on   int
		want string
	}{
		{"k1, [k2tog, k4] 5 times", 43,
			"12 stitches remain: the row takes 31, 43 are there; 2 more repeats would fit exactly (a multiple of 6 plus 1)"},
		{"k1, [k2tog, k4] 8 times", 43,
			"6 stitches missing: the row takes 49, 43 are there; 1 repeat fewer would fit exactly (a multiple of 6 plus 1)"},
		{"k1, [k2tog, k4] 5 times", 34,
			"3 stitches remain: the row takes 31, 34 are there; the repeat takes 6 stitches and fits a multiple of 6 plus 1"},
		{"k1, *k2tog, k4; rep from * to end", 45,
			"the repeat takes 6 stitches and 2 stitches remain over: 43 or 49 would fit, a multiple of 6 plus 1"},
		{"k40", 41, "1 stitch remains: the row takes 40, 41 are there"},
	} {
		w := Read(c.text, Options{}).Work(Start{Counts: []int{c.on}})
		if len(w.Findings) != 1 || w.Findings[0].Description != c.want {
			t.Errorf("%q on %d: %+v, want %q", c.text, c.on, w.Findings, c.want)
		}
	}
}
