package pattern

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestWordings: the many words of one thing, worked on so many stitches. Counts
// are by the stitches each word takes and leaves; places are counted by hand.
func TestWordings(t *testing.T) {
	for _, c := range []struct {
		text  string
		on    int
		end   int
		rows  int
		found string
	}{
		// Through the back loop. ssk has no such form, and yo nothing to twist.
		{"k5 tbl, p2 tbl, k2tog tbl, k3tog tbl, k6", 18, 15, 1, ""},
		{"k5 tbl, ssk tbl", 7, -1, 1, "1:13 NOT_READ"},
		{"yo tbl", 5, -1, 1, "1:4 NOT_READ"},
		{"ktbl2, p1 tbl through the back loop, k6", 9, 9, 1, ""},
		{"k4tog tbl, lt tbl", 9, -1, 1, "1:15 NOT_READ"},
		{"k2tbl, p3tbl, sl2tbl", 9, -1, 1, "1:15 NOT_READ"},
		// Together.
		{"k 3 tog, p 2 tog, sl 2 tog, k1, p2sso, k1", 9, 4, 1, ""},
		{"k 1 tog", 9, -1, 1, "1:3 NOT_READ"},
		{"k1tog", 9, -1, 1, "1:1 NOT_READ"},
		{"p (2, 3) tog", 9, -1, 1, "1:8 NOT_READ"},
		// Slips, and what is said of them once.
		{"sl 1 kwise wyif, sl 8 as if to purl with yarn in back", 9, 9, 1, ""},
		{"sl1 pwise kwise", 9, -1, 1, "1:11 NOT_READ"},
		// How far.
		{"k to last st, p1", 9, 9, 1, ""},
		{"k until 3 sts rem, p3", 9, 9, 1, ""},
		{"k to 2 sts before end, p2", 9, 9, 1, ""},
		{"k across to last 2 sts, p2", 9, 9, 1, ""},
		{"k rem sts", 9, 9, 1, ""},
		{"k to last, p1", 9, -1, 1, "1:3 NOT_READ"},
		{"k to marker", 9, -1, 1, "1:1 MARKER_NOT_KNOWN"},
		{"k to 3 sts", 9, -1, 1, "1:3 NOT_READ"},
		{"k3 to end", 9, -1, 1, "1:4 NOT_READ"},
		{"k all the way", 9, -1, 1, "1:1 READING_TAKEN, 1:3 NOT_READ"},
		{"k2tog 3 more times", 9, -1, 1, "1:7 AMBIGUOUS"},
		// Into one stitch.
		{"(k1, yo, k1) in the next st, k2", 3, 5, 1, ""},
		{"(k1, yo) in 1 st", 1, 2, 1, ""},
		{"(k1, p1) in each st to end", 9, 18, 1, ""},
		{"(k1, yo, k1) all in next st twice", 2, 6, 1, ""},
		{"(k1, k2tog) in next st", 3, -1, 1, "1:1 AMBIGUOUS"},
		// Cables by their stitches, which they keep.
		{"2/2 lc, 2/1 rpc, c2b", 9, 9, 1, ""},
		{"2/2", 9, -1, 1, "1:1 NOT_READ"},
		{"c5f, t3b, cr4l, 2/1/1 lpc", 16, 16, 1, ""},
		// Claims.
		{"k2tog, k3 (1 st dec)", 5, 4, 1, ""},
		{"k5 - 5 sts rem on needle", 5, 5, 1, ""},
		{"k2tog, k to end—8 sts", 9, 8, 1, ""},
		{"k2tog, k to end–8", 9, 8, 1, ""},
		{"k2tog, k to end-7", 9, 8, 1, "1:17 COUNT_DISAGREES"},
		{"k2tog, k to end - 7", 9, 8, 1, "1:19 COUNT_DISAGREES"},
		{"k2tog, k around—7 sts rem", 9, 8, 1, "1:17 COUNT_DISAGREES"},
		{"Knit 1 row—9 sts", 9, 9, 1, ""},
		{"Knit 1 row–9 sts", 9, 9, 1, ""},
		{"Knit 1 row-8 sts", 9, 9, 1, "1:12 COUNT_DISAGREES"},
		{"k9—9 sts", 9, 9, 1, ""},
		{"k5 (5 sts inc)", 5, 5, 1, "1:5 COUNT_DISAGREES"},
		{"k3 (96 sts) p2", 5, 96, 1, "1:4 COUNT_TAKEN, 1:13 NOT_READ"}, // the claim still tells how to go on,
		// Labels.
		{"Row 1, 3 and 5: knit. Rows 2 and 4: purl", 9, 9, 5, ""},
		{"Row 1, and 3: knit\nRow 2: purl", 9, 9, 3, ""},
		{"All RS rows: knit\nRow 2 (WS): purl\nRow 4: purl", 9, 9, 3, ""},
		{"Row 1 and all foll odd rows (right side): knit\nRow 2: purl\nRow 4: purl", 9, 9, 4, ""},
		{"Row 1 (wrong side): purl\nRow 2 (WS): knit", 9, 9, 2, "2:8 SIDE_DISAGREES"},
		// Rows again.
		{"Row 1: knit\nRow 2: purl\nRep last two rows twice more", 9, 9, 6, ""},
		{"Row 1: knit\nRow 2: purl\nRep both rows 3 times", 9, 9, 8, "3:15 READING_TAKEN"},
		{"knit\nRep last rows twice more", 9, -1, 2, "2:5 NOT_READ"},
		{"Rep the wool", 9, -1, 1, "1:9 NOT_READ"},
		{"Rep last wool", 9, -1, 1, "1:10 NOT_READ"},
		{"Row 1: knit\nRep Row 1 until 9 sts", 9, 9, 1, ""}, // no change, and there already
		{"Row 1 (RS): knit\nWork 4 rows even, ending with a WS row", 9, 9, 5, "2:1 SIDE_DISAGREES"},
		{"Work even until 3 cm, ending with a RS row\nRow 1 (RS): knit", 9, 9, 1, "1:1 LENGTH_OPEN, 2:8 SIDE_DISAGREES"},
		// Rows at the edges.
		{"Cast on 9 sts\nBind off 3 sts at beg of next 2 rows", 9, 3, 2, ""},
		{"Cast on 4 sts at beg of next row", 9, 13, 1, ""},
		{"BO 3 sts at the beg of row", 9, -1, 1, "1:24 NOT_READ"},
		{"Knit 4 more rows", 9, 9, 4, ""},
		{"Join in the rnd. k9", 9, 9, 1, ""},
	} {
		w := Read(c.text, Options{}).Work(Start{Counts: []int{c.on}})
		if got := found(w.Findings); got != c.found || w.EndStitches[0] != c.end || w.WorkedRows[0] != c.rows {
			t.Errorf("%q: %d stitches after %d rows, found %s; want %d, %d, %s", c.text, w.EndStitches[0], w.WorkedRows[0], got,
				c.end, c.rows, c.found)
		}
	}
}

