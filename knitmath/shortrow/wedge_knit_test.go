package shortrow

import (
	"fmt"
	"math/big"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
)

// Every small wedge, at every end, in both orders, turned in all three ways, is
// knit; then the rows under every stitch are compared with the profile that was
// asked for, worked out again here as a fraction.
func TestWedgeIsKnit(t *testing.T) {
	planned := 0
	for width := 2; width <= knittest.Sweep(21, 12); width++ {
		for rise := 1; rise <= 2*width+2; rise++ {
			for _, in := range wedgesOf(width, rise) {
				out, err := PlanWedge(in)
				if err != nil {
					checkWedgeRefusal(t, in, err)
					continue
				}
				planned++
				checkWedge(t, in, out)
			}
		}
	}
	if planned < knittest.Sweep(5000, 1000) {
		t.Errorf("planned %d wedges: the sweep has shrunk", planned)
	}
}

// wedgesOf are the straight wedges of a width and a rise.
func wedgesOf(width, rise int) []WedgeInput {
	var wedges []WedgeInput
	for tall := TallEndRight; tall <= TallEndSides; tall++ {
		for order := OrderLongestFirst; order <= OrderShortestFirst; order++ {
			for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
				for turnSpread := TurnSpreadInterleaved; turnSpread <= TurnSpreadLeastEffort; turnSpread++ {
					wedges = append(wedges, WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, Order: order,
						TurnMethod: method, Spread: turnSpread})
				}
			}
		}
	}
	return wedges
}

// wantedRows is the straight profile under the middle of stitch x, counted from
// the right edge, for a rise in rows.
func wantedRows(tall TallEnd, width, x, rise int) *big.Rat {
	fromRight := big.NewRat(int64(2*x+1), int64(2*width)) // 0 at the right edge, 1 at the left
	one := big.NewRat(1, 1)
	h := new(big.Rat)
	switch tall {
	case TallEndRight:
		h.Sub(one, fromRight)
	case TallEndLeft:
		h.Set(fromRight)
	default: // distance from the middle, 0 there and 1 at both edges
		h.Sub(new(big.Rat).Mul(fromRight, big.NewRat(2, 1)), one)
		h.Abs(h)
		if tall == TallEndCentre {
			h.Sub(one, h)
		}
	}
	return h.Mul(h, big.NewRat(int64(rise), 1))
}

// checkWedge knits a wedge and compares it with the answer and with the profile.
func checkWedge(t *testing.T, in WedgeInput, out Wedge) {
	t.Helper()
	at := describe(in)
	if in.RiseRows != nil && out.RiseRows != (*in.RiseRows+1)/2*2 {
		t.Fatalf("%s: rise %d", at, out.RiseRows)
	}
	heights := knitWedge(t, at, in.WidthStitches, out.Rows)
	turns := 0
	for _, r := range out.Rows {
		if r.UnworkedStitches > 0 {
			turns++
		}
	}
	if in.TurnMethod != TurnMethodGerman && turns != out.TurnCount {
		t.Fatalf("%s: %d turns, %d said", at, turns, out.TurnCount)
	}
	worst := checkHeights(t, at, out, heights, func(x int) float64 {
		rows, _ := wantedRows(in.TallEnd, in.WidthStitches, x, out.RiseRows).Float64()
		return rows
	})
	limit := 1.0
	if in.TurnMethod == TurnMethodGerman || in.Spread == TurnSpreadGrouped {
		limit = 2
	}
	if eased := in.Spread == TurnSpreadUnspecified || in.Spread == TurnSpreadLeastEffort; eased {
		limit += fault.Or(in.ToleranceRows, 1)
	}
	if worst > limit+1e-9 {
		t.Fatalf("%s: departs by %v rows", at, worst)
	}
	checkEffort(t, in, out)
}

func describe(in WedgeInput) string {
	rise := 0
	if in.RiseRows != nil {
		rise = *in.RiseRows
	}
	return fmt.Sprintf("W=%d rise=%d tall=%d order=%d method=%d spread=%d",
		in.WidthStitches, rise, in.TallEnd, in.Order, in.TurnMethod, in.Spread)
}
