package yarn

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// estimate is a checked question on yarn.
type estimate struct {
	in     YarnInput
	st, rw gauge.Density
	pieces []piece
	shares []float64
	// low, likely and high, as strands: known after work.
	loop [3]strands
}

// colours is how many colours are carried, at least one.
func (e *estimate) colours() int { return max(1, len(e.shares)) }

// work does both methods and adds the reserve.
func (e *estimate) work() YarnEstimate {
	perCm2 := e.st.PerCm() * e.rw.PerCm()
	ks := loopConstants[e.in.State]
	length := YarnRange{loopLength(ks.Low, perCm2), loopLength(ks.Likely, perCm2), loopLength(ks.High, perCm2)}
	out := YarnEstimate{
		LoopLengthCm: length.Likely, LoopConstant: ks.Likely,
		Pieces: make([]PieceYarn, len(e.pieces)),
		unit:   e.in.DisplayUnit, state: e.in.State, lot: e.in.DyeLot,
	}
	for i, p := range e.pieces {
		stitches, area := p.measure(perCm2)
		floats := stitches / e.st.PerCm() / 100
		likely := strands{stitches * length.Likely * p.factor.Likely / 100, floats}
		e.loop[0].add(strands{stitches * length.Low * p.factor.Low / 100, floats})
		e.loop[1].add(likely)
		e.loop[2].add(strands{stitches * length.High * p.factor.High / 100, floats})
		out.Pieces[i] = PieceYarn{p.name, stitches, area, likely.total(e.colours())}
		out.Stitches += stitches
		out.AreaCm2 += area
		out.factors = out.factors || p.factor.Low != p.factor.High
	}
	m := e.colours()
	out.ByLoop = YarnMethodResult{
		LengthM:     &YarnRange{e.loop[0].total(m), e.loop[1].total(m), e.loop[2].total(m)},
		RangeCovers: out.loopCovers(),
	}
	if p := e.in.PutUp; p != nil {
		mass := out.ByLoop.LengthM.times(p.BallG / p.BallM)
		out.ByLoop.MassG = &mass
	}
	e.bySwatch(&out)
	e.choose(&out)
	return out
}

// add adds the strands of one piece.
func (s *strands) add(t strands) { s.stitches += t.stitches; s.floats += t.floats }

// bySwatch is the mass of the swatch for every piece of its size. Its range is
// half a step of the scale either way.
func (e *estimate) bySwatch(out *YarnEstimate) {
	s := e.in.Swatch
	if s == nil {
		return
	}
	half := fault.Or(s.ScaleStepG, DefaultScaleStepG) / 2
	mass := YarnRange{s.MassG - half, s.MassG, s.MassG + half}.times(out.AreaCm2 / (s.WidthCm * s.HeightCm))
	result := YarnMethodResult{MassG: &mass, RangeCovers: "half a step of the scale either way; nothing else"}
	if p := e.in.PutUp; p != nil {
		length := mass.times(p.BallM / p.BallG)
		result.LengthM = &length
	}
	out.BySwatch = &result
}

// choose takes each figure from the swatch where it can say, from the loop
// otherwise, and adds the reserve.
func (e *estimate) choose(out *YarnEstimate) {
	reserve := 1 + fault.Or(e.in.ReservePercent, DefaultReservePercent)/100
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
func (o *YarnEstimate) worst() float64 {
	if o.MassG == nil {
		return o.LengthM.High
	}
	return math.Max(o.LengthM.High, o.MassG.High)
}

// buy divides the yarn among the colours and counts the balls.
func (e *estimate) buy(out *YarnEstimate) {
	balls := func(length YarnRange, mass *YarnRange) *int {
		if e.in.PutUp == nil {
			return nil
		}
		// The figure that the method itself gives, so that no factor is applied
		// and taken back.
		n := 0
		if out.BySwatch != nil {
			n = measure.CeilQuotient(e.in.DyeLot.figure(*mass), e.in.PutUp.BallG)
		} else {
			n = measure.CeilQuotient(e.in.DyeLot.figure(length), e.in.PutUp.BallM)
		}
		return &n
	}
	if len(e.shares) == 0 {
		out.BallCount = balls(out.LengthM, out.MassG)
		return
	}
	total := 0
	for i, share := range e.shares {
		colour := ColourYarn{Name: e.in.Colours[i].Name, LengthM: e.part(out.LengthM, share, out.lengthBySwatch())}
		if out.MassG != nil {
			mass := e.part(*out.MassG, share, out.BySwatch != nil)
			colour.MassG = &mass
		}
		if colour.BallCount = balls(colour.LengthM, colour.MassG); colour.BallCount != nil {
			total += *colour.BallCount
		}
		out.Colours = append(out.Colours, colour)
	}
	if e.in.PutUp != nil {
		out.BallCount = &total
	}
}

// lengthBySwatch says whether LengthM comes from the swatch.
func (o *YarnEstimate) lengthBySwatch() bool { return o.BySwatch != nil && o.BySwatch.LengthM != nil }

// part is the yarn of one colour out of all of it. By loop each figure is divided
// by its own geometry; a swatch says nothing of the division, and the likely one
// is used for all three.
func (e *estimate) part(r YarnRange, share float64, bySwatch bool) YarnRange {
	m := e.colours()
	low, likely, high := e.loop[0].part(share, m), e.loop[1].part(share, m), e.loop[2].part(share, m)
	if bySwatch {
		low, high = likely, likely
	}
	return YarnRange{r.Low * low, r.Likely * likely, r.High * high}
}
