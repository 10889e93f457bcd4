package yarn

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Spinning is how a yarn is spun, for how closely its fibres lie.
type Spinning int32

// The ways of spinning.
const (
	SpinningUnspecified Spinning = iota // as the question says
	SpinningWorsted                     // combed, drawn short; smooth and firm
	SpinningWoollen                     // carded, drawn long; soft and lofty
	SpinningCotton
	SpinningSilk
)

// diameterRule is a constant k of D = k sqrt(yards to the pound).
type diameterRule struct {
	k     float64
	cited report.Source
}

// ashenhurst is whose constants those of wool are, as another's account of the form has
// them, which names nobody. That they are Ashenhurst's is from memory.
const ashenhurst = "Ashenhurst, A Treatise on Textile Calculations, by another's account"

// diameterRules are for compact yarn as it lies in cloth: a knitting yarn that is wrapped
// round a ruler takes about two and a half times the room. Textbooks differ for cotton:
// 0.90, 0.92 and 0.95. What is not said has no rule: each question has its own default.
var diameterRules = [...]diameterRule{
	SpinningWorsted: {0.90, report.Source{Figure: "diameters per inch: 0.90 sqrt(yd/lb), worsted",
		Citation: ashenhurst, Status: report.SourceStatusSecondHand, Uncertain: true}},
	SpinningWoollen: {0.84, report.Source{Figure: "diameters per inch: 0.84 sqrt(yd/lb), woollen",
		Citation: ashenhurst, Status: report.SourceStatusSecondHand, Uncertain: true}},
	SpinningCotton: {0.95, report.Source{Figure: "diameters per inch: 0.95 sqrt(yd/lb), cotton; others have 0.90 and 0.92",
		Citation: "J. T. Taylor, Cotton Weaving and Designing, 6th ed.", Status: report.SourceStatusPublished}},
	SpinningSilk: {0.96, report.Source{Figure: "diameters per inch: 0.96 sqrt(yd/lb), silk",
		Citation: "Ashenhurst, A Treatise on Textile Calculations", Status: report.SourceStatusFromMemory}},
}

// Or is s, or what a question takes where none is said.
func (s Spinning) Or(usual Spinning) Spinning {
	if s == SpinningUnspecified {
		return usual
	}
	return s
}

// DiameterCm is the diameter of a compact yarn of so many tex that is spun so.
func (s Spinning) DiameterCm(tex float64) float64 {
	return measure.CmPerInch / (diameterRules[s].k * math.Sqrt(TexYards/tex))
}

// DiameterCited is the source of that diameter, for a question that takes one way of spinning
// as usual where none is said, and why: the answer is the same whether it was said or not.
func (s Spinning) DiameterCited(usual Spinning, why string) report.Source {
	cited := diameterRules[s.Or(usual)].cited
	if s.Or(usual) == usual {
		cited.Figure += ", which is taken where nothing is said: " + why
	}
	return cited
}

// Wraps per inch of knitting yarn are so many times the root of its yards to the pound,
// in every category of the spinners' chart that has two ends; likely is what most of the
// middles have.
const (
	LowWraps    = 0.35
	LikelyWraps = 0.38
	HighWraps   = 0.39
)

// ExpectedWrapsCited is the source of those.
var ExpectedWrapsCited = report.Source{Figure: "wraps per inch expected, 0.35 to 0.39 sqrt(yd/lb)",
	Citation: "computed from the middles of the spinners' chart of Spin-Off magazine", Status: report.SourceStatusOwnDerivation}
