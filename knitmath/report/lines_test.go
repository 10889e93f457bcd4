package report

import (
	"slices"
	"testing"
)

// Lines say what the words of the package say alone.
func TestLines(t *testing.T) {
	var l Lines
	var want []string
	for _, n := range []int{0, 1, 2, 11, 1_000} {
		l.Say("Join ")
		l.Count(n, "stitches")
		l.End(" and ", "on.")
		want = append(want, "Join "+CountOf(n, "stitches")+" and on.")
		l.Rows("round", 1, n+1)
		l.Append(func(b []byte) []byte { return append(b, ": k1"...) })
		l.End()
		want = append(want, Rows("round", 1, n+1)+": k1")
		l.Even("row", 2, n)
		want = AppendEven(want, "row", 2, n)
	}
	l.End()
	if got := l.Strings(); !slices.Equal(got, append(want, "")) {
		t.Errorf("got %q, want %q", got, want)
	}
}
