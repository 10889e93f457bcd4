package stitch

import "slices"

// Compress returns the shortest honest way to write the runs: one row of the
// same operations in the same order. Neighbouring runs of one operation are
// joined; then repeated stretches become groups, and a run may be shared out
// between a group and what stands beside it, so that
//
//	k5, k2tog, k8, k2tog, k8, k2tog, k8, k2tog, k13
//
// becomes "k5, [k2tog, k8] 4 times, k5". Groups nest at most one deep, brackets
// around a single operation counted: a group is then folded within, or taken for
// one piece in a larger group, whichever is shorter. The text is never longer
// than that of the joined runs.
//
// Method: own derivation. A dynamic program from the end of the row, whose cost
// is the length of the text, finds the groups of one level; see folder. It is
// run with three bounds on the length of a group, so that short groups get
// their chance within long ones, and the shortest text is kept, the first among
// equals. With one level the text was the shortest there is in every case tried
// against a full search. The second level is sought after the first, not
// together with it: it is short, not always the shortest.
//
// The work is proportional to the number of runs. Runs with a count below 1 are
// nothing and are dropped. More runs than MaxOperations, or a longer one, are only
// joined: no row may hold them.
func Compress(runs []Run) Row {
	merged := make([]Run, 0, len(runs))
	for _, r := range runs {
		merged = AppendRun(merged, r.Op, r.Count)
	}
	tooLong := slices.ContainsFunc(merged, func(r Run) bool { return r.Count > MaxOperations })
	if len(merged) < shortestRepeat || len(merged) > MaxOperations || tooLong {
		steps := make([]Step, len(merged))
		for i, r := range merged {
			steps[i] = Do(r.Op, r.Count)
		}
		return Row{Steps: steps}
	}
	tokens := make([]token, 0, len(merged))
	for _, r := range merged {
		tokens = append(tokens, runToken(r))
	}
	var best []Step
	row, inner := newFolder(len(tokens)), &folder{} // most rows have no groups to fold once more
	row.load(tokens)
	for i, period := range [3]int{maxPeriod, maxPeriod / 2, maxPeriod / 6} {
		if i > 0 && period > len(merged)/2 {
			continue // no group is longer than half the row: the same as before
		}
		steps := inner.nest(row.fold(period, true))
		if i == 0 || stepsWidth(steps) < stepsWidth(best) {
			best = steps
		}
	}
	return Row{Steps: best}
}

// shortestRepeat is the fewest runs that hold a repeat: two runs, twice.
const shortestRepeat = 4

// nest takes steps with groups one deep and groups once more: first the groups
// among their neighbours, then the runs within each group still without groups.
func (f *folder) nest(steps []Step) []Step {
	keys := make(map[string]int)
	tokens := slices.Grow(f.pieces[:0], len(steps))
	for _, s := range steps {
		if s.Group == nil {
			tokens = append(tokens, runToken(Run{s.Op, s.Count}))
			continue
		}
		tokens = append(tokens, groupToken(s, keys))
	}
	f.pieces = tokens
	if len(keys) == 0 {
		return steps
	}
	f.load(tokens)
	steps = f.fold(maxPeriod, false)
	for i, s := range steps {
		if tokens, ok := innerTokens(s); ok {
			f.load(tokens)
			steps[i].Group = f.fold(maxPeriod, false)
		}
	}
	return steps
}
