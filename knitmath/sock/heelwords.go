package sock

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

var _, _ report.Answer = Heel{}, Toe{}

// heelNames are the kinds in words.
var heelNames = map[HeelKind]string{HeelKindRound: "a round turn", HeelKindSquare: "a square turn", HeelKindHeart: "a heart turn"}

// Summary says the answer in words.
func (o Heel) Summary() string { return o.summary }

// Directions write the heel as a pattern would.
func (o Heel) Directions() []string { return o.directions }

// summarise is the heel in a sentence.
func (o Heel) summarise() string {
	over := " over " + strconv.Itoa(o.HeelStitches) + " of " + report.CountOf(o.RoundStitches, "stitches")
	switch o.kind {
	case HeelKindShortRows:
		return "A heel of short rows" + over + ": down to the " + report.CountOf(*o.CentreStitches, "stitches") +
			" in the middle and out again" + o.deep() + "."
	case HeelKindWasteYarn:
		return "A heel knit in afterwards" + over + ": " + report.CountOf(*o.ClosingStitches, "stitches") +
			" around the opening, closed like a toe down to " + strconv.Itoa(*o.EndStitches) + o.deep() + "."
	}
	if o.toeUp {
		return o.sumToeUp(over)
	}
	s := "A heel of flap and gusset with " + heelNames[o.kind] + over + ": " + report.CountOf(*o.FlapRows, "flap rows") + o.deep() + ", " +
		report.CountOf(*o.TurnedStitches, "stitches") + " after the turn, " + strconv.Itoa(*o.PickUpStitches) + " picked up along each edge"
	if *o.GussetDecreaseRounds == 0 {
		return s + ", and the round has its " + report.CountOf(o.RoundStitches, "stitches") + " again at once."
	}
	return s + "; the round of " + strconv.Itoa(*o.GreatestRoundStitches) + " comes back to " + strconv.Itoa(o.RoundStitches) + " in " +
		report.CountOf(*o.GussetRounds, "rounds") + ", of which " + strconv.Itoa(*o.GussetDecreaseRounds) + " decrease."
}

// deep is the depth in words; empty without gauge.
func (o Heel) deep() string {
	if o.DepthCm == nil {
		return ""
	}
	return " (" + o.unit.Size(*o.DepthCm) + ")"
}

// direct is the heel step by step.
func (o Heel) direct() []string {
	first := "heel"
	if o.toeUp {
		first = "sole"
	}
	d := []string{"Note: the round begins with the " + report.CountOf(o.HeelStitches, "stitches") + " of the " + first +
		" (needle 1); the " + strconv.Itoa(o.InstepStitches) + " of the instep (needle 2) follow."}
	if o.FootToHeelCm != nil {
		d = append(d, "Work the foot even until it measures "+o.unit.Size(*o.FootToHeelCm)+" from the tip of the toe.")
	}
	switch o.kind {
	case HeelKindShortRows:
		return o.shortRowDirections(d)
	case HeelKindWasteYarn:
		return o.wasteYarnDirections(d)
	}
	if o.toeUp {
		return o.directToeUp(d)
	}
	d = o.flapDirections(d)
	d = o.turnDirections(d)
	d = o.pickUpDirections(d)
	return o.gussetDirections(d)
}

// part is the rows of a part.
func (o Heel) part(part HeelPart) []HeelRow {
	var rows []HeelRow
	for _, r := range o.Rows {
		if r.Part == part {
			rows = append(rows, r)
		}
	}
	return rows
}

// line is "Row 3 (RS): sl 1, k6, ssk, k1, turn".
func (r HeelRow) line() string {
	return "Row " + strconv.Itoa(r.RowNumber) + " (" + r.Side.String() + "): " + r.Instruction.Row.Text()
}

