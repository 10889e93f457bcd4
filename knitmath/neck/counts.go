package neck

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// counts is how the stitches across the shoulders divide.
type counts struct {
	width, neck, shoulder int
	// The fields that they came from.
	widthField, neckField string
	divided               bool // nothing is wrong with them
}

// An amount is an exact number of stitches.
type amount struct{ num, den int64 }

func whole(n int) amount { return amount{int64(n), 1} }

// less is a number less twice another, over, twice another more where it is negative.
func (a amount) less(times int64, b amount) amount {
	if a.den == 1 {
		return amount{a.num*b.den - times*b.num, b.den}
	}
	return amount{a.num - times*b.num*(a.den/b.den), a.den}
}

// A comb is the counts that a rule allows, of one parity if that is asked.
type comb struct {
	step, offset int64
	rounding     measure.Rounding
}

const anyParity = -1

// combOf is false where the rule has no count of the parity.
func combOf(r *gauge.CountRule, parity int) (comb, bool) {
	x := comb{step: 1}
	if r != nil {
		x.step = int64(fault.Or(r.Multiple, 1))
		x.offset = int64(fault.Or(r.Remainder, 0)) + 2*int64(fault.Or(r.Edge, 0))
		x.rounding = r.Rounding
	}
	if parity == anyParity || x.step%2 == 0 && x.offset%2 == int64(parity) {
		return x, true
	}
	if x.step%2 == 0 {
		return x, false
	}
	if x.offset%2 != int64(parity) {
		x.offset += x.step
	}
	x.step *= 2
	return x, true
}

// fit is the count of the comb, at least 1, that the rounding takes for an amount, and
// whether the amount lay half-way between two.
func (x comb) fit(a amount) (count int, halfway bool) {
	up, per := a.num-x.offset*a.den, x.step*a.den
	n := measure.RoundedDiv(up, per, x.rounding)
	least := int64(0)
	if x.offset < 1 {
		least = 1
	}
	halfway = n > least && 2*(n*per-up) == per
	n = min(max(n, least), int64(stitch.MaxStitches)*2)
	return int(min(n*x.step+x.offset, 2*stitch.MaxStitches)), halfway && x.rounding < measure.RoundingUp
}

// allows reports whether a count is one of the comb.
func (x comb) allows(n int) bool { return int64(n) >= x.offset && (int64(n)-x.offset)%x.step == 0 }

// widthFields are what the counts come from.
var widthFields = []string{"width_stitches", "width_cm", "neck_stitches", "neck_cm", "shoulder_stitches", "shoulder_cm",
	"width_rule", "neck_rule", "edge_stitches"}

// settler settles the counts of a question whose gauge is in order.
type settler struct {
	c       *fault.Checks
	in      Input
	st      gauge.Density
	notices []report.Notice
}

// given is an amount in stitches or cm, and its field.
func (s *settler) given(count *int, cm *float64, stem string) (amount, string, bool) {
	switch {
	case count != nil:
		return whole(*count), stem + "_stitches", true
	case cm != nil:
		num, den := s.st.Exact(measure.Micrometres(*cm))
		return amount{num, den}, stem + "_cm", true
	}
	return amount{}, stem + "_stitches", false
}

// fit is a count that a rule allows for an amount, false where there is none; an amount given as a
// count must be one itself, and what says how it comes from its field. Of the others the nearest is taken that goes
// with the counts that follow from it, or the nearest.
func (s *settler) fit(a amount, isCount bool, rule *gauge.CountRule, parity int, what, field, ruleField string, goes follows) (int, bool) {
	x, ok := combOf(rule, parity)
	if !ok {
		s.c.Infeasible("every count of the rule is "+parityWord(1-parity)+", and the neck and the width must both be even or both odd, "+
			"so that the shoulders are equal", ruleField, field)
		return 0, false
	}
	if isCount {
		n := int(a.num)
		if free, _ := combOf(rule, anyParity); !free.allows(n) {
			s.c.Infeasible(fmt.Sprintf("%s %d, which is no count of the rule", what, n), field, ruleField)
			return 0, false
		}
		return n, true
	}
	n, halfway := x.fit(a)
	if other := goes.beside(x, a, n); other != n {
		return other, true
	}
	if halfway {
		s.notices = append(s.notices, gauge.HalfwayNotice(field, n))
	}
	return n, true
}

func parityWord(parity int) string {
	if parity == 0 {
		return "even"
	}
	return "odd"
}

// settle divides the stitches. Of width, neck and shoulder two are known, or the width
// alone, of which the neck then is a third.
func (s *settler) settle() (n counts) {
	if !s.c.Sound(widthFields...) {
		return n
	}
	known := false
	if s.in.WidthStitches != nil || s.in.WidthCm != nil {
		n, known = s.ofWidth()
	} else {
		n, known = s.ofNeck()
	}
	n.divided = known && s.c.Passes(func() { s.vetDivided(&n) })
	return n
}

