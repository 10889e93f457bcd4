package pattern

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// editorsDrafts are twelve whole drafts by a technical editor who had not seen the reader, and how many questions are asked of each
// as it was sent: what another part does, "reversing all shapings", is not followed.
var editorsDrafts = []struct {
	file  string
	asked int
}{{"01_raglan", 0}, {"02_yoke", 0}, {"03_cardigan", 1}, {"04_child", 0}, {"05_toeup", 0},
	{"06_cuffdown", 0}, {"07_hat", 0},
	{"08_mitten", 2},
	{"09_shawl", 0}, {"10_cowl", 0}, {"11_toy", 0}, {"12_blanket", 0}}

// editorsAlarms are right lines of those drafts that are called mistaken.
const editorsAlarms = 2

// TestEditorsDrafts: all counts of the drafts are right.
func TestEditorsDrafts(t *testing.T) {
	alarms := 0
	for _, d := range editorsDrafts {
		text, err := os.ReadFile(filepath.Join("../../testdata/pattern/editor", d.file+".txt"))
		if err != nil {
			t.Fatal(err)
		}
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: string(text)})
		if err != nil || out.questions > d.asked {
			t.Errorf("%s: %v, %s", d.file, err, said(&out))
		}
		alarms += out.mistakes
	}
	if alarms > editorsAlarms {
		t.Errorf("%d right lines are called mistaken", alarms)
	}
}

// TestToldAboveCastOn: where the stitches are given and cast on, what stands above the cast-on is told, not worked.
func TestToldAboveCastOn(t *testing.T) {
	for _, told := range []string{
		"HAZEL LANE - a top-down pullover", "WILLOW HILL: a cowl in one piece",
		"sk2p = slip 1 knitwise, k2tog, pass slipped stitch over (2 sts decreased).",
		"kfb = knit into the front and back of the next st (1 st increased)", "M1L: make one left.", "About 48 cm around.",
		"sk2p: slip 1 knitwise, k2tog, pass slipped stitch over (2 sts decreased).", "You need 60 g of DK yarn and 4 mm needles.",
		"Written and top-down; slip markers as you come to them.", "N1 holds the instep sts, N2 holds the sole sts.",
		"ssk = slip 2 sts one at a time as if to knit, k them together through the back loops", "Gauge: 22 sts and 30 rows = 10 cm",
		"Finished square: 25 cm. Make 20 squares: 10 of Square A and 10 of Square B.", "One scarf, two lengths, and about 30 cm wide.",
	} {
		for n := 40; n < 70; n += 13 {
			for off := -1; off <= 1; off++ {
				agreeing(t, fmt.Sprintf("%s\n\nCO %d sts.\nKnit 2 rows. (%d sts)", told, n, n+off), []int{n}, false, off == 0, n)
			}
		}
	}
	for _, worked := range []string{"Knit to last 2 sts, k2tog.", "Row 1: K2tog, k to end.", "Dec 1 st at each end of next row.",
		"BO 4 sts, k to end."} {
		text := worked + "\nBO all 40 sts.\nCO 40 sts.\nKnit 2 rows. 40 sts." // all of them, though some are gone
		agreeing(t, text, []int{40}, false, false, 0)
	}
}

// TestRoundOverAllAgain: after a heel, below a heading, the rounds go over all stitches again. By hand: those of the heel and the others.
func TestRoundOverAllAgain(t *testing.T) {
	for _, heel := range []string{"The heel is worked back and forth over the last %d sts only.",
		"Heel is worked back and forth on the first %d sts."} {
		for _, again := range []string{"LEG\nResume working in the rnd on all sts.", "Join to work in the round on all %d sts.",
			"Leg\nContinue in the round over all sts.",
			"FOOT\nNow work in the round again over all %d sts.",
			"LEG\nJoin to work in the rnd on all %d sts.",
			"## Leg\nReturn to working in the round on all sts."} {
			for n := 20; n < 44; n += 11 {
				for off := -1; off <= 1; off++ {
					all := 2*n + 6
					text := fmt.Sprintf("CO %d sts and join.\nKnit 4 rnds.\n"+heel+"\nRow 1 (RS): K%d.\nRow 2: P%[2]d.\n",
						all, n, n)
					text += strings.ReplaceAll(again, "%d", strconv.Itoa(all))
					agreeing(t, text+fmt.Sprintf("\nKnit 10 rnds.\nBO all %d sts.", all+off), nil, false, off == 0, 0)
				}
			}
		}
	}
}

