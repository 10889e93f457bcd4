package armhole

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// How far a measure is moved in search of one with which the edges go together.
const (
	mostMoved  = MaxWidth / sleeveStep // times
	mostSolved = 10
	triesMoved = 4
	sleeveStep = 2 // stitches
	rowStep    = 2
	promising  = 1.2 // the slope of a cap beyond which few have an edge as long as their curve
)

// A move changes one measure of a question.
type move struct {
	field string
	step  int
	ask   func(in *Input, was settled, by int)
	words func(s settled, was settled) string
	bound func(was settled, by int) bool // whether a rule of the caller's lets it be moved so far; nil if none does not
	cm    func(in *Input) **float64      // where it is given in cm, if it is
	size  func(s, was settled) float64   // how many cm it has then
}

// moves are what may be moved.
func (s settled) moves() []move {
	list := []move{
		{s.sleeveField, sleeveStep, askSleeve, settled.sleeveMoved, settled.sleeveAllowed,
			func(in *Input) **float64 { return &in.UpperArmCm }, settled.armCm},
		s.depthMove(),
	}
	if s.in.CapTopStitches != nil || s.in.CapTopCm != nil {
		field := "cap_top_stitches"
		if s.in.CapTopCm != nil {
			field = "cap_top_cm"
		}
		list = append(list, move{field: field, step: sleeveStep, ask: askTop, words: settled.topMoved, bound: settled.topAllowed})
	}
	if s.capRows > 0 && s.rule <= CapHeightRuleFree {
		list = append(list, move{s.heightField, rowStep, askHeight, settled.capMoved, nil,
			func(in *Input) **float64 { return &in.CapHeightCm }, settled.capCm})
	}
	return list
}

// depthMove moves the depth of the armholes.
func (s settled) depthMove() move {
	return move{s.depthField, rowStep, askDepth, settled.depthMoved, nil,
		func(in *Input) **float64 { return &in.ArmholeDepthCm }, settled.depthCm}
}

// armCm is the arm that the sleeve is for, with the ease that was asked for.
func (s settled) armCm(was settled) float64 {
	wide := s.st.SizeCm(s.sleeve)
	if ease := was.in.SleeveEaseCm; ease != nil {
		return wide - *ease
	}
	return max(wide-DefaultEase, wide/(1+easeShare))
}

func (s settled) depthCm(settled) float64 { return s.rw.SizeCm(s.depth + s.lowered) }
func (s settled) capCm(settled) float64   { return s.rw.SizeCm(s.capRows) }

// sleeveAllowed and topAllowed report whether a count so many more is one that the rule allows, by which
// the count was found.
func (s settled) sleeveAllowed(by int) bool { return s.rules.sleeve.Allows(s.sleeve + by) }
func (s settled) topAllowed(by int) bool    { return s.rules.top.Allows(s.top + by) }

func askSleeve(in *Input, was settled, by int) {
	in.UpperArmCm, in.SleeveEaseCm, in.SleeveRule, in.SleeveStitches = nil, nil, nil, new(was.sleeve+by)
}

func askDepth(in *Input, was settled, by int) {
	in.ArmholeDepthCm, in.ArmholeDepthRows = nil, new(was.depth+was.lowered+by)
}

func askTop(in *Input, was settled, by int) {
	in.CapTopCm, in.CapTopStitches, in.TopRule = nil, new(was.top+by), nil
}

func askHeight(in *Input, was settled, by int) {
	in.CapHeightCm, in.CapHeightRows = nil, new(was.capRows+by)
}

// refuse says why there is no plan.
func (s settled) refuse(c *fault.Checks) {
	alone := s // whatever else has been tried
	alone.budget = new(s.in.Cost() * unitsAStep)
	if s.capRows == noCap {
		s.refuseRule(c)
		return
	}
	if !alone.armholes() {
		alone.refuseArmhole(c)
		return
	}
	s.refuseCap(c)
}

// refuseRule says that a rule leaves no cap, and what would leave one.
func (s settled) refuseRule(c *fault.Checks) {
	detail := "the rule leaves a cap of " + report.CountOf(s.ruleRows(), "rows") + ", and from " + strconv.Itoa(leastCapRows) + " to " +
		strconv.Itoa(MaxDepth) + " are planned"
	fields := []string{s.heightField, s.depthField}
	var ways []string
	if moved, ok := s.moved(s.depthMove()); ok {
		ways = append(ways, moved.depthMoved(s))
	}
	c.Infeasible(detail+would(append(ways, s.unruled()...)), fields...)
}

