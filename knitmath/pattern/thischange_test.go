package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestThisDecreaseRow: the row just worked is called by its change and worked again; a count that is off is told, and a
// row that changed the other way is not the one that is meant.
func TestThisDecreaseRow(t *testing.T) {
	again := []string{"Rep this NAME every Eth R N more times", "Work this NAME every Eth R N times more",
		"Repeat this NAME every E Rs N more times",
		"Rep the last NAME every Eth R N more times", "Repeat this NAME on every foll Eth R N more times"}
	names := []string{"CHANGE R", "change R", "CHANGEreaseing R", "shaping R"}
	for _, word := range [][2]string{{"row", "Next row (RS)"}, {"rnd", "Next rnd"}, {"round", "Next round"}} {
		for _, change := range []string{"dec", "inc", "decrease", "increase"} {
			steps, by := "K1, k2tog, k to last 3 sts, ssk, k1.", -2
			if strings.HasPrefix(change, "inc") {
				steps, by = "K1, m1l, k to last st, m1r, k1.", 2
			}
			for i, a := range again {
				name := strings.NewReplacer("CHANGEreaseing", change[:3]+"reasing", "CHANGE", change, "change", change).Replace(names[i%len(names)])
				every, n := 4+2*(i%2), 3+i
				line := strings.NewReplacer("NAME", name, "E", fmt.Sprint(every), "N ", fmt.Sprint(n)+" ").Replace(a)
				line = strings.ReplaceAll(line, "R", word[0])
				line = strings.Replace(line, word[0]+"epeat", "Repeat", 1)
				line = strings.Replace(line, word[0]+"ep", "Rep", 1)
				text := "CO 60 sts"
				if word[0] != "row" {
					text += ", join"
				}
				text += ".\nKnit 8 " + word[0] + "s.\n" + word[1] + ": " + steps + "\n" + line + ". %d sts."
				right := 60 + by*(n+1)
				for off := -2; off <= 2; off += 2 {
					text := fmt.Sprintf(text, right+off)
					out := asked(t, text, 0, stitch.Flat)
					if out.Agrees != (off == 0) || out.mistakes == 0 != (off == 0) {
						t.Errorf("%q: agrees %v, %s", text, out.Agrees, said(&out))
					}
				}
				other := strings.NewReplacer("decrease", "increase", "increase", "decrease", "dec", "inc", "inc", "dec").Replace(line)
				if out := asked(t, fmt.Sprintf(strings.Replace(text, line, other, 1), right), 0, stitch.Flat); out.Agrees && other != line {
					t.Errorf("%q is agreed with", other)
				}
			}
		}
	}
}

// TestThingsPutOn: eyes, buttons and the like are put on between the rows of a toy, with numbers of their own.
func TestThingsPutOn(t *testing.T) {
	for _, said := range []string{"Insert safety eyes between rnds 2 and 3, 8 sts apart.", "Attach safety eyes between rnds 2 and 3.",
		"Place eyes at Rnd 4, 5 sts apart.", "Add the eyes at Row 2, 4 sts apart. Embroider a nose over 3 sts.", "Sew 3 buttons on rnd 5.",
		"Position the 2 eyes 6 sts apart between Rounds 10 and 11, and fix them.", "Embroider a mouth over 5 sts below the nose."} {
		text := "CO 12 sts, join.\nKnit 3 rnds.\n" + said + "\nKnit 3 rnds. %d sts."
		for off := range 2 {
			text := fmt.Sprintf(text, 12+off)
			if out := asked(t, text, 0, stitch.Flat); out.Agrees != (off == 0) || out.WorkedRows[0] != 6 {
				t.Errorf("%q: %v rows, %s", text, out.WorkedRows, judgedText(out.Findings))
			}
		}
	}
	for _, text := range []string{"CO 40 sts.\nKnit 3 rows.\nPlace 10 button band sts on a holder.\nKnit 1 row. 40 sts.",
		"CO 40 sts.\nKnit 3 rows.\nWork buttonhole: k2tog, yo twice.\nKnit 1 row. 41 sts."} {
		if out := asked(t, text, 0, stitch.Flat); out.Agrees {
			t.Errorf("%q agrees", text)
		}
	}
}

// TestPicturesAndArrows: little pictures beside words, and an arrow before what a row comes to.
func TestPicturesAndArrows(t *testing.T) {
	for _, picture := range []string{"", " 🔁", " ✅", " 🧶", " ❤️", " ✨"} {
		for _, arrow := range []string{" → ", " -> ", " => ", " ➡️ = ", " → "} {
			for _, count := range []string{"60", "60 sts", "(60 sts)", "61"} {
				text := "CO 66 sts, join" + picture + "\nR1: [k9, k2tog] x6" + arrow + count + "\n"
				if out := asked(t, text, 0, stitch.Flat); out.Agrees != (count != "61") {
					t.Errorf("%q: %s", text, judgedText(out.Findings))
				}
			}
		}
	}
	if out := asked(t, "CO 9 sts\nRow 1: k3, ○, k2tog, k4", 0, stitch.Flat); out.Agrees {
		t.Error("a sign of a chart is passed over")
	}
}

// TestBordersAndLengths: borders are told before the length in one size and in several.
func TestBordersAndLengths(t *testing.T) {
	var texts []worded
	for _, border := range []string{"with garter st borders", "with 4-st garter borders", "with a 4-st garter border at each side",
		"keeping 3 sts at each edge in garter st", "with 3 sts in garter st at each edge", "with seed stitch edges"} {
		for _, until := range []string{"for 14 (15) cm", "until piece measures 14 (15) cm", "for 6½ (7) ins", "for 10 rows", "for 14 cm"} {
			w := worded{text: "CO 40 (44) sts.\nWork in St st " + border + " " + until + ".\nKnit 2 rows.", stitches: []int{40, 44}}
			if strings.Contains(until, "rows") {
				w.rows = []int{12, 12}
			}
			texts = append(texts, w)
		}
	}
	askWorded(t, texts, 100, 0)
}
