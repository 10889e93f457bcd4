package curve

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of notices.
const (
	// FarFromCurve: the nearest plan lies farther from the curve than is liked. Field is
	// "points".
	FarFromCurve report.Reason = "FAR_FROM_CURVE"
	// DecreasedEveryRow: more than manyInSuccession rows one after another decrease at
	// both edges. Field is "row_choice".
	DecreasedEveryRow report.Reason = "DECREASED_EVERY_ROW"
	// ShapedAtAnEnd: the first row or the last one decreases or increases, which is hard to work
	// next to a cast-on or a bind-off. Bind-offs and cast-ons begin there as a matter of course.
	// Field is "points".
	ShapedAtAnEnd report.Reason = "SHAPED_AT_AN_END"
)

// liked is how far from the curve a nearest plan may lie without a word. Where bind-offs
// alternate with rows of the other edge, one and a half is usual. Own choice.
const liked = 2

// notices are the remarks on the question.
func (e *curvedEdge) notices(plan Plan) []report.Notice {
	var all []report.Notice
	for i, p := range e.plans {
		if p.Least <= liked {
			continue
		}
		s := "the nearest plan lies " + report.AmountOf(measure.Decimal(p.Least, 1), "stitches") + " from the curve at its farthest"
		if words := e.tried(e.courses[i], liked); words != "" {
			s += "; nearer lies what these allow: " + words
		}
		all = append(all, report.Notice{Reason: FarFromCurve, Field: "points", Description: s})
		break
	}
	if plan.drawnIn() {
		all = append(all, report.Notice{Reason: DecreasedEveryRow, Field: "row_choice",
			Description: "more than 8 rows one after another decrease at both edges, which draws them in; bind-offs or fewer stitches would not"})
	}
	return append(all, e.endNotices(plan)...)
}

// endNotices are those of shaping in the first row and in the last.
func (e *curvedEdge) endNotices(plan Plan) []report.Notice {
	var all []report.Notice
	if plan.shapesIn(1) {
		all = append(all, report.Notice{Reason: ShapedAtAnEnd, Field: "points",
			Description: "the first row shapes; after a cast-on, begin with a point a row or two straight up"})
	}
	if plan.shapesIn(e.rows()) {
		all = append(all, report.Notice{Reason: ShapedAtAnEnd, Field: "points",
			Description: "the last row shapes; before a bind-off, end with a point a row or two straight up"})
	}
	return all
}

// Sources says where the figures come from.
func (CurvedEdge) Sources() []report.Source {
	return []report.Source{
		{Figure: "steps along the curve", Status: report.SourceStatusOwnDerivation,
			Citation: "own derivation: the least to remember of the plans near enough to the curve, by dynamic programming"},
		{Figure: "bind-offs of the right and the left edge a row apart", Status: report.SourceStatusSecondHand,
			Citation: "Knitting for Dummies, an excerpt: normal, and no error"},
		{Figure: "leans of the increases and decreases", Citation: "common practice", Status: report.SourceStatusCommonPractice},
	}
}
