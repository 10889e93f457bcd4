package solid

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of a crown's notices. A count that was exactly half-way is told by the
// reason of package gauge.
const (
	// CrownRuffles: the crown loses more than 1.2 times the stitches of a flat disc of its
	// depth, or over four decrease rounds in its lower part more than 1.3 times. Field is that of
	// the depth.
	CrownRuffles report.Reason = "RUFFLES"
	// CrownPoints: from where half of the stitches are left the crown loses less than 0.7 of
	// what a flat disc does, so that it rises to a point. Field is that of the depth.
	CrownPoints report.Reason = "POINTS"
	// CrownDepthUnmet: the crown cannot be as deep as asked, so many rounds or cm. Field is
	// crown_rounds or crown_cm.
	CrownDepthUnmet report.Reason = "DEPTH_UNMET"
	// SizeUnmet: the nearest count that the repeat divides is over 5 % off the
	// wanted size, or the widest round of a solid, whose rounds gain several stitches at a time.
	// Field is that of the size.
	SizeUnmet report.Reason = "SIZE_UNMET"
	// EndUnmet: more stitches are left than end_stitches allows, since the wedges have no room for
	// another decrease round. Field is end_stitches.
	EndUnmet report.Reason = "END_UNMET"
	// BabyCare: the hat is for a baby or a small child: what to mind about ties and sleep.
	// Field is that of the size.
	BabyCare report.Reason = "BABY_CARE"
)

// How steep a crown may be. A disc is 1. Up to 1.15 lies flat when it is blocked, common
// practice, as of yokes, and a crown is of few rounds and drawn up. A cone with
// 0.7 of a disc's edge rises at 46 degrees. Own choice.
const (
	mostCrown  = 1.2
	mostRun    = 1.3
	leastUpper = 0.7
	// mostOffSize is how far a hat may be from the wanted one before that is said: the ease of
	// published hats differs by as much. Own choice.
	mostOffSize = 0.05
	babyHeadCm  = 48.5 // above the medians of two-year-olds
	doll        = 25.0 // no child's head is smaller
	babyAdvice  = "on a baby or small child: no ties, cords or buttons at the hat, and no hat in sleep indoors; follow the advice of " +
		"the local health service, and where it is sold the rules of the place"
	rufflesWords = " times the stitches of a flat disc of its depth; it ruffles unless it is deeper"
)

// form is what is wrong with the form of the crown; empty where nothing is.
func (h *hat) form() report.Reason {
	whole, upper := h.steepness()
	switch {
	case whole > mostCrown || h.steepest() > mostRun:
		return CrownRuffles
	case upper < leastUpper:
		return CrownPoints
	}
	return ""
}

// careful are the remarks on a crown that counts right.
func (h *hat) careful(in CrownInput, out Crown, steepest float64) []report.Notice {
	list := EndNotice(nil, "end_stitches", in.EndStitches, out.EndStitches)
	if h.wantedHat > 0 && math.Abs(out.HatCm/h.wantedHat-1) > mostOffSize {
		list = append(list, report.Notice{Reason: SizeUnmet, Field: h.sizeField, Description: "the hat is wanted " +
			out.unit.Size(h.wantedHat) + " around and is " + out.unit.Size(out.HatCm) + ": " + report.CountOf(out.HatStitches, "stitches") +
			" are the nearest that the repeat divides; as hat_stitches any count may be given"})
	}
	if (h.crownField == "crown_rounds" || h.crownField == "crown_cm") && h.crown != h.crownRounds {
		list = append(list, report.Notice{Reason: CrownDepthUnmet, Field: h.crownField, Description: "a crown of " +
			report.CountOf(h.crownRounds, "rounds") + " is wanted, and this has " + strconv.Itoa(h.crown) + ": with " +
			report.CountOf(len(h.plan.Rounds), "rounds") + " that decrease no crown comes nearer"})
	}
	switch {
	case out.Steepness > mostCrown:
		list = append(list, report.Notice{Reason: CrownRuffles, Field: h.crownField,
			Description: "the crown loses " + measure.Decimal(out.Steepness, 2) + rufflesWords})
	case steepest > mostRun:
		list = append(list, report.Notice{Reason: CrownRuffles, Field: h.crownField,
			Description: "where its decrease rounds are closest the crown loses " + measure.Decimal(steepest, 2) +
				" times what a flat disc does; it ruffles there"})
	case out.UpperSteepness < leastUpper:
		list = append(list, report.Notice{Reason: CrownPoints, Field: h.crownField,
			Description: "from half-way the crown loses " + hundredths(out.UpperSteepness) +
				" of the stitches of a flat disc, so that it rises to a point"})
	}
	if out.HeadCm >= doll && out.HeadCm <= babyHeadCm {
		list = append(list, report.Notice{Reason: BabyCare, Field: h.sizeField, Description: babyAdvice})
	}
	return list
}

// EndNotice says that more stitches are left than were to be in a field, where that is so.
func EndNotice(list []report.Notice, field string, asked *int, left int) []report.Notice {
	if asked == nil || left <= *asked {
		return list
	}
	return append(list, report.Notice{Reason: EndUnmet, Field: field, Description: report.CountOf(left, "stitches") +
		" are left where " + strconv.Itoa(*asked) + " may be: what is left has no room for another decrease round"})
}

// hundredths is a number to two places, or that it is less.
func hundredths(x float64) string {
	if x < 0.01 {
		return "less than 0.01"
	}
	return measure.Decimal(x, 2)
}
