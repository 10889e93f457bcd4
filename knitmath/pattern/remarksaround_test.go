package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// remarkWordings are what is said in brackets behind a stitch or a row and explains it. Common practice.
var remarkWordings = []string{
	"last st of edging together with next st of shawl", "the last edging st together with the next shawl st", "this is the centre stitch",
	"right leaning decrease", "leans to the left", "see note", "see page 4", "see Special Stitches", "pattern row",
	"the first and last sts are edge sts", "RS facing", "wrong side facing", "garter edge", "selvedge st", "marker moves up", "neck edge",
	"use a smaller needle if your tension is loose", "work loosely", "keep the yarn to the back", "mind the marker", "first half done",
	"buttonhole edge", "this row is only worked once", "shaping row", "lace row", "you are now at the side seam", "count your stitches",
	"counts as a stitch", "do not pull tight", "front", "left side", "these stitches form the edge", "knitting in pattern",
}

// toldLines are lines and sentences among rows that work nothing.
var toldLines = []string{
	"Count your stitches here.", "Check your tension before going on.", "You should now have a neat edge.",
	"Take care not to twist the stitches.",
	"The edge will curl a little; this is normal.", "Photo 3 shows the edge.", "Note: the right side has the lace.",
	"NOTE - Slip all markers as you come to them.",
	"Tip: put a marker on the right side.", "SIDE EDGE", "Edging", "Pattern notes", "Weave in the ends as you go.",
	"Have a rest and a cup of tea.",
	"Wind the rest of the yarn into a ball.", "This is the right side of the work.", "These rows form the pattern.",
	"The work grows quickly from here.",
	"Continue as follows:", "Now work the border:", "Work the edge as follows:", "For the border:", "Begin the lace:",
	"Then work the panel as follows:",
	"Caution: keep pins and needles away from small children.", "If you have lost count, look at the chart.",
	"Work with care.", "Enjoy!", "Mark the right side with a thread.", "Keep the yarn at an even tension throughout.",
	"(Wool may be carried up the side.)", "[The first row is the right side.]", "See page 5 for a photograph.",
	"Your knitting will look like a wave now.",
	"Before starting, read the whole pattern through.", "The two edge stitches are knitted on every row.",
}

// remarkPlaces are two rows, the first of which takes one stitch away, with a remark in brackets at §.
var remarkPlaces = []string{
	"Row 1: K3, k2tog (§), k to end.\nRow 2: Purl.",
	"Row 1: K3, k2tog [§], k to end.\nRow 2: Purl.",
	"Row 1 (RS): K3, k2tog, k to end. (§)\nRow 2: Purl.",
	"1st row. K3, k2 tog, k to end (§).\n2nd row. P.",
	"Row 1 (§): K3, k2tog, k to end.\nRow 2: Purl.",
	"Row 1: *K3, (§) k2tog; rep from * to end.\nRow 2: Purl.",
	"Dec row: K3, k2tog – § – k to end.\nNext row: Purl.",
}

// toldPlaces are such rows with a sentence at §: the last two for whole sentences alone.
var toldPlaces = []string{
	"Row 1: K3, k2tog, k to end.\n§\nRow 2: Purl.",
	"§\nRow 1: K3, k2tog, k to end.\nRow 2: Purl.",
	"Next row: K3, k2tog, k to end.\n\n§\n\nNext row: Purl.",
	"§ Row 1: K3, k2tog, k to end.\nRow 2: Purl.",
	"Row 1: K3, k2tog, k to end. § Row 2: Purl.",
}

// TestRemarksAround reads rows with remarks in brackets at every place: the counts are those without them.
func TestRemarksAround(t *testing.T) {
	for i, said := range remarkWordings {
		for k, rows := range remarkPlaces {
			noRemark := strings.Contains(rows, "–") && (strings.Contains(said, "marker") || strings.Contains(said, "pattern"))
			if (i+k)%knittest.Sweep(1, 3) == 0 && !noRemark {
				askRemark(t, 12+i%7, strings.Replace(rows, "§", said, 1))
			}
		}
	}
}

// TestSentencesThatTell reads rows with sentences and lines that work nothing before, between and after them.
func TestSentencesThatTell(t *testing.T) {
	for i, said := range toldLines {
		for k, rows := range toldPlaces {
			whole := strings.ContainsAny(said[len(said)-1:], ".!)]") || k == 3 && strings.HasSuffix(said, ":")
			if (i+k)%knittest.Sweep(1, 3) == 0 && (whole || k < 3) {
				askRemark(t, 12+i%7, strings.Replace(rows, "§", said, 1))
			}
		}
	}
}

// askRemark asks two rows on so many stitches, the first of which decreases: as they are, and with a wrong count at their end.
func askRemark(t *testing.T, stitches int, rows string) {
	t.Helper()
	end := stitches - 1
	if strings.Contains(rows, "*") {
		stitches, end = 5*stitches, 4*stitches
	}
	p := corpusPiece{Text: fmt.Sprintf("Cast on %d sts.\n%s", stitches, rows)}
	p.Expect.Stitches, p.Expect.Rows = []int{end}, []int{2}
	if v, out := p.judge(t); v != verdictRight {
		t.Errorf("%q: %s, %v stitches after %v rows, %s", p.Text, verdictNames[v], out.EndStitches, out.WorkedRows, judgedText(out.Findings))
	}
	wrong := fmt.Sprintf("%s %d sts.", p.Text, end+1)
	if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: wrong}); err == nil && out.Agrees {
		t.Errorf("agreed with: %s", wrong)
	}
}
