package pattern

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// rowPhrases are so many rows that change nothing, as patterns print it: N is the number, W the number in words, R "rows" or
// "rnds". All are common practice.
var rowPhrases = []string{
	"Knit N R.", "Knit W R.", "Knit N plain R.", "Knit W plain R.", "Knit N R plain.", "Work N R plain.", "Work N plain R.",
	"Work N R.", "Work W R.", "Work N R even.",
	"Work N R straight.", "Work N even R.", "Work N more R.", "Work N R more.", "Work a further N R.", "Work another N R.",
	"Work another W R.", "Work W more R.",
	"Work an additional N R.", "Work N additional R.", "Work N further R.", "Work N extra R.", "Work the next N R.",
	"Work the next N R even.", "Work the following N R in St st.",
	"Work N R in St st.", "Work N R St st.", "Work N R of St st.", "Work N R stockinette.", "Work N R in garter st.",
	"Work N R in patt.", "Work N R in pattern.", "Work N R in pattern as set.",
	"Work N R in pattern as established.", "Work in St st for N R.", "Work in St st for W R.", "Work in St st for a further N R.",
	"Work in St st for another N R.", "Work in St st for N more R.",
	"Work in St st for N R more.", "Work in St st for an additional N R.", "Work in St st for the next N R.",
	"Work in garter st for N R.", "Work even for N R.", "Work even for N more R.",
	"Work even for W R.", "Work even for a further N R.", "Work even for another N R.", "Work even N R.", "Work even for the next N R.",
	"Work straight for N R.", "Work straight for a further N R.",
	"Work without shaping for N R.", "Work N R without shaping.", "Work N R without further shaping.", "Cont in St st for N R.",
	"Cont in St st for a further N R.", "Cont in St st for N more R.",
	"Continue in St st for another N R.", "Continue in stockinette stitch for N R.", "Continue even for N R.",
	"Continue even for N R more.", "Continue straight for another N R.",
	"Continue without shaping for a further N R.", "Cont in patt for N R.", "Cont in patt for N R more.", "Cont for N R.",
	"Cont for N more R.", "Cont for a further N R.",
	"N R St st.", "N R in St st.", "N R garter st.", "N R garter stitch.", "St st N R.", "St st for N R.", "St st W R.",
	"Garter st N R.", "Patt N R.", "Patt N R straight.",
	"Rib N R.", "Rib for N R.",
	"Knit for N R.", "Knit every R1 for N R.", "Knit all sts for N R.", "Knit N more R.", "Knit another N R.", "Knit a further N R.",
	"Knit N R more plain.", "Knit N further R.", "Knit W more R.",
	"Knit the next N R.", "Knit the following N R.", "Knit an additional N R.", "Knit next N R.", "Now knit N R.", "Then knit N R.",
	"Now work N R in St st.", "Knit N R in garter stitch.",
	"Knit N R without shaping.", "Knit N R straight.", "Knit N R even.", "Knit N R in MC.", "Using MC, knit N R.",
	"With A, work N R in St st.", "With smaller needles, work N R in garter st.",
	"Change to larger needles and knit N R.", "Change to larger needles and work N R in St st.", "Next N R: Knit.",
	"Next N R: Work even.", "Next N R: St st.", "For the next N R, knit.", "For the next N R, work even.",
	"Purl N R.", "Purl W R.", "Work N R in k2, p2 rib.", "Work N R in K1, P1 rib.", "Work N R of k2, p2 rib.", "Work N R K1, P1 rib.",
	"Work in k2, p2 rib for N R.", "Work in K1, P1 rib for N R.", "Work K1, P1 rib for N R.",
	"Work k2, p2 rib for W R.", "Work N R in 2x2 rib.", "Work in K1, P1 ribbing for N R.", "Work N R K2, P2 ribbing.",
	"Work in rib for N R.", "K1, P1 rib for N R.", "K1, P1 rib N R.", "N R K1, P1 rib.", "Work N R in moss st.",
	"Work in seed st for N R.", "Work a total of N R in St st.", "Work exactly N R in St st.", "Work just N R even.", "Work N R, in St st.",
	"Starting with a knit R1, work N R in St st.", "Beg with a k R1, work N R in St st.", "Beg with a k R1, cont in St st for N R.",
	"Beg with a knit R1, work N R St st.", "Work N R in St st, beg with a K R1.",
	"Work N R in St st, starting with a knit R1.", "St st N R, beg with a k R1.",
}

// lettersFor are the letters of a phrase that stand for numbers and rows.
var lettersFor = regexp.MustCompile(`\b(N|W|R1?)\b`)

// regexpT is where a number of times stands.
var regexpT = regexp.MustCompile(`\bT\b`)

// rowTexts are every phrase in one size and in three, back and forth and in the round.
func rowTexts() []worded {
	words := map[int]string{2: "two", 3: "three", 4: "four", 6: "six", 8: "eight", 10: "ten", 12: "twelve", 20: "twenty", 30: "thirty"}
	var texts []worded
	for _, phrase := range rowPhrases {
		for k, n := range [][]int{{4}, {8}, {20}, {2}, {6, 8, 8}, {10, 10, 12}, {30}, {0, 2, 4}} {
			if len(n) > 1 && strings.Contains(phrase, "W ") || n[0] == 0 && strings.HasPrefix(phrase, "Next") {
				continue
			}
			counts := []int{44, 52, 60}[:len(n)]
			round := k%2 == 1
			rows, row, join := "rows", "row", ""
			if round {
				rows, row, join = "rnds", "rnd", " Join in the rnd."
			}
			said := lettersFor.ReplaceAllStringFunc(phrase, func(letter string) string {
				return map[string]string{"N": asPrinted(n), "W": words[n[0]], "R": rows, "R1": row}[letter]
			})
			texts = append(texts, worded{text: fmt.Sprintf("CO %s sts.%s\n%s\nNext %s: K2tog, k to end. %s sts.", asPrinted(counts),
				join, said, row,
				asPrinted(each(counts, func(n int) int { return n - 1 }))),
				stitches: each(counts, func(n int) int { return n - 1 }), rows: each(n, func(n int) int { return n + 1 })})
		}
	}
	return texts
}

// TestRowPhrases: so many rows are read wherever they stand, however they are printed; with a
// count that is one off it is not agreed with.
func TestRowPhrases(t *testing.T) {
	texts := rowTexts()
	askWorded(t, texts, 100, 0)
	neverOneOff(t, texts, knittest.Sweep(3, 31))
}
