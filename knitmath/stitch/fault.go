package stitch

import (
	"fmt"
	"strings"
)

// Reason says in one word why a row cannot be worked.
type Reason string

// The reasons. Those of the second group are found only by the machine.
const (
	ReasonMalformed  Reason = "MALFORMED"         // a step that is no step: unknown op, count below 1, empty group, two kinds at once
	ReasonTooLarge   Reason = "TOO_LARGE"         // beyond MaxStitches or MaxOperations
	ReasonTooDeep    Reason = "TOO_DEEP"          // beyond MaxDepth
	ReasonTurnInside Reason = "TURN_NOT_LAST"     // a turn that does not end its row
	ReasonToLast     Reason = "TO_LAST_IN_GROUP"  // "to last n" within a group
	ReasonMissing    Reason = "STITCHES_MISSING"  // fewer stitches left than needed
	ReasonUneven     Reason = "DOES_NOT_COME_OUT" // "k2tog to end" over an odd number
	ReasonUnworked   Reason = "STITCHES_UNWORKED" // the row ends with stitches left and no turn

	ReasonDouble      Reason = "DOUBLE_STITCH"       // a double stitch worked as an ordinary one
	ReasonNotDouble   Reason = "NOT_DOUBLE"          // k DS or p DS on another stitch
	ReasonWrapped     Reason = "WRAPPED_STITCH"      // a wrapped stitch worked without its wrap
	ReasonNotWrapped  Reason = "NOT_WRAPPED"         // a wrap picked up where there is none
	ReasonYarnOver    Reason = "SHORT_ROW_YARN_OVER" // a short-row yarn over not worked with one neighbour
	ReasonNotAtTurn   Reason = "NOT_AFTER_TURN"      // make DS or the short-row yo elsewhere than at once after a turn
	ReasonNoStrand    Reason = "NO_STRAND"           // a make one with no strand to lift
	ReasonStrandUsed  Reason = "STRAND_USED"         // a make one in a strand already lifted
	ReasonNoNext      Reason = "NOTHING_TO_WRAP"     // w&t with no stitch to wrap
	ReasonShortRow    Reason = "SHORT_ROW_OPEN"      // what needs all stitches on one needle finds a short row open
	ReasonEdge        Reason = "ROW_OF_EDGE"         // a row of an edge worked as a stitch
	ReasonNotEdge     Reason = "NOT_AN_EDGE"         // picking up where there is no edge
	ReasonGap         Reason = "ACROSS_GAP"          // stitches beyond a gap worked without casting on over it
	ReasonCounts      Reason = "COUNTS_DIFFER"       // two edges of live stitches joined that are not as many
	ReasonOnNeedle    Reason = "ON_RIGHT_NEEDLE"     // shaped straight after a bind-off, which has left the next stitch on the right needle
	ReasonHolder      Reason = "NO_SUCH_HOLDER"      // taken up from a holder that is empty, or none
	ReasonNotPossible Reason = "NOT_POSSIBLE"        // what this machine does not do
)

// Place is one stage of the way to a step: the step's index in its list, from
// 0, and which time of working it (a group or a counted operation), from 1.
type Place struct {
	Step, Time int
}

// RowError says where in a row the work stops, and why.
type RowError struct {
	Row    int     // row number counted from 1, 0 if not known
	Path   []Place // the way to the step, empty for the row as a whole
	Op     Op      // the operation, 0 if none
	Needed int     // stitches that it needs
	Left   int     // stitches left on the left needle
	Reason Reason
}

// Error returns text such as
//
//	row 3, step 2 (time 4), step 1: k2tog needs 2 stitches, 1 left: STITCHES_MISSING
//
// Steps are counted from 1 in the text.
func (e *RowError) Error() string {
	var b strings.Builder
	if e.Row > 0 {
		fmt.Fprintf(&b, "row %d", e.Row)
	} else {
		b.WriteString("row")
	}
	for _, p := range e.Path {
		fmt.Fprintf(&b, ", step %d", p.Step+1)
		if p.Time > 1 {
			fmt.Fprintf(&b, " (time %d)", p.Time)
		}
	}
	b.WriteString(": ")
	if e.Op != 0 {
		fmt.Fprintf(&b, "%s needs %s, ", e.Op.Abbr(), countOf(e.Needed))
	}
	fmt.Fprintf(&b, "%d left: %s", e.Left, e.Reason)
	return b.String()
}

// countOf returns "1 stitch" or "n stitches".
func countOf(n int) string {
	if n == 1 {
		return "1 stitch"
	}
	return fmt.Sprintf("%d stitches", n)
}
