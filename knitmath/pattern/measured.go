package pattern

import "strings"

// measured reports whether the number at token i is a length or a size, not a count.
func (p *parser) measured(i int) bool { return p.measuredEnd(i) != 0 }

// measuredEnd is the index after a number with a unit of length or weight, or the
// number of a needle; 0 if it is none.
func (p *parser) measuredEnd(i int) int {
	if _, written := p.tokens[i].written(); written && p.tokens[i+1].among("needle needles dpn dpns double-pointed circular "+
		"circulars strand strands ball balls") {
		return i + 2
	}
	if p.tokens[i].kind != tokenNumber {
		return 0
	}
	end, _ := p.sizedEnd(i)
	for end < len(p.tokens)-1 && (p.tokens[end].is("-", "/") || p.tokens[end].kind == tokenNumber && p.tokens[end-1].is("/", "-")) {
		end++
	}
	t := &p.tokens[end]
	switch {
	case t.system() != unitNone, t.among("m yd yds yards metres meters g oz % ball " +
		"balls needle needles dpn dpns double-pointed circular circulars strand strands"):
		return end + 1
	case p.tokens[i-1].among("us uk size no needle needles chart about measures approx approximately # " +
		"than least"):
		return end
	}
	return 0
}

// toldFabric is the index after "rib" of "16 rows rib in all", "of pattern" of "(9 rows of pattern)" at token i, or i.
func (p *parser) toldFabric(i int) int {
	if p.tokens[i].is("of") {
		end := max(i+1, p.fabricEnd(i+1))
		for n := 0; n < 4 && p.tokens[end].kind == tokenWord; n++ {
			end++
		}
		if end > i+1 && p.tokens[end].is(")", "]") {
			return end
		}
	}
	if fabric := p.fabricEnd(i); fabric != 0 && p.tokens[fabric].among("in have are worked altogether") {
		return fabric
	}
	return i
}

// fabricUnnamed reports whether a word for what is worked without its name stands at token i.
func (p *parser) fabricUnnamed(i int) bool {
	return p.tokens[i].among("the patt pattern pat lace rib ribbing cable chart border edging colourwork " +
		"colorwork motif texture stripes")
}

// rowsToldAt is the index after "28 rows worked", "(24 rows)" at token i: how many rows the
// directions before it come to; 0 if that is not what stands there.
func (p *parser) rowsToldAt(i int) int {
	open := p.tokens[i].is("(", "[")
	if open {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end = p.rowsWord(end); end == 0 {
		return 0
	}
	end = p.toldFabric(end)
	told := open || p.endsAt(end) && (i > 1 && p.tokens[i-1].is(",") && p.tokens[i-2].stitches() || p.timesBefore(i))
	for p.tokens[end].among("have been worked done complete completed all total made") ||
		p.tokens[end].is("in") && p.tokens[end+1].is("all", "total") {
		told = true
		end++
	}
	end = p.sinceCastOn(end)
	if open {
		if !p.tokens[end].is(")", "]") {
			return 0
		}
		end++
	}
	if !told {
		return 0
	}
	return end
}

// timesBefore reports whether a number of times stands before token i, set apart from it: "39 more
// times, 80 rows", "twice = 8 rows", "4 times. Total: 16 rows", "4 times. 16 rows".
func (p *parser) timesBefore(i int) bool {
	apart := 0
	for ; i > 1 && p.tokens[i-1].among(", : ; = - total ."); i-- {
		apart++
	}
	for apart > 0 && i > 1 && p.tokens[i-1].is("in", "all", "altogether") {
		i--
	}
	return apart > 0 && p.tokens[i-1].among("times time twice more x")
}

// placesMarkers reports whether a sentence that is passed over says that markers are placed:
// "pm after every 9 sts".
func placesMarkers(text string) bool {
	text = text[:min(len(text), 400)]
	if !saysSeveral(text) {
		return false // As most do; what is cut into words is held 12,000 times.
	}
	places, several, where := false, false, false
	for _, t := range scan(text) {
		places = places || t.among("pm place placing put")
		several = several || t.is("markers") || places && t.is("second", "another") || places && t.is("every", "each", "sides")
		where = where || t.is("where", "wherever")
		if t.is("want", "like", "wish") && !where {
			return false
		}
	}
	return places && several
}

// saysSeveral reports whether a word may stand in a text that says of more than one.
func saysSeveral(text string) bool {
	text = strings.ToLower(text)
	for _, word := range []string{"markers", "every", "each", "sides", "second", "another"} {
		if strings.Contains(text, word) {
			return true
		}
	}
	return false
}
