package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestButtonholesAreClosedAsTheyWereOpened: buttonholes over two rows, each of so many stitches, closed with as many, with others, or
// with others and a count that says so. The widths are those of this sweep; the ways of writing are common practice.
func TestButtonholesAreClosedAsTheyWereOpened(t *testing.T) {
	opened := []string{"Row 1: K8, [BO #, k8] 4 times.", "Row 1 (buttonholes): K8, *BO # sts, k8; rep from * to end.",
		"Row 1: Knit 8, (cast off # sts, knit 8) three times, cast off # sts, knit to end."}
	closed := []string{"Row 2: K8, [CO #, k8] 4 times.", "Row 2: K8, *cast on # sts, k8; rep from * to end.",
		"Row 2: K8, (CO # sts, k8) 4 times."}
	one := [][2]string{{"Row 1: K4, BO #, k to end.", "Row 2: K to BO sts, CO # sts, k4."},
		{"Row 1 (RS): K5, bind off # sts, k to end.", "Row 2: Knit to bound-off sts, cast on # sts, knit to end."},
		{"Buttonhole row: K3, cast off # sts, k to end.", "Next row: K to last 3 sts, cast on # sts, k3."}}
	text := func(row string, n int) string { return strings.ReplaceAll(row, "#", fmt.Sprint(n)) }
	for w := 1; w <= 4; w++ {
		for v := 1; v <= 5; v++ {
			start, change := 40+4*w, 4*(v-w)
			for _, o := range opened {
				for _, c := range closed {
					holesAgree(t, fmt.Sprintf("CO %d sts.\n%s\n%s", start, text(o, w), text(c, v)), start+change, w == v)
				}
			}
			for _, rows := range one {
				holesAgree(t, fmt.Sprintf("CO 48 sts.\n%s\n%s", text(rows[0], w), text(rows[1], v)), 48+v-w, w == v)
			}
		}
	}
}

// holesAgree wants a text agreed with where it is right, else only with the count behind it.
func holesAgree(t *testing.T, text string, end int, right bool) {
	t.Helper()
	for tail, agrees := range map[string]bool{"": right, fmt.Sprintf(" %d sts.", end): true, fmt.Sprintf(" %d sts.", end+1): false} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text + tail})
		if err != nil || out.Agrees != agrees || agrees && !single(out.EndStitches, end) {
			t.Errorf("agrees %v, %v for %d: %q %v %s", out.Agrees, out.EndStitches, end, text+tail, err, judgedText(out.Findings))
		}
	}
}
