package pattern

import (
	"slices"
	"testing"
)

// silences are texts that were once agreed with although a word in them that changes the
// count had not been understood, each kind by its name.
var silences = []struct {
	name, text string
	line       int   // of the mistake or the question, 0 if the text is read
	end        []int // stitches at the end of a text that is read
}{
	{"rows for a size that nobody named", "CO 44 sts.\nRow 1: Knit.\nSize L only: K2tog, k to end.\nAll sizes: Knit 2 rows.", 3, nil},
	{"rows for one size",
		"Sizes: S (M, L)\nCO 44 (48, 52) sts.\nSize L only: K2tog, k to end.\nAll sizes: Knit 2 rows.", 0, []int{44, 48, 51}},
	{"a heading for one size ends with that for all",
		"Sizes: S (M, L)\nCO 44 (48, 52) sts.\nSize L only\nNext row: K2tog, k to end.\nAll sizes\n" +
			"Next row: K2tog, k to end.", 0, []int{43, 47, 50}},
	{"and a row after it", "CO 44 sts.\nCast off 6 sts at beg of next row and foll alt row.", 0, []int{32}},
	{"and rows after it", "CO 60 sts.\nBO 3 sts at beg of next 2 rows, 2 sts at beg of foll 3 alt rows. 48 sts.", 0, []int{48}},
	{"a row under the name of a yarn", "CO 44 sts.\nYarn A: K2tog, k to end.", 0, []int{43}},
	{"a row called after the tension", "CO 44 sts.\nTension row: K2tog, k to end.", 0, []int{43}},
	{"a row called after the gauge", "CO 44 sts.\nGauge row: K2tog, k to end. 44 sts.", 2, nil},
	{"cast on after turning", "CO 44 sts.\nRow 1: Knit.\nTurn work and cast on 4 sts.\nRow 2: P to end.", 0, []int{48}},
	{"cast on after a turn within a row", "CO 40 sts.\nRow 1: Knit, turn and CO 5 sts.\nRow 2: Purl across all 45 sts.", 0, []int{45}},
	{"what remains after some are put aside", "CO 44 sts.\nRow 1: Knit.\nPlace last 10 sts on holder - 29 sts rem for front.", 3, nil},
	{"put aside more than were worked", "CO 44 sts.\nRow 1: K5, place the last 7 sts on holder, k to end.", 2, nil},
	{"put aside what was worked", "CO 100 sts.\nRow 1: K24, place last 6 sts worked on holder, k to end.", 0, []int{94}},
	{"what remains for the back", "CO 80 sts.\nRow 1: K40, BO 6, k to end - 38 sts rem for back.", 2, nil},
	{"one part of three", "CO 80 sts.\nRow 1: K40, BO 6, k to end - 34 sts rem for back.", 0, []int{74}},
	{"on each side", "CO 80 sts.\nRow 1: K20, BO 6, k to end - 44 sts each side.", 2, nil},
	{"between markers", "CO 80 sts.\nRow 1: K20, pm, k20, pm, k40 - 21 sts between markers.", 2, nil},
	{"between markers, right", "CO 80 sts.\nRow 1: K20, pm, k20, pm, k40 - 20 sts between markers.", 0, []int{80}},
	{"a pattern for a length that does not fit",
		"Lace (multiple of 6 sts)\nRow 1: *K4, yo, k2tog; rep from * to end.\nRow 2: Purl.\n\nBody\nCO 40 sts.\nWork in Lace for 10\".", 7, nil},
	{"narrowing", "CO 40 sts.\nRow 1: work as set, narrowing by two", 2, nil},
	{"taking in", "CO 40 sts.\nRow 1: taking in a stitch", 2, nil},
	{"a row in German", "CO 40 sts.\nReihe 1: 2 M re zus, rechts bis Ende.\nRow 2: Knit.", 2, nil},
	{"a row in French", "CO 40 sts.\nTricoter deux mailles ensemble, puis tricoter toutes les mailles.", 2, nil},
	{"a line in German without a full stop", "CO 40 sts.\nzwei Maschen rechts zusammen stricken\nRow 2: Knit.", 2, nil},
	{"more sizes than are read",
		"CO 40 (42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 62, 64, 66, 68, 70, 72, 74, 76, 78, 80) sts.\nRow 1: Knit.", 1, nil},
	{"a count in a note", "CO 40 sts.\nRow 1: Knit.\nNote: 38 sts.", 3, nil},
	{"a count after a note", "CO 40 sts.\nRow 1: Knit.\nNote: keep the tension even.\n38 sts.", 4, nil},
	{"the rest, put aside", "CO 44 sts.\nPlace rem 18 sts on holder.", 2, nil},
	{"all, put aside", "CO 44 sts.\nPlace all 18 sts on hold.", 2, nil},
	{"these, put aside", "CO 44 sts.\nSlip these 38 sts onto waste yarn.", 2, nil},
	{"these, left on a needle", "CO 44 sts.\nKnit 2 rows.\nleave these 38 sts on a spare needle", 3, nil},
	{"more than the rest", "CO 44 sts.\nPut the remaining 45 sts on a holder.", 2, nil},
	{"what a turn has left", "CO 18 sts.\nK10, turn.\nLeave rem 9 sts on a holder.", 3, nil},
	{"what a turn has left, right", "CO 18 sts.\nK10, turn. Leave rem 8 sts on a holder.", 0, []int{10}},
	{"those before a turn, right", "CO 18 sts.\nK10, turn. Leave these 10 sts on a holder.", 0, []int{8}},
	{"half of the rest", "CO 44 sts.\nPlace rem 22 sts on holder.", 2, nil},
	{"the rest, right", "CO 44 sts.\nPlace 18 sts on holder. Place rem 26 sts on another holder.", 0, []int{0}},
	{"these, picked up", "CO 44 sts.\nPick up and knit 18 sts along edge. Leave these 18 sts on a holder.", 0, []int{44}},
	{"more after a marker than there are", "CO 40 sts.\nRow 1: K20, pm, k20.\nRow 2: K to m, sm, k25.", 3, nil},
	{"more bound off after a marker than there are", "CO 40 sts.\nRow 1: K20, pm, k20.\nRow 2: K to m, BO 25.", 3, nil},
	{"more after a marker of a round", "CO 40 sts, pm and join in the round.\nRnd 1: K to 5 sts before m, k10.", 2, nil},
	{"bound off across the beginning of a round",
		"CO 60 sts, pm and join in the round.\nKnit 10 rnds.\nNext rnd: Knit to 5 sts before m, BO 10 sts removing m, knit to end.",
		0, []int{50}},
	{"bound off across it at the end",
		"CO 60 sts and join in the round.\nKnit 10 rnds.\nNext rnd: K to last 4 sts, BO 8 sts (removing marker).", 0, []int{52}},
	{"the last, put aside", "CO 60 sts.\nRow 1: Knit to last 4 sts, place these 4 sts on a safety pin.", 0, []int{56}},
	{"more than the last, put aside", "CO 60 sts.\nRow 1: Knit to last 4 sts, place these 5 sts on a safety pin.", 2, nil},
	{"another row worked again on too few", "CO 40 sts.\nRow 1: K40.\nRow 2: K2tog, k38.\nRow 3: K39.\nRow 4: As Row 1.", 5, nil},
	{"all but the last", "CO 44 sts.\nBO all but last st.", 0, []int{1}},
	{"all but one", "CO 44 sts.\nBO all sts but one.", 0, []int{1}},
	{"all but ten", "CO 44 sts.\nBO all but 10 sts.", 0, []int{10}},
	{"all but one at each end", "CO 44 sts.\nBO all sts except 1 at each end.", 0, []int{2}},
	{"all but the last, fastened off", "CO 44 sts.\nBO all but last st. Fasten off.", 0, []int{0}},
	{"until one is left", "CO 44 sts.\nBind off until 1 st rem.", 0, []int{1}},
	{"all but more than there are", "CO 44 sts.\nBO all but 50 sts.", 2, nil},
	{"on these before a verb", "CO 60 sts.\nOn these 70 stitches knit 20 rows.", 2, nil},
	{"on these before a verb, right", "CO 60 sts.\nOn these 11 stitches knit 20 rows.", 0, []int{11}},
	{"on these, worked before a turn", "CO 76 sts.\nRow 1: K29, turn and work on these 28 sts for left side.", 2, nil},
	{"a needle that leaves a stitch",
		"CO 60 sts, join.\nRnd 1: N1: K1, ssk, k to last 4 sts, k2tog, k1; N2: K1, ssk, k to last 3 sts, k2tog, k1. 56 sts.", 2, nil},
	{"a needle that lacks a stitch",
		"CO 60 sts, join.\nRnd 1: N1: K1, ssk, k to last 2 sts, k2tog, k1; N2: K1, ssk, k to last 3 sts, k2tog, k1. 56 sts.", 2, nil},
	{"a count with a word misspelt", "CO 76 sts.\nRow 1: K2tog, k to end. (72 sst)", 2, nil},
	{"a count with a number left out", "CO 76 (80, 84) sts.\nRow 1: K2tog, k to end. (75, 79, sts)", 2, nil},
	{"at the beginning of how many rows", "CO 60 sts.\nCast off 3 sts at beg of next rows.", 2, nil},
	{"cast off, misspelt", "CO 60 sts.\nKnit 2 rows.\nCsat off.", 3, nil},
	{"bind off, misspelt", "CO 60 sts.\nKnit 2 rows.\nBnid off loosely.", 3, nil},
	{"the others that were left out", "CO 56 sts.\nWork back and forth on the first 28 sts; leave the other 26 sts on a holder.", 2, nil},
	{"a count after joining", "CO 56 sts.\nRow 1: K2tog, k to end.\nJoin. 56 sts.", 3, nil},
	{"a schedule that begins a sentence", "CO 40 sts.\nKnit 3 rows.\nevery alt row from here.", 3, nil},
}

