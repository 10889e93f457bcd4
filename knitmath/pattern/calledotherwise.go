package pattern

import "strings"

// calledOtherwise asks about a row that its label calls an increase, and that only decreases, or the other way round: "Inc rnd: K1,
// k2tog, k to last 3 sts, ssk, k1". Which of the two was meant no count can tell.
func (p *parser) calledOtherwise(line *Line, label span) {
	if p.onlyRows || line.info.kind != lineRow {
		return
	}
	name := strings.ToLower(line.Label)
	inc, dec := strings.Contains(name, "inc"), strings.Contains(name, "dec")
	grows, shrinks := changesOf(line.Steps)
	if inc == dec || grows == shrinks || inc == grows {
		return
	}
	text := "called a decrease, and its steps only increase: which is meant?"
	if inc {
		text = "called an increase, and its steps only decrease: which is meant?"
	}
	p.ask(ReasonAmbiguous, label, text)
}

// changesOf reports whether some of the steps add stitches, and whether some take any away.
func changesOf(steps []Step) (grows, shrinks bool) {
	for i := range steps {
		s := &steps[i]
		more, fewer := s.Steps == nil && s.leaves > s.takes, s.Steps == nil && s.takes > s.leaves
		if s.IntoOneStitch { // "(k1, yo, k1) in next st"
			more = true
		} else if s.Steps != nil {
			more, fewer = changesOf(s.Steps)
		}
		grows, shrinks = grows || more, shrinks || fewer
	}
	return grows, shrinks
}
