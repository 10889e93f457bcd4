package pattern

import (
	"fmt"
	"testing"
)

// TestEdgingOfLiveStitches: stitches that are picked up or cast on for an edging come to those on the needle where they are
// counted with them, under any heading, with markers at the corners and without. Counts are sums; the words are common practice.
func TestEdgingOfLiveStitches(t *testing.T) {
	heads := []string{"", "Edging: ", "EDGING\n", "Border: ", "Do not cast off.\n", "Do not bind off.\nBORDER\n", "Border: Do not turn. "}
	var texts []worded
	for _, live := range [][]int{{104}, {52, 60}, {41, 45, 49}} {
		ten := each(live, func(int) int { return 10 })
		for _, head := range heads {
			for _, part := range [...]struct {
				said string
				n    int
			}{
				{"Pick up and knit 96 sts down left side edge", 96}, {"With RS facing, pick up and knit 30 sts down left side edge", 30},
				{"CO 6 sts onto left needle", 6}, {"Pick up and knit 20 sts along left edge, 10 sts along lower edge", 30},
			} {
				text := fmt.Sprintf("CO %s sts. Knit 10 rows.\n%s%s. ", asPrinted(live), head, part.said)
				both := each(live, func(n int) int { return n + part.n })
				texts = append(texts, worded{text: text + asPrinted(both) + " sts.", stitches: both, rows: ten})
			}
			for _, mark := range []string{", pm, ", ", place marker, ", ", "} {
				text := fmt.Sprintf("CO %[1]s sts. Knit 10 rows.\n%[2]sPick up and knit 96 sts down left side edge%[3]spick up and knit %[1]s sts "+
					"along cast-on edge%[3]spick up and knit 96 sts up right side edge. ", asPrinted(live), head, mark)
				round := each(live, func(n int) int { return 2*n + 192 })
				w := worded{text: text + asPrinted(round) + " sts.", stitches: round}
				texts = append(texts, w)
			}
		}
	}
	askShort(t, texts)
}
