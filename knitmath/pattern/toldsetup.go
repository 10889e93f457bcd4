package pattern

// toldSetUp reads a sentence that tells on which stitches the rows after it are worked: "The
// heel is worked back and forth on the first 28 sts", "Worked flat on 80 sts".
func (p *parser) toldSetUp(line *Line) bool {
	i := p.next
	for n := 0; n < 6 && !p.tokens[i].is("worked"); n++ {
		if p.tokens[i].kind != tokenWord || p.tokens[i].is("repeat", "rep", "motif", "patt", "pattern", "chart") ||
			p.notation(p.tokens[i].text) && !p.tokens[i].is("heel", "toe") {
			return false
		}
		i++
	}
	if !p.tokens[i].is("worked") || i > p.next && !p.tokens[i-1].is("is", "are", "now", "be") {
		return false
	}
	save, before := p.next, line.info
	w := evenWork{verb: &p.tokens[i], from: p.peek().span}
	p.next = i + 1
	if p.accept("flat") {
		line.info.turns, w.setUp = constructionFlat, true
	}
	for p.evenPart(&w, &line.info) {
		if line.info.kind == lineUnread {
			break
		}
	}
	if !w.setUp || w.counted || line.info.only == nil || line.info.kind == lineUnread {
		p.next, line.info = save, before
		return false
	}
	line.info.kind = lineEven
	return true
}
