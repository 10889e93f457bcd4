package pattern

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// rowsForms are ways to tell a count of rows beside a repeat that ends with so many stitches;
// common practice.
var rowsForms = []string{
	"Rep Rows 1 and 2 %s more times (%s rows). %s sts.",
	"Rep Rows 1 and 2 %s more times [%s rows]. %s sts.",
	"Rep Rows 1 and 2 %s more times (%s rows worked). %s sts.",
	"Rep Rows 1 and 2 %s more times (a total of %s rows). %s sts.",
	"Rep Rows 1 and 2 %s more times (%s rows in all). %s sts.",
	"Rep Rows 1 and 2 %s more times, %s rows in all. %s sts.",
	"Rep Rows 1 and 2 %s more times, ending with Row 2 (%s rows). %s sts.",
	"Rep last 2 rows %s more times (%s rows). %s sts.",
	"Rep Rows 1 and 2 %s more times. (%[3]s sts, %[2]s rows)",
	"Rep Rows 1 and 2 %s more times. %[3]s sts, %[2]s rows.",
	"Rep Rows 1 and 2 %s more times. %[3]s sts; %[2]s rows worked.",
	"Rep Rows 1 and 2 %s more times. %[3]s sts. %[2]s rows have been worked.",
	"Rep Rows 1 and 2 %s more times. %[3]s sts (%[2]s rows).",
}

// TestRowsToldAreCompared: after a cast-on, 4 rows, a heading and a set of 2 rows that is repeated
// n more times, 2n rows are worked in the repeat, 2n + 2 with the set, 2n + 6 since the cast-on.
// Any other number is found, once and at its place, and the number that is likeliest is offered.
func TestRowsToldAreCompared(t *testing.T) {
	for _, form := range rowsForms {
		for n := 2; n < 9; n++ {
			for told := 1; told <= 2*n+9; told++ {
				text := "CO 60 sts.\nKnit 4 rows.\nSLEEVE\nRow 1 (RS): K1, k2tog, k to end. 59 sts.\nRow 2: Purl.\n" +
					fmt.Sprintf(form, strconv.Itoa(n), strconv.Itoa(told), strconv.Itoa(59-n))
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if slices.Contains([]int{2 * n, 2*n + 2, 2*n + 6}, told) {
					inAll := told == 2*n && (strings.Contains(form, "in all") || strings.Contains(form, "total")) // asked
					if out.Agrees == inAll || inAll != (out.questions == 1) {
						t.Errorf("%q: %s", form, said(&out))
					}
					continue
				}
				if out.mistakes != 1 || out.questions > 0 || !slices.ContainsFunc(out.Findings, func(f Finding) bool {
					return f.Reason == ReasonRows && f.LineNumber == 6 && strings.HasPrefix(f.Text, strconv.Itoa(told)+" ") && len(f.Corrections) > 0
				}) {
					t.Errorf("%d rows told, %d more times, %q: %s", told, n, form, said(&out))
				}
			}
		}
	}
}

// TestRowsToldOfSizes: each size has its number, and what is wrong in one is said of that one and
// put right there.
func TestRowsToldOfSizes(t *testing.T) {
	// The heel flap of a sock: 2 rows, and 13 (14, 15) times more are 28 (30, 32).
	const right = "CO 56 (60, 64) sts.\nKnit 10 rows.\nHeel flap\nRow 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2: Sl 1, p to end.\n" +
		"Rep Rows 1 and 2 13 (14, 15) more times. 56 (60, 64) sts; 28 (30, 32) rows worked."
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: right})
	if err != nil || !out.Agrees {
		t.Fatalf("%v, %s", err, said(&out))
	}
	for size, n := range []string{"28", "30", "32"} {
		for _, put := range []string{"27", "29", "31", "23", "82", "14"} {
			wrong := strings.Replace(right, n, put, 1)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: wrong})
			if err != nil {
				t.Fatal(err)
			}
			k := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonRows })
			if out.mistakes != 1 || k < 0 || !slices.Equal(out.Findings[k].SizeNumbers, []int{size + 1}) {
				t.Errorf("%s for %s: %s", put, n, said(&out))
				continue
			}
			if c := out.Findings[k].Corrections; len(c) == 0 || corrected(t, wrong, c[0]) != right {
				t.Errorf("%s for %s: offered is %+v", put, n, c)
			}
		}
	}
}

// TestRowsToldAlike: of three sizes each is counted with the rows that are repeated, 2n + 2, or without, 2n: all in the
// same way, or the odd one is wrong.
func TestRowsToldAlike(t *testing.T) {
	const text = "CO 56 (60, 64) sts.\nKnit 9 rows.\nHeel flap\nRow 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2: Sl 1, p to end.\n" +
		"Rep Rows 1 and 2 13 (14, 15) more times. 56 (60, 64) sts; %d (%d, %d) rows worked."
	for ways := range 8 { // a bit for each size
		rows, with := [3]int{26, 28, 30}, []int{}
		for size := range rows {
			if ways>>size&1 == 1 {
				rows[size] += 2
				with = append(with, size+1)
			}
		}
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, rows[0], rows[1], rows[2])})
		if err != nil || out.Agrees != (len(with)%3 == 0) {
			t.Errorf("%v: %v, %s", rows, err, said(&out))
		}
		k := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonRows })
		if len(with) == 1 && (k < 0 || !slices.Equal(out.Findings[k].SizeNumbers, with)) || out.mistakes > 1 || out.questions > 0 {
			t.Errorf("%v: %s", rows, said(&out))
		}
	}
}

