package hand

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// Summary says the answer in words.
func (o Thumb) Summary() string {
	gusset := "no gusset"
	if !o.none {
		gusset = "a gusset of " + report.CountOf(o.GussetStitches, "stitches") + " in " + report.CountOf(o.GussetRounds, "rounds") +
			" (" + o.unit.Size(o.GussetCm) + ")"
	}
	return "A hand of " + report.CountOf(o.HandStitches, "stitches") + " with " + gusset + "; " + report.CountOf(o.HoldStitches, "stitches") +
		" held, " + strconv.Itoa(o.GapStitches) + " cast on over the gap, " + report.CountOf(o.AfterStitches, "stitches") +
		" above it; a thumb of " + report.CountOf(o.ThumbStitches, "stitches") + " (" + o.unit.Size(o.ThumbCm) + " around), " +
		report.CountOf(o.LengthRounds, "rounds") + " (" + o.unit.Size(o.LengthCm) + ") long."
}

// Directions write both hands, and the thumb, as a pattern would.
func (o Thumb) Directions() []string {
	d := []string{"Rounds begin at the edge of the little finger, fingers pointing up; round 1 is the first of the thumb's."}
	d = o.hand(d, "Right hand", "over the back of the hand, then over the palm", func(r HandRound) stitch.Instruction { return r.Right })
	d = o.hand(d, "Left hand", "over the palm, then over the back of the hand", func(r HandRound) stitch.Instruction { return r.Left })
	d = append(d, "Thumb, both hands: put the "+report.CountOf(o.HoldStitches, "stitches")+" on hold back on the needles and join the yarn "+
		"after the last of them, at the left end of the gap.",
		"Note: the fingers point up; the first round picks up along the gap, knits the stitches, and joins.")
	for i, r := range o.ThumbRounds {
		words := "thumb"
		switch {
		case i == 0 && o.picked > o.GapStitches:
			words = "thumb, along the gap and one in each corner"
		case i == 0:
			words = "thumb, along the gap"
		case i == 1 && o.picked > o.GapStitches:
			words = "thumb, to close the corners"
		}
		if i > 0 {
			d = appendEven(d, "thumb", o.ThumbRounds[i-1].RoundNumber+1, r.RoundNumber-1)
		}
		row := r.Instruction.Row.Text()
		if i == 0 {
			row = "pick up and knit " + report.CountOf(o.picked, "sts") + ", k" + strconv.Itoa(o.HoldStitches)
		}
		d = append(d, "Round "+strconv.Itoa(r.RoundNumber)+" ("+words+"): "+row+" ("+
			report.CountOf(r.Instruction.EndStitches, "stitches")+").")
	}
	return append(d, solid.DrawUp(o.EndStitches), "Close what gapes at the corners with the yarn's end.")
}

// hand writes the rounds of one hand.
func (o Thumb) hand(d []string, name, way string, of func(HandRound) stitch.Instruction) []string {
	d = append(d, name+": rounds go "+way+".")
	last, hand := 0, strings.ToLower(name)
	for i, r := range o.HandRounds {
		d = appendEven(d, hand, last+1, r.RoundNumber-1)
		words := ""
		if i == len(o.HandRounds)-1 {
			words = "; the stitches of the thumb on waste yarn"
		}
		in := of(r)
		d = append(
			d,
			"Round "+strconv.Itoa(r.RoundNumber)+" ("+hand+words+"): "+in.Row.Text()+" ("+report.CountOf(in.EndStitches, "stitches")+").",
		)
		last = r.RoundNumber
	}
	return d
}

// appendEven adds the rounds of a hand or a thumb that are worked even.
func appendEven(d []string, part string, first, last int) []string {
	if first > last {
		return d
	}
	return append(d, report.Rows("round", first, last)+" ("+part+"): work even.")
}

// Sources says where the figures come from.
func (o Thumb) Sources() []report.Source {
	return solid.CitedCare(append([]report.Source{heldCited}, o.sources...), o.Notices)
}
