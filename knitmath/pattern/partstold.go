package pattern

import "strings"

// partWords are words with which parts of a count are told beside it.
var partWords = wordSet(`each for on front back sleeve sleeves needle needles between markers marker m in work side sides sts st stitches
	per 	shoulder shoulders of the left right body instep sole rows rnds worked rem remain held and heel palm first second other total
	either both armhole neck half n1 n2 n3 n4 n dpn dpns toe thumb gusset underarm cuff hand foot top centre center split opening`)

// partsTold is the index after what tells the parts of a count at token i: ": 30 (32, 34) each
// for front and back, 10 (10, 12) for each sleeve"; 0 if that is not what stands there.
func (p *parser) partsTold(i int) int {
	if !p.tokens[i].among(": ; , ( with") {
		return 0
	}
	if end, _ := p.sizedEnd(i + 1); end == 0 {
		return 0
	}
	return p.partsEnd(i+1, p.tokens[i].is("("))
}

// partsEnd is the index after parts that are told from token i on, in a bracket or up to the end of the sentence; 0 if they are
// followed by anything else.
func (p *parser) partsEnd(i int, open bool) int {
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
		case t.kind == tokenNumber, t.among(", - / : ; ["), t.is("(", ")", "]"):
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

// passParts passes over the parts of a count. Those between markers are compared when the row
// has been worked; those of the whole piece must add up to the count.
func (p *parser) passParts(line *Line) bool {
	p.partsWith()
	end := p.partsTold(p.next)
	if end == 0 {
		return false
	}
	if p.eachPart(line, end) {
		return true
	}
	from := p.peek().span
	parts, known := p.partsUpTo(end)
	p.next = end
	at := from.to(p.last())
	one := known && len(parts) == 1
	if one && parts[0].between && line.info.partial == nil {
		line.info.partial, line.info.between, line.info.beside = without(parts[0].n), true, true
		if line.info.claimAt.end < at.end {
			line.info.claimAt = line.info.claimAt.to(p.last())
		}
		return true
	}
	if one && parts[0].times == 2 && hasPart(parts, "shoulder") {
		line.info.perSide, line.info.partsAt, line.info.beside = without(parts[0].n), at, true
	}
	if known {
		p.partsAddUp(line, parts, at)
	}
	p.passed(at)
	return true
}

// partsWith passes over the comma before parts of a count: "49 sts, with 13 sts between markers".
func (p *parser) partsWith() {
	if p.peek().is(",", ";") && p.ahead(1).is("with") && p.partsTold(p.next+1) != 0 {
		p.next++
	}
}

// partOf is one part of a count: so many stitches, so many times.
type partOf struct {
	n       []int
	times   int
	between bool // between two markers
	needles bool // on needles: what lies on all of them is the whole
	bare    bool // nothing but its number is said
	names   []string
}

// partsUpTo reads the parts that are told up to token end; known says that all of them were
// understood.
func (p *parser) partsUpTo(end int) (parts []partOf, known bool) {
	save, found, listed := p.next, p.found.mark(), p.listed
	defer func() {
		p.next, p.listed = save, listed
		p.found.rewind(found)
	}()
	known = true
	for p.next++; p.next < end && !p.peek().is(")", "]", "}"); {
		if p.peek().among(", ; and : - / +") {
			p.next++
			continue
		}
		part, ok := p.partUpTo(end)
		if !ok {
			return nil, false
		}
		parts, known = append(parts, part), known && part.times > 0
	}
	return parts, known && len(parts) > 0
}

// partUpTo reads "11 sts each for front and back"; its times are 0 where they are not known.
func (p *parser) partUpTo(end int) (partOf, bool) {
	part := partOf{n: p.number()}
	if part.n == nil || len(part.n) != 1 && len(part.n) != p.sizes {
		return part, false
	}
	p.accept("st", "sts", "stitches")
	if part.times = p.onNeedles(); part.times > 0 {
		part.needles = true
		return part, true
	}
	from := p.next
	each, names := false, 0
	for ; p.next < end && !p.partStops(); p.next++ {
		t := p.peek()
		switch {
		case t.among("each per either both"):
			each = true
		case t.is("between", "gusset", "thumb"):
			part.between = true
		case t.among("front back sleeve body instep sole heel palm half shoulder"):
			names++
			part.names = append(part.names, t.text)
		case t.is("sleeves", "sides", "shoulders"):
			names, each = names+2, false
			part.names = append(part.names, strings.TrimSuffix(t.text, "s"))
		case t.among("side needle needles held rem remain worked rows rnds total neck armhole"):
			return part, true // what these are of is not followed
		}
	}
	switch {
	case part.between, p.next == from:
		part.times, part.bare = 1, p.next == from
	case each && names == 1:
		part.times = 2 // "each sleeve", "each half"
	default:
		part.times = names
	}
	return part, true
}

// partStops reports whether the words of a part end here: with another number, a mark or a bracket.
func (p *parser) partStops() bool {
	to, _ := p.sizedEnd(p.next)
	return to != 0 || p.peek().among(") ] } , ; -")
}
