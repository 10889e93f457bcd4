package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestChangesWithASign: by how many stitches a row changes the count, with a sign in the place of a word, after the row or in its label;
// another number never agrees. By hand.
func TestChangesWithASign(t *testing.T) {
	for _, form := range []string{"Row 1: K1, M1L, k to last st, M1R, k1 (+N).", "Row 1: K1, M1L, k to last st, M1R, k1. (+N)",
		"Row 1: K1, M1L, k to last st, M1R, k1 [+N sts].", "Row 1: K1, M1L, k to last st, M1R, k1. [+N sts]",
		"Row 1: K1, M1L, k to last st, M1R, k1. (+N; 42 sts)", "Row 1: K1, M1L, k to last st, M1R, k1. (+N = 42)",
		"Row 1: K1, M1L, k to last st, M1R, k1. +N sts.", "Row 1: K1, M1L, k to last st, M1R, k1 - +N sts.",
		"Row 1 (+N): K1, M1L, k to last st, M1R, k1.", "R1 [+N sts]: k1, M1L, k to last st, M1R, k1.",
		"Row 1: K1, ssk, k to last 3 sts, k2tog, k1 (-N).", "Row 1: K1, ssk, k to last 3 sts, k2tog, k1. (-N sts)",
		"Row 1: K1, ssk, k to last 3 sts, k2tog, k1. [-N; 38 sts]", "Row 1 (-N): K1, ssk, k to last 3 sts, k2tog, k1.",
		"Row 1: K1, ssk, k to last 3 sts, k2tog, k1 (\u2212N sts)."} {
		for n := 1; n < 4; n++ {
			end := 42
			if strings.Contains(form, "ssk") {
				end = 38
			}
			text := "CO 40 sts.\n" + strings.ReplaceAll(form, "N", fmt.Sprint(n)) + "\nRow 2: Purl."
			agreeing(t, text, nil, false, n == 2, end)
			for off := -1; n == 2 && off <= 1; off += 2 {
				agreeing(t, fmt.Sprintf("%s\n%d sts.", text, end+off), nil, false, false, end)
			}
		}
	}
}

// TestNotesUnderTheNameOfAPattern: a note between the name of a stitch pattern and its rows ends no definition, and rows that are worked
// after some of it are its own. By hand.
func TestNotesUnderTheNameOfAPattern(t *testing.T) {
	for _, name := range []string{"EYELET TRELLIS (multiple of 3 sts + 2)", "Eyelet Trellis (multiple of 3 plus 2 sts)"} {
		for _, note := range []string{"", "Note: Stitch count varies; count sts only after Row 4.\n", "Note: keep yarn overs loose.\n"} {
			for _, then := range []string{"then work Rows 1 and 2 once more", "then rep Rows 1 and 2 once more", "then Rows 1 and 2 once more"} {
				for off := -1; off <= 1; off++ {
					text := fmt.Sprintf("%s\n%sRow 1 (RS): K2, *yo, k1, yo, k2; rep from * to end.\nRow 2: Purl.\nRow 3: K1, *ssk, k1, k2tog; "+
						"rep from * to last st, k1.\nRow 4: Purl.\n\nSLEEVE\nCO 38 sts. Work Rows 1-4 of Eyelet Trellis twice, %s. %d sts.",
						name, note, then, 62+off)
					agreeing(t, text, nil, false, off == 0, 62)
				}
			}
		}
	}
}
