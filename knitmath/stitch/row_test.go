package stitch

import (
	"errors"
	"math"
	"slices"
	"testing"
)

// rowCases are worked by hand: the sums stand beside the counts.
var rowCases = []struct {
	text          string
	row           Row
	on            int
	takes, leaves int
	reason        Reason
}{
	{"k5", RowOf(Do(Knit, 5)), 5, 5, 5, ""},
	{"k5, [k2tog, k8] 4 times, k5", RowOf(Do(Knit, 5), Repeat(4, Do(K2tog, 1), Do(Knit, 8)), Do(Knit, 5)),
		50, 50, 46, ""}, // 5 + 4*10 + 5; one less in each repeat
	{"[k1, p1] twice", RowOf(Repeat(2, Do(Knit, 1), Do(Purl, 1))), 4, 4, 4, ""},
	{"[k1, p1] once", RowOf(Repeat(1, Do(Knit, 1), Do(Purl, 1))), 2, 2, 2, ""},
	{"k1, M1L, k to last st, M1R, k1", RowOf(Do(Knit, 1), Do(M1L, 1), ToLast(Knit, 1), Do(M1R, 1), Do(Knit, 1)),
		20, 20, 22, ""},
	{"k16, w&t", RowOf(Do(Knit, 16), Do(WrapTurn, 1)), 20, 16, 16, ""},
	{"make DS, p11, turn", RowOf(Do(MakeDouble, 1), Do(Purl, 11), Do(Turn, 1)), 16, 12, 12, ""},
	{"k to end", RowOf(ToEnd(Knit)), 7, 7, 7, ""},
	{"p to last 3 sts, ssp, p1", RowOf(ToLast(Purl, 3), Do(SSP, 1), Do(Purl, 1)), 9, 9, 8, ""},
	{"k2tog to end", RowOf(ToEnd(K2tog)), 8, 8, 4, ""},
	{"k2tog to end", RowOf(ToEnd(K2tog)), 9, 0, 0, ReasonUneven},
	{"kfb to end", RowOf(ToEnd(KFB)), 6, 6, 12, ""},
	{"[k2tog] 3 times, [yo, k1] 6 times, [k2tog] 3 times",
		RowOf(Do(K2tog, 3), Repeat(6, Do(YO, 1), Do(Knit, 1)), Do(K2tog, 3)), 18, 18, 18, ""}, // 6+6+6; 3+12+3
	{"sl 1, k2 tbl, BO 4, CO 6, p3 tbl", RowOf(Do(Slip, 1), Do(KnitTbl, 2), Do(BindOff, 4), Do(CastOn, 6), Do(PurlTbl, 3)),
		10, 10, 12, ""},
	{"[pm] twice, k2, sm", RowOf(Do(PlaceMarker, 2), Do(Knit, 2), Do(SlipMarker, 1)), 2, 2, 2, ""},
	{"[[k1, yo] twice, k2tog] 3 times", RowOf(Repeat(3, Repeat(2, Do(Knit, 1), Do(YO, 1)), Do(K2tog, 1))),
		12, 12, 15, ""}, // each time 2+2 taken, 4+1 left
	{"", Row{}, 0, 0, 0, ""},
	{"k5", RowOf(Do(Knit, 5)), 6, 5, 5, ReasonUnworked},
	{"k5", RowOf(Do(Knit, 5)), 4, 0, 0, ReasonMissing},
	{"k to last 3 sts", RowOf(ToLast(Knit, 3)), 2, 0, 0, ReasonMissing},
	{"yo to end", RowOf(ToEnd(YO)), 2, 0, 0, ReasonMalformed},
	{"turn, k2", RowOf(Do(Turn, 1), Do(Knit, 2)), 2, 0, 0, ReasonTurnInside},
	{"k2, [w&t] twice", RowOf(Do(Knit, 2), Do(WrapTurn, 2)), 4, 0, 0, ReasonTurnInside},
	{"[k1, turn] once", RowOf(Repeat(1, Do(Knit, 1), Do(Turn, 1))), 4, 0, 0, ReasonTurnInside},
	{"[k to end] twice", RowOf(Repeat(2, ToEnd(Knit))), 4, 0, 0, ReasonToLast},
	{"?", RowOf(Step{}), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(Repeat(2)), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(Do(Knit, 0)), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(Do(Knit, math.MinInt)), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(Do(opEnd, 1)), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(Step{Op: Knit, Count: 1, Times: 2}), 4, 0, 0, ReasonMalformed},
	{"?", RowOf(ToLast(Knit, -1)), 4, 0, 0, ReasonMalformed},
	{"CO 9223372036854775807", RowOf(Do(CastOn, math.MaxInt)), 4, 0, 0, ReasonTooLarge},
	{"[[CO 9999] 9999 times] 9999 times", RowOf(Repeat(9999, Repeat(9999, Do(CastOn, 9999)))), 4, 0, 0, ReasonTooLarge},
	{"[pm] 9223372036854775807 times", RowOf(Do(PlaceMarker, math.MaxInt)), 0, 0, 0, ReasonTooLarge},
	{"[[[[k1] once] once] once] once",
		RowOf(Repeat(1, Repeat(1, Repeat(1, Repeat(1, Do(Knit, 1)))))), 1, 1, 1, ""},
	{"k1", RowOf(Do(Knit, 1)), -1, 0, 0, ReasonTooLarge},
	{"k10001", RowOf(Do(Knit, 10001)), 10001, 0, 0, ReasonTooLarge},
	{"kfb to end", RowOf(ToEnd(KFB)), 5001, 0, 0, ReasonTooLarge}, // 10,002 left
	{"kfb to end", RowOf(ToEnd(KFB)), 5000, 5000, 10000, ""},
	{"yo, turn", RowOf(Do(YO, 1), Do(Turn, 1)), 10000, 0, 0, ReasonTooLarge}, // 10,001 on both needles
}

