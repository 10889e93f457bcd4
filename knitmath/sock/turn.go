package sock

import (
	"example.com/knitmath/knitmath/stitch"
)

// Published defaults of turns.
const (
	// roundCentre is the stitches between the first two decreases of a round turn, the
	// slipped one among them: 6 of an even number (Ryder 1896, flap of 28; Canadian
	// directions, First World War, flap of 34), 5 of an odd one (Ryder 1896, flap of 29).
	roundCentre = 6
	// heartCentre is where a heart begins: at 2 to 4 stitches (from memory).
	heartCentre = 2
)

// turn is how a kind of heel is turned.
type turn struct {
	least int // stitches of the centre
	// beside is the fewest stitches beside it: gussets keep two at each side of the heel.
	beside int
	usual  func(heel int) int
	// left is how many stitches are on the needle afterwards.
	left func(heel, centre int) int
}

var turns = map[HeelKind]turn{
	HeelKindRound:     {2, 6, func(heel int) int { return roundCentre - heel%2 }, roundLeft},
	HeelKindHeart:     {2, 6, func(heel int) int { return heartCentre + heel%2 }, roundLeft},
	HeelKindSquare:    {2, 4, thirdCentre, func(_, centre int) int { return centre }},
	HeelKindShortRows: {1, 2, thirdCentre, func(heel, _ int) int { return heel }},
}

// turn is the heel's own; from the toe up a round heel is turned by short rows.
func (h heel) turn() turn {
	if h.toeUp && h.kind == HeelKindRound {
		return turns[HeelKindShortRows]
	}
	return turns[h.kind]
}

// unworked is how many stitches the first row of a round turn leaves at its end.
func unworked(heel, centre int) int { return (heel - 4 - centre) / 2 }

// roundLeft is what a round turn leaves.
func roundLeft(heel, centre int) int { return heel - 2*(1+(unworked(heel, centre)+1)/2) }

// thirdCentre leaves a third at each side, to the nearest stitch: 10 of 30, 10 of 32.
func thirdCentre(heel int) int { return heel - 2*((2*heel+3)/6) }

// sides are the operations of a right-side and of a wrong-side row.
var sides = [...]struct {
	side      stitch.Side
	work, dec stitch.Op
}{{stitch.RightSide, stitch.Knit, stitch.SSK}, {stitch.WrongSide, stitch.Purl, stitch.P2tog}}

// turnRows works the turn of so many stitches, a right-side row first, and gives the stitches
// that are left. The counts of its rows hold so many resting ones too. What begins a round has
// no stitch to slip at its first row's edge.
//
// From the third row on, or of a square turn from the second, a row goes to the stitch
// before the gap that its side left, decreases over the gap, and works one more beyond it
// unless the turn is square or none waits.
func (h heel) turnRows(out *Heel, stitches, resting int) int {
	now, square := stitches, h.kind == HeelKindSquare
	row := func(i, plain, beyond int) {
		s, slip := sides[i%2], 1
		if i == 0 && resting > 0 {
			plain, slip = plain+1, 0
		}
		out.add(HeelPartTurn, s.side, now+resting, now+resting-1, stitch.Do(stitch.Slip, slip), stitch.Do(s.work, plain), stitch.Do(s.dec, 1),
			stitch.Do(s.work, beyond), stitch.Do(stitch.Turn, 1))
		now--
	}
	var waiting [2]int // beyond the gap of either side
	i := 2
	if square {
		beside := (stitches - h.centre) / 2
		waiting = [...]int{beside - 1, beside}
		row(0, beside+h.centre-2, 0)
		i = 1
	} else {
		u := unworked(stitches, h.centre)
		waiting = [...]int{u, u}
		row(0, stitches-u-4, 1)
		row(1, h.centre-1, 1)
	}
	for ; waiting[i%2] > 0; i++ {
		beyond := min(waiting[i%2]-1, 1)
		if square {
			beyond = 0
		}
		row(i, now-waiting[0]-waiting[1]-2, beyond)
		waiting[i%2] -= 1 + beyond
	}
	return now
}