// TestRidgesTold: a ridge of garter stitch is two rows; of an odd number of rows the last may be counted with the
// cast-on, or not. In other fabrics a ridge may be anything.
func TestRidgesTold(t *testing.T) {
	for _, form := range []string{"Knit %d rows (= %d garter ridges).", "Knit %d rows (%d ridges).", "Work %d rows in garter st (%d ridges).",
		"Work %d rows in garter st, %d ridges in all.", "Knit %d rows - %d ridges made."} {
		for rows := 4; rows <= 11; rows++ {
			for ridges := 2; ridges <= 8; ridges++ {
				text := "Cast on 40 sts.\n" + fmt.Sprintf(form, rows, ridges) + "\nCast off."
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if right := ridges == rows/2 || ridges == (rows+1)/2; out.Agrees != right || !right && out.mistakes != 1 || out.questions > 0 {
					t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
				}
			}
		}
	}
	const welt = "CO 40 sts and join in the rnd.\nRnds 1-3: Knit.\nRnds 4-6: Purl.\nRep Rnds 1-6 3 more times (4 ridges)."
	if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: welt}); err != nil || !out.Agrees {
		t.Errorf("%q: %v, %s", welt, err, said(&out))
	}
}

// TestRowsToldAfterDash: 10 rows and 5 more are 15 from the cast-on, however that is set off.
func TestRowsToldAfterDash(t *testing.T) {
	for _, form := range []string{" - %d rows worked from cast-on.", " — %d rows worked in all.", " (%d rows from cast-on).",
		", %d rows worked since the beginning.", " (%d rows worked from the cast-on edge)."} {
		for told := 3; told <= 22; told++ {
			text := "Cast on 42 sts.\nKnit 10 rows.\nWork 5 rows even" + fmt.Sprintf(form, told) + "\nCast off."
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil {
				t.Fatal(err)
			}
			if right := told == 15 || told == 5; out.Agrees != right || out.questions > 0 {
				t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
			}
		}
	}
}

// TestRowsNotTold: numbers of rows that are worked, are a label's, are of a pattern or of a
// picture are no count of what was worked before them.
func TestRowsNotTold(t *testing.T) {
	for _, text := range []string{
		"Moss rib (4 sts, 6 rows)\n\nCO 40 sts.\nKnit 4 rows.",
		"CO 40 sts.\nKnit 4 rows.\nChart B (8 sts, 12 rows)\nKnit 2 rows.",
		"CO 40 sts.\nKnit 4 rows, purl 2 rows, knit 4 rows (10 rows).",
		"CO 40 sts.\nKnit every row until 10 rows have been worked.",
		"CO 40 sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 until 10 rows have been worked in all.",
		"CO 40 sts.\nWork even until piece measures 10 cm.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 4 more times (40 rows in all).",
		"CO 40 sts.\nRows 1-6: Knit (6 rows).\nKnit 4 rows (10 rows).",
	} {
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil ||
			slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonRows }) {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}

// TestRowsToldAfterKnit: a row of which "Knit" or "Purl" is all stays so before a count of rows, or another remark, in
// brackets of its own.
func TestRowsToldAfterKnit(t *testing.T) {
	for _, cast := range []string{"CO 40 sts.", "CO 40 (44, 48) sts.", "CO 40 sts and join in the rnd."} {
		for _, verb := range []string{"Knit", "Purl"} {
			for _, remark := range []string{"(16 rows)", "[16 rows]", "(16 rnds)", "[16 rounds]", "(16 rows worked)", "(This is the right side.)"} {
				text := cast + "\nRows 1-16: " + verb + ". " + remark + "\nRow 17: (K2, k2tog) to end."
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || !out.Agrees || out.EndStitches[0] != 30 || out.WorkedRows[0] != 17 {
					t.Errorf("%q: %v, %s, %v", text, err, said(&out), out.EndStitches)
				}
			}
			text := cast + "\nRows 1-16: " + verb + ". (15 rows)\nRow 17: Knit."
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.mistakes != 1 || out.questions > 0 {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestRowsOfSizesToldAlone: 2 rows and 14 (15, 17) times 2 more are 30 (32, 36), in brackets of their own too.
func TestRowsOfSizesToldAlone(t *testing.T) {
	for last := 33; last <= 39; last++ {
		for _, form := range []string{"(30 (32, %d) rows)", "(30 (32, %d) rows worked)"} {
			text := "Cast on 40 (44, 48) sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 14 (15, 17) more times. " + fmt.Sprintf(form, last)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			// 34 would be without the rows that are repeated, with which the other sizes count.
			if err != nil || out.questions > 0 || out.Agrees != (last == 36) || last != 36 && out.mistakes != 1 {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestRowsToldAfterTimes: how many rows a number of times comes to is told behind it in many ways, and compared.
func TestRowsToldAfterTimes(t *testing.T) {
	for _, apart := range []string{" = M rows.", " - M rows.", ": M rows.", ", M rows.",
		"; M rows.", ". M rows.", "; M rows worked.", " (M rows)."} {
		for n := 3; n < 9; n++ {
			for _, times := range []string{"a total of N times", "until they have been worked N times in all"} {
				for off := -1; off < 2; off++ {
					text := "CO 20 sts.\nRow 1: Knit.\nRow 2: Purl.\nWork Rows 1 and 2 " + strings.NewReplacer("N", strconv.Itoa(n), "M",
						strconv.Itoa(2*n+off)).Replace(times+apart) + "\nKnit 1 row. 20 sts."
					if out := asked(t, text, 0, stitch.Flat); out.Agrees != (off == 0) || out.WorkedRows[0] != 2*n+1 {
						t.Errorf("%q: %v rows, %s", text, out.WorkedRows, judgedText(out.Findings))
					}
				}
			}
		}
	}
}
