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
	const usual = ": ssk, knit to the last 2 stitches before the next line, k2tog. "
	want := []string{
		"Place 4 stitches on hold at each underarm: of the body at both sides, and of each sleeve.",
		"Join body and sleeves in the round: 84 stitches. From the beginning of the round, left and right as worn: " +
			"back 24, line 2, left sleeve 14, line 2, front 24, line 2, right sleeve 14, line 2.",
		"The round begins with the first stitch of the back, after the line between right sleeve and back. " +
			"Place a marker on each side of every line, and knit the lines' stitches in every round.",
		"Decrease round, 8 stitches fewer. In the back, the front and each sleeve" + usual + "Knit all other stitches.",
		"Front and sleeve decrease round, 6 stitches fewer. In the front and each sleeve" + usual + "Knit all other stitches.",
		"Last sleeve decrease round, 4 stitches fewer. " +
			"At each sleeve: remove the markers at its two ends, ssk the last stitch of the line before it with its first stitch, " +
			"k2tog its second stitch " +
			"with the first stitch of the line after it, so that the lines meet. Knit all other stitches.",
		"On rounds 2-12 repeat these 6 rounds, ending with the 5th of them: the decrease round, 1 round even, " +
			"the front and sleeve decrease round, 1 round even, the decrease round, 1 round even; 40 stitches.",
		"Work the last sleeve decrease round on round 14: 36 stitches.",
		"Knit all other rounds.",
		"After round 14 there are 36 stitches: back 16, front 12, each sleeve 0, four lines of 2.",
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
		"The round begins with the first stitch of the back, at the marker between right sleeve and back.\n",
		"\nDecrease round, 8 stitches fewer. In the back, the front and each sleeve: ssk, knit to the last 2 stitches before " +
			"the next marker, k2tog. Knit all other stitches.\n",
		"\nLast sleeve decrease round, 4 stitches fewer. In each sleeve: CDD on its three stitches. Knit all other stitches.\n",
		"\nWork the decrease round on round 2, then every round twice, then every 2nd round 4 times: 30 stitches.\n",
		"After round 14 there are 26 stitches: back 12, front 12, each sleeve 1.",
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
		"Round 1, with the back raise: on the first 134 of 268 stitches work short rows, the middle of the back rising by 4 rows.",
		d[3], // what w&t means
		"Short row 1 (right side): k112, w&t.",
		"Short row 2 (wrong side): p90, w&t.",
		"Short row 3 (right side): k68, w&t.",
		"Short row 4 (wrong side): p46, w&t.",
		"Short row 5 (right side, to the end of round 1): k46, [k1 tog with its wrap, k21] twice, k134.",
		"Round 2: [k21, k1 tog with its wrap] twice, k224, which closes the gaps of the wrong side.",
		"Rounds 3-34: work even.",
	}
	if got := d[2 : 2+len(want)]; !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Rounds of a plan that is not easy are told in the order in which they are worked: of this one
// the sleeves' round 36 was told after round 64.
func TestListedRoundsAreInOrder(t *testing.T) {
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, SleeveStitches: new(66),
		ToleranceStitches: new(0.0)})
	if err != nil {
		t.Fatal(err)
	}
	var told []string
	for _, l := range out.Directions() {
		if strings.HasPrefix(l, "Work the ") {
			told = append(told, l)
		}
	}
	want := []string{
		"Work the decrease round on every 3rd round from 2 to 14, every 3rd round from 16 to 34.",
		"Work the sleeve decrease round on round 36.",
		"Work the decrease round on every 3rd round from 38 to 53, every 3rd round from 55 to 64.",
		"Work the last sleeve decrease round on round 67.",
	}
	if !slices.Equal(told, want) {
		t.Errorf("%q", told)
	}
}
