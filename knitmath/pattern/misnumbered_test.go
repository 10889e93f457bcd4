package pattern

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// numberedRows are rows with these numbers, of which every other one makes a stitch and claims its
// count.
func numberedRows(label string, numbers []int) string {
	var b strings.Builder
	b.WriteString("CO 40 sts.\n")
	for i, n := range numbers {
		if i%2 == 0 {
			fmt.Fprintf(&b, "%s %d: K2, yo, k to end. %d sts.\n", label, n, 41+i/2)
		} else {
			fmt.Fprintf(&b, "%s %d: Purl.\n", label, n)
		}
	}
	return b.String()
}

// TestNumbersWrittenWrong: in rows 1 to m any one number is exchanged for any other. It is found at
// its row, alone, and the very number is offered first. What cannot be told from a mistake is left
// out: the last row may leave numbers out, and is then found all the same.
func TestNumbersWrittenWrong(t *testing.T) {
	for _, label := range []string{"Row", "Rnd"} {
		for m := 3; m < 8; m++ {
			right := make([]int, m)
			for i := range right {
				right[i] = i + 1
			}
			text := numberedRows(label, right)
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
				t.Fatalf("%v, %s", err, said(&out))
			}
			for i := range m {
				for put := 1; put <= m+12; put++ {
					if put == i+1 || i == m-1 && put < m-1 { // as a new set, or Row 1 of one
						continue
					}
					numbers := slices.Clone(right)
					numbers[i] = put
					wrong := numberedRows(label, numbers)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: wrong})
					if err != nil {
						t.Fatal(err)
					}
					k := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonRowNumber })
					if out.mistakes != 1 || k < 0 || out.Findings[k].LineNumber != i+2 || out.Findings[k].Text != strconv.Itoa(put) {
						t.Errorf("%s %d for %d of %d: %s", label, put, i+1, m, said(&out))
						continue
					}
					if c := out.Findings[k].Corrections; len(c) == 0 || corrected(t, wrong, c[0]) != text {
						t.Errorf("%s %d for %d of %d: offered is %+v", label, put, i+1, m, c)
					}
				}
			}
		}
	}
}

// TestNumbersExchanged: two rows with their numbers stand the wrong way round.
func TestNumbersExchanged(t *testing.T) {
	for i := range 5 {
		for k := i + 1; k < 5; k++ {
			numbers := []int{1, 2, 3, 4, 5}
			numbers[i], numbers[k] = numbers[k], numbers[i]
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: numberedRows("Row", numbers)})
			if err != nil || out.Agrees || !slices.ContainsFunc(out.Findings, func(f Finding) bool {
				return f.Reason == ReasonRowNumber && (f.LineNumber == i+2 || f.LineNumber == k+2)
			}) {
				t.Errorf("%v: %v, %s", numbers, err, said(&out))
			}
		}
	}
}

// TestSetsBeginWithRow1: a set of rows begins with its first, or goes on with a count that the text
// can mean: after a row without a number, after all rows, in rounds that short rows interrupt.
func TestSetsBeginWithRow1(t *testing.T) {
	const cuff = "CO 64 sts. Join.\nRnd 1: *K2, p2; rep from * around.\nRnd 2: *K2, p2; rep from * around.\n"
	for _, c := range []struct {
		text string
		line int // of the mistake, 0 for none
	}{
		{cuff + "HEEL FLAP\nRow 1 (RS): K32, turn.\nRow 2: Sl 1, p31.", 0},
		{cuff + "HEEL FLAP\nK32, turn.\nRow 2 (WS): Sl 1, p31.", 0},
		{"CO 40 sts.\nRow 2: Knit.\nRow 3: Knit.", 2},
		{"CO 40 sts.\nRow 2: Knit.\nRow 1: Purl.", 2},
		{"CO 40 sts (counts as Row 1).\nRow 2: Knit.\nRow 3: Knit.", 0},
		{"CO 40 sts.\nSet-up row: Knit.\nRow 2: Knit.\nRow 3: Knit.", 0},
		{"CO 40 sts.\nKnit 4 rows.\nRow 5: Knit.\nRow 6: Knit.", 0},
		{"CO 40 sts.\nKnit 4 rows.\nRow 3: Knit.\nRow 4: Knit.", 3},
		{"CO 40 sts.\nRow 1: Knit.\nRow 2: Purl.\nNext row: Knit.\nRow 4: Purl.", 0},
		{"CO 40 sts and join.\nKnit 2 rnds.\nRow 1 (RS): K20, w&t.\nRow 2 (WS): P20, w&t.\nRow 3 (RS): K to end.\nRnd 3: K40.", 0},
		{"CO 64 sts.\nRow 1: *K2, p2; rep from * to end.\nRow 2: *K2, p2; rep from * to end.\nHEEL FLAP\nNext row: K32, turn.\n" +
			"Row 3: Sl 1, p31, turn.", 0},
		{cuff + "Heel flap: worked back and forth on 32 sts.\nRow 2 (RS): *Sl 1, k1; rep from * to end.\nRow 3 (WS): Sl 1, p to end.", 5},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		at := 0
		for _, f := range out.Findings {
			if f.Reason == ReasonRowNumber {
				at = f.LineNumber
				break
			}
		}
		if err != nil || at != c.line {
			t.Errorf("%q: %v, %s", c.text, err, said(&out))
		}
	}
}

