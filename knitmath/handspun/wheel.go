package handspun

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// ratio is the turns of the flyer to one of the drive wheel, of a checked wheel.
func (w *Wheel) ratio() float64 {
	if w.Ratio != nil {
		return *w.Ratio
	}
	return *w.DriveWheelCm / *w.WhorlCm
}

// perTreadle is the turns to the cm that one treadle puts into a draft:
//
//	turns = ratio * (1 - slip) / length drawn
//
// A turn of the drive wheel to a treadle; slip is what band and bobbin lose of it. What
// the twist makes the draft shorter by is taken up by the bobbin and not in it.
func (w *Wheel) perTreadle() float64 {
	return w.ratio() * (1 - fault.Or(w.SlipPercent, DefaultSlip)/100) / fault.Or(w.DraftCm, DefaultDraftCm)
}

// vetTreadles checks treadles that were counted, from which a twist follows that is not
// given by itself.
func (q *spinning) vetTreadles(c *fault.Checks, path, name, twist string, treadles, perCm *float64) {
	field := fault.Join(path, name)
	c.OptionalNumber(path, name, treadles, MinTreadled, MaxTreadled)
	c.AtMostOne(treadles != nil, perCm != nil, field, fault.Join(path, twist))
	c.Needs(treadles != nil, field, q.in.Wheel != nil, "wheel")
}

// vetTurns checks that the turns which follow from treadles are ones that are planned with,
// the wheel and the treadles themselves being in order.
func (q *spinning) vetTurns(c *fault.Checks) {
	check := func(path string, treadles *float64) {
		field := fault.Join(path, "treadles_per_draft")
		if path == "" {
			field = "ply_treadles_per_draft"
		}
		if treadles == nil || q.in.Wheel == nil || !c.Sound("wheel", field) {
			return
		}
		if turns := *treadles * q.in.Wheel.perTreadle(); turns < MinTwist || turns > MaxTwist {
			c.Infeasible("makes "+measure.Decimal(turns, 3)+" turns to the cm on this wheel; 0.05 to 50 are planned", field)
		}
	}
	for i, p := range q.in.Plies[:min(len(q.in.Plies), MaxPlies)] {
		check(fault.Index("plies", i), p.TreadlesPerDraft)
	}
	check("", q.in.PlyTreadlesPerDraft)
}

// plyField is where the question says how the yarn is plied; empty where it leaves it open.
func (q *spinning) plyField() string {
	switch {
	case q.in.PlyTwistPerCm != nil:
		return "ply_twist_per_cm"
	case q.in.PlyTreadlesPerDraft != nil:
		return "ply_treadles_per_draft"
	}
	return ""
}

// wheel works out treadles: each turn of the drive wheel puts in as many turns as the
// ratio says, less slip.
func (q *spinning) wheel(out *Plan) {
	w := q.in.Wheel
	if w == nil {
		return
	}
	ratio, perTreadle, draft := w.ratio(), w.perTreadle(), fault.Or(w.DraftCm, DefaultDraftCm)
	out.WheelRatio = &ratio
	all := 0.0
	for i := range out.Plies {
		p := &out.Plies[i]
		treadles := p.Twist.PerCm / perTreadle
		p.TreadlesPerDraft = &treadles
		if p.LengthM != nil {
			all += *p.LengthM * 100 / draft * treadles
		}
	}
	if q.count > 1 {
		treadles := out.Twist.PerCm / perTreadle
		out.TreadlesPerDraft = &treadles
		if out.YarnM != nil {
			all += *out.YarnM * 100 / draft * treadles
		}
	}
	if out.YarnM != nil {
		hours := all / fault.Or(w.TreadlesPerMinute, DefaultTreadles) / 60
		out.Hours = &hours
	}
}
