package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// crownListed is a crown over 96 stitches of which the plain rounds up to an even one are listed ahead; several plain
// rounds then stand together, called from one number to another.
func crownListed(list, several string, even, from, to, behind int) string {
	var b strings.Builder
	sts := 96
	decrease := func(n int) {
		sts -= 8
		fmt.Fprintf(&b, "Rnd %d: *K%d, k2tog; rep from * around. %d sts\n", n, sts/8-1, sts)
	}
	b.WriteString("CO 96 sts and join.\n")
	decrease(1)
	b.WriteString(list + ": Knit.\n")
	for n := 3; n < even; n += 2 {
		decrease(n)
	}
	b.WriteString(strings.NewReplacer("FROM", fmt.Sprint(from), "TO", fmt.Sprint(to), "MANY", fmt.Sprint(behind-from)).Replace(several) + "\n")
	decrease(behind)
	return b.String()
}

// TestRowsListedAhead: plain rounds that are listed ahead are written, and the numbers go on behind them. Numbers that begin
// one too early, or end one too late or too early, are found. The words are common practice.
func TestRowsListedAhead(t *testing.T) {
	for even, lists := range map[int][]string{
		4: {"Rnds 2 and 4", "Rounds 2 & 4", "Rnd 2 and all even rnds through 4"},
		6: {"Rnds 2, 4 and 6", "Rounds 2, 4, and 6", "Rnd 2 and all even rnds to 6"},
		8: {"Rnds 2, 4, 6 and 8", "Rnds 2, 4, 6, 8"},
	} {
		for _, list := range lists {
			for _, several := range []string{"Rnds FROM-TO: Knit.", "Rounds FROM-TO: Knit (MANY rounds).", "Rnds FROM to TO: Knit."} {
				for rounds := 2; rounds <= 5; rounds++ {
					from, to := even+1, even+rounds
					text := crownListed(list, several, even, from, to, to+1)
					if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees ||
						out.WorkedRows[0] != to+1 {
						t.Errorf("%v %s\n%s", err, said(&out), text)
					}
					for _, wrong := range [][2]int{{from - 1, to}, {from, to - 1}, {from, to + 1}} {
						if wrong[0] >= wrong[1] {
							continue
						}
						text := crownListed(list, several, even, wrong[0], wrong[1], to+1)
						if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.Agrees {
							t.Errorf("agrees with what is planted, or %v\n%s", err, text)
						}
					}
				}
			}
		}
	}
}
