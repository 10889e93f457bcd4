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
