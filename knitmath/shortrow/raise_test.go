package shortrow

import (
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
			for order := OrderLongestFirst; order <= OrderShortestFirst; order++ {
				for method := TurnMethodUnspecified; method <= TurnMethodYarnOver; method++ {
					for _, front := range []int{1, 6} {
						r := RaiseRound(raised+front, raised, rise, order, method)
						m := knittest.CastOn(t, raised+front, true)
						below := m.Heights()
						for _, row := range r.Rows {
							if err := m.Work(row.Instruction.Row); err != nil {
								t.Fatalf("%d of %d by %d, order %d, method %d: row %d, %q: %v", raised, raised+front, rise, order, method,
									row.RowNumber, row.Instruction.Row.Text(), err)
							}
						}
						if m.Unresolved() != 0 || m.ShortRowOpen() || m.Side() != stitch.RightSide || r.TurnCount != rise {
							t.Fatalf("%d of %d by %d, method %d: %d gaps open, %d turns", raised, raised+front, rise, method,
								m.Unresolved(), r.TurnCount)
						}
						h := m.Heights()
						middle := h[raised/2] - below[raised/2] - 2
						if middle != rise || r.GreatestDepartureRows > maxDeparture {
							t.Fatalf("%d of %d by %d, method %d: raised by %d", raised, raised+front, rise, method, middle)
						}
						for x := raised; x < len(h); x++ {
							if h[x]-below[x] != 2 {
								t.Fatalf("%d of %d by %d, method %d: %d rows at stitch %d", raised, raised+front, rise, method,
									h[x]-below[x], x)
							}
						}
					}
				}
			}
		}
	}
}
