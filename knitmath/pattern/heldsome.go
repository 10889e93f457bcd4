package pattern

import "example.com/knitmath/knitmath/draft"

// someStitches reads "next 20 sts", "rem 38 sts", "all sts", "centre 20 (22) sts",
// "30 held sts"; all for stitches without a number.
func (p *parser) someStitches() (n []int, all, held, ok bool) {
	from := p.next
	if p.theOthers() {
		return nil, true, false, true
	}
	all, held = p.whichStitches()
	if end, _ := p.sizedEnd(p.next); end != 0 {
		if n = p.number(); n == nil {
			return nil, false, false, false
		}
		n = without(n)
	} else {
		all = all || p.allOfThem(from)
		if !all && p.peek().is("st", "stitch") && p.next > from {
			n = one // "centre st"
		}
	}
	for p.acceptAmong("held reserved freed body sleeve thumb back front neck heel instep live shoulder left " +
		"right rem " +
		"centre center top gusset") {
		held = held || p.tokens[p.next-1].is("held", "reserved", "freed")
	}
	if !p.acceptAmong("st sts stitch stitches") && (n == nil || !p.bareAside()) {
		return nil, false, false, false
	}
	return n, all, held, true
}

// theOthers passes over "the rest", "the rest of the sts", "the others": stitches called so alone.
func (p *parser) theOthers() bool {
	if end := p.phraseEnd(p.next, othersAlone); end != 0 && p.tokens[end].is("on", "onto", "to") {
		p.next = end
		return true
	}
	return false
}

var othersAlone = wordings("the rest of the sts", "the rest of the stitches", "the rest", "the others", "the remainder", "rest of sts",
	"rest of the sts")

// whichStitches passes over the words before a number of stitches, "the next", "all held".
func (p *parser) whichStitches() (all, held bool) {
	for {
		switch {
		case p.acceptAmong("the next first last rem remaining these those centre center following foll other " +
			"unworked back front neck sleeve thumb body heel instep of left right each gusset " +
			"live shoulder"):
		case p.acceptAmong("held reserved freed resting"):
			held = true
		case p.accept("all"):
			all = true
		default:
			return all, held
		}
	}
}

// allOfThem reports whether the words from a token on, with no number after them, are about all
// stitches: "rem", "the"; "the thumb sts" are some.
func (p *parser) allOfThem(from int) bool {
	for i := from; i < p.next; i++ {
		if p.tokens[i].among("rem remaining these all those live held left other unworked "+
			"the") && !p.tokens[i+1].is("thumb") {
			return true
		}
	}
	return false
}

// firstAndLast reads "the first 10 and last 10 sts", "first and last 10 sts": both together.
func (p *parser) firstAndLast() (n []int, all, held, ok bool) {
	save, found := p.next, p.found.mark()
	p.accept("the")
	if p.accept("first") {
		first := p.number()
		if first != nil {
			p.accept("st", "sts", "stitches")
		}
		if p.accept("and") {
			p.accept("the")
			if p.accept("last") {
				last := p.number()
				if first == nil {
					first = last
				}
				if last != nil && p.accept("st", "sts", "stitches") {
					return added(without(first), without(last), p.sizes), false, false, true
				}
			}
		}
	}
	p.next = save
	p.found.rewind(found)
	return nil, false, false, false
}

// heldSts is the index of a number of stitches at token i, "rem 30 sts", "30 held sts";
// 0 if there is none.
func (p *parser) heldSts(i int) int {
	for p.tokens[i].among("the rem remaining held these other last next centre center middle central") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return 0
	}
	for p.tokens[end].is("held", "rem", "remaining") || draft.Part(p.tokens[end].text) {
		end++
	}
	if !p.tokens[end].stitches() {
		return 0
	}
	return i
}
