package shaping

import "testing"

// Prices by hand: two steps for each of ten changes; eight for each shaping row,
// of which there are no more than rows and no more than stitches to change. A side
// from 100 to 88 in 36 rows, kept for 10, and to 60 in 4: 12, none and 4, each twice.
func TestPrices(t *testing.T) {
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"spacing": {EvenSpacingInput{StartStitches: 80, EndStitches: 90}, 20 + 2*10},
		"taper":   {TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: new(100)}, 20 + 8*32},
		"side":    {sideOf(100, [2]int{36, 88}, [2]int{46, 88}, [2]int{50, 60}), 20 + 20 + 16*12 + 20 + 20 + 16*4},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
