package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// A WeighedSwatch is a weighed piece of the same yarn, needle and fabric.
type WeighedSwatch struct {
	MassG       float64
	WidthCm     float64
	HeightCm    float64
	ScaleStepG  *float64
	RulerStepCm float64
}

// An EstimateInput asks how much yarn the pieces need. It mirrors EstimateYarnRequest.
type EstimateInput struct {
	Gauge             *gauge.Gauge
	StitchGauge       *StitchGauge
	GaugeOffPercent   float64
	State             FabricState
	Pieces            []Piece
	Edges             []EdgeWork
	Fringe            *Fringe
	Pompoms           *Pompoms
	Swatch            *WeighedSwatch
	Colours           []ColourShare
	ColourWork        ColourWork
	SlippedPercent    *float64
	FloatSlackPercent *float64
	PutUp             *yarn.PutUp
	BallWasteM        float64
	SpareBalls        int
	ReservePercent    *float64
	DyeLot            DyeLot
	WithOutline       bool
	DisplayUnit       measure.DisplayUnit
}

// A Range is a low, a likely and a high figure.
type Range struct {
	Low    float64
	Likely float64
	High   float64
}

// A MethodResult is the answer of one method, reserve not included. What the
// method cannot say is nil.
type MethodResult struct {
	LengthM     *Range
	MassG       *Range
	RangeCovers string
}

// An Estimate is the answer to EstimateInput. What no method can say is nil.
type Estimate struct {
	ByLoop       MethodResult
	BySwatch     *MethodResult
	LoopLengthCm float64
	LoopConstant float64
	RowsToStitch float64
	Stitches     float64
	AreaCm2      float64
	Pieces       []PieceYarn
	Edges        []EdgeYarn
	TrimmingsM   *Range
	LengthM      Range
	MassG        *Range
	BallCount    *int
	LeftOverM    *Range
	Colours      []ColourYarn
	Outline      *outline.Outline
	Notices      []report.Notice

	unit     measure.DisplayUnit
	state    FabricState
	lot      DyeLot
	factors  bool  // a pattern factor of the table was used
	garter   bool  // that of garter stitch
	slack    Range // of floats, none where there are none
	derived  bool  // the rows are
	reserved bool  // something was added for tails, seams and swatching
	ranged   bool  // the rows of a piece are
	offBy    float64
	work     ColourWork
	fringe   bool
	pompoms  bool
}

// Ranges of a yarn estimate.
const (
	// DefaultReservePercent is what is usually added for tails, seams and
	// swatching. Common practice.
	DefaultReservePercent = 10.0
	MaxReservePercent     = 100.0
	// MaxYarn is the most metres or grams an answer may come to, reserve and high
	// figure included: a million kilometres or a thousand tonnes. Beyond it some
	// gauge is a slip, and balls would not be counted in 32 bits.
	MaxYarn = 1e9

	MaxBallWasteM = 100.0
	MaxSpareBalls = 100
	MaxRulerCm    = 10.0

	MinSwatchG    = 0.1
	MaxSwatchG    = 10_000.0
	MinSwatchCm   = 1.0
	MinScaleStepG = 0.001
	MaxScaleStepG = 100.0
	// DefaultScaleStepG is that of a kitchen scale.
	DefaultScaleStepG = 1.0
)

// times is the range with every figure multiplied.
func (r Range) times(f float64) Range { return Range{r.Low * f, r.Likely * f, r.High * f} }

// at is the low, the likely or the high figure.
func (r Range) at(figure int) float64 { return [...]float64{r.Low, r.Likely, r.High}[figure] }

// apart says whether two ranges have nothing in common.
func (r Range) apart(s Range) bool { return r.Low > s.High || s.Low > r.High }

// reserveCited is the source of DefaultReservePercent.
var reserveCited = report.Source{Figure: "reserve", Status: report.SourceStatusCommonPractice,
	Citation: "10 % for tails, seams and swatching, unless the question says otherwise"}

