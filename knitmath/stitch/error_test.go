package stitch

import "testing"

// text is what an error says, "" for none.
func text(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

// Where a row stops and what is missing there, word for word, by the arithmetic
// and by the machine: each is worked by hand on the stitches given. What only one
// of them knows is left out of the other.
func TestErrorsSayWhere(t *testing.T) {
	for _, c := range []struct {
		on      int
		row     Row
		counted string
		worked  string // behind "row 1"; the same as counted if empty
	}{
		{4, RowOf(Do(Knit, 5)), ", step 1 (time 5): k needs 1 stitch, 0 left: STITCHES_MISSING", ""},
		// 7 stitches hold three and leave one.
		{7, RowOf(Do(K2tog, 4)), ", step 1 (time 4): k2tog needs 2 stitches, 1 left: STITCHES_MISSING", ""},
		{7, RowOf(Do(Knit, 2), Do(CDD, 2)), ", step 2 (time 2): CDD needs 3 stitches, 2 left: STITCHES_MISSING", ""},
		{7, RowOf(Do(Knit, 3)), ": 4 left: STITCHES_UNWORKED", ""},
		{7, RowOf(Do(Knit, 3), ToLast(Purl, 6)), ", step 2: p needs 6 stitches, 4 left: STITCHES_MISSING", ""},
		// 6 are left, of which 1 stays: 5 are no threes. The machine works one.
		{7, RowOf(Do(Knit, 1), ToLast(K3tog, 1)), ", step 2: k3tog needs 3 stitches, 6 left: DOES_NOT_COME_OUT",
			", step 2 (time 2): k3tog needs 3 stitches, 3 left: DOES_NOT_COME_OUT"},
		{7, RowOf(Do(Knit, 1), ToEnd(YO)), ", step 2: yo needs 0 stitches, 6 left: MALFORMED", ""},
		{7, RowOf(Do(Knit, 1), Do(Purl, 0)), ", step 2: p needs 0 stitches, 6 left: MALFORMED", ""},
		{7, RowOf(Do(Turn, 1), Do(Purl, 1)), ", step 1: turn needs 0 stitches, 7 left: TURN_NOT_LAST", ""},
		{7, RowOf(Do(Knit, 2), Do(Turn, 2)), ", step 2: turn needs 0 stitches, 5 left: TURN_NOT_LAST", ""},
		{7, RowOf(Do(Knit, 2), Do(Turn, 0)), ", step 2: turn needs 0 stitches, 5 left: MALFORMED", ""},
		{7, RowOf(Do(Knit, 2), Do(WrapTurn, -1)), ", step 2: w&t needs 0 stitches, 5 left: MALFORMED", ""},
		{7, RowOf(Do(Knit, 2), Step{Op: Turn, Count: 1, Times: 1}), ", step 2: turn needs 0 stitches, 5 left: MALFORMED", ""},
		{7, RowOf(Do(Knit, 2), Step{Op: Turn, Count: 1, Group: []Step{Do(Knit, 5)}}),
			", step 2: turn needs 0 stitches, 5 left: MALFORMED", ""},
		{7, RowOf(Do(Knit, 2), ToEnd(Turn)), ", step 2: turn needs 0 stitches, 5 left: MALFORMED", ""},
		// The group takes 3 and 2: the second time finds 2 stitches, one is missing.
		{7, RowOf(Repeat(3, Do(Knit, 3), Do(K2tog, 1))),
			", step 1 (time 2), step 1 (time 3): k needs 1 stitch, 0 left: STITCHES_MISSING", ""},
		{9, RowOf(Repeat(3, Do(Knit, 3), Do(K2tog, 1))),
			", step 1 (time 2), step 2: k2tog needs 2 stitches, 1 left: STITCHES_MISSING", ""},
		// Three times 2 of 7 in the inner group: it fails in the second outer time.
		{10, RowOf(Do(Knit, 1), Repeat(2, Repeat(3, Do(K2tog, 1)), Do(Purl, 1))),
			", step 2 (time 2), step 1 (time 2), step 1: k2tog needs 2 stitches, 0 left: STITCHES_MISSING", ""},
		{7, RowOf(Do(Knit, 1), Repeat(2, Do(Purl, 1), ToLast(Knit, 2))),
			", step 2, step 2: k needs 2 stitches, 5 left: TO_LAST_IN_GROUP", ""},
		{7, RowOf(Repeat(1, Do(Purl, 1), Do(Turn, 1))), ", step 1, step 2: turn needs 0 stitches, 6 left: TURN_NOT_LAST", ""},
	} {
		_, _, err := c.row.Count(c.on)
		if got, want := text(err), "row"+c.counted; got != want {
			t.Errorf("%q on %d: counted %q, want %q", c.row.Text(), c.on, got, want)
		}
		worked := c.worked
		if worked == "" {
			worked = c.counted
		}
		_, err = knit(t, Flat, c.on, c.row)
		if got, want := text(err), "row 1"+worked; got != want {
			t.Errorf("%q on %d: worked %q, want %q", c.row.Text(), c.on, got, want)
		}
	}
}

// What hands alone find, in the second row or the third: the row's number, the
// step, and how many stitches the operation is for.
func TestHandsSayWhere(t *testing.T) {
	turned, wrapped := RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(Knit, 2), Do(WrapTurn, 1))
	doubled, looped := RowOf(Do(MakeDouble, 1), Do(Purl, 1)), RowOf(Do(ShortRowYO, 1), Do(Purl, 2))
	for _, c := range []struct {
		rows []Row
		want string
	}{
		{[]Row{RowOf(Do(Knit, 4), Do(WrapTurn, 1))}, "row 1, step 2: w&t needs 1 stitch, 0 left: NOTHING_TO_WRAP"},
		{[]Row{turned, doubled, RowOf(Do(Knit, 1), Do(SSK, 1), Do(Knit, 1))},
			"row 3, step 2: ssk needs 2 stitches, 3 left: DOUBLE_STITCH"},
		{[]Row{turned, doubled, RowOf(Do(Knit, 1), Do(WrapTurn, 1))}, "row 3, step 2: w&t needs 1 stitch, 3 left: DOUBLE_STITCH"},
		{[]Row{turned, doubled, RowOf(Do(Knit, 1), Do(KnitWrapped, 1))},
			"row 3, step 2: k1 tog with its wrap needs 1 stitch, 3 left: NOT_WRAPPED"},
		{[]Row{turned, looped, RowOf(Do(Knit, 2), Do(WrapTurn, 1))}, "row 3, step 2: w&t needs 1 stitch, 3 left: SHORT_ROW_YARN_OVER"},
		{[]Row{turned, looped, RowOf(Do(Knit, 3))}, "row 3, step 1 (time 3): k needs 1 stitch, 3 left: SHORT_ROW_YARN_OVER"},
		{[]Row{wrapped, RowOf(ToEnd(Purl)), RowOf(ToEnd(BindOff))},
			"row 3, step 1 (time 3): BO needs 1 stitch, 2 left: WRAPPED_STITCH"},
		{[]Row{wrapped, RowOf(ToEnd(Purl)), RowOf(ToEnd(KFB))}, "row 3, step 1 (time 3): kfb needs 1 stitch, 2 left: WRAPPED_STITCH"},
		{[]Row{RowOf(ToEnd(BindOff), Do(BindOff, 1))}, "row 1, step 2: BO needs 1 stitch, 0 left: STITCHES_MISSING"},
		{[]Row{RowOf(ToEnd(Slip), Do(Slip, 1))}, "row 1, step 2: sl needs 1 stitch, 0 left: STITCHES_MISSING"},
		{[]Row{RowOf(ToEnd(Knit), Do(KnitDouble, 1))}, "row 1, step 2: k DS needs 1 stitch, 0 left: STITCHES_MISSING"},
		{[]Row{RowOf(Do(Knit, 4), Do(Turn, 1)), RowOf(Do(PlaceMarker, 1), Do(MakeDouble, 1))},
			"row 2, step 2: make DS needs 1 stitch, 4 left: NOT_AFTER_TURN"},
		{[]Row{turned, RowOf(ToLast(Purl, 0), Do(MakeDouble, 1))}, "row 2, step 2: make DS needs 1 stitch, 0 left: STITCHES_MISSING"},
		{[]Row{turned, RowOf(Do(Turn, 1)), RowOf(Do(Knit, 2), Do(Turn, 1)), RowOf(Do(MakeDouble, 1), Do(Turn, 1)), RowOf(Do(MakeDouble, 1))},
			"row 5, step 1: make DS needs 1 stitch, 1 left: DOUBLE_STITCH"},
		{[]Row{RowOf(Do(Turn, 1)), RowOf(Do(ShortRowYO, 1))}, "row 2, step 1: yo needs 0 stitches, 0 left: NOT_AFTER_TURN"},
		{[]Row{RowOf(Do(Knit, 1), Do(PickUp, 1))}, "row 1, step 2: pick up and knit needs 1 stitch, 3 left: NOT_AN_EDGE"},
		{[]Row{RowOf(ToEnd(Knit), Do(PickUpTwo, 1))},
			"row 1, step 2: pick up and knit 2 in one row needs 1 stitch, 0 left: STITCHES_MISSING"},
	} {
		_, err := knit(t, Flat, 4, c.rows...)
		if got := text(err); got != c.want {
			t.Errorf("%q: %q, want %q", c.rows[len(c.rows)-1].Text(), got, c.want)
		}
	}
	if got, want := text(edge(t, 4).Work(RowOf(Do(PickUp, 1), Do(K2tog, 1)))),
		"row 1, step 2: k2tog needs 2 stitches, 3 left: ROW_OF_EDGE"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// What cannot be begun says how many rows were worked and what is on the needle.
func TestBeginningsSayWhere(t *testing.T) {
	worked, err := knit(t, Flat, 4, RowOf(ToEnd(Knit)), RowOf(Do(Purl, 1), Do(Turn, 1)))
	must(t, err)
	for _, c := range []struct{ got, want string }{
		{text(worked.CastOn(3)), "row 2: CO needs 0 stitches, 1 left: NOT_POSSIBLE"},
		{text(worked.LoadEdge(3)), "row 2: pick up and knit needs 0 stitches, 1 left: NOT_POSSIBLE"},
		{text(worked.JoinInTheRound()), "row 2: 1 left: SHORT_ROW_OPEN"},
		{text(new(Machine).CastOn(0)), "row: CO needs 0 stitches, 0 left: MALFORMED"},
		{text(new(Machine).CastOn(MaxStitches + 1)), "row: CO needs 0 stitches, 0 left: TOO_LARGE"},
		{text(new(Machine).LoadEdge(-1)), "row: pick up and knit needs 0 stitches, 0 left: MALFORMED"},
		{text(new(Machine).JoinInTheRound()), "row: 0 left: NOT_POSSIBLE"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}
