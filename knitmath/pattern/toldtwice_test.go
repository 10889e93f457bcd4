package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// asksOrTells wants a text that is right agreed with, and the same with one thing wrong in it not.
func asksOrTells(t *testing.T, right, wrong string) {
	t.Helper()
	for text, agrees := range map[string]bool{right: true, wrong: false} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.Agrees != agrees {
			t.Errorf("agrees %v with %q: %v, %s", out.Agrees, text, err, judgedText(out.Findings))
		}
	}
}

// TestRowsInAllOfARepeat: "a total of so many times" counts the rows worked before, "so many more times" may count them or not; but
// of rows "in all" that are those of the repeat alone it is asked which are meant. The numbers are those of this sweep.
func TestRowsInAllOfARepeat(t *testing.T) {
	for rows := 2; rows <= 8; rows += 2 {
		for _, times := range []int{5, 12, 51} {
			for _, form := range []string{"Work Rows 1-%d a total of %d times (%d rows).", "Rep Rows 1-%d for a total of %d times. (%d rows)",
				"Rep Rows 1-%d %d times in all (%d rows)."} {
				text := func(n int) string {
					return fmt.Sprintf("CO 28 sts.\nRows 1-%d: Knit.\n", rows) + fmt.Sprintf(form, rows, times, n) + "\nBO all sts."
				}
				asksOrTells(t, text(rows*times), text(rows*(times-1)))
				asksOrTells(t, text(rows*times), text(rows*times+1))
			}
			for _, form := range []string{"Rep Rows 1-%d %d more times (%d rows total).", "Work Rows 1-%d %d times more (%d rows in total).",
				"Rep Rows 1-%d %d times more. (%d rows)"} {
				text := func(n int) string {
					return fmt.Sprintf("CO 28 sts.\nRows 1-%d: Knit.\n", rows) + fmt.Sprintf(form, rows, times, n) + "\nBO all sts."
				}
				asksOrTells(t, text(rows*(times+1)), text(rows*(times-1)))
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text(rows * times)})
				said := fmt.Sprintf("%d without the first working, %d with it: say which", rows*times, rows*(times+1))
				if total := strings.Contains(form, "total"); err != nil || total != (out.questions == 1) || out.Agrees == total ||
					total != strings.Contains(fmt.Sprint(out.Findings), said) {
					t.Errorf("%q: %v, wanted %q asked: %v", text(rows*times), out.Findings, said, total)
				}
			}
		}
	}
}

// TestWhatIsSaidTwiceOrNever: rows, stitches and markers of which the text cannot speak as it does.
func TestWhatIsSaidTwiceOrNever(t *testing.T) {
	for _, off := range [][2]string{{"CO", "BO all sts."}, {"Cast on", "Cast off."}} {
		on, end := off[0], off[1]
		// Two rows where one stands: those of another piece are none of them. The row of the pick-up is one where it is numbered.
		band := on + " 20 sts.\nKnit 2 rows.\n" + end + "\nBUTTON BAND\nWith RS facing, pick up and knit 98 sts evenly along edge.\n"
		asksOrTells(t, band+"Row 1 (WS): Purl.\nRow 2: Knit.\nRep these 2 rows twice more.\n"+end,
			band+"Row 1 (WS): Purl.\nRep these 2 rows twice more.\n"+end)
		// A rule for the side on which its own row is not.
		for _, side := range []string{"RS", "WS"} {
			ruled := on + " 45 sts.\nRow 1 (" + side + "): K2tog, k to end. 44 sts.\n" +
				"Row 2 and all %s rows: Purl.\nRow 3: K2tog, k to end. 43 sts.\n" + end
			asksOrTells(t, strings.Replace(ruled, "%s", map[string]string{"RS": "WS", "WS": "RS"}[side], 1), strings.Replace(ruled, "%s", side, 1))
		}
		// The same stitches put aside twice.
		held := on + " 60 sts.\nKnit 4 rows.\nPlace the first 20 sts on a holder.\n%sKnit 4 rows.\n" + end
		asksOrTells(t, strings.Replace(held, "%s", "", 1), strings.Replace(held, "%s", "Place the first 20 sts on a holder.\n", 1))
		for _, verb := range []string{"Slip the", "Leave", "Put"} {
			for _, place := range []string{"first", "last", "centre"} {
				said := held2(verb, place)
				for _, between := range []string{"", "Knit 2 rows.\n", "Row 1: Knit.\nRow 2: Purl.\n", "Work 4 rows in St st.\n"} {
					one := on + " 80 sts.\nKnit 4 rows.\nPlace the " + place + " 20 sts on a holder.\n" + between
					asksOrTells(t, one+"Knit 4 rows.\n"+end, one+said+"Knit 4 rows.\n"+end)
				}
				row := on + " 60 sts.\nNext row: K20, place next 20 sts on a holder, k to end.\n"
				if place == "centre" {
					asksOrTells(t, row+"Knit 4 rows.\n"+end, row+said+"Knit 4 rows.\n"+end)
				}
			}
		}
		// Markers that were never placed.
		for _, slip := range []string{"sl m", "sm", "slip marker", "slip m", "remove marker"} {
			row := "Row 2: K20, " + slip + ", k to end.\n" + end
			asksOrTells(t, on+" 60 sts.\nRow 1: K40, pm, k20.\n"+row, on+" 60 sts.\nRow 1: Knit.\n"+row)
		}
		// Stitches of a piece that is left for the next one.
		two := "BACK\n" + on + " 70 sts.\nKnit 10 rows.\n%sFRONT\n" + on + " 43 sts.\nKnit 4 rows.\n" + end
		asksOrTells(t, strings.Replace(two, "%s", end+"\n", 1), strings.Replace(two, "%s", "", 1))
		asksOrTells(t, strings.Replace(two, "%s", "Leave these 70 sts on a holder.\n", 1), strings.Replace(two, "%s", "", 1))
	}
}

// held2 puts 20 stitches aside in other words.
func held2(verb, place string) string { return verb + " " + place + " 20 sts on waste yarn.\n" }
