package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/outline"
)

func outlineOut(o outline.Outline) *knitmathv1.Outline {
	return &knitmathv1.Outline{X: axisOut(o.X), Y: axisOut(o.Y), Lines: each(o.Lines, outlineLineOut)}
}

func axisOut(a outline.Axis) *knitmathv1.OutlineAxis {
	return &knitmathv1.OutlineAxis{
		Measure:  a.Measure,
		Unit:     knitmathv1.OutlineUnit(a.Unit),
		Least:    a.Least,
		Greatest: a.Greatest,
	}
}

func outlineLineOut(l outline.Line) *knitmathv1.OutlineLine {
	return &knitmathv1.OutlineLine{Name: l.Name, Points: each(l.Points, outlinePointOut)}
}

func outlinePointOut(p outline.Point) *knitmathv1.OutlinePoint {
	return &knitmathv1.OutlinePoint{X: p.X, Y: p.Y}
}
