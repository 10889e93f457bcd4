package shaping

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// GapSpread is the order of unequal gaps across a row.
type GapSpread int32

// The orders.
const (
	GapSpreadUnspecified GapSpread = iota // least effort
	GapSpreadGrouped
	GapSpreadInterleaved
	GapSpreadMirrored
	GapSpreadLeastEffort
)

// defaultGapTolerance is how many stitches a spacing of least effort may depart beyond
// the most even one, if it is not said: with what the most even one departs, a change
// then lies within two stitches of its place, which nobody sees. Common practice.
const defaultGapTolerance = 1.5

// EvenSpacingInput asks for increases or decreases spaced across one row. It
// mirrors PlanEvenSpacingRequest.
type EvenSpacingInput struct {
	StartStitches int
	EndStitches   int
	Operation     stitch.Op
	Construction  stitch.Construction
	EdgeStitches  *int
	Spread        GapSpread
	// ToleranceStitches is how much further a spacing of least effort may depart from
	// equal gaps than the most even one, 0 to 100; nil is 1.5, or 3 where no row of
	// at most 12 items lies so near.
	ToleranceStitches *float64
	WithOutline       bool
}

// EvenSpacing is the row that EvenSpacingInput asks for.
type EvenSpacing struct {
	Operation        stitch.Op
	ChangeCount      int
	PlainStitches    int
	FirstGapStitches int
	Gaps             []spread.GapRun
	LastGapStitches  int
	Instruction      stitch.Instruction
	// GreatestDepartureStitches is how far from its place by equal gaps a change lies
	// at most, LeastDepartureStitches the same of the most even spacing.
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	// Effort is the items of the written row.
	Effort  int
	Notices []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	round bool
	bar   int // see barOf
}

// PlanEvenSpacing spaces k increases or decreases evenly across one row. With
// start stitches, edges kept plain, and an operation that takes t stitches,
//
//	plain = start - 2*edge - k*t
//
// plain stitches are spread over the gaps: k gaps in the round; flat, k-1 inner
// gaps and half a gap at each end (the larger half last). Grouped, interleaved and
// mirrored, inner gaps differ by at most one, which no arrangement betters.
//
// Mirrored, it is the row of least effort that reads the same from both ends, of those as near as
// the row of least effort otherwise, or of such rows the most even (see mirror). Of kfb and pfb it is
// the bars that do, where they can (see barOf).
//
// Left to itself it takes the row with the fewest items to remember among those in
// which no change lies more than ToleranceStitches further from its place by equal gaps
// than in the most even, interleaved one; of equally many the nearest. It looks at
// equal gaps with the rest at the ends, of which a round has 2 stitches at the most, two
// groups of gaps, repeats of up to four, and repeats of equal gaps and one other. The ends
// of a flat row differ by a stitch at most, no decrease lies at the very end where there are
// more plain stitches than changes, and there no three changes follow one another where there is
// a stitch for every second.
//
// An increase made in the strand between two stitches has at least one stitch on each
// side.
//
// StartStitches and EndStitches must be in [1, 10000]; more changes than places is
// refused with the most that fit. The time taken grows with the changes.
//
// Source: own derivation on the Euclidean spread (see [spread.Share]).
func PlanEvenSpacing(in EvenSpacingInput) (EvenSpacing, error) {
	var c fault.Checks
	s := vetSpacing(&c, in, true)
	if err := c.Err(); err != nil {
		return EvenSpacing{}, err
	}
	out, ok := s.plan()
	if !ok {
		detail := "these counts have no arrangement that reads the same from both ends; use the grouped or interleaved spread"
		if ends := in.nearest(); ends != "" {
			detail += ", or end with " + ends
		}
		c.Infeasible(detail, "start_stitches", "end_stitches", "spread")
		return EvenSpacing{}, c.Err()
	}
	out.Notices = append(out.Notices, s.equalGapsNear(out)...)
	if in.WithOutline {
		out.Outline = s.outline(out)
	}
	return out, nil
}
