package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// heelsOn are the ways to say that the last two rows of a heel go on, until all is worked. N is what the text says of the count.
var heelsOn = []string{
	"Continue in this way, working 1 more st before the dec each row, until all sts have been worked. N sts rem.",
	"Continue in this manner, working one more st before each dec, until all heel sts have been worked - N sts.",
	"Cont as est, working 1 more st before dec every row, until all sts are worked (N sts).",
	"Continue in this way until N sts rem.",
	"Cont in this manner until N sts remain on needle.",
	"Rep last 2 rows, working 1 more st before the dec each time, until all sts have been worked. N sts.",
	"Continue in this way until all sts have been worked. N sts rem.",
	"Cont in like manner, working one more st between decreases, until all sts have been worked. N sts rem.",
	"Continue in this fashion, working one more st between decreases each row, until all sts are worked; N sts rem.",
}

// heelOf is a heel of two rows and more in the usual numbers (common practice): n stitches are worked before the first decrease, p
// before the second, and side stitches are left at either end. All its rows are written, or only so many.
func heelOf(n, p, side, rows int) (text string, end, all int) {
	var b strings.Builder
	fmt.Fprintf(&b, "CO %d sts.\nRow 1 (RS): K%d, ssk, k1, turn.\nRow 2: Sl 1, p%d, p2tog, p1, turn.\n", n+3+side, n, p)
	for all = 2; all < 2+side/2*2; all++ {
		if all < rows {
			k := p + all - 1
			fmt.Fprintf(&b, "Row %d: Sl 1, %s, turn.\n", all+1, [2]string{fmt.Sprintf("k%d, ssk, k1", k), fmt.Sprintf("p%d, p2tog, p1", k)}[all%2])
		}
	}
	return b.String(), n + 3 + side - all, all
}

// TestHeelsGoOn: a heel whose last rows are continued comes to the count that it has with all its rows written, and no other one is
// agreed with.
func TestHeelsGoOn(t *testing.T) {
	tried, cases := 0, 0
	for p := 3; p < 8; p++ {
		for side := 4; side < 13; side++ {
			for written := 2; written < 6; written += 2 {
				cases++
				if cases%knittest.Sweep(1, 4) != 0 {
					continue
				}
				n := p + 3 + side - 1 // as many are left at the other end
				full, end, all := heelOf(n, p, side, 99)
				out := readHeel(t, full+"Next row: Knit.")
				if out.EndStitches[0] != end || side%2 == 0 && !out.Agrees {
					t.Fatalf("written out %v, not %d: %s\n%s", out.EndStitches, end, judgedText(out.Findings), full)
				}
				start, _, _ := heelOf(n, p, side, written)
				for _, form := range heelsOn {
					for off := -3; off <= 3; off++ {
						said := strings.ReplaceAll(form, "N ", fmt.Sprint(end+off)+" ")
						text := start + said + "\nNext row: Knit."
						out := readHeel(t, text)
						tried++
						// An odd stitch at each end may be taken by two rows that end with their decrease.
						right := off == 0 && side%2 == 0 || off == -2 && side%2 == 1
						if out.Agrees != right || right && (out.EndStitches[0] != end+off || out.WorkedRows[0] != all+1+side%2*2) {
							t.Errorf("%v, %v after %v rows, not %d after %d: %s\n%s", out.Agrees, out.EndStitches, out.WorkedRows, end, all+1,
								judgedText(out.Findings), text)
						}
					}
				}
			}
		}
	}
	if tried < knittest.Sweep(4000, 800) {
		t.Errorf("only %d heels", tried)
	}
}

func readHeel(t *testing.T, text string) CheckedInstructions {
	t.Helper()
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return out
}

// TestHeelsGrow: what is said to be more before each decrease is what the rows have more, or nothing.
func TestHeelsGrow(t *testing.T) {
	start, end, _ := heelOf(17, 3, 12, 4)
	for _, c := range []struct {
		said  string
		right bool
	}{
		{"1 more st before the dec each row", true}, {"one more st before each dec", true}, {"2 more sts before the dec each row", false},
		{"1 fewer st before the dec each row", false}, {"3 more sts before each dec", false}, {"2 more sts before each dec", true},
	} {
		out := readHeel(t, start+fmt.Sprintf("Continue in this way, working %s, until all sts have been worked. %d sts rem.", c.said, end))
		if out.Agrees != c.right {
			t.Errorf("%s: %v, %s", c.said, out.Agrees, judgedText(out.Findings))
		}
	}
	out := readHeel(t, start+"Rep Rows 3 and 4 6 more times, working 1 more st before the dec each row.")
	if out.Agrees || !strings.Contains(everySaid(&out), "after 10 rows more") {
		t.Errorf("too often: %s", judgedText(out.Findings))
	}
	out = readHeel(t, start+"Rep Rows 3 and 4 5 more times, working 1 more st before the dec each row. 18 sts.")
	if !out.Agrees {
		t.Errorf("a number of times: %s", judgedText(out.Findings))
	}
}
