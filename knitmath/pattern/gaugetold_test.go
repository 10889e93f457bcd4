package pattern

import "testing"

// TestGaugeTold: a gauge before the cast-on, or after it, is no count.
func TestGaugeTold(t *testing.T) {
	for _, gauge := range []string{"22 sts and 32 rnds = 10 cm.", "17 sts to 10 cm.", "20 sts & 28 rows = 4 inches.", "24 sts per 10 cm.",
		"22 sts x 30 rows = 10 cm.", "18 sts over 10 cm."} {
		for _, form := range []string{"Woman's size. %\n\nCO 40 sts.\nKnit 2 rows. 40 sts.", "%\nCast on 40 sts.\nKnit 2 rows. 40 sts.",
			"Approx 75 x 90 cm. %\nCO 40 sts.\nKnit 2 rows. 40 sts.", "CO 40 sts.\n%\nKnit 2 rows. 40 sts."} {
			at := 0
			for form[at] != '%' {
				at++
			}
			told(t, form[:at]+gauge+form[at+1:], true)
		}
	}
}
