package pattern

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The ways to leave no stitch of 80 on the needle, what may stand between, and what may follow that needs some. All
// words are common practice.
var (
	emptying = []string{"Bind off 20 sts at beg of next 4 rows.", "Bind off.", "Cast off loosely.", "BO all sts.", "Bind off 80 sts.",
		"Break yarn and draw through rem sts.", "Cut yarn and draw through rem 80 sts.", "Place all sts on a holder.",
		"Next row: Bind off all sts.", "Leave these 80 sts on waste yarn.", "Graft the sts.",
		"Cast off 40 sts at the beginning of the next 2 rows."}
	finishing = []string{"", "Fasten off.\n", "Break yarn.\n", "Cut yarn, leaving a tail.\n", "Weave in ends.\n", "\n", "SLEEVES\n",
		"\nLEFT FRONT\n", "Fasten off.\n\nNeckband:\n", "Collar\n"}
	needing = []string{"Knit 10 rows.", "Work 4 rows in k2, p2 rib.", "Bind off in rib.", "Bind off rem sts.", "Cast off.",
		"Work 6 rows in St st.",
		"Next row: Knit.", "Next row (RS): K to end.", "Row 1: *K2, p2; rep from * to end.", "Work even until piece measures 40 cm.",
		"Purl 1 row.", "Leave rem sts on a holder for neck.", "Dec 1 st at each end of next 3 rows.", "Row 3: Purl.\nRow 4: Knit.",
		"K2tog, k to last 2 sts, ssk.", "Knit 2 rows. Bind off loosely."}
	otherStitches = []string{"SLEEVE\nMake as given for the other.", "Pick up and knit 30 sts along the edge.\nKnit 10 rows.\nBind off.",
		"Cast on 30 sts.\nKnit 10 rows.\nCast off.", "Make a second piece the same.", "Sew the seams.\nWith 30 sts on the needle, knit 10 rows."}
)

// TestRowsOnNoStitch: after the last stitch has left the needle no row can be worked, unless another piece begins.
func TestRowsOnNoStitch(t *testing.T) {
	ask := func(text string) CheckedInstructions {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		return out
	}
	n, agreed := 0, 0
	for _, lead := range []string{"Cast on 80 sts.\nKnit 10 rows.\n", "CO 80 sts.\nRow 1: Knit.\nRow 2: Purl.\n",
		"Cast on 80 sts and join in the rnd.\nKnit 4 rnds.\n"} {
		for _, e := range emptying {
			for _, f := range finishing {
				for _, w := range needing {
					if n++; n%knittest.Sweep(1, 7) != 0 {
						continue
					}
					if text := lead + e + "\n" + f + w; ask(text).Agrees {
						agreed++
						t.Errorf("agrees with %q", text)
					}
				}
			}
			for _, o := range otherStitches {
				for _, found := range ask(lead + e + "\n" + o).Findings {
					if found.Description == "no stitch is on the needle: which stitches are these?" || found.Kind == KindMistake {
						t.Errorf("%q: %s", lead+e+"\n"+o, judgedText([]Finding{found}))
					}
				}
			}
		}
	}
	t.Logf("%d texts, %d agreed with", n, agreed)
	if ask("Cast on 0 sts.\nKnit 4 rows.").Agrees {
		t.Error("rows are worked on a cast-on of no stitch")
	}
}
