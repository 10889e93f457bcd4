package shaping

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// tellsSides reports whether the sides of rows have to be told: which side row 1
// is goes without saying only where it is the right side and all shaping rows lie
// on one side, which their instruction then names.
func (t taper) tellsSides(rows []ShapingRow) bool {
	if t.round {
		return false
	}
	return t.firstSide == stitch.WrongSide ||
		slices.ContainsFunc(rows, func(r ShapingRow) bool { return r.Side != rows[0].Side })
}

// firstRowDirection is "Row 1 is a wrong-side row.", or nothing where it need not
// be told, and where the rounds begin.
func (t taper) firstRowDirection(rows []ShapingRow) []string {
	switch {
	case t.round:
		return []string{t.roundBegins()}
	case !t.tellsSides(rows):
		return nil
	case t.firstSide == stitch.WrongSide:
		return []string{"Row 1 is a wrong-side row."}
	}
	return []string{"Row 1 is a right-side row."}
}

// roundBegins says where.
func (t taper) roundBegins() string {
	if t.edges == ShapedEdgesBeginning || t.edges == ShapedEdgesEnd {
		return "The round begins at the shaped edge."
	}
	return "The round begins between the two shaped edges, in the middle of an underarm, say."
}

// number is "5", or "5 (RS)" where sides are told.
func (r ShapingRow) number(sides bool) string {
	if sides {
		return strconv.Itoa(r.RowNumber) + " (" + r.Side.String() + ")"
	}
	return strconv.Itoa(r.RowNumber)
}
