package pattern

import (
	"fmt"
	"slices"
	"testing"
)

// TestTurnsUntilSoManyRemain: rows that each leave so many stitches more before the last turn are
// worked until some number of stitches is left in the middle, and not once whatever the number is.
// By hand: of t stitches b lie between the first two turns, and b - 2 s(n + 1) after n repeats of
// two rows of s more each. Where no number of repeats comes to what the text says, it is asked.
func TestTurnsUntilSoManyRemain(t *testing.T) {
	const total = 60
	for _, each := range []int{1, 2, 3} {
		for between := 24; between <= 40; between += 4 {
			turns := map[int]int{} // stitches in the middle, to the repeats after which they are
			for n := 1; n < 20; n++ {
				middle := between - 2*each*(n+1)
				if middle < 2*each {
					break
				}
				turns[middle] = n
			}
			for want := 2*each + 1; want < between; want++ {
				text := fmt.Sprintf("CO %d sts.\nRow 1 (RS): K%d, w&t.\nRow 2: P%d, w&t.\nRow 3: K to %[4]s before wrapped st, w&t.\n"+
					"Row 4: P to %[4]s before wrapped st, w&t.\nRep Rows 3 and 4 until %[5]d sts rem.\nNext row: K to end. 60 sts.",
					total, between+10, between, stitches(each), want)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				n, reached := turns[want]
				if reached != out.Agrees || reached && !slices.Equal(out.WorkedRows, []int{5 + 2*n}) {
					t.Errorf("%d between, %d each, until %d: %v, %d repeats; %v rows, %s", between, each, want, reached, n, out.WorkedRows, said(&out))
				}
			}
		}
	}
}
