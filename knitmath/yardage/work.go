package yardage

import (
	"math"

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
	// low, likely and high, as strands: known after work.
	loop [3]strands
}

// colours is how many colours are carried, at least one.
func (q *question) colours() int { return max(1, len(q.shares)) }

// work does both methods and adds the reserve.
func (q *question) work() Estimate {
	perCm2 := q.st.PerCm() * q.rw.PerCm()
	ks := loopConstants[q.in.State]
	length := Range{loopLength(ks.Low, perCm2), loopLength(ks.Likely, perCm2), loopLength(ks.High, perCm2)}
	out := Estimate{
		LoopLengthCm: length.Likely, LoopConstant: ks.Likely,
		Pieces: make([]PieceYarn, len(q.pieces)),
		unit:   q.in.DisplayUnit, state: q.in.State, lot: q.in.DyeLot,
	}
	for i, p := range q.pieces {
		stitches, area := p.measure(perCm2)
		floats := stitches / q.st.PerCm() / 100
		likely := strands{stitches * length.Likely * p.factor.Likely / 100, floats}
		q.loop[0].add(strands{stitches * length.Low * p.factor.Low / 100, floats})
		q.loop[1].add(likely)
		q.loop[2].add(strands{stitches * length.High * p.factor.High / 100, floats})
		out.Pieces[i] = PieceYarn{p.name, stitches, area, likely.total(q.colours())}
		out.Stitches += stitches
		out.AreaCm2 += area
		out.factors = out.factors || p.factor.Low != p.factor.High
	}
	m := q.colours()
	out.ByLoop = MethodResult{
		LengthM:     &Range{q.loop[0].total(m), q.loop[1].total(m), q.loop[2].total(m)},
		RangeCovers: out.loopCovers(),
	}
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

// bySwatch is the mass of the swatch for every piece of its size. Its range is
// half a step of the scale either way.
func (q *question) bySwatch(out *Estimate) {
	s := q.in.Swatch
	if s == nil {
		return
	}
	half := s.scaleStepG() / 2
	mass := Range{s.MassG - half, s.MassG, s.MassG + half}.times(out.AreaCm2 / (s.WidthCm * s.HeightCm))
	result := MethodResult{MassG: &mass, RangeCovers: "half a step of the scale either way; nothing else"}
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
	out.LengthM = length.times(reserve)
	if mass != nil {
		m := mass.times(reserve)
		out.MassG = &m
	}
}

// worst is the largest figure of the answer.
func (o *Estimate) worst() float64 {
	if o.MassG == nil {
		return o.LengthM.High
	}
	return math.Max(o.LengthM.High, o.MassG.High)
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
			n = measure.CeilQuotient(q.in.DyeLot.figure(*mass), q.in.PutUp.BallG)
		} else {
			n = measure.CeilQuotient(q.in.DyeLot.figure(length), q.in.PutUp.BallM)
		}
		return &n
	}
	if len(q.shares) == 0 {
		out.BallCount = balls(out.LengthM, out.MassG)
		return
	}
	total := 0
	for i, share := range q.shares {
		colour := ColourYarn{Name: q.in.Colours[i].Name, LengthM: q.part(out.LengthM, share, out.lengthBySwatch())}
		if out.MassG != nil {
			mass := q.part(*out.MassG, share, out.BySwatch != nil)
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
func (q *question) part(r Range, share float64, bySwatch bool) Range {
	m := q.colours()
	low, likely, high := q.loop[0].part(share, m), q.loop[1].part(share, m), q.loop[2].part(share, m)
	if bySwatch {
		low, high = likely, likely
	}
	return Range{r.Low * low, r.Likely * likely, r.High * high}
}
