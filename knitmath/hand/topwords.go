package hand

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

// Summary says the answer in words.
func (o MittenTop) Summary() string {
	even := ""
	if o.EvenRounds > 0 {
		even = report.CountOf(o.EvenRounds, "rounds") + " even, then "
	}
	finish := "drawn up"
	if o.Finish == FinishGraft {
		finish = "grafted"
	}
	return "On " + report.CountOf(o.HandStitches, "stitches") + " (" + o.unit.Size(o.MittenCm) + " around): " + even + "a top of " +
		report.CountOf(o.TopRounds, "rounds") + " (" + o.unit.Size(o.TopCm) + ") to " + report.CountOf(o.EndStitches, "stitches") + ", " +
		finish + "."
}

// Directions write the top as a pattern would.
func (o MittenTop) Directions() []string {
	var d []string
	switch o.kind {
	case TopKindStar, TopKindRound:
		d = append(d, "Rounds begin at the edge of the hand.")
	default:
		d = append(d, "Rounds begin at the edge of the hand: the first half of each is one side, the second half the other.")
	}
	d = report.AppendEven(d, "round", 1, o.EvenRounds)
	d = append(d, o.plan.Directions(o.EvenRounds+1)...)
	if o.Finish == FinishGraft {
		return append(d, solid.Graft(o.EndStitches/sides))
	}
	return append(d, solid.DrawUp(o.EndStitches))
}

// Sources says where the figures come from.
func (o MittenTop) Sources() []report.Source {
	how := wedgeTopCited
	switch o.kind {
	case TopKindStar:
		how = starTopCited
	case TopKindRound:
		if how = roundTopCited; o.scaled {
			how = scaledTopCited
		}
	case TopKindShort:
		how = shortTopCited
	}
	return solid.CitedCare(append([]report.Source{how}, o.sources...), o.Notices)
}
