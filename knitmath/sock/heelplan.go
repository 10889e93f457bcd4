package sock

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// A HeelRow is one row or round of a heel. Its number counts from 1 in every part.
type HeelRow struct {
	Part        HeelPart
	RowNumber   int
	Side        stitch.Side
	Instruction stitch.Instruction
}

// Heel is the answer to HeelInput. What its kind does not have is nil.
type Heel struct {
	// Stitches is nil unless the round was counted from a foot.
	Stitches       *gauge.FittedCount
	RoundStitches  int
	HeelStitches   int
	InstepStitches int
	FlapRows       *int
	CentreStitches *int
	TurnedStitches *int
	PickUpStitches *int
	// GreatestRoundStitches is the round with its gussets.
	GreatestRoundStitches *int
	GussetDecreaseRounds  *int
	GussetIncreaseRounds  *int
	GussetRounds          *int
	// ClosingStitches is the round of a heel knit in afterwards.
	ClosingStitches *int
	EndStitches     *int
	// DepthCm is that of the heel, from the ankle to the sole or, of a heel without a
	// flap, from its first row to its point; nil without gauge.
	DepthCm  *float64
	GussetCm *float64
	// FootToHeelCm is how long the foot is, from the tip of the toe, when the heel begins.
	FootToHeelCm *float64
	Rows         []HeelRow
	Notices      []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	asked  HeelInput
	kind   HeelKind
	toeUp  bool
	unit   measure.DisplayUnit
	method shortrow.TurnMethod
	every  int
	quick  int
	corner int
	// closing is how the opening of a heel knit in afterwards is closed.
	closing    []string
	summary    string
	directions []string
}

// PlanHeel plans a heel and writes every row of it.
//
// A flap is as many rows long as it has stitches, its first stitches slipped, so that each
// edge has one chain stitch for two rows. A round turn of f stitches whose decreases begin
// c stitches apart leaves u = (f - 4 - c) / 2 unworked at each side and then works two of
// them a row, one by the decrease and one beyond it: ceil(u/2) + 1 rows a side, and as many
// stitches fewer. A square turn of the same works one a row and leaves c. From the edges are
// picked up p stitches each, and what is then more than the heel's was goes two at a time at
// the gussets.
//
// Short rows turn a stitch earlier in every row until the centre is left, and a stitch later
// in every row until the heel is whole again. A heel on waste yarn is closed as a wedge toe.
// Both are the same from the toe up.
//
// From the toe up gussets of g stitches each grow first, two in every increase round. A flap
// over the heel then takes up one of them in every row, 2g rows, after a turn of short rows
// (round) or at once (square). A heart turns over sole and gussets together and leaves the
// heel, with g half of what lies beside its centre.
//
// Sources: facts of every default are cited in the answer. The turn: own derivation, which
// the published turns of H. P. Ryder (1896) follow.
func PlanHeel(in HeelInput) (Heel, error) {
	h, out, err := planHeel(in)
	if err != nil {
		return Heel{}, in.advised(err)
	}
	out.asked, out.Notices = in, append(h.notices(out), out.Notices...)
	out.summary, out.directions = out.summarise(), out.direct()
	if in.WithOutline {
		out.Outline = h.outline(out)
	}
	return out, nil
}

// planHeel is the heel without its words.
func planHeel(in HeelInput) (h heel, out Heel, err error) {
	var c fault.Checks
	h = vetHeel(&c, in)
	if h.vetParts(&c, in); c.Err() != nil {
		return h, Heel{}, c.Err()
	}
	out = h.plan()
	if in.FootLengthCm != nil {
		h.footToHeel(&c, in, &out)
	}
	return h, out, c.Err()
}

// heel is a checked question.
type heel struct {
	rounds
	kind                   HeelKind
	toeUp                  bool
	method                 shortrow.TurnMethod
	unit                   measure.DisplayUnit
	flapStitch             FlapStitch
	stitches, instep       int
	sized                  bool // nothing is wrong with them
	flapRows, centre       int
	pickUp, every, quick   int
	grown                  int // stitches of each gusset, from the toe up
	corner, end            int
	heelGiven, pickUpGiven bool
}

// plan writes the heel out.
func (h heel) plan() Heel {
	out := Heel{Stitches: h.fitted, RoundStitches: h.round, HeelStitches: h.stitches, InstepStitches: h.instep,
		kind: h.kind, toeUp: h.toeUp, unit: h.unit, method: h.method, every: h.every, quick: h.quick, corner: h.corner}
	switch h.kind {
	case HeelKindShortRows:
		h.planShortRows(&out)
	case HeelKindWasteYarn:
		h.planWasteYarn(&out)
	default:
		if h.toeUp {
			h.planToeUp(&out)
			break
		}
		h.planFlap(&out)
	}
	return out
}

// add appends a row of a part.
func (o *Heel) add(part HeelPart, side stitch.Side, from, to int, steps ...stitch.Step) {
	number := 1
	if last := len(o.Rows) - 1; last >= 0 && o.Rows[last].Part == part {
		number = o.Rows[last].RowNumber + 1
	}
	kept := steps[:0:0]
	for _, s := range steps {
		if s.Count > 0 || s.Group != nil || s.ToLast != nil {
			kept = append(kept, s)
		}
	}
	o.Rows = append(o.Rows, HeelRow{part, number, side,
		stitch.Instruction{Row: stitch.RowOf(kept...), StartStitches: from, EndStitches: to}})
}
