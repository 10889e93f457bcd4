package hand

import (
	"strconv"

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
	corners           = 2 // picked up beside the gap, one at each end, and decreased again
	thumbWedge        = 3 // stitches of a wedge of the thumb's top
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

// vetThumb checks each field for itself and what excludes what.
func vetThumb(c *fault.Checks, t *thumb, in ThumbInput) {
	t.vetSize(c, in.size())
	fault.Enum(c, "", "gusset", in.Gusset, GussetNone)
	t.none = in.Gusset == GussetNone
	c.OptionalCount("", "gusset_stitches", in.GussetStitches, 3, MaxHandStitches)
	c.OptionalCount("", "start_stitches", in.StartStitches, 1, MaxGap)
	c.OptionalCount("", "every_rounds", in.EveryRounds, 1, MaxEveryRounds)
	c.OptionalCount("", "gusset_rounds", in.GussetRounds, 1, MaxHandRounds)
	c.OptionalNumber("", "gusset_cm", in.GussetCm, measure.MinCm, MaxHandCm)
	c.AtMostOne(in.GussetRounds != nil, in.GussetCm != nil, "gusset_rounds", "gusset_cm")
	if field := in.heightField(); field != "" && in.GussetStitches != nil && in.EveryRounds != nil {
		c.Add(field, fault.ReasonContradictory, "follows from gusset_stitches and every_rounds; give two of the three")
	}
	c.OptionalCount("", "beside_stitches", in.BesideStitches, 0, MaxPalm)
	c.OptionalCount("", "hold_stitches", in.HoldStitches, 2, MaxHandStitches)
	c.OptionalCount("", "gap_stitches", in.GapStitches, 1, MaxGap)
	c.OptionalCount("", "palm_stitches", in.PalmStitches, 0, MaxPalm)
	c.OptionalCount("", "length_rounds", in.LengthRounds, 1, MaxHandRounds)
	c.OptionalNumber("", "length_cm", in.LengthCm, measure.MinCm, MaxHandCm)
	c.AtMostOne(in.LengthRounds != nil, in.LengthCm != nil, "length_rounds", "length_cm")
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	for _, f := range [...]struct {
		field string
		given bool
		none  bool
	}{{"gusset_stitches", in.GussetStitches != nil, false}, {"start_stitches", in.StartStitches != nil, false},
		{"every_rounds", in.EveryRounds != nil, false}, {"gusset_rounds", in.GussetRounds != nil, false},
		{"gusset_cm", in.GussetCm != nil, false}, {"beside_stitches", in.BesideStitches != nil, false},
		{"hold_stitches", in.HoldStitches != nil, true}} {
		switch {
		case f.given && t.none && !f.none:
			c.Add(f.field, fault.ReasonContradictory, "belongs to a gusset, and there is none")
		case f.given && !t.none && f.none:
			c.Add(f.field, fault.ReasonContradictory, "is for a thumb without a gusset; what is held follows from the gusset")
		}
	}
}

// settleGusset settles how wide the gusset is and how it gets there.
func settleGusset(c *fault.Checks, t *thumb, in ThumbInput) {
	if t.settleSize(c, in.size()); c.Err() != nil {
		return
	}
	t.palm = fault.Or(in.PalmStitches, max(defaultPalm, fault.Or(in.BesideStitches, 0)))
	if t.none {
		t.gussetField = "hold_stitches"
		t.hold = fault.Or(in.HoldStitches, max(2, int(measure.RoundHalfUp(heldOfHand*float64(t.stitches)))))
		return
	}
	t.gussetField = "gusset_stitches"
	t.start = fault.Or(in.StartStitches, defaultStart)
	t.beside = fault.Or(in.BesideStitches, 0)
	t.gusset = fault.Or(in.GussetStitches, t.usualGusset())
	if in.heightField() != "" {
		if t.settleHeight(c, in); c.Err() != nil {
			return
		}
	} else {
		t.rates = []solid.Rate{{EveryRounds: fault.Or(in.EveryRounds, defaultEvery), Times: (t.gusset - t.start) / 2}}
	}
	switch grown := t.gusset - t.start; {
	case grown < 2 || grown%2 != 0:
		c.Infeasible("a gusset of "+strconv.Itoa(t.gusset)+" from "+report.CountOf(t.start, "stitches")+
			" does not grow by two at a time", t.hangOn(in, t.gussetField, "start_stitches")...)
	case grown/2 > mostGussetChanges:
		c.Infeasible("the gusset takes "+strconv.Itoa(grown/2)+" increase rounds; at most "+strconv.Itoa(mostGussetChanges)+" are written",
			t.hangOn(in, t.gussetField, "every_rounds")...)
	}
	t.hold = t.gusset + 2*t.beside
}

// settleGap settles where the thumb lies and what is cast on over the gap.
func settleGap(c *fault.Checks, t *thumb, in ThumbInput) {
	of := t.start + 2*t.beside // stitches of the hand that go into the thumb
	if t.none {
		of = t.hold
	}
	t.gap = fault.Or(in.GapStitches, of)
	palm := t.stitches - t.stitches/2
	most := palm - of + t.beside - 1 // a stitch of the palm is left beyond the thumb
	if t.palm >= t.beside && t.palm <= most {
		return
	}
	if t.palm < t.beside {
		c.Infeasible(report.CountOf(t.beside, "stitches")+" beside the gusset are held too, and the palm has "+strconv.Itoa(t.palm)+
			" before it; as many will do", "palm_stitches", "beside_stitches")
		return
	}
	c.Infeasible("the palm has "+report.CountOf(palm, "stitches")+", of which the thumb takes "+strconv.Itoa(of)+", with "+
		strconv.Itoa(t.palm)+" from the edge to the gusset", t.hangOn(in, "palm_stitches", "beside_stitches", t.field, t.gussetField)...)
}

// settleThumb settles the thumb itself.
func settleThumb(c *fault.Checks, t *thumb, in ThumbInput) {
	t.picked = t.gap
	if t.gap >= corners {
		t.picked += corners
	}
	t.thumbStitches = t.hold + t.gap
	if t.thumbStitches < fewestThumb {
		c.Infeasible("the thumb has "+report.CountOf(t.thumbStitches, "stitches")+"; it must have at least "+strconv.Itoa(fewestThumb),
			t.hangOn(in, t.gussetField, "gap_stitches")...)
		return
	}
	q := solid.Closing{StartStitches: t.thumbStitches, Wedges: t.thumbStitches / thumbWedge, Uneven: solid.UnevenTwoSizes,
		EndStitches: min(drawnThumb, t.thumbStitches/2), Pace: solid.EveryRound()}
	plan, refused := q.Plan()
	if refused != "" {
		c.Infeasible("the top of the thumb "+refused, t.hangOn(in, t.gussetField)...)
		return
	}
	t.closing = plan
	t.length = t.rounds(c, in.LengthRounds, in.LengthCm, lengthOfHand*t.st.SizeCm(t.stitches), "thumb", "length_rounds", "length_cm")
	least := t.firstRounds() + plan.RoundCount
	if (in.LengthRounds != nil || in.LengthCm != nil) && t.length < least && t.length > 0 {
		field := "length_rounds"
		if in.LengthCm != nil {
			field = "length_cm"
		}
		c.Infeasible("the thumb has "+report.CountOf(t.length, "rounds")+"; picking up and closing it take "+strconv.Itoa(least), field)
	}
	t.length = max(t.length, least)
}

// firstRounds are those that pick up, and that decrease the corners.
func (t *thumb) firstRounds() int {
	if t.picked > t.gap {
		return 2
	}
	return 1
}
