package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// question is a checked question on yarn.
type question struct {
	in     EstimateInput
	st, rw gauge.Density
	pieces []piece
	shares []float64
	// low, likely and high, as strands, and what is worked besides: known after work.
	loop      [3]strands
	trimmings Range
}

// colours is how many colours are carried, at least one.
func (q *question) colours() int { return max(1, len(q.shares)) }

// slipped is the share of the stitches that are slipped.
func (q *question) slipped() float64 { return fault.Or(q.in.SlippedPercent, 0) / 100 }

// at is the yarn of a piece by the low, likely or high figure of the loop constant, of its
// pattern factor and of the slack of floats, its gauge being off.
func (q *question) at(p piece, figure int, off misgauge) strands {
	wales, courses := off.of(p)
	stitches, _ := p.measure(off)
	loops := stitches * loopLength(loopConstants[q.in.State].at(figure), wales*courses) * p.factor.at(figure)
	return strands{loops / 100, stitches / wales * q.slack().at(figure) / 100}.as(q.in.ColourWork, q.slipped())
}

// work does both methods and adds the reserve.
func (q *question) work() Estimate {
	perCm2 := q.st.PerCm() * q.rowsPerCm()
	ks := loopConstants[q.in.State]
	out := Estimate{
		LoopLengthCm: loopLength(ks.Likely, perCm2), LoopConstant: ks.Likely, RowsToStitch: q.rowsPerCm() / q.st.PerCm(),
		Pieces: make([]PieceYarn, len(q.pieces)),
		unit:   q.in.DisplayUnit, state: q.in.State, lot: q.in.DyeLot, derived: q.in.StitchGauge != nil, offBy: q.in.GaugeOffPercent,
		work: q.in.ColourWork,
	}
	if q.in.floats() {
		out.slack = q.slack()
	}
	m := q.colours()
	for i, p := range q.pieces {
		stitches, area := p.measure(asGiven)
		yarn := q.at(p, likely, asGiven)
		q.loop[likely].add(yarn)
		out.Pieces[i] = PieceYarn{p.name, stitches, area, yarn.total(m),
			loopLength(ks.Likely, p.wales*p.courses) * p.factor.Likely, ks.Likely * p.factor.Likely * p.factor.Likely}
		out.Stitches += stitches
		out.AreaCm2 += area
		out.garter = out.garter || p.fabric == StitchPatternGarter
		out.ranged = out.ranged || p.derived
		out.factors = out.factors || p.factor.Low != p.factor.High && p.fabric != StitchPatternGarter
	}
	for i, corner := range q.corners() {
		var least, most strands
		for _, p := range q.pieces {
			least.add(q.at(p, low, corner))
			most.add(q.at(p, high, corner))
		}
		if i == 0 || least.total(m) < q.loop[low].total(m) {
			q.loop[low] = least
		}
		if i == 0 || most.total(m) > q.loop[high].total(m) {
			q.loop[high] = most
		}
	}
	q.trim(&out)
	length := Range{q.loop[low].total(m), q.loop[likely].total(m), q.loop[high].total(m)}.plus(q.trimmings)
	out.ByLoop = MethodResult{LengthM: &length, RangeCovers: out.loopCovers()}
	if p := q.in.PutUp; p != nil {
		mass := out.ByLoop.LengthM.times(p.BallG / p.BallM)
		out.ByLoop.MassG = &mass
	}
	q.bySwatch(&out)
	q.choose(&out)
	return out
}

// swatchCited is the source of an answer by swatch.
var swatchCited = report.Source{Figure: "by swatch", Citation: "grams = area * swatch mass / swatch area",
	Status: report.SourceStatusOwnDerivation}

// area is the area of all pieces in cm2: those that are counted in stitches are as large as
// the gauge makes them, which may be off, and those in cm are as they are.
func (q *question) area(likely float64) Range {
	r := Range{likely, likely, likely}
	for _, corner := range q.corners() {
		area := 0.0
		for _, p := range q.pieces {
			_, a := p.measure(corner)
			area += a
		}
		r.Low, r.High = min(r.Low, area), max(r.High, area)
	}
	return r
}

