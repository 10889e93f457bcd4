package pattern

import "example.com/knitmath/knitmath/draft"

// allWorkedEnd is the index after "until all heel sts have been worked", "until no shawl sts remain", "until only edging sts
// are left" at token i: how many there are then is what the rows come to; 0 if that is not what stands there.
func (p *parser) allWorkedEnd(i int) int {
	if !p.acceptedAt(&i, "until", "till", "til") {
		return 0
	}
	p.acceptedAt(&i, "there", "are")
	all := p.acceptedAt(&i, "all", "every", "each", "the")
	if !all && !p.acceptedAt(&i, "no", "none", "only") {
		return 0
	}
	if i = p.worksStitches(i); i == 0 {
		return 0
	}
	first := i
	for p.acceptedAt(&i, "have", "has", "are", "is", "been", "worked", "used", "in", "up", "off", "remain", "remains", "rem", "left", "at",
		"each", "side", "sides", "both", "decreased", "consumed", "incorporated", "taken", "joined", "knit", "gone", "completed", "dec'd",
		"picked", "lifted", "bound", "to", "be", "unworked", "away", "finished", "done", "exhausted") {
	}
	if i == first || !p.endsAt(i) && !p.tokens[i].among(", ; - ( :") {
		return 0
	}
	return i
}

// worksStitches is the index after "the shawl sts", "sts of the body", "remaining heel stitches" at token i; 0 if that is not
// what stands there.
func (p *parser) worksStitches(i int) int {
	for of := false; ; of = true {
		for t := &p.tokens[i]; t.is(stitchesOf...) || t.kind == tokenWord && draft.Part(t.text); t = &p.tokens[i] {
			i++
		}
		if of {
			return i
		}
		if !p.tokens[i].stitches() && !p.tokens[i].is("wraps") {
			return 0
		}
		i++
	}
}

// stitchesOf are words before "sts" and after "sts of" that say which stitches are worked off one by one.
var stitchesOf = []string{"the", "more", "rem", "remaining", "of", "live", "held", "wrapped", "double", "other", "on", "from", "your",
	"these", "unworked", "original", "heel", "toe", "side", "shawl", "edging", "edge", "border", "blanket", "body", "needle", "needles",
	"wrap", "scarf", "main", "piece", "centre", "center", "cushion", "top", "neck", "back", "holder"}
