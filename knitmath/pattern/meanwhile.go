package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// minded are what may be minded while stitches are worked: it is no stitch of its own.
var minded = wordSet(`wrap wraps wrapped ds dss marker markers m ms loops loop yarn patt pattern rib floats ball strand needle colour
	color colours colors edge chart tension`)

// meanwhile reads what is done while stitches are worked, "slipping markers", "picking up
// wraps", "casting on 6 sts over the gap". It follows the stitches it is about.
func (p *parser) meanwhile(steps *[]Step, inner string) asideKind {
	t := p.peek()
	if !strings.HasSuffix(t.text, "ing") || len(*steps) == 0 || p.notation(t.text) || t.among("ending finishing beginning starting") {
		return asideNone
	}
	switch {
	case t.is("casting", "binding") && inner == "":
		return p.castingMeanwhile(steps)
	case t.is("winding", "wrapping"):
		return p.longLoops()
	case p.inEveryAt(p.next):
		return p.whileEvery(steps)
	case t.among("replacing moving removing dropping discarding taking") && p.markerNext():
		p.toClause()
		return asideRead
	}
	end := p.mindedEnd()
	if end == 0 {
		return asideNone
	}
	from := p.peek().span
	if p.anyOf(p.next, end, "wrap", "wraps", "ds", "dss") {
		p.tidies = true
	}
	p.next = end
	p.passed(from.to(p.last()))
	return asideRead
}

// mindedEnd is the index after "slipping markers", "keeping yarn in front": what is only minded
// while stitches are worked; 0 if a count may hang on it.
func (p *parser) mindedEnd() int {
	ownStitches := p.peek().is("slipping", "keeping", "working")
	about, wraps := false, false
	end := p.next + 1
	for ; !p.mindedStops(end); end++ {
		t := &p.tokens[end]
		about = about || minded[t.text] || t.is("double") || ownStitches && t.stitches()
		switch t.kind {
		case tokenWord:
			if wraps = wraps || t.is("wrap", "wraps", "wrapped"); !mayBeMinded(t, about, wraps) {
				return 0
			}
		case tokenNumber:
			if !p.measured(end) && !p.tokens[end+1].is("st") {
				return 0
			}
		}
	}
	if !about {
		return 0
	}
	return end
}

// mayBeMinded reports whether a word may stand in what is minded, which is about something that is
// no stitch, or about wraps: a wrap together with its stitch is that stitch.
func mayBeMinded(t *token, about, wraps bool) bool {
	if t.is("tog") && about || t.is("together") && wraps {
		return true
	}
	return !alarming(t.text) && !t.is("tog")
}

// mindedStops reports whether no more belongs at token i to what is minded.
func (p *parser) mindedStops(i int) bool {
	t := &p.tokens[i]
	return p.endsAt(i) || t.kind == tokenStar || t.among(", ; ) ] ( - =")
}

// longLoops passes over "winding yarn twice round needle for each st": the loops beside the
// first are dropped again, and are no stitches.
func (p *parser) longLoops() asideKind {
	from, save := p.peek().span, p.next
	yarn := false
	for p.next++; !p.endsAt(p.next) && !p.peek().among(", ; ) ] ( =") && p.peek().kind != tokenStar; p.next++ {
		t := p.peek()
		yarn = yarn || t.among("yarn wool thread needle")
		if t.kind == tokenNumber && !p.ahead(1).is("times", "time") {
			yarn = false
			break
		}
	}
	if !yarn {
		p.next = save
		return asideNone
	}
	p.asGiven = true
	p.reading(from.to(p.last()), "the extra loops are dropped in the next row: read as no stitches of their own")
	return asideRead
}

// whileEvery reads "Knit, increasing 1 st in every 12th st": the changes are made in the
// stitches that were said to be worked to the end.
func (p *parser) whileEvery(steps *[]Step) asideKind {
	last := &(*steps)[len(*steps)-1]
	if !single(last.RemainingStitches, 0) || last.Steps != nil || last.takes != 1 || last.leaves != 1 {
		return asideNone
	}
	s, ok := p.inEvery()
	if !ok {
		return asideFault
	}
	p.asGiven = true
	*last = s
	return asideRead
}

// castingMeanwhile reads "casting on 6 sts over the held sts".
func (p *parser) castingMeanwhile(steps *[]Step) asideKind {
	from, save := p.peek().span, p.next
	op := stitch.CastOn
	if p.peek().is("binding") {
		return asideNone
	}
	p.next++
	if !p.accept("on") {
		p.next = save
		return asideNone
	}
	n := p.number()
	if n == nil || !p.acceptAmong("st sts stitch stitches") ||
		p.anyOf(p.next, p.sentenceEnd(p.next), "twice", "them") {
		p.next = save
		return asideNone
	}
	if p.anyOf(p.next, p.sentenceEnd(p.next), "each", "both", "those") {
		gaps, bound := p.gapsBefore()
		if gaps == 0 {
			p.next = save
			return asideNone
		}
		if n = without(n); n[0] < bound || !p.anyOf(p.next, p.sentenceEnd(p.next), "those") { // "over those": as many as were bound off in all
			n = p.timesEach(n, gaps)
		}
	}
	for !p.endsAt(p.next) && !p.peek().among(", ; ( - =") && !p.claimAhead() {
		p.next++
	}
	*steps = append(*steps, Step{Operation: op, Times: without(n), leaves: 1, at: from.to(p.last())})
	return asideRead
}

// gapsBefore is how often the row before binds off, and how many stitches in all; 0 if that is not
// plain.
func (p *parser) gapsBefore() (gaps, bound int) {
	n := len(p.piece.Lines)
	if n == 0 || p.piece.Lines[n-1].info.kind != lineRow {
		return 0, 0
	}
	return gapsOf(p.piece.Lines[n-1].Steps)
}

func gapsOf(steps []Step) (gaps, bound int) {
	for i := range steps {
		s := &steps[i]
		switch {
		case s.Operation == stitch.BindOff && s.Times != nil:
			gaps, bound = gaps+1, bound+s.Times[0]
		case s.Steps != nil && !s.IntoOneStitch:
			n, b := gapsOf(s.Steps)
			if n > 0 && (s.RemainingStitches != nil || len(s.Times) != 1) {
				return 0, 0
			}
			if n > 0 {
				gaps, bound = gaps+n*s.Times[0], bound+b*s.Times[0]
			}
		}
	}
	return gaps, bound
}

// meanwhileAt reports whether what is done while a whole row is worked begins at token i,
// after a comma.
func (p *parser) meanwhileAt(i int) bool {
	if !p.tokens[i].is(",") {
		return false
	}
	t := &p.tokens[i+1]
	return t.kind == tokenWord && strings.HasSuffix(t.text, "ing") && !p.notation(t.text) &&
		!t.among("ending finishing beginning starting")
}
