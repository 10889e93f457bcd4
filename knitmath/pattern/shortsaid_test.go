package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// askShort asks texts that end in a claim of their stitches, and each with another claim, which may not agree. The sums are
// those of the lists; the words are common practice.
func askShort(t *testing.T, texts []worded) {
	t.Helper()
	askWorded(t, texts, 100, 0)
	for i := range texts {
		w := &texts[i]
		claim := asPrinted(w.stitches) + " sts."
		if !strings.HasSuffix(w.text, claim) {
			t.Fatalf("no claim at the end of %q", w.text)
		}
		in := CheckInstructionsInput{Text: strings.TrimSuffix(w.text, claim) + asPrinted(each(w.stitches, func(n int) int { return n + 1 })) +
			" sts.", StartStitches: w.start}
		if w.round {
			in.Construction = stitch.InTheRound
		}
		if out, err := CheckInstructions(t.Context(), in); err != nil || out.Agrees {
			t.Errorf("agrees with what is planted, or %v\n%s", err, in.Text)
		}
	}
}

// TestCastOnSaidShort: a cast-on behind a colon, and two sizes parted by a stroke alone.
func TestCastOnSaidShort(t *testing.T) {
	var texts []worded
	for _, lead := range []string{"CO: ", "Co: ", "CO ", "Cast on: ", "Cast-on: ", "Cast on "} {
		for _, n := range []int{9, 40, 96} {
			for _, stop := range []string{" sts.\nKnit 4 rows. ", " stitches\nKnit 4 rows. ", " sts\n\nRows 1-4: Knit. "} {
				texts = append(texts, worded{text: fmt.Sprintf("%s%d%s%d sts.", lead, n, stop, n), stitches: []int{n}, rows: []int{4}})
			}
		}
	}
	askShort(t, texts)
	for _, lead := range []string{"CO: ", "CO ", "Cast on "} {
		for _, n := range [][2]int{{9, 11}, {40, 44}, {96, 104}} {
			for _, rib := range []string{"Knit 10 rows.", "Work 2/2 rib for 10 rows."} {
				text := fmt.Sprintf("%s%d/%d sts. %s %d/%%d sts. Next row: K1, k2tog, k to end.", lead, n[0], n[1], rib, n[0])
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, n[1])})
				if err != nil || !out.Agrees || fmt.Sprint(out.EndStitches) != fmt.Sprint([]int{n[0] - 1, n[1] - 1}) {
					t.Errorf("%v %v %s\n%s", err, out.EndStitches, said(&out), text)
				}
				if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, n[1]+2)}); err != nil || out.Agrees {
					t.Errorf("agrees with what is planted, or %v: %s", err, text)
				}
			}
		}
	}
}

// TestEdgesSaidShort: "at" and "of" left out, and "ea" for each.
func TestEdgesSaidShort(t *testing.T) {
	var texts []worded
	for _, verb := range []string{"BO ", "Bind off ", "Cast off ", "CO "} {
		for _, beg := range []string{" sts beg next ", " sts beg of next ", " sts at beg next ", " sts beginning of next ", " sts beg foll "} {
			for rows := 2; rows <= 6; rows += 2 {
				sum := 40 - 3*rows
				if verb == "CO " {
					sum = 40 + 3*rows
				}
				texts = append(texts, worded{text: fmt.Sprintf("Knit 4 rows. %s3%s%d rows. %d sts.", verb, beg, rows, sum),
					start: []int{40}, stitches: []int{sum}, rows: []int{4 + rows}})
			}
		}
	}
	for _, verb := range []string{"dec", "Dec", "inc", "Inc"} {
		for _, when := range []struct {
			said        string
			rows, times int
		}{{"next row", 1, 1}, {"every 4th row 3 times", 12, 3}, {"ea row 5 times", 5, 5}, {"of next row", 1, 1},
			{"every other row 4 times", 8, 4}} {
			sum := 40 - 2*when.times
			if lowered(verb) == "inc" {
				sum = 40 + 2*when.times
			}
			texts = append(texts, worded{text: fmt.Sprintf("Knit 4 rows. %s 1 st ea end %s. %d sts.", verb, when.said, sum),
				start: []int{40}, stitches: []int{sum}, rows: []int{4 + when.rows}})
		}
	}
	askShort(t, texts)
}

