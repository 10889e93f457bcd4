package schedule

// appendForms adds all forms of so many short intervals and so many that are one
// longer.
func appendForms(forms []form, short, shorts, longs int) []form {
	long := short + 1
	switch {
	case longs == 0:
		return append(forms, form{{short, 0, shorts}})
	case shorts == 0:
		return append(forms, form{{long, 0, longs}})
	}
	forms = append(forms, form{{short, 0, shorts}, {long, 0, longs}}, form{{long, 0, longs}, {short, 0, shorts}})
	pairs := min(shorts, longs)
	rest := turn{short, 0, shorts - pairs}
	if longs > pairs {
		rest = turn{long, 0, longs - pairs}
	}
	for _, pair := range [2]turn{{short, long, pairs}, {long, short, pairs}} {
		forms = append(forms, form{pair, rest})
		if rest.times > 0 {
			forms = append(forms, form{rest, pair})
		}
	}
	return forms
}

// twoRuns reports whether rows lie at intervals of two runs at most, of which one
// alternates at most.
func twoRuns(rows []int) bool {
	last := len(rows) - 1
	equal, pairs := runFrom(rows, 0)
	for cut := equal; cut > 0; cut-- {
		if e, p := runFrom(rows, cut); cut+e == last || cut+p == last {
			return true
		}
	}
	for cut := pairs; cut > 0; cut -= 2 {
		if e, _ := runFrom(rows, cut); cut+e == last {
			return true
		}
	}
	return last < 1
}

// runFrom is how many intervals from a row on are equal, and how many are two in
// alternation.
func runFrom(rows []int, from int) (equal, pairs int) {
	interval := func(i int) int { return rows[i+1] - rows[i] }
	last := len(rows) - 1
	for i := from; i < last && interval(i) == interval(from); i++ {
		equal++
	}
	for i := from; i+1 < last && interval(i) == interval(from) && interval(i+1) == interval(from+1); i += 2 {
		pairs += 2
	}
	return equal, pairs
}
