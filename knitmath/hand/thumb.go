package hand

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// Gusset is how a thumb gets its room.
type Gusset int32

// The gussets.
const (
	GussetUnspecified Gusset = iota // widened
	GussetWidened                   // increases at both sides of a few stitches
	GussetNone                      // stitches of the palm are held
)

// Ranges of a thumb.
const (
	MaxEveryRounds = 20
	MaxPalm        = 50
	MaxGap         = 100
)

// ThumbInput asks for a thumb. It mirrors PlanThumbRequest.
type ThumbInput struct {
	Gauge          *gauge.Gauge
	HandStitches   *int
	HandCm         *float64
	HandSize       Size
	EasePercent    *float64
	StitchRule     *gauge.CountRule
	Gusset         Gusset
	GussetStitches *int
	StartStitches  *int
	EveryRounds    *int
	GussetRounds   *int
	GussetCm       *float64
	BesideStitches *int
	HoldStitches   *int
	GapStitches    *int
	PalmStitches   *int
	LengthRounds   *int
	LengthCm       *float64
	DisplayUnit    measure.DisplayUnit
	WithOutline    bool
}

func (in ThumbInput) size() size {
	return size{in.Gauge, in.HandStitches, in.HandCm, in.HandSize, in.EasePercent, in.StitchRule}
}

// A HandRound is a round of the hand that is not worked even, for each hand.
type HandRound struct {
	RoundNumber int
	Right       stitch.Instruction
	Left        stitch.Instruction
}

// A Thumb is the answer to ThumbInput.
type Thumb struct {
	HandStitches   int
	MittenCm       float64
	GussetStitches int
	GussetRounds   int
	GussetCm       float64
	HoldStitches   int
	GapStitches    int
	// AfterStitches are those of the hand above the thumb.
	AfterStitches int
	// HandRounds are the increase rounds, and the one that holds the thumb.
	HandRounds    []HandRound
	ThumbStitches int
	ThumbCm       float64
	LengthRounds  int
	LengthCm      float64
	// ThumbRounds begin with the one that picks up over the gap; the counts before it are the
	// stitches held and the places of the gap.
	ThumbRounds []solid.ClosingRound
	EndStitches int
	Notices     []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	picked  int // over the gap, with the corners
	none    bool
	closing solid.ClosingPlan
	sources []report.Source
	unit    measure.DisplayUnit
}

// Defaults of a thumb.
const (
	gussetOfHand      = 0.37
	heldOfHand        = 0.2
	lengthOfHand      = 0.3
	defaultStart      = 2
	defaultEvery      = 3
	defaultPalm       = 1
	leastThumbOfHand  = 0.28
	mostThumbOfHand   = 0.5
	mostGussetOfHand  = 0.75 // of the circumference, high. Own choice
	corners           = 2    // picked up beside the gap, one at each end, and decreased again
	thumbWedge        = 3    // stitches of a wedge of the thumb's top
	fewestThumb       = 6
	drawnThumb        = 8
	mostGussetChanges = 150
)

// PlanThumb makes room for a thumb, holds its stitches and works it afterwards. From s
// stitches a gusset gains two in every increase round, until it has G:
//
//	rounds = every * (G - s) / 2
//
// with the round that holds the thumb after them. Two of its width, its rate and its height are
// enough; of width and height the rate follows, in two rates where one does not come out.
// Those of the gusset, and so many beside it at each side, are held, and stitches are cast on
// over the gap: by default as many as the hand had there, so that it has its count again. The
// thumb takes up what is held and picks up over the gap, with a stitch in each corner that
// is decreased in the next round. Without a gusset stitches of the palm are held.
//
// Sources: see the figures.
func PlanThumb(in ThumbInput) (Thumb, error) {
	out, err := planThumb(in)
	if err != nil {
		err = in.advised(err)
	}
	return out, err
}

func planThumb(in ThumbInput) (Thumb, error) {
	var c fault.Checks
	var t thumb
	for _, stage := range [...]func(*fault.Checks, *thumb, ThumbInput){vetThumb, settleGusset, settleGap, settleThumb} {
		stage(&c, &t, in)
		if err := c.Err(); err != nil {
			return Thumb{}, err
		}
	}
	return t.answer(in), nil
}

// thumb is a question as the stages settle it.
type thumb struct {
	mitten
	none                    bool
	start, gusset           int
	rates                   []solid.Rate
	beside, hold, gap, palm int
	length                  int
	gussetField             string
	picked, thumbStitches   int
	closing                 solid.ClosingPlan
}
