package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// asPart reads "Work as given for back until armholes measure 12 cm", "Cast on and work as for Front to
// neck shaping": the rows of another part up to a place in it. The count there is the one that is said,
// if that part, or any before it, ever has so many stitches; else it is asked.
func (p *parser) asPart(line *Line) bool {
	end := p.asPartEnd(p.next)
	if end == 0 || p.onlyRows {
		return false
	}
	from := p.peek().span
	p.next = end
	line.info.kind, line.info.asPart, line.info.at = lineEven, true, from.to(p.last())
	return true
}

// asPartEnd is the index after such words at token i; 0 if they do not stand there.
func (p *parser) asPartEnd(i int) int {
	if p.acceptedAt(&i, "co", "cast") {
		p.acceptedAt(&i, "on")
		if !p.acceptedAt(&i, "and") {
			return 0
		}
	}
	if !p.acceptedAt(&i, "work", "knit", "make", "cont", "continue", "follow", "proceed") {
		return 0
	}
	for p.acceptedAt(&i, "the", "instructions", "directions", "pattern", "exactly", "just", "piece", "front", "and", "work", "in") {
	}
	if end := p.phraseEnd(i, asGiven); end != 0 {
		i = end
	} else if !p.tokens[i-1].is("instructions", "directions") || !p.acceptedAt(&i, "for") {
		return 0
	}
	for p.acceptedAt(&i, "the", "a", "left", "right", "first", "second", "other") {
	}
	if !draft.Part(p.tokens[i].text) {
		return 0
	}
	i++
	if !p.tokens[i].is("until", "till", "to") || p.toCountAt(i) {
		return 0
	}
	return p.placeInPart(i)
}

// placeInPart is the index after the words from token i on that say up to which place of a part it is
// worked; 0 if something else is to be done there.
func (p *parser) placeInPart(i int) int {
	for ; !p.endsAt(i) && !p.tokens[i].among(": - ( ;"); i++ {
		t := &p.tokens[i]
		if end, _ := p.sizedEnd(i); end != 0 && p.tokens[end].stitches() && p.tokens[i-1].among("beg row cm inches") {
			return i // a count after a full stop that shortens a word
		}
		if alarming(t.text) && !p.tokens[i+1].among("have are is has complete") ||
			t.among("but except match omitting while then and") ||
			t.is("with") && !p.tokens[i-1].is("ending", "end", "finishing") {
			return 0
		}
	}
	return i
}

// acceptedAt goes on after one of some words at token i.
func (p *parser) acceptedAt(i *int, words ...string) bool {
	if !p.tokens[*i].is(words...) {
		return false
	}
	*i++
	return true
}

var asGiven = wordings("the same as given for", "same as given for", "the same as for", "same as for", "the same as", "same as",
	"as given for", "as worked for", "as directed for", "as described for", "as written for", "as instructed for", "as you did for", "as for",
	"as on", "as")

// likePart goes on with the count that another part had at some place.
func (r *runner) likePart(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	r.out.RowsOpen = r.out.RowsOpen || !r.quiet
	want, said := r.claim(l)
	if !said || !r.hadBefore(i, want) {
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0,
			"what another part of the text does is not followed here: write the rows, for this side too")
		r.known = false
		r.unknown(l, true)
		return
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as the rows of that part, up to where it has "+stitches(int(want)))
	r.begin(want)
	r.machine, r.first, r.leftOpen, r.lastRow = nil, false, true, 0
	if !r.round {
		r.side = stitch.SideUnspecified
		r.ended(l)
	}
	r.close(i, r.now)
}

// hadBefore reports whether a line before line i ends with so many stitches.
func (r *runner) hadBefore(i int, want int64) bool {
	for k := range r.out.Lines[:i] {
		if int64(r.out.Lines[k].EndStitches[r.size]) == want {
			return true
		}
	}
	return false
}
