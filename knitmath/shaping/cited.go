package shaping

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
)

// Where the figures of this package come from.
var (
	changesCited = report.Source{Figure: "places of the changes", Citation: spread.Cited, Status: report.SourceStatusOwnDerivation}
	endGapsCited = report.Source{Figure: "half a gap at each end of a flat row", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	shapingRowsCited = report.Source{Figure: "places of the shaping rows",
		Citation: "own derivation: the least to remember of the schedules near enough to the straight line, or the rows nearest to it",
		Status:   report.SourceStatusOwnDerivation}
	gradedCited = report.Source{Figure: "one schedule for all sizes",
		Citation: "own derivation: the form that is least to remember and to print, by dynamic programming over the sizes",
		Status:   report.SourceStatusOwnDerivation}
	joinsCited = report.Source{Figure: "two rows at least across a point",
		Citation: "own derivation: the smallest interval between right-side rows", Status: report.SourceStatusOwnDerivation}
	leansCited = report.Source{Figure: "leans of the increases and decreases", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
)

// Sources says where the figures come from.
func (EvenSpacing) Sources() []report.Source { return []report.Source{changesCited, endGapsCited} }

// Sources says where the figures come from.
func (Taper) Sources() []report.Source { return []report.Source{shapingRowsCited, leansCited} }

// Sources says where the figures come from.
func (ShapedSide) Sources() []report.Source {
	return []report.Source{shapingRowsCited, joinsCited, leansCited}
}

// Sources says where the figures come from.
func (GradedTaper) Sources() []report.Source {
	return []report.Source{shapingRowsCited, gradedCited, leansCited}
}
