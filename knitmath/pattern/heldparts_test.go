package pattern

import (
	"strconv"
	"strings"
	"testing"
)

// A row that binds off in its middle leaves two parts. What is put aside then is one of them: the counts are worked out
// here, by whoever puts the words together; all the words are common practice.

// dividing are rows that bind B stitches off between A and C others, flat.
var dividing = []string{"Row 1: K{A}, BO {B} sts, k to end.", "Next row (RS): K{A}, BO {B}, k to end.",
	"Row 1: Knit to last {BC} sts, BO {B} sts, k to end.", "K{A}, bind off next {B} sts, k to end.",
	"Next row: Work {A} sts, BO center {B} sts, work to end.", "Row 1: Knit {A}, cast off {B}, knit to end.",
	"Next row: K{A}, sl next {B} sts to holder for front neck, k to end."}

// setAside are words for one of the parts: {C} is worked last, {A} first.
var setAside = []string{"Place last {C} sts on holder.", "Place rem {C} sts on a holder.", "Slip first {C} sts to waste yarn.",
	"Put the last {C} sts on a stitch holder.", "Slip the last {C} sts onto a spare needle.", "Leave these last {C} sts on a holder.",
	"Place these {C} sts on a holder.", "Slip these {C} sts to holder.", "Transfer the last {C} sts to waste yarn.",
	"Place {C} sts on a holder.", "Leave rem {C} sts on a spare needle.", "Put next {C} sts on hold.", "Place first {A} sts on holder.",
	"Place the other {A} sts on hold.", "Leave {A} sts on a holder.", "Slip first {A} sts onto waste yarn.",
	"Leave the other {A} sts on holder.", "Place remaining {A} sts on a holder.", "Place last {C} sts on holder for right shoulder.",
	"Place the first {A} sts on a holder for left shoulder."}

// asideInRow are such words in the sentence of the row.
var asideInRow = []string{", placing last {C} sts on holder.", ", place last {C} sts on a holder.",
	"; place these last {C} sts on a holder.",
	"; leave the other {A} sts on holder.", ", leaving first {A} sts on a holder.", ", then place last {C} sts on hold."}

// partsOfNeck are A, B and C.
var partsOfNeck = [][3]int{{24, 3, 21}, {30, 12, 31}, {18, 22, 19}, {45, 6, 42}, {27, 10, 25}}

// TestHeldPartsAreCompared puts rows and words together, right ones and with another number, which must not be agreed with.
func TestHeldPartsAreCompared(t *testing.T) {
	right, all := 0, 0
	for _, row := range dividing {
		for i, words := range append(append([]string{}, setAside...), asideInRow...) {
			for _, parts := range partsOfNeck {
				a, b, c := parts[0], parts[1], parts[2]
				end := a
				if strings.Contains(words, "{A}") {
					end = c
				}
				write := func(n int) string {
					said := strings.NewReplacer("{C}", strconv.Itoa(n), "{A}", strconv.Itoa(n)).Replace(words)
					done := strings.NewReplacer("{A}", strconv.Itoa(a), "{BC}", strconv.Itoa(b+c), "{B}", strconv.Itoa(b)).Replace(row)
					if i >= len(setAside) {
						return strings.TrimSuffix(done, ".") + said
					}
					return done + " " + said
				}
				all++
				in := CheckInstructionsInput{Text: write(a + c - end), StartStitches: []int{a + b + c}}
				out, err := CheckInstructions(t.Context(), in)
				if err == nil && out.Agrees && single(out.EndStitches, end) {
					right++
				} else {
					t.Logf("%v %v\n%s", out.EndStitches, judgedText(out.Findings), in.Text)
				}
				for _, off := range []int{-14, -4, -2, -1, 1, 2, 5} {
					n := a + c - end + off
					if n == a || n == c {
						continue
					}
					in.Text = write(n)
					if out, err := CheckInstructions(t.Context(), in); err == nil && out.Agrees {
						t.Errorf("agreed with on %d stitches: %s", a+b+c, in.Text)
					}
				}
			}
		}
	}
	t.Logf("%d of %d", right, all)
	if 100*right < 98*all {
		t.Errorf("%d of %d are read right", right, all)
	}
}
