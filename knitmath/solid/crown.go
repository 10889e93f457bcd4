package solid

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
)

// Ranges of a crown.
const (
	MinHatStitches = 16
	// MaxHatStitches is about three times those of the largest head at the finest gauge.
	MaxHatStitches = 2_000
	MinHeadCm      = 5 // a doll's
	MaxHeadCm      = 150
	MinWedges      = 4
	MaxWedges      = 10
	MaxHatRounds   = 2_000
	MinHatEase     = -40.0
	MaxHatEase     = 40.0
	MaxSuccessive  = 10
	// MaxCrownTolerance is the furthest that a decrease round may lie from the curve.
	MaxCrownTolerance = 5.0
)

// CrownShape is what a crown looks like.
type CrownShape int32

// The shapes.
const (
	CrownShapeUnspecified CrownShape = iota // flat
	CrownShapeFlat                          // a flat disc on top of a tube
	CrownShapeRounded                       // half a ball
	CrownShapeSlouchy                       // a flat disc on a longer tube
)

// HeadSize is a head of the charts.
type HeadSize int32

// The sizes.
const (
	HeadSizeUnspecified HeadSize = iota
	HeadSizeMonths3
	HeadSizeMonths6
	HeadSizeYear1
	HeadSizeYears2
	HeadSizeYears5
	HeadSizeYears10
	HeadSizeWoman
	HeadSizeMan
)

// Stacks is how the decreases of a wedge lie.
type Stacks int32

// The kinds.
const (
	StacksUnspecified Stacks = iota // single
	StacksSingle                    // k2tog at the end of each wedge
	StacksPaired                    // ssk at its beginning too
)

// CrownInput asks for the crown of a hat. It mirrors PlanCrownRequest.
type CrownInput struct {
	Gauge            *gauge.Gauge
	HatStitches      *int
	HatCm            *float64
	HeadCm           *float64
	HeadSize         HeadSize
	EasePercent      *float64
	StitchRule       *gauge.CountRule
	WedgeCount       *int
	Stacks           Stacks
	Uneven           Uneven
	Shape            CrownShape
	CrownRounds      *int
	CrownCm          *float64
	TotalRounds      *int
	TotalCm          *float64
	Rates            []Rate
	SuccessiveRounds *int
	EndStitches      *int
	ToleranceRounds  *float64
	DisplayUnit      measure.DisplayUnit
	WithOutline      bool
}

// A Crown is the answer to CrownInput.
type Crown struct {
	HeadCm         float64
	HatStitches    int
	HatCm          float64
	WedgeCount     int
	WedgeStitches  []int
	EvenRounds     int
	CrownRounds    int
	CrownCm        float64
	ShapeCm        float64
	TotalRounds    int
	TotalCm        float64
	WantedTotalCm  float64
	EndStitches    int
	Rounds         []ClosingRound
	Steepness      float64
	UpperSteepness float64
	// GreatestDepartureCm is how far the crown's radius is from that of the shape at most.
	GreatestDepartureCm float64
	Effort              int
	Notices             []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	sources []report.Source
	unit    measure.DisplayUnit
	// leftOver stitches stand at the end of every round.
	leftOver int
}

// PlanCrown closes a hat with wedges. A hat of C cm round has by its shape a crown of
//
//	C / (2 pi)  flat, the radius of a disc;  C / 4  rounded, a quarter round a ball
//
// along the fabric, and of its n stitches at the part t of that
//
//	n * (1 - t);  n * cos(t * pi/2)
//
// The decrease rounds keep to that curve within the tolerance, turn no slower again after they
// have been quicker where that can be, and are the least to remember, see [Along]; or they keep
// to the caller's own rates. What the crown leaves of the height of the hat is worked even
// before it.
//
// Source: geometry of surfaces of revolution; the trade's rules beside the figures.
func PlanCrown(in CrownInput) (Crown, error) {
	h, err := settledCrown(in)
	if err != nil {
		return Crown{}, in.advised(err)
	}
	return h.answer(in), nil
}

func settledCrown(in CrownInput) (h hat, err error) {
	var c fault.Checks
	for _, stage := range [...]func(*fault.Checks, *hat, CrownInput){vetCrown, settleHat, settleHeights, settleWedges} {
		if stage(&c, &h, in); c.Err() != nil {
			break
		}
	}
	return h, c.Err()
}

// hat is a question as the stages settle it.
type hat struct {
	st, rw     gauge.Density
	rule       gauge.Rule
	head       float64
	headSource *report.Source
	stitches   int
	sizeField  string
	notices    []report.Notice

	wantedHat   float64 // cm; 0 where the stitches are given
	crownRounds int     // as wanted
	crownField  string
	total       int
	totalField  string
	wantedTotal float64
	plan        ClosingPlan
	crown       int // rounds from the first that changes the count to the last
	wedges      int
	closed      bool // with these wedges, when they were chosen
}

// answer puts a settled hat together.
func (h *hat) answer(in CrownInput) Crown {
	p := h.plan
	out := Crown{
		HeadCm: h.head, HatStitches: h.stitches, HatCm: h.st.SizeCm(h.stitches), WedgeCount: h.wedges, WedgeStitches: p.WedgeStitches,
		EvenRounds: h.total - h.crown, CrownRounds: h.crown, CrownCm: h.rw.SizeCm(h.crown),
		TotalRounds: h.total, TotalCm: h.rw.SizeCm(h.total), WantedTotalCm: h.wantedTotal,
		EndStitches: p.EndStitches, Effort: p.Effort, Notices: h.notices, unit: in.DisplayUnit,
	}
	if in.Uneven == UnevenLeftOver {
		out.leftOver = h.stitches % h.wedges
	}
	shape := in.Shape.curve()
	out.ShapeCm = shape.depth(out.HatCm)
	before := out.EvenRounds - p.Rounds[0].RoundNumber + 1 // rounds of the hat before the curve begins
	for _, r := range p.Rounds {
		r.RoundNumber += before
		out.Rounds = append(out.Rounds, r)
	}
	out.Steepness, out.UpperSteepness = h.steepness()
	if len(in.Rates) == 0 {
		out.GreatestDepartureCm = h.departure(shape)
	}
	out.Notices = append(out.Notices, h.careful(in, out, h.steepest())...)
	out.sources = h.sources(in)
	if in.WithOutline {
		out.Outline = h.outline(out, shape, len(in.Rates) == 0)
	}
	return out
}
