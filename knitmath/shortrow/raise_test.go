package shortrow

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Every small raise is knit in the round, in both orders and all three ways of
// turning: all gaps are closed, the stitches not raised have the two rounds and no
// more, and the middle of the raised ones has the rise.
func TestRaiseIsKnitInTheRound(t *testing.T) {
	for raised := 3; raised <= 13; raised++ {
		for rise := 2; rise <= raised-1; rise += 2 {
			for variant := range 2 * 4 {
				for _, front := range []int{1, 6} {
					checkRaised(t, raised+front, raised, rise, Order(1+variant%2), TurnMethod(variant/2))
				}
			}
		}
	}
}

func checkRaised(t *testing.T, stitches, raised, rise int, order Order, method TurnMethod) {
	t.Helper()
	at := fmt.Sprintf("%d of %d by %d, order %d, method %d", raised, stitches, rise, order, method)
	r := RaiseRound(stitches, raised, rise, order, method)
	m := knittest.CastOn(t, stitches, true)
	below := m.Heights()
	knitRows(t, at, m, r.Rows)
	for i, row := range r.Rows {
		if row.RowNumber != i+1 {
			t.Fatalf("%s: row %d is called %d", at, i+1, row.RowNumber)
		}
	}
	if m.Unresolved() != 0 || m.ShortRowOpen() || m.Side() != stitch.RightSide || r.TurnCount != rise {
		t.Fatalf("%s: %d gaps open, %d turns", at, m.Unresolved(), r.TurnCount)
	}
	h := m.Heights()
	middle := h[raised/2] - below[raised/2] - 2
	limit := 2.0
	if method == TurnMethodGerman {
		limit = 3
	}
	if middle != rise || r.GreatestDepartureRows > limit {
		t.Fatalf("%s: raised by %d, departs by %v", at, middle, r.GreatestDepartureRows)
	}
	for x := raised; x < len(h); x++ {
		if h[x]-below[x] != 2 {
			t.Fatalf("%s: %d rows at stitch %d", at, h[x]-below[x], x)
		}
	}
}

// A raise begins with its longest row unless the shortest is asked for.
func TestRaiseOrder(t *testing.T) {
	longest := RaiseRound(20, 12, 6, OrderLongestFirst, TurnMethodWrapAndTurn).Rows[0].UnworkedStitches
	shortest := RaiseRound(20, 12, 6, OrderShortestFirst, TurnMethodWrapAndTurn).Rows[0].UnworkedStitches
	if longest >= shortest {
		t.Errorf("%d stitches left by the longest row first, %d by the shortest", longest, shortest)
	}
}
