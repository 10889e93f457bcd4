package stitch

import "testing"

// runText and timesText are what is written of them.
func runText(op Op, n int) string { return string(appendRun(nil, op, n)) }

func timesText(n int) string { return string(appendTimes(nil, n)) }

// The lengths that compressing compares are those of the texts that are written:
// every operation, every number of digits, alone and in groups of groups.
func TestWidthsAreThoseOfTexts(t *testing.T) {
	numbers := []int{1, 2, 3, 9, 10, 11, 99, 100, 101, 999, 1000, 9999, 10_000}
	for _, op := range Ops() {
		for _, n := range numbers {
			if got, want := runWidth(op, n), len(runText(op, n)); got != want {
				t.Errorf("%q has width %d, want %d", runText(op, n), got, want)
			}
		}
	}
	for _, n := range numbers {
		if got, want := timesWidth(n), len(timesText(n)); got != want {
			t.Errorf("%q has width %d, want %d", timesText(n), got, want)
		}
		row := RowOf(Do(Knit, n), Repeat(n, Do(K2tog, 1), Repeat(2, Do(Purl, n), Do(YO, 2))), Do(Slip, 1))
		// A list of steps is as long as its text, with a ", " behind it.
		if got, want := stepsWidth(row.Steps), len(row.Text()+", "); got != want {
			t.Errorf("%q has width %d, want %d", row.Text(), got, want)
		}
		tokens := []token{runToken(Run{KnitTbl, n}), {step: row.Steps[1], count: 1}}
		for _, tok := range tokens {
			if got, want := tok.width(n), len(RowOf(tok.part(n)).Text()+", "); got != want {
				t.Errorf("%q has width %d, want %d", RowOf(tok.part(n)).Text(), got, want)
			}
		}
	}
	if got := stepsWidth(nil); got != 0 {
		t.Errorf("nothing has width %d", got)
	}
}

// Brackets stand around what is worked several times, unless the number is
// written with the name.
func TestBracketedRuns(t *testing.T) {
	for _, c := range []struct {
		op   Op
		n    int
		want bool
	}{{K2tog, 1, false}, {K2tog, 2, true}, {K2tog, 3, true}, {Knit, 3, false}, {BindOff, 3, false}} {
		if got := bracketedRun(c.op, c.n); got != c.want {
			t.Errorf("%s: brackets %v", runText(c.op, c.n), got)
		}
	}
}
