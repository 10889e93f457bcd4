package yoke

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A whole raglan as it is told. Body 60, sleeves 20, underarms 4, as in
// TestRaglanByHand.
func TestRaglanInWords(t *testing.T) {
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, BodyStitches: 60, SleeveStitches: new(20),
		UnderarmStitches: new(4), FrontNeckStitches: new(12), BackNeckStitches: new(16), DepthRounds: new(14)})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"Place 4 stitches on hold at each underarm: of the body at both sides, and of each sleeve.",
		"Join body and sleeves in the round: 84 stitches. From the beginning of the round, left and right as worn: " +
			"back 24, line 2, left sleeve 14, line 2, front 24, line 2, right sleeve 14, line 2.",
		"The round begins with the first stitch of the back, at a marker. " +
			"The lines lie on the sleeves' side of the markers, and their stitches are knit in every round until they meet.",
		"Round 1: k24, pm, k18, pm, k24, pm, k18.",
		"Note: where lines tell several rounds each, work the rounds in the order of their numbers.",
		"Rounds 2 and 6 (decrease round): " +
			"[ssk, k to 2 sts before m, k2tog, sm, k2, ssk, k to 4 sts before m, k2tog, k2, sm] twice.",
		"Rounds 3, 5 and 7: work even.",
		"Round 4 (front and sleeve decrease round): k to m, sm, k2, ssk, k to 4 sts before m, k2tog, k2, sm, " +
			"ssk, k to 2 sts before m, k2tog, sm, k2, ssk, k to 4 sts before m, k2tog, k2.",
		"Repeat rounds 2-7 once more: 40 stitches.",
		"Round 14 (last sleeve decrease round): [k to m, sm, k1, ssk, k2tog, k1, sm] twice: 36 stitches.",
		"From the beginning of the round there are left: " +
			"back 16, line 2, left sleeve 0, line 2, front 12, line 2, right sleeve 0, line 2.",
		"Remove all markers but that of the beginning of the round.",
		"Go on with the neckband, or bind off loosely.",
		"Graft the 4 stitches on hold of the body to those of the sleeve at each underarm.",
	}
	if got := out.Directions(); !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	summary := "Join 84 stitches (42 cm) at four lines of 2 stitches and decrease to 36 (18 cm) over 14 rounds (4.7 cm): " +
		"the back decreases 4 times, the front 6 times, each sleeve 7 times, two stitches each time, " +
		"and no edge is more than 0.86 stitches from a straight line."
	if got := out.Summary(); got != summary {
		t.Errorf("got %q, want %q", got, summary)
	}
}

