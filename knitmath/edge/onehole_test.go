package edge

import "testing"

// One hole of a band of 21 rows, its two rows and 19 others. Right-side rows bind
// off, so that an even number lies before it. Asked 4 after it leaves 15 before:
// it moves away from the end, to 14 and 5; asked 5 before it, away from the
// beginning, to 6 and 13. With 18 after it, and one before, there is no row to move
// to but the third.
func TestASingleHoleMovesInward(t *testing.T) {
	for _, c := range []struct {
		before, after         *int
		wantBefore, wantAfter int
		moved                 bool
	}{
		{nil, new(4), 14, 5, true},
		{nil, new(5), 14, 5, false},
		{new(5), nil, 6, 13, true},
		{new(6), nil, 6, 13, false},
		{nil, new(18), 2, 17, true},
		{nil, nil, 10, 9, false},
	} {
		out, err := PlanButtonholes(ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: 21, HoleCount: 1,
			HoleStitches: new(3), BeforeFirstPlaces: c.before, AfterLastPlaces: c.after})
		if err != nil {
			t.Fatal(err)
		}
		moved := false
		for _, n := range out.Notices {
			moved = moved || n.Reason == MovedToRightSide
		}
		if out.BeforeFirstPlaces != c.wantBefore || out.AfterLastPlaces != c.wantAfter || moved != c.moved {
			t.Errorf("%d rows before, %d after, moved %v; want %d, %d, %v", out.BeforeFirstPlaces, out.AfterLastPlaces, moved, c.wantBefore,
				c.wantAfter, c.moved)
		}
	}
}
