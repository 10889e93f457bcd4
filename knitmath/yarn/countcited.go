package yarn

import "example.com/knitmath/knitmath/report"

// countCited is where the length and the weight that a system counts were found.
type countCited struct {
	citation  string
	status    report.SourceStatus
	uncertain bool
}

var (
	isoCited    = &countCited{"ISO 1144:2016, scope: the tex system", report.SourceStatusPublished, false}
	astmCited   = &countCited{"ASTM D2260-03 (2013), yarn numbers", report.SourceStatusPublished, false}
	metricCited = &countCited{"by definition: kilometres to the kilogram", report.SourceStatusCommonPractice, false}
	unitsCited  = &countCited{"the unit of that name in GNU units 2.22", report.SourceStatusPublished, false}
	silkCited   = &countCited{"J. T. Taylor, Cotton Weaving and Designing, 6th ed.: hanks of 840 yards; plied, the finished count",
		report.SourceStatusPublished, false}
	tableCited      = &countCited{"a general table of the trade: yards to the dram", report.SourceStatusCommonPractice, false}
	rememberedCited = &countCited{"the usage of the district", report.SourceStatusFromMemory, true}
	definedCited    = &countCited{"by definition", report.SourceStatusCommonPractice, false}
)

// countSources are the sources of the systems, written once.
var countSources = func() (all [lastSystem + 1]report.Source) {
	for s, row := range countSystems {
		if row.cited != nil {
			all[s] = report.Source{Figure: row.name + ": " + row.rule, Citation: row.cited.citation, Status: row.cited.status,
				Uncertain: row.cited.uncertain}
		}
	}
	return all
}()

// The other sources of counts.
var (
	exactCited = report.Source{Figure: "yard and pound",
		Citation: "international yard and pound agreement of 1959: 1 yd = 0.9144 m, 1 lb = 453.59237 g",
		Status:   report.SourceStatusCommonPractice}
	pliedCited = report.Source{Figure: "a plied yarn weighs what its singles weigh, over the length that the ply twist leaves",
		Citation: "tex of the yarn = sum of the singles' tex / (1 - contraction)", Status: report.SourceStatusOwnDerivation}
	writtenCited = report.Source{Figure: "which number of a plied count is the single's",
		Citation: "J. T. Taylor, Cotton Weaving and Designing, 6th ed.: cotton and worsted write the single's, spun silk the finished count",
		Status:   report.SourceStatusPublished}
	ordersCited = report.Source{Figure: "order of count and plies in a notation, R for the resultant tex",
		Citation: "common practice of each trade", Status: report.SourceStatusCommonPractice}
)
