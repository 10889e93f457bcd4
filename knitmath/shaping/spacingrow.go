package shaping

import (
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// manySteps is how many steps a row may have before the notation is asked to
// find a shorter one. A few more steps that all begin at the same place of the
// repeat are easier to follow than fewer that do not.
const manySteps = 16

// row writes the gaps and changes as a row. Grouped and mirrored gaps fall into
// a few runs, and interleaved ones mostly into a few kinds of block, which are
// written directly as repeats. What does not is left to the notation to compress.
func (s spacing) row(o EvenSpacing) stitch.Row {
	var steps []stitch.Step
	if s.round && s.order != GapSpreadMirrored {
		steps = s.repeated(o)
	} else {
		// Every change is followed by a gap, the last by the end of the row.
		after := append([]spread.GapRun(nil), o.Gaps...)
		after = spread.AppendGap(after, o.LastGapStitches, 1)
		if o.FirstGapStitches > 0 {
			steps = append(steps, stitch.Do(s.plainOp(), o.FirstGapStitches))
		}
		steps = s.appendBlocks(steps, after, gapAfter)
	}
	if len(steps) > manySteps {
		return stitch.Compress(s.runs(o))
	}
	return stitch.RowOf(joined(steps)...)
}

// joined writes a change beside a run of the same, with no stitch between, as one
// run. Two lone ones stay apart, which reads as well, and so do those inside a
// repeat, where a run would be a bracket in a bracket. It takes the memory of steps.
func joined(steps []stitch.Step) []stitch.Step {
	out := steps[:0]
	for _, step := range steps {
		if last := len(out) - 1; last >= 0 && out[last].Op == step.Op && step.Count+out[last].Count > 2 {
			out[last].Count += step.Count
			continue
		}
		out = append(out, step)
	}
	return out
}

// repeated writes the gaps of a round. Mixed evenly, they repeat as often as the
// changes and the plain stitches have a common divisor.
func (s spacing) repeated(o EvenSpacing) []stitch.Step {
	times := spread.Gcd(s.k, o.PlainStitches)
	if s.order != GapSpreadInterleaved || times == 1 {
		return s.appendBlocks(nil, o.Gaps, gapBefore)
	}
	var once []spread.GapRun
	for i := range s.k / times {
		once = spread.AppendGap(once, spread.Share(i, s.k, o.PlainStitches), 1)
	}
	steps := s.appendBlocks(nil, once, gapBefore)
	for _, step := range steps {
		for _, inner := range step.Group {
			if inner.Group != nil { // one more bracket round these would be one too many
				return s.appendBlocks(nil, o.Gaps, gapBefore)
			}
		}
	}
	return []stitch.Step{stitch.Repeat(times, steps...)}
}

// A gapBlock is one run of gaps, or a run and the lone gap that follows it.
type gapBlock struct {
	run  spread.GapRun
	lone int // -1 when there is none
}

// appendBlocks writes runs of gaps. In an evenly mixed order one of the two gaps
// always stands alone between runs of the other, and those runs have two
// neighbouring lengths: so run and lone gap are taken as one block, and equal
// blocks in succession as a repeat.
func (s spacing) appendBlocks(steps []stitch.Step, runs []spread.GapRun, at side) []stitch.Step {
	if s.order != GapSpreadInterleaved {
		for _, g := range runs {
			steps = s.appendRepeat(steps, g, at)
		}
		return steps
	}
	lone := loneGap(runs)
	var last gapBlock
	times := 0
	flush := func() {
		if times == 0 {
			return
		}
		inner := s.appendRepeat(nil, last.run, at)
		if last.lone >= 0 {
			inner = s.appendUnit(inner, last.lone, at)
		}
		if times > 1 {
			inner = []stitch.Step{stitch.Repeat(times, inner...)}
		}
		steps = append(steps, inner...)
	}
	for i := 0; i < len(runs); i++ {
		b := gapBlock{runs[i], -1}
		if runs[i].Stitches != lone && i+1 < len(runs) && runs[i+1] == (spread.GapRun{Stitches: lone, Times: 1}) {
			b.lone = lone
			i++
		}
		if b != last {
			flush()
			last, times = b, 0
		}
		times++
	}
	flush()
	return steps
}

// loneGap is a gap that never stands beside its like, or -1.
func loneGap(runs []spread.GapRun) int {
	longest := map[int]int{}
	for _, g := range runs {
		longest[g.Stitches] = max(longest[g.Stitches], g.Times)
	}
	lone, seen := -1, 0
	for gap, times := range longest {
		count := 0
		for _, g := range runs {
			if g.Stitches == gap {
				count++
			}
		}
		// Of two, the one that occurs more often; of equals, the smaller.
		if times == 1 && (count > seen || count == seen && gap < lone) {
			lone, seen = gap, count
		}
	}
	return lone
}

// appendRepeat adds changes with their gaps, as often as the gap occurs.
func (s spacing) appendRepeat(steps []stitch.Step, g spread.GapRun, at side) []stitch.Step {
	switch {
	case g.Times == 1:
		return s.appendUnit(steps, g.Stitches, at)
	case g.Stitches == 0:
		return append(steps, stitch.Do(s.op, g.Times))
	}
	return append(steps, stitch.Repeat(g.Times, s.appendUnit(s.newSteps(2), g.Stitches, at)...))
}

// appendUnit adds a change with its gap.
func (s spacing) appendUnit(steps []stitch.Step, gap int, at side) []stitch.Step {
	switch {
	case gap == 0:
		return append(steps, stitch.Do(s.op, 1))
	case at == gapBefore:
		return append(steps, stitch.Do(s.plainOp(), gap), stitch.Do(s.op, 1))
	}
	return append(steps, stitch.Do(s.op, 1), stitch.Do(s.plainOp(), gap))
}

// runs is the row as plain runs, in order.
func (s spacing) runs(o EvenSpacing) []stitch.Run {
	var runs []stitch.Run
	runs = stitch.AppendRun(runs, s.plainOp(), o.FirstGapStitches)
	if !s.round || s.order == GapSpreadMirrored {
		runs = stitch.AppendRun(runs, s.op, 1)
	}
	for _, g := range o.Gaps {
		for range g.Times {
			runs = stitch.AppendRun(runs, s.plainOp(), g.Stitches)
			runs = stitch.AppendRun(runs, s.op, 1)
		}
	}
	return stitch.AppendRun(runs, s.plainOp(), o.LastGapStitches)
}
