package shaping

import "testing"

// Prices by hand: two steps for each of ten changes, and two for each of 80 stitches,
// which are no more than eight for a change; three for each shaping row, of which there
// are no more than rows and no more than stitches to change; a tenth of it in each of
// three sizes, and 270, and 2 * 27 for what they have to share. A side from 100 to 88 in
// 36 rows, kept for 10, and to 60 in 4: 12, none and 4, at four steps.
func TestPrices(t *testing.T) {
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"spacing": {EvenSpacingInput{StartStitches: 80, EndStitches: 90}, 80 + 2*10 + 2*80},
		"taper":   {TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: new(100)}, 140 + 3*32},
		"sizes":   {graded([3]int{52, 84, 100}, [3]int{60, 80, 100}, [3]int{80, 60, 4}), 40 + 2*27 + 3*270 + 3 + 2 + 0},
		"side":    {sideOf(100, [2]int{36, 88}, [2]int{46, 88}, [2]int{50, 60}), 20 + 20 + 4*12 + 20 + 20 + 4*4},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
