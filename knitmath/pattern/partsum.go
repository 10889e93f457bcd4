package pattern

import "strconv"

// partsAddUp compares the sum of the parts with the count, where they are all of it: front and
// back, with the sleeves where any are told, or what a sock and a mitten have.
func (p *parser) partsAddUp(line *Line, parts []partOf, where span) {
	if !p.wholePiece(parts) || len(line.ClaimedStitches) == 0 {
		return
	}
	line.info.partsTold, line.info.partsAt = parts, where
	for size := range p.sizes {
		total := 0
		if total = at(line.ClaimedStitches, size); total < 0 {
			continue
		}
		sum, least := 0, MaxNumber
		for _, part := range parts {
			n := at(part.n, size)
			sum, least = sum+part.times*n, min(least, n)
		}
		if sum == total || total-sum >= least && hasPart(parts, "front") && !hasPart(parts, "sleeve") { // the sleeves may be left out
			continue
		}
		text := "the parts add up to " + strconv.Itoa(sum) + ", not " + strconv.Itoa(total)
		if p.sizes > 1 {
			text = "size " + strconv.Itoa(size+1) + ": " + text
		}
		line.info.partsTold = nil
		p.mistake(ReasonClaim, where, text)
		if n := len(p.found.list); n > 0 && p.found.list[n-1].at == where {
			p.found.list[n-1].SizeNumbers, p.found.list[n-1].DifferenceStitches = []int{size + 1}, []int{total - sum}
		}
		return
	}
}

// wholePiece reports whether parts are all that a piece has.
func (p *parser) wholePiece(parts []partOf) bool {
	needles, bare := true, len(parts) > 1 && p.sizes == 1
	for _, part := range parts {
		needles, bare = needles && part.needles, bare && part.bare
	}
	return needles || bare || hasPart(parts, "front") && hasPart(parts, "back") || hasPart(parts, "half") ||
		hasPart(parts, "instep") && (hasPart(parts, "sole") || hasPart(parts, "heel")) || hasPart(parts, "palm") && hasPart(parts, "back")
}

func hasPart(parts []partOf, name string) bool {
	for _, part := range parts {
		for _, n := range part.names {
			if n == name {
				return true
			}
		}
	}
	return false
}

// onNeedles reads "on each of 4 needles", "on needle 1", "on each of needles 1 and 3" after a
// number: how many needles; 0 and nothing taken if that is not what stands there.
func (p *parser) onNeedles() int {
	if n := p.onEachOf(); n != 0 {
		return n
	}
	i := p.next
	each := false
	for p.tokens[i].among("on onto each of the") {
		each = each || p.tokens[i].is("each")
		i++
	}
	if !p.tokens[i].among("needle needles n dpn dpns") || p.tokens[i+1].kind != tokenNumber {
		return p.onNeedleShort(i)
	}
	k := 0
	for i++; p.tokens[i].kind == tokenNumber && p.tokens[i].number <= 6; i++ {
		k++
		if !p.tokens[i+1].is("and", "&") || p.tokens[i+2].kind != tokenNumber {
			i++
			break
		}
		i++
	}
	if k > 1 && !each {
		return 0 // on both together, or on each?
	}
	p.next = i
	return k
}

// onNeedleShort reads "N1" after the words at hand up to token i.
func (p *parser) onNeedleShort(i int) int {
	if i == p.next || !p.tokens[i].among("n1 n2 n3 n4") || p.tokens[i+1].is("and", "&") && p.tokens[i+2].is("n2", "n3", "n4") {
		return 0
	}
	p.next = i + 1
	return 1
}

// claimedParts reads the parts that a claim in brackets tells after its count, "(40 sts: 20
// front, 20 back)", and notes them; false, and nothing taken, if they cannot be read.
func (p *parser) claimedParts(tail *claimTail, closer string) bool {
	end := p.next
	for n := 0; !p.tokens[end].is(closer); n++ {
		if n == 160 || p.endsAt(end) {
			return false
		}
		if p.tokens[end].is("(", "[", "{") {
			to, _ := p.listEnd(end)
			if to == 0 {
				return false
			}
			end = to - 1
		}
		end++
	}
	p.next--
	parts, known := p.partsUpTo(end)
	p.next++
	if !known || !p.wholePiece(parts) {
		return false
	}
	tail.parts, tail.partsAt = parts, p.peek().to(p.tokens[end-1].span)
	p.next = end
	return true
}
