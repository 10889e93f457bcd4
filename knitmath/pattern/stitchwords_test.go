package pattern

import (
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// stitchWording is a wording of a stitch, with what it takes off the needle and what it leaves: by definition.
type stitchWording struct {
	says          string
	takes, leaves int
}

// stitchWordings are spellings of stitches as they are printed in booklets of the United Kingdom, the United States and
// Australia, old and new: common practice.
var stitchWordings = []stitchWording{
	{"p twice into next st", 1, 2}, {"k twice into next st", 1, 2}, {"k. twice in next st.", 1, 2}, {"knit twice into the next stitch", 1, 2},
	{"knit into the front and back of the next stitch", 1, 2}, {"k into front and back of next st", 1, 2},
	{"k into back and front of next st", 1, 2}, {"p into front and back of next st", 1, 2}, {"k in front and back of next st", 1, 2},
	{"k into front, back and front of next st", 1, 3}, {"k1 into front, back and front of next st", 1, 3},
	{"knit into front, back and front of the same st", 1, 3}, {"k into front and back and front of next st", 1, 3},
	{"k1, p1, k1 all into next st", 1, 3}, {"(k1, p1, k1) into next st", 1, 3}, {"[k1, yo, k1] in next st", 1, 3},
	{"(k1, p1) twice into next st", 1, 4}, {"k1, p1 into next st", 1, 2}, {"(k1, yfwd, k1) all in next st", 1, 3},
	{"work (k1, p1, k1, p1, k1) into next st", 1, 5}, {"knit 1 and purl 1 into next st", 1, 2},
	{"inc 1", 1, 2}, {"inc 1 st", 1, 2}, {"inc. in next st.", 1, 2}, {"inc in next st by knitting into front and back of it", 1, 2},
	{"inc 1 st in next st", 1, 2}, {"increase in next stitch", 1, 2}, {"inc in the foll st", 1, 2}, {"increase 1 in the next st", 1, 2},
	{"m1 by picking up the strand between sts and knitting into the back of it", 0, 1}, {"make 1", 0, 1}, {"make one", 0, 1}, {"m. 1", 0, 1},
	{"M1 (lift the bar between sts and k into the back of it)", 0, 1}, {"m1 purlways", 0, 1}, {"make 1 purlwise", 0, 1},
	{"pick up loop between sts and k into back of it", 0, 1}, {"pick up the strand between needles and knit it tbl", 0, 1},
	{"dec 1", 2, 1}, {"dec 1 st", 2, 1}, {"k2 tog", 2, 1}, {"k. 2 tog.", 2, 1}, {"knit 2 together", 2, 1}, {"knit two together", 2, 1},
	{"k2 together", 2, 1}, {"k 2 sts tog", 2, 1}, {"k next 2 sts tog", 2, 1}, {"knit the next two stitches together", 2, 1},
	{"k2tog tbl", 2, 1}, {"k2togtbl", 2, 1}, {"k2tog-b", 2, 1}, {"k. 2 tog. t.b.l.", 2, 1}, {"k2tog through back loops", 2, 1},
	{"k2 tog through back of loops", 2, 1}, {"knit 2 together through the back loops", 2, 1},
	{"knit 2 tog through the backs of the stitches", 2, 1},
	{"p2 tog", 2, 1}, {"purl 2 together", 2, 1}, {"p2tog tbl", 2, 1}, {"p2tog through back loops", 2, 1}, {"p. 2 tog. tbl", 2, 1},
	{"k3tog", 3, 1}, {"k3 tog", 3, 1}, {"knit three together", 3, 1}, {"p3tog", 3, 1}, {"k3tog tbl", 3, 1}, {"k3tog through back loops", 3, 1},
	{"sl 1, k1, psso", 2, 1}, {"sl. 1, k. 1, p.s.s.o.", 2, 1}, {"slip 1, knit 1, pass slip stitch over", 2, 1},
	{"slip 1, knit 1, pass the slipped stitch over", 2, 1}, {"sl 1, k 1, pass sl st over", 2, 1}, {"s1, k1, psso", 2, 1}, {"skpo", 2, 1},
	{"skp", 2, 1},
	{"slip 1, knit 1 and pass the slipped stitch over it", 2, 1}, {"sl1 kwise, k1, psso", 2, 1}, {"sl 1 knitways, k1, psso", 2, 1},
	{"sl 1, k2tog, psso", 3, 1}, {"slip 1, knit 2 together, pass slipped stitch over", 3, 1}, {"sl1-k2tog-psso", 3, 1}, {"sk2po", 3, 1},
	{"sl 2 tog kwise, k1, p2sso", 3, 1}, {"sl 2 sts tog as if to k2tog, k1, pass 2 slipped sts over", 3, 1}, {"sl 2, k1, p2sso", 3, 1},
	{"slip 2 as if to knit 2 together, knit 1, pass the 2 slipped stitches over", 3, 1}, {"s2kp", 3, 1}, {"CDD", 3, 1}, {"sssk", 3, 1},
	{"sl 1 purlways", 1, 1}, {"sl 1 purlwise", 1, 1}, {"sl. 1 p.w.", 1, 1}, {"sl 1 pwise wyif", 1, 1}, {"slip 1 as if to purl", 1, 1},
	{"sl next st as if to purl", 1, 1}, {"slip the next stitch purlwise", 1, 1}, {"sl 1 with yarn in back", 1, 1}, {"sl next st", 1, 1},
	{"sl 1 wyib", 1, 1}, {"sl1 knitways", 1, 1}, {"slip next st knitwise with yarn at back", 1, 1}, {"sl1k", 1, 1}, {"sl 1 as to knit", 1, 1},
	{"k1 tbl", 1, 1}, {"k.1 t.b.l.", 1, 1}, {"k1b", 1, 1}, {"k into back of next st", 1, 1}, {"knit 1 through back loop", 1, 1},
	{"p1 tbl", 1, 1},
	{"k1 in row below", 1, 1}, {"k next st through the centre of st below", 1, 1}, {"k into st below", 1, 1},
	{"k next st in the row below", 1, 1},
	{"yfwd", 0, 1}, {"yf", 0, 1}, {"yrn", 0, 1}, {"yon", 0, 1}, {"wl. fwd.", 0, 1}, {"y.f.", 0, 1}, {"w.f.", 0, 1},
	{"wool forward", 0, 1}, {"yarn forward", 0, 1}, {"y.fwd", 0, 1},
	{"o", 0, 1}, {"over", 0, 1}, {"y.o.", 0, 1}, {"yarn over needle", 0, 1}, {"thread over", 0, 1}, {"over twice", 0, 2},
	{"yo twice", 0, 2}, {"o twice", 0, 2}, {"yrn twice", 0, 2},
	{"put thread over", 0, 1}, {"throw thread over", 0, 1}, {"narrow", 2, 1}, {"slip and bind", 2, 1}, {"plain 1", 1, 1}, {"seam 1", 1, 1},
	{"1 plain", 1, 1}, {"3 plain", 3, 3}, {"2 purl", 2, 2}, {"purl 1", 1, 1}, {"p. 3", 3, 3}, {"K3", 3, 3}, {"knit three", 3, 3},
	{"k 4 sts", 4, 4}, {"purl the next 2 sts", 2, 2}, {"knit the next three stitches", 3, 3},
	{"C4F", 4, 4}, {"C4B", 4, 4}, {"c6f", 6, 6}, {"T3B", 3, 3}, {"Cr2R", 2, 2}, {"Tw2L", 2, 2}, {"2/2 LC", 4, 4}, {"2/1 RPC", 3, 3},
	{"cable 4 front", 4, 4}, {"cable 6 back", 6, 6}, {"C4 back", 4, 4}, {"T4L", 4, 4},
	{"sl next 2 sts onto cable needle and hold at front, k2, k2 from cable needle", 4, 4},
	{"slip next 3 sts to cn and hold in back of work, k3, then k3 from cn", 6, 6},
	{"sl next 2 sts on cn, leave at front, k2, k2 sts from cn", 4, 4},
	{"brk1", 1, 1}, {"sl1yo", 1, 1}, {"brkyobrk", 1, 3}, {"k1 wrapping yarn twice around needle", 1, 1},
	{"k1 winding yarn 3 times round needle", 1, 1}, {"k1, dropping extra loops", 1, 1},
	{"drop next st", 1, 0}, {"let next st drop", 1, 0},
	{"M1L", 0, 1}, {"m1-R", 0, 1}, {"Kfb", 1, 2}, {"kf&b", 1, 2}, {"k1f&b", 1, 2}, {"pfb", 1, 2}, {"LLI", 0, 1}, {"RLI", 0, 1},
	{"inc 1 right", 0, 1}, {"kbf", 1, 2},
	{"K1 in MC", 1, 1}, {"k3 with A", 3, 3}, {"K2 in B", 2, 2}, {"2A", 2, 2}, {"k2A", 2, 2}, {"k3 in contrast", 3, 3}, {"k1 CC", 1, 1},
	{"with B k2", 2, 2},
}

// stitchPlaces are rows with a stitch in them at STITCH, each with the stitches that stand beside it in one working of what is repeated,
// how often that is
// worked and what is outside of it.
var stitchPlaces = []struct {
	row                    string
	beside, times, outside int
}{
	{"Row 1: K3, STITCH, k5.", 8, 1, 0},
	{"Row 1 (RS): K3, STITCH, k to end.", 17, 1, 0},
	{"1st row: K1, * k2, STITCH, k1, rep from * to last st, k1.", 3, 4, 2},
	{"Next row: K2, *STITCH, k3; rep from * 4 more times.", 3, 5, 2},
	{"1st row. (K2, STITCH, k1) 6 times.", 3, 6, 0},
	{"Next row.—Knit 2, STITCH, knit to end.", 12, 1, 0},
}

// TestStitchWordings reads every wording of a stitch at every place of a row: with its count, and with one stitch more, which is agreed
// with nowhere.
func TestStitchWordings(t *testing.T) {
	right, all := 0, 0
	failed := map[string]int{}
	for w, stitch := range stitchWordings {
		for p, place := range stitchPlaces {
			if (w+p)%knittest.Sweep(1, 3) != 0 {
				continue
			}
			start := place.times*(place.beside+stitch.takes) + place.outside
			end := place.times*(place.beside+stitch.leaves) + place.outside
			row := strings.Replace(place.row, "STITCH", stitch.says, 1)
			all++
			switch {
			case agrees(t, row+" "+strconv.Itoa(end+1)+" sts.", start, end+1):
				t.Errorf("from %d stitches, %q: agreed with %d", start, row, end+1)
			case agrees(t, row+" "+strconv.Itoa(end)+" sts.", start, end) && agrees(t, row, start, end):
				right++
			default:
				failed[stitch.says]++
			}
		}
	}
	if len(failed) > 0 {
		t.Errorf("%d of %d read; not read: %v", right, all, failed)
	}
}

// agrees reports whether a text is agreed with from so many stitches and ends with so many.
func agrees(t *testing.T, text string, start, end int) bool {
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{start}})
	return err == nil && out.Agrees && len(out.EndStitches) == 1 && out.EndStitches[0] == end
}
