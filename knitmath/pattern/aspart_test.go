package pattern

import "testing"

// TestWorkedAsAnotherPart: a part that is worked as one before it up to a place has the count that is said
// there, if that part had it; a count that it never had, or none, is asked about.
func TestWorkedAsAnotherPart(t *testing.T) {
	const back = "BACK\nCast on 97 sts.\nWork in st st until work measures 30 cm.\nCast off 5 sts at beg of next 2 rows. 87 sts.\n" +
		"Dec 1 st at each end of next 4 rows. 79 sts.\nWork 40 rows.\nLeave sts on a holder.\n\nFRONT\n"
	verbs := []string{"Work as given for back", "Work as for Back", "Work same as back", "Cast on and work as for back",
		"Work exactly as for Back",
		"Work as back", "Make as for back", "Follow instructions for Back", "Work the same as for Back", "Work front as given for back",
		"Cast on and work as given for the back"}
	places := []string{"until armholes measure 12 cm", "until front measures 42 cm from beg", "to neck shaping", "to armhole shaping",
		"until armhole shaping is complete", "until 8 rows less than Back to shoulder have been worked", "to start of shoulder shaping",
		"until armholes measure 12 cm, ending with a WS row", "until work measures 40 cm, ending with RS facing for next row",
		"until all armhole decreases have been worked", "till armhole measures 5 in"}
	var texts []worded
	for _, v := range verbs {
		for _, p := range places {
			texts = append(texts, worded{back + v + " " + p + ". 79 sts.\nNext row: K79.", nil, false, []int{79}, nil},
				worded{back + v + " " + p + ": 79 sts.\nNext row: K79.", nil, false, []int{79}, nil},
				worded{back + v + " " + p + " (87 sts).\nNext row: K87.", nil, false, []int{87}, nil})
			for _, said := range []string{". 80 sts.\nNext row: K80.", ".\nNext row: K79."} {
				if out := asked(t, back+v+" "+p+said, 0, 0); out.Agrees {
					t.Errorf("%s %s%s: agreed with", v, p, said)
				}
			}
		}
	}
	askWorded(t, texts, 100, 0)
}
