package swatch

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of the notices. A list is stitches_before, rows_before,
// stitches_after or rows_after.
const (
	// SingleReading: a list has one reading, which says nothing of the scatter.
	// Field is the list.
	SingleReading report.Reason = "SINGLE_READING"
	// NoScatter: all readings of a list, two or more, are the same gauge. Field is
	// the list.
	NoScatter report.Reason = "NO_SCATTER"
	// OutlyingReading: one reading lies farther from the others of its list than
	// chance explains, by Grubbs' test. Field is the reading, as stitches_after[2].
	OutlyingReading report.Reason = "OUTLYING_READING"
	// MixedStates: the gauge is of readings after washing in one direction and
	// before it in the other. Field is the list that was read before washing only.
	MixedStates report.Reason = "MIXED_STATES"
	// FourInches: a yarn category that is listed holds the gauge over 4 in or over
	// 10 cm, but not over both. Field is the list of stitches that the gauge is of.
	FourInches report.Reason = "FOUR_INCHES"
	// UnlistedNeedle: the needle is not a size of the table. Field is needle_mm.
	UnlistedNeedle report.Reason = "UNLISTED_NEEDLE"
)

// notices are the remarks on a list that was read.
func (l *readingList) notices(noun string) []report.Notice {
	switch {
	case len(l.values) == 1:
		return []report.Notice{{Reason: SingleReading, Field: l.field,
			Description: "one reading says nothing of the scatter; count in three places or more"}}
	case l.equal:
		return []report.Notice{{Reason: NoScatter, Field: l.field,
			Description: "all readings agree: half-width 0 says only that the ruler is coarser than the scatter"}}
	}
	i, found := l.outlier()
	if !found {
		return nil
	}
	r := l.given[i]
	text := measure.Decimal(r.Count, 2) + " " + noun + " to " + measure.Decimal(r.overCm(), 2) + " cm"
	if r.Place != "" {
		text += " (" + r.Place + ")"
	}
	return []report.Notice{{Reason: OutlyingReading, Field: fault.Index(l.field, i),
		Description: text + " lies farther from the others than chance explains (Grubbs, 5 %, n = " +
			strconv.Itoa(len(l.values)) + "); count there again"}}
}
