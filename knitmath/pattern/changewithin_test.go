package pattern

import (
	"strings"
	"testing"
)

// TestChangesWithinRows: so many rows, and on which of them a change is made. How often follows
// from how many rows there are.
func TestChangesWithinRows(t *testing.T) {
	even := []string{"Knit N rows", "Work N rows", "Work N rows in garter st", "Work N rows in St st", "Work in garter st for N rows",
		"Cont in st st for N rows", "Continue in patt for N rows", "Work N rows in pattern", "Knit the next N rows", "Work a further N rows",
		"Work N rows more", "Cont in garter st for another N rows", "Work N more rows"}
	joins := []string{", ", " and at the same time ", ", at the same time ", " while ", ", while ", " but ", " "}
	changes := []struct {
		said string
		by   int
	}{{"inc 1 st at each end of", 2}, {"dec 1 st at each end of", -2}, {"increasing 1 st at each end of", 2},
		{"decreasing 1 st each end of", -2}, {"dec 1 st at neck edge on", -1}, {"dec 2 sts at beg of", -2}, {"inc 1 st at both ends of", 2},
		{"dec one st at armhole edge of", -1}, {"decreasing one stitch at each end of", -2}}
	which := []struct {
		said        string
		first, each int // the first such row of those told, counted from 1 on a right-side row, and the rows between
	}{{"every row", 1, 1}, {"each row", 1, 1}, {"every RS row", 1, 2}, {"RS rows", 1, 2}, {"all RS rows", 1, 2}, {"each right side row", 1, 2},
		{"every WS row", 2, 2}, {"WS rows", 2, 2}, {"every alt row", 2, 2}, {"every other row", 2, 2}, {"every 2nd row", 2, 2},
		{"every 4th row", 4, 4}, {"every fourth row", 4, 4}, {"every foll 4th row", 4, 4}, {"next and every foll 4th row", 1, 4},
		{"next and foll alt rows", 1, 2}, {"next and every foll alt row", 1, 2}, {"3rd and every foll 4th row", 3, 4},
		{"5th and every following 6th row", 5, 6}, {"next and every following 3rd row", 1, 3}}
	var texts []worded
	for i, e := range even {
		for j, join := range joins {
			for k, c := range changes {
				if join == " " && !strings.Contains(c.said, "ing ") {
					continue
				}
				for m, w := range which {
					rows := [][]int{{6}, {12, 16}, {8}, {7}, {20, 24, 28}, {9}, {14}}[(i+j+k+m)%7]
					end := each(rows, func(n int) int {
						times := 0
						for row := w.first; row <= n; row += w.each {
							times++
						}
						return 60 + times*c.by
					})
					text := strings.Replace(e, "N", asPrinted(rows), 1) + join + c.said + " " + w.said
					texts = append(texts, worded{text + ". " + asPrinted(end) + " sts.", each(rows, func(int) int { return 60 }), false, end, rows})
				}
			}
		}
	}
	askWorded(t, texts, 99, 0)
}
