package pattern

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// changeForms are ways to tell both by how many stitches a row changes the count and to how many; common
// practice. The first number is the change and the second the count.
var changeForms = []string{
	"(%[1]s sts dec; %[2]s sts)", "(%[1]s sts dec'd, %[2]s sts)", "[%[1]s sts decreased - %[2]s sts]", "(%[1]s sts dec; %[2]s sts rem)",
	"(%[2]s sts; %[1]s sts dec'd)", "(%[2]s sts, %[1]s dec)", ". %[1]s sts dec; %[2]s sts.", "(%[1]s sts dec'd) - %[2]s sts.",
}

// TestChangeAndCountAreBothCompared: k1, ssk, k to last 3 sts, k2tog, k1 takes 2 stitches away, from whatever
// there is. A row that tells another change, or another count, is found at that number, in the sizes where it is
// wrong, and what is offered for it is the number that was right.
func TestChangeAndCountAreBothCompared(t *testing.T) {
	for _, sizes := range [][]int{{96}, {96, 100, 108}} {
		for _, form := range changeForms {
			for change := 1; change <= 4; change++ {
				for off := -2; off <= 2; off++ {
					told := make([]int, len(sizes))
					for i, n := range sizes {
						told[i] = n - 2 + off
					}
					claim := fmt.Sprintf(form, strconv.Itoa(change), listOf(told))
					text := "CO " + listOf(sizes) + " sts.\nNext row: K1, ssk, k to last 3 sts, k2tog, k1 " + claim
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil {
						t.Fatal(err)
					}
					if out.Agrees != (change == 2 && off == 0) || out.questions > 0 {
						t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
					}
					if change == 2 || off != 0 {
						continue
					}
					k := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake })
					if out.mistakes != 1 || out.Findings[k].Text != strconv.Itoa(change) || len(out.Findings[k].Corrections) == 0 {
						t.Errorf("%q: %+v", text, out.Findings)
						continue
					}
					right := corrected(t, text, out.Findings[k].Corrections[0])
					if !strings.Contains(strings.ReplaceAll(right, "2 st ", "2 sts "), fmt.Sprintf(form, "2", listOf(told))[1:]) {
						t.Errorf("%q: offered is %q", text, right)
					}
				}
			}
		}
	}
}

// listOf is a list of numbers as a pattern prints it, "96 (100, 108)".
func listOf(numbers []int) string {
	s := strconv.Itoa(numbers[0])
	for i, n := range numbers[1:] {
		s += [...]string{", ", " ("}[min(1, max(0, 1-i))] + strconv.Itoa(n)
	}
	if len(numbers) > 1 {
		s += ")"
	}
	return s
}
