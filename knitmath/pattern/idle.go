package pattern

import "example.com/knitmath/knitmath/draft"

// sentenceOrRemark reads a sentence. Where no stitch is on the needle, before the first
// cast-on and after everything was bound off, words that cannot be read change no count,
// unless they may bring stitches or say how some are worked: they are passed over.
func (p *parser) sentenceOrRemark() {
	end := 0
	if p.idle() && p.labelEnd(p.next) == 0 {
		if end = p.sentenceEnd(p.next); !p.began {
			end = p.lineEnd(p.next)
		}
	}
	if end == 0 || end == p.next || p.mayKnit(p.next, end) {
		p.sentence()
		return
	}
	save, found, lines := *p, p.found.mark(), len(p.piece.Lines)
	var last Line
	if lines > 0 {
		last = p.piece.Lines[lines-1]
	}
	p.sentence()
	read := true
	for _, f := range p.found.list[min(found.listed, len(p.found.list)):] {
		read = read && f.Kind == KindReading
	}
	if read {
		return
	}
	p.found.rewind(found)
	p.piece.Lines = p.piece.Lines[:lines]
	if lines > 0 {
		p.piece.Lines[lines-1] = last
	}
	kept, looked := p.found, p.looked
	*p = save
	p.found, p.looked = kept, looked
	p.passTo(end)
}

// tabled passes over a line of a table that stands before anything is cast on, and works nothing.
func (p *parser) tabled() bool {
	if !p.lineStart() || !p.peek().is("|") || p.began || p.given || p.onlyRows {
		return false
	}
	end := p.lineEnd(p.next)
	for i := p.next; i < end; i++ {
		if p.tokens[i].among("co cast row rnd round") || p.tokens[i].kind == tokenStar {
			return false
		}
	}
	p.passTo(end)
	return true
}

// idle reports whether no stitch is on the needle.
func (p *parser) idle() bool {
	return !p.onlyRows && !p.trying && p.current == 0 && (!p.began && !p.given || p.bare)
}

// mayKnit reports whether a sentence may bring stitches to the needle or say how some are
// worked: it has a star, a stitch with its number, or a word of such a kind; or it is none of
// the language at all, unless it is the title.
func (p *parser) mayKnit(i, end int) bool {
	first := &p.tokens[i]
	if first.among("work knit purl k p cont continue repeat rep complete follow as then next") ||
		p.bare && first.is("make", "with", "using") || p.anyKnits(i, end) {
		return true
	}
	if !p.began && p.castsOnLater() || first.kind == tokenWord && (i == 0 && end > 1 || p.tokens[i+1].is(":")) {
		return false
	}
	return p.noneKnown(i, end)
}

// anyKnits reports whether a word between two tokens may bring or work stitches.
func (p *parser) anyKnits(i, end int) bool {
	if p.quiet.holds(i, end, len(p.own)) {
		return false
	}
	for at := i; at < end; at++ {
		p.looked++
		if p.knitsAt(at) {
			return true
		}
	}
	p.quiet = quietWords{i, end, len(p.own)}
	return false
}

// noneKnown reports whether no word between two tokens is of the language.
func (p *parser) noneKnown(i, end int) bool {
	if p.unknown.holds(i, end, 0) {
		return true
	}
	for at := i; at < end; at++ {
		p.looked++
		if t := &p.tokens[at]; t.kind == tokenWord && (draft.English(t.text) || draft.Harmless(t.text) || draft.Front(t.text) ||
			draft.Part(t.text)) {
			return false
		}
	}
	p.unknown = quietWords{i, end, 0}
	return true
}

// knitsAt reports whether a token is such a word.
func (p *parser) knitsAt(i int) bool {
	t := &p.tokens[i]
	switch {
	case t.kind == tokenStar, t.is("=", "["):
		return true
	case t.kind != tokenWord:
		return false
	case bringing[t.text], p.own[t.text].name != "":
		return true
	}
	_, _, _, counted := split(t.text)
	return counted
}

// quietWords are tokens that were looked through without finding what was looked for, while
// the text had so many abbreviations of its own. A line of many full stops is looked through
// once, and not from each of them on.
type quietWords struct{ from, to, own int }

func (q quietWords) holds(from, to, own int) bool {
	return q.from <= from && to <= q.to && own == q.own
}

// castsOnLater reports whether the text has a cast-on, which has not been read yet: what comes
// before it is on no needle.
func (p *parser) castsOnLater() bool {
	if p.castLater == 0 {
		p.castLater = 1
		for i := range p.tokens[:len(p.tokens)-beyond] {
			p.looked++
			if p.tokens[i].is("co", "cast") && p.castAt(i) != 0 {
				p.castLater = 2
				break
			}
		}
	}
	return p.castLater == 2
}

// bringing are words of sentences that may bring stitches to the needle, or work some.
var bringing = wordSet(`co cast cast-on casting pick picking return rejoin held hold holder holders waste scrap spare replace undo unravel
	transfer put sts stitches match matching correspond corresponding reversing reverse mirror mirrored other second opposite row rows rnd rnds
	round rounds k p yo k2tog ssk p2tog as same again remaining rem`)

// noteBare notes whether a line leaves no stitch on the needle.
func (p *parser) noteBare(line *Line) {
	switch info := &line.info; info.kind {
	case linePassed, lineUnread, lineJoin:
		p.bare = p.bare && info.kind != lineUnread
	case lineOff:
		p.bare = info.rest == nil && !info.defined
	default:
		p.bare = false
	}
}
