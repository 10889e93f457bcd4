package pattern

// partWords are words with which parts of a count are told beside it.
var partWords = wordSet(`each for on front back sleeve sleeves needle needles between markers marker m in work side sides sts st stitches
	per 	shoulder shoulders of the left right body instep sole rows rnds worked rem remain held and heel palm first second other total
	either both armhole neck`)

// partsTold is the index after what tells the parts of a count at token i: ": 30 (32, 34) each
// for front and back, 10 (10, 12) for each sleeve"; 0 if that is not what stands there.
func (p *parser) partsTold(i int) int {
	if !p.tokens[i].is(":", ";", ",", "(") {
		return 0
	}
	open := p.tokens[i].is("(")
	i++
	if end, _ := p.sizedEnd(i); end == 0 {
		return 0
	}
	words := 0
	for n := 0; n < 160; n++ {
		t := &p.tokens[i]
		switch {
		case open && t.is(")"):
			if words == 0 {
				return 0
			}
			return i + 1
		case p.endsAt(i):
			if words == 0 || open {
				return 0
			}
			return i
		case t.kind == tokenWord && partWords[t.text]:
			words++
		case t.kind == tokenNumber, t.is(",", "-", "/", ":", "["), t.is("(", ")", "]"):
			if end, _ := p.sizedEnd(i); end > i {
				i = end
				continue
			}
		default:
			return 0
		}
		i++
	}
	return 0
}

// passParts passes over them.
func (p *parser) passParts() bool {
	end := p.partsTold(p.next)
	if end == 0 {
		return false
	}
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
	return true
}
