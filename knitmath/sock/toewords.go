package sock

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

// toeNames are the kinds in words.
var toeNames = map[ToeKind]string{ToeKindWedge: "A wedge toe", ToeKindRound: "A round toe", ToeKindStar: "A star toe",
	ToeKindShortRows: "A toe of short rows"}

// Summary says the answer in words.
func (o Toe) Summary() string { return o.summary }

// Directions write the toe as a pattern would.
func (o Toe) Directions() []string { return o.directions }

// summarise is the toe in two sentences.
func (o Toe) summarise() string {
	s := toeNames[o.kind] + " of " + report.CountOf(o.RoundStitches, "stitches") + o.sections()
	if o.toeUp {
		return s + o.raised()
	}
	if o.kind == ToeKindShortRows {
		s += ": over the sole down to the " + report.CountOf(*o.CentreStitches, "stitches") +
			" in its middle and out again, then grafted to the instep"
	} else {
		adjust := ""
		if o.adjusted > 0 {
			adjust = "a round to " + report.CountOf(o.adjusted, "stitches") + " and "
		}
		s += ": " + adjust + o.shaped("decrease rounds", "it down to ") + strconv.Itoa(o.TipStitches) + ", which are " + o.finish()
	}
	s += "."
	if o.LengthCm != nil {
		s += " It is " + o.unit.Size(*o.LengthCm) + " long."
	}
	if o.FootToToeCm != nil {
		s += " Begin it when the foot measures " + o.unit.Size(*o.FootToToeCm) + " from the back of the heel."
	}
	return s
}

// sections are how many a round toe has.
func (o Toe) sections() string {
	if o.kind != ToeKindRound {
		return ""
	}
	return " in " + report.CountOf(*o.WedgeCount, "sections")
}

// shaped is how many rounds shape a toe, of how many, and that they bring something somewhere.
func (o Toe) shaped(rounds, what string) string {
	bring := " bring "
	if *o.DecreaseRounds == 1 && o.adjusted == 0 {
		bring = " brings "
	}
	return report.CountOf(*o.DecreaseRounds, rounds) + ", of " + report.CountOf(o.LengthRows, "rounds") + " in all," + bring + what
}

// raised is how a toe grows from its tip.
func (o Toe) raised() string {
	s := " from its tip: " + report.CountOf(o.TipStitches, "stitches") + " are cast on, "
	switch {
	case o.kind == ToeKindShortRows:
		s += "half of them worked in short rows down to the " + report.CountOf(*o.CentreStitches, "stitches") +
			" in its middle and out again."
	case o.adjusted > 0:
		s += o.shaped("increase rounds", "them to ") + strconv.Itoa(o.adjusted) + ", and the last to the round."
	default:
		s += "and " + o.shaped("increase rounds", "them to the round.")
	}
	if o.LengthCm != nil {
		s += " It is " + o.unit.Size(*o.LengthCm) + " long."
	}
	return s
}

// directUp is a toe from its tip.
func (o Toe) directUp() []string {
	d := []string{"Cast on " + report.CountOf(o.TipStitches, "stitches") + " (in a ring that the tail closes) and join in the round.",
		"Note: the round begins at one side of the foot."}
	if o.kind == ToeKindWedge {
		d = []string{"Cast on " + report.CountOf(o.TipStitches, "stitches") + " and join in the round.",
			"Note: cast on half of them on each of two needles, by a cast-on that closes the tip. The round begins at one side of the foot: " +
				"half of it is the sole, half the instep."}
	}
	if o.kind == ToeKindShortRows {
		d = []string{"Cast on " + report.CountOf(o.TipStitches, "stitches") + " and join in the round.",
			"Note: cast on half of them on each of two needles, by a cast-on that joins both. The round begins at one side of the foot: " +
				"the first half of it becomes toe and sole, the other is the instep."}
		d = o.directCup(d)
		last := o.Rows[len(o.Rows)-1].Instruction
		if last.EndStitches > last.StartStitches {
			d = append(d, "Note: the instep gets a stitch more than the sole, in the next round.")
		}
		return append(d, nextRound(last))
	}
	return append(d, o.closing...)
}

// directCup adds the rows of a toe of short rows, but the last.
func (o Toe) directCup(d []string) []string {
	d = append(d, shortrow.Technique(o.method)+twiceWrapped(o.method))
	for _, r := range o.Rows[:len(o.Rows)-1] {
		d = append(d, "Row "+strconv.Itoa(r.RowNumber)+" ("+r.Side.String()+"): "+r.Instruction.Row.Text()+".")
	}
	return append(d, "The last of these goes on over the instep to the end of the round.")
}

// finish is what is done with the last stitches.
func (o Toe) finish() string {
	if o.kind == ToeKindWedge {
		return "grafted, " + strconv.Itoa(o.TipStitches/2) + " to " + strconv.Itoa(o.TipStitches/2)
	}
	return "drawn up"
}

// direct is the toe step by step.
func (o Toe) direct() []string {
	if o.toeUp {
		return o.directUp()
	}
	sole := o.RoundStitches / 2
	begin := "Note: the round begins at one side of the foot"
	if o.kind == ToeKindWedge {
		begin += ": half of it is the sole, half the instep; where they differ, move stitches from one to the other"
	}
	if o.kind == ToeKindShortRows {
		begin += ", with the " + report.CountOf(sole, "stitches") + " of the sole; the " +
			strconv.Itoa(o.RoundStitches-sole) + " of the instep follow. If it begins with the instep, first knit over that"
	}
	d := []string{begin + "."}
	if o.FootToToeCm != nil {
		d = append(d, "Work the foot even until it measures "+o.unit.Size(*o.FootToToeCm)+" from the back of the heel.")
	}
	if o.kind != ToeKindShortRows {
		d = append(d, o.closing...)
		if o.kind == ToeKindWedge {
			return append(d, solid.Graft(o.TipStitches/2))
		}
		return append(d, solid.DrawUp(o.TipStitches))
	}
	d = o.directCup(d)
	last := o.Rows[len(o.Rows)-1].Instruction
	if last.EndStitches < last.StartStitches {
		d = append(d, "Note: the instep has a stitch more than the sole, and the next round knits two of it together.")
	}
	return append(d, nextRound(last), solid.Graft(sole))
}
