package outline

import (
	"slices"

	"example.com/knitmath/knitmath/gauge"
)

// Unit is the unit of an axis.
type Unit int32

// The units.
const (
	UnitUnspecified Unit = iota
	UnitCm
	UnitStitches
	UnitRows
	UnitPercent
	UnitMetres
	UnitPlaces
)

// An Axis says what is measured along it, and the frame of the drawing.
type Axis struct {
	Measure  string
	Unit     Unit
	Least    float64
	Greatest float64
}

// A Point is one point: x to the right, y upward.
type Point struct {
	X float64
	Y float64
}

// A Line is a line of straight strokes through its points.
type Line struct {
	Name   string
	Points []Point
}

// An Outline is a plan as lines to draw, as a piece hangs with its cast-on edge
// below, seen from the right side. It mirrors the message of the same name.
type Outline struct {
	X     Axis
	Y     Axis
	Lines []Line
}

// Framed sets the frame of an outline to the bounds of all its points.
func (o *Outline) Framed() *Outline {
	first := true
	for i, l := range o.Lines {
		for j, p := range l.Points {
			l.Points[j] = Point{X: p.X + 0, Y: p.Y + 0} // no -0
		}
		o.Lines[i].Points = slices.Compact(l.Points) // each point once
		for _, p := range o.Lines[i].Points {
			if first {
				o.X.Least, o.X.Greatest, o.Y.Least, o.Y.Greatest = p.X, p.X, p.Y, p.Y
				first = false
			}
			o.X.Least, o.X.Greatest = min(o.X.Least, p.X), max(o.X.Greatest, p.X)
			o.Y.Least, o.Y.Greatest = min(o.Y.Least, p.Y), max(o.Y.Greatest, p.Y)
		}
	}
	return o
}

// Corner is a point in whole numbers, in which it is exact whether three lie on
// one straight line: stitches across, rows up.
type Corner struct{ Across, Up int }

// AppendCorner adds a point to a line and drops the one before it where that lies
// on the straight stroke from the one before to this one.
func AppendCorner(line []Corner, p Corner) []Corner {
	if n := len(line); n > 0 && line[n-1] == p {
		return line
	} else if n > 1 && onStroke(line[n-2], line[n-1], p) {
		line = line[:n-1]
	}
	return append(line, p)
}

// onStroke tells whether b lies on the straight stroke from a to p: in line with
// it, and with p not behind. The products are at most 2e4 * 1e4 each.
func onStroke(a, b, p Corner) bool {
	across, up := b.Across-a.Across, b.Up-a.Up
	inLine := across*(p.Up-a.Up) == (p.Across-a.Across)*up // no area between the three
	return inLine && across*(p.Across-b.Across)+up*(p.Up-b.Up) >= 0
}

// SizedBy turns corners into points: in cm at the two gauges, or, where there is
// none, as they are. across says where a number of stitches lies, in half
// stitches.
func SizedBy(line []Corner, st, rw gauge.Density, across func(stitches int) int) []Point {
	points := make([]Point, len(line))
	for i, p := range line {
		halves := across(p.Across)
		points[i] = Point{float64(halves) / 2, float64(p.Up)}
		if !st.IsZero() {
			points[i] = Point{st.SizeCm(halves) / 2, rw.SizeCm(p.Up)}
		}
	}
	return points
}
