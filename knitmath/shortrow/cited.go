package shortrow

import "example.com/knitmath/knitmath/report"

// Where the figures of this package come from.
var (
	turnsCited = report.Source{Figure: "places of the turns",
		Citation: "own derivation: every stitch gets the whole number of pairs nearest to the profile",
		Status:   report.SourceStatusOwnDerivation}
	easyCited = report.Source{Figure: "places of the turns",
		Citation: "own derivation: of the steps that depart from the profile little more than the nearest turns do, " +
			"those with the least to remember",
		Status: report.SourceStatusOwnDerivation}
	turningCited = report.Source{Figure: "ways of turning and closing the gap", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	edgesCited = report.Source{Figure: "rows round the edges",
		Citation: "own derivation: the circumference 2 pi r of a circle times the row gauge", Status: report.SourceStatusOwnDerivation}
)

// Sources says where the figures come from.
func (o Wedge) Sources() []report.Source {
	if o.easy {
		return []report.Source{easyCited, turningCited}
	}
	return []report.Source{turnsCited, turningCited}
}

// Sources says where the figures come from.
func (Circle) Sources() []report.Source { return []report.Source{edgesCited, turnsCited, turningCited} }
