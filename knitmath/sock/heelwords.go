package sock

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
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
	return s + "; the round of " + strconv.Itoa(*o.GussetStitches) + " comes back to " + strconv.Itoa(o.RoundStitches) + " in " +
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
	d := []string{"The round begins with the " + report.CountOf(o.HeelStitches, "stitches") + " of the " + first + " (needle 1); the " +
		strconv.Itoa(o.InstepStitches) + " of the instep (needle 2) follow."}
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
	slipped := report.CountOf(len(rows)/2, "slipped stitches") + " along each edge."
	if times := len(rows)/2 - 1; times > 0 {
		return append(d, "Repeat rows 1 and 2 "+moreTimes(times)+": "+report.CountOf(len(rows), "rows")+", and "+slipped)
	}
	return append(d, "That makes "+slipped)
}

// moreTimes is "once more", "12 more times".
func moreTimes(n int) string {
	if n == 1 {
		return "once more"
	}
	return strconv.Itoa(n) + " more times"
}

func (o Heel) turnDirections(d []string) []string {
	d = append(d, "Turn of the heel:")
	rows := o.part(HeelPartTurn)
	told := len(rows)
	if o.kind == HeelKindSquare {
		told = min(told, 3) // from the 2nd row on all are alike
	}
	for _, r := range rows[:told] {
		d = append(d, r.line()+".")
	}
	if more := len(rows) - told; more > 0 {
		again := "Repeat row 2 once more"
		if more > 1 {
			again = "Repeat rows 2 and 3 " + moreTimes(more/2) + ", then row 2 once more"
		}
		d = append(d, again+": "+report.CountOf(len(rows), "rows")+" in all.")
	}
	return append(d, "All stitches beside the centre are worked: "+report.CountOf(*o.TurnedStitches, "stitches")+
		" on needle 1, and a right-side row is next.")
}

func (o Heel) pickUpDirections(d []string) []string {
	chain, p := *o.FlapRows/2, *o.PickUpStitches
	how := "one in each of its " + report.CountOf(chain, "slipped stitches")
	switch more := p - chain; {
	case more < 0:
		how = "spread evenly over its " + report.CountOf(chain, "slipped stitches")
	case more > mostCorner:
		how += ", and " + strconv.Itoa(more) + " more, evenly along it"
	case more > 0:
		how += ", and " + strconv.Itoa(more) + " in the corner to the instep"
	}
	return append(d, fmt.Sprintf("Pick-up round: k%d across the heel, pick up and knit %d along the edge of the flap (%s), place marker 1, "+
		"k%d of the instep, place marker 2, pick up and knit %d along the other edge in the same way (%d stitches). "+
		"The round begins with the turned heel.", *o.TurnedStitches, p, how, o.InstepStitches, p, *o.GussetStitches))
}

func (o Heel) gussetDirections(d []string) []string {
	times, now := *o.GussetDecreaseRounds, *o.GussetStitches
	if times == 0 {
		return append(d, "The sole has its "+report.CountOf(o.HeelStitches, "stitches")+" already. "+o.beginsAnew())
	}
	d = append(d, fmt.Sprintf("Gusset round 1 (decrease round): "+
		"k to 3 sts before marker 1, k2tog, k1, sm, k%d, sm, k1, ssk, k to end (%d stitches).",
		o.InstepStitches, now-2))
	quick := min(o.quick, times) - 1
	if o.every == 1 {
		quick = times - 1
	}
	slow := times - 1 - quick
	repeats := ""
	switch {
	case quick == 1:
		repeats = "on the next round"
	case quick > 1:
		repeats = "on each of the next " + report.CountOf(quick, "rounds")
	}
	if slow > 0 {
		if repeats != "" {
			repeats += ", then "
		}
		repeats += "on every " + report.Ordinal(o.every) + " round " + moreTimes(slow)
	}
	if repeats != "" {
		d = append(d, "Work the decrease round again "+repeats+evenBetween(o.every, slow)+".")
	}
	return append(d, fmt.Sprintf("After round %d there are %d stitches: %d of the sole and %d of the instep. %s",
		*o.GussetRounds, o.RoundStitches, o.HeelStitches, o.InstepStitches, o.beginsAnew()))
}

// evenBetween says what the other rounds are.
func evenBetween(every, slow int) string {
	if slow == 0 {
		return ""
	}
	return ", with " + report.CountOf(every-1, "rounds") + " worked even before each"
}

// beginsAnew moves the beginning of the round to the side.
func (o Heel) beginsAnew() string {
	return "Knit to marker 1: from here the round begins with the instep, and the sole follows."
}

func (o Heel) shortRowDirections(d []string) []string {
	d = append(d, shortrow.Technique(o.method)+twiceWrapped(o.method))
	rows := o.part(HeelPartShortRows)
	for _, r := range rows[:len(rows)-1] {
		d = append(d, r.line()+".")
	}
	return append(d, "The last of these goes on over the instep to the end of the round.",
		"Next round: "+rows[len(rows)-1].Instruction.Row.Text()+". All gaps are closed: "+report.CountOf(o.RoundStitches, "stitches")+".")
}

// twiceWrapped says what is done with the two wraps of a stitch that a cup's second half
// wraps again.
func twiceWrapped(m shortrow.TurnMethod) string {
	if m == shortrow.TurnMethodGerman {
		return ""
	}
	return " A stitch that was wrapped twice is worked together with both its wraps."
}

func (o Heel) wasteYarnDirections(d []string) []string {
	corner := ""
	if o.corner > 0 {
		corner = " Pick up " + report.CountOf(o.corner, "stitches") + " in each of the two corners between them,"
	} else {
		corner = " Leave the corners,"
	}
	rest := "foot and toe"
	if o.toeUp {
		rest = "the leg"
	}
	d = append(d, fmt.Sprintf("Round of the heel: k%d with a smooth waste yarn, "+
		"slip these %d back to the left needle, knit them again with the sock's yarn, and k%d.",
		o.HeelStitches, o.HeelStitches, o.InstepStitches),
		"Work "+rest+". Then put the stitches below and above the waste yarn on two needles, "+strconv.Itoa(o.HeelStitches)+
			" each (above, the half loop at the edge counts), and take the waste yarn out."+corner+" and begin the round at one of them: "+
			report.CountOf(*o.ClosingStitches, "stitches")+".")
	return append(d, o.closing...)
}
