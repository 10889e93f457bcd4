package pattern

import "example.com/knitmath/knitmath/report"

// A row that is wrong does not come out in some sizes, and comes out in others with another
// count than it claims: that is one mistake of the row, and is said once.

// saidOnce joins what was found of the claim of a row to what was found of its steps.
func (e *engine) saidOnce() {
	claims := e.joinClaims(e.misfits())
	if len(claims) == 0 {
		return
	}
	kept := 0
	for i, d := range e.details {
		if d == nil && e.toldTwice(i, claims) || d != nil && len(e.found.list[i].SizeNumbers) == 0 {
			continue
		}
		e.found.list[kept], e.details[kept] = e.found.list[i], d
		kept++
	}
	e.found.list, e.details = e.found.list[:kept], e.details[:kept]
}

// misfits are, by the line of a row, the findings about its steps.
func (e *engine) misfits() map[int]int {
	rows := map[int]int{}
	for i, d := range e.details {
		if d == nil || !isMisfit(e.found.list[i].Reason) {
			continue
		}
		if n := e.piece.lineAt(e.found.list[i].at); n >= 0 && e.piece.Lines[n].info.kind == lineRow {
			rows[n] = i
		}
	}
	return rows
}

// joinClaims joins what was found of the counts of rows to the findings about their steps, and is,
// by the line, the findings about counts.
func (e *engine) joinClaims(rows map[int]int) map[int]int {
	claims := map[int]int{}
	for i, d := range e.details {
		if d == nil || e.found.list[i].Reason != ReasonClaim {
			continue
		}
		n := e.piece.lineAt(e.found.list[i].at)
		if k, ok := rows[n]; ok {
			e.joined(k, i)
		}
		claims[n] = i
	}
	return claims
}

// toldTwice reports whether parts do not add up to a count that is found wrong too, in the same
// size.
func (e *engine) toldTwice(i int, claims map[int]int) bool {
	f := &e.found.list[i]
	k, ok := claims[e.piece.lineAt(f.at)]
	return ok && f.Reason == ReasonClaim && among(f.SizeNumbers, e.found.list[k].SizeNumbers)
}

func isMisfit(reason report.Reason) bool {
	return reason == ReasonUneven || reason == ReasonMissing || reason == ReasonUnworked
}

// joined puts the sizes of one finding among those of another, in their order, where they have
// none in common. By how much a count differs is no longer of one kind then.
func (e *engine) joined(to, from int) {
	a, b := &e.found.list[to], &e.found.list[from]
	d, other := e.details[to], e.details[from]
	var sizes []int
	var texts []string
	for i, k := 0, 0; i < len(a.SizeNumbers) || k < len(b.SizeNumbers); {
		switch {
		case k == len(b.SizeNumbers) || i < len(a.SizeNumbers) && a.SizeNumbers[i] < b.SizeNumbers[k]:
			sizes, texts, i = append(sizes, a.SizeNumbers[i]), append(texts, d.texts[i]), i+1
		case i < len(a.SizeNumbers) && a.SizeNumbers[i] == b.SizeNumbers[k]:
			return
		default:
			sizes, texts, k = append(sizes, b.SizeNumbers[k]), append(texts, other.texts[k]), k+1
		}
	}
	a.SizeNumbers, d.texts, d.differs = sizes, texts, false
	b.SizeNumbers = nil
}
