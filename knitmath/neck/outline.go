package neck

import (
	"example.com/knitmath/knitmath/outline"
)

// outline draws the tops of both pieces, in cm, x from the middle and y from the foot of
// the deeper neck: the edge from the right armhole, as it hangs with the right side to be
// seen, over the shoulder, along the neck and over the other shoulder.
func (o Neckline) outline() *outline.Outline {
	foot := max(o.Front.DepthCm, o.Back.DepthCm)
	out := &outline.Outline{
		X:     outline.Axis{Measure: "across, from the middle", Unit: outline.UnitCm},
		Y:     outline.Axis{Measure: "height", Unit: outline.UnitCm},
		Lines: []outline.Line{o.Front.layout.line(foot), o.Back.layout.line(foot)},
	}
	return out.Framed()
}

// line is the top of a piece. Its shoulder's end at the neck is as high as the foot.
func (l *layout) line(foot float64) outline.Line {
	top := foot - l.rw.SizeCm(l.depth)
	at := func(halves, rows int) outline.Point {
		return outline.Point{X: l.st.SizeCm(halves) / 2, Y: top + l.rw.SizeCm(max(rows, l.firstRow))}
	}
	var right []outline.Point // from the armhole to the middle, mirrored for the other side
	x, rise := l.width+2*l.beside, l.depth-2*(len(l.steps)-1)
	right = append(right, at(x, min(rise, 0)))
	for _, e := range l.outer[first] {
		right = append(right, at(x, e.row))
		if x -= 2 * e.stitches; e.bindOff {
			right = append(right, at(x, e.row))
		}
	}
	right = append(right, at(x, rise))
	for i, s := range l.steps {
		x -= 2 * s
		right = append(right, at(x, rise+2*i))
		if i < len(l.steps)-1 {
			right = append(right, at(x, rise+2*i+2))
		}
	}
	var edge []outline.Point // from the middle to the shoulder
	x = l.centre
	edge = append(edge, at(x, 0))
	for _, e := range l.edges.second {
		if e.bindOff {
			edge = append(edge, at(x, e.row))
		}
		x += 2 * e.stitches
		edge = append(edge, at(x, e.row))
	}
	edge = append(edge, at(x, l.depth))
	line := outline.Line{Name: l.piece, Points: append([]outline.Point(nil), right...)}
	for i := len(edge) - 1; i >= 0; i-- {
		line.Points = append(line.Points, edge[i])
	}
	for i := len(line.Points) - 1; i >= 0; i-- {
		p := line.Points[i]
		line.Points = append(line.Points, outline.Point{X: -p.X, Y: p.Y})
	}
	return line
}
