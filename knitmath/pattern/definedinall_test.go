package pattern

import (
	"fmt"
	"testing"
)

// TestDefinedRowsInAll: the rows of a pattern that is only defined are worked "a total of 5 times" five times, and not four times
// more than where they stand. Any other number of rows that is told is a mistake.
func TestDefinedRowsInAll(t *testing.T) {
	for _, heading := range []string{"Lace pattern (multiple of 2):", "Eyelet stitch (multiple of 2 sts):"} {
		for _, times := range []string{"a total of %d times", "%d times in all", "%d times in total", "%d times"} {
			for n := 2; n <= 8; n++ {
				for off := -2; off <= 2; off++ {
					text := "CO 60 sts.\n" + heading + "\nRow 1: *Yo, k2tog; rep from * to end.\nRow 2: Purl.\nWork rows 1-2 " +
						fmt.Sprintf(times+" (%d rows).", n, 2*n+off)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (off == 0) || out.WorkedRows[0] != 2*n {
						t.Errorf("%q: agrees is %v, %d rows, %v, %s", text, out.Agrees, out.WorkedRows[0], err, said(&out))
					}
				}
			}
		}
	}
}
