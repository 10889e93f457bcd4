package shortrow

import "example.com/knitmath/knitmath/stitch"

// Technique says what the words of a way of turning mean, once for all rows that
// have them. For those who print the rows of a [Raise].
func Technique(m TurnMethod) string { return m.explained() }

// Turning is the operation with which a short row turns.
func Turning(m TurnMethod) stitch.Op { return turnOp(m) }

// AfterTurn is what the row after a turn begins with; none where the turn leaves
// nothing to be done.
func AfterTurn(m TurnMethod) (op stitch.Op, ok bool) {
	switch m {
	case TurnMethodGerman:
		return stitch.MakeDouble, true
	case TurnMethodYarnOver:
		return stitch.ShortRowYO, true
	}
	return 0, false
}

// Closing is what closes a gap in a row of the side on which its turn was made.
func Closing(m TurnMethod, side stitch.Side) stitch.Op { return kit(side).resolve[m] }
