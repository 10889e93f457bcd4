package pattern

import "testing"

// wrapsMinded are words for how the wraps of short rows are closed in a row: no count hangs on them.
var wrapsMinded = []string{
	"picking up wraps as you come to them", "picking up and knitting wraps together with wrapped sts", "working wraps together with their sts",
	"working rem wraps as you come to them", "hiding wraps as you go", "hiding all wraps",
	"knitting the wraps together with the sts they wrap", "working wraps tog with wrapped sts as you come to them",
	"lifting the wraps and working them together with their stitches", "resolving wraps", "working each wrap together with the st it wraps",
	"knitting wraps tog with their sts as you come to them", "working rem wraps tog with their sts as you come to them",
	"working all remaining wraps together with the stitches they wrap", "knitting each wrap together with its stitch",
	"knitting up the wraps", "picking up remaining wraps", "picking up the wraps and working them tog with their sts",
	"working the wraps in with the sts", "working wraps tog with sts", "picking up all wraps as they appear",
	"working the wrap tog with its st each time you come to one", "concealing wraps", "knitting wraps and sts tog",
	"working both wraps together with each wrapped st", "working each wrapped st tog with its wrap",
}

// doublesMinded are the same of double stitches.
var doublesMinded = []string{
	"working both legs of each DS together", "resolving all DS", "working each DS as one st",
	"knitting both legs of each double stitch together",
	"working double sts as single sts", "treating each DS as one st", "knitting the two legs of each DS as one", "knitting each DS as one st",
	"working each double st as a single stitch", "processing DS as you come to them", "closing all DS as you go",
	"working the two legs of every DS together as one st", "knitting both strands of each DS tog", "resolving rem double stitches",
	"working DSs as 1 st", "working both loops of each DS tog as you come to them",
}

var shadowsMinded = []string{
	"knitting each shadow wrap together with its twin", "working shadow wraps together with their twins",
	"knitting shadow wraps tog with their sts", "working each shadow wrap as one st with its st", "closing the shadow wraps",
	"working rem shadow wraps tog with their twin sts",
}

// closings are the last two rows of short rows over 60 stitches.
var closings = []string{
	"Row 5: Knit to end, W~.\nRow 6: Purl to end, W~. («60» sts)",
	"Row 5: Knit across all sts, W~.\nRow 6: P all sts, W~. «60» sts.",
	"Row 5 (RS): K to end W~.\nRow 6: Purl. («60» sts)",
	"Knit 1 row, W~. Purl 1 row, W~. «60» sts.",
	"Next row (RS): K to end of row, W~.\nNext row: P, W~. [«60» sts]",
	"Knit 2 rows over all sts, W~. («60» sts)",
	"Row 5: K to last «6» sts, W~, k6.\nRow 6: P to end, W~, turn. («60» sts)",
}

func closed(turns string) []toldCase {
	var all []toldCase
	for _, c := range closings {
		all = append(all, toldCase{text: "CO 60 sts.\n" + turns + c, ends: []int{60}, rows: []int{6}})
	}
	return all
}

// TestWrapsTogether: how wraps, double stitches and shadow wraps are closed is told beside the row.
func TestWrapsTogether(t *testing.T) {
	askMarked(t, wordsIn(closed("Row 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nRow 3: K to last 12 sts, w&t.\n"+
		"Row 4: P to last 12 sts, w&t.\n"), wrapsMinded...), 90)
}

func TestDoublesTogether(t *testing.T) {
	askMarked(t, wordsIn(closed("Row 1 (RS): K to last 6 sts, turn.\nRow 2: Make DS, p to last 6 sts, turn.\nRow 3: Make DS, k to last 12 "+
		"sts, "+
		"turn.\nRow 4: Make DS, p to last 12 sts, turn.\n"), doublesMinded...), 90)
}

func TestShadowsTogether(t *testing.T) {
	askMarked(t, wordsIn(closed("Row 1 (RS): K to last 6 sts, work a shadow wrap, turn.\nRow 2: P to last 6 sts, work a shadow wrap, turn.\n"+
		"Row 3: K to last 12 sts, make shadow wrap, turn.\nRow 4: P to last 12 sts, make shadow wrap, turn.\n"), shadowsMinded...), 90)
}

// TestWrapsNoted: the same in a sentence of its own, before, between or after the rows.
func TestWrapsNoted(t *testing.T) {
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 60 sts. W~.\nRow 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nRow 3: Knit.\nRow 4: Purl. («60» sts)",
			ends: []int{60}, rows: []int{4}},
		{text: "CO 60 sts.\nSloped with short rows; W~.\nRow 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nRow 3: Knit.\n" +
			"Row 4: Purl. («60» sts)", ends: []int{60}, rows: []int{4}},
		{text: "CO 60 sts.\nRow 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nRow 3: Knit. W~.\nRow 4: Purl. W~. («60» sts)",
			ends: []int{60}, rows: []int{4}},
		{text: "CO 60 sts.\nRow 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nOn the next two rows, W~.\nRow 3: Knit.\n" +
			"Row 4: Purl. («60» sts)", ends: []int{60}, rows: []int{4}},
		{text: "CO 60 sts.\nRow 1 (RS): K to last 6 sts, w&t.\nRow 2: P to last 6 sts, w&t.\nNext row: K to end; W~.\n" +
			"Row 4: Purl. («60» sts)", ends: []int{60}, rows: []int{4}},
	}, "work the wraps together with their sts as you come to them", "pick up wraps as you come to them",
		"work wraps together with wrapped sts",
		"work each wrap together with the st it wraps", "knit or purl wraps together with their sts as you come to them",
		"pick up all wraps and work them together with the sts they wrap", "hide the wraps as you come to them",
		"work wraps tog with sts when you come to them", "always pick up the wrap and work it together with the wrapped stitch",
		"when you come to a wrapped st, work it together with its wrap", "lift the wraps and work them tog with their sts"), 90)
}
