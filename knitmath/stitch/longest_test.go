package stitch

import (
	"slices"
	"strings"
	"testing"
)

// rising is n runs of which no two are alike, so that there is nothing to group.
func rising(n int) []Run {
	runs := make([]Run, n)
	for i := range runs {
		runs[i] = Run{[]Op{Knit, Purl}[i%2], 2 + i}
	}
	return runs
}

// The longest group is of maxPeriod runs. A longer one is written out, however
// often it comes and however much a group would spare.
func TestLongestGroup(t *testing.T) {
	for n := maxPeriod - 2; n <= maxPeriod+8; n += 2 {
		once := rising(n)
		want := plainRow(times(5, once...)).Text()
		if n <= maxPeriod {
			want = "[" + plainRow(once).Text() + "] 5 times"
		}
		if got := Compress(times(5, once...)).Text(); got != want {
			t.Errorf("%d runs, 5 times: %q, want %q", n, got, want)
		}
	}
}

// As many runs as a row may hold are grouped; with one more they are only joined.
func TestMostRuns(t *testing.T) {
	runs := times(MaxOperations/2, Run{Knit, 1}, Run{Purl, 1})
	if got, want := Compress(runs).Text(), "[k1, p1] 10000 times"; got != want {
		t.Errorf("%d runs: %d characters, want %q", len(runs), len(got), want)
	}
	// One that is joined to the last is no run more.
	if got, want := Compress(append(slices.Clone(runs), Run{Purl, 1})).Text(), "[k1, p1] 10000 times, p1"; got != want {
		t.Errorf("joined: %d characters, want %q", len(got), want)
	}
	got := Compress(append(runs, Run{Knit, 1}))
	if len(got.Steps) != MaxOperations+1 || strings.Contains(got.Text(), "[") {
		t.Errorf("one run more: %d steps", len(got.Steps))
	}
}
