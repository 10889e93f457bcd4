package neck

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// Ranges of an armhole, those of package armhole.
const (
	MinArmholeRows = 8
	MaxArmholeRows = 140
	// MaxArmholeSteps is a step in every right-side row.
	MaxArmholeSteps    = MaxArmholeRows / 2
	MaxArmholeStitches = 260 // in one step
)

// armholeEdge is how many stitches stand outside a decrease at the armhole, as package
// armhole has them.
const armholeEdge = 1

// An ArmholeStep is so many stitches that go at the right edge of a piece, in a right-side
// row; at the left one they go in the next row if they are bound off, and else in the same.
type ArmholeStep struct {
	RowNumber int // from the first bind-off
	Stitches  int
	BoundOff  bool
}

// vetArmhole checks the armholes that are worked beside the neck.
func vetArmhole(c *fault.Checks, in Input) {
	c.OptionalCount("", "armhole_rows", in.ArmholeRows, MinArmholeRows, MaxArmholeRows)
	rows := fault.Or(in.ArmholeRows, MaxArmholeRows)
	if rows%2 != 0 && c.Sound("armhole_rows") {
		c.Infeasible(fmt.Sprintf("after %d rows the shoulders begin with a wrong-side row", rows), "armhole_rows")
	}
	vetArmholeSteps(c, in, "armhole_steps", in.ArmholeSteps, rows)
	vetArmholeSteps(c, in, "front_armhole_steps", in.FrontArmholeSteps, rows)
}

// vetArmholeSteps checks the steps of one piece, in armholes of so many rows.
func vetArmholeSteps(c *fault.Checks, in Input, list string, steps []ArmholeStep, rows int) {
	c.Needs(len(steps) > 0, list, in.ArmholeRows != nil, "armhole_rows")
	if c.Items("", list, len(steps), MaxArmholeSteps); !c.Sound(list) {
		return
	}
	before := 0
	for i, s := range steps {
		path := fault.Index(list, i)
		c.RequiredCount(path, "row_number", s.RowNumber, 1, MaxArmholeRows)
		c.RequiredCount(path, "stitches", s.Stitches, 1, MaxArmholeStitches)
		if !c.Sound(path) {
			continue
		}
		field := fault.Join(path, "row_number")
		switch {
		case s.RowNumber > rows:
			c.Infeasible(fmt.Sprintf("lies above the %d rows of the armhole", rows), field, "armhole_rows")
		case s.RowNumber%2 == 0:
			c.Infeasible("is a wrong-side row; the steps are those of the right edge, in right-side rows", field)
		case s.RowNumber <= before:
			c.Infeasible("is not above the step before it", field)
		case !s.BoundOff && s.Stitches > 1:
			c.Infeasible("more than 1 stitch in a row is bound off; say so", fault.Join(path, "stitches"))
		}
		before = s.RowNumber
	}
}

// firstSlope is the row in which the shoulders begin, a right-side row.
func (l *layout) firstSlope() int { return min(l.slopeRow(first, 0), l.slopeRow(second, 0)) }

// armholeRow is a row as the armhole counts it.
func (l *layout) armholeRow(row int) int {
	return row - l.firstSlope() + fault.Or(l.in.ArmholeRows, 0) + 1
}

// armholeSteps are those of the piece. A front has the back's unless it has its own.
func (l *layout) armholeSteps() []ArmholeStep {
	if l.isFront() && len(l.in.FrontArmholeSteps) > 0 {
		return l.in.FrontArmholeSteps
	}
	return l.in.ArmholeSteps
}

// stepsField is the field that they come from.
func (l *layout) stepsField() string {
	if l.isFront() && len(l.in.FrontArmholeSteps) > 0 {
		return "front_armhole_steps"
	}
	return "armhole_steps"
}

// besideArmhole takes the part of the armhole that lies beside the neck along. What is lost
// in it is still there when the piece is divided.
func (l *layout) besideArmhole() {
	shift := l.armholeRow(0)
	for _, s := range l.armholeSteps() {
		row := s.RowNumber - shift
		if row < 0 {
			continue
		}
		l.beside += s.Stitches
		l.outer[first] = append(l.outer[first], event{row, s.Stitches, s.BoundOff})
		if s.BoundOff {
			row++
		}
		l.outer[second] = append(l.outer[second], event{row, s.Stitches, s.BoundOff})
	}
}

// armholeWords say on how many stitches row 1 is worked, and where in the armhole it lies if
// anybody says how that is.
func (l *layout) armholeWords() string {
	on, along := ", on "+report.CountOf(l.width+2*l.beside, "stitches"), ""
	if l.in.ArmholeRows == nil {
		return on
	}
	if l.beside > 0 {
		along = ", which are shaped along with it"
	}
	switch n := l.armholeRow(l.firstRow); {
	case n > *l.in.ArmholeRows:
		return on
	case n > 0:
		return on + ": row " + strconv.Itoa(n) + " of the armholes" + along
	default:
		return on + ", " + report.CountOf(1-n, "rows") + " below the first of the armholes" + along
	}
}
