package pattern

import (
	"fmt"
	"testing"
)

// TestRestOfWhatWasLeftOut: a heel is worked on so many of 57 stitches, and "the rem" ones straight behind it are all others: any
// other number is a mistake, that of the stitches in work too.
func TestRestOfWhatWasLeftOut(t *testing.T) {
	for _, form := range []string{"Heel flap is worked over the first %d sts; leave rem %d sts on hold for instep.",
		"Heel flap is worked over the first %d sts. Leave the rem %d sts on hold for instep.",
		"Heel flap is worked over the first %d sts. Place the remaining %d sts on a holder.",
		"Heel flap is worked over the first %d sts. Place the other %d sts on a holder."} {
		for heel := 26; heel <= 31; heel++ {
			for rest := 25; rest <= 32; rest++ {
				text := "CO 57 sts, join. Knit 10 rnds.\n" + fmt.Sprintf(form, heel, rest) +
					fmt.Sprintf("\nRow 1 (RS): K%d.\nRow 2: Purl. %[1]d sts.", heel)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if right := rest == 57-heel; err != nil || out.Agrees != right || !right && out.mistakes != 1 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
}
