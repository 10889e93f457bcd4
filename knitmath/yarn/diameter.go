package yarn

import (
	"math"

	"example.com/knitmath/knitmath/report"
)

// Spinning is how a yarn was made, for how closely its fibres lie.
type Spinning int32

// The ways of spinning.
const (
	SpinningUnspecified Spinning = iota // as worsted
	SpinningWorsted                     // combed, smooth and firm
	SpinningWoollen                     // carded, soft
	SpinningCotton
	SpinningSilk
)

// diameterRule is a constant k of D = k sqrt(yards to the pound).
type diameterRule struct {
	k     float64
	cited report.Source
}

const ashenhurst = "diameters per inch, the form of Ashenhurst: "

// diameterRules are for compact yarn as it lies in cloth: a knitting yarn that is wrapped
// round a ruler takes about two and a half times the room. Textbooks differ for cotton:
// 0.90, 0.92 and 0.95.
var diameterRules = [...]diameterRule{
	SpinningUnspecified: {0.90, report.Source{Figure: ashenhurst + "0.90 sqrt(yd/lb), firm yarn",
		Citation: "a reference page on weaving (1999)", Status: report.SourceStatusPublished}},
	SpinningWorsted: {0.90, report.Source{Figure: ashenhurst + "0.90 sqrt(yd/lb), worsted",
		Citation: "a reference page on weaving (1999)", Status: report.SourceStatusPublished}},
	SpinningWoollen: {0.84, report.Source{Figure: ashenhurst + "0.84 sqrt(yd/lb), woollen",
		Citation: "a reference page on weaving (1999)", Status: report.SourceStatusPublished}},
	SpinningCotton: {0.95, report.Source{Figure: ashenhurst + "0.95 sqrt(yd/lb), cotton; others have 0.90 and 0.92",
		Citation: "J. T. Taylor, Cotton Weaving and Designing, 6th ed.", Status: report.SourceStatusPublished}},
	SpinningSilk: {0.96, report.Source{Figure: ashenhurst + "0.96 sqrt(yd/lb), silk",
		Citation: "attributed to Ashenhurst", Status: report.SourceStatusFromMemory}},
}

// Wraps per inch of knitting yarn are 0.35 to 0.39 times the root of its yards to the
// pound, in every category of the spinners' chart that has two ends.
const (
	lowWraps  = 0.35
	highWraps = 0.39
)

var expectedWrapsCited = report.Source{Figure: "wraps per inch expected, 0.35 to 0.39 sqrt(yd/lb)",
	Citation: "computed from the middles of the spinners' chart of Spin-Off magazine", Status: report.SourceStatusOwnDerivation}

// rootYards is the root of the yards to the pound, of which diameters and wraps are parts.
func rootYards(t Tex) float64 { return math.Sqrt(nearest(t.In(CountSystemYardsPerPound))) }

// A Twist is what twist does to a yarn.
type Twist struct {
	PerInch      float64
	Factor       float64
	AngleDegrees float64
}

var twistCited = report.Source{Figure: "twist factor, turns to the cm x sqrt(tex); tan(angle) = pi x diameter x turns",
	Citation: "textbook relations; the diameter by the form of Ashenhurst", Status: report.SourceStatusOwnDerivation}

// twistOf is the twist of so many turns to the cm in a yarn of a diameter in cm.
func twistOf(t Tex, perCm, diameterCm float64) Twist {
	return Twist{PerInch: perCm * 2.54, Factor: perCm * math.Sqrt(t.Float()),
		AngleDegrees: math.Atan(math.Pi*diameterCm*perCm) * 180 / math.Pi}
}
