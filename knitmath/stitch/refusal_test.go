package stitch

import (
	"reflect"
	"testing"
)

// TestRefusals: the last of each list of rows cannot be worked, for the reason
// given, and leaves the machine as it was.
func TestRefusals(t *testing.T) {
	kAll := RowOf(ToEnd(Knit))
	wrapped := RowOf(Do(Knit, 2), Do(WrapTurn, 1))                  // of 4: the third is wrapped
	turned := RowOf(Do(Knit, 2), Do(Turn, 1))                       // of 4
	doubled := RowOf(Do(MakeDouble, 1), Do(Purl, 1))                // after turned: the second is double
	looped := RowOf(Do(ShortRowYO, 1), Do(Purl, 2))                 // after turned: a yarn over before the third
	loopShort := RowOf(Do(ShortRowYO, 1), Do(Purl, 1), Do(Turn, 1)) // after turned
	cases := []struct {
		name  string
		style Construction
		rows  []Row
		want  Reason
	}{
		{"runs out", Flat, []Row{RowOf(Do(Knit, 5))}, ReasonMissing},
		{"runs out in a decrease", Flat, []Row{RowOf(Do(Knit, 3), Do(SSK, 1))}, ReasonMissing},
		{"leaves some", Flat, []Row{RowOf(Do(Knit, 3))}, ReasonUnworked},
		{"to last of too few", Flat, []Row{RowOf(Do(Knit, 3), ToLast(Knit, 2))}, ReasonMissing},
		{"does not come out", Flat, []Row{RowOf(Do(Knit, 1), ToEnd(K2tog))}, ReasonUneven},
		{"only the left needle", Flat, []Row{turned, RowOf(Do(Purl, 3))}, ReasonMissing},
		{"turn inside", Flat, []Row{RowOf(Do(Turn, 1), Do(Knit, 4))}, ReasonTurnInside},
		{"turn twice", Flat, []Row{RowOf(Do(Knit, 4), Do(Turn, 2))}, ReasonTurnInside},
		{"turn in a group", Flat, []Row{RowOf(Repeat(1, Do(Knit, 1), Do(WrapTurn, 1)))}, ReasonTurnInside},
		{"to last in a group", Flat, []Row{RowOf(Repeat(2, ToEnd(Knit)))}, ReasonToLast},
		{"no step", Flat, []Row{RowOf(Step{})}, ReasonMalformed},
		{"two kinds", Flat, []Row{RowOf(Step{Op: Knit, Count: 4, Group: []Step{Do(Knit, 4)}, Times: 1})}, ReasonMalformed},
		{"empty group", Flat, []Row{RowOf(Repeat(3), Do(Knit, 4))}, ReasonMalformed},
		{"count below one", Flat, []Row{RowOf(Do(Knit, -1))}, ReasonMalformed},
		{"no such op", Flat, []Row{RowOf(Do(opEnd, 1))}, ReasonMalformed},
		{"yo to end", Flat, []Row{RowOf(ToEnd(YO))}, ReasonMalformed},
		{"too many markers", Flat, []Row{RowOf(Do(PlaceMarker, MaxOperations+1))}, ReasonTooLarge},
		{"too many stitches", Flat, []Row{RowOf(Do(CastOn, MaxStitches-3), ToEnd(Knit))}, ReasonTooLarge},
		{"too many stitches behind", Flat, []Row{turned, RowOf(Do(CastOn, MaxStitches-3), ToEnd(Purl))}, ReasonTooLarge},

		{"wrap of nothing", Flat, []Row{RowOf(Do(Knit, 4), Do(WrapTurn, 1))}, ReasonNoNext},
		{"wrapped knit plain", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), kAll}, ReasonWrapped},
		{"wrapped in a decrease", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(Do(Knit, 2), Do(K2tog, 1))}, ReasonWrapped},
		{"wrapped in kfb", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(Do(Knit, 2), Do(KFB, 1), Do(Knit, 1))}, ReasonWrapped},
		{"wrapped bound off", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(ToEnd(BindOff))}, ReasonWrapped},
		{"slipped it is still wrapped", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(ToEnd(Slip)), RowOf(ToEnd(Purl))}, ReasonWrapped},
		{"wrap picked up of nothing", Flat, []Row{RowOf(ToEnd(KnitWrapped))}, ReasonNotWrapped},
		{"wrap picked up twice", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(Do(Knit, 2), Do(KnitWrapped, 2))}, ReasonNotWrapped},
		{"make DS after a wrap", Flat, []Row{wrapped, doubled}, ReasonNotAtTurn},

		{"make DS on an ordinary row", Flat, []Row{kAll, RowOf(Do(MakeDouble, 1), Do(Purl, 3))}, ReasonNotAtTurn},
		{"make DS second", Flat, []Row{turned, RowOf(Do(Purl, 1), Do(MakeDouble, 1))}, ReasonNotAtTurn},
		{"make DS twice", Flat, []Row{turned, RowOf(Do(MakeDouble, 2))}, ReasonNotAtTurn},
		{"double knit plain", Flat, []Row{turned, doubled, kAll}, ReasonDouble},
		{"double in a decrease", Flat, []Row{turned, doubled, RowOf(Do(Knit, 1), Do(SSK, 1), Do(Knit, 1))}, ReasonDouble},
		{"double bound off", Flat, []Row{turned, doubled, RowOf(ToEnd(BindOff))}, ReasonDouble},
		{"double as wrapped", Flat, []Row{turned, doubled, RowOf(Do(Knit, 1), Do(KnitWrapped, 1), Do(Knit, 2))}, ReasonNotWrapped},
		{"double wrapped", Flat, []Row{turned, doubled, RowOf(Do(Knit, 1), Do(WrapTurn, 1))}, ReasonDouble},
		{"k DS on an ordinary stitch", Flat, []Row{RowOf(ToEnd(KnitDouble))}, ReasonNotDouble},
		{"p DS on a wrapped stitch", Flat, []Row{wrapped, RowOf(ToEnd(Purl)), RowOf(Do(Knit, 2), ToEnd(PurlDouble))}, ReasonNotDouble},

		{"yo of a turn on an ordinary row", Flat, []Row{kAll, RowOf(Do(ShortRowYO, 1), ToEnd(Purl))}, ReasonNotAtTurn},
		{"yo of a turn second", Flat, []Row{turned, RowOf(Do(Purl, 1), Do(ShortRowYO, 1), Do(Purl, 1))}, ReasonNotAtTurn},
		{"yo of a turn at the edge", Flat, []Row{RowOf(Do(Knit, 4), Do(Turn, 1)), looped}, ReasonNoStrand},
		{"yo knit alone", Flat, []Row{turned, looped, kAll}, ReasonYarnOver},
		{"yo with the wrong neighbour", Flat, []Row{turned, looped, RowOf(Do(Knit, 1), Do(SSK, 1), Do(Knit, 2))}, ReasonYarnOver},
		{"yo by ssk", Flat, []Row{turned, looped, RowOf(Do(Knit, 2), Do(SSK, 1), Do(Knit, 1))}, ReasonYarnOver},
		{"yo by ssp on the right side", Flat, []Row{turned, looped, RowOf(Do(Knit, 2), Do(SSP, 1), Do(Knit, 1))}, ReasonYarnOver},
		// Made on the right side before the third, and met there from its other side.
		{"yo with the stitch it belongs to already past", InTheRound, []Row{RowOf(Do(Knit, 3), Do(Turn, 1)),
			RowOf(Do(ShortRowYO, 1), Do(Purl, 1), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Knit, 1), Do(K2tog, 1)),
			RowOf(Do(Knit, 2), Do(K2tog, 1), Do(Knit, 1))}, ReasonYarnOver},
		{"yo by p2tog", Flat, []Row{turned, looped, RowOf(Do(Knit, 2), Do(P2tog, 1), Do(Knit, 1))}, ReasonYarnOver},
		{"yo with two", Flat, []Row{turned, looped, RowOf(Do(Knit, 2), Do(K3tog, 1))}, ReasonYarnOver},
		{"yo wrapped", Flat, []Row{turned, looped, RowOf(Do(Knit, 2), Do(WrapTurn, 1))}, ReasonYarnOver},
		{"yo on the wrong side by k2tog", Flat, []Row{kAll, RowOf(Do(Purl, 2), Do(Turn, 1)), RowOf(Do(ShortRowYO, 1), Do(Knit, 2)),
			RowOf(Do(Purl, 2), Do(K2tog, 1), Do(Purl, 1))}, ReasonYarnOver},
		{"yo bound off", Flat, []Row{turned, looped, RowOf(ToEnd(BindOff))}, ReasonYarnOver},
		{"two yos do not meet", Flat, []Row{turned, loopShort, RowOf(Do(ShortRowYO, 1), Do(Knit, 1), Do(K2tog, 1), ToEnd(Knit)),
			RowOf(ToEnd(Purl))}, ReasonYarnOver},

		{"m1 at the right edge", Flat, []Row{RowOf(Do(M1L, 1), ToEnd(Knit))}, ReasonNoStrand},
		{"m1 at the left edge", Flat, []Row{RowOf(ToEnd(Knit), Do(M1R, 1))}, ReasonNoStrand},
		{"m1 twice", Flat, []Row{RowOf(Do(Knit, 1), Do(M1, 2), ToEnd(Knit))}, ReasonStrandUsed},
		{"M1R and M1L with a marker between", Flat,
			[]Row{RowOf(Do(Knit, 1), Do(M1R, 1), Do(PlaceMarker, 1), Do(M1L, 1), ToEnd(Knit))}, ReasonStrandUsed},
		{"M1P after a turn in the strand before it", Flat,
			[]Row{RowOf(Do(Knit, 2), Do(M1, 1), Do(Turn, 1)), RowOf(Do(M1P, 1), ToEnd(Purl))}, ReasonStrandUsed},
		{"m1 over a bound-off gap", Flat, []Row{RowOf(Do(Knit, 1), Do(BindOff, 1), Do(M1, 1), ToEnd(Knit))}, ReasonNoStrand},
		{"m1 beside a cast-on stitch", Flat, []Row{RowOf(Do(Knit, 1), Do(CastOn, 1), Do(M1, 1), ToEnd(Knit))}, ReasonNoStrand},
		{"m1 before the join has a strand", InTheRound, []Row{RowOf(Do(M1, 1), ToEnd(Knit))}, ReasonNoStrand},
		{"m1 as a round ends and as the next begins", InTheRound,
			[]Row{RowOf(ToEnd(Knit), Do(M1, 1)), RowOf(Do(M1, 1), ToEnd(Knit))}, ReasonStrandUsed},
		{"yo on nothing", Flat, []Row{RowOf(ToEnd(BindOff), Do(YO, 1))}, ReasonNoStrand},

		{"k2tog straight after a bind-off", Flat, []Row{RowOf(Do(BindOff, 1), Do(K2tog, 1), Do(Knit, 1))}, ReasonOnNeedle},
		{"sk2p straight after a bind-off", Flat, []Row{RowOf(Do(BindOff, 1), Do(SK2P, 1))}, ReasonOnNeedle},
		{"kfb straight after a bind-off", Flat, []Row{RowOf(Do(Knit, 1), Do(BindOff, 1), Do(KFB, 1), Do(Knit, 1))}, ReasonOnNeedle},
		{"yo straight after a bind-off", Flat, []Row{RowOf(Do(BindOff, 1), Do(YO, 1), Do(Knit, 3))}, ReasonOnNeedle},
		{"ssp after a bind-off and a marker", Flat,
			[]Row{kAll, RowOf(Do(BindOff, 1), Do(PlaceMarker, 1), Do(SSP, 1), Do(Purl, 1))}, ReasonOnNeedle},
		{"w&t straight after a bind-off", Flat, []Row{RowOf(Do(BindOff, 1), Do(WrapTurn, 1))}, ReasonOnNeedle},
		{"turn straight after a bind-off", Flat, []Row{RowOf(Do(BindOff, 1), Do(Turn, 1))}, ReasonOnNeedle},

		{"back across the beginning of the round", InTheRound, []Row{turned, RowOf(ToEnd(Purl))}, ReasonNotPossible},
		{"wrap beyond the beginning of the round", InTheRound, []Row{turned, RowOf(ToEnd(Purl), Do(WrapTurn, 1))}, ReasonNoNext},
	}
	for _, c := range cases {
		last := len(c.rows) - 1
		before, err := knit(t, c.style, 4, c.rows[:last]...)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		m, err := knit(t, c.style, 4, c.rows...)
		if got := reasonOf(err); got != c.want {
			t.Errorf("%s: %v, want %s", c.name, err, c.want)
		}
		if !reflect.DeepEqual(state(m), state(before)) {
			t.Errorf("%s: the refused row changed the machine", c.name)
		}
	}
}

