package pattern

import (
	"fmt"
	"testing"
)

// TestStitchesLeftAside: 84 stitches, 14 of them bound off between 35 and 35: the second 35 wait, whatever becomes of
// the first.
func TestStitchesLeftAside(t *testing.T) {
	const head = "CO 84 sts.\nKnit 2 rows.\nNext row: K35, BO 14 sts, k to end.\nWork on these 35 sts only.\nKnit 4 rows.\n"
	for _, first := range []string{"BO all sts.", "BO 35 sts at beg of next row.",
		"Dec 1 st at neck edge on every row until 24 sts rem.\nBO 8 sts at beg of next and foll 2 alt rows."} {
		for _, to := range []string{"Rejoin yarn to", "Rejoin yarn to neck edge of", "With RS facing, rejoin yarn to armhole edge of",
			"Rejoin yarn to the centre front edge of the", "With RS facing, rejoin yarn at neck edge to"} {
			for n := 31; n < 41; n++ {
				text := head + first + fmt.Sprintf("\n%s rem %d sts.\nKnit 4 rows.\nBO all sts.", to, n)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || (n == 35) != out.Agrees {
					t.Errorf("%d: %v %s\n%s", n, err, said(&out), text)
				}
			}
		}
	}
	for n := 31; n < 41; n++ {
		text := head + fmt.Sprintf("BO all sts.\nWith RS facing, rejoin yarn to neck edge of rem sts.\nKnit 4 rows. (%d sts)", n)
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || (n == 35) != out.Agrees {
			t.Errorf("rem sts, %d: %v %s", n, err, said(&out))
		}
	}
}

// TestShapingWhatWasLeftAside: decreases until 24 remain are made on the 35 that wait, as many as that takes.
func TestShapingWhatWasLeftAside(t *testing.T) {
	const text = "CO 84 sts.\nKnit 2 rows.\nNext row: K35, BO 14 sts, k to end.\nWork on these 35 sts only.\nKnit 4 rows.\nBO all sts.\n" +
		"Dec 1 st at neck edge on every row until 24 sts rem. (%d sts)\nBO all sts."
	for n := 20; n < 36; n++ {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, n)})
		if err != nil || (n == 24) != out.Agrees {
			t.Errorf("%d: %v %s", n, err, said(&out))
		}
	}
}

// TestNothingOnTheNeedle: after a piece is bound off and none waits, another needs a cast-on.
func TestNothingOnTheNeedle(t *testing.T) {
	const done = "CO 35 sts.\nKnit 4 rows.\nBO all sts.\n"
	const sleeve = "SLEEVES\n%sWork 3 ins in k1, p1 rib.\nInc 1 st at both ends of 5th and every foll 6th row until there are 78 sts.\n" +
		"BO all sts."
	for text, right := range map[string]bool{
		done + "Rejoin yarn to rem 35 sts.\nKnit 4 rows.\nBO all sts.": false,
		done + fmt.Sprintf(sleeve, ""):                                 false,
		done + fmt.Sprintf(sleeve, "CO 40 sts.\n"):                     true,
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || right != out.Agrees {
			t.Errorf("agrees is %v: %v %s\n%s", out.Agrees, err, said(&out), text)
		}
	}
}

// TestStitchesStillOnTheNeedle: of the 35 that were worked first some are never bound off.
func TestStitchesStillOnTheNeedle(t *testing.T) {
	const text = "CO 84 sts.\nKnit 2 rows.\nNext row: K35, BO 14 sts, k to end.\nWork on these 35 sts only.\nKnit 4 rows.\n%s" +
		"Rejoin yarn to rem 35 sts.\nKnit 4 rows.\nBO all sts."
	first := map[string]bool{"": false, "Place these 35 sts on a holder.\n": true}
	for n := 30; n < 36; n++ {
		first[fmt.Sprintf("BO %d sts at beg of next row.\n", n)] = n == 35
	}
	for first, right := range first {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, first)})
		if err != nil || right != out.Agrees {
			t.Errorf("%q agrees is %v: %v %s", first, out.Agrees, err, said(&out))
		}
	}
}

// TestNoCountIsCorrectedToNone: nobody writes that there are 0 stitches.
func TestNoCountIsCorrectedToNone(t *testing.T) {
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 35 sts.\nKnit 4 rows.\nBO 35 sts at beg of next row. (3 sts)"})
	if err != nil || out.Agrees {
		t.Fatalf("%v %s", err, said(&out))
	}
	for _, f := range out.Findings {
		for _, c := range f.Corrections {
			if c.Replacement == "0" {
				t.Errorf("corrected to %q", c.Description)
			}
		}
	}
}