// TestNothingWrongInSilence: whatever might change a count is followed, or it is asked
// about or called wrong at its line.
func TestNothingWrongInSilence(t *testing.T) {
	for _, c := range silences {
		t.Run(c.name, func(t *testing.T) {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
			if err != nil {
				t.Fatal(err)
			}
			if c.line == 0 {
				if !out.Agrees || !slices.Equal(spread(out.EndStitches, len(c.end)), c.end) {
					t.Errorf("agrees %v, %v stitches at the end, want %v; %s", out.Agrees, out.EndStitches, c.end, judgedText(out.Findings))
				}
				return
			}
			if out.Agrees {
				t.Fatalf("agrees with %q, %v stitches", c.text, out.EndStitches)
			}
			for _, f := range out.Findings {
				if f.Kind != KindReading && f.LineNumber == c.line {
					return
				}
			}
			t.Errorf("nothing is said at line %d: %s", c.line, judgedText(out.Findings))
		})
	}
}

// A pattern whose rows are worked nowhere is not called fitting.
func TestPatternWorkedNowhereIsSaid(t *testing.T) {
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{
		Text: "Lace (multiple of 6 sts)\nRow 1: *K4, yo, k2tog; rep from * to end.\nRow 2: Purl.\n\nBody\nCO 40 sts.\nKnit 2 rows."})
	if err != nil {
		t.Fatal(err)
	}
	if !slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.LineNumber == 2 && f.Kind == KindReading }) {
		t.Errorf("findings %+v", out.Findings)
	}
}

// A round that goes on beyond its beginning or ends at a marker is asked about, where it does
// not say that the marker goes, and is no mistake.
func TestAcrossTheBeginningIsAsked(t *testing.T) {
	for _, text := range []string{
		"CO 60 sts and join in the round.\nNext rnd: K to last 4 sts, BO 8 sts, k to end.",
		"CO 60 sts and join in the round.\nNext rnd: K to last 4 sts, place 8 sts on holder, k to end.",
		"CO 60 sts, join in the round.\nRnd 1: K20, pm, k40.\nNext rnd: K to 5 sts before m, BO 10 sts removing m.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.Agrees || !asks(out.Findings, "round") || out.EndStitches[0] > 52 {
			t.Errorf("%q: agrees %v, %v stitches, %v: %s", text, out.Agrees, out.EndStitches, err, judgedText(out.Findings))
		}
	}
}
