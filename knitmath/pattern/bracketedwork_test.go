package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestDirectionsInBrackets: rows and directions in a bracket, worked so often.
func TestDirectionsInBrackets(t *testing.T) {
	const decRound = "Dec rnd: K1, ssk, k to last 3 sts, k2tog, k1.\n"
	var texts []worded
	for _, even := range []string{"Work %s rnds even", "Knit %s rnds", "Work even for %s rnds"} {
		for _, dec := range []string{", then dec rnd", ", dec rnd", ", work dec rnd", ", rep dec rnd", ", then work dec rnd once",
			" and work dec rnd", "; rep dec rnd once", ", then dec 2 sts evenly across next rnd"} {
			for _, brackets := range []string{"[]", "()"} {
				for i, often := range []string{"N more times", "N times more", "N times", "N times in all"} {
					n, rows := [][]int{{3}, {2, 4}, {5, 6, 8}, {1, 2}}[(i+len(even)+len(dec))%4], 3+i
					text := strings.NewReplacer("N ", asPrinted(n)+" ").Replace(often)
					text = fmt.Sprintf("CO 96 sts and join.\n%s%c%s%s%c %s. CLAIM.", decRound, brackets[0],
						fmt.Sprintf(even, fmt.Sprint(rows)), dec, brackets[1], text)
					texts = append(texts, worded{text, nil, false, each(n, func(k int) int { return 94 - 2*k }),
						each(n, func(k int) int { return 1 + k*(rows+1) })})
				}
			}
		}
	}
	askBoth(t, texts, 93) // "(Knit 3 rnds, dec rnd) twice", in round brackets with no verb, is asked
}

// TestHalfTheNeedlesInBrackets: a round of which the needles of one half are written, and the others worked alike.
func TestHalfTheNeedlesInBrackets(t *testing.T) {
	var texts []worded
	for _, first := range []string{"Needle 1: ", "N1: ", "First needle: "} {
		for _, second := range []string{"; next needle: ", ". Next needle: ", "; second needle: ", "; needle 2: "} {
			for _, often := range []string{"twice", "2 times", "two times"} {
				for dec, change := range map[string]int{"k to last 3 sts, k2tog, k1|k1, ssk, k to end": 4,
					"k1, m1, k to end|k to last st, m1, k1": -4,
					"k2tog, k to end|k to end":              2} {
					steps := strings.Split(dec, "|")
					for _, n := range []int{48, 64, 80} {
						text := fmt.Sprintf("CO %d sts, divided on 4 needles. Join in the rnd.\nKnit 10 rnds.\n"+
							"Next rnd: [%s%s%s%s] %s. CLAIM.", n, first, steps[0], second, steps[1], often)
						texts = append(texts, worded{text, nil, false, []int{n - change}, []int{11}})
					}
				}
			}
		}
	}
	askBoth(t, texts, 98)
}
