package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestLabelsNameSizes: a row whose label names sizes is worked in them alone, in each wording and with
// each set of four sizes; one that names all is worked in all. The oracle is the set.
func TestLabelsNameSizes(t *testing.T) {
	ordinals := [...]string{"1st", "2nd", "3rd", "4th"}
	for set := 1; set < 15; set++ {
		var numbers, named, nth []string
		for k := range 4 {
			if set>>k&1 == 1 {
				numbers, named, nth = append(numbers, fmt.Sprint(k+1)), append(named, [...]string{"S", "M", "L", "XL"}[k]), append(nth, ordinals[k])
			}
		}
		many := ""
		if len(numbers) > 1 {
			many = "s"
		}
		list := func(words []string) string {
			last := len(words) - 1
			if last == 0 {
				return words[0]
			}
			return strings.Join(words[:last], ", ") + " and " + words[last]
		}
		for _, label := range []string{
			"Next row (size" + many + " " + list(numbers) + " only)", "Next row [size" + many + " " + list(numbers) + " only]",
			"Next row (for size" + many + " " + list(numbers) + ")", "Next row (RS; size" + many + " " + list(numbers) + " only)",
			"Next row (RS) (size" + many + " " + list(numbers) + " only)", "Row 1 (size" + many + " " + list(numbers) + ")",
			"Next row (" + list(nth) + " size" + many + " only)", "*Next row (" + list(named) + " only)",
			"*Next row (size" + many + " " + list(named) + " only)", "*Next row (WS, size" + many + " " + list(named) + " only)",
		} {
			text := "CO 40 (44, 48, 52) sts.\n"
			if rest, ok := strings.CutPrefix(label, "*"); ok {
				label, text = rest, "Sizes: S (M, L, XL)\n"+text
			}
			if strings.Contains(label, "WS") {
				text += "Knit 1 row.\n"
			}
			text += label + ": K2tog, k to end."
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || !out.Agrees {
				t.Fatalf("%v, %s\n%s", err, said(&out), text)
			}
			for k := range 4 {
				if want := 40 + 4*k - set>>k&1; out.EndStitches[k] != want {
					t.Errorf("size %d ends with %d, not %d\n%s", k+1, out.EndStitches[k], want, text)
				}
			}
		}
	}
}

// TestSizesAreNeverPassedOver: what names sizes that nobody knows, or stands behind a row, is asked.
func TestSizesAreNeverPassedOver(t *testing.T) {
	for _, row := range []string{"Next row (size 9 only): K2tog, k to end.", "Next row (larger sizes only): K2tog, k to end.",
		"Next row: K2tog, k to end (sizes 2 and 3 only).", "Next row: K2tog, k to end (1st size only).",
		"Next row (XXL only): K2tog, k to end."} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "Sizes: S (M, L)\nCO 40 (44, 48) sts.\n" + row})
		if err != nil || out.Agrees {
			t.Errorf("%v, %v agrees: %s", err, out.EndStitches, row)
		}
	}
	for _, row := range []string{"Next row (all sizes): K2tog, k to end.", "All sizes: Next row: K2tog, k to end."} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 40 (44, 48) sts.\n" + row + " 39 (43, 47) sts."})
		if err != nil || !out.Agrees || out.WorkedRows[0] != 1 || out.EndStitches[2] != 47 {
			t.Errorf("%v, %v after %v: %s", err, out.EndStitches, out.WorkedRows, row)
		}
	}
}
