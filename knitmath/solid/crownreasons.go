package solid

import (
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
	babyHeadCm = 48.5 // above the medians of two-year-olds
	doll       = 25.0 // no child's head is smaller
	babyAdvice = "on a baby or small child: no ties, cords or buttons at the hat, and no hat in sleep indoors; follow the advice of " +
		"the local health service, and where it is sold the rules of the place"
	rufflesWords = " times the stitches of a flat disc of its depth; it ruffles unless it is deeper"
)

// careful are the remarks on a crown that counts right.
func (h *hat) careful(out Crown, steepest float64) []report.Notice {
	var list []report.Notice
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
				" of the stitches of a flat disc, so that it rises to a point; a crown of fewer rounds is rounder"})
	}
	if out.HeadCm >= doll && out.HeadCm <= babyHeadCm {
		list = append(list, report.Notice{Reason: BabyCare, Field: h.sizeField, Description: babyAdvice})
	}
	return list
}

// hundredths is a number to two places, or that it is less.
func hundredths(x float64) string {
	if x < 0.01 {
		return "less than 0.01"
	}
	return measure.Decimal(x, 2)
}