// state is everything the machine holds, with spare room cut off.
func state(m *Machine) any {
	c := *m
	c.left = append(needle(nil), m.left...)
	c.right = append(needle(nil), m.right...)
	c.boundOff = append([]int(nil), m.boundOff...)
	return c
}

// TestPossible: what comes close to a refusal and is none. Four stitches.
func TestPossible(t *testing.T) {
	turned := RowOf(Do(Knit, 2), Do(Turn, 1))
	cases := []struct {
		name string
		rows []Row
	}{
		{"m1 either side of a stitch", []Row{RowOf(Do(Knit, 1), Do(M1R, 1), Do(Knit, 1), Do(M1L, 1), Do(Knit, 2))}},
		{"m1 at a turning point", []Row{turned, RowOf(Do(M1P, 1), ToEnd(Purl))}},
		{"yo beside a m1", []Row{RowOf(Do(Knit, 1), Do(YO, 1), Do(M1, 1), ToEnd(Knit))}},
		{"turn written at the end of a row", []Row{RowOf(ToEnd(Knit), Do(Turn, 1)), RowOf(Do(MakeDouble, 1), ToEnd(Purl))}},
		{"a turn at once", []Row{RowOf(Do(Turn, 1)), RowOf(Do(Turn, 1))}},
		{"a double stitch slipped", []Row{turned, RowOf(Do(MakeDouble, 1), Do(Purl, 1)), RowOf(Do(Knit, 1), Do(Slip, 1), Do(Knit, 2))}},
		{"a decrease after the stitch that a bind-off left", []Row{RowOf(Do(BindOff, 1), Do(Knit, 1), Do(K2tog, 1))}},
		{"a decrease after a bind-off to a gap that was cast on over", []Row{RowOf(Do(BindOff, 1), Do(CastOn, 1), Do(K2tog, 1), Do(Knit, 1))}},
		{"a turn after all were bound off", []Row{RowOf(Do(Knit, 2), Do(BindOff, 2), Do(Turn, 1))}},
		{"to last of none", []Row{RowOf(Do(Knit, 4), ToEnd(Knit))}},
	}
	for _, c := range cases {
		if _, err := knit(t, Flat, 4, c.rows...); err != nil {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}
