package pattern

import "example.com/knitmath/knitmath/draft"

// newStitches makes "make 4 (5, 6) new sts", as some booklets say, "cast on 4 (5, 6) more sts": the verb and the "new" of a number of
// stitches are replaced.
func (s *scanner) newStitches() {
	n := len(s.tokens) - 1
	if n < 3 || !s.tokens[n].stitches() || !s.tokens[n-1].is("new", "extra") {
		return
	}
	for i := n - 2; i >= 0 && i > n-60; i-- {
		t := &s.tokens[i]
		_, number := draft.Number(t.text)
		switch {
		case t.kind == tokenNumber, t.kind == tokenMark && t.among("( ) [ ] , / : -"), t.kind == tokenWord && number:
		case t.among("make create add form making creating adding") && i < n-2:
			s.tokens[n-1].text, t.text = "more", "co"
			return
		default:
			return
		}
	}
}
