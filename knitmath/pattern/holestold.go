package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// holesSaid reads "(5 buttonholes)", ", making 5 buttonholes", "4 buttonholes made" beside what is worked: it is compared with the
// holes that are bound off or made by a yarn over there.
func (p *parser) holesSaid(line *Line) bool {
	save, found := p.next, p.found.mark()
	p.acceptAmong(", - : ;")
	from := p.peek().span
	bracket := p.accept("(", "[")
	p.acceptAmong("making makes for giving there you")
	p.acceptAmong("are have is")
	end, _ := p.sizedEnd(p.next)
	if end == 0 {
		p.next = save
		return false
	}
	more := p.acceptedAt(&end, "more", "further")
	if !p.tokens[end].is("buttonhole", "buttonholes") {
		p.next = save
		return false
	}
	n := p.number()
	for p.next = end + 1; p.acceptAmong("made worked completed in all total have has been are altogether"); {
	}
	if n == nil || bracket && !p.accept(")", "]") || !p.endsAt(p.next) && !p.peek().among(", ; - (") {
		p.next = save
		p.found.rewind(found)
		return false
	}
	line.info.holes, line.info.holesAt, line.info.holesMore = without(n), from.to(p.last()), more
	p.piece.holesSaid = true
	return true
}

// holesInRow reads "(5 buttonholes)" among the steps of a row.
func (p *parser) holesInRow() bool {
	var line Line
	if !p.holesSaid(&line) {
		return false
	}
	p.rowHoles, p.rowHolesAt = line.info.holes, line.info.holesAt
	return true
}

// holesAlone reads it in a sentence of its own, of what was read before it.
func (p *parser) holesAlone() bool {
	n := p.lineBeforeClaim()
	if n == 0 || !p.began || p.onlyRows {
		return false
	}
	from := p.peek().span
	if !p.holesSaid(&p.piece.Lines[n-1]) {
		return false
	}
	line := Line{info: lineInfo{kind: linePassed}}
	p.finish(&line, from)
	return true
}

// noteHoles notes the holes that a row has made.
func (r *runner) noteHoles(l *Line, before hand) {
	if !r.piece.holesSaid || r.quiet {
		return
	}
	r.holesRow = r.holesMade(l.worked(), before.left)
	r.holesAll += r.holesRow
}

// holesMade is how many holes steps make that are worked on so many stitches: by binding off between others, or by yarn overs, of
// which those that lie side by side are one.
func (r *runner) holesMade(steps []Step, left int64) int64 {
	parts := segments(steps, r.size, left)
	made := int64(0)
	for i := 1; i < len(parts); i++ {
		made += int64(bit(parts[i] > 0 && (i > 1 || parts[0] > 0)))
	}
	if made > 0 {
		return made
	}
	var open *Step
	takes := int64(0)
	for i := range steps {
		s := &steps[i]
		switch {
		case !s.stretch():
			if made += int64(s.workings(r.size)) * oversIn(s.Steps, r.size); open == nil { // what follows are those that remain
				takes += times(s.pass(r.size).takes, int64(s.workings(r.size)))
			}
		case s.Steps != nil:
			open = s
			takes += int64(at(s.RemainingStitches, r.size))
		}
	}
	made += oversIn(steps, r.size)
	if open != nil {
		if each := open.pass(r.size).takes; each > 0 && left >= takes {
			made += (left - takes) / each * oversIn(open.Steps, r.size)
		}
	}
	return made
}

// oversIn are the places of steps where yarn is brought over, but for those of a group.
func oversIn(steps []Step, size int) int64 {
	n := int64(0)
	for i := range steps {
		if steps[i].Operation == stitch.YO && steps[i].workings(size) > 0 && (i == 0 || steps[i-1].Operation != stitch.YO) {
			n++
		}
	}
	return n
}

// compareHoles asks where other holes are told than the row, the rows that are repeated, or all rows of the piece have made.
func (r *runner) compareHoles(l *Line, before int64) {
	if l.info.holes == nil || r.quiet || r.holesAll == 0 {
		return
	}
	n := int64(at(l.info.holes, r.size))
	there := []int64{r.holesRow, r.holesAll}
	if l.info.holesMore {
		there = []int64{r.holesAll - before}
	}
	if n < 0 || slices.Contains(there, n) || !r.wanted(ReasonClaim, l.info.holesAt) {
		return
	}
	said := "the row makes " + report.CountOf(int(r.holesRow), "holes")
	if r.holesAll > r.holesRow {
		said += ", and there are " + strconv.FormatInt(r.holesAll, 10) + " in all"
	}
	r.fault(KindQuestion, ReasonClaim, l.info.holesAt, 0, said+": which are the "+strconv.FormatInt(n, 10)+" that are told here?")
}
