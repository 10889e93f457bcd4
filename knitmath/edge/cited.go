package edge

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
)

// Where the figures of this package come from.
var (
	pickedUpCited = report.Source{Figure: "stitches", Status: report.SourceStatusOwnDerivation,
		Citation: "rows × row length of the piece / stitch width of the band, exactly; rounded as the rule says"}
	ratioCited  = report.Source{Figure: "ratio", Citation: spread.SmallCited, Status: report.SourceStatusFromMemory}
	alongCited  = report.Source{Figure: "spread along the edge", Citation: spread.Cited, Status: report.SourceStatusOwnDerivation}
	perRowCited = report.Source{Figure: "at most two stitches in a row of an edge", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	holesCited = report.Source{Figure: "places of the holes", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: what the holes and the two ends leave, shared out so that the gaps differ by at most one step"}
	twoRowsCited = report.Source{Figure: "a hole bound off in one row and cast on in the next", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	rightSideCited = report.Source{Figure: "bound off on the right side", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
)

// Sources says where the figures come from.
func (PickUp) Sources() []report.Source {
	return []report.Source{pickedUpCited, ratioCited, alongCited, perRowCited}
}

// Sources says where the figures come from.
func (Buttonholes) Sources() []report.Source {
	return []report.Source{holesCited, twoRowsCited, rightSideCited}
}
