package pattern

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// TestProofByHand: a draft in two sizes with a mistake, and what stands beside it.
func TestProofByHand(t *testing.T) {
	text := "SLEEVE\nCO 20 (24) sts.\nRow 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1. (18, 21 sts)\n" +
		"Row 2: Purl.\n\nRep Rows 1 and 2 twice more. Bind off.\n"
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, WithProof: true})
	if err != nil {
		t.Fatal(err)
	}
	rule := strings.Repeat("-", 100)
	want := strings.Join([]string{
		"Checked in 2 sizes: 1 mistake.",
		"",
		"  line     row  side  the draft                                     before          after",
		rule,
		"~    1                SLEEVE",
		"     2                CO 20 (24) sts.                               20 (24)         20 (24)",
		"!    3       1  RS    Row 1 (RS): K1, ssk, k to last 3 sts, k2tog,  20 (24)         18 (22)",
		"                      k1. (18, 21 sts)",
		"!                       mistake at column 55, \"21\": there are 22 stitches, not 21. In size 2. It",
		"                        would be right with 22 sts instead of 21, or with 23 cast on instead of 24",
		"                        in line 2.",
		"     4       2  WS    Row 2: Purl.                                  18 (22)         18 (22)",
		"     5",
		"     6     3-6  RS    Rep Rows 1 and 2 twice more. Bind off.        18 (22)         14 (18)",
		"             7  RS                                                  14 (18)         0",
		rule,
		"At the end: 0 sts, after 7 rows.",
		"Rows are numbered as in the first size.",
		"! mistake  ? question  > how it was read  ~ passed over: not worked",
		"",
	}, "\n")
	if out.Proof != want {
		t.Errorf("got\n%s\nwant\n%s", out.Proof, want)
	}
}

// FuzzProof: whatever is read can be printed: every line of the draft once, none wider
// than the page, and nothing that cannot be seen.
func FuzzProof(f *testing.F) {
	for _, seed := range []string{"k5", "CO 20 (24) sts\r\nRow 1:\tk to end\rfoo\u200b bar", "\n\n",
		strings.Repeat("x", 300), "k1 (2, 3\n, 4)\xff", "\u0007k"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{40, 44},
			WithProof: true, WithRuns: true})
		if err != nil {
			return
		}
		for _, line := range strings.Split(out.Proof, "\n") {
			if utf8.RuneCountInString(line) > proofWidth || strings.ContainsAny(line, "\r\t\x00\x07") {
				t.Fatalf("%q: a line of the proof is %q", text, line)
			}
		}
		for _, r := range out.Runs {
			if r.Times < 1 || len(r.LinePlaces) < 1 || r.FirstRowNumber < 1 ||
				len(r.ChangeStitches) != 0 && len(r.ChangeStitches) != len(r.LinePlaces) {
				t.Fatalf("%q: %+v", text, r)
			}
		}
	})
}

// TestProofTellsWhere: mistakes are listed at the top, a count that is not known is a question
// mark, and which of two alike numbers is to be changed is said.
func TestProofTellsWhere(t *testing.T) {
	text := "CO 40 sts.\nRow 1: K1, k2tog, k1, k2tog, k to end. 36 sts.\nNext row: Flurble the brim.\nKnit 2 rows.\nRow 5: P47. 46 sts.\n"
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, WithProof: true})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"Mistakes in lines 2 and 5.\n",
		"     4     3-4  RS    Knit 2 rows.                                  ?               ?\n",
	} {
		if !strings.Contains(out.Proof, want) {
			t.Errorf("no %q in\n%s", want, out.Proof)
		}
	}
	text = "CO 42 sts.\nBO 5 sts at beg of next 5 rows. 22 sts.\nK2tog, k to end. 21 sts.\n"
	if out, err = CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, WithProof: true}); err != nil ||
		!strings.Contains(out.Proof, "4 sts instead of 5 at column 4") {
		t.Errorf("%v\n%s", err, out.Proof)
	}
}

// A row that ends with a wrap and a turn turns the work also where its stitches are not known.
func TestTurnedWhereTheCountIsNotKnown(t *testing.T) {
	text := "CO 40 sts, join.\nRnd 1: Flurble.\nRow 1 (RS): K12, w&t.\nRow 2 (WS): P24, w&t.\nRow 3 (RS): K to end.\n"
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil || out.mistakes > 0 {
		t.Errorf("%v: %s", err, judgedText(out.Findings))
	}
}

// How a word is read is printed where it stands first; every place of it is among the findings.
func TestProofSaysOnceHowAWordIsRead(t *testing.T) {
	text := "CO 10 sts.\nRow 1: K2, M1, k6, M1, k2. 12 sts.\nRow 2: Purl.\nRow 3: K2, M1, k8, M1, k2. 14 sts.\n"
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, WithProof: true})
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(out.Proof, "leans either way"); n != 1 || !strings.Contains(out.Proof, "It stands in 4 places.") {
		t.Errorf("said %d times in\n%s", n, out.Proof)
	}
	if len(out.Findings) != 4 {
		t.Errorf("%d findings, not 4", len(out.Findings))
	}
}