// EstimateYarn says how much yarn the pieces need, by one method or two:
//
//	by loop:    metres = stitches * factor * sqrt(ks / S), S stitches to the cm2
//	by swatch:  grams = area * swatch mass / swatch area
//
// Metres and grams turn into one another by the put-up. Floats of stranded work
// are added by loop; a swatch has them in its mass. Edges, fringe and pompoms are added
// to both, and so is the reserve; balls are rounded up, colour by colour.
//
// Low and high by loop are the least and the most over the range of ks, the ranges of
// pattern factors, of the slack of floats and of edges, and a gauge that is off by the stated part either way, all
// at once. A denser gauge takes less to a counted stitch and more to an area: both ends
// are worked out.
//
// By loop holds for relaxed fabric as tight as hands knit it; what a fabric beyond that is
// told stands with remarkTightness and remarkGauges.
//
// Source: see loopLength, loopConstants, patternFactors and strands; by swatch
// is own derivation, the mass being even over the fabric.
func EstimateYarn(in EstimateInput) (Estimate, error) {
	var c fault.Checks
	q := question{in: in}
	q.vetGauges(&c)
	vetPieces(&c, "pieces", in.Pieces)
	fault.Enum(&c, "", "state", in.State, FabricStateFullyRelaxed)
	vetSwatch(&c, "swatch", in.Swatch)
	yarn.VetPutUp(&c, "put_up", in.PutUp)
	c.OptionalNumber("", "reserve_percent", in.ReservePercent, 0, MaxReservePercent)
	vetShares(&c, "colours", in.Colours)
	vetColourWork(&c, in)
	c.Number("", "gauge_off_percent", in.GaugeOffPercent, 0, MaxGaugeOff)
	vetTrimmings(&c, in)
	vetBalls(&c, in)
	fault.Enum(&c, "", "dye_lot", in.DyeLot, DyeLotMoreLater)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if err := c.Err(); err != nil {
		return Estimate{}, err
	}

	q.shares = sharesOf(in.Colours)
	for _, p := range in.Pieces {
		q.pieces = append(q.pieces, q.worked(p))
	}
	out := q.work()
	if worst := out.worst(); worst > MaxYarn {
		fields := []string{"gauge", "pieces"}
		if in.StitchGauge != nil {
			fields[0] = "stitch_gauge"
		}
		if in.Swatch != nil {
			fields = append(fields, "swatch")
		}
		c.Infeasible("the answer would be "+measure.Decimal(worst, 0)+" metres or grams; at most 1000000000 are counted", fields...)
		return Estimate{}, c.Err()
	}
	q.buy(&out)
	if in.WithOutline {
		out.Outline = q.outline(&out)
	}
	q.remark(&out)
	return out, nil
}

// vetSwatch checks a weighed swatch that may be absent.
func vetSwatch(c *fault.Checks, field string, s *WeighedSwatch) {
	if s == nil {
		return
	}
	c.RequiredNumber(field, "mass_g", s.MassG, MinSwatchG, MaxSwatchG)
	c.RequiredNumber(field, "width_cm", s.WidthCm, MinSwatchCm, measure.MaxCm)
	c.RequiredNumber(field, "height_cm", s.HeightCm, MinSwatchCm, measure.MaxCm)
	c.OptionalNumber(field, "scale_step_g", s.ScaleStepG, MinScaleStepG, MaxScaleStepG)
	c.Number(field, "ruler_step_cm", s.RulerStepCm, 0, MaxRulerCm)
	mass, step := fault.Join(field, "mass_g"), fault.Join(field, "scale_step_g")
	if c.Sound(mass, step) && s.MassG < s.scaleStepG() {
		c.Infeasible("a scale with steps of "+measure.Decimal(s.scaleStepG(), 3)+" g does not show "+measure.Decimal(s.MassG, 3)+
			" g; give the step of the scale, or weigh more", mass, step)
	}
	if ruler := fault.Join(field, "ruler_step_cm"); c.Sound(field) && s.RulerStepCm >= min(s.WidthCm, s.HeightCm)/2 {
		c.Infeasible("is half of the swatch or more; measure it more finely", ruler)
	}
}

// scaleStepG is the step of the scale that a swatch was weighed on.
func (s *WeighedSwatch) scaleStepG() float64 { return fault.Or(s.ScaleStepG, DefaultScaleStepG) }
