package pattern

import (
	"strconv"
	"strings"
	"testing"
)

// TestFewerEachTime: a crown of eight repeats, each of which a decrease makes smaller. By hand: after
// [k7, k2tog] a repeat has 8 stitches, so that before the next k2tog stand 6, one fewer; after
// [k6, sk2p] it has 7, before the next sk2p stand 4, two fewer.
func TestFewerEachTime(t *testing.T) {
	for _, c := range []struct {
		row   string
		each  int
		until string
	}{{"*K7, k2tog; rep from * to end. 64 sts.", 1, "40"}, {"*K6, sk2p; rep from * to end. 56 sts.", 2, "24"}} {
		want := strconv.Itoa(c.each) + " sts fewer"
		if c.each == 1 {
			want = "1 st fewer"
		}
		for n := 1; n < 5; n++ {
			text := "CO 72 sts. Join in the round.\nRnd 1: " + c.row + "\nRnd 2: Knit.\nContinue in this manner, working " + strconv.Itoa(n) +
				" sts fewer before each decrease, until " + c.until + " sts rem."
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (n == c.each) != (out.mistakes == 0) {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
			if n != c.each && (len(out.Findings) == 0 || !restores(t, &out, text, want)) {
				t.Errorf("%q: %s", text, offered(&out))
			}
		}
	}
}

// restores reports whether a correction that is offered first makes a text hold the words wanted.
func restores(t *testing.T, out *CheckedInstructions, text, want string) bool {
	t.Helper()
	for i := range out.Findings {
		if c := out.Findings[i].Corrections; len(c) > 0 {
			return strings.Contains(corrected(t, text, c[0]), want)
		}
	}
	return false
}
