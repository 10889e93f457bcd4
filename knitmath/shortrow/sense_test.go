package shortrow

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/report"
)

// Whether a wedge turns at every stitch is read off the stitches left unworked, row
// by row.
func TestTurnsAtEveryStitchAreRemarkedOn(t *testing.T) {
	remarked := 0
	for width := 4; width <= 20; width++ {
		for rise := 2; rise <= 2*width; rise += 2 {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				out, err := PlanWedge(WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall})
				if err != nil {
					continue
				}
				unworked := map[bool][]int{} // by side, before each turn
				for _, r := range out.Rows {
					if !r.Resolving && r.UnworkedStitches > 0 {
						right := r.Side.String() == "RS"
						unworked[right] = append(unworked[right], r.UnworkedStitches)
					}
				}
				want := false
				for _, turns := range unworked {
					longest, run, longer := 1, 1, 0
					for i := 1; i < len(turns); i++ {
						if d := turns[i] - turns[i-1]; d > 1 || d < -1 {
							longer++
							run = 0
						}
						run++
						longest = max(longest, run)
					}
					want = want || longest >= 5 && 5*longer <= len(turns)
				}
				got := slices.ContainsFunc(out.Notices, func(n report.Notice) bool {
					return n.Reason == TurnsAtEveryStitch && n.Field == "rise_rows"
				})
				if got != want {
					t.Fatalf("%d stitches, %d rows, tall at %d: %v, unworked %v", width, rise, tall, out.Notices, unworked)
				}
				if got {
					remarked++
				}
			}
		}
	}
	if remarked < 20 {
		t.Errorf("%d wedges turn at every stitch", remarked)
	}
}
