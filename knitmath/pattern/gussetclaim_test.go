package pattern

import (
	"fmt"
	"testing"
)

// TestGussetsTold: a thumb gusset's stitches told behind its rounds, in many words, alone or with those of the whole round.
// By hand: the gusset begins with 1 or 2 stitches and gains 2 in each of its rounds. Any other number is a mistake, said once,
// and the count of the round goes on.
func TestGussetsTold(t *testing.T) {
	told := []string{
		" (%[1]d %[2]s sts)", " %[1]d %[2]s sts.", " [%[1]d %[2]s sts]", " (%[1]d sts in %[2]s)", " %[1]d sts in the %[2]s.",
		" (%[1]d sts for %[2]s)", " (%[1]d %[2]s sts; %[3]d sts total)", " (%[1]d %[2]s sts, %[3]d sts)",
		" %[1]d %[2]s stitches between markers.",
		" (%[3]d sts: %[1]d %[2]s sts)", " (%[3]d sts; %[1]d %[2]s sts)", " %[3]d sts, %[1]d %[2]s sts.", " %[3]d sts (%[1]d %[2]s sts).",
	}
	for _, words := range told {
		for _, name := range []string{"gusset", "thumb", "thumb gusset"} {
			for begins := 1; begins <= 2; begins++ {
				for by := -2; by <= 2; by++ {
					first := map[int]string{1: "K20, pm, m1L, pm, k21.", 2: "K20, pm, kfb, pm, k20."}[begins]
					text := "CO 41 sts and join.\nRnd 1: " + first + fmt.Sprintf(words, begins, name, 42) + "\nRnd 2: Knit.\n" +
						"Rnd 3: K to m, sm, m1L, k to m, m1R, sm, k to end." + fmt.Sprintf(words, begins+2+by, name, 44) + "\nRnd 4: Knit. 44 sts."
					if begins+2+by < 1 {
						continue
					}
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (by == 0) || by != 0 && (out.mistakes != 1 || out.questions != 0) {
						t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
					}
				}
			}
		}
	}
}

// TestHalvesNamed: a toe in the round whose instep, sole or palm is told is told by its half; by hand, 60 stitches lose 4 a
// round. What is neither the half nor the whole is a mistake.
func TestHalvesNamed(t *testing.T) {
	for _, name := range []string{"instep", "sole", "palm", "front", "back"} {
		for n := 24; n <= 60; n++ {
			text := fmt.Sprintf("CO 60 sts and join.\nRnd 1: *K1, ssk, k24, k2tog, k1; rep from * once. (56 sts)\nRnd 2: Knit.\n"+
				"Rnd 3: *K1, ssk, k22, k2tog, k1; rep from * once. %d %s sts.\nRnd 4: Knit. 52 sts.", n, name)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if right := n == 26 || n == 52; err != nil || out.Agrees != right || !right && out.mistakes == 0 {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
		}
	}
}
