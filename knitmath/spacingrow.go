package knitmath

import "example.com/knitmath/knitmath/stitch"

// row writes the gaps and changes as a row. Grouped and mirrored gaps fall into
// a few runs, which are written directly as repeats; interleaved ones are left
// to the notation to compress.
func (s spacing) row(o EvenSpacing) stitch.Row {
	if s.order == SpacingOrderInterleaved {
		return stitch.Compress(s.runs(o))
	}
	var steps []stitch.Step
	if s.round && s.order != SpacingOrderMirrored {
		for _, g := range o.Gaps {
			steps = s.appendRepeat(steps, g, s.plainThenChange(g.StitchCount))
		}
		return stitch.RowOf(steps...)
	}
	// Every change is followed by a gap, the last by the end of the row.
	after := append([]GapRun(nil), o.Gaps...)
	after = appendGap(after, o.LastGapCount, 1)
	if o.FirstGapCount > 0 {
		steps = append(steps, stitch.Do(s.plainOp(), o.FirstGapCount))
	}
	for _, g := range after {
		steps = s.appendRepeat(steps, g, s.changeThenPlain(g.StitchCount))
	}
	return stitch.RowOf(steps...)
}

// appendRepeat adds a unit of change and gap, worked as often as the gap occurs.
func (s spacing) appendRepeat(steps []stitch.Step, g GapRun, unit []stitch.Step) []stitch.Step {
	switch {
	case g.Times == 1:
		return append(steps, unit...)
	case len(unit) == 1:
		return append(steps, stitch.Do(s.op, g.Times))
	}
	return append(steps, stitch.Repeat(g.Times, unit...))
}

func (s spacing) changeThenPlain(gap int) []stitch.Step {
	if gap == 0 {
		return []stitch.Step{stitch.Do(s.op, 1)}
	}
	return []stitch.Step{stitch.Do(s.op, 1), stitch.Do(s.plainOp(), gap)}
}

func (s spacing) plainThenChange(gap int) []stitch.Step {
	if gap == 0 {
		return []stitch.Step{stitch.Do(s.op, 1)}
	}
	return []stitch.Step{stitch.Do(s.plainOp(), gap), stitch.Do(s.op, 1)}
}

// runs is the row as plain runs, in order.
func (s spacing) runs(o EvenSpacing) []stitch.Run {
	var runs []stitch.Run
	runs = appendRun(runs, s.plainOp(), o.FirstGapCount)
	if !s.round {
		runs = appendRun(runs, s.op, 1)
	}
	for _, g := range o.Gaps {
		for range g.Times {
			runs = appendRun(runs, s.plainOp(), g.StitchCount)
			runs = appendRun(runs, s.op, 1)
		}
	}
	return appendRun(runs, s.plainOp(), o.LastGapCount)
}

// appendRun adds n times op to a list of runs, joining equal neighbours.
func appendRun(runs []stitch.Run, op stitch.Op, n int) []stitch.Run {
	switch last := len(runs) - 1; {
	case n == 0:
		return runs
	case last >= 0 && runs[last].Op == op:
		runs[last].Count += n
		return runs
	}
	return append(runs, stitch.Run{Op: op, Count: n})
}
