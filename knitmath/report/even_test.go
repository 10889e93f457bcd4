package report

import (
	"slices"
	"testing"
)

func TestAppendEven(t *testing.T) {
	before := []string{"Cast on."}
	for _, c := range []struct {
		noun        string
		first, last int
		want        []string
	}{
		{"row", 3, 7, []string{"Cast on.", "Rows 3-7: work even."}},
		{"row", 3, 4, []string{"Cast on.", "Rows 3-4: work even."}},
		{"round", 3, 3, []string{"Cast on.", "Round 3: work even."}},
		{"round", 3, 2, before},
		{"round", 1, 0, before},
	} {
		if got := AppendEven(before, c.noun, c.first, c.last); !slices.Equal(got, c.want) {
			t.Errorf("%s %d to %d: got %q, want %q", c.noun, c.first, c.last, got, c.want)
		}
	}
}