// unruled is a cap that is not by the rule, in deeper or less deep armholes if it must be.
func (s settled) unruled() []string {
	s.in.CapHeightRule, s.rule, s.capRows = 0, CapHeightRuleFree, 0
	if found, ok := s.solve(); ok {
		given := s // as somebody asks it who reads the rows
		given.capRows = found.top.rows
		if _, ok := given.solve(); ok {
			return []string{"a cap of " + report.CountOf(found.top.rows, "rows") + ", not by the rule,"}
		}
		return []string{"a cap not by the rule"}
	}
	if moved, ok := s.moved(s.depthMove()); ok {
		return []string{moved.depthMoved(s) + " and a cap not by the rule"}
	}
	return nil
}

// would is "; this, or that would do".
func would(ways []string) string {
	if len(ways) == 0 {
		return ""
	}
	return "; " + strings.TrimSuffix(strings.Join(ways, ", or "), ",") + " would do"
}

// refuseCap says that no cap goes into the armholes, and which measure to move and by how
// much; each remedy was tried.
func (s settled) refuseCap(c *fault.Checks) {
	var fields, ways []string
	for _, m := range s.moves() {
		fields = append(fields, m.field)
		if moved, ok := s.moved(m); ok {
			ways = append(ways, m.words(moved, s))
		}
	}
	if s.rule > CapHeightRuleFree {
		fields = append(fields, s.heightField)
		ways = append(ways, s.unruled()...)
	}
	c.Infeasible("no cap's edge is 0 to 5 % longer than those of the armholes, into which it is sewn"+would(ways), fields...)
}

// moved is the question with one measure moved as little as helps, up or down, asked as a
// caller would. What curves alone tell to be hopeless is not worked out; where what they
// promise fails, by how much they promised too much is remembered of the next.
func (s settled) moved(m move) (settled, bool) {
	solved := 0
	longer := new(*s.longer)
	for n := m.step; n <= mostMoved*m.step && solved < mostSolved; n += m.step {
		for _, way := range []int{-n, n} {
			if m.bound != nil && !m.bound(s, way) {
				continue
			}
			in := s.in
			m.ask(&in, s, way)
			var c fault.Checks
			t := vet(&c, in, false)
			if t.longer = longer; c.Err() != nil || !t.hopeful() {
				continue
			}
			t.tries, t.budget = triesMoved, s.budget
			solved++
			if _, ok := t.solve(); ok && t.planned() && s.measured(m, &t) {
				return t, true
			}
		}
	}
	return s, false
}

// measured says by how many cm a measure that is given so has been moved, where whoever turns it by what is
// printed comes to the same counts; false where a rule on the sleeve is left with no way to come to it.
func (s settled) measured(m move, t *settled) bool {
	if m.cm == nil || *m.cm(&s.in) == nil {
		return true
	}
	in, given := s.in, **m.cm(&s.in)
	by := s.unit.Printed(m.size(*t, s) - given)
	*m.cm(&in) = new(given + by)
	var c fault.Checks
	again := vet(&c, in, false)
	if c.Err() == nil && again.sleeve == t.sleeve && again.depth == t.depth && again.lowered == t.lowered &&
		again.capRows == t.capRows {
		t.movedCm = by
		return true
	}
	return m.field != "upper_arm_cm" || s.in.SleeveRule == nil
}

// planned reports whether a question is planned as a caller asks it: with as many caps tried as
// then, and without what is known here of how long edges are.
func (s settled) planned() bool {
	var c fault.Checks
	asked := vet(&c, s.in, true)
	asked.budget = s.budget
	_, ok := asked.solve()
	return ok
}

// hopeful reports whether there is a cap whose curve is about as long as the armholes'.
func (s settled) hopeful() bool {
	if s.capRows == noCap {
		return false
	}
	around := s.around(s.backLost) + s.around(s.frontLost)
	shortest, longest := s.height(leastCapRows).guess(usualSlope), s.height(s.depth).guess(usualSlope)
	if s.capRows > 0 {
		h := s.height(s.capRows)
		shortest, longest = h.guess(straightest), h.guess(promising)
	}
	return excess(shortest, around)+*s.longer <= MaxExcess && excess(longest, around)+*s.longer >= MinExcess
}

// around is about how long the edge of a back or a front is.
func (s settled) around(lost int) float64 {
	rows := s.shapingRows
	return s.st.SizeCm(s.underarm) + s.armholePath(lost, rows).Length() + s.rw.SizeCm(1) +
		s.rw.SizeCm(s.depth-rows)
}
