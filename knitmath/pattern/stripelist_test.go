package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestStripesInManyWords: rows by their colours in lists, in brackets and after stars, with and without their fabric. By hand: the rows
// that the list says, so often. All words are common practice.
func TestStripesInManyWords(t *testing.T) {
	lists := []string{"A rows X, B rows Y", "A rows X and B rows Y", "A rows in X, B rows in Y", "work A rows X, B rows Y"}
	forms := []struct {
		said string
		tail bool // two rows more
	}{
		{"[LIST] T times, then 2 rows X.", true}, {"*LIST; rep from * M more times.", false},
		{"*LIST; rep from * M more times, then work 2 rows X.", true},
		{"Work in stripes as follows: *LIST; rep from * M times more.", false}, {"Stripes: [LIST] T times, 2 rows X.", true},
		{"Work in St st in stripes of LIST for R rows.", false}, {"Work R rows in stripes (LIST throughout).", false},
		{"Work in stripe pattern (LIST) for R rows.", false}, {"Work in St st, alternating LIST, for R rows.", false},
		{"Cont in St st, working (LIST) T times, then 2 rows X.", true}, {"Work in garter st stripes: (LIST) T times.", false},
		{"Stripes in St st: LIST. Work this P-row sequence T times in all.", false},
		{"Continue in St st in the following stripe sequence: LIST. Repeat the sequence M more times.", false},
		{"Work in St st as follows: LIST. Rep these P rows M more times.", false},
		{"Work in stripes of LIST. Rep last P rows M times more.", false}, {"Stripes: [LIST] x T. Knit every row.", false},
	}
	colours := [][2]string{{"A", "B"}, {"MC", "CC"}, {"blue", "white"}}
	var texts []worded
	for _, form := range forms {
		for li, list := range lists {
			if strings.HasPrefix(list, "work") && !strings.Contains(form.said, "[LIST]") && !strings.Contains(form.said, "*LIST") {
				continue
			}
			for c, colour := range colours {
				a, b, times := 2+li%2*2, 2+c*2, 2+(li+c)%4
				rows := (a + b) * times
				if form.tail {
					rows += 2
				}
				said := strings.NewReplacer("A rows", fmt.Sprint(a, " rows"), "B rows", fmt.Sprint(b, " rows"),
					"X", colour[0], "Y", colour[1]).Replace(list)
				said = strings.NewReplacer("LIST", said, "T times", fmt.Sprint(times, " times"), "x T", fmt.Sprint("x ", times),
					"M more", fmt.Sprint(times-1, " more"), "M times", fmt.Sprint(times-1, " times"), "R rows", fmt.Sprint(rows, " rows"),
					"P-row", fmt.Sprint(a+b, "-row"), "P rows", fmt.Sprint(a+b, " rows"), "2 rows X", "2 rows "+colour[0]).Replace(form.said)
				if times == 2 {
					said = strings.ReplaceAll(strings.ReplaceAll(said, "1 more times", "once more"), "1 times more", "once more")
				}
				texts = append(texts, worded{text: "CO 60 sts.\n" + said + "\n60 sts.", stitches: []int{60}, rows: []int{rows}})
			}
		}
	}
	askWorded(t, texts, 100, 0)
}

// TestRowsARepeatComesTo: not how often but how many rows a repeat comes to, in many signs and words; another count than theirs never
// agrees. By hand: one stitch less in every second row.
func TestRowsARepeatComesTo(t *testing.T) {
	for _, form := range []string{"Rep these 2 rows - N rows total", "Repeat last 2 rows: N rows in all", "Rep these two rows (N rows total)",
		"Rep these 2 rows, N rows altogether", "Rep last 2 rows - a total of N rows", "Rep these 2 rows, making N rows in all",
		"Rep these 2 rows (N rows worked in all)", "Repeat these 2 rows for N rows total", "Rep Rows 1 and 2 (N rows in total)"} {
		for pairs := 3; pairs < 8; pairs++ {
			for off := -1; off <= 1; off++ {
				text := fmt.Sprintf("CO 40 sts.\nRow 1: Knit.\nRow 2: K1, k2tog, k to end.\n%s. %d sts.",
					strings.ReplaceAll(form, "N", fmt.Sprint(2*pairs)), 40-pairs+off)
				agreeing(t, text, nil, false, off == 0, 40-pairs)
			}
		}
	}
}

// TestFirstRowAgain: after a repeat its first row once more, called by its ordinal. By hand: one more for it.
func TestFirstRowAgain(t *testing.T) {
	for _, form := range []string{"Rep these 2 rows M more, then 1st row again.", "Rep these 2 rows M more and the 1st row once more.",
		"Rep 1st and 2nd rows M more, then 1st row once.", "Rep last 2 rows M more, then the first row again.",
		"Rep last 2 rows M more, and 1st of these rows again.", "Rep these 2 rows M more and then first of these 2 rows once.",
		"Work these 2 rows T in all, then work 1st row once more."} {
		for more := 2; more < 7; more++ {
			for off := -1; off <= 1; off++ {
				said := strings.NewReplacer("M more", fmt.Sprint(more, " times more"), "T in", fmt.Sprint(more+1, " times in")).Replace(form)
				text := fmt.Sprintf("CO 40 sts.\n1st row: K1, k2tog, k to end.\n2nd row: Purl.\n%s %d sts.", said, 40-more-2+off)
				agreeing(t, text, nil, false, off == 0, 40-more-2)
			}
		}
	}
}

// TestRowsAreRepeated: what tells of rows says how often they are worked; passed over it was a wrong count in silence.
func TestRowsAreRepeated(t *testing.T) {
	for _, form := range []string{"These 2 rows form the pattern and are repeated M times more.",
		"These 2 rows set patt and are worked T times in all.",
		"These 2 rows are repeated M times more.", "The last 2 rows form the patt and are rep until E sts rem.",
		"The last 2 rows are repeated until E sts remain.", "These two rows form the border and are then repeated a further M times."} {
		for more := 2; more < 7; more++ {
			for off := -1; off <= 1; off++ {
				end := 39 - more
				said := strings.NewReplacer("M times", fmt.Sprint(more, " times"), "T times", fmt.Sprint(more+1, " times"),
					"E sts", fmt.Sprint(end, " sts")).Replace(form)
				text := fmt.Sprintf("CO 40 sts.\nRow 1: K1, k2tog, k to end.\nRow 2: Purl.\n%s\n%d sts.", said, end+off)
				agreeing(t, text, nil, false, off == 0, end)
			}
		}
	}
}

// TestColoursAfterARepeat: "rep from * to last st, 1A" goes on with the stitch of the repeat, and "knit *1A, 3B" says how all are worked.
func TestColoursAfterARepeat(t *testing.T) {
	for _, form := range []string{"*K1A, NB, rep from * to last st, 1A.", "P1A, *1A, NB; rep from * to end.",
		"*K1 MC, N CC; rep from * to last st, 1 MC.",
		"Knit *1A, NB; rep from * to last st, 1A.", "(K1A, NB) to last st, 1A."} {
		for n := 2; n < 6; n++ {
			for off := 0; off < 2; off++ {
				text := fmt.Sprintf("CO %d sts.\n1st row: %s\n2nd row: With A, purl.", 8*(n+1)+1+off, strings.ReplaceAll(form, "N", fmt.Sprint(n)))
				agreeing(t, text, nil, false, off == 0, 8*(n+1)+1)
			}
		}
	}
}
