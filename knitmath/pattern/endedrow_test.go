package pattern

import (
	"fmt"
	"testing"
)

// TestRowsThatEndOtherwise: a stitch or two across the row, which ends with others: the sums are those of the lists, by the
// whole repeated; of every row wrong counts near the right one are planted.
func TestRowsThatEndOtherwise(t *testing.T) {
	seen := map[bool]int{}
	for _, group := range []struct {
		said         string
		takes, loses int
	}{{"K2tog", 2, 1}, {"P2tog", 2, 1}, {"K2 tog", 2, 1}, {"Kfb", 1, -1},
		{"K2, k2tog", 4, 1}, {"K3, ssk", 5, 1}, {"K1, p2tog", 3, 1},
		{"K1, p1", 2, 0},
		{"K2, p2", 4, 0}} {
		for _, across := range []string{"across", "across row", "around", "to end"} {
			for _, ends := range []string{"end k%d", "ending k%d", "end with k%d", "ending with k%d"} {
				for times := 3; times < 9; times += 2 {
					for last := 1; last < 3; last++ {
						start := times*group.takes + last
						for off := -2; off < 3; off++ {
							end := start - times*group.loses + off
							text := fmt.Sprintf("Next row: %s %s, "+ends+". %d sts.", group.said, across, last, end)
							out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{start}})
							seen[off == 0]++
							right := off == 0 || out.Agrees && end == inTheLastAlone(group.said, start, last)
							if err != nil || right != out.Agrees {
								t.Errorf("%d: %v %s\n%s", start, err, said(&out), text)
							}
						}
					}
				}
			}
		}
	}
	t.Logf("%d right and %d planted", seen[true], seen[false])
}

// inTheLastAlone is the count after "k2, k2tog across, end k1" read with k2 once, which is right too where it comes out.
func inTheLastAlone(group string, start, last int) int {
	first := map[string]int{"K2, k2tog": 2, "K3, ssk": 3, "K1, p2tog": 1}[group]
	if first == 0 || (start-first-last)%2 != 0 {
		return -1
	}
	return start - (start-first-last)/2
}

// TestKnitAll: "k all" is to the end of the row.
func TestKnitAll(t *testing.T) {
	for _, row := range []string{"R2: K all", "R2: P all.", "R2: Knit all", "Row 2: Purl all.", "R2: K all (%d sts)", "R2: K all - %d sts",
		"R2: K all sts. %d sts."} {
		for n := 18; n < 23; n++ {
			text := "R1: Knit.\n" + row
			if len(row) > 4 && row[len(row)-1] != 'l' && row[len(row)-2:] != "l." {
				text = fmt.Sprintf(text, n)
			} else {
				text += fmt.Sprintf("\nR3: Knit. %d sts.", n)
			}
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{20}})
			if err != nil || (n == 20) != out.Agrees {
				t.Errorf("%d: %v %s\n%s", n, err, said(&out), text)
			}
		}
	}
}
