package pattern

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// gapped is a text whose numbers are those of a piece that a row has parted; the ones that may be another number by
// mistake stand in brackets, <20>.
type gapped struct{ text string }

// planted are the right text and those in which one such number is off.
func (g gapped) planted() (right string, wrong []string) {
	parts := strings.FieldsFunc(g.text, func(c rune) bool { return c == '<' || c == '>' })
	join := func(k, by int) string {
		var b strings.Builder
		for i, p := range parts {
			if i == k {
				n, err := strconv.Atoi(p)
				if err != nil {
					panic(err)
				}
				p = strconv.Itoa(n + by)
			}
			b.WriteString(p)
		}
		return b.String()
	}
	for k := 1; k < len(parts); k += 2 {
		for _, by := range []int{-2, -1, 1, 2} {
			wrong = append(wrong, join(k, by))
		}
	}
	return join(-1, 0), wrong
}

// gappedTexts puts together texts in which a row leaves one gap or two, of three parts that differ, and what is done with
// the parts. The sums are worked here. Common practice.
func gappedTexts() (texts []gapped) {
	for _, n := range [][3]int{{20, 50, 23}, {31, 64, 28}, {15, 40, 15}} {
		for _, gap := range []string{"BO 5", "cast off 7", "place next 9 sts on holder"} {
			var g int
			for _, c := range strings.Fields(gap) {
				_, _ = fmt.Sscan(c, &g)
			}
			sum := n[0] + n[1] + n[2] + 2*g
			parted := fmt.Sprintf("CO %d sts.\nKnit 4 rows.\nNext row (RS): K%d, %s, k%d, %s, k%d.\n", sum, n[0], gap, n[1], gap, n[2])
			for _, on := range []string{"Work on last %s sts only.\n", "Continue on last %s stitches only.\n", "Cont on last %s sts only.\n"} {
				first := fmt.Sprintf(on, fmt.Sprintf("<%d>", n[2])) + fmt.Sprintf("Next row (WS): Purl.\nKnit 3 rows.\nBO all %d sts.\n", n[2])
				texts = append(texts, gapped{parted + first})
				if !strings.HasPrefix(gap, "place") {
					texts = append(texts, gapped{parted + strings.NewReplacer("<", "", ">", "").Replace(first) +
						fmt.Sprintf("Rejoin yarn to next <%d> sts.\nKnit 4 rows. BO all sts.\nRejoin yarn to rem <%d> sts.\nKnit 4 rows. BO all sts.",
							n[1], n[0])})
				}
			}
			if g%2 != 0 && n[0] != n[2] { // over the gaps again: the row back begins with the last part
				cast := fmt.Sprintf("CO %d sts", g)
				texts = append(texts, gapped{parted +
					fmt.Sprintf("Next row (WS): P<%d>, %s, p%d, %s, purl to end. %d sts.", n[2], cast, n[1], cast, sum)})
			}
			one := fmt.Sprintf("CO %d sts.\nKnit 4 rows.\nNext row (RS): K%d, %s, k%d.\n", n[0]+n[1]+g, n[0], gap, n[1])
			texts = append(texts, gapped{one + fmt.Sprintf("Next row (WS): P<%d>, turn.\n", n[1])},
				gapped{one + fmt.Sprintf("Next row (WS): P<%d>, CO %d, p to end. %d sts.", n[1], g, n[0]+n[1]+g)})
		}
	}
	for holes := 4; holes <= 7; holes++ {
		for between := 6; between <= 12; between += 3 {
			sum := 10 + holes*(3+between) + 7
			row := fmt.Sprintf("CO %d sts.\nRow 1 (RS): K10, [BO 3, k%d] %d times, k7.\n", sum, between, holes)
			texts = append(texts,
				gapped{row + fmt.Sprintf("Row 2: P<%d>, [CO 3, p%d] %d times, p to end. %d sts.", 7+between, between, holes-1, sum-3)},
				gapped{row + fmt.Sprintf("Row 2: P<%d>, *CO 3, p%d; rep from * %d times, CO 3, p to end. %d sts.", 7+between, between, holes-2, sum)})
		}
	}
	return texts
}

// TestGapsAreRemembered: what is done after a row that leaves gaps is compared with where they lie.
func TestGapsAreRemembered(t *testing.T) {
	texts := gappedTexts()
	step := knittest.Sweep(1, 5)
	asked := 0
	for i := 0; i < len(texts); i += step {
		right, wrong := texts[i].planted()
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: right})
		if err != nil || !out.Agrees {
			t.Errorf("right, and not agreed with: %v %s\n%s", err, said(&out), right)
		}
		for _, text := range wrong {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees {
				t.Errorf("wrong, and agreed with: %v\n%s", err, text)
			}
			asked++
		}
	}
	t.Logf("%d wrong texts", asked)
}

// TestSleevesPutAsideInARepeat: each working of a repeat puts its own stitches aside.
func TestSleevesPutAsideInARepeat(t *testing.T) {
	for _, words := range []string{"place next %d sts on waste yarn for sleeve", "slip next %d sts onto a holder", "place %d sts on hold"} {
		for sleeve := 30; sleeve <= 54; sleeve += 6 {
			for _, rep := range []string{"*B; rep from * once more.", "[B] twice.", "*B; rep from * 1 time more."} {
				for by := -2; by <= 2; by++ {
					body := "k60, " + fmt.Sprintf(words, sleeve) + ", CO 8 sts"
					text := fmt.Sprintf("CO %d sts, join. Knit 2 rnds.\nNext rnd: ", 120+2*sleeve) + strings.Replace(rep, "B", body, 1) +
						fmt.Sprintf(" 136 sts.\nBO all sts.\nSLEEVES (both alike)\nPlace %d held sleeve sts on dpns. Pick up and knit 8 sts along underarm.",
							sleeve+by)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (by == 0) {
						t.Errorf("off by %d: agrees is %v, %v %s\n%s", by, out.Agrees, err, said(&out), text)
					}
				}
			}
		}
	}
}
