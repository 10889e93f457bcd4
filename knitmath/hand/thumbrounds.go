package hand

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// answer puts a settled thumb together.
func (t *thumb) answer(in ThumbInput) Thumb {
	out := Thumb{
		HandStitches: t.stitches, MittenCm: t.st.SizeCm(t.stitches), GussetStitches: t.gusset, HoldStitches: t.hold, GapStitches: t.gap,
		ThumbStitches: t.thumbStitches, ThumbCm: t.st.SizeCm(t.thumbStitches), LengthRounds: t.length, LengthCm: t.rw.SizeCm(t.length),
		EndStitches: t.closing.EndStitches, Notices: t.notices, picked: t.picked, none: t.none, closing: t.closing, unit: in.DisplayUnit,
	}
	out.HandRounds = t.handRounds()
	last := out.HandRounds[len(out.HandRounds)-1]
	out.AfterStitches = last.Right.EndStitches
	out.GussetRounds = last.RoundNumber - 1
	out.GussetCm = t.rw.SizeCm(out.GussetRounds)
	out.ThumbRounds = t.thumbRounds()
	out.Notices = append(out.Notices, t.unlike(in, out.GussetRounds)...)
	out.sources = t.cited(in)
	if in.WithOutline {
		out.Outline = t.outline(out)
	}
	return out
}

// unlike are the remarks on a thumb that counts right.
func (t *thumb) unlike(in ThumbInput, gussetRounds int) []report.Notice {
	var list []report.Notice
	if t.none {
		list = append(list, report.Notice{Reason: NeedsEase, Field: "gusset",
			Description: "without a gusset a thumb pulls at the palm unless the mitten is wider than the hand"})
	}
	if part := float64(t.thumbStitches) / float64(t.stitches); part < leastThumbOfHand || part > mostThumbOfHand {
		list = append(list, report.Notice{Reason: ThumbUnlikeHands, Field: t.gussetField, Description: "the thumb has " +
			measure.Decimal(100*part, 1) + " % of the stitches of the hand; thumbs have 28 to 50 %"})
	}
	if part := t.rw.SizeCm(gussetRounds) / t.st.SizeCm(t.stitches); part > mostGussetOfHand {
		field := in.heightField()
		if field == "" {
			field = "every_rounds"
		}
		much := measure.Decimal(part, 2) + " times"
		if much == "1 times" {
			much = "as much as"
		}
		list = append(list, report.Notice{Reason: GussetUnlikeHands, Field: field, Description: "the gusset is " +
			in.DisplayUnit.Size(t.rw.SizeCm(gussetRounds)) + " high, " + much +
			" the hand's circumference; gussets commonly have about a third of it"})
	}
	return list
}

func (t *thumb) cited(in ThumbInput) []report.Source {
	list := slices.Clone(t.sources)
	switch {
	case t.none && in.HoldStitches == nil:
		list = append(list, noGussetCited)
	case !t.none && in.GussetStitches == nil && (in.EveryRounds == nil || in.heightField() == ""):
		list = append(list, gussetCited)
	}
	if !t.none && in.EveryRounds == nil && in.heightField() == "" {
		list = append(list, rateCited)
	}
	if in.LengthRounds == nil && in.LengthCm == nil {
		list = append(list, thumbLengthCited)
	}
	return list
}

// handRounds are the increase rounds, so many rounds apart, and the one that holds the
// thumb, as many rounds after the last.
//
// A round begins at the edge of the little finger. On the right hand it comes over the
// back to the thumb and back over the palm, on the left hand over the palm first.
func (t *thumb) handRounds() []HandRound {
	back := t.stitches / 2
	of := t.start
	if t.none {
		of = t.hold
	}
	// On either hand: what lies before the thumb, and after it.
	right, left := back+t.palm, t.stitches-back-t.palm-of
	var list []HandRound
	round, width := 1, of
	for _, rate := range t.rates {
		for range rate.Times {
			list = append(list, HandRound{round, t.increase(right, width), t.increase(left, width)})
			round, width = round+rate.EveryRounds, width+2
		}
	}
	return append(list, HandRound{round, t.held(right, width), t.held(left, width)})
}

// increase is an increase round with so many stitches before the gusset.
func (t *thumb) increase(before, width int) stitch.Instruction {
	all := t.stitches - t.start + width
	return instruction(all, stitch.Do(stitch.Knit, before), stitch.Do(stitch.M1L, 1), stitch.Do(stitch.Knit, width),
		stitch.Do(stitch.M1R, 1), stitch.Do(stitch.Knit, all-before-width))
}

// held is the round that holds the thumb and casts on over the gap.
func (t *thumb) held(before, width int) stitch.Instruction {
	all := t.stitches
	if !t.none {
		all += width - t.start
	}
	before -= t.beside
	return instruction(all, stitch.Do(stitch.Knit, before), stitch.Do(stitch.Hold, t.hold), stitch.Do(stitch.CastOn, t.gap),
		stitch.Do(stitch.Knit, all-before-t.hold))
}

// instruction is a round on so many stitches of the steps that are not empty.
func instruction(start int, steps ...stitch.Step) stitch.Instruction {
	end := start
	steps = slices.DeleteFunc(steps, func(s stitch.Step) bool { return s.Count == 0 })
	for _, s := range steps {
		end += s.Op.Net() * s.Count
	}
	return stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: start, EndStitches: end}
}

// thumbRounds are the rounds of the thumb that are not worked even.
func (t *thumb) thumbRounds() []solid.ClosingRound {
	list := []solid.ClosingRound{{RoundNumber: 1, Instruction: instruction(t.hold+t.picked, stitch.Do(stitch.PickUp, t.picked),
		stitch.Do(stitch.Knit, t.hold))}}
	if t.picked > t.gap {
		list = append(list, solid.ClosingRound{RoundNumber: 2, Instruction: instruction(t.hold+t.picked, stitch.Do(stitch.SSK, 1),
			stitch.Do(stitch.Knit, t.picked-4), stitch.Do(stitch.K2tog, 1), stitch.Do(stitch.Knit, t.hold))})
	}
	for _, r := range t.closing.Rounds {
		r.RoundNumber += t.length - t.closing.RoundCount
		list = append(list, r)
	}
	return list
}
