package pattern

import (
	"math/rand"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Sentences of small things, put together from lists of words: all the words are common practice, and each count is
// worked out by whoever puts the sentence together, not by the reader.

// smallCase is such a sentence, the stitches that it begins with, its count and what a wrong one would stand for.
type smallCase struct {
	text, wrong string
	start, end  int
	round       bool
}

func pick(r *rand.Rand, list ...string) string { return list[r.Intn(len(list))] }

// crownCase is a round of decreases, with plain ones after it, the count in any of its places.
func crownCase(r *rand.Rand) smallCase {
	n, times := 2+r.Intn(9), 4+r.Intn(9)
	start := times * (n + 2)
	end := times * (n + 1)
	k := strconv.Itoa(n)
	t := strconv.Itoa(times)
	label := pick(r, "Rnd 1: ", "Round 1: ", "Dec rnd: ", "Next rnd: ", "Decrease round: ", "1st rnd: ", "Rnd 1 (dec): ",
		"R1: ", "Rnd 1 - ",
		"First round: ", "Crown: Rnd 1: ", "Decrease: ")
	row := pick(r,
		"*K"+k+", k2tog; rep from * around", "*K"+k+", k2tog; rep from * to end", "*k"+k+", k2tog, repeat from * to end of rnd",
		"[K"+k+", k2tog] "+t+" times", "(k"+k+", k2tog) x "+t, "(K"+k+", k2tog) around",
		"*Knit "+k+", knit 2 together; repeat from * around",
		"*k"+k+", k2tog* around", "*K"+k+", k2tog; rep from * "+strconv.Itoa(times-1)+" more times", "*k"+k+", ssk; rep from *",
		"[k"+k+", k2tog] to end", "*Knit "+k+", k2tog* to end of round", "(k2tog, k"+k+") "+t+"x",
		"*K2tog, k"+k+". Repeat from * around")
	counts := [...][2]string{{". ", " sts."}, {" (", ")."}, {" (", " sts)."}, {" - ", " sts."}, {" [", " sts rem]."}, {": ", " sts."},
		{"—", " sts remain."}, {". You now have ", " sts."}, {" = ", " sts."}, {". (", " sts rem)"}, {". ", " stitches."},
		{", ", " sts rem."},
		{" (", " sts left)."}, {". There are ", " sts."}}
	count := counts[r.Intn(len(counts))]
	after := pick(r, "\nKnit 1 rnd.", " Knit 2 rnds.", "\nNext rnd: Knit.", " Work 2 rnds even.", "\nKnit one round plain.",
		"", " Knit 3 rounds even.",
		"\nNext round: knit all sts.", " K 1 rnd.", "\nWork one round without decreases.", "\nKnit the next round.",
		" Knit 1 round without shaping.")
	write := func(n int) string { return label + row + count[0] + strconv.Itoa(n) + count[1] + after }
	return smallCase{write(end), write(end + 1), start, end, true}
}

// untilCase is a pair of rows that is worked until a count is reached, or so many times.
func untilCase(r *rand.Rand) smallCase {
	start, times := 5+2*r.Intn(4), 3+r.Intn(9)
	end := start + 2*times
	first := pick(r, "Row 1: K1, yo, k to last st, yo, k1.", "Row 1: Kfb, k to last st, kfb.",
		"Row 1 (RS): K2, m1, k to last 2 sts, m1, k2.",
		"1st row: Inc in first st, k to last st, inc in last st.", "Row 1: K1, M1L, knit to last st, M1R, k1.",
		"Row 1: K1, yo, knit to 1 st before end, yo, k1.")
	second := pick(r, " Row 2: Knit.", "\nRow 2: Purl.", "\nRow 2: K2, p to last 2 sts, k2.", " Row 2 (WS): K all sts.",
		"\n2nd row: P to end.")
	which := pick(r, "these 2 rows", "Rows 1 and 2", "the last 2 rows", "these two rows", "Rows 1-2", "both rows",
		"last two rows", "Rows 1 & 2")
	write := func(count int) string {
		e, more := strconv.Itoa(count), strconv.Itoa((end-start)/2-1)
		until := pick(r, "until there are "+e+" sts.", "until you have "+e+" sts.", "until there are "+e+" stitches on the needle.",
			"until you have "+e+" sts on your needle.", "to "+e+" sts.", "until "+e+" sts are on the needle.",
			"till there are "+e+" sts.",
			"until there are a total of "+e+" sts.", "until there are "+e+" sts in total.", more+" more times. "+e+" sts.",
			more+" times more ("+e+" sts).", "another "+more+" times - "+e+" sts.", "a further "+more+" times: "+e+" sts.",
			"a total of "+strconv.Itoa((end-start)/2)+" times. "+e+" sts.", "until "+e+" sts have been reached.",
			"until the stitch count is "+e+".", "until there are "+e+" sts, ending with Row 2.")
		verb := pick(r, "Rep ", "Repeat ", "Work ", "Keep repeating ", "Continue repeating ", "Continue to work ",
			"Now repeat ", "Then rep ")
		return first + second + pick(r, "\n", " ") + verb + which + " " + until
	}
	return smallCase{write(end), write(end + 1), start, end, false}
}

// rowsCase is rows in a pattern that keep the count, told in any way; their number is compared with another that is told.
func rowsCase(r *rand.Rand) smallCase {
	n := 2 * (2 + r.Intn(12))
	start := 4 * (4 + r.Intn(12))
	fabric := pick(r, "k2, p2 rib", "k1, p1 rib", "garter st", "St st", "stocking stitch", "moss stitch", "2x2 rib",
		"k2, p2 ribbing", "garter stitch",
		"single rib", "stockinette", "seed st")
	all := strconv.Itoa(n)
	text := pick(r, "Work in "+fabric+" for "+all+" rows.", "Work "+all+" rows in "+fabric+".", "Work "+all+" rows of "+fabric+".",
		"Rows 1-"+all+": "+fabric+".", "Rows 1 to "+all+": Work in "+fabric+".", "Next "+all+" rows: "+fabric+".",
		"Rows 1-"+all+": in "+fabric+".",
		"Now work in "+fabric+" for "+all+" rows.", "Continue in "+fabric+" for "+all+" rows.",
		"Change to "+fabric+" and work "+all+" rows.",
		fabric+" for "+all+" rows.", "Work "+all+" rows "+fabric+".")
	return smallCase{text, strings.ReplaceAll(text, ".", "") + " (" + strconv.Itoa(n+2) + " rows).", start, start, false}
}

// TestSentencesOfSmallThings puts sentences together and counts how many are agreed with, and how many are with a
// wrong count in them, which must be none.
func TestSentencesOfSmallThings(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for _, kind := range []struct {
		name  string
		write func(*rand.Rand) smallCase
		floor int // of a hundred
	}{{"crowns", crownCase, 98}, {"untils", untilCase, 98}, {"rows", rowsCase, 98}, {"extents", extentCase, 98}, {"begins", beginCase, 98}} {
		n, right := knittest.Sweep(400, 80), 0
		for range n {
			c := kind.write(r)
			in := CheckInstructionsInput{Text: c.text}
			if c.start > 0 {
				in.StartStitches = []int{c.start}
			}
			if c.round {
				in.Construction = stitch.InTheRound
			}
			out, err := CheckInstructions(t.Context(), in)
			if err == nil && out.Agrees && single(out.EndStitches, c.end) {
				right++
			} else if testing.Verbose() {
				t.Logf("%s: %v %v\n%s", kind.name, out.EndStitches, judgedText(out.Findings), c.text)
			}
			if err == nil && out.Agrees && !single(out.EndStitches, c.end) {
				t.Errorf("agreed with, and is not %d: %v\n%s", c.end, out.EndStitches, c.text)
			}
			in.Text = c.wrong
			if out, err = CheckInstructions(t.Context(), in); err == nil && out.Agrees {
				t.Errorf("a wrong count is agreed with: %s", c.wrong)
			}
		}
		t.Logf("%s: %d of %d", kind.name, right, n)
		if 100*right < kind.floor*n {
			t.Errorf("%s: %d of %d, %d %% stood", kind.name, right, n, kind.floor)
		}
	}
}
