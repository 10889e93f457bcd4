package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
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

// TestPartsBetweenBoundOffStitches: 141 stitches of which 6 are cast off at each armhole leave 129: fronts of 33 and
// a back of 63. A row that divides them otherwise is found where its parts are told, though the count is right.
func TestPartsBetweenBoundOffStitches(t *testing.T) {
	for _, form := range []string{
		"K%[1]d, cast off 6 sts, k%[2]d, cast off 6 sts, knit to end. 129 sts remain: 63 sts for back and 33 sts for each front.",
		"K%[1]d, BO 6 sts, knit until there are %[2]d sts on right needle, BO 6 sts, knit to end. (129 sts: 33 each front, 63 back)",
		"K%[1]d, BO 6 sts, knit until there are %[2]d sts on right needle after bind-off, BO 6 sts, k to end. " +
			"129 sts: 63 for back, 33 for each front.",
	} {
		for front := 30; front <= 36; front++ {
			for back := 60; back <= 66; back++ {
				text := "Cast on 141 sts.\nKnit 8 rows.\nNext row: " + fmt.Sprintf(form, front, back)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if right := front == 33 && back == 63; out.Agrees != right || !right && out.mistakes != 1 || out.questions > 0 {
					t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
				}
			}
		}
	}
}

// TestHalvesBetweenMarkers: 104 stitches halved by a marker, of which each side loses 2, are 50 and 50.
func TestHalvesBetweenMarkers(t *testing.T) {
	for _, row := range []string{
		"*K1, ssk, k to 3 sts before m, k2tog, k1, sm; rep from * once more.",
		"[K1, ssk, k to 3 sts before m, k2tog, k1, sm] twice.",
	} {
		for _, form := range []string{
			" 100 sts; %d sts front and %d sts back.", " 100 sts: %d for front and %d for back.", " (100 sts: %d front, %d back)",
		} {
			for front := 44; front <= 56; front++ {
				text := "Cast on 104 sts, pm and join in the rnd.\nRnd 1: K52, pm, k52.\nRnd 2: " + row + fmt.Sprintf(form, front, 100-front)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, Construction: stitch.InTheRound})
				if err != nil {
					t.Fatal(err)
				}
				if right := front == 50; out.Agrees != right || !right && out.mistakes != 1 || out.questions > 0 {
					t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
				}
			}
		}
	}
}
