package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// ribAs reports whether a direction from token i on works in a rib that is written in rows elsewhere: "in rib as given
// for Back", "in rib as set".
func (p *parser) ribAs(i int) bool {
	named := false
	for most := i + mostWords; i < most && !p.endsAt(i) && !p.tokens[i].is(",", ";", "("); i++ {
		t := &p.tokens[i]
		named = named || t.is("rib", "ribbing")
		if named && t.is("as") {
			return true
		}
	}
	return false
}

// ribAsWritten asks where stitches that have just been cast on or picked up do not fit the rib that is called: any of
// those that the text writes in rows. Of a rib that has been shaped the edges may be anything.
func (r *runner) ribAsWritten(i int) {
	l, total := &r.piece.Lines[i], r.now.total()
	if !l.info.ribAs || r.quiet || r.round || !r.known || r.now.behind > 0 || !r.justBegun(i) || r.shapedFirst(i) {
		return
	}
	rib, fits := r.ribsWritten(i, total)
	over := r.overRow(rib, total)
	if fits || over == 0 || !r.wanted(ReasonUneven, l.info.at) {
		return
	}
	r.fault(KindQuestion, ReasonUneven, l.info.at, int(over), "does the rib begin and end otherwise here? as it is written it fits "+
		strconv.Itoa(int(total-over))+" stitches, not "+strconv.Itoa(int(total)))
}

// ribsWritten is the last row of a rib before a line, -1 for none, and whether any of them fits so many stitches.
func (r *runner) ribsWritten(i int, total int64) (rib int, fits bool) {
	rib = -1
	for k := range r.piece.Lines[:i] {
		if row := &r.piece.Lines[k]; row.info.isFor(r.size) && ribRow(row) {
			rib, fits = k, fits || r.fitsRow(k, total)
		}
	}
	return rib, fits
}

// overRow is by how many stitches so many are over what a row fits, 0 if that is not near, or there is no row.
func (r *runner) overRow(row int, total int64) int64 {
	for over := int64(1); row >= 0 && over < min(24, total); over++ {
		if r.fitsRow(row, total-over) {
			return over
		}
	}
	return 0
}

// fitsRow reports whether a row comes out on so many stitches.
func (r *runner) fitsRow(i int, total int64) bool {
	r.spend(r.facts[i].stepCount)
	p := profileOf(r.piece.Lines[i].worked(), r.size)
	return p.work(total).reason == ""
}

// justBegun reports whether the stitches of a line have just been cast on or picked up.
func (r *runner) justBegun(i int) bool {
	for i--; i >= 0 && r.piece.Lines[i].info.kind == linePassed; i-- {
	}
	return i >= 0 && (r.piece.Lines[i].info.kind == lineCastOn || r.piece.Lines[i].info.kind == linePickUp)
}

// ribRow reports whether a line is a row of knit and purl stitches of which some are repeated.
func ribRow(l *Line) bool {
	repeats := false
	for k := range l.Steps {
		s := &l.Steps[k]
		if s.Steps == nil && s.Operation != stitch.Knit && s.Operation != stitch.Purl {
			return false
		}
		knit, purl := false, false
		for m := range s.Steps {
			knit = knit || s.Steps[m].Operation == stitch.Knit || s.Steps[m].Operation == stitch.KnitTbl
			purl = purl || s.Steps[m].Operation == stitch.Purl || s.Steps[m].Operation == stitch.PurlTbl
		}
		repeats = repeats || knit && purl && s.stretch()
	}
	return l.info.kind == lineRow && repeats
}
