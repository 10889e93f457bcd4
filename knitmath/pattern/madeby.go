package pattern

import "example.com/knitmath/knitmath/stitch"

// madeBy reads "by picking up the thread before the next st and knitting into the back of it"
// after an increase: a thread is a new stitch, working twice into a stitch makes two of it.
func (p *parser) madeBy(s *Step) bool {
	if s.Name != "inc" && s.Operation != stitch.M1 && s.Operation != stitch.KFB {
		return false
	}
	end, thread, twice := p.madeHow()
	if thread == twice || !p.endsAt(end) && !p.tokens[end].among(", ; ) ]") {
		return false
	}
	p.next = end
	s.Name, s.Operation, s.takes, s.leaves = "", stitch.KFB, 1, 2
	if thread {
		s.Operation, s.takes, s.leaves = stitch.M1, 0, 1
	}
	return true
}

// madeHow looks to the end of the clause for what an increase is made of: a thread, or one stitch
// worked twice.
func (p *parser) madeHow() (end int, thread, twice bool) {
	for end = p.next + 1; end < p.next+40 && !p.endsAt(end) && !p.tokens[end].among(", ; ) ]"); end++ {
		t := &p.tokens[end]
		thread = thread || t.among("thread loop bar strand yarn wool running")
		twice = twice || t.is("twice") || t.is("front") && p.tokens[end+1].is("and", "&") && p.tokens[end+2].is("back")
	}
	return end, thread, twice
}

// anotherStays reports whether a sentence up to token end says that another piece like the one just
// put aside is made, and stays on the needle: "Make a second leg the same, but do not break yarn".
func (p *parser) anotherStays(i, end int) bool {
	if !p.tokens[i].is("make", "knit", "work") || !p.anyOf(i+1, min(i+4, end), "second", "another", "other") {
		return false
	}
	for n := i; n < end; n++ {
		if p.phraseEnd(n, staysOn) != 0 {
			return true
		}
	}
	return false
}

var staysOn = wordings("do not break", "do not cut", "don't break", "don't cut", "without breaking", "without cutting", "leave it on",
	"leave sts on needle", "leave the sts on needle", "leave the sts on the needle", "leaving it on", "leaving the sts on", "keep it on",
	"but leave on")
