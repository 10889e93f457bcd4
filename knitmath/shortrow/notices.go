package shortrow

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// notices are the remarks on a wedge and on its turns.
func (w wedge) notices(out Wedge, p placed) []report.Notice {
	var list []report.Notice
	if w.asked != float64(out.RiseRows) {
		list = append(list, riseNotice(w.riseField, w.asked, out.RiseRows, w.roundedBy(out, p.wanted, p.planned)))
	}
	if w.tall != TallEndUnspecified {
		if n := everyStitch(out.Turns); n >= manyTurns {
			list = append(list, report.Notice{Reason: TurnsAtEveryStitch, Field: w.riseField,
				Description: report.CountOf(n, "turns") + " follow one another stitch by stitch, as steep as short rows go, as at a heel; " +
					"elsewhere the edge stretches into holes, and a lower rise or more stitches would ease it"})
		}
		if p.wanting != nil {
			list = append(list, manyRunsNotice(*p.wanting))
		}
		return list
	}
	if _, steep := eased(p.wanted); steep {
		return append(list, w.steepNotice(p.wanted, out.GreatestDepartureRows))
	}
	if out.GreatestDepartureRows > maxDeparture {
		return append(list, report.Notice{Reason: DoublesStandOut, Field: "turn_method",
			Description: "the double stitches, which have a row more, leave the curve by up to " +
				measure.Decimal(out.GreatestDepartureRows, 2) + " rows; another way of turning stays within one"})
	}
	return list
}

// manyRunsNotice says how much further easy turns depart.
func manyRunsNotice(rows float64) report.Notice {
	excess := "no tolerance up to " + strconv.Itoa(MaxTolerance) + " rows"
	if rows <= MaxTolerance {
		excess = "a tolerance of " + report.AmountOf(measure.Decimal(rows, 2), "rows")
	}
	return report.Notice{Reason: ManyRuns, Field: "tolerance_rows",
		Description: "no steps of one or two runs lie that near to the profile; the nearest turns are given; " + excess + " allows easy ones"}
}

// manyTurns is how many turns in succession a stitch apart are remarked on. Fewer are
// the end of a slope of unequal steps. Common practice.
const manyTurns = 5

// steepShare is of how many of the turns of a side, one in so many, the steps may be longer: the
// slope is as steep as it would be without them. Own choice.
const steepShare = 5

// everyStitch is the most turns of one side in succession that lie a stitch apart; 0
// where more than a few of that side's steps are longer.
func everyStitch(turns []TurnSequence) int {
	most := 0
	for _, s := range turns {
		inTurn, longest, longer, all := 1, 1, 0, 1
		for _, step := range s.Steps {
			all += step.Times
			if step.Stitches > 1 {
				longer += step.Times
				inTurn = 1
				continue
			}
			inTurn += step.Times
			longest = max(longest, inTurn)
		}
		if steepShare*longer <= all {
			most = max(most, longest)
		}
	}
	return most
}

// inPairs is why a rise is rounded.
const inPairs = "short rows come in pairs"

// roundedBy says why a wedge does not rise as it was asked to. A curve can miss
// its rise in more ways than by whole pairs: the last that changed it is told.
func (w wedge) roundedBy(out Wedge, wanted, planned []int) string {
	rise := func(pairs []int) int { return 2 * (slices.Max(pairs) - slices.Min(pairs)) }
	switch {
	case w.tall != TallEndUnspecified:
		return inPairs
	case rise(planned) != out.RiseRows:
		return "stitches made double have a row more"
	case rise(planned) != rise(wanted):
		return "the turns could not follow it"
	}
	return inPairs + ", for the height under the middle of each stitch"
}

// RiseNotice says to which rise one was rounded that is not a whole number of
// pairs.
func RiseNotice(field string, askedRows float64, riseRows int) report.Notice {
	return riseNotice(field, askedRows, riseRows, inPairs)
}

func riseNotice(field string, askedRows float64, riseRows int, why string) report.Notice {
	return report.Notice{Reason: RiseRounded, Field: field,
		Description: "asks for " + report.AmountOf(measure.Decimal(askedRows, 2), "rows") +
			"; " + why + ", and " + report.CountOf(riseRows, "rows") + " were planned"}
}

// steepNotice says where a curve was steeper than its turns can follow.
func (w wedge) steepNotice(pairs []int, departure float64) report.Notice {
	first, last := -1, 0
	for x := 1; x < len(pairs); x++ {
		if measure.Abs(pairs[x]-pairs[x-1]) > 1 {
			if first < 0 {
				first = x
			}
			last = x + 1
		}
	}
	return report.Notice{Reason: SteeperThanOneStitchATurn, Field: w.riseField,
		Description: "between stitches " + strconv.Itoa(first) + " and " + strconv.Itoa(last) +
			" from the right edge the curve rises or falls by more than a pair of rows a stitch; " +
			"turns lie at least one stitch apart, so it was eased there, and departs from the curve by up to " +
			measure.Decimal(departure, 2) + " rows"}
}
