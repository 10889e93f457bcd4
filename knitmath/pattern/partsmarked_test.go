package pattern

import (
	"fmt"
	"testing"
)

// TestPartsBetweenMarkers: the parts of a raglan that are told beside its count are those between
// its markers, whatever is put in the place of one of them in the row. By hand: the back is what
// lies before the first marker and after the last, so that the count of 80 never tells.
func TestPartsBetweenMarkers(t *testing.T) {
	for first := 8; first < 13; first++ {
		for front := 28; front < 33; front++ {
			for second := 8; second < 13; second++ {
				text := fmt.Sprintf("CO 80 sts and join in the round.\nSet-up rnd: K15, pm, k%d, pm, k%d, pm, k%d, pm, k to end. 80 sts: 30 each for "+
					"front and back, 10 for each sleeve.\nKnit 1 rnd.", first, front, second)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				parts := map[int]int{}
				for _, n := range []int{first, front, second, 80 - first - front - second} {
					parts[n]++
				}
				if right := parts[30] == 2 && parts[10] == 2; err != nil || right != out.Agrees || !right && out.mistakes != 1 {
					t.Errorf("%d, %d, %d: %v, %s", first, front, second, err, said(&out))
				}
			}
		}
	}
}

// TestPartToldInARepeat: a thumb gusset whose markers are placed in the row that the words before its
// colon lead in. By hand: 2 stitches between the markers, 2 more in each of 6 gusset rounds, 14 in the
// end. A wrong number of stitches that is told there is said once, and put right.
func TestPartToldInARepeat(t *testing.T) {
	for placed := 1; placed < 5; placed++ {
		for told := 12; told < 17; told++ {
			text := fmt.Sprintf("CO 48 sts. Join in the round.\nPlace markers for the thumb gusset: K23, pm, k%d, pm, k to end.\n"+
				"Gusset rnd: K to m, sm, M1L, k to m, M1R, sm, k to end. 50 sts.\nKnit 2 rnds.\nRep the last 3 rnds 5 times more. 60 sts "+
				"(%d sts between the markers).\nNext rnd: K to m, remove m, place the next %d sts on waste yarn, remove m, CO 2 sts, k to end. "+
				"48 sts.\nKnit 3 rnds.", placed, told, 14)
			wrong := 0
			if placed != 2 || told != 14 {
				wrong = 1
			}
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || placed == 2 && out.mistakes != wrong || told == 14 && placed != 2 && out.mistakes == 0 {
				t.Errorf("%d, %d: %v, %s", placed, told, err, said(&out))
			}
			if placed == 2 && told != 14 && !restores(t, &out, text, "(14 sts between") {
				t.Errorf("%d: %s", told, offered(&out))
			}
		}
	}
}
