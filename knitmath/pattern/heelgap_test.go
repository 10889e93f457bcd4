package pattern

import (
	"fmt"
	"strconv"
	"testing"
)

// heel writes a turned heel by its numbers and says, by its own reckoning, whether each decrease after the first
// two lies across the gap that the turn before it left. n stitches are worked before the first decrease of a
// flap of n+slack+3, and back to a middle of p.
func heel(n, p, third, fourth int, dec, pdec string) (text string, closed bool) {
	text = fmt.Sprintf("CO %d sts.\nRow 1 (RS): K%d, %s, k1, turn.\nRow 2: Sl 1, p%d, %s, p1, turn.\nRow 3: Sl 1, k%d, %s, k1, turn.\n"+
		"Row 4: Sl 1, p%d, %s, p1, turn.", 2*n-p+1, n, dec, p, pdec, third, dec, fourth, pdec)
	// Row 2 leaves its slipped stitch, p, the decrease and one: the gap of row 1's turn is after p+3. Row 3 has
	// one more of its own when row 4 begins.
	return text, across(1+third, p+3) && across(1+fourth, third+3)
}

// across reports whether a decrease of two that begins after so many stitches has the gap in its middle.
func across(begins, gap int) bool { return begins == gap-1 }

// TestHeelsCloseTheirGaps: a decrease of a heel takes a stitch from either side of the gap, as every heel of
// this kind is turned (common practice); else there is a hole, though all counts agree.
func TestHeelsCloseTheirGaps(t *testing.T) {
	tried := 0
	for _, p := range []int{3, 5, 6} {
		for n := p + 9; n < p+12; n++ {
			for third := p - 1; third < p+4; third++ {
				for fourth := third; fourth < third+3; fourth++ {
					for _, dec := range [...][2]string{{"ssk", "p2tog"}, {"skpo", "p2tog"}, {"sl 1, k1, psso", "p2tog"}} {
						text, closed := heel(n, p, third, fourth, dec[0], dec[1])
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
						if tried++; err != nil || out.Agrees != closed {
							t.Errorf("closed %v: %v, %s\n%s", closed, err, said(&out), text)
						}
					}
				}
			}
		}
	}
	if tried < 400 {
		t.Errorf("only %d heels", tried)
	}
}

// TestTheseRows: a number of rows that are said to form a pattern is that of those above, or of the last of them.
func TestTheseRows(t *testing.T) {
	for set := 2; set < 9; set++ {
		text := "CO 24 sts.\n"
		for row := 1; row <= set; row++ {
			text += "Row " + strconv.Itoa(row) + ": Knit.\n"
		}
		for said := 2; said < 12; said++ {
			for _, words := range []string{"form the pattern", "set the pattern", "form patt"} {
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text + "These " + strconv.Itoa(said) + " rows " + words + "."})
				wrong := said > set || set%2 == 0 && said%2 == 1
				if err != nil || wrong != (out.mistakes > 0) {
					t.Errorf("these %d rows after %d: %v", said, set, out.Findings)
				}
			}
		}
	}
}

// TestUntilNobodyKnows: rows are repeated until something that can be seen or measured; until anything else is asked.
func TestUntilNobodyKnows(t *testing.T) {
	for _, until := range []string{"the moon is full", "Tuesday", "snarf", "glorped twice over the brim", "somebody calls"} {
		for _, rep := range []string{"Rep Rows 1 and 2", "Rep last 2 rows", "Repeat these 2 rows", "Work Rows 1 and 2"} {
			out, err := CheckInstructions(t.Context(),
				CheckInstructionsInput{Text: "CO 40 sts.\nRow 1: Knit.\nRow 2: Purl.\n" + rep + " until " + until + "."})
			if err != nil || out.Agrees {
				t.Errorf("agreed with %s until %s: %v", rep, until, err)
			}
		}
	}
	for _, until := range []string{"piece measures 10 cm", "you are nearly out of yarn", "work is square", "it fits", "desired length",
		"32 heel rows are done", "the first ball is used up", "the strip is as long as the edge"} {
		out, err := CheckInstructions(t.Context(),
			CheckInstructionsInput{Text: "CO 40 sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 until " + until + "."})
		if err != nil || !out.Agrees {
			t.Errorf("until %s: %v %s", until, err, said(&out))
		}
	}
}
