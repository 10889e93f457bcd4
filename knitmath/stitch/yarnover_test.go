package stitch

import (
	"slices"
	"testing"
)

// The yarn over of a turn is worked together with the stitch that the turn left
// unworked. Which of the two comes first on the needle, and which side faces, say
// by which decrease: the one whose upper stitch is that stitch, and on the wrong
// side the one that looks so from the right side. All others are refused.
func TestEachYarnOverHasItsDecrease(t *testing.T) {
	kAll := RowOf(ToEnd(Knit))
	for _, c := range []struct {
		name  string
		rows  []Row
		until int // stitches worked before the two meet
		plain Op
		want  Op
	}{
		// Four stitches; the first turn lies between the second and the third. To
		// come from the side of the unworked stitch, the row between is slipped.
		{"first, right side", []Row{RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Purl, 2))}, 2, Knit, K2tog},
		{"second, wrong side", []Row{RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Purl, 2)),
			RowOf(Do(Knit, 2), ToEnd(Slip))}, 1, Purl, P2tog},
		{"first, wrong side", []Row{kAll, RowOf(Do(Purl, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Knit, 2))}, 2, Purl, SSP},
		{"second, right side", []Row{kAll, RowOf(Do(Purl, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Knit, 2)),
			RowOf(Do(Purl, 2), ToEnd(Slip))}, 1, Knit, SSK},
	} {
		for _, op := range []Op{K2tog, SSK, P2tog, SSP, SKP} {
			rows := append(slices.Clone(c.rows), RowOf(Do(c.plain, c.until), Do(op, 1), ToEnd(c.plain)))
			m, err := knit(t, Flat, 4, rows...)
			want := ReasonYarnOver
			if op == c.want {
				want = ""
			}
			if got := reasonOf(err); got != want {
				t.Errorf("%s, by %s: %q, want %q", c.name, op, got, want)
			}
			if op == c.want && (m.StitchCount() != 4 || m.Unresolved() != 0) {
				t.Errorf("%s, by %s: %d stitches, %d unresolved", c.name, op, m.StitchCount(), m.Unresolved())
			}
		}
	}
}

// The heights of the second case, by hand: rows 1 to 4 work stitches 1 and 2;
// row 4 works stitch 4, and stitch 3 together with a yarn over that lies as high
// as stitch 3 did.
func TestYarnOverMetFromBehind(t *testing.T) {
	m, err := knit(t, Flat, 4, RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Purl, 2)),
		RowOf(Do(Knit, 2), ToEnd(Slip)), RowOf(Do(Purl, 1), Do(P2tog, 1), ToEnd(Purl)))
	if err != nil || !slices.Equal(m.Heights(), []int{4, 4, 1, 1}) {
		t.Errorf("%v, heights %v", err, m.Heights())
	}
}

// A double stitch is made of a plain one alone.
func TestMakeDoubleOfWhatIsNoStitch(t *testing.T) {
	back := RowOf(Do(Turn, 1)) // nothing is worked, and what was met last is met first
	for _, c := range []struct {
		name string
		rows []Row
		want Reason
	}{
		{"a double stitch", []Row{RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(MakeDouble, 1), Do(Turn, 1))}, ReasonDouble},
		{"a wrapped stitch", []Row{RowOf(Do(Knit, 2), Do(WrapTurn, 1)), back}, ReasonWrapped},
		{"the yarn over of a turn", []Row{RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Turn, 1))}, ReasonYarnOver},
	} {
		_, err := knit(t, Flat, 4, append(c.rows, RowOf(Do(MakeDouble, 1), ToEnd(Knit)))...)
		if got := reasonOf(err); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// A new loop beside a slipped stitch stands one row above the next, and at the
// end of the row, where there is no next, level with the last.
func TestLevelOfNewLoops(t *testing.T) {
	kAll := RowOf(ToEnd(Knit))
	for _, c := range []struct {
		name string
		row  Row
		want []int // in right-side order; the row is a wrong-side one over 1, 1, 1
	}{
		{"yo before the first", RowOf(Do(YO, 1), ToEnd(Slip)), []int{1, 1, 1, 2}},
		{"yo after a slipped one", RowOf(Do(Slip, 1), Do(YO, 1), ToEnd(Slip)), []int{1, 1, 2, 1}},
		{"yo after a worked one", RowOf(Do(Purl, 1), Do(YO, 1), ToEnd(Slip)), []int{1, 1, 2, 2}},
		{"yo after the last, slipped", RowOf(ToEnd(Slip), Do(YO, 1)), []int{1, 1, 1, 1}},
		{"yo after the last, worked", RowOf(ToEnd(Purl), Do(YO, 1)), []int{2, 2, 2, 2}},
		{"yo after cast-on stitches", RowOf(Do(Purl, 1), Do(CastOn, 1), Do(YO, 1), ToEnd(Purl)), []int{2, 2, 2, 0, 2}},
	} {
		m, err := knit(t, Flat, 3, kAll, c.row)
		if err != nil || !slices.Equal(m.Heights(), c.want) {
			t.Errorf("%s: %v, heights %v, want %v", c.name, err, m.Heights(), c.want)
		}
	}
}
