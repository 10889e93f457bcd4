package armhole

import (
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
)

// CapHeightRule says by which rule the height of a cap is found.
type CapHeightRule int32

// The rules.
const (
	CapHeightRuleUnspecified CapHeightRule = iota // free
	// CapHeightRuleFree: the height at which the cap's edge is as long as is wanted.
	CapHeightRuleFree
	// CapHeightRuleLessByChest: 2, 3 or 4 inches less than the armhole, by the chest.
	CapHeightRuleLessByChest
	// CapHeightRuleTwoThirds: two thirds of the armhole.
	CapHeightRuleTwoThirds
	// CapHeightRuleLessTop: 1.5 inches and half of the top less than the armhole.
	CapHeightRuleLessTop
)

// Input asks for an armhole and its cap. It mirrors PlanArmholeRequest.
type Input struct {
	Gauge                *gauge.Gauge
	Style                Style
	ChestCm              *float64
	ChestEaseCm          *float64
	BackStitches         *int
	FrontStitches        *int
	AcrossBackCm         *float64
	AcrossBackStitches   *int
	AcrossFrontCm        *float64
	AcrossFrontStitches  *int
	ArmholeDepthCm       *float64
	ArmholeDepthRows     *int
	UpperArmCm           *float64
	SleeveEaseCm         *float64
	SleeveStitches       *int
	UnderarmStitches     *int
	LargestGroupStitches *int
	ShapingRows          *int
	CapHeightRule        CapHeightRule
	CapHeightCm          *float64
	CapHeightRows        *int
	CapTopCm             *float64
	CapTopStitches       *int
	CapExcessPercent     *float64
	StitchRule           *gauge.CountRule
	SleeveRule           *gauge.CountRule
	AcrossRule           *gauge.CountRule
	UnderarmRule         *gauge.CountRule
	TopRule              *gauge.CountRule
	NeckCm               *float64
	NeckStitches         *int
	ToleranceStitches    *float64
	DisplayUnit          measure.DisplayUnit
	WithOutline          bool
}

// A Step is so many stitches that go at the right edge in a right-side row.
type Step struct {
	RowNumber int
	Stitches  int
	BoundOff  bool
}

// A Piece is the shaped part of a back, a front or a sleeve: its rows are counted from
// the first bind-off.
type Piece struct {
	StartStitches             int
	EndStitches               int
	HeightRows                int
	HeightCm                  float64
	Rows                      []curve.Row // those that shape
	Steps                     []Step      // of the right edge; the left one binds off a row later
	EdgeCm                    float64     // along the line that a seam takes; of a cap to the middle of its top
	SteppedEdgeCm             float64     // along its steps; of a cap to the beginning of its top
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int
}

// A Strap goes on from the cap of a saddle along the shoulders to the neck.
type Strap struct {
	Stitches   int
	WidthCm    float64
	Rows       int
	LengthCm   float64
	ShoulderCm float64 // of the shoulders that it lies between
	// The shoulders of back and front are alike, the necks between them need not be.
	ShoulderStitches, BackNeckStitches, FrontNeckStitches int
}

// Armhole is the answer to Input.
type Armhole struct {
	UnderarmStitches int
	Back             Piece
	Front            Piece
	Cap              Piece
	ArmholeEdgeCm    float64
	CapEdgeCm        float64
	CapExcessPercent float64
	CapTopCm         float64
	// Strap is nil unless the style is a saddle.
	Strap   *Strap
	Notices []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	set settled
	sew sewn
}

// sewn is what was found: three pieces that go together.
type sewn struct {
	back, front, top shaped
}

// Plan plans the armholes of back and front and the cap of the sleeve, or its straight top.
//
// Counts: half the chest with its ease, the width across the back and the upper arm
// with its ease to the nearest stitch, halves up, or to the nearest count that a rule
// allows, or one beside it where other counts cannot be had with that; every edge loses
// whole stitches, the same on the right and the left, so that the width across the back
// may be a stitch off what is asked.
//
// Armhole: as many stitches are bound off at the underarm as at the cap's foot; the
// rest is lost along a quarter of an ellipse. Cap: from the same bind-off along a bell, an arc
// of a circle, a straight line and an arc back, to the stitches of the top, which are bound off
// straight. Its steps grow slower towards its middle and quicker again towards its top, by four
// times at once at the most where that can be.
//
// Edges are measured in cm along the line that a seam takes from step to step
// ([curve.SewnCm]), the mean of the right edge and the left, which begins a row later. The
// cap has no kink ([curve.Settings], Steady). Its edge must be 0 to 5 % longer than those of
// back and front together. Caps of other heights and slopes are tried or, where the height is
// given or a rule gives it, of other slopes, until one is within half a percent of the
// excess that is wanted, or within three quarters with little to remember; else the nearest is
// taken. One that is no bell counts as half a percent farther off, and so does one of a free
// height that is unlike any rule; one without bind-offs before its top as a quarter.
//
// A drop shoulder shapes nothing, a modified drop binds off the underarm alone; the sleeve
// has as many stitches as make its edge as long as theirs. A saddle's cap goes on as a
// strap; back and front are lower by half of its width.
func Plan(in Input) (Armhole, error) {
	var c fault.Checks
	s := vet(&c, in, true)
	if err := c.Err(); err != nil {
		return Armhole{}, in.advised(err)
	}
	found, ok := s.solve()
	if !ok {
		s.refuse(&c)
		return Armhole{}, c.Err()
	}
	return s.answer(found, in.WithOutline), nil
}

// answer writes what was found.
func (s settled) answer(found sewn, drawn bool) Armhole {
	out := Armhole{UnderarmStitches: s.underarm, set: s, sew: found}
	out.Back, out.Cap = s.piece(found.back), s.piece(found.top)
	if out.Front = out.Back; !out.alike() {
		out.Front = s.piece(found.front)
	}
	out.ArmholeEdgeCm = out.Back.EdgeCm + out.Front.EdgeCm
	out.CapTopCm = s.st.SizeCm(s.top)
	if s.style == StyleSaddle {
		out.Strap = &Strap{Stitches: s.top, WidthCm: out.CapTopCm, Rows: s.strapRows, LengthCm: s.rw.SizeCm(s.strapRows),
			ShoulderCm: s.st.SizeCm(s.shoulder), ShoulderStitches: s.shoulder,
			BackNeckStitches: out.Back.EndStitches - 2*s.shoulder, FrontNeckStitches: out.Front.EndStitches - 2*s.shoulder}
	}
	out.CapEdgeCm = s.capEdgeCm(found.top)
	out.CapExcessPercent = excess(out.CapEdgeCm, out.ArmholeEdgeCm)
	out.Notices = s.notices(out)
	if drawn {
		out.Outline = s.outline(found)
	}
	return out
}

// piece is a shaped piece with its rows.
func (s settled) piece(p shaped) Piece {
	return Piece{StartStitches: p.start, EndStitches: p.start - 2*p.lost, HeightRows: p.rows, HeightCm: s.rw.SizeCm(p.rows),
		Rows: p.shapingRows(), Steps: p.steps(), EdgeCm: s.edgeCm(p), SteppedEdgeCm: s.steppedCm(p), GreatestDepartureStitches: p.plan.Departure,
		LeastDepartureStitches: p.plan.Least, Effort: p.plan.Effort}
}
