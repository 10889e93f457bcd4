package schedule

// anywhere is where the row may lie from which the others are counted: the one that a
// first interval ends in the first step, or the single step before the blocks.
func (f *turnFinder) anywhere() span {
	w := span{f.First - f.Every*(f.short+1), f.Rows}
	if f.before > 0 {
		w.from = f.First
	}
	for t := range f.before {
		w = f.narrowedAt(t, 0, 0, w)
	}
	return w
}

// orders tries all orders of steps of two blocks, where the rows may be counted from for
// either of them, and where for both.
func (f *turnFinder) orders(one, two turning) {
	if !f.mayEnd(one, two) {
		return
	}
	var done perThing
	for t := range done {
		done[t] = f.single(f.before, t)
	}
	f.ones = f.windows(f.ones[:0], one, done, 0)
	for t := range done {
		done[t] += one.times * one.does[t]
	}
	f.twos = f.windows(f.twos[:0], two, done, one.times*f.rowsOf(one))
	for i, a := range f.ones {
		for j, b := range f.twos {
			both := span{max(a.from, b.from), min(a.to, b.to)}
			if f.laid++; both.from <= both.to && f.laid <= mostTurned {
				f.layBoth(one.orders[i][:one.steps], one.times, two.orders[j][:two.steps], two.times, both)
			}
		}
	}
}

// mayEnd reports whether everything may lie near its line after each block, a time more or
// less, and whether there are rows enough.
func (f *turnFinder) mayEnd(one, two turning) bool {
	from := f.anywhere()
	row := 0
	var done perThing
	for _, block := range [...]turning{one, two} {
		row += block.times * f.rowsOf(block)
		for t, k := range f.Times {
			if done[t] += block.times * block.does[t]; k > 0 {
				so := (done[t] + f.single(f.before, t)) * f.Rows
				from.from = max(from.from, ceilDiv(so-f.allowed-f.Rows, k)-row)
				from.to = min(from.to, (so+f.allowed+f.Rows)/k-row)
			}
		}
	}
	from.to = min(from.to, f.Rows-row)
	return from.from <= from.to
}

// windows are, for all orders of a block, where the rows may be counted from, when so much
// was done before it. Along a block things run away from their lines evenly, so that its
// first turn and its last are enough.
func (f *turnFinder) windows(to []span, block turning, done perThing, row int) []span {
	anywhere := f.anywhere()
	for i := range block.orders {
		w := anywhere
		for turn := 0; turn < block.times; turn += max(1, block.times-1) {
			at, so := row+turn*f.rowsOf(block), done
			for t := range so {
				so[t] += turn * block.does[t]
			}
			for _, s := range block.orders[i][:block.steps] {
				at += f.gap(s)
				for t := range s.level {
					w = f.narrowedAt(t, so[t], at, w)
					so[t]++
				}
			}
			f.laid += block.steps
		}
		to = append(to, w)
	}
	return to
}

// layBoth lays two blocks out, with the single steps, and keeps them where everything then
// has two runs.
func (f *turnFinder) layBoth(one []turnStep, times int, two []turnStep, again int, from span) {
	for t := range f.rows {
		f.rows[t] = f.rows[t][:0]
	}
	row, start := 0, f.gap(one[0])
	if f.before > 0 {
		start = 0
		f.put(0, f.before)
	}
	for range times {
		row = f.putAll(one, row, start)
	}
	for range again {
		row = f.putAll(two, row, start)
	}
	if f.after == 0 {
		f.keepTurns(row, start, from)
		return
	}
	for _, gap := range [...]int{f.short, f.short + 1} {
		last := row + f.Every*gap
		f.put(last-start, f.after)
		narrowed := from
		for t := range f.after {
			narrowed = f.narrowedAt(t, f.Times[t]-1, last, narrowed)
		}
		f.keepTurns(last, start, narrowed)
		for t := range f.after {
			f.rows[t] = f.rows[t][:f.Times[t]-1]
		}
	}
}

// putAll puts the steps of a block after a row.
func (f *turnFinder) putAll(steps []turnStep, row, start int) int {
	for _, s := range steps {
		row += f.gap(s)
		f.put(row-start, s.level)
	}
	return row
}

// put does things in a row.
func (f *turnFinder) put(row, level int) {
	for t := range level {
		f.rows[t] = append(f.rows[t], row)
	}
}

// keepTurns keeps what has been laid out, from the row that is counted from to the last.
func (f *turnFinder) keepTurns(last, start int, from span) {
	f.laid += len(f.rows[0])
	first := span{max(from.from+start, f.First), min(from.to, f.Rows-last) + start}
	if first.from > first.to {
		return
	}
	for _, rows := range f.rows {
		if !twoTurns(rows, f.most) {
			return
		}
	}
	f.keep(first)
}
