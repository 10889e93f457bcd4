package pattern

import (
	"fmt"
	"testing"
)

// TestEdgeRowsAgain: rows at whose beginnings stitches are bound off or cast on are repeated with all that they do. Sums; the words
// are common practice.
func TestEdgeRowsAgain(t *testing.T) {
	var texts []worded
	for _, verb := range [...]struct {
		said string
		sign int
	}{{"BO", -1}, {"Bind off", -1}, {"Cast off", -1}, {"CO", 1}, {"Cast on", 1}} {
		for _, again := range []string{"Rep these 2 rows", "Rep last 2 rows", "Repeat the last 2 rows"} {
			for _, rows := range [...]struct {
				said string
				n    int // that change the count, of two
			}{{"next 2 rows.", 2}, {"next row.\nNext row: Purl.", 1}, {"the next row.\nPurl 1 row.", 1}} {
				for times := 2; times <= 4; times++ {
					for _, start := range [][]int{{60}, {60, 68, 80}} {
						sum := each(start, func(n int) int { return n + verb.sign*rows.n*(times+1)*2 })
						texts = append(texts, worded{text: fmt.Sprintf("CO %s sts. Knit 4 rows.\n%s 2 sts at beg of %s\n%s %d times more. %s sts.",
							asPrinted(start), verb.said, rows.said, again, times, asPrinted(sum)), stitches: sum,
							rows: each(start, func(int) int { return 6 + 2*times })})
					}
				}
			}
		}
	}
	askShort(t, texts)
}

// TestPlainRowLost: where the plain row is lost between a decrease and "rep these 2 rows", the one before the decrease is the last of
// those at whose beginnings stitches are bound off: it is asked, whatever is claimed. With the row all agrees.
func TestPlainRowLost(t *testing.T) {
	for _, edge := range []string{"BO 2 sts at beg of next 2 rows", "Bind off 2 sts at beginning of next 4 rows",
		"CO 2 sts at beg of next 2 rows"} {
		for _, dec := range []string{"Next row (RS): Ssk, k to last 2 sts, k2tog.", "Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1."} {
			for _, again := range []string{"Rep these 2 rows", "Rep last 2 rows", "Repeat the last 2 rows"} {
				for times := 2; times <= 5; times++ {
					change := map[byte]int{'B': -4, 'C': 4}[edge[0]]
					if edge[0] == 'B' && edge[1] == 'i' {
						change = -8
					}
					n := 60 + change - 2*(times+1)
					text := fmt.Sprintf("CO 60 sts. Knit 4 rows.\n%s.\n%s\n%%s%s %d times more. ", edge, dec, again, times)
					right := fmt.Sprintf(text, "Next row: Purl.\n") + fmt.Sprintf("%d sts.", n)
					if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: right}); err != nil || !out.Agrees {
						t.Errorf("%v %s\n%s", err, said(&out), right)
					}
					lost := fmt.Sprintf(text, "")
					for _, claim := range []string{"", fmt.Sprintf("%d sts.", n), fmt.Sprintf("%d sts.", n+change/2*times)} {
						out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: lost + claim})
						if err != nil || out.Agrees || out.questions == 0 {
							t.Errorf("%v %s\n%s", err, said(&out), lost+claim)
						}
					}
				}
			}
		}
	}
}
