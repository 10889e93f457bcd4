package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestCastOnFreed: a cast-on is undone and its stitches come to those in work, in many words and in one and three
// sizes; with a count that is off, of the stitches freed or of all, none is agreed with.
func TestCastOnFreed(t *testing.T) {
	casts := []string{"Using a provisional cast-on, CO N sts.", "Using a provisional cast on, cast on N sts.",
		"With waste yarn, CO N sts.",
		"CO N sts provisionally.", "With the provisional cast on method, CO N sts."}
	undo := []string{"Undo provisional cast-on", "Carefully undo the provisional cast-on", "Unpick the provisional cast on",
		"Remove waste yarn",
		"Unzip the provisional cast-on", "Remove the waste yarn from the cast-on edge", "Release the provisional cast-on"}
	joins := [][2]string{{" and ", "place"}, {" and ", "put"}, {", ", "placing"}, {" and ", "slip"}, {"; ", "place"}, {" and ", "transfer"}}
	which := []string{"N sts", "the N sts", "the resulting N sts", "these N live sts", "the released sts", "live sts", "N freed sts"}
	onto := []string{"on needle", "onto a spare needle", "on dpns", "back on the needles", "on a second circular needle", "on to 2 dpns"}
	claims := []string{". M sts.", " (M sts).", ": M sts.", ". (M sts)", ", M sts."}
	var texts []worded
	var wrong []string
	k := 0
	for _, u := range undo {
		for _, j := range joins {
			for _, w := range which {
				for _, o := range onto {
					n := []int{28 + 2*(k%5)}
					if k%3 == 0 {
						n = []int{n[0], n[0] + 4, n[0] + 8}
					}
					both := each(n, func(i int) int { return 2 * i })
					printed := func(s string, n, m []int) string {
						return strings.NewReplacer("N", asPrinted(n), "M", asPrinted(m)).Replace(s)
					}
					cast := printed(casts[k%len(casts)], n, both) + "\nKnit 4 rows.\n"
					after := "\nJoin in the round.\nKnit 2 rnds.\n"
					text := func(free, all []int) string {
						return cast + printed(u+j[0]+j[1]+" "+w+" "+o+claims[k%len(claims)], free, all) + after
					}
					texts = append(texts, worded{text: text(n, both), stitches: both, rows: each(n, func(int) int { return 6 })})
					wrong = append(wrong, text(n, each(both, func(i int) int { return i - 2 })))
					if strings.Contains(w, "N") {
						off := each(n, func(i int) int { return i + 6 })
						wrong = append(wrong, text(off, each(both, func(i int) int { return i + 6 })))
					}
					k++
				}
			}
		}
	}
	askWorded(t, texts, 100, 0)
	for i := 0; i < len(wrong); i += 1 + len(wrong)/200 {
		if out := asked(t, wrong[i], 0, stitch.Flat); out.Agrees {
			t.Errorf("agreed with %q", wrong[i])
		}
	}
}

// TestWrapsTaken: a short-row toe over 2n stitches of which c are left between the turns; the wraps are worked with
// their stitches in many words. The stitches stay as many as they were, and twice n-c/2 rows widen again.
func TestWrapsTaken(t *testing.T) {
	places := []string{"to first wrapped st", "to wrapped st", "to the next wrapped st", "to wrapped stitch"}
	takes := []string{"VERB it with its wrap", "VERB it tog with its wrap", "VERB the wrap tog with the st",
		"pick up wrap and VERB it tog with the st",
		"lift the wrap and VERB it together with its st", "VERB next st with its wrap", "VERB wrap and st together", "VERB st and wrap tog",
		"VERB the wrap together with its stitch", "pick up the wrap, VERB it together with next st"}
	ends := []string{"until all sts have been worked", "until all wraps have been worked", "until all sts are worked"}
	var texts []worded
	for i, place := range places {
		for k, take := range takes {
			for l, end := range ends {
				half, centre := 12+(i+k)%4, 8+2*(l+k)%6
				row := func(verb string) string {
					return verb + " " + place + ", " + strings.ReplaceAll(take, "VERB", strings.ToLower(verb)) + ", turn."
				}
				text := fmt.Sprintf("CO %d sts.\nRow 1 (RS): Knit to last st, w&t.\nRow 2: Purl to last st, w&t.\n"+
					"Row 3: Knit to 1 st before wrapped st, w&t.\nRow 4: Purl to 1 st before wrapped st, w&t.\n"+
					"Rep Rows 3 and 4 until %d sts remain unwrapped.\nRow 5: %s\nRow 6: Sl 1, %s\nRep last 2 rows %s.\n",
					2*half, centre, row("Knit"), strings.ToLower(row("Purl")[:1])+row("Purl")[1:], end)
				side := half - centre/2
				texts = append(texts, worded{text: text, stitches: []int{2 * half}, rows: []int{4 * side}})
			}
		}
	}
	askWorded(t, texts, 100, 0)
}

// TestWorkedInRounds: what is worked, and that it is in the round, in either order.
func TestWorkedInRounds(t *testing.T) {
	var texts []worded
	for _, verb := range []string{"Work", "Continue", "Cont", "Join and work", "Now work"} {
		for _, turns := range []string{"in rounds of F", "in rnds of F", "in the round in F", "in rounds in F", "in F in the round",
			"in the rnd in F", "in F in rounds"} {
			for _, fabric := range []string{"St st", "stocking stitch", "k1, p1 rib", "garter st", "stockinette st"} {
				for _, until := range []string{"until foot measures 18 cm", "for 12 rounds", "for 5 cm", "until 12 rnds have been worked"} {
					text := "CO 48 sts. Join.\n" + verb + " " + strings.ReplaceAll(turns, "F", fabric) + " " + until + ".\n"
					w := worded{text: text, stitches: []int{48}}
					if strings.Contains(until, "12") {
						w.rows = []int{12}
					}
					texts = append(texts, w)
				}
			}
		}
	}
	askWorded(t, texts, 100, 0)
}

// TestCastOnLabelled: the cast-on of a piece as a list of an app writes it.
func TestCastOnLabelled(t *testing.T) {
	for _, said := range []string{"Cast-on: N stitches", "Cast on: N sts.", "Cast-on N sts", "Cast-on: N",
		"Cast on: N stitches (long-tail)."} {
		for _, n := range [][]int{{9}, {40, 48, 56}} {
			text := strings.ReplaceAll(said, "N", asPrinted(n)) + "\nRow 1: Knit.\nRow 2: K2tog, k to end. (%s sts)"
			for off := range 2 {
				left := each(n, func(i int) int { return i - 1 + off })
				if out := asked(t, fmt.Sprintf(text, asPrinted(left)), 0, stitch.Flat); out.Agrees != (off == 0) {
					t.Errorf("%q: %s", text, judgedText(out.Findings))
				}
			}
		}
	}
}
