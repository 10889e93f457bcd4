package pattern

import (
	"fmt"
	"testing"
)

// TestWhatLeadsInMayCount: words before a direction or a row that would change the count, or say one that is wrong, are never passed
// over; those that change none are. All words are common practice.
func TestWhatLeadsInMayCount(t *testing.T) {
	wrong := []string{"With %d sts cast on at each side, ", "After decreasing %d sts, ", "Working %d sts tog at each end, ",
		"After %d increases, ",
		"Starting with %d decreases, ", "Keeping %d sts bound off at each end, ", "By picking up %d sts at each end, ",
		"Once you have 3%d sts, ",
		"When there are 5%d sts, ", "From the %d held sts, ", "As you narrow by %d at each end, ", "When %d sts have been decreased, ",
		"After flurble, ", "Once grumbled, ", "After a blorping, ", "If making the longer one, ", "By decreasing at each end, "}
	right := []string{"With RS facing, ", "After the last decrease, ",
		"Once all increases are complete, ", "Using larger needles, ",
		"With A and smaller needles, ", "When you have 40 sts, ", "Once there are 40 sts on the needle, ",
		"After casting on, ", "As before, ",
		"With one strand of each yarn held together, ", "When all decreases have been worked, ",
		"After joining, ", "After washing, ", "With yarn held double, ", "After the cast-on, "}
	then := []string{"knit 10 rows.", "k40.", "work 6 rows in St st.", "work even for 8 rows.", "k to end.", "purl 1 row."}
	for _, w := range then {
		for k, lead := range wrong {
			text := "CO 40 sts.\nKnit 2 rows.\n" + lead + w + "\nBO all sts."
			if k < 12 {
				text = fmt.Sprintf("CO 40 sts.\nKnit 2 rows.\n"+lead, 2+k%5) + w + "\nBO all sts."
			}
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.Agrees {
				t.Errorf("agrees with %q: %v", text, err)
			}
		}
		for _, lead := range right {
			text := "CO 40 sts.\nKnit 2 rows.\n" + lead + w + "\nBO all sts."
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
				t.Errorf("does not agree with %q: %v %s", text, err, judgedText(out.Findings))
			}
		}
	}
}