// ofWidth divides a width into the neck that is given, or that the shoulders leave, or a third.
func (s *settler) ofWidth() (n counts, ok bool) {
	width, widthField, _ := s.given(s.in.WidthStitches, s.in.WidthCm, "width")
	neck, neckField, hasNeck := s.given(s.in.NeckStitches, s.in.NeckCm, "neck")
	shoulder, shoulderField, hasShoulder := s.given(s.in.ShoulderStitches, s.in.ShoulderCm, "shoulder")
	n = counts{widthField: widthField, neckField: neckField}
	if n.width, ok = s.fit(width, s.in.WidthStitches != nil, s.in.WidthRule, anyParity, "is", widthField, "width_rule", s.neckOf()); !ok {
		return n, false
	}
	isCount, what := s.in.NeckStitches != nil, "is"
	switch {
	case hasShoulder:
		neck = whole(n.width).less(2, shoulder)
		isCount, what, n.neckField = s.in.ShoulderStitches != nil, "leaves a neck of", shoulderField
	case !hasNeck:
		neck, n.neckField = amount{int64(n.width), 3}, widthField
	}
	if 2*neck.num < neck.den {
		blamed := []string{widthField}
		if hasShoulder {
			blamed = append(blamed, shoulderField)
		}
		s.c.Infeasible("the shoulders leave no neck of a width of "+report.CountOf(n.width, "stitches"), blamed...)
		return n, false
	}
	n.neck, ok = s.fit(neck, isCount, s.in.NeckRule, n.width%2, what, n.neckField, "neck_rule", follows{})
	return n, ok
}

// ofNeck adds two shoulders to a neck.
func (s *settler) ofNeck() (n counts, ok bool) {
	neck, neckField, _ := s.given(s.in.NeckStitches, s.in.NeckCm, "neck")
	shoulder, shoulderField, _ := s.given(s.in.ShoulderStitches, s.in.ShoulderCm, "shoulder")
	n = counts{widthField: shoulderField, neckField: neckField}
	if n.neck, ok = s.fit(neck, s.in.NeckStitches != nil, s.in.NeckRule, anyParity, "is", neckField, "neck_rule", s.widthOf()); !ok {
		return n, false
	}
	width := whole(n.neck).less(-2, shoulder)
	n.width, ok = s.fit(width, s.in.ShoulderStitches != nil, s.in.WidthRule, n.neck%2, "makes a width of", shoulderField, "width_rule",
		follows{})
	return n, ok
}

// frontOf is the setting of the front, whose width may be another: its shoulders are those of
// the back, and the neck between them has what is left.
func (s *settler) frontOf(p setting) setting {
	wide, field, given := s.given(s.in.FrontWidthStitches, s.in.FrontWidthCm, "front_width")
	if !given || !p.divided {
		return p
	}
	p.widthField, p.neckField = field, field
	p.divided = s.c.Sound("front_width_stitches", "front_width_cm") && s.c.Passes(func() { s.vetFront(&p, wide, field) })
	return p
}

// vetFront settles the neck of a front of a width of its own.
func (s *settler) vetFront(p *setting, wide amount, field string) {
	neck := wide.less(1, whole(2*p.shoulder))
	if neck.num < neck.den {
		s.c.Infeasible("its shoulders are those of the back, and two of "+report.CountOf(p.shoulder, "stitches")+" leave no neck", field)
		return
	}
	p.neck, _ = s.fit(neck, s.in.FrontWidthStitches != nil, s.in.NeckRule, anyParity, "leaves a neck of", field, "neck_rule", follows{})
	p.width = p.neck + 2*p.shoulder
	switch {
	case p.neck > MaxNeckStitches:
		s.c.Infeasible(fmt.Sprintf("leaves a neck of %d stitches; at most %d are planned", p.neck, MaxNeckStitches), field)
	case p.width > stitch.MaxStitches:
		s.c.Infeasible(fmt.Sprintf("comes to %d stitches; at most %d are counted", p.width, stitch.MaxStitches), field)
	}
}

// vetDivided checks that two equal shoulders are left.
func (s *settler) vetDivided(n *counts) {
	both := n.width - n.neck
	n.shoulder = both / 2
	fields := []string{n.widthField, n.neckField}
	if n.widthField == n.neckField {
		fields = fields[:1]
	}
	divided := fmt.Sprintf("a neck of %s leaves %d of a width of %d, ", report.CountOf(n.neck, "stitches"), max(both, 0), n.width)
	switch {
	case n.width > stitch.MaxStitches:
		s.c.Infeasible(fmt.Sprintf("the width is %d stitches; at most %d are counted", n.width, stitch.MaxStitches), n.widthField)
	case n.neck > MaxNeckStitches:
		s.c.Infeasible(fmt.Sprintf("the neck is %d stitches; at most %d are planned", n.neck, MaxNeckStitches), n.neckField)
	case both < 2*leastStep(s.in):
		s.c.Infeasible(divided+fmt.Sprintf("and each shoulder takes %d at least", leastStep(s.in)), fields...)
	case both%2 != 0:
		s.c.Infeasible(divided+"which make no two equal shoulders", fields...)
	}
}
