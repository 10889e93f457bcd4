package pattern

import (
	"slices"
	"strconv"
	"strings"
	"testing"
)

// TestWordsOnceAlarmedAbout: each count is worked out by hand; one more is not agreed with. All the words are common practice.
func TestWordsOnceAlarmedAbout(t *testing.T) {
	for _, c := range []struct {
		start, end, rows int
		text             string
	}{
		{60, 54, 5, "Next 3 RS rows: K1, k2tog, k to last 3 sts, ssk, k1."},
		{60, 54, 6, "Row 1 (WS): Purl. Next 3 RS rows: K1, k2tog, k to last 3 sts, ssk, k1."},
		{60, 52, 4, "Next 4 rows (RS): K1, k2tog, k to last 3 sts, ssk, k1."},
		{60, 60, 11, "Row 1: Knit. Row 2: Purl. Rep these 2 rows 4 times, then the first of these rows once."},
		{60, 60, 11, "Row 1: Knit. Row 2: Purl. Rep rows 1 and 2 4 times, then first of these rows once more."},
		{60, 66, 2, "CO 3 sts at end of next 2 rows."}, {60, 66, 2, "Cast on 3 sts at end of next two rows."},
		{60, 68, 2, "Cast on 4 sts at the end of each of the next 2 rows."},
		{0, 60, 4, "Take No. 14 needles and cast on 60 sts. Knit 4 rows."}, {0, 60, 0, "Take the smaller needles and cast on 60 sts."},
		{60, 80, 0, "Knit up 20 sts along left front edge."},
		{0, 84, 0, "With right side facing, knit up 24 sts down left side of neck, 36 sts from front, 24 sts up right side of neck."},
		{0, 80, 6, "With RS facing, knit up 80 sts evenly round neck. Work 6 rows in k1, p1 rib."},
	} {
		in := CheckInstructionsInput{}
		if c.start > 0 {
			in.StartStitches = []int{c.start}
		}
		for off := range 2 {
			in.Text = c.text + " " + strconv.Itoa(c.end+off) + " sts."
			out, err := CheckInstructions(t.Context(), in)
			wrong := off == 0 && (!single(out.EndStitches, c.end) || !slices.Equal(out.WorkedRows, []int{c.rows}))
			if err != nil || out.Agrees != (off == 0) || wrong {
				t.Errorf("%s: agrees %v, %v after %v, %v: %s", in.Text, out.Agrees, out.EndStitches, out.WorkedRows, err,
					strings.TrimSpace(judgedText(out.Findings)))
			}
		}
	}
}
