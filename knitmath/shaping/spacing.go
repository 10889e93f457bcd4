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
	GapSpreadUnspecified GapSpread = iota // grouped
	GapSpreadGrouped
	GapSpreadInterleaved
	GapSpreadMirrored
)

// EvenSpacingInput asks for increases or decreases spaced across one row. It
// mirrors PlanEvenSpacingRequest.
type EvenSpacingInput struct {
	StartStitches int
	EndStitches   int
	Operation     stitch.Op
	Construction  stitch.Construction
	EdgeStitches  *int
	Spread        GapSpread
	WithOutline   bool
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
	Notices          []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	round bool
}

// PlanEvenSpacing spaces k increases or decreases evenly across one row. With
// start stitches, edges kept plain, and an operation that takes t stitches,
//
//	plain = start - 2*edge - k*t
//
// plain stitches are spread over the gaps: k gaps in the round; flat, k-1 inner
// gaps and half a gap at each end (the larger half last). Inner gaps differ by
// at most one, which no arrangement betters. An increase made in the strand
// between two stitches has at least one stitch on each side.
//
// StartStitches and EndStitches must be in [1, 10000]; more changes than places is
// refused with the most that fit. The time taken grows with the runs of the
// answer, not with the stitches.
//
// Source: own derivation on the Euclidean spread (see [spread.Share]).
func PlanEvenSpacing(in EvenSpacingInput) (EvenSpacing, error) {
	var c fault.Checks
	s := vetSpacing(&c, in)
	if err := c.Err(); err != nil {
		return EvenSpacing{}, err
	}
	out, ok := s.plan()
	if !ok {
		c.Infeasible("these counts have no arrangement that reads the same from both ends; "+
			"use the grouped or interleaved spread, or one stitch more or less", "start_stitches", "end_stitches", "spread")
		return EvenSpacing{}, c.Err()
	}
	if in.WithOutline {
		out.Outline = s.outline(out)
	}
	return out, nil
}
