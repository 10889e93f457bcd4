package shortrow

import "example.com/knitmath/knitmath/stitch"

// Cup is short rows over the first stitches of a round that is worked in the round
// otherwise, so many of all, that make a cup as of a heel: every row turns a stitch before
// the last turn of its side until the centre is left, and then a stitch past it until all
// are worked. The right side works on to the end of the round and closes the gaps that it
// passes; the round after closes the last of the wrong side.
//
// A wrapped stitch that the second half reaches is worked, and the next, wrapped already,
// is wrapped once more. A double one is worked and made double again where its row turns.
// Short-row yarn overs would lie two and two, and are not planned.
//
// worked less centre must be even and above 0, centre above 0, worked at most all.
// Common practice.
func Cup(stitches, worked, centre int, method TurnMethod) Raise {
	s := shortRows{width: stitches, method: method}
	beside := (worked - centre) / 2
	at := 0
	pair := func(turned int) {
		s.row(stitch.RightSide, at, worked-turned)
		s.row(stitch.WrongSide, worked-turned, turned)
		at = turned
	}
	for turned := 1; turned <= beside; turned++ {
		pair(turned)
	}
	last := beside - 1
	if method == TurnMethodGerman {
		last = beside
	}
	for turned := last; turned >= 1; turned-- {
		pair(turned)
	}
	s.row(stitch.RightSide, at, stitches)
	return Raise{Rows: s.closed(stitches), TurnCount: len(s.turns)}
}

// HalfCup is the first half of a [Cup] whose stitches, so many worked, come after others of
// the round: its rows turn a stitch earlier until the centre is left, and the last goes on to
// the end of the round and closes the gaps of the right side. next is how the round after
// works, and closes those of the wrong side, up to the last stitch of the cup, which is left.
func HalfCup(stitches, before, worked, centre int, method TurnMethod) (rows []WedgeRow, next []stitch.Run) {
	s := shortRows{width: stitches, method: method}
	at := 0
	for turned := 1; turned <= (worked-centre)/2; turned++ {
		s.row(stitch.RightSide, at, before+worked-turned)
		at = before + turned
		s.row(stitch.WrongSide, before+worked-turned, at)
	}
	s.row(stitch.RightSide, at, stitches)
	return s.rows, s.closing(before + worked - 1)
}