// Without lines there are markers, and of three parts that decrease the last is told
// with "and". A sleeve of 17 comes down to one by a last double decrease.
func TestRaglanWithoutLinesInWords(t *testing.T) {
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, BodyStitches: 60, SleeveStitches: new(21),
		UnderarmStitches: new(4), LineStitches: new(0), FrontNeckStitches: new(12), BackNeckStitches: new(12), DepthRounds: new(14)})
	if err != nil {
		t.Fatal(err)
	}
	d := strings.Join(out.Directions(), "\n")
	for _, want := range []string{
		"back 26, marker, left sleeve 17, marker, front 26, marker, right sleeve 17, marker.\n",
		"The round begins with the first stitch of the back, at a marker. The other markers lie between the parts.\n",
		"\nRound 1: k26, pm, k17, pm, k26, pm, k17.\n",
		"\nRound 2 (decrease round): [ssk, k to 2 sts before m, k2tog, sm] 4 times: 78 stitches.\n" +
			"Work the decrease round every round twice more, then every 2nd round 4 times more: 30 stitches.\n",
		"\nRound 14 (last sleeve decrease round): [k to m, sm, CDD, sm] twice: 26 stitches.\n",
		"From the beginning of the round there are left: " +
			"back 12, marker, left sleeve 1, marker, front 12, marker, right sleeve 1, marker.\n",
	} {
		if !strings.Contains(d, want) {
			t.Errorf("%s\nwant %q", d, want)
		}
	}
	if got, want := out.Summary(), "Join 86 stitches (43 cm) at four markers and decrease to 26 "; !strings.HasPrefix(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A neck that two stitches a round do not lead to is told those that they do, and
// one that is too narrow how far a part comes down: 168 of the body are 82 of the
// front, beside lines of two; 51 are 23.
func TestRaglanNecksInWords(t *testing.T) {
	for want, in := range map[string]RaglanInput{
		"the front goes from 82 to 35 stitches, and two go in every decrease round: what it loses must be even; 34 or 36 would do": {
			BodyStitches: 200, UnderarmStitches: new(16), FrontNeckStitches: new(35)},
		"the sleeve goes from 48 to 1 stitch, and two go in every decrease round: what it loses must be even; 0 or 2 would do": {
			BodyStitches: 200, SleeveStitches: new(66), SleeveTopStitches: new(1), UnderarmStitches: new(16)},
		"of which two go in every decrease round; it can come down to 3 at the fewest": {
			BodyStitches: 61, UnderarmStitches: new(5), FrontNeckStitches: new(2)},
		"of which two go in every decrease round; it can come down to 2 at the fewest": {
			BodyStitches: 200, LineStitches: new(0), SleeveStitches: new(66), SleeveTopStitches: new(1), UnderarmStitches: new(16)},
	} {
		in.Gauge = &gauge.Gauge{Stitches: 20, Rows: 28}
		_, err := PlanRaglan(in)
		if err == nil || !strings.Contains(strings.ReplaceAll(err.Error(), "each sleeve", "the sleeve"), want) {
			t.Errorf("%v, want %q", err, want)
		}
	}
}

// A raise is told row by row: two turns a side on a back of 134, from 268 stitches, each
// half of which they cut into groups of 22, 22 and 23.
func TestRaiseInWords(t *testing.T) {
	out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200,
		TolerancePercent: new(0.0), BackRaise: &BackRaise{Place: RaisePlaceBeforeBands, RiseRows: new(4)}})
	if err != nil {
		t.Fatal(err)
	}
	d := out.Directions()
	want := []string{
		"Note: in round 1 the back is raised, its middle by 4 rows, by short rows on the first 134 of 268 stitches. " +
			"The last of them goes on to the end of the round, and the round after it closes the gaps of the wrong side.",
		d[4], // what w&t means
		"Short row 1 (right side): k112, w&t.",
		"Short row 2 (wrong side): p90, w&t.",
		"Short row 3 (right side): k68, w&t.",
		"Short row 4 (wrong side): p46, w&t.",
		"Short row 5 (right side): k46, [k1 tog with its wrap, k21] twice, k134.",
		"Round 2: [k21, k1 tog with its wrap] twice, k224.",
		"Rounds 3-34: work even.",
	}
	if got := d[3 : 3+len(want)]; !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Where a plan that is not easy has many stretches its rounds are listed kind by kind, those worked even
// too, in the order in which the lines begin, and a count stands where the last round does.
func TestListedRounds(t *testing.T) {
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, SleeveStitches: new(66),
		ToleranceStitches: new(0.0)})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"Round 1: k82, pm, k52, pm, k82, pm, k52.",
		"Note: where lines tell several rounds each, work the rounds in the order of their numbers.",
		"Rounds 2, 5, 8, 11, 14, 16, 19, 22, 25, 28, 31 and 34 (decrease round): " +
			"[ssk, k to 2 sts before m, k2tog, sm, k2, ssk, k to 4 sts before m, k2tog, k2, sm] twice.",
		"Rounds 3-4, 6-7, 9-10, 12-13, 15, 17-18, 20-21, 23-24, 26-27, 29-30, 32-33 and 35: work even: 172 stitches.",
		"Round 36 (sleeve decrease round): [k to m, sm, k2, ssk, k to 4 sts before m, k2tog, k2, sm] twice.",
		"Rounds 37, 39-40, 42-43, 45-46, 48-49, 51-52, 54, 56-57, 59-60, 62-63, 65-66 and 68: work even: 80 stitches.",
		"Rounds 38, 41, 44, 47, 50, 53, 55, 58, 61 and 64 (decrease round): " +
			"[ssk, k to 2 sts before m, k2tog, sm, k2, ssk, k to 4 sts before m, k2tog, k2, sm] twice.",
		"Round 67 (body and last sleeve decrease round): [ssk, k to 2 sts before m, k2tog, sm, k1, ssk, k2tog, k1, sm] twice.",
		"From the beginning of the round there are left: " +
			"back 36, line 2, left sleeve 0, line 2, front 36, line 2, right sleeve 0, line 2.",
	}
	if got := out.Directions()[3 : 3+len(want)]; !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}
