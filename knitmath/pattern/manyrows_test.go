package pattern

import (
	"strings"
	"testing"
)

// TestRepeatsInManyWords: rows worked again, in all words for the verb, the rows, how often and what is said beside.
func TestRepeatsInManyWords(t *testing.T) {
	const flat = "Row 1 (RS): K2, ssk, k to last 4 sts, k2tog, k2.\nRow 2: Purl.\n"
	verbs := []string{"Rep", "Repeat", "Work", "Continue to repeat", "Cont repeating", "Keep repeating", "Now repeat",
		"Continue repeating",
		"Then rep", "Cont to rep", "Continue to work", "Continue working", "Cont to work", "Work", "Now work", "Keep working"}
	rows := []string{"Rows 1 and 2", "Rows 1 & 2", "Rows 1-2", "[Rows 1-2]", "rows 1 to 2", "the last 2 rows",
		"last two rows", "these 2 rows",
		"these two rows", "the previous 2 rows", "the above 2 rows", "both rows", "the last two rows", "Rows 1 through 2",
		"the 2 previous rows", "1st and 2nd rows", "first and second rows", "Rows 1 + 2", "(Rows 1-2)", "the preceding two rows",
		"Row 1 and Row 2", "the 2 rows above", "previous two rows", "the two rows above", "the 1st and 2nd rows", "the first 2 rows"}
	asides := []string{"", ", ending with a WS row", ", ending after Row 2", " as established", " in the same manner",
		", ending with RS facing for next row",
		" — S sts rem", ". S sts", ": S sts", " (S sts)", ", ending with Row 2", ", thus ending with a WS row", " - S sts remain",
		", working in pattern throughout", ", end after a WS row", ", finishing after a WS row", " [S sts]",
		", then continue in St st", " = S sts",
		"; S sts remaining"}
	var texts []worded
	for _, v := range verbs {
		for _, r := range rows {
			for _, h := range howManyTimes {
				for i, a := range asides {
					n := [][]int{{3}, {4, 6}, {7}, {2, 3, 5}}[(i+len(h)+len(r))%4]
					start := each(n, func(k int) int { return 50 + 2*k })
					end := each(start, func(k int) int { return 48 })
					end[len(end)-1] += 2
					start[len(start)-1] += 2
					texts = append(texts, worded{flat + v + " " + r + " " + saidTimes(h, n, end) + strings.ReplaceAll(a, "S s",
						asPrinted(end)+" s") + ".", start, false,
						end, each(n, func(k int) int { return 2 * (k + 1) })})
				}
			}
		}
	}
	askWorded(t, texts, 99, 0)
}

// TestOneRowAgainInManyWords: a row worked again on every so manieth row.
func TestOneRowAgainInManyWords(t *testing.T) {
	const row = "Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\n"
	verbs := []string{"Rep", "Repeat", "Work", "Continue to work", "Cont to rep", "Keep repeating", "Continue working"}
	rows := []string{"dec row", "Dec Row", "the dec row", "this row", "this dec row", "the decrease row",
		"this decrease", "decrease row", "last row",
		"the last row"}
	when := []struct {
		said string
		n    int
	}{{"every 4th row", 4}, {"every fourth row", 4}, {"every 4 rows", 4}, {"on every 4th row", 4}, {"every foll 4th row", 4},
		{"every following 4th row", 4}, {"on every foll 4th row", 4}, {"each 4th row", 4}, {"on each following 4th row",
			4}, {"every other row", 2},
		{"EOR", 2}, {"every alternate row", 2}, {"every RS row", 2}, {"on every RS row", 2}, {"every 2nd row",
			2}, {"on every alt row", 2},
		{"every sixth row", 6}, {"on following 8th rows", 8}, {"every RS row", 2}, {"on each RS row",
			2}, {"every 4th row thereafter", 4},
		{"on every following RS row", 2}, {"on alternate rows", 2}, {"every right side row", 2}}
	forms := []string{"V R W H.", "V R H W.", "V R, W, H.", "W, v R H.", "V R W, H.", "Continue in St st, and v R W H."}
	var texts []worded
	for _, v := range verbs {
		for _, r := range rows {
			for _, w := range when {
				for _, h := range howManyTimes {
					for i, f := range forms {
						n := [][]int{{3}, {4, 6}, {7}, {2, 3, 5}}[(i+len(h)+len(r))%4]
						start := each(n, func(k int) int { return 50 + 2*k })
						end := each(start, func(int) int { return 48 })
						text := strings.NewReplacer("V", v, "R", r, "W", w.said, "H", saidTimes(h, n, end), "v", lowered(v)).Replace(f)
						text = strings.ToUpper(text[:1]) + text[1:]
						texts = append(texts, worded{row + text, start, false, end, each(n, func(k int) int { return w.n*k + 1 })})
					}
				}
			}
		}
	}
	askWorded(t, texts, 99, 0)
}

// TestEvenInManyWords: rows worked even, in all words for it, so many more of them.
func TestEvenInManyWords(t *testing.T) {
	forms := []string{"Work R even.", "Work even for R.", "Work straight for R.", "Work R straight.",
		"Continue without shaping for R.", "Work R without shaping.",
		"Cont even for R.", "Continue even in pattern for R.", "Knit R.", "Work R in St st.",
		"Work in stockinette for R.", "Continue in St st for R.",
		"Work R more.", "Work another R.", "Work a further R.", "Work R in patt.", "Patt R.", "Work even in St st for R.",
		"Work R in pattern as set.",
		"Cont in patt for R more.", "Work R in established pattern.", "Cont in est patt for another R.", "Work R plain.",
		"Work R without further shaping.",
		"Work the next R even.", "Work even for the next R.", "Continue working even for R.",
		"Continue as established for R.", "Keep working even for R.",
		"Cont straight for a further R.", "Continue in stockinette stitch for R without shaping.", "Maintaining pattern, work R even.",
		"Without shaping, work R.", "Work in patt as est for R.", "Work in St st without shaping for R.",
		"Work R even in patt as established.",
		"Continue in pattern as set for R.", "K R.", "Then work R even.", "Now work R without shaping.",
		"Work plain for R.", "Work R in stockinette st.",
		"Cont to work even for R.", "Continue straight in st.st. for R.", "Proceed without shaping for R.",
		"Work exactly R even.", "Starting with a k row, work R in st st.",
		"Beg with a RS row, work R in St st.", "For R, work even.", "Over the next R, work even.", "Next R: work even.",
		"Work R without any shaping.",
		"Work R even, keeping to pattern.", "Keeping pattern correct, work R.", "Work a total of R even.",
		"Continue for R in patt without shaping."}
	counts := []struct {
		said string
		n    []int
	}{{"6 rows", []int{6}}, {"six rows", []int{6}}, {"10 (12) rows", []int{10, 12}}, {"8 (10, 12) rows",
		[]int{8, 10, 12}}, {"14 [16] rows", []int{14, 16}}}
	befores := []struct {
		said string
		rows int
	}{{"", 0}, {"Dec 1 st each end of next row. ", 1}, {"Row 1 (RS): Knit.\nRow 2: Purl.\n", 2}}
	var texts []worded
	for _, f := range forms {
		for _, c := range counts {
			for _, b := range befores {
				start := each(c.n, func(int) int { return 70 + 2*(b.rows%2) })
				texts = append(texts, worded{b.said + strings.ReplaceAll(f, "R", c.said), start, false,
					each(c.n, func(int) int { return 70 }), each(c.n, func(k int) int { return b.rows + k })})
			}
		}
	}
	askWorded(t, texts, 99, 0)
}
