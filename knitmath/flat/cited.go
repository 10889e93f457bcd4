package flat

import "example.com/knitmath/knitmath/report"

// The sources of the figures.
var (
	growthCited = report.Source{Figure: "stitches that a row more wants", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: a circle grows by 2 pi for every unit of its radius, a polygon of n sides by 2 n tan(pi/n)"}
	scheduleCited = report.Source{Figure: "rows that change the count", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: the schedule that is least to remember among those near the straight line"}
	recipesCited = report.Source{Figure: "rules of the trade", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: 8 stitches every 2nd round and its like, doubling"}
	placesCited = report.Source{Figure: "places of the changes", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: wedges above one another make corners, shifted ones none"}
	doublingCited = report.Source{Figure: "rounds that double", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: each count is kept over as many stitches in all as the disc has there"}
	leanCited = report.Source{Figure: "lean of the strip", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: tan(lean) = rows per stitch / 2"}
	blockedCited = report.Source{Figure: "what blocking takes out, 15 %", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: yokes so much too steep are knit and blocked flat"}
)
