package sock_test

import (
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/sock"
)

// A heel over half of 64 stitches, and the toe of the same sock.
func Example() {
	round := 64
	heel, err := sock.PlanHeel(sock.HeelInput{RoundStitches: &round})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(strings.ReplaceAll(heel.Summary(), ", ", ",\n"))
	toe, err := sock.PlanToe(sock.ToeInput{RoundStitches: &round, Kind: sock.ToeKindStar})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(toe.Summary())
	// Output:
	// A heel of flap and gusset with a round turn over 32 of 64 stitches: 32 flap rows,
	// 18 stitches after the turn,
	// 17 picked up along each edge; the round of 84 comes back to 64 in 19 rounds,
	// of which 10 decrease.
	// A star toe of 64 stitches: 14 decrease rounds, of 21 rounds in all, bring it down to 8, which are drawn up.
}
