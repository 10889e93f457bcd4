package hand

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
	"strconv"
)

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
			t.hangOn(in, t.gussetField, "start_stitches", "every_rounds")...)
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
		c.Infeasible(report.CountOf(t.beside, "stitches")+" beside the gusset "+report.Are(t.beside)+" held too, and the palm has "+
			strconv.Itoa(t.palm)+" before it", "palm_stitches", "beside_stitches")
		return
	}
	c.Infeasible("the palm has "+report.CountOf(palm, "stitches")+", of which the thumb takes "+strconv.Itoa(of)+", with "+
		strconv.Itoa(t.palm)+" from the edge to the gusset",
		t.hangOn(in, "palm_stitches", "beside_stitches", "start_stitches", "hold_stitches", t.field)...)
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
	// What is left over stands at the end of the round, so that every round is one repeat: common practice.
	q := solid.Closing{StartStitches: t.thumbStitches, Wedges: t.thumbStitches / thumbWedge, Uneven: solid.UnevenLeftOver,
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