// bySwatch is the mass of the swatch for every piece of its size. Its range is half a step of
// the scale either way, its size being off by what is said, and counted pieces being larger or
// smaller than by the gauge, as far as that is off.
func (q *question) bySwatch(out *Estimate) {
	s := q.in.Swatch
	if s == nil {
		return
	}
	half := s.scaleStepG() / 2
	r := s.RulerStepCm
	perCm2 := Range{(s.MassG - half) / ((s.WidthCm + r) * (s.HeightCm + r)), s.MassG / (s.WidthCm * s.HeightCm),
		(s.MassG + half) / ((s.WidthCm - r) * (s.HeightCm - r))}
	area := q.area(out.AreaCm2)
	mass := Range{perCm2.Low * area.Low, perCm2.Likely * area.Likely, perCm2.High * area.High}
	if p := q.in.PutUp; p != nil {
		mass = mass.plus(q.trimmings.times(p.BallG / p.BallM))
	}
	result := MethodResult{MassG: &mass, RangeCovers: out.swatchCovers(r, area, q.in.PutUp != nil)}
	if p := q.in.PutUp; p != nil {
		length := mass.times(p.BallM / p.BallG)
		result.LengthM = &length
	}
	out.BySwatch = &result
}

// choose takes each figure from the swatch where it can say, from the loop
// otherwise, and adds the reserve.
func (q *question) choose(out *Estimate) {
	reserve := 1 + fault.Or(q.in.ReservePercent, DefaultReservePercent)/100
	length, mass := out.ByLoop.LengthM, out.ByLoop.MassG
	if s := out.BySwatch; s != nil {
		mass = s.MassG
		if s.LengthM != nil {
			length = s.LengthM
		}
	}
	out.LengthM, out.reserved = length.times(reserve), reserve > 1
	if mass != nil {
		m := mass.times(reserve)
		out.MassG = &m
	}
}

// worst is the largest figure of the answer and of what the methods say each.
func (o *Estimate) worst() float64 {
	worst := max(o.LengthM.High, o.ByLoop.LengthM.High)
	for _, r := range []*Range{o.MassG, o.ByLoop.MassG} {
		if r != nil {
			worst = max(worst, r.High)
		}
	}
	return worst
}

// buy divides the yarn among the colours and counts the balls.
func (q *question) buy(out *Estimate) {
	balls := func(length Range, mass *Range) *int {
		if q.in.PutUp == nil {
			return nil
		}
		// The figure that the method itself gives, so that no factor is applied
		// and taken back.
		n := 0
		if out.BySwatch != nil {
			n = measure.CeilQuotient(q.in.DyeLot.figure(*mass), q.in.PutUp.BallG*q.ofBall()/q.in.PutUp.BallM)
		} else {
			n = measure.CeilQuotient(q.in.DyeLot.figure(length), q.ofBall())
		}
		n += q.in.SpareBalls
		return &n
	}
	defer func() { q.leaveOver(out) }()
	if len(q.shares) == 0 {
		out.BallCount = balls(out.LengthM, out.MassG)
		return
	}
	total := 0
	for i, share := range q.shares {
		colour := ColourYarn{Name: q.in.Colours[i].Name, LengthM: q.part(out.LengthM, i, share, out.lengthBySwatch())}
		if out.MassG != nil {
			mass := q.part(*out.MassG, i, share, out.BySwatch != nil)
			colour.MassG = &mass
		}
		if colour.BallCount = balls(colour.LengthM, colour.MassG); colour.BallCount != nil {
			total += *colour.BallCount
		}
		out.Colours = append(out.Colours, colour)
	}
	if q.in.PutUp != nil {
		out.BallCount = &total
	}
}

// lengthBySwatch says whether LengthM comes from the swatch.
func (o *Estimate) lengthBySwatch() bool { return o.BySwatch != nil && o.BySwatch.LengthM != nil }

// part is the yarn of one colour out of all of it. By loop each figure is divided
// by its own geometry; a swatch says nothing of the division, and the likely one
// is used for all three.
func (q *question) part(r Range, colour int, share float64, bySwatch bool) Range {
	m := q.colours()
	var parts [3]float64
	for k, besides := range []float64{q.trimmings.Low, q.trimmings.Likely, q.trimmings.High} {
		own := q.loop[k].of(share)
		if bySwatch && q.in.PutUp == nil {
			besides = 0 // it was not weighed
		}
		if colour == 0 { // what is worked besides is in the first colour
			own += besides
		}
		parts[k] = min(1, own/(q.loop[k].total(m)+besides))
	}
	if bySwatch {
		parts[low], parts[high] = parts[likely], parts[likely]
	}
	return Range{r.Low * parts[low], r.Likely * parts[likely], r.High * parts[high]}
}

// ofBall is the metres of a ball that can be worked with.
func (q *question) ofBall() float64 { return q.in.PutUp.BallM - q.in.BallWasteM }

// leaveOver says what whole balls leave over.
func (q *question) leaveOver(out *Estimate) {
	if out.BallCount == nil {
		return
	}
	bought := float64(*out.BallCount) * q.ofBall()
	out.LeftOverM = &Range{bought - out.LengthM.High, bought - out.LengthM.Likely, bought - out.LengthM.Low}
}
