package service

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// What is written for several sizes is read as it is meant: every size comes from its cast-on to its
// end, also where some go the other way or keep their width.
func TestGradedTapersReadBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 4))
	read, mixed := 0, 0
	for range 400 {
		in := shaping.GradedTaperInput{Construction: stitch.Construction(1 + rng.IntN(2))}
		if in.Construction == stitch.Flat && rng.IntN(3) == 0 {
			in.FirstSide = stitch.WrongSide
		}
		var starts, ends []string
		for range 2 + rng.IntN(5) {
			start, change, rows := 40+2*rng.IntN(20), 2*(rng.IntN(12)+1), 50+rng.IntN(40)
			switch rng.IntN(5) {
			case 0:
				change = -change
			case 1:
				change = 0
			}
			in.Sizes = append(in.Sizes, shaping.TaperSize{StartStitches: start, EndStitches: start + change, HeightRows: &rows})
			starts, ends = append(starts, fmt.Sprint(start)), append(ends, fmt.Sprint(start+change))
		}
		out, err := shaping.PlanGradedTaper(in)
		if err != nil {
			continue // all keep their width
		}
		of := func(words []string) string { return words[0] + " (" + strings.Join(words[1:], ", ") + ")" }
		text := "Cast on " + of(starts) + " stitches."
		even := "Work 1 row even"
		if in.Construction == stitch.InTheRound {
			text += " Join in the round."
			even = "Work 1 round even"
		}
		directions := out.Directions()
		text += "\n" + strings.Join(directions, "\n")
		if strings.Contains(text, " only:") {
			mixed++
			text += "\nAll sizes:\n" + even + ": " + of(ends) + " stitches."
		}
		checked, err := pattern.CheckInstructions(t.Context(), pattern.CheckInstructionsInput{
			Text: text, Construction: in.Construction, FirstSide: in.FirstSide})
		if err != nil || !checked.Agrees {
			t.Errorf("%s\n%v, %v", text, err, checked.Findings)
		}
		read++
	}
	t.Logf("%d read back, %d of which not alike", read, mixed)
	if read < 380 || mixed < 200 {
		t.Errorf("%d read back, %d of which not alike: the sweep has shrunk", read, mixed)
	}
}
