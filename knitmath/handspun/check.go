package handspun

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

// vet checks the whole question and reads the counts.
func (q *spinning) vet(c *fault.Checks) {
	in := q.in
	q.vetPlies(c)
	fault.Enum(c, "", "spinning", in.Spinning, yarn.SpinningSilk)
	c.OptionalNumber("", "twist_angle_degrees", in.TwistAngleDegrees, MinAngle, MaxAngle)
	c.OptionalNumber("", "ply_twist_per_cm", in.PlyTwistPerCm, MinTwist, MaxTwist)
	q.vetTreadles(c, "", "ply_treadles_per_draft", "ply_twist_per_cm", in.PlyTreadlesPerDraft, in.PlyTwistPerCm)
	c.OptionalNumber("", "ply_contraction_percent", in.PlyContractionPercent, 0, MaxContraction)
	if q.count == 1 && c.Sound("plies", "ply_twist_per_cm") {
		c.Needs(in.PlyTwistPerCm != nil, "ply_twist_per_cm", false, "two plies or more")
		c.Needs(in.PlyTreadlesPerDraft != nil, "ply_treadles_per_draft", false, "two plies or more")
	}
	q.vetGauge(c)
	c.AtMostOne(in.WantedM != nil, in.WantedG != nil, "wanted_m", "wanted_g")
	c.OptionalNumber("", "wanted_m", in.WantedM, 1, MaxWanted)
	c.OptionalNumber("", "wanted_g", in.WantedG, 1, MaxWanted)
	if l := in.Losses; l != nil {
		c.Number("losses", "scouring_percent", l.ScouringPercent, 0, MaxScouring)
		c.OptionalNumber("losses", "preparing_percent", l.PreparingPercent, 0, MaxPreparing)
		c.OptionalNumber("losses", "spinning_percent", l.SpinningPercent, 0, MaxSpinning)
	}
	c.OptionalNumber("", "bobbin_g", in.BobbinG, 1, MaxBobbinG)
	vetWheel(c, "wheel", in.Wheel)
	q.vetTurns(c)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
}

// vetGauge checks the gauge, or the stitches that stand in its place.
func (q *spinning) vetGauge(c *fault.Checks) {
	s := q.in.StitchGauge
	c.AtMostOne(q.in.Gauge != nil, s != nil, "gauge", "stitch_gauge")
	if q.in.Gauge != nil {
		q.st, _ = gauge.Vet(c, "gauge", q.in.Gauge)
	}
	if s == nil {
		return
	}
	c.RequiredNumber("stitch_gauge", "stitches", s.Stitches, gauge.MinCount, gauge.MaxCount)
	c.OptionalNumber("stitch_gauge", "over_cm", s.OverCm, measure.MinCm, gauge.MaxOverCm)
	if c.Sound("stitch_gauge") {
		q.st = gauge.NewDensity(s.Stitches, fault.Or(s.OverCm, gauge.DefaultOverCm))
	}
}

func (q *spinning) vetPlies(c *fault.Checks) {
	if len(q.in.Plies) == 0 {
		c.Add("plies", fault.ReasonRequired, "is empty; give the singles")
	}
	c.Items("", "plies", len(q.in.Plies), MaxPlies)
	if !c.Sound("plies") {
		return
	}
	for i, p := range q.in.Plies {
		path := fault.Index("plies", i)
		c.Text(path, "name", p.Name)
		count := fault.Join(path, "count")
		thick, ok := yarn.VetCount(c, count, p.Count)
		if tex := thick.Tex.Float(); ok && (tex < MinTex || tex > MaxTex) {
			c.Infeasible("is "+measure.Decimal(tex, 3)+" tex; singles of 1 to 10000 tex are planned", count)
		}
		if ok && thick.Plies > 1 {
			c.Infeasible("is of a plied yarn; give each of its singles, and times", count)
		}
		c.OptionalCount(path, "times", p.Times, 1, MaxPlies)
		c.OptionalNumber(path, "twist_per_cm", p.TwistPerCm, MinTwist, MaxTwist)
		q.vetTreadles(c, path, "treadles_per_draft", "twist_per_cm", p.TreadlesPerDraft, p.TwistPerCm)
		fault.Enum(c, path, "direction", p.Direction, yarn.TwistDirectionZ)
		q.tex = append(q.tex, thick.Tex)
		q.asbestos = q.asbestos || thick.System == yarn.CountSystemGlassCut
		q.count += max(0, min(fault.Or(p.Times, 1), MaxPlies))
	}
	if q.count > MaxPlies && c.Sound("plies") {
		c.Add("plies", fault.ReasonTooMany, "are %d in all; at most %d are plied", q.count, MaxPlies)
	}
}

func vetWheel(c *fault.Checks, field string, w *Wheel) {
	if w == nil {
		return
	}
	ratio, drive, whorl := fault.Join(field, "ratio"), fault.Join(field, "drive_wheel_cm"), fault.Join(field, "whorl_cm")
	c.OneOf(w.Ratio != nil, w.DriveWheelCm != nil || w.WhorlCm != nil, ratio, drive)
	c.OptionalNumber(field, "ratio", w.Ratio, 1, MaxRatio)
	c.Needs(w.DriveWheelCm != nil, drive, w.WhorlCm != nil, whorl)
	c.Needs(w.WhorlCm != nil, whorl, w.DriveWheelCm != nil, drive)
	c.OptionalNumber(field, "drive_wheel_cm", w.DriveWheelCm, MinDriveCm, MaxDriveCm)
	c.OptionalNumber(field, "whorl_cm", w.WhorlCm, MinWhorl, MaxWhorl)
	if w.DriveWheelCm != nil && w.WhorlCm != nil && c.Sound(drive, whorl) && *w.WhorlCm >= *w.DriveWheelCm {
		c.Infeasible("the whorl must be smaller than the drive wheel", drive, whorl)
	}
	c.OptionalNumber(field, "draft_cm", w.DraftCm, 1, MaxDraftCm)
	c.OptionalNumber(field, "slip_percent", w.SlipPercent, 0, MaxSlip)
	c.OptionalNumber(field, "treadles_per_minute", w.TreadlesPerMinute, MinTreadles, MaxTreadles)
}

// spinning is a checked question.
type spinning struct {
	in    Input
	tex   []yarn.Tex
	count int // plies in all
	// asbestos says that a single is counted as glass and asbestos are.
	asbestos bool
	st       gauge.Density
	// contraction is what plying makes the singles shorter by, in percent, exactly.
	contraction *big.Rat
}

// together are the plies side by side, before plying makes them shorter, exactly.
func (q *spinning) together() yarn.Tex {
	var sum yarn.Tex
	for i, t := range q.tex {
		sum = sum.With(t.Strands(fault.Or(q.in.Plies[i].Times, 1)))
	}
	return sum
}
