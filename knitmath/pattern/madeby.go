package pattern

import "example.com/knitmath/knitmath/stitch"

// madeBy reads "by picking up the thread before the next st and knitting into the back of it"
// after an increase: a thread is a new stitch, working twice into a stitch makes two of it.
func (p *parser) madeBy(s *Step) bool {
	if s.Name != "inc" && s.Operation != stitch.M1 && s.Operation != stitch.KFB {
		return false
	}
	end, thread, twice := p.next+1, false, false
	for ; !p.endsAt(end) && !p.tokens[end].is(",", ";", ")", "]") && end < p.next+40; end++ {
		t := &p.tokens[end]
		thread = thread || t.is("thread", "loop", "bar", "strand", "yarn", "wool", "running")
		twice = twice || t.is("twice") || t.is("front") && p.tokens[end+1].is("and", "&") && p.tokens[end+2].is("back")
	}
	if thread == twice || !p.endsAt(end) && !p.tokens[end].is(",", ";", ")", "]") {
		return false
	}
	p.next = end
	s.Name, s.Operation, s.takes, s.leaves = "", stitch.KFB, 1, 2
	if thread {
		s.Operation, s.takes, s.leaves = stitch.M1, 0, 1
	}
	return true
}
