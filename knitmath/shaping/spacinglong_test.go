package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Rounds of every number of stitches and decreases are knit, and hardly any has many items. Measured in full on 2,522: 0.4 % have more
// than 12, and 8.6 % had before there were longer repeats.
func TestRoundsHaveFewItems(t *testing.T) {
	rounds, many, most := 0, 0, 0
	for start := 60; start <= 520; start += knittest.Sweep(9, 46) {
		for end := (start + 1) / 2; end < start; end += knittest.Sweep(3, 7) {
			in, ok := EasyRound(start, end, stitch.K2tog, GapSpreadLeastEffort)
			if !ok {
				t.Fatalf("no round from %d to %d", start, end)
			}
			m := knittest.CastOn(t, start, true)
			if err := m.Work(in.Row); err != nil || m.StitchCount() != end {
				t.Fatalf("%d to %d: %s leaves %d, %v", start, end, in.Row.Text(), m.StitchCount(), err)
			}
			rounds++
			items := in.Row.Items()
			most = max(most, items)
			if items > 12 {
				many++
			}
			if d := depth(in.Row.Steps); d > 2 {
				t.Fatalf("%d to %d: brackets %d deep: %s", start, end, d, in.Row.Text())
			}
		}
	}
	t.Logf("of %d rounds %d have more than 12 items, at most %d", rounds, many, most)
	if 1000*many > 5*rounds || rounds < knittest.Sweep(2_000, 100) {
		t.Errorf("of %d rounds %d have more than 12 items, at most %d", rounds, many, most)
	}
}

// depth is how deep brackets lie within one another.
func depth(steps []stitch.Step) int {
	most := 0
	for _, s := range steps {
		if len(s.Group) > 0 {
			most = max(most, 1+depth(s.Group))
		}
	}
	return most
}

// By hand: 102 decreases among 264 stitches leave 60 plain. Of five gaps three have a stitch, and 20 times
// five are 100; two decreases are over.
func TestRoundOfALongRepeat(t *testing.T) {
	in, _ := EasyRound(264, 162, stitch.K2tog, GapSpreadLeastEffort)
	if got := in.Row.Text(); in.Row.Items() > 8 {
		t.Errorf("%s has %d items", got, in.Row.Items())
	} else {
		t.Log(got)
	}
}