func TestRows(t *testing.T) {
	for _, c := range rowCases {
		if got := c.row.Text(); got != c.text {
			t.Errorf("text %q, want %q", got, c.text)
		}
		takes, leaves, err := c.row.Count(c.on)
		if takes != c.takes || leaves != c.leaves || reasonOf(err) != c.reason {
			t.Errorf("%q on %d: %d, %d, %v, want %d, %d, %s", c.text, c.on, takes, leaves, err, c.takes, c.leaves, c.reason)
		}
	}
}

// reasonOf returns the reason of a *RowError, "" for no error.
func reasonOf(err error) Reason {
	var fault *RowError
	if errors.As(err, &fault) {
		return fault.Reason
	}
	if err != nil {
		return Reason("not a RowError: " + err.Error())
	}
	return ""
}

func TestDepth(t *testing.T) {
	row := RowOf(Do(Knit, 1))
	for depth := 1; depth <= MaxDepth+1; depth++ {
		row = RowOf(Repeat(1, row.Steps...))
		_, _, err := row.Count(1)
		m := NewMachine(Flat)
		must(t, m.CastOn(1))
		want := Reason("")
		if depth > MaxDepth {
			want = ReasonTooDeep
		}
		if got := reasonOf(err); got != want {
			t.Errorf("depth %d counted: %q, want %q", depth, got, want)
		}
		if got := reasonOf(m.Work(row)); got != want {
			t.Errorf("depth %d worked: %q, want %q", depth, got, want)
		}
	}
	if got, want := row.Text(), "[[[[?] once] once] once] once"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	endless := make([]Step, 1)
	endless[0] = Repeat(2, endless...)
	endless[0].Group = endless
	if _, _, err := (Row{endless}).Count(4); reasonOf(err) != ReasonTooDeep {
		t.Errorf("a group that holds itself: %v", err)
	}
}

func TestExpand(t *testing.T) {
	runs, err := Expand(RowOf(Do(Knit, 1), Repeat(3, Do(Knit, 1), Do(K2tog, 1), Do(Knit, 2)), ToEnd(Knit)), 20)
	want := []Run{{Knit, 2}, {K2tog, 1}, {Knit, 3}, {K2tog, 1}, {Knit, 3}, {K2tog, 1}, {Knit, 6}}
	// 1 + 3*(1+2+2) = 16 stitches, 4 remain to the end.
	if err != nil || !slices.Equal(runs, want) {
		t.Errorf("%v, %v, want %v", runs, err, want)
	}
	if runs, err := Expand(RowOf(Do(Knit, 3)), 4); runs != nil || reasonOf(err) != ReasonUnworked {
		t.Errorf("%v, %v", runs, err)
	}
}

func TestErrorPlace(t *testing.T) {
	// 17 stitches: k5 leaves 12; the group takes 5 a time: the third time finds
	// 2 stitches, k2tog takes them, k3 finds none.
	row := RowOf(Do(Knit, 5), Repeat(4, Do(K2tog, 1), Do(Knit, 3)))
	want := RowError{Path: []Place{{1, 3}, {1, 1}}, Op: Knit, Needed: 1, Left: 0, Reason: ReasonMissing}
	_, _, err := row.Count(17)
	check := func(err error) {
		t.Helper()
		var got *RowError
		if !errors.As(err, &got) || !slices.Equal(got.Path, want.Path) || got.Op != want.Op || got.Row != want.Row ||
			got.Needed != want.Needed || got.Left != want.Left || got.Reason != want.Reason {
			t.Errorf("%+v, want %+v", got, want)
		}
	}
	check(err)
	m := NewMachine(Flat)
	must(t, m.CastOn(17))
	want.Row = 1
	check(m.Work(row))
	if got, want := want.Error(), "row 1, step 2 (time 3), step 2: k needs 1 stitch, 0 left: STITCHES_MISSING"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
