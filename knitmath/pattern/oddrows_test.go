package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestOddRowsToALength: rows that are repeated back and forth to a length keep their sides where they are an even
// number; where they are odd, and more than one, the text is wrong in what it says of their sides.
func TestOddRowsToALength(t *testing.T) {
	for _, cast := range []string{"Cast on 57 sts.", "Cast on 57 (61, 65) sts."} {
		for _, end := range []string{"until work measures 150 cm.", "for 30 cm.", "to desired length."} {
			for rows := 1; rows <= 7; rows++ {
				for _, sided := range []bool{true, false} {
					var b strings.Builder
					b.WriteString(cast + "\n")
					for n := 1; n <= rows; n++ {
						side := ""
						if sided {
							side = [...]string{" (WS)", " (RS)"}[n%2]
						}
						fmt.Fprintf(&b, "Row %d%s: %s.\n", n, side, [...]string{"Purl", "Knit"}[n%2])
					}
					fmt.Fprintf(&b, "Rep Rows 1-%d %s\nCast off.", rows, end)
					text := strings.Replace(b.String(), "Rows 1-1 ", "Row 1 ", 1)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil {
						t.Fatal(err)
					}
					wrong := sided && rows%2 == 1 && rows > 1
					if out.Agrees == wrong || wrong && (out.mistakes != 1 || !strings.Contains(said(&out), "SIDE_DISAGREES")) || out.questions > 0 {
						t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
					}
				}
			}
		}
	}
}
