package pattern

import (
	"fmt"
	"testing"
)

// TestHolesAsTold: a row with buttonholes tells how many it makes, and so does what repeats it. By hand: one more than how often the
// star is repeated, and one for every time that the rows are worked. Another number is never agreed with.
func TestHolesAsTold(t *testing.T) {
	for more := 2; more < 6; more++ {
		for off := -1; off <= 1; off++ {
			made := more + 1 + off
			for _, told := range []string{"(%d buttonholes)", "(%d buttonholes made)"} {
				told := fmt.Sprintf(told, made)
				for _, row := range []string{
					"Buttonhole row: K4, *yo, k2tog, k6; rep from * %d more times, k to end %s. Knit 3 rows.",
					"Buttonhole row (RS): K4, *k2tog, yo, k6; rep from * %d more times, k to end. %s\nKnit 3 rows.",
					"Next row: K4, *BO 2, k6; rep from * %d more times, k to end %s. Next row: Knit, casting on 2 sts over each gap.",
				} {
					agreeing(t, "CO 80 sts. Knit 3 rows. "+fmt.Sprintf(row, more, told), nil, false, off == 0, 80)
				}
			}
			for _, told := range []string{". (%d buttonholes)", ". %d buttonholes made.", ". There are %d buttonholes."} {
				agreeing(t, fmt.Sprintf("CO 20 sts. Row 1 (RS): K3, yo, k2tog, k to end. Rows 2-8: Knit. Rep Rows 1-8 %d more times"+told,
					more, made), nil, false, off == 0, 20)
			}
			agreeing(t, fmt.Sprintf("CO %d sts. Row 1: K2, *yo, k2tog, k6; rep from * to last 2 sts, k2. (%d buttonholes)", 8*more+4,
				more+off), nil, false, off == 0, 8*more+4)
		}
	}
}

// TestWrapsThatAreThere: a stitch is worked with its wrap where one lies around it, and asked about where none does: where no row has
// wrapped any, all have been taken along, or it lies elsewhere.
func TestWrapsThatAreThere(t *testing.T) {
	const turns = "CO 40 sts. Row 1 (RS): K30, w&t. Row 2: P20, w&t. "
	for _, with := range []string{"knit next st tog with its wrap", "pick up the wrap and knit it tog with the st",
		"knit wrap and st together", "lift wrap and knit it together with its st", "k next st tog with its wrap"} {
		for at := 18; at < 23; at++ {
			agreeing(t, fmt.Sprintf("%sRow 3: K%d, %s, k to end. Row 4: Purl, picking up the other wrap. 40 sts.", turns, at, with), nil, false,
				at == 20, 40)
		}
		for _, before := range []string{"CO 40 sts. Knit 4 rows. Row 5 (RS): K10, ", "CO 40 sts. Row 1 (RS): K10, ",
			turns + "Row 3: Knit, picking up wraps. Row 4: Purl, picking up wraps. Row 5: K10, "} {
			agreeing(t, before+with+", k to end. 40 sts.", nil, false, false, 0)
		}
		agreeing(t, "Row 5 (RS): K10, "+with+", k to end. 40 sts.", []int{40}, false, true, 40)
		agreeing(t, turns+"Row 3: K to wrapped st, "+with+", k to end. 40 sts.", nil, false, true, 40)
	}
}

// TestOnEachNeedleAsTold: what lies on each needle goes into all of them, beside a cast-on, what rows are worked until, and where
// stitches are divided.
func TestOnEachNeedleAsTold(t *testing.T) {
	for needles := 3; needles < 5; needles++ {
		for each := 12; each < 20; each += 3 {
			all := needles * each
			for off := -1; off <= 1; off++ {
				for _, form := range []string{
					"CO %[1]d sts (%[2]d on each needle). Knit 1 rnd.", "CO %[1]d sts, %[2]d on each needle. Knit 1 rnd.",
					"CO %[1]d sts (%[2]d sts on each needle). Knit 1 rnd.", "CO %[1]d sts. Divide over %[3]d dpns: %[2]d sts each. Join. Knit 1 rnd.",
					"CO %[4]d sts. Rnd 1: K1, ssk, k to end. Rep Rnd 1 until %[1]d sts rem (%[2]d on each needle).",
					"CO 10 sts. Rnd 1: K1, kfb, k to end. Rep Rnd 1 until there are %[1]d sts in total (%[2]d sts on each needle).",
					"CO %[1]d sts, divide evenly onto %[3]d needles (%[2]d on each) and join. Knit 1 rnd.",
				} {
					agreeing(t, fmt.Sprintf(form, all, each+off, needles, all+10), nil, true, off == 0, all)
				}
			}
		}
	}
}

