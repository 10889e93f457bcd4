package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// askBoth asks texts that are right, every CLAIM of which is the count at the end, and the same with a count that
// is one off in the last size: none of those may be agreed with. All words are common practice.
func askBoth(t *testing.T, texts []worded, floor int) {
	t.Helper()
	right, planted := make([]worded, len(texts)), 0
	for i, w := range texts {
		off := append([]int(nil), w.stitches...)
		off[len(off)-1]++
		for _, claimed := range [...][]int{w.stitches, off} {
			said := strings.ReplaceAll(w.text, "CLAIM", asPrinted(claimed)+" sts")
			if claimed[len(claimed)-1] == w.stitches[len(w.stitches)-1] {
				right[i] = w
				right[i].text = said
				continue
			}
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: said, StartStitches: w.start})
			planted++
			if err == nil && out.Agrees {
				t.Errorf("agreed with, though %v stitches are there:\n%s", w.stitches, said)
			}
		}
	}
	t.Logf("%d planted, none agreed with", planted)
	askWorded(t, right, floor, 0)
}

// TestPickedUpBesideNumbers: stitches of a row picked up with the number on the k, in one size or several.
func TestPickedUpBesideNumbers(t *testing.T) {
	var texts []worded
	for _, first := range []string{"", "pick up and kA, ", "pick up & kA, ", "pick up and kA sts along the gap, "} {
		for _, own := range []string{"kB", "k across B sts", "kB sts"} {
			for _, last := range []string{", pick up and kA", ", then pick up and kA", ", pick up and kA sts down the edge"} {
				for _, a := range [][]int{{3}, {2, 3}, {3, 3, 4, 5}} {
					b := each(a, func(k int) int { return 30 + 4*k })
					end := make([]int, len(a))
					for i := range a {
						end[i] = b[i] + a[i]
						if first != "" {
							end[i] += a[i]
						}
					}
					row := strings.NewReplacer("A", asPrinted(a), "B", asPrinted(b)).Replace(first + own + last)
					texts = append(texts, worded{fmt.Sprintf("CO %s sts.\nKnit 4 rows.\nNext row: %s. CLAIM.", asPrinted(b), row), nil,
						false, end, each(a, func(int) int { return 5 })})
				}
			}
		}
	}
	askBoth(t, texts, 100)
}

// TestPutAsideByNumberAlone: stitches put aside of which only the number is said.
func TestPutAsideByNumberAlone(t *testing.T) {
	var texts []worded
	for _, verb := range []string{"slip", "slip next", "place", "place next"} {
		for _, where := range []string{"onto waste yarn", "on waste yarn", "to a holder", "onto a stitch holder", "on hold",
			"onto a length of waste yarn", "onto a spare needle"} {
			for _, n := range [][]int{{40}, {44, 48}, {30, 32, 36}} {
				for _, rep := range []string{"to end", "once more", "once"} {
					start := each(n, func(k int) int { return 2 * (k + 50) })
					end := each(n, func(int) int { return 2 * 58 })
					text := fmt.Sprintf("CO %s sts and join.\nKnit 10 rnds.\nNext rnd: *%s %s %s, CO 8, k50; rep from * %s. CLAIM.",
						asPrinted(start), verb, asPrinted(n), where, rep)
					texts = append(texts, worded{text, nil, false, end, each(n, func(int) int { return 11 })})
				}
			}
		}
	}
	askBoth(t, texts, 100)
}

// TestSmallEverydayWords: rows called by R within a line, rows worked so often or to a length, the first of some rows once.
func TestSmallEverydayWords(t *testing.T) {
	var texts []worded
	for n := 2; n < 8; n++ {
		for _, once := range []string{"the 1st of them", "the first of them", "the 1st of these", "the first of these rows", "first of these"} {
			texts = append(texts, worded{fmt.Sprintf("CO 60 sts.\nRow 1: K1, M1L, k to last st, M1R, k1.\nRow 2: Purl.\n"+
				"Rep Rows 1 and 2 %d more times, then %s once more. CLAIM.", n, once), nil, false, []int{60 + 2*(n+2)}, []int{2*n + 3}})
		}
		for _, begin := range []string{"R1-R%d: Knit.", "R1 - R%d: K to end.", "R1-%d: Knit.", "Rows 1-%d: Knit."} {
			texts = append(texts, worded{fmt.Sprintf("CO 20 sts. "+begin+"\nR%d: K2tog, k to end. CLAIM.", n, n+1), nil, false,
				[]int{19}, []int{n + 1}})
		}
		for _, length := range []string{"or to desired length", "or to length desired", "or to the length required", "or until it is long enough",
			"or until desired length"} {
			for _, comma := range []string{", ", " "} {
				texts = append(texts,
					worded{fmt.Sprintf("CO 20 sts.\nKnit %d rows%s%s.\nNext row: K2tog, k to end. CLAIM.", 8*n, comma, length), nil, false,
						[]int{19}, nil},
					worded{fmt.Sprintf("CO 20 sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 %d more times%s%s.\n"+
						"Next row: K2tog, k to end. CLAIM.", 8*n, comma, length), nil, false, []int{19}, nil})
			}
		}
	}
	askBoth(t, texts, 100)
}

// TestLedInWithBrackets: a part that is named with a remark in brackets before its pick-up.
func TestLedInWithBrackets(t *testing.T) {
	var texts []worded
	for _, name := range []string{"Side trim", "Edging", "Neckband", "Armhole bands", "Front band", "Collar"} {
		for _, remark := range []string{"", " (both sides alike)", " (worked in one piece)", " (both alike)", " (all sizes)",
			" (right front only)"} {
			for _, with := range []string{"With RS facing, ", "With RS facing and smaller needles, ", "Using CC, ",
				"With smaller needle and RS facing, "} {
				for _, n := range []int{21, 98, 210} {
					texts = append(texts, worded{fmt.Sprintf("CO 20 sts.\nKnit 20 rows.\nBO all sts.\n%s%s: "+
						"%spick up and knit %d sts along the edge.\nKnit 4 rows. CLAIM.", name, remark, with, n), nil, false, []int{n}, nil})
				}
			}
		}
	}
	askBoth(t, texts, 98)
}
