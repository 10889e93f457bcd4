package pattern

import "testing"

// TestWorkedAndPutAside: a row of 106 whose first 22 stitches are worked and put aside, then 6 bound off, 50 worked and 28 left: by
// whatever words. A wrong number is planted in each place.
func TestWorkedAndPutAside(t *testing.T) {
	right, planted := 0, 0
	for _, aside := range []string{" and place on holder", ", place on a holder", " and leave on waste yarn",
		" and slip these sts onto a holder",
		" and place them on a holder", ", place these 22 sts on a holder", " and put them on a thread for right front"} {
		for _, off := range []string{"BO 6", "bind off 6 sts", "cast off next 6 sts"} {
			for _, back := range []string{"k until there are 50 sts on right needle", "k50 including st on needle after bind-off",
				"k50 (including st left on right needle)", "k50 (incl st used in casting off)", "k50"} {
				for _, rest := range []string{"turn. Leave rem 28 sts on second holder.", "turn, leaving rem 28 sts on a holder.",
					"turn. Place the rest on a holder."} {
					for off1 := -1; off1 < 2; off1++ {
						text := "Next row (RS): K22" + aside + ", " + off + ", " + back + " for back, " + rest + "\nPurl 1 row. 50 sts."
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{106 + off1}})
						told := rest[len(rest)-len("rest on a holder."):] != "rest on a holder." // how many are left, so that one more or fewer shows
						if off1 == 0 {
							right++
						} else if told {
							planted++
						}
						if err != nil || off1 == 0 && !out.Agrees || off1 != 0 && told && out.Agrees {
							t.Errorf("%d: %v %s\n%s", 106+off1, err, said(&out), text)
						}
					}
				}
			}
		}
	}
	t.Logf("%d right and %d planted", right, planted)
}
