package sock

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// unmarked is a round after which the sole needs no marker.
func unmarked(in stitch.Instruction) string {
	return "Next round: k to m, remove m, k to end (" + report.CountOf(in.EndStitches, "stitches") + ")."
}

// nextRound is the round that closes the last gaps.
func nextRound(in stitch.Instruction) string {
	return "Next round: " + in.Row.Text() + " (" + report.CountOf(in.EndStitches, "stitches") + ")."
}

func (o Heel) shortRowDirections(d []string) []string {
	d = append(d, shortrow.Technique(o.method)+twiceWrapped(o.method))
	rows := o.part(HeelPartShortRows)
	for _, r := range rows[:len(rows)-1] {
		d = append(d, r.line()+".")
	}
	return append(d, "The last of these goes on over the instep to the end of the round.", nextRound(rows[len(rows)-1].Instruction))
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
	corners := "Leave the corners"
	if o.corner > 0 {
		corners = "Pick up " + report.CountOf(o.corner, "stitches") + " in each of the two corners between them"
	}
	rest := "foot and toe"
	if o.toeUp {
		rest = "the leg"
	}
	d = append(d, fmt.Sprintf("Round of the heel: k%d with a smooth waste yarn, "+
		"slip these %d back to the left needle, knit them again with the sock's yarn, and k%d.",
		o.HeelStitches, o.HeelStitches, o.InstepStitches),
		"Work "+rest+". Then put the stitches below and above the waste yarn on two needles, "+strconv.Itoa(o.HeelStitches)+
			" each (above, the half loop at the edge counts), and take the waste yarn out. "+corners+", join the yarn "+
			joined[o.corner]+", and begin the round there: "+report.CountOf(*o.ClosingStitches, "stitches")+"."+o.halves())
	return append(d, o.closing...)
}

// joined is where the round of a heel knit in afterwards begins, by the stitches of a corner.
var joined = [MaxCorner + 1]string{"at one of them", "before the stitch of one of them", "between the stitches of one of them",
	"after the first stitch of one of them"}

// halves says how the stitches of the corners are shared by the two halves of the round, which decrease alike.
func (o Heel) halves() string {
	before, after := o.corner-o.corner/2, o.corner/2
	parts := []string{strconv.Itoa(before) + " of a corner", strconv.Itoa(o.HeelStitches) + " of a needle",
		strconv.Itoa(after) + " of the next corner"}
	switch o.corner {
	case 0:
		return ""
	case 1:
		parts = parts[:2]
	}
	return " Each half of the round is " + report.Listed(parts) + "."
}
