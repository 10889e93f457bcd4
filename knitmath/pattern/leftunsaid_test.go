package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestStitchesLeftForAnotherPiece: a piece that is neither bound off nor put aside when the next is cast on under a heading is asked
// about, whatever numbers and lengths stand elsewhere, and is not where it is, or where something is said of live stitches later. All
// words are common practice.
func TestStitchesLeftForAnotherPiece(t *testing.T) {
	rows := []string{"Knit %d rows.",
		"Work even until piece measures %d cm.",
		"Row 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 until work measures %d cm.",
		"Work in St st for %d cm.", "Work in garter st until %d cm from cast-on edge.",
		"Row 1 (RS): Knit.\nRow 2: Purl.\nWork %d more rows in St st.",
		"Rib %d rows."}
	ends := []string{"BO all sts.\n", "Bind off loosely.\n", "Cast off.\n", "Leave sts on a holder.\n", "Place all sts on waste yarn.\n",
		"Cast off loosely. Fasten off.\n"}
	none := []string{"", "\n", "Cut yarn.\n", "Break yarn, leaving a tail.\n"}
	names := [][2]string{{"BACK", "FRONT"}, {"Pocket", "Back"}, {"Sleeves:", "Collar:"}, {"Left Front", "Right Front"}}
	later := []string{"Graft the toes.\n", "Place the held sts on the needle.\n", "Join with a three-needle bind-off.\n"}
	n, agreed := 0, 0
	for _, name := range names {
		for _, row := range rows {
			for _, count := range []int{24, 43, 70} {
				for i, other := range []int{43, 52} {
					if n++; n%knittest.Sweep(1, 5) != 0 {
						continue
					}
					first := fmt.Sprintf("%s\nCO %d sts.\n"+row+"\n", name[0], count, 10*(i+4))
					second := fmt.Sprintf("%s\nCast on %d sts.\n"+row+"\n", name[1], other, 70)
					for _, end := range ends {
						agreed += leftAgrees(t, first+end+second+"Cast off.", true)
					}
					for _, end := range none {
						leftAgrees(t, first+end+second+"Cast off.", false)
					}
					for _, end := range later {
						leftAgrees(t, first+second+end, true)
					}
				}
			}
		}
	}
	t.Logf("%d texts, %d right ones agreed with", n, agreed)
}

// leftAgrees asks a text, and wants no question of stitches that are left where it is right, and one where it is not.
func leftAgrees(t *testing.T, text string, right bool) int {
	t.Helper()
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	asked := false
	for _, f := range out.Findings {
		asked = asked || f.Kind == KindQuestion && len(f.Description) > 12 && f.Description[:12] == "what becomes"
	}
	if err != nil || right == asked || !right && out.Agrees {
		t.Errorf("asked %v, agrees %v, of %q: %v %s", asked, out.Agrees, text, err, judgedText(out.Findings))
	}
	return bit(out.Agrees)
}

// TestSeamOnLiveStitches: stitches that are on the needle when a seam is sewn and others are picked up are asked for, unless they are
// bound off before it, put on a holder, or said to stay on the needle; the counts are by hand.
func TestSeamOnLiveStitches(t *testing.T) {
	for _, seam := range []string{"Sew seam.", "Seam the sides.", "Sew the raglan seams."} {
		for _, pick := range []string{"Pick up and knit 22 sts around the opening.", "With RS facing, pick up 22 sts along edge."} {
			for before, end := range map[string]int{"": -1, "BO all sts. ": 22, "Place sts on hold. ": 22, "Leave sts on needle. ": 60} {
				text := "CO 38 sts. Knit 10 rows. " + before + seam + "\n" + pick + " 60 sts."
				if end == 22 {
					text = strings.TrimSuffix(text, "60 sts.") + "22 sts."
				}
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || out.Agrees != (end > 0) || end < 0 && out.questions != 1 {
					t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
				}
			}
		}
	}
}

// TestLastStitchUnderAHeading: one stitch that remains is fastened off, and not asked for, whatever heading follows.
func TestLastStitchUnderAHeading(t *testing.T) {
	for _, worked := range []string{"Row 1: K2tog, k to end.\nRep Row 1 until 1 st remains.\n",
		"Dec 1 st at beg of every row until 1 st remains.\n"} {
		for _, then := range []string{"Border\nCO 20 sts.\nKnit 2 rows.", "Second ear\nCO 31 sts.\nKnit 2 rows. 31 sts.",
			"Finishing\nWeave in ends.",
			"Edging\nPick up and knit 20 sts along the edge. 20 sts."} {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 31 sts.\n" + worked + then})
			if err != nil || !out.Agrees {
				t.Errorf("%q: %v, %s", worked+then, err, judgedText(out.Findings))
			}
		}
	}
}
