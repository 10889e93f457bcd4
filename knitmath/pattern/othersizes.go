package pattern

// Rows that are for other sizes alone, "Row 2 (size L only): ...", have their numbers in all: the next row of a size that has no such row
// goes on behind them, on the side that comes next.

// ofOtherSizes reports whether a row is written for other sizes than the one at hand, of those that count now and stand before a line.
func (r *runner) ofOtherSizes(n int32, before int) bool {
	if !r.piece.forSome {
		return false
	}
	for k := r.since; k < before; k++ {
		info := &r.piece.Lines[k].info
		if info.isFor(r.size) || info.defined {
			continue
		}
		r.spend(1)
		for _, q := range info.ranges {
			if q.first <= n && n <= q.last && info.kind != lineRepeat {
				return true
			}
		}
	}
	return false
}

// othersBetween reports whether all rows from one number up to another are such.
func (r *runner) othersBetween(from, to, before int) bool {
	for n := from; n < to; n++ {
		if !r.ofOtherSizes(int32(n), before) {
			return false
		}
	}
	return true
}
