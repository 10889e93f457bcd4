package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/schedule"
)

// A row that was worked once is worked "more times"; what is in brackets, nothing of which was worked before, is worked so many times.
func TestBracketsAreNoMoreTimes(t *testing.T) {
	turn := []int{2, 2, 4}
	for times, want := range map[int]string{
		2:  "[every 2nd row twice, then on the following 4th row] twice",
		17: "[every 2nd row twice, then on the following 4th row] 17 times",
		1:  "every 2nd row twice more, then on the following 4th row",
	} {
		if got := IntervalWords(schedule.Schedule{{Times: times, EveryRows: turn}}, "row"); got != want {
			t.Errorf("%d times: %q, want %q", times, got, want)
		}
	}
	for times := 2; times < 30; times++ {
		runs := schedule.Schedule{{Times: times, EveryRows: []int{6}}, {Times: times, EveryRows: turn}}
		words := IntervalWords(runs, "row")
		if before, _, _ := strings.Cut(words, "["); strings.Count(words, " more") != 1 || !strings.Contains(before, " more") {
			t.Error(words)
		}
	}
}
