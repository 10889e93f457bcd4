package sock

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Defaults of a foot.
const (
	// defaultEase is how much narrower than the foot a sock is, in percent. Source, from
	// memory: A. Budd; P. Gibson-Roberts.
	defaultEase = -10.0
	minEase     = -40.0
	maxEase     = 40.0
	// defaultMultiple lets needles and toes share the round. Common practice.
	defaultMultiple = 4
	// MinFootCm and MaxFootCm bound what is measured of a foot: a doll's, a giant's.
	MinFootCm = 2.0
	MaxFootCm = 100.0
)

// around is how the stitches of a round are asked for.
type around struct {
	stitches    *int
	footCm      *float64
	easePercent *float64
	gauge       *gauge.Gauge
	rule        *gauge.CountRule
}

// rounds is the checked round of a sock.
type rounds struct {
	round  int // 0 where something is wrong with it
	st, rw gauge.Density
	fitted *gauge.FittedCount
}

// vet checks the round and settles its stitches.
func (a around) vet(c *fault.Checks) rounds {
	var r rounds
	c.OneOf(a.stitches != nil, a.footCm != nil, "round_stitches", "foot_circumference_cm")
	c.OptionalCount("", "round_stitches", a.stitches, MinRound, MaxRound)
	c.OptionalNumber("", "foot_circumference_cm", a.footCm, MinFootCm, MaxFootCm)
	c.OptionalNumber("", "ease_percent", a.easePercent, minEase, maxEase)
	c.Needs(a.easePercent != nil, "ease_percent", a.footCm != nil, "foot_circumference_cm")
	if a.gauge != nil || a.footCm != nil {
		r.st, r.rw = gauge.Vet(c, "gauge", a.gauge)
	}
	asked := a.rule
	if asked == nil {
		multiple := defaultMultiple
		asked = &gauge.CountRule{Multiple: &multiple}
	}
	rule := gauge.VetRule(c, "stitch_rule", asked)
	c.Needs(a.rule != nil, "stitch_rule", a.footCm != nil, "foot_circumference_cm")
	switch {
	case a.stitches != nil:
		r.round = *a.stitches
	case a.footCm != nil && c.Sound("gauge", "foot_circumference_cm", "ease_percent", "stitch_rule"):
		um := measure.Micrometres(*a.footCm)
		um += measure.HalfUpDiv(um*measure.ToMillionths(fault.Or(a.easePercent, defaultEase)/100), 1e6)
		if r.fitted = r.st.VetFit(c, um, rule, "stitches", "foot_circumference_cm", "gauge", "stitch_rule"); r.fitted == nil {
			return r
		}
		if r.round = r.fitted.Count; r.round < MinRound || r.round > MaxRound {
			a.unplanned(c, r.round, r.st.Nearest(um))
			r.round = 0
		}
	}
	return r
}

// unplanned refuses a round of so many stitches: by its rule, where the foot alone would have so
// many near as are planned.
func (a around) unplanned(c *fault.Checks, round, near int) {
	planned := "; from " + strconv.Itoa(MinRound) + " to " + strconv.Itoa(MaxRound) + " are planned"
	if four := near / defaultMultiple * defaultMultiple; a.rule != nil && four >= MinRound && near+defaultMultiple <= MaxRound {
		c.Infeasible("makes the round "+report.CountOf(round, "stitches")+planned+"; left out, it has about "+strconv.Itoa(four), "stitch_rule")
		return
	}
	c.Infeasible("the round has "+report.CountOf(round, "stitches")+planned, "foot_circumference_cm", "gauge")
}

// halfway is the remark on a round that two counts were equally near to.
func (r rounds) halfway(list []report.Notice) []report.Notice {
	if r.fitted != nil && r.fitted.Halfway {
		return append(list, gauge.HalfwayNotice("foot_circumference_cm", r.round))
	}
	return list
}

// rowsCm is the height of so many rows; nil without gauge.
func (r rounds) rowsCm(rows int) *float64 {
	if r.rw.IsZero() {
		return nil
	}
	cm := r.rw.SizeCm(rows)
	return &cm
}

// knit is a run of knit stitches, nothing where there are none.
func knit(n int) stitch.Step { return stitch.Do(stitch.Knit, n) }
