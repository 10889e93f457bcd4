package pattern

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// What was once passed over without a word; each count and each remainder is worked out here. The words are common practice.

// described is all that is said of a text.
func described(out *CheckedInstructions) (text string) {
	for _, f := range out.Findings {
		text += f.Description + "\n"
	}
	return text
}

// TestOrdersBesideANote: an order after a note in its line is worked, and a wrong count after it is found.
func TestOrdersBesideANote(t *testing.T) {
	orders := []struct {
		text string
		end  int
	}{{"K2tog across.", 30}, {"Dec 1 st at each end of next row.", 58}, {"BO 4 sts at beg of next 2 rows.", 52},
		{"Row 1: K2tog, k to end.", 59}, {"Cast off 5 sts, k to end.", 55}, {"Next row: Inc 1 st at each end.", 62}, {"Knit 4 rows.", 60},
		{"Work 6 rows even.", 60}, {"K2, m1, k to last 2 sts, m1, k2.", 62}, {"Place 20 sts on a holder.", 40}}
	for _, lead := range []string{"Note: ", "NOTE: ", "Notes: ", "Tip: ", "Note - "} {
		for _, note := range []string{"Work loosely.", "Slip the first st of each row.", "Read all sizes first.", "Keep the tension even."} {
			for _, o := range orders {
				for off := range 2 {
					text := "CO 60 sts.\n" + lead + note + " " + o.text + " " + strconv.Itoa(o.end+off) + " sts."
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (off == 0) || off == 0 && !single(out.EndStitches, o.end) {
						t.Errorf("%s\nagrees %v, %v stitches, %v: %s", text, out.Agrees, out.EndStitches, err, judgedText(out.Findings))
					}
				}
			}
		}
	}
}

// TestNeedlesThatDoNotPart: stitches that cannot lie evenly on so many needles are said to, and those that can are not.
func TestNeedlesThatDoNotPart(t *testing.T) {
	forms := []string{"CO C sts. Divide sts evenly over N needles.", "CO C sts, dividing evenly over N needles.",
		"CO C sts and divide evenly over N dpns. Join in the round.", "CO C sts. Arrange sts evenly on N needles.",
		"CO C sts. Join in the round, dividing sts evenly over N needles.", "CO C sts. Distribute the sts evenly onto N needles.",
		"CO C sts. Divide the C sts evenly over N needles."}
	for _, form := range forms {
		for count := 40; count < 64; count++ {
			for needles := 2; needles <= 5; needles++ {
				all := strconv.Itoa(count)
				text := strings.NewReplacer("CO C", "CO "+all, "the C", "the "+all, "N", strconv.Itoa(needles)).Replace(form)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				told := strings.Contains(described(&out), "evenly on "+strconv.Itoa(needles))
				if err != nil || !out.Agrees || told != (count%needles != 0) {
					t.Errorf("%s: %v %v %s", text, err, told, judgedText(out.Findings))
				}
				text = strings.Replace(text, "the "+all, "the "+strconv.Itoa(count+2), 1)
				out, err = CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if strings.Contains(form, "the C") && (err != nil || out.Agrees) {
					t.Errorf("agreed with: %s", text)
				}
			}
		}
	}
}

// TestOddRowsAreTold: an odd number of rows repeated back and forth is said to change sides, and is a mistake where a row
// has its side; rows that have been worked already are not worked until there are fewer.
func TestOddRowsAreTold(t *testing.T) {
	for rows := 2; rows <= 7; rows++ {
		for _, rule := range []bool{false, true} {
			text := "CO 60 sts.\n"
			for n := 1; n <= rows; n++ {
				switch {
				case n == 2 && rule:
					text += "Row 2 and all WS rows: Purl.\n"
				case n%2 == 0 && rule:
				default:
					text += fmt.Sprintf("Row %d: K%d, p to end.\n", n, n)
				}
			}
			repeat := fmt.Sprintf("Rep Rows 1-%d twice more.", rows)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text + repeat})
			odd := rows%2 == 1
			told := strings.Contains(described(&out), "the second time") || strings.Contains(described(&out), "every second time")
			if err != nil || told != odd || out.Agrees != !(odd && rule) {
				t.Errorf("%s%s: agrees %v, %s", text, repeat, out.Agrees, judgedText(out.Findings))
			}
			for n := 1; n <= 3*rows && !rule; n++ {
				until := fmt.Sprintf("Rep Rows 1-%d until %d rows have been worked in all.", rows, n)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text + until})
				if err != nil || out.Agrees != (n >= rows) || out.Agrees && !single(out.WorkedRows, n) {
					t.Errorf("%s%s: agrees %v after %v rows, %s", text, until, out.Agrees, out.WorkedRows, judgedText(out.Findings))
				}
			}
		}
	}
}
