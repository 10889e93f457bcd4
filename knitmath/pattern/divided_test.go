package pattern

import (
	"fmt"
	"testing"
)

// TestDividingRowsAtTheirMarkers: a yoke whose four markers are known is divided. By hand, sleeves lie between their
// markers, or as far from them at the one as at the other: a seam stitch goes with the body or the sleeve.
func TestDividingRowsAtTheirMarkers(t *testing.T) {
	tried := 0
	for _, size := range [...][2]int{{30, 20}, {24, 14}, {41, 17}} {
		body, sleeve := size[0], size[1]
		for front := body - 2; front <= body+2; front++ {
			for one := sleeve - 2; one <= sleeve+2; one++ {
				for other := sleeve - 2; other <= sleeve+2; other++ {
					back := 2*(body+sleeve) - front - one - other // what is left between the sleeves
					for _, way := range []string{"place next %d sts on holder", "slip next %d sts to waste yarn"} {
						text := fmt.Sprintf("CO %d sts. Join in the rnd.\nRnd 1: K%d, pm, k%d, pm, k%d, pm, k%d.\nDividing rnd: K%d, "+way+
							" for sleeve, CO 6 sts, k%d, "+way+", CO 6 sts.", 2*(body+sleeve), body, sleeve, body, sleeve, front, one, back, other)
						a := beside{int64(front - body), int64(body + sleeve - front - one)}
						b := beside{int64(sleeve - other), 0}
						right := a == b || a == beside{b.before, b.after}
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
						if tried++; err != nil || right != out.Agrees {
							t.Errorf("%v %v right %v: %v %s\n%s", a, b, right, err, said(&out), text)
						}
					}
				}
			}
		}
	}
	if tried < 700 {
		t.Errorf("only %d dividing rounds", tried)
	}
}

// TestDividingRowsToMarkers: the same where the body is worked to its markers, flat and round.
func TestDividingRowsToMarkers(t *testing.T) {
	for one := 16; one < 24; one++ {
		for other := 16; other < 24; other++ {
			for _, form := range []string{
				"CO 100 sts. Join in the rnd.\nRnd 1: K30, pm, k20, pm, k30, pm, k20.\nDividing rnd: K to m, place next %d sts on holder, " +
					"CO 6 sts, k to m, place next %d sts on holder, CO 6 sts.",
				"CO 100 sts.\nRow 1: K15, pm, k20, pm, k30, pm, k20, pm, k15.\nRow 2: Purl.\nDividing row (RS): K to m, remove m, place next %d sts " +
					"on holder, CO 6 sts, k to last 35 sts, place next %d sts on holder, CO 6 sts, k to end.",
			} {
				text := fmt.Sprintf(form, one, other)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || (one == 20 && other == 20) && !out.Agrees || one != other && out.Agrees {
					t.Errorf("%d and %d: %v %s\n%s", one, other, err, said(&out), text)
				}
			}
		}
	}
}

// TestSpansBelowRows: rows of which the first stand above already, and those that go on or begin another set.
func TestSpansBelowRows(t *testing.T) {
	for above := 2; above < 6; above++ {
		for from := 1; from <= above+1; from++ {
			for to := above + 2; to < above+5; to++ {
				for _, between := range []string{"", "\nYOKE\n"} {
					text := "CO 40 sts. Join.\n"
					for row := 1; row <= above; row++ {
						text += fmt.Sprintf("Rnd %d: Knit.\n", row)
					}
					text += between + fmt.Sprintf("Rnds %d-%d: Knit. 40 sts.", from, to)
					right := from == above+1 || between != "" && from == 1
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || right != (out.mistakes == 0) {
						t.Errorf("right %v: %v %s\n%s", right, err, said(&out), text)
					}
				}
			}
		}
	}
}

// TestEndingWithARow: the row with which a repeat ends is one of those that are repeated.
func TestEndingWithARow(t *testing.T) {
	for first := 1; first < 5; first += 2 {
		for last := first + 1; last < 5; last += 2 {
			for end := 1; end < 7; end++ {
				for _, until := range []string{"until piece measures 10 cm", "3 more times"} {
					text := fmt.Sprintf("CO 40 sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\nRep Rows %d-%d %s, ending with "+
						"Row %d.", first, last, until, end)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if among := first <= end && end <= last; err != nil || !among && out.mistakes == 0 || end == last && !out.Agrees {
						t.Errorf("%v %s\n%s", err, said(&out), text)
					}
				}
			}
		}
	}
}

// TestSetsGrafted: two sets of so many stitches are twice as many.
func TestSetsGrafted(t *testing.T) {
	for n := 6; n < 15; n++ {
		text := fmt.Sprintf("CO 20 sts. Join.\nRnd 1: Knit.\nGraft the two sets of %d sts together.", n)
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || (n == 10) != out.Agrees {
			t.Errorf("%d: %v %s", n, err, said(&out))
		}
	}
}
