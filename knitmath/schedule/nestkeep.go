package schedule

import "slices"

// keep places what has been laid out where it departs least, if it is the best.
func (f *nestFinder) keep(first span) {
	first.from += (f.Every - (first.from-f.First)%f.Every) % f.Every
	if first.from > first.to {
		return
	}
	f.told.set(f.rows[0], f.levels(), f.Apart)
	f.laid += stepsToTell * len(f.rows[0])
	effort := f.told.leastEffort()
	if f.found && effort > f.effort {
		return
	}
	best := first.from
	off, liked := f.offFrom(first.from)
	for at := first.from + f.Every; at <= first.to; at += f.Every { // falling, then rising
		otherOff, other := f.offFrom(at)
		if other >= liked {
			break
		}
		best, off, liked = at, otherOff, other
	}
	if f.found && effort == f.effort && liked >= f.liked {
		return
	}
	f.found, f.effort, f.liked = true, effort, liked
	f.best = Nested{slices.Clone(f.rows[0]), slices.Clone(f.levels()), f.Apart, off}
	for i := range f.best.Rows {
		f.best.Rows[i] += best
	}
}

// levels are how many things are done in each row that has been laid out.
func (f *nestFinder) levels() []int {
	f.level = f.level[:0]
	clear(f.at)
	for _, row := range f.rows[0] {
		level := 0
		for thing, rows := range f.rows {
			if f.at[thing] < len(rows) && rows[f.at[thing]] == row {
				f.at[thing]++
				level++
			}
		}
		f.level = append(f.level, level)
	}
	return f.level
}

// offFrom is the greatest departure of what has been laid out, from a first row on, and
// what that is if the choice is to be late.
func (f *nestFinder) offFrom(first int) (off, liked int) {
	f.laid += len(f.rows[0])
	times := 1
	if f.Late {
		times = aheadCounts
	}
	for thing, rows := range f.rows {
		for i, row := range rows {
			ahead, behind := f.offs(thing, i, first+row)
			off = max(off, ahead, behind)
			liked = max(liked, times*ahead, behind)
		}
	}
	return off, liked
}
