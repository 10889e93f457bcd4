package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestRepeatFromARow: "rep from row 3" are that row and all that follow it. The sums are counted here: each odd row has one stitch
// more; a count that is off by one is planted in every text. (One row alone was worked before, in silence.)
func TestRepeatFromARow(t *testing.T) {
	seen := map[bool]int{}
	words := map[int]string{1: "first", 2: "second", 3: "third", 4: "fourth", 5: "fifth"}
	for rows := 2; rows < 6; rows++ {
		for from := 1; from <= rows; from++ {
			last := fmt.Sprintf("%d%s", rows, map[int]string{2: "nd", 3: "rd", 4: "th", 5: "th"}[rows])
			nth := fmt.Sprintf("%d%s", from, map[int]string{1: "st", 2: "nd", 3: "rd", 4: "th", 5: "th"}[from])
			for _, said := range []string{fmt.Sprintf("from row %d", from), "from the " + nth + " row", "from " + nth + " row",
				"from the " + words[from] + " row", fmt.Sprintf("from row %d to row %d", from, rows), "from the " + nth + " to the " + last + " row",
				"from " + nth + " to " + last + " rows"} {
				for times := 1; times < 4; times++ {
					var b strings.Builder
					sts, worked := 40, 0
					row := func(n int) {
						worked++
						sts += n % 2
					}
					for n := 1; n <= rows; n++ {
						fmt.Fprintf(&b, "Row %d: %s\n", n, map[bool]string{true: "Kfb, k to end.", false: "Knit."}[n%2 == 1])
						row(n)
					}
					for range times {
						for n := from; n <= rows; n++ {
							row(n)
						}
					}
					for off := -1; off < 2; off++ {
						text := b.String() + fmt.Sprintf("Rep %s %d more times. %d sts.", said, times, sts+off)
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{40}})
						if seen[off == 0]++; err != nil || (off == 0) != out.Agrees || off == 0 && out.WorkedRows[0] != worked {
							t.Errorf("%v after %d rows, not %d: %v\n%s", out.EndStitches, out.WorkedRows, worked, err, text)
						}
					}
				}
			}
		}
	}
	t.Logf("%d right and %d planted", seen[true], seen[false])
}

// TestRepeatFromARowAbove: where other rows stand below the numbered ones it is asked up to which row is meant.
func TestRepeatFromARowAbove(t *testing.T) {
	text := "CO 40 sts.\nRow 1: Kfb, k to end.\nRow 2: Purl.\nKnit 4 rows.\nRep from row 1 twice."
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil || out.Agrees || out.questions != 1 {
		t.Errorf("%v %s", err, said(&out))
	}
}
