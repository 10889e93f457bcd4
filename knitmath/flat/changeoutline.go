package flat

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/stitch"
)

// MaxMarks is the most increases or decreases that are drawn.
const MaxMarks = 1_500

// changeLines are where the count changes: a point for each change of a disc or a ring, and
// for a polygon and a star the lines from the centre along which their changes lie.
func (o Shape) changeLines(edge []outline.Point) []outline.Line {
	kind := "increases"
	if o.of.inwards {
		kind = "decreases"
	}
	switch o.of.form {
	case FormDisc, FormRing:
		if points, ok := o.marks(); ok {
			return []outline.Line{{Name: kind, Points: points}}
		}
	case FormPolygon, FormStar:
		var lines []outline.Line
		for _, corner := range edge[:max(len(edge)-1, 0)] { // the last is the first again
			lines = append(lines, outline.Line{Name: "line of " + kind, Points: []outline.Point{{}, corner}})
		}
		return lines
	}
	return nil
}

// marks are the changes of all rounds, each round beginning below the centre and going on
// to the right, as one sees it from the right side.
func (o Shape) marks() (points []outline.Point, ok bool) {
	// Each change is of one stitch, so that their number is known before a row is spelt out.
	changes := measure.Abs(o.EndStitches - o.StartStitches)
	if changes == 0 || changes > MaxMarks {
		return nil, false
	}
	points = make([]outline.Point, 0, changes)
	inner := o.WidthCm/2 - o.of.rw.SizeCm(o.TotalRows)
	if o.of.form == FormDisc {
		inner = 0
	}
	for _, r := range o.Rows {
		up := 2*r.RowNumber - 1 // the middle of the row, in half rows
		if o.of.inwards {
			up = 2*o.TotalRows - up
		}
		runs, err := stitch.Expand(r.Instruction.Row, r.Instruction.StartStitches)
		if err != nil {
			return nil, false
		}
		at := 0
		for _, run := range runs {
			for range run.Count {
				leaves := run.Op.Takes() + run.Op.Net()
				if run.Op.Net() != 0 {
					turn := 2 * math.Pi * (float64(at) + float64(leaves)/2) / float64(r.Instruction.EndStitches)
					radius := inner + o.of.rw.SizeCm(up)/2
					points = append(points, outline.Point{X: radius * math.Sin(turn), Y: -radius * math.Cos(turn)})
				}
				at += leaves
			}
		}
	}
	return points, true
}
