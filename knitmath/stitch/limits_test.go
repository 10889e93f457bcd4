package stitch

import (
	"slices"
	"testing"
)

// Each limit holds exactly: what reaches it is worked, one more is refused, and
// the refusal says where. Counted says what Count finds, worked what the machine
// does, each "" for what is allowed.
func TestLimitsAreExact(t *testing.T) {
	for _, c := range []struct {
		name            string
		on              int
		row             Row
		counted, worked string
	}{
		{"most operations", 4, RowOf(Do(PlaceMarker, MaxOperations-4), Do(Knit, 4)), "", ""},
		{"one operation more", 4, RowOf(Do(PlaceMarker, MaxOperations-3), Do(Knit, 4)),
			", step 2: 0 left: TOO_LARGE", ", step 2 (time 4): k needs 0 stitches, 1 left: TOO_LARGE"},
		{"one operation more in one step", 4, RowOf(Do(Knit, 4), Do(PlaceMarker, MaxOperations+1)),
			", step 2: pm needs 0 stitches, 0 left: TOO_LARGE", ", step 2 (time 19997): pm needs 0 stitches, 0 left: TOO_LARGE"},
		{"most operations in a group", 4, RowOf(Repeat(MaxOperations/2-2, Do(PlaceMarker, 2)), Do(Knit, 4)), "", ""},
		{"more operations in a group", 4, RowOf(Do(Knit, 1), Repeat(MaxOperations/2, Do(PlaceMarker, 2)), Do(Knit, 3)),
			", step 2: 3 left: TOO_LARGE", ", step 2 (time 10000), step 1 (time 2): pm needs 0 stitches, 3 left: TOO_LARGE"},
		{"more operations by two steps of a group", 4, RowOf(Do(Knit, 1), Repeat(1, Do(PlaceMarker, MaxOperations), Do(Purl, 1)), Do(Knit, 2)),
			", step 2, step 2: 2 left: TOO_LARGE", ", step 2, step 1 (time 20000): pm needs 0 stitches, 3 left: TOO_LARGE"},
		{"more times than operations", 4, RowOf(Do(Knit, 1), Repeat(MaxOperations+1, Do(YO, 1)), Do(Knit, 3)),
			", step 2: 3 left: TOO_LARGE", ", step 2 (time 10000), step 1: yo needs 0 stitches, 3 left: TOO_LARGE"},
		{"as many times as operations", 4, RowOf(Repeat(MaxOperations-4, Do(PlaceMarker, 1)), Do(Knit, 4)), "", ""},
		{"most stitches", 4, RowOf(Do(CastOn, MaxStitches-4), Do(Knit, 4)), "", ""},
		{"one stitch more", 4, RowOf(Do(CastOn, MaxStitches-3), Do(Knit, 4)),
			", step 2: 0 left: TOO_LARGE", ", step 2 (time 4): k needs 0 stitches, 0 left: TOO_LARGE"},
		{"most stitches, turned", 4, RowOf(Do(CastOn, MaxStitches-4), Do(Turn, 1)), "", ""},
		{"one stitch more, turned", 4, RowOf(Do(CastOn, MaxStitches-3), Do(Turn, 1)),
			": 4 left: TOO_LARGE", ", step 2: turn needs 0 stitches, 4 left: TOO_LARGE"},
		{"one stitch more behind two, turned", 4, RowOf(Do(Knit, 2), Do(CastOn, MaxStitches-3), Do(Turn, 1)),
			": 2 left: TOO_LARGE", ", step 3: turn needs 0 stitches, 2 left: TOO_LARGE"},
		{"most operations, turned", 4, RowOf(Do(PlaceMarker, MaxOperations-1), Do(Turn, 1)), "", ""},
		{"one operation more, turned", 4, RowOf(Do(PlaceMarker, MaxOperations), Do(Turn, 1)),
			", step 2: 4 left: TOO_LARGE", ", step 2: turn needs 0 stitches, 4 left: TOO_LARGE"},
		{"most on the needle", MaxStitches, RowOf(ToEnd(Knit)), "", ""},
		{"most left of fewer", MaxStitches / 2, RowOf(ToEnd(KFB)), "", ""},
		{"a stitch bound off for one cast on", MaxStitches, RowOf(Do(BindOff, 1), Do(CastOn, 1), ToEnd(Slip)), "", ""},
	} {
		_, _, err := c.row.Count(c.on)
		want := c.counted
		if want != "" {
			want = "row" + want
		}
		if got := text(err); got != want {
			t.Errorf("%s: counted %q, want %q", c.name, got, want)
		}
		want = c.worked
		if want != "" {
			want = "row 1" + want
		}
		_, err = knit(t, Flat, c.on, c.row)
		if got := text(err); got != want {
			t.Errorf("%s: worked %q, want %q", c.name, got, want)
		}
	}
	for on, want := range map[int]string{
		MaxStitches: "", MaxStitches + 1: "row: 10001 left: TOO_LARGE", -1: "row: -1 left: TOO_LARGE",
		0: "", // nothing to work is no fault
	} {
		_, _, err := RowOf(ToEnd(Knit)).Count(on)
		if got := text(err); got != want {
			t.Errorf("on %d: %q, want %q", on, got, want)
		}
	}
	// As many times as there may be operations, which leaves none for a stitch.
	if _, _, err := RowOf(Repeat(MaxOperations, Do(PlaceMarker, 1))).Count(0); err != nil {
		t.Error(err)
	}
	for n, want := range map[int]Reason{0: ReasonMalformed, 1: "", MaxStitches: "", MaxStitches + 1: ReasonTooLarge} {
		if got := reasonOf(NewMachine(Flat).CastOn(n)); got != want {
			t.Errorf("cast on %d: %q, want %q", n, got, want)
		}
	}
}

// Stitches behind a turn count too: a round may not end with more than the limit
// on both needles.
func TestLimitOfBothNeedles(t *testing.T) {
	turned := RowOf(Do(Knit, 2), Do(Turn, 1)) // of 4: two wait
	for n, want := range map[int]string{
		MaxStitches - 4: "", MaxStitches - 3: "row 2: 0 left: TOO_LARGE",
	} {
		if _, err := knit(t, Flat, 4, turned, RowOf(Do(CastOn, n), ToEnd(Purl))); text(err) != want {
			t.Errorf("%d more: %v, want %q", n, err, want)
		}
	}
}

// Runs are joined as far as an int reaches, and never beyond.
func TestAppendRun(t *testing.T) {
	for _, c := range []struct {
		name string
		runs []Run
		n    int
		want []Run
	}{
		{"the first", nil, 2, []Run{{Knit, 2}}},
		{"none", []Run{{Knit, 2}}, 0, []Run{{Knit, 2}}},
		{"less than none", []Run{{Knit, 2}}, -1, []Run{{Knit, 2}}},
		{"one", []Run{{Knit, 2}}, 1, []Run{{Knit, 3}}},
		{"another operation", []Run{{Purl, 2}}, 1, []Run{{Purl, 2}, {Knit, 1}}},
		{"the most", []Run{{Knit, 1}}, maxInt - 1, []Run{{Knit, maxInt}}},
		{"one more", []Run{{Knit, 2}}, maxInt - 1, []Run{{Knit, 2}, {Knit, maxInt - 1}}},
	} {
		if got := AppendRun(slices.Clone(c.runs), Knit, c.n); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
