package pattern

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
)

// TestStretchesOfNothing repeats rows many times in one direction and, for the
// answer that must come out, once in each of as many directions.
func TestStretchesOfNothing(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 9))
	rows := []string{"knit", "k to end", "[k1, p1] to end", "ssk, k to end", "k2tog, yo, k to end", "kfb to end", "k10, turn", "yo, k to end",
		"k12", "k3, w&t", "M1L, k to end", "k2tog to end", "foo", "k1, M1L, k to end", "k2, [k2tog] 3 times"}
	skipped := 0
	for range 3000 {
		var b strings.Builder
		n := 1 + rng.IntN(3)
		for i := range n {
			fmt.Fprintf(&b, "Row %d%s: %s\n", i+1, []string{"", "", " (RS)", " (WS)"}[rng.IntN(4)], rows[rng.IntN(len(rows))])
		}
		if rng.IntN(4) == 0 {
			b.WriteString("Work 3 rows even\n")
			n++
		}
		last := 1 + rng.IntN(n)
		times := rng.IntN(40)
		start := Start{Counts: []int{5 + rng.IntN(20)}}
		if rng.IntN(3) == 0 {
			start.Construction = 2
		}
		rep := fmt.Sprintf("Rep last %d rows ", last)
		if last == 1 {
			rep = "Rep last row "
		}
		text := b.String()
		at := Read(text+rep+fmt.Sprint(times)+" times\nk to end (9 sts)", Options{}).Work(start)
		once := Read(text+strings.Repeat(rep+"once\n", times)+"k to end (9 sts)", Options{}).Work(start)
		if at.EndStitches[0] != once.EndStitches[0] || at.WorkedRows[0] != once.WorkedRows[0] || at.Lines[len(at.Lines)-1].Side !=
			once.Lines[len(once.Lines)-1].Side || at.Lines[len(at.Lines)-1].StartStitches[0] != once.Lines[len(once.Lines)-1].StartStitches[0] {
			t.Fatalf("%s%s%d times on %v: %v after %v rows, %v after %v when one by one", text, rep, times, start.Counts, at.EndStitches,
				at.WorkedRows, once.EndStitches, once.WorkedRows)
		}
		if at.charge < once.charge {
			skipped++
		}
	}
	if skipped < 1000 {
		t.Errorf("only %d of 3000 were worked in less", skipped)
	}
}

// Rows that are skipped count as rows that are worked.
func TestMostPlainRows(t *testing.T) {
	for text, rows := range map[string]int{
		"k to end\nWork 9999 rows even\n":                            10_000,
		"k to end\nWork 9998 rows even\np to end\n":                  10_000,
		"k to end\nWork 10000 rows even\n":                           -10_000,
		"k to end\nWork 9999 rows even\np to end\n":                  -10_000,
		"k to end\nRep last row 9999 times\n":                        10_000,
		"k to end\nRep last row 10000 times\n":                       -10_000,
		"k to end\nWork 99 rows even\nRep last 100 rows 99 times\n":  10_000,
		"k to end\nWork 99 rows even\nRep last 100 rows 100 times\n": -10_000,
	} {
		w := Read(text, Options{}).Work(Start{Counts: []int{9}})
		found := false
		for _, f := range w.Findings {
			found = found || f.Reason == ReasonTooMany
		}
		if w.WorkedRows[0] != max(rows, -rows) || found != (rows < 0) || (w.EndStitches[0] == 9) != (rows > 0) {
			t.Errorf("%q: %d rows, %d stitches, %+v", text, w.WorkedRows[0], w.EndStitches[0], w.Findings)
		}
	}
}
