package pattern

import (
	"slices"
	"strings"
	"testing"
)

// TestSizesParted: the numbers of the sizes parted by commas, dashes, strokes or colons are the same sizes, and one that is wrong
// is found in each. Dashes are the way of Australian booklets (common practice).
func TestSizesParted(t *testing.T) {
	const head = "CO 56 (60, 64, 68) sts.\nKnit 2 rows.\n"
	for _, tail := range []struct{ right, wrong string }{
		{"Next row: K27 (29, 31, 33), k2tog, k to end. 55 (59, 63, 67) sts.", "55 (59, 63, 68) sts"},
		{"Next row: K5 (6, 7, 8), [inc in next st, k4] 9 times, k to end. 65 (69, 73, 77) sts.", "65 (68, 73, 77) sts"},
		{"Next row: K 27 (29, 31, 33), cast off 2, k to end. 54 (58, 62, 66) sts.", "54 (58, 62, 65) sts"},
		{"Dec 1 st at each end of every 4th row 5 (6, 7, 8) times. 46 (48, 50, 52) sts.", "46 (48, 50, 54) sts"},
		{"Dec 1 st at each end of next and foll 5 (6, 7, 8) alt rows. 44 (46, 48, 50) sts.", "44 (47, 48, 50) sts"},
		{"Dec one st at armhole edge in next row, then in every foll alt row 5 (6, 7, 8) times. 50 (53, 56, 59) sts.", "50 (53, 56, 58) sts"},
		{"Cast off 5 (6, 7, 8) sts at beg of next 2 rows, then 3 (3, 4, 4) sts at beg of foll 2 rows. 40 (42, 42, 44) sts.",
			"40 (42, 43, 44) sts"},
		{"Rep last row 5 (6, 7, 8) times. 56 (60, 64, 68) sts.", "57 (60, 64, 68) sts"},
		{"Next row: K10, *k2tog, k3; rep from * 4 (4, 5, 5) times, k to end. 51 (55, 58, 62) sts.", "51 (55, 59, 62) sts"},
		{"Knit 5 rows, 1st row is wrong side. 56 (60, 64, 68) sts.", "56 (60, 64, 67) sts"},
		{"Purl 3 (3, 5, 5) rows, the 1st row being a WS row. 56 (60, 64, 68) sts.", "56 (60, 63, 68) sts"},
	} {
		at := strings.LastIndex(tail.right, strings.SplitN(tail.right[strings.LastIndex(tail.right, ". ")+2:], ".", 2)[0])
		for _, sign := range []string{", ", "-", " - ", "/", ":"} {
			right := head + tail.right
			wrong := head + tail.right[:at] + tail.wrong + "."
			a, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: sizesParted(right, sign)})
			comma, _ := CheckInstructions(t.Context(), CheckInstructionsInput{Text: right})
			if err != nil || !a.Agrees || !slices.Equal(a.EndStitches, comma.EndStitches) || !slices.Equal(a.WorkedRows, comma.WorkedRows) {
				t.Errorf("%q: %v %s\n%s", sign, err, said(&a), sizesParted(right, sign))
			}
			b, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: sizesParted(wrong, sign)})
			if err != nil || b.Agrees || b.mistakes != 1 {
				t.Errorf("%q agrees with what is planted: %v %s\n%s", sign, err, said(&b), sizesParted(wrong, sign))
			}
		}
	}
}

// sizesParted is a text with another sign between the numbers in its round brackets.
func sizesParted(text, sign string) string {
	var b strings.Builder
	inside := false
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case c == '(' || c == ')':
			inside = c == '('
			b.WriteByte(c)
		case inside && c == ',':
			b.WriteString(sign)
			i++
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}
