package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestMarkersLedIn: the row that places a raglan's markers, led in with many words. By hand: 22 + 48 + 22 + 48 are 140, and each of
// four sections gains 2: 148. A row that takes another number, or a wrong count, is told.
func TestMarkersLedIn(t *testing.T) {
	for _, lead := range []string{"Rnd 1: Place markers: ", "Rnd 1: place raglan markers: ", "Rnd 1, placing markers: ",
		"Place 4 markers as follows: ",
		"Rnd 1 (place markers): ", "Set-up rnd: Place the four raglan markers: ", "Place raglan markers: ", "Next rnd, place raglan markers: ",
		"Rnd 1: Set up raglan: ", "Rnd 1: Establish raglan lines: ", "Raglan set-up rnd: ", "Marker rnd: ", "Set raglan markers: "} {
		for second := 46; second <= 50; second++ {
			for claim := 147; claim <= 149; claim++ {
				text := fmt.Sprintf("CO 140 sts and join.\n%sk22, pm, k%d, pm, k22, pm, k48.\nNext rnd: "+
					"*K1, M1L, k to 1 st before m, M1R, k1, sm; rep from * 3 more times. (%d sts)", lead, second, claim)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if right := second == 48 && claim == 148; err != nil || out.Agrees != right || out.questions > 0 || !right && out.mistakes == 0 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
}

// TestMarkersOfAnUnreadRow: a row that cannot be read may have placed markers. By hand: what follows gains 8 in each of 20
// rounds from 140, of which no right row is called mistaken; a wrong count at the end is.
func TestMarkersOfAnUnreadRow(t *testing.T) {
	for _, row := range []string{"*K1, M1L, k to 1 st before m, M1R, k1, sm; rep from * 3 more times.",
		"[K1, M1L, k to 1 st before m, M1R, k1, sm] 4 times."} {
		for end := 298; end <= 302; end++ {
			text := fmt.Sprintf("CO 140 sts and join.\nRnd 1: flurble the thing.\nRnd 2: %s (148 sts)\nRnd 3: Knit.\n"+
				"Work Rnds 2 & 3 a total of 20 times. (%d sts)\nKnit 1 rnd.", row, end)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			right := end == 300
			if err != nil || out.Agrees || right != (out.mistakes == 0) || out.questions != 1 {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
			for _, f := range out.Findings {
				if f.Kind == KindMistake && !strings.Contains(f.Text, fmt.Sprint(end)) {
					t.Errorf("%q: %s", text, said(&out))
				}
			}
		}
	}
}
