package pattern

import (
	"fmt"
	"slices"
	"testing"
)

// TestStockingRowsHaveASide: the knit rows of stocking stitch are on the right side, so that what is
// worked between two stretches which begin with a knit row is an even number of rows, and between
// one that begins with a knit row and one with a purl row an odd one. Binding off takes two rows.
func TestStockingRowsHaveASide(t *testing.T) {
	for rows := 1; rows < 12; rows++ {
		for _, second := range []string{"k", "p", "knit", "purl"} {
			text := fmt.Sprintf("CO 40 sts.\nBeg with a k row, work %d rows in st st.\nCast off 4 sts at beg of next 2 rows. 32 sts.\n"+
				"Beg with a %s row, work 10 rows in st st.", rows, second)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if right := (rows%2 == 0) == (second[0] == 'k'); err != nil || right != out.Agrees || !right && out.mistakes != 1 {
				t.Errorf("%d rows, then a %s row: %v, %s", rows, second, err, said(&out))
			}
		}
	}
}

// TestStockingRowsThatEnd: the row that stocking stitch ends with says nothing of the one it begins
// with.
func TestStockingRowsThatEnd(t *testing.T) {
	for _, text := range []string{
		"CO 40 sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\nBeg with a K row, work in st st until piece measures 34 cm, ending with a P row.\n" +
			"Row 1 (RS): Knit.",
		"CO 40 sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\nWork 10 rows in st st, ending with a p row.\nRow 1 (RS): Knit.",
		"CO 40 sts.\nRow 1 (RS): Knit.\nBeg with a p row, work 11 rows in st st, ending with a purl row.\nRow 1 (RS): Knit.",
	} {
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}

// TestMarkersOfARowThatIsNotCounted: markers placed in a row whose stitches are not known lie where
// that is not known; the row after it is counted without them, and compared with its claim.
func TestMarkersOfARowThatIsNotCounted(t *testing.T) {
	for more := 1; more < 6; more++ {
		text := fmt.Sprintf("CO 20 sts.\nWork as for Square.\nBORDER\nWith RS facing, pick up and knit 80 sts along the lower edge, "+
			"pm, 1 st in the corner, pm, 100 sts along the side, pm, 1 st in the corner, "+
			"pm, 80 sts along the upper edge, pm, 1 st in the corner, pm, 100 sts along the "+
			"other side, pm, 1 st in the corner, pm. 364 sts. Join.\nRnd 1: Purl.\n"+
			"Rnd 2: *K to m, M1R, sm, k1, sm, M1L; rep from * %d times more. 372 sts.", more)
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		wrong := slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake })
		if err != nil || (more == 3) == wrong {
			t.Errorf("%d times more: %v, %s", more, err, said(&out))
		}
	}
}
