package pattern

import "example.com/knitmath/knitmath/stitch"

// gapAt is the index after "gap", "the wrapped st", "last turn" at token i, a place that the
// turn of the row before has left; 0 if there is none.
func (p *parser) gapAt(i int) int {
	for p.tokens[i].is("the", "last", "previous", "next", "prev") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.is("gap", "ds"), t.is("turn") && p.endsClause(i+1):
		return i + 1
	case t.is("turning") && p.tokens[i+1].is("point", "gap"):
		return i + 2
	case t.is("wrapped", "double", "ds") && p.tokens[i+1].stitches():
		return i + 2
	}
	return 0
}

func (p *parser) endsClause(i int) bool { return p.endsAt(i) || p.tokens[i].is(",", ";") }

// withWrap reads "work next st with its wrap", "k it tog with its wraps": one stitch.
func (p *parser) withWrap() (s Step, found, ok bool) {
	i, from := p.next, p.peek().span
	op := stitch.Knit
	switch {
	case p.tokens[i].is("p", "purl"):
		op = stitch.Purl
	case !p.tokens[i].is("k", "knit", "work"):
		return Step{}, false, true
	}
	work := p.tokens[i].is("work")
	end := p.phraseEnd(i+1, wrappedOnes)
	if wrap := p.phraseEnd(i+1, wrapsFirst); wrap != 0 {
		p.next = wrap
		p.tidies, p.asGiven = true, true
		return Step{Operation: op, takes: 1, leaves: 1, Times: one, at: from.to(p.last())}, true, true
	}
	if end == 0 {
		return Step{}, false, true
	}
	for p.tokens[end].is("tog", "together") {
		end++
	}
	if !p.tokens[end].is("with") || !p.tokens[end+1].is("its", "the", "both", "wrap", "wraps") {
		return Step{}, false, true
	}
	for end++; p.tokens[end].is("its", "the", "both", "two", "2"); end++ {
	}
	if !p.tokens[end].is("wrap", "wraps") {
		return Step{}, false, true
	}
	p.next = end + 1
	p.tidies, p.asGiven = true, true
	s = Step{Operation: op, takes: 1, leaves: 1, Times: one, at: from.to(p.last())}
	if work {
		s.Operation, s.Name = 0, "work"
	}
	return s, true, true
}

var wrapsFirst = wordings("wrap with its st", "the wrap with its st", "wrap tog with its st", "wrap together with its st",
	"the wrap tog with its st", "the wrap together with its st", "wrap with its stitch", "the wrap with its stitch")

var wrappedOnes = wordings("it", "the next st", "next st", "the wrapped st", "wrapped st", "this st", "the st", "next stitch",
	"the next stitch")