// TestEditorsWordings: sentences that an editor was asked about. Each has a place for a count that is right by hand.
func TestEditorsWordings(t *testing.T) {
	for _, w := range []struct {
		text string
		want int
	}{
		{"CO 176 sts and join. Work rib in the round (= knit 2, purl 2) for 5 cm.\nKnit 1 round, decreasing 8 sts evenly = %d sts.", 168},
		{"CO 96 sts. Work rib (= knit 2, purl 2) for 3 cm. Knit 1 row, dec 6 sts evenly. %d sts.", 90},
		{"CO 96 sts and join. Work rib in the rnd (k1, p1) for 8 rnds. Knit 1 rnd, inc 4 sts evenly. %d sts.", 100},
		{"CO 60 sts and join.\nKnit the other sleeve in the same way.\nKnit 1 rnd. %d sts.", 60},
		{"CO 60 sts and join. Knit 4 rnds. %d sts.\nMake the second sock the same.", 60},
		{"CO 20 sts and join, 10 sts on each needle.\nRnd 1: *K1, M1R, k to last st on needle, M1L, k1; rep from * on N2. %d sts.", 24},
		{"CO 50 sts.\nShort row 1 (RS): K39, w&t.\nShort row 2 (WS): P28, w&t.\nShort row 3: K to 1 st before wrapped st, w&t.\n" +
			"Short row 4: P to 1 st before wrapped st, w&t.\nRep short rows 3-4 8 more times. [%d sts unwrapped in the centre]", 10},
		{"CO 28 sts.\nRow 1 (RS): *Sl 1, k1; rep from * to end of flap, turn.\nRow 2: Purl. %d sts.", 28},
		{"CO 40 sts and join.\nRnd 1: K18, pm, k4, pm, k to end. 40 sts, with %d sts between markers.", 4},
		{"CO 40 sts and join.\nGusset rnd 1: K2tog, k to end. 39 sts\nGusset rnds 2 and 3: Knit.\nKnit 1 rnd. %d sts.", 39},
		{"CO 40 sts and join.\nToe rnd 1: K2tog, k to end. 39 sts\nToe rnds 2-4: Knit.\nKnit 1 rnd. %d sts.", 39},
		{"CO 60 sts.\nKnit 4 rows.\nBO all 60 sts.\nJoin the squares into 5 rows of 4.\n" +
			"Pick up and knit 40 sts along one edge.\nKnit 1 row. %d sts.", 40},
		{"CO 60 sts and join. Next round: Bind off 4 sts, knit until there are 22 sts on the right needle, bind off 8 sts, " +
			"knit until there are 22 sts after the bind-off, bind off the last 4 sts = %d sts.", 44},
		{"CO 40 sts and join.\nBody and sleeve inc rnd: *K9, m1, k1; rep from * to end. %d sts.", 44},
	} {
		for off := -1; off <= 1; off++ {
			text := fmt.Sprintf(w.text, w.want+off)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees != (off == 0) {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
		}
	}
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{
		Text: "CO 24 sts.\nBase triangles: *P2, turn, k2, turn, p3, turn, k3, turn, p4; rep from * to end."})
	if err != nil || out.mistakes > 0 || out.questions == 0 {
		t.Errorf("entrelac: %v, %s", err, said(&out))
	}
}