// TestRowCalledAmongOthers: a row that is called by its name after a comma is worked, in a bracket and out of one, and is no
// label of what follows it.
func TestRowCalledAmongOthers(t *testing.T) {
	var texts []worded
	for _, row := range []struct {
		name, worked string
		change       int
	}{{"dec rnd", "K1, k2tog, k to last 3 sts, ssk, k1", -2}, {"eyelet rnd", "K1, yo, k2tog, k to end", 0}, {"inc rnd", "K1, yo, k to end", 1},
		{"sleeve dec rnd", "K2tog, k to end", -1}} {
		first := fmt.Sprintf("%s%s: %s. %d sts.\n", strings.ToUpper(row.name[:1]), row.name[1:], row.worked, 40+row.change)
		for _, way := range []struct {
			said        string
			calls, rows int
		}{{"(Knit 3 rnds, NAME) twice", 2, 8}, {"[Knit 3 rnds, NAME] 3 times", 3, 12}, {"(Knit 3 rnds, then NAME) 2 times", 2, 8},
			{"[Knit 3 rnds, NAME, knit 1 rnd] twice", 2, 10}, {"Knit 3 rnds, NAME, knit 1 rnd", 1, 5}, {"Knit 3 rnds, NAME", 1, 4},
			{"Knit 3 rnds, NAME, knit 4 rnds, NAME", 2, 9}, {"*Knit 3 rnds, NAME; rep from * once more", 2, 8},
			{"Knit 2 rnds, NAME and knit 1 rnd", 1, 4}} {
			sum := 40 + row.change*(1+way.calls)
			texts = append(texts, worded{text: fmt.Sprintf("%s%s. %d sts.", first, strings.ReplaceAll(way.said, "NAME", row.name), sum),
				start: []int{40}, round: true, stitches: []int{sum}, rows: []int{1 + way.rows}})
		}
	}
	askShort(t, texts)
}

// TestWordsOfTheLanguage: of a short word that is no abbreviation it is not said that it can be declared.
func TestWordsOfTheLanguage(t *testing.T) {
	for _, word := range strings.Fields(`from even held heel than them they same left part here body neck hem cuff foot hand have make keep
		hold some must such until only`) {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "Row 1: K4, " + word + " 3, k to end.", StartStitches: []int{20}})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range out.Findings {
			if f.Reason == ReasonUnknown {
				t.Errorf("%q: %s", word, f.Description)
			}
		}
	}
	for _, short := range []string{"zq2", "xyb", "Kx", "brpt"} {
		out, _ := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "Row 1: K4, " + short + ", k to end.", StartStitches: []int{20}})
		if out.Agrees || len(out.Findings) == 0 || out.Findings[0].Reason != ReasonUnknown {
			t.Errorf("%q: %s", short, said(&out))
		}
	}
}

// TestEvenAlone: "even" alone behind the numbers of rows.
func TestEvenAlone(t *testing.T) {
	var texts []worded
	for _, way := range []string{": even", " - even", ": work even", ": even.", " - work even."} {
		for last := 12; last <= 22; last += 5 {
			for _, next := range []string{"\nRow %d: Knit. 20 sts.", "\nRow %d: Purl. 20 sts."} {
				texts = append(texts, worded{text: fmt.Sprintf("Rows 1-11: Knit.\nRows 12-%d%s"+next, last, way, last+1),
					start: []int{20}, stitches: []int{20}, rows: []int{last + 1}})
			}
		}
	}
	askShort(t, texts)
}

// TestWorkingOnSomeOnly: "Working on 28 sts only:" before rows that are written.
func TestWorkingOnSomeOnly(t *testing.T) {
	var texts []worded
	for _, lead := range []string{"Working on 28 sts only:", "Working on the first 28 sts only:", "Working back and forth on 28 sts only:",
		"Working on these 28 sts only:"} {
		for _, parted := range []string{". ", ".\n", ".\n\n"} {
			for _, heel := range []string{"Row 1: Sl 1, k to end.\nRow 2: Sl 1, p to end. 28 sts.", "Row 1: K28.\nRow 2: P28. 28 sts."} {
				texts = append(texts, worded{text: "Knit 10 rnds" + parted + lead + "\n" + heel, start: []int{56}, round: true,
					stitches: []int{28}, rows: []int{12}})
			}
		}
	}
	askShort(t, texts)
}

// TestGraftedAlikeStay: two sets that are grafted have as many stitches each, also in what is offered first.
func TestGraftedAlikeStay(t *testing.T) {
	for n := 3; n <= 30; n++ {
		for _, said := range []int{n - 1, n + 1} {
			in := CheckInstructionsInput{Text: fmt.Sprintf("CO %d sts. Knit 4 rows. Graft %d sts to %d sts.", 2*n, said, said)}
			out, err := CheckInstructions(t.Context(), in)
			if err != nil || len(out.Findings) != 1 || len(out.Findings[0].Corrections) == 0 {
				t.Fatalf("%v %s\n%s", err, judgedText(out.Findings), in.Text)
			}
			if c := out.Findings[0].Corrections[0]; c.Replacement != fmt.Sprintf("%d sts to %d", n, n) {
				t.Errorf("%s: %+v", in.Text, c)
			}
		}
	}
}
