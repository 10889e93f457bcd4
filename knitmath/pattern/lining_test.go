package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestPocketLinings: stitches of a lining take the place of as many that were put aside. By hand: 36 and those of the opening; a
// lining of another number shows in the count. Before, the lining was knit of the stitches on the needle, in silence.
func TestPocketLinings(t *testing.T) {
	for n := 18; n < 26; n++ {
		for off := -1; off <= 1; off++ {
			for _, form := range []string{
				"K12, place next %d sts on holder, knit across %d sts of one pocket lining, k24. %d sts.",
				"K12, slip next %d sts onto a holder, k across %d sts of first pocket lining, k to end. %d sts.",
				"K12, place next %d sts on a holder, knit %d pocket lining sts, k24. %d sts.",
				"K12, sl next %d sts on a stitch holder and in place of these k across %d sts of pocket lining, k24. %d sts.",
			} {
				text := "Pocket row (RS): " + fmt.Sprintf(form, n, n+off, 36+n) + "\nNext row: Purl."
				agreeing(t, text, []int{36 + n}, false, off == 0, 36+n)
			}
		}
	}
}

// TestSecondWaitsAsTheFirst: where the first of two pieces is taken from a holder the second is, too. By hand: two earflaps and
// what is cast on.
func TestSecondWaitsAsTheFirst(t *testing.T) {
	for flap := 17; flap < 24; flap++ {
		for off := -1; off <= 1; off++ {
			text := fmt.Sprintf("Cast on 10 sts, knit across %[1]d sts of first earflap from holder, turn and cast on 28 sts, turn, knit across "+
				"%[1]d sts of second earflap, turn and cast on 10 sts.\nNext row: Knit. %[2]d sts.", flap, 48+2*flap+off)
			agreeing(t, text, nil, false, off == 0, 48+2*flap)
		}
	}
}

// TestRowsUnderAFrontWord: a heading that begins with a word of front matter, as "Bust darts", does not swallow rows that are named
// by what is done in them. Before, they were passed over in silence.
func TestRowsUnderAFrontWord(t *testing.T) {
	for _, heading := range []string{"Bust darts", "Chest shaping", "Measurements"} {
		for _, rows := range []string{
			"Short row 1 (RS): K85, w&t.\nShort row 2 (WS): P80, w&t.\n", "Dec rnd: K80, k2tog, k to end.\nInc rnd: K80, m1l, k to end.\n",
		} {
			text := heading + "\n" + rows + "Next row (RS): Knit to end of rnd.\nNext rnd: Knit."
			in := CheckInstructionsInput{Text: text, StartStitches: []int{180}, Construction: stitch.InTheRound}
			out, err := CheckInstructions(t.Context(), in)
			if err != nil || !out.Agrees || out.WorkedRows[0] != 4 {
				t.Errorf("%q: %d rows, %v, %s", text, out.WorkedRows, err, said(&out))
			}
		}
	}
}

// TestAmpersandJoins: "&" between words is "and" wherever that may stand.
func TestAmpersandJoins(t *testing.T) {
	for times := 2; times < 8; times++ {
		for off := -1; off <= 1; off++ {
			text := fmt.Sprintf("Dec 1 st at each end of next row & then of every foll 4th row %d times. %d sts.", times, 78-2*times+off)
			agreeing(t, text, []int{80}, false, off == 0, 78-2*times)
		}
	}
}

// TestUnwrappedAreSome: stitches that are left unwrapped are some of those on the needle, and the rows after them work all. Before,
// the rows after were called mistaken.
func TestUnwrappedAreSome(t *testing.T) {
	for n := 8; n < 14; n += 2 {
		text := fmt.Sprintf("CO %[1]d sts.\nRow 1 (RS): K%[2]d, w&t.\nRow 2 (WS): P%[3]d, w&t.\nRow 3: K%[4]d, w&t.\nRow 4: P%[5]d, w&t.\n"+
			"Continue like this, working 1 st fewer in each row, until %[6]d sts are left unwrapped in the middle, ending with a WS row.\n"+
			"Next row: K%[6]d, knit the next st together with its wrap, w&t.", n+20, n+19, n+18, n+17, n+16, n)
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.mistakes > 0 {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}