// In the round a row on the wrong side ends with a turn.
func TestRoundsThatTurn(t *testing.T) {
	for text, want := range map[string]string{
		"Rnd 1: k4, turn\nRnd 2 (WS): p4, turn": "",
		"Rnd 1: k4, turn\nRnd 2 (WS): p4":       "2:1 CANNOT_BE_WORKED",
	} {
		w := Read(text, Options{}).Work(Start{Counts: []int{9}, Construction: stitch.InTheRound})
		if got := found(w.Findings); got != want || w.EndStitches[0] != 9 {
			t.Errorf("%q: %d stitches, found %s; want 9, %s", text, w.EndStitches[0], got, want)
		}
	}
}

// A piece may begin on the wrong side: where the question does not say it, the first
// label does.
func TestFirstSide(t *testing.T) {
	for _, side := range []stitch.Side{stitch.SideUnspecified, stitch.RightSide, stitch.WrongSide} {
		w := Read("Row 1 (WS): k9", Options{}).Work(Start{Counts: []int{9}, Side: side})
		if got := len(w.Findings) == 0; got != (side != stitch.RightSide) {
			t.Errorf("first side %v: %s", side, found(w.Findings))
		}
	}
}

// A row of a size as package stitch has it. What is known only by its counts is
// plain work that takes and leaves as many: c4f of 4 is k4, kyok of 1 is k1 and
// two yarn overs, sspp2 of 3 binds off two.
func TestStitchRow(t *testing.T) {
	p := Read("k2 (3), [k2tog, yo] 2 (3) times, k to end\nRep Row 1 twice\nc4f, kyok, sspp2\n[k1, c4f] to end", Options{})
	for _, c := range []struct {
		line, size, on int
		want           string
	}{
		{0, 0, 20, "k2, [k2tog, yo] twice, k to end"},
		{0, 1, 20, "k3, [k2tog, yo] 3 times, k to end"},
		{1, 0, 20, ""},
		{2, 0, 8, "[k4] once, [k1, [yo] twice] once, [BO 2, k1] once"},
		{3, 0, 10, "[k1, [k4] once] twice"},
		{3, 0, 0, ""},
	} {
		row, ok := p.StitchRow(c.line, c.size, c.on)
		if got := row.Text(); ok != (c.line != 1) || got != c.want {
			t.Errorf("line %d in size %d: %v, %q; want %q", c.line, c.size, ok, got, c.want)
		}
	}
}