// TestLastRowOfASet: the last row of rows that are written of one side alone, or after a Row 1, has a
// number that cannot stand there. By hand: after rows 1, 2 and all WS rows, 3, 5, 7 stands row 8 or row
// 9; two rows 1 are never one set, but light and dark rounds of brioche are two.
func TestLastRowOfASet(t *testing.T) {
	lace := "CO 40 sts.\nRow 1: K2, yo, k2tog, k to end.\nRow 2 and all WS rows: Purl.\nRow 3: K3, yo, k2tog, k to end.\n" +
		"Row 5: K4, yo, k2tog, k to end.\nRow 7: K5, yo, k2tog, k to end.\nRow %s: %s. 40 sts.\nRep Rows 1-8 twice more."
	for put, want := range map[string]string{"8": "", "6": "row 8 is expected here", "4": "row 8 is expected here",
		"5": "row 9 is expected here", "3": "row 9 is expected here"} {
		misnumberedAs(t, fmt.Sprintf(lace, put, "Purl"), want)
	}
	misnumberedAs(t, "CO 40 sts.\nRow 1 (RS): K1, yo, k to end. 41 sts.\nRow 1: Knit.\nRep these 2 rows 5 times more. 46 sts.",
		"row 2 is expected here")
	misnumberedAs(t, "CO 16 sts, join.\nRnd 1 LC: *K1, sl1yo; rep from * around.\nRnd 1 DC: *Sl1yo, brp1; rep from * around.", "")
}

// misnumberedAs wants the only mistake of a text to be a row number, said so; none if that is "".
func misnumberedAs(t *testing.T, text, want string) {
	t.Helper()
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonRowNumber })
	if want == "" && i >= 0 || want != "" && (out.mistakes != 1 || i < 0 || out.Findings[i].Description != want) {
		t.Errorf("want %q: %s\n%s", want, offered(&out), text)
	}
}

// A span of numbers goes on from a row that calls another by its name.
func TestSpanAfterACalledRow(t *testing.T) {
	text := "CO 40 sts.\nRow 1: K.\nRow 2 (dec row): K2tog, k to end. 39 sts.\nRow 3: K.\n" +
		"Row 4: Work the dec row. 38 sts.\nRows 5-6: K.\nRow 7: K."
	if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
		t.Errorf("%v, %s", err, said(&out))
	}
}

// The row that has just the name is meant, and not a later one that has more words.
func TestRowOfJustTheName(t *testing.T) {
	text := "CO 40 sts.\nRow 1 (dec row): K2tog, k to last 2 sts, k2tog. 38 sts.\nRow 2: K.\n" +
		"Row 3 (sleeve dec row): K2tog, k to end. 37 sts.\n" +
		"Row 4: K.\nRow 5: Work the dec row. 35 sts.\nWork the sleeve dec row every 2nd row twice more. 33 sts."
	if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
		t.Errorf("%v, %s", err, said(&out))
	}
}
