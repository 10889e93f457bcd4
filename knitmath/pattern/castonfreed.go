package pattern

import "strings"

// castOnFreed reads "undo provisional cast-on and place 30 (32, 34) sts on needle", "remove waste yarn, placing
// the resulting sts on dpns": stitches that were cast on to be freed come to those in work.
func (p *parser) castOnFreed(line *Line) bool {
	i := p.freedCastOn(p.next)
	if i == 0 || p.onlyRows {
		return false
	}
	from := p.peek().span
	if p.next = i; !p.acceptAmong("place placing put putting slip slipping sl transfer transferring return returning " +
		"pick picking catch catching leaving") {
		return false
	}
	for p.acceptAmong("up all the these those resulting released exposed freed live open rem remaining " +
		"of provisional cast-on first on") {
	}
	cast := p.castOnToFree()
	counts := cast
	if end, _ := p.sizedEnd(p.next); end != 0 {
		if n := p.number(); n != nil {
			counts = without(n)
		}
	}
	p.acceptAmong("live provisional resulting cast-on open rem remaining freed released exposed")
	if counts == nil || !p.accept("sts", "stitches", "loops") || !p.freedOnto() {
		return false
	}
	line.info.kind, line.info.counts, line.info.adds = lineCastOn, counts, p.began
	if cast != nil && !nearly(counts, cast) {
		p.ask(ReasonAmbiguous, from.to(p.last()), "so many were not cast on there: which stitches are freed?")
	}
	return true
}

// freedCastOn is the index after "carefully undo the provisional cast-on and" at token i; 0 if that is not what
// stands there.
func (p *parser) freedCastOn(i int) int {
	for p.tokens[i].among("carefully now then next ,") {
		i++
	}
	if !p.tokens[i].among("undo unpick remove unzip release unravel undoing removing unzipping unpicking " +
		"releasing") {
		return 0
	}
	cast := false
	for i++; p.tokens[i].among("the provisional waste scrap contrast contrasting yarn cast on cast-on crochet " +
		"chain from edge of your smooth invisible co row"); i++ {
		cast = cast || p.tokens[i].among("provisional waste scrap chain cast-on")
	}
	end := i
	for p.tokens[end].among("and , ; then carefully :") {
		end++
	}
	if !cast || end == i {
		return 0
	}
	return end
}

// freedOnto passes over "on to a spare needle" and reports whether it stands there.
func (p *parser) freedOnto() bool {
	if !p.acceptAmong("on onto to back") {
		return false
	}
	for p.acceptAmong("on onto to a an the your second spare free empty other another same smaller " +
		"larger circular double-pointed dp two three 2 3 working left left-hand needle's set of") {
	}
	return p.acceptAmong("needle needles dpn dpns")
}

// castOnToFree are the stitches of the cast-on that is to be undone later; nil if none is known.
func (p *parser) castOnToFree() []int {
	for i := len(p.piece.Lines) - 1; i >= 0; i-- {
		info := &p.piece.Lines[i].info
		if info.kind != lineCastOn || info.adds {
			continue
		}
		from := strings.LastIndexByte(p.found.source[:info.at.start], '\n') + 1
		text := p.found.source[from:]
		if end := strings.IndexByte(text, '\n'); end >= 0 {
			text = text[:end]
		}
		if text = strings.ToLower(text); strings.Contains(text, "provisional") || strings.Contains(text, "waste") ||
			strings.Contains(text, "scrap") || strings.Contains(text, "invisible") {
			return info.counts
		}
		return nil
	}
	return nil
}

// nearly reports whether counts differ by no more than a stitch: the loops between the stitches of a cast-on
// are one fewer than these.
func nearly(a, b []int) bool {
	for i := range max(len(a), len(b)) {
		if d := at(a, i) - at(b, i); d < -1 || d > 1 {
			return false
		}
	}
	return true
}
