package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestPartsNamedAfterFrontMatter: parts that are knit, and whose names begin as headings of front matter do, are read:
// whatever leads them in and however the line goes on. Common practice.
func TestPartsNamedAfterFrontMatter(t *testing.T) {
	names := []string{"Button band", "Button border", "Buttonhole band", "Buttonband", "Button tabs", "Button placket", "Needle edge",
		"Tension band", "Yarn over edging", "Blocking edge", "BUTTON BAND", "Button band (right front)"}
	brings := []string{"CO 95 sts.", "With RS facing, pick up and knit 95 sts along the front edge.", "Pick up and knit 95 sts along the hem.",
		"Using smaller needles and with RS facing, pick up and knit 95 sts along the front edge.", "With MC, cast on 95 sts."}
	rows := []string{" Next row: K#.", "\nRow 1: K#.", "\nNext row (WS): K#.", " Knit 1 row. Next row: K#."}
	for _, name := range names {
		for _, lead := range []string{": ", ":\n", "\n"} {
			if lead == "\n" && strings.ToUpper(name) != name {
				continue
			}
			for _, b := range brings {
				for _, row := range rows {
					for by := -2; by <= 2; by++ {
						text := "CO 30 sts. BO all.\n" + name + lead + b + strings.Replace(row, "#", fmt.Sprint(95+by), 1)
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
						if err != nil || out.Agrees != (by == 0) {
							t.Errorf("off by %d: agrees is %v, %v %s\n%s", by, out.Agrees, err, said(&out), text)
						}
					}
				}
			}
		}
	}
}

// TestFrontMatterWithOrders: what is read by people alone is passed over still.
func TestFrontMatterWithOrders(t *testing.T) {
	for _, line := range []string{"Buttons: Sew 5 buttons on.", "Blocking: Soak, pin out, leave to dry.", "Yarn: 5 balls, 50 g each.",
		"Notes: pick up and knit 3 sts for every 4 rows on bands.", "Tension: cast on 30 sts and knit 40 rows.",
		"Gauge: 22 sts and 30 rows = 10 cm.", "Needles: 4 mm, or size to obtain gauge.", "Finished: 50 cm, 20 in."} {
		text := "CO 30 sts. Knit 3 rows. BO all.\n" + line
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees || out.WorkedRows[0] != 4 {
			t.Errorf("%v rows, %v %s\n%s", out.WorkedRows, err, said(&out), text)
		}
	}
}
