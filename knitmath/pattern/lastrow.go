package pattern

// lastOfRows reads "last row", "the final rnd", "last of these rows": a change is made in the last of
// the rows before it.
func (p *parser) lastOfRows() bool {
	save := p.next
	p.accept("the", "this")
	if p.acceptAny(lastOfThese) || p.accept("last", "final") && p.acceptRow() {
		p.lastRowSaid = true
		return true
	}
	p.next = save
	return false
}

// lastOfThese are the last of some rows that were just said.
var lastOfThese = wordings("last of these rows", "last of the rows", "last of these", "last one", "last of these rnds",
	"last of these rounds", "last of those rows", "last 1 of these rows")

// takeBack takes back the row that was worked last, which a change is made in: "rep these 2 rows 6
// times, inc 8 sts evenly across last row" is twelve rows, and so is "work 12 rows, inc 8 sts evenly
// across last row". The stitches stay, for the row kept them, or its own change is made too.
func (r *runner) takeBack() {
	n := len(r.history)
	if n == 0 && !r.leftOpen || r.turned != 0 {
		return
	}
	if !r.round {
		r.side = r.side.Other()
	}
	if r.leftOpen { // it is one of those whose number is not known, and none of them is counted
		return
	}
	if r.rows--; r.quiet {
		return
	}
	r.history = r.history[:n-1]
	r.journal.takeBack()
}

// takeBack takes the last row out of the runs.
func (j *journal) takeBack() {
	if j == nil || j.full || len(j.runs) == 0 {
		return
	}
	last := j.runs[len(j.runs)-1]
	j.runs = j.runs[:len(j.runs)-1]
	rows := len(last.LinePlaces)
	part := last
	if last.Times--; last.Times > 0 {
		j.runs = append(j.runs, last)
		part.FirstRowNumber += last.Times * rows
		if part.StartStitches >= 0 {
			part.StartStitches += last.Times * sum(last.ChangeStitches)
		}
	}
	if part.Times = 1; rows > 1 {
		part.LinePlaces = part.LinePlaces[:rows-1]
		if part.ChangeStitches != nil {
			part.ChangeStitches = part.ChangeStitches[:rows-1]
		}
		j.runs = append(j.runs, part)
	}
}
