package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestHeldAtBeginnings: stitches are put aside at the beginning of each of some rows, in several words and sizes. By hand: n
// rows of a stitches leave start - n*a. A claim with another number is told.
func TestHeldAtBeginnings(t *testing.T) {
	forms := []string{"Place %[1]s sts on holder at beg of next %[2]d rows.", "At beg of next %[2]d rows, place %[1]s sts on a holder.",
		"Leave %[1]s sts on a holder at the beginning of the next %[2]d rows.", "Slip %[1]s sts at beg of next %[2]d rows onto waste yarn.",
		"Shape shoulders: Leave %[1]s sts on a stitch holder at the beginning of each of the next %[2]d rows.",
		"Next %[2]d rows: Place %[1]s sts on holder, work to end.", "Next %[2]d rows: Slip first %[1]s sts to a holder, k to end."}
	var texts []worded
	for _, form := range forms {
		for _, n := range []int{2, 4, 6} {
			for _, a := range [][]int{{5}, {4, 6}, {3, 5, 7}} {
				start := each(a, func(k int) int { return 30 + k*n })
				end := each(a, func(int) int { return 30 })
				for _, off := range []int{0, a[0], -a[0], 1} {
					claim := each(end, func(k int) int { return k + off })
					text := fmt.Sprintf(form, asPrinted(a), n) + " " + asPrinted(claim) + " sts."
					if off == 0 {
						texts = append(texts, worded{text, start, false, end, each(a, func(int) int { return n })})
						continue
					}
					if out := asked(t, fmt.Sprintf("CO %s sts. %s", asPrinted(start), text), 0, stitch.Flat); out.Agrees {
						t.Errorf("%q agrees, and leaves %v", text, end)
					}
				}
			}
		}
	}
	askWorded(t, texts, 100, 0)
}

// TestHeldOnEveryRow: how many rows are meant is asked.
func TestHeldOnEveryRow(t *testing.T) {
	for _, when := range []string{"every row 3 times", "each row", "every alt row 3 times", "rows"} {
		for _, end := range []int{35, 25} {
			text := fmt.Sprintf("CO 40 sts. Place 5 sts on holder at beg of %s. (%d sts)", when, end)
			if out := asked(t, text, 0, stitch.Flat); out.Agrees || out.questions == 0 || out.mistakes > 0 {
				t.Errorf("%q: %s", text, said(&out))
			}
		}
	}
}

// TestTakenUpTwice: stitches that were put aside are taken up once. What a text that begins with its cast-on never put aside,
// or has taken up already, is asked about; the second of two holders, and that of a piece made twice, is not.
func TestTakenUpTwice(t *testing.T) {
	for _, q := range []struct {
		said  string
		end   int
		right bool
	}{
		{"Place all sts on holder. Return 40 held sts to needle.", 40, true},
		{"Place all sts on holder. Return 40 held sts to needle. Return 40 held sts to needle.", 80, false},
		{"Return 10 held sts to needle.", 50, false},
		{"Place 10 sts on holder. Return 10 held sts to needle.", 40, true},
		{"Place 10 sts on holder. Return 10 held sts to needle. Return 5 held sts to needle.", 45, false},
		{"Place 10 sts on holder. Return 12 held sts to needle.", 42, false},
		{"Place 10 sts on holder. Place 8 sts on another holder. Return 10 held sts to needle. Return 8 held sts to needle.", 40, true},
		{"Place 10 sts on holder. Place 8 sts on another holder. Return 18 held sts to needle.", 40, true},
		{"Next row: K10, place next 10 sts on holder, k to end. Return 10 held sts to needle.", 40, true},
		{"Next row: K10, place next 10 sts on holder, k to end. Return 10 held sts to needle. Return 10 held sts to needle.", 50, false},
		{"Next row: *K5, place next 5 sts on holder; rep from *. Return 5 held sts to needle. Return 5 held sts to needle.", 30, true},
		{"Place 5 sts on holder at beg of next 2 rows. Return 10 held sts to needle.", 40, true},
		{"Place 5 sts on holder at beg of next 2 rows. Return 10 held sts to needle. Return 5 held sts to needle.", 45, false},
	} {
		text := fmt.Sprintf("CO 40 sts. %s (%d sts)", q.said, q.end)
		if out := asked(t, text, 0, stitch.Flat); out.Agrees != q.right {
			t.Errorf("%q: %s", text, said(&out))
		}
	}
}
