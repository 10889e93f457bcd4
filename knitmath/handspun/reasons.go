package handspun

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// The reasons of the notices.
const (
	// Single: one ply is not balanced. Field is plies.
	Single report.Reason = "SINGLE"
	// UnequalPlies: one is more than half as thick again as another. Field is plies.
	UnequalPlies report.Reason = "UNEQUAL_PLIES"
	// MixedTwist: the singles are not all spun the same way. Field is plies.
	MixedTwist report.Reason = "MIXED_TWIST"
	// NotBalanced: the ply twist is outside of the balanced range. Field is
	// ply_twist_per_cm or ply_treadles_per_draft.
	NotBalanced report.Reason = "NOT_BALANCED"
	// LittleTwist: an angle below littleAngle. Field is the ply.
	LittleTwist report.Reason = "LITTLE_TWIST"
	// MuchTwist: an angle above muchAngle, of a single or of the plying. Field is the ply,
	// ply_twist_per_cm, ply_treadles_per_draft, or plies where they are plied to balance.
	MuchTwist report.Reason = "MUCH_TWIST"
	// Unspun: plying takes all the turns out of one of the plies. Field is the ply.
	Unspun report.Reason = "UNSPUN"
	// BeyondBands: the yarn is finer or thicker than those whose usual gauge is known.
	// Field is plies.
	BeyondBands report.Reason = "BEYOND_BANDS"
	// OffGauge: the yarn is not of the usual thickness for the gauge. Field is gauge or
	// stitch_gauge.
	OffGauge report.Reason = "OFF_GAUGE"
)

const (
	// littleAngle is the least of angleCited; muchAngle is beyond its most, for socks.
	littleAngle, muchAngle = 15.0, 40.0
	// unequal is how much thicker one ply may be. Common practice.
	unequal = 1.5
)

// remark adds the notices.
func (q *spinning) remark(out *Plan) {
	add := func(reason report.Reason, field, text string) {
		out.Notices = append(out.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	least, most := out.Plies[0].Tex, out.Plies[0].Tex
	for _, p := range out.Plies {
		least, most = min(least, p.Tex), max(most, p.Tex)
	}
	if q.count == 1 {
		add(
			Single,
			"plies",
			"is one single; it is not balanced, and what is knit of it in stockinette leans to one side: set the twist, or ply it",
		)
	}
	if most > unequal*least {
		add(UnequalPlies, "plies", "differ by more than half; the thinner winds around the thicker, and balance is a guess: sample it")
	}
	if out.mixed {
		add(MixedTwist, "plies", "are not all spun the same way; plying takes twist out of some and adds it to the others")
	}
	switch {
	case out.neverBalanced():
		add(NotBalanced, q.plyField(), "holds plies together whose turns undo one another, so that no plying balances them: "+
			"spin all of them the same way")
	case out.balance() != inBalance:
		add(NotBalanced, q.plyField(), "is outside of "+out.balancedWords()+", where yarns are balanced")
	}
	q.remarkTwist(out, add)
	if out.MetresPer100G < yarn.LeastUsualMetres || out.MetresPer100G > yarn.MostUsualMetres {
		beyond := "lace is knit far more loosely"
		if out.MetresPer100G < yarn.LeastUsualMetres {
			beyond = "only a swatch tells of a rope"
		}
		add(BeyondBands, "plies", "make a yarn outside of "+out.thickness(yarn.LeastUsualMetres, yarn.MostUsualMetres)+
			", where usual gauges are known; the one given is a guess, and "+beyond)
	}
	if out.Fits > FitFits {
		field := "gauge"
		if q.in.StitchGauge != nil {
			field = "stitch_gauge"
		}
		add(OffGauge, field, out.fitWords())
	}
}

// remarkTwist adds the notices on how steeply singles and yarn are twisted.
func (q *spinning) remarkTwist(out *Plan, add func(reason report.Reason, field, text string)) {
	for i, p := range out.Plies {
		switch a := p.Twist.AngleDegrees; {
		case a < littleAngle:
			add(LittleTwist, fault.Index("plies", i), "has an angle of "+measure.Decimal(a, 0)+" degrees; it may drift apart, and pills")
		case a > muchAngle:
			add(
				MuchTwist,
				fault.Index("plies", i),
				"has an angle of "+measure.Decimal(a, 0)+" degrees; it will be hard, and kinks until it is plied or set"+yarn.BeyondRound(a),
			)
		}
	}
	if a := out.Twist.AngleDegrees; q.count > 1 && a > muchAngle {
		field, give := "plies", "plied to balance have"
		if out.plyAsked {
			field, give = q.plyField(), "gives the plying"
		}
		add(MuchTwist, field, give+" an angle of "+measure.Decimal(a, 0)+" degrees; the yarn will be hard as a cord, and short: "+
			"fewer turns, or softer singles to begin with"+yarn.BeyondRound(a))
	}
	for i, p := range out.Plies {
		if p.LeftPerCm != nil && *p.LeftPerCm <= 0 {
			add(Unspun, fault.Index("plies", i), "has "+measure.Decimal(p.Twist.PerCm, 2)+" turns to the cm, and plying takes out "+
				measure.Decimal(out.Twist.PerCm, 2)+": it lies straight or comes apart; spin it with more, or ply with less")
		}
	}
}