// TestEachSideOfWhatIsBoundOff, of "these" stitches, and of those on which the text goes on: by hand, what lies on either side of the
// stitches bound off, what the turn has worked, and what is left beside those put aside.
func TestEachSideOfWhatIsBoundOff(t *testing.T) {
	for side := 25; side < 40; side += 4 {
		for off := -1; off <= 1; off++ {
			for _, form := range []string{
				"CO %[1]d sts. Next row (RS): K%[2]d, BO next 20 sts, k to end. %[3]d sts: %[4]d each side.",
				"CO %[1]d sts. Next row (RS): K%[2]d, BO 20 sts, k to end. %[3]d sts (%[4]d each side of the split).",
			} {
				agreeing(t, fmt.Sprintf(form, 2*side+20, side, 2*side, side+off), nil, false, off == 0, 2*side)
			}
			for _, form := range []string{
				"CO %[1]d sts. Next row: K%[2]d, sl next 20 sts to holder, turn and work on these %[4]d sts for left side; leave the rem %[2]d " +
					"sts on a spare needle. Purl 1 row. %[2]d sts.",
				"CO %[1]d sts. Next row: K%[2]d, turn and work on these %[4]d sts; leave the rem sts on a holder. Purl 1 row. %[2]d sts.",
			} {
				agreeing(t, fmt.Sprintf(form, 2*side+20, side, 2*side, side+off), nil, false, off == 0, side)
			}
			agreeing(t, fmt.Sprintf("CO %[1]d sts and join.\nKnit 4 rnds.\nHeel: K%[2]d, turn, p%[3]d. These %[4]d sts form the heel; place "+
				"the other %[3]d sts on waste yarn.\nRow 1 (RS): Sl 1, k to end. %[3]d sts.", 4*side, side, 2*side, 2*side+off), nil, false,
				off == 0, 2*side)
		}
	}
	for off := 0; off < 5; off++ {
		agreeing(t, fmt.Sprintf("CO 160 sts and join. Knit 10 rnds. Place 80 back sts on holder, continue on %d front sts. Knit 4 rows.", 80-off),
			nil, true, off == 0, 80)
	}
}

// TestPartsMakeUpTheRound: a round that parts its stitches by three markers and more goes over all of them, and not past its beginning.
func TestPartsMakeUpTheRound(t *testing.T) {
	for off := -3; off <= 3; off++ {
		for _, form := range []string{
			"CO 120 sts and join. Knit 10 rnds. Next rnd: K20, pm, k40, pm, k20, pm, k%d, pm for beg of rnd.",
			"CO 120 sts and join. Knit 10 rnds. Set-up rnd: K20, pm for left sleeve, k40, pm, k20, pm, k%d, pm for beg of rnd. 120 sts.",
		} {
			agreeing(t, fmt.Sprintf(form, 40+off), nil, true, off == 0, 120)
		}
	}
}

// TestMiddleOfShortRows: rows that wrap a stitch on either side leave so many between the turns, or two more with the wrapped ones; and
// a square whose centre loses two stitches does not lose three.
func TestMiddleOfShortRows(t *testing.T) {
	for n := 6; n < 14; n++ {
		agreeing(t, fmt.Sprintf("CO 30 sts. Row 1 (RS): K29, w&t. Row 2: P28, w&t. Row 3: K to 1 st before wrapped st, w&t. Row 4: P to 1 st "+
			"before wrapped st, w&t. Rep Rows 3 and 4 until %d sts rem unwrapped.", n), nil, false, n%2 == 0, 30)
	}
	for n := 1; n < 5; n++ {
		agreeing(t, fmt.Sprintf("CO 39 sts. Row 1 (RS): K18, s2kp, k18. 37 sts. Row 2: Purl. Cont in this manner, dec %d sts at centre of every "+
			"RS row, until 1 st rem.", n), nil, false, n == 2, 1)
	}
}

// TestStripesInAll: stripes of a colour that comes once in a set of rows are as many as the set is worked.
func TestStripesInAll(t *testing.T) {
	for n := 3; n < 9; n++ {
		text := fmt.Sprintf("CO 20 sts and join.\nRnd 1: With B, *k1, sl 1; rep from *.\nRnd 2: With B, *p1, sl 1; rep from *.\nRnds 3 and 4: "+
			"With A, knit.\nRep Rnds 1-4 until a total of %d B stripes have been worked.", n)
		p := corpusPiece{Text: text, Round: true}
		if out, err := CheckInstructions(t.Context(), p.input()); err != nil || !out.Agrees || out.WorkedRows[0] != 4*n {
			t.Errorf("%q: %v rows, %v, %s", text, out.WorkedRows, err, said(&out))
		}
	}
}

// TestRowUnderTwoRules: a row that shapes and is numbered as those of a rule is asked about where the row after it is not written.
func TestRowUnderTwoRules(t *testing.T) {
	for n := 3; n < 6; n++ {
		agreeing(t, fmt.Sprintf("CO 40 sts and join.\nRnd 1 (and every odd-numbered rnd): Knit.\nRnd 2: (K8, k2tog) 4 times. 36 sts.\n"+
			"Rnd %d: (K7, k2tog) 4 times. 32 sts.\nRnd 6: (K6, k2tog) 4 times. 28 sts.", n), nil, true, n == 4, 28)
	}
}
