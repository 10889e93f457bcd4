package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// YarnUsed is what some rows took that have been worked already.
type YarnUsed struct {
	MassG            *float64
	LengthM          *float64
	Rows             *int
	FirstRowStitches int
	LastRowStitches  *int
}

// A YarnLeft is one yarn that is worked with, and what is left of it.
type YarnLeft struct {
	Name         string
	LeftG        *float64
	LeftM        *float64
	ScaleStepG   *float64
	PutUp        *yarn.PutUp
	Used         *YarnUsed
	SharePercent *float64
}

// RowsAhead are rows still to be worked.
type RowsAhead struct {
	Name            string
	Rows            *int
	Stitches        *int
	ChangeStitches  int
	ChangeEveryRows *int
	RowStitches     []int
	PatternFactor   *float64
}

// A BorderAhead is what is worked after the rows.
type BorderAhead struct {
	Rows          int
	Stitches      *int
	PatternFactor *float64
	BindOff       *bool
	YarnNumber    *int
}

// A Stripe is rows in one yarn.
type Stripe struct {
	YarnNumber int
	Rows       int
}

// A RemainingInput asks whether yarn will last. It mirrors PlanRemainingYarnRequest.
type RemainingInput struct {
	Yarns           []YarnLeft
	Sections        []RowsAhead
	Border          *BorderAhead
	Stripes         []Stripe
	Gauge           *gauge.Gauge
	State           FabricState
	GaugeOffPercent float64
	SharePercents   []float64
	WithOutline     bool
	DisplayUnit     measure.DisplayUnit
}

// Lasts says whether a yarn lasts.
type Lasts int32

// Whether it lasts.
const (
	LastsUnspecified Lasts = iota // the rows are as many as the yarn allows
	LastsSurely
	LastsLikely
	LastsDoubtful
	LastsNo
)

// A CountRange is a count by the low, the likely and the high figures; nil where
// there is none.
type CountRange struct {
	Low    *int
	Likely *int
	High   *int
}

// A YarnMark is a share of a yarn and after how many rows it is gone.
type YarnMark struct {
	SharePercent float64
	Rows         CountRange
}

// A WorkMark is a share of the work and after how many rows it is done.
type WorkMark struct {
	SharePercent float64
	Rows         int
}

// A RemainingYarn is one yarn of the answer. What is not known is nil.
type RemainingYarn struct {
	Name              string
	Lasts             Lasts
	LeftG             *Range
	NeededG           *Range
	MarginG           *Range
	LeftM             *Range
	NeededM           *Range
	MarginM           *Range
	EnoughForStitches Range
	MainRows          CountRange
	MoreBalls         *int
	Marks             []YarnMark
	RangeCovers       string
}

// A Remaining is the answer to RemainingInput.
type Remaining struct {
	Lasts        Lasts
	PlannedRows  *int
	MainRows     CountRange
	MainStitches CountRange
	Yarns        []RemainingYarn
	Marks        []WorkMark
	Outline      *outline.Outline
	Notices      []report.Notice

	unit     measure.DisplayUnit
	state    FabricState
	byLoop   bool
	stranded bool // shares were given
	border   bool
	bindOff  bool
	recheck  *recheck
}

// Ranges of what is left.
const (
	MaxYarns     = 10
	MaxSections  = 50
	MaxStripes   = 100
	MaxMarks     = 20
	MaxChange    = 1_000
	MaxLeftG     = 100_000.0
	MinLeftG     = 0.1
	MaxLeftM     = 1_000_000.0
	MinLeftM     = 0.1
	MinUsedG     = 0.001
	MinUsedM     = 0.01
	MaxGaugeOff  = 20.0
	maxBorder    = 10_000 // as stitch.MaxRows
	millionths   = 1_000_000
	hundredParts = 100 * millionths // a percentage in millionths, of the whole
)

// bindOffs is what binding off a stitch takes beside working one, in millionths: 3, 4
// or 5 times the width of the edge, where a row of stitches takes kw = 4.2 times.
//
// Source: three to four times the width is what knitters leave for a bind-off, common
// practice; 5 is for a loose one. kw as in loopConstants.
var bindOffs = [3]int64{3 * millionths * 10 / 42, 4 * millionths * 10 / 42, 5 * millionths * 10 / 42}

var (
	bindOffCited = report.Source{Figure: "bind-off", Status: report.SourceStatusCommonPractice,
		Citation: "3 to 5 times the width of the edge, likely 4; a row of stitches takes 4.2 times"}
	perRowCited = report.Source{Figure: "yarn of a row", Status: report.SourceStatusOwnDerivation,
		Citation: "in proportion to its stitches, each taking what those weighed before took; sums of stitches are exact: " +
			"n + (n + s) + ... over r rows = r*n + s*r*(r-1)/2"}
)

// PlanRemainingYarn says whether the yarn that is left lasts for the rows ahead and a
// border after them, and after how many rows at the latest the border has to be begun:
// the greatest r for which
//
//	stitches of the first r rows + border(r) <= what is left / yarn of a stitch
//
// holds of every yarn. Counting is in whole millionths of a stitch, so that pattern
// factors keep it exact; what the yarn is enough for, where rows were weighed, is an exact
// quotient rounded down.
//
// Low, likely and high: what is left half a step of the scale either way, what was used
// a whole step, since it is the difference of two weighings; by the geometry of the loop
// the range of its constant and the stated error of the gauge. Low is all of it going
// against the knitter at once.
//
// Source: own derivation; see bindOffs, loopLength and strands for what it stands on.
func PlanRemainingYarn(in RemainingInput) (Remaining, error) {
	q, err := vetRemaining(in)
	if err != nil {
		return Remaining{}, err
	}
	out := q.work()
	var c fault.Checks
	for i, y := range out.Yarns {
		if worst := y.worst(); worst > MaxYarn {
			c.Infeasible("the answer would be "+measure.Decimal(worst, 0)+" metres or grams; at most 1000000000 are counted",
				fault.Join(fault.Index("yarns", i), "used"), "sections")
		}
	}
	if err := c.Err(); err != nil {
		return Remaining{}, err
	}
	return out, nil
}

// worst is the largest amount of one yarn.
func (y RemainingYarn) worst() float64 {
	worst := 0.0
	for _, r := range []*Range{y.LeftG, y.LeftM, y.NeededG, y.NeededM} {
		if r != nil {
			worst = max(worst, r.High)
		}
	}
	return worst
}
