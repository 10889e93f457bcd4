package shaping

import "example.com/knitmath/knitmath/stitch"

// WedgeRow is a row in which each of some equal wedges gains or loses one stitch, with
// shift stitches of the first wedge worked before its change. A change is the last of its
// wedge where nothing is shifted, so that the changes of many rows lie above one another;
// shifted by half a wedge in every second row they lie apart, and no line is seen.
//
//	[k4, k2tog] 8 times
//	k2, [k3, M1L, k3] 8 times, k3
//
// before and after are stitches outside the wedges, as flat pieces have. The wedges have
// from stitches each, at least 1, or at least 2 where they lose one; after must be at least
// 1 in a flat row that gains, since a strand lies between two stitches. Source: common
// practice.
func WedgeRow(before, wedges, from, after int, op stitch.Op, shift int) stitch.Instruction {
	plain := from - op.Takes()
	if shift = min(shift, plain); shift == 0 {
		shift = plain
	}
	var once, row []stitch.Step
	once = stitch.AppendStep(once, stitch.Knit, shift)
	once = stitch.AppendStep(once, op, 1)
	once = stitch.AppendStep(once, stitch.Knit, plain-shift)
	row = stitch.AppendStep(row, stitch.Knit, before)
	switch {
	case wedges == 1:
		row = append(row, once...)
	case len(once) == 1:
		row = append(row, stitch.Do(op, wedges))
	default:
		row = append(row, stitch.Repeat(wedges, once...))
	}
	row = stitch.AppendStep(row, stitch.Knit, after)
	start := before + wedges*from + after
	return stitch.Instruction{Row: stitch.RowOf(row...), StartStitches: start, EndStitches: start + wedges*op.Net()}
}