func (o Heel) flapDirections(d []string) []string {
	rows := o.part(HeelPartFlap)
	d = append(d, "Heel flap, to and fro over needle 1, while needle 2 rests. "+
		"Slip stitches purlwise, with the yarn on the wrong side.",
		rows[0].line()+".", rows[1].line()+".")
	slipped := "Each edge has " + report.CountOf(len(rows)/2, "slipped stitches") + "."
	if times := len(rows)/2 - 1; times > 0 {
		slipped = "Repeat rows 1 and 2 " + report.Again(times) + " (" + report.CountOf(len(rows), "rows") + "). " + slipped
	}
	return append(d, slipped)
}

func (o Heel) turnDirections(d []string) []string {
	d = append(d, "Turn of the heel:")
	rows := o.part(HeelPartTurn)
	told := len(rows)
	if o.kind == HeelKindSquare {
		told = min(told, 4) // from the 2nd row on those of a side are alike
	}
	for _, r := range rows[:told] {
		d = append(d, r.line()+".")
	}
	if more := (len(rows) - told) / 2; more > 0 {
		d = append(d, "Repeat rows 3 and 4 "+report.Again(more)+" ("+report.CountOf(len(rows), "rows")+" in all).")
	}
	return append(d, "All stitches beside the centre are worked, "+strconv.Itoa(*o.TurnedStitches)+
		" are left on needle 1, and a right-side row is next.")
}

func (o Heel) pickUpDirections(d []string) []string {
	chain, p := *o.FlapRows/2, *o.PickUpStitches
	how := "one in each of its " + report.CountOf(chain, "slipped stitches")
	switch more := p - chain; {
	case more < 0:
		how = "all of them evenly over its " + report.CountOf(chain, "slipped stitches")
	case more > mostCorner:
		how += ", and " + strconv.Itoa(more) + " more, evenly along it"
	case more > 0:
		how += ", and " + strconv.Itoa(more) + " in the corner to the instep"
	}
	edge := "pick up and knit " + strconv.Itoa(p) + " " + stitchesShort(p) + " along "
	return append(d, fmt.Sprintf("Pick-up round: k%d, %sthe edge of the flap, pm, k%d, pm, %sthe other edge (%d stitches).",
		*o.TurnedStitches, edge, o.InstepStitches, edge, *o.GreatestRoundStitches),
		"Note: along each edge pick up "+how+". The two markers stand beside the instep, and the round begins with the turned heel.")
}

// stitchesShort is "st" or "sts".
func stitchesShort(n int) string {
	if n == 1 {
		return "st"
	}
	return "sts"
}

func (o Heel) gussetDirections(d []string) []string {
	times, now := *o.GussetDecreaseRounds, *o.GreatestRoundStitches
	if times == 0 {
		return append(d, "The sole is as wide as the heel was already. "+beginsAnew, otherMarker)
	}
	d = append(d, fmt.Sprintf("Gusset round 1 (decrease round): "+
		"k to 3 sts before m, k2tog, k1, sm, k%d, sm, k1, ssk, k to end (%d stitches).", o.InstepStitches, now-2))
	quick := min(o.quick, times) - 1
	if o.every == 1 {
		quick = times - 1
	}
	if slow := times - 1 - quick; quick+slow > 0 {
		d = append(d, "Repeat the decrease round "+repeats(quick, o.every, slow)+" ("+report.CountOf(o.RoundStitches, "stitches")+").")
	}
	return append(d, "The sole is as wide as the heel was. "+beginsAnew, otherMarker)
}

// repeats says when a round is worked again: at once, and then on every so many.
func repeats(quick, every, slow int) string {
	words := ""
	switch {
	case quick == 1:
		words = "on the next round"
	case quick > 1:
		words = "on the next " + report.CountOf(quick, "rounds")
	}
	if slow == 0 {
		return words
	}
	if words != "" {
		words += ", then "
	}
	if every == 1 {
		return words + "every round " + report.Again(slow)
	}
	return words + "every " + report.Ordinal(every) + " round " + report.Again(slow)
}

// beginsAnew moves the beginning of the round to the side, where the other marker is not needed.
const (
	otherMarker = "Take the other marker out when you come to it."
	beginsAnew  = "Knit to the first marker. The round now begins there, with the instep."
)
