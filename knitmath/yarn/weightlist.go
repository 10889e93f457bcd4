package yarn

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// A WeightListInput asks for yarn weight categories. It mirrors ListYarnWeightsRequest.
type WeightListInput struct {
	Category *int
}

// A WeightRow is a category with what the charts say of it. Ends that are open, and what a
// chart does not have, are nil.
type WeightRow struct {
	Category                  int
	Name                      string
	OtherNames                string
	LowStitches               *int
	HighStitches              int
	LowNeedleMm               float64
	HighNeedleMm              *float64
	LowNeedleUS               string
	HighNeedleUS              string
	LowWrapsPerInch           *float64
	HighWrapsPerInch          *float64
	LowSpinnersWrapsPerInch   *float64
	HighSpinnersWrapsPerInch  *float64
	LowSpinnersYardsPerPound  *float64
	HighSpinnersYardsPerPound *float64
	Remark                    string
	Citation                  string
	Status                    report.SourceStatus
	Uncertain                 bool
}

// A WeightList is the answer to WeightListInput.
type WeightList struct {
	Rows    []WeightRow
	Notices []report.Notice
}

// ChartsDiffer is that the standard chart and the spinners' chart of wraps disagree. Field is
// empty, or the wraps.
const ChartsDiffer report.Reason = "CHARTS_DIFFER"

// ListYarnWeights lists the categories from fine to thick, or one of them.
func ListYarnWeights(in WeightListInput) (WeightList, error) {
	var c fault.Checks
	c.OptionalCount("", "category", in.Category, 0, len(yarnWeights)-1)
	if err := c.Err(); err != nil {
		return WeightList{}, err
	}
	out := WeightList{Notices: []report.Notice{{Reason: ChartsDiffer,
		Description: "the two charts of wraps per inch differ by up to a factor of two, and ranges overlap and have gaps: " +
			"go by the gauge of a swatch"}}}
	for i := range yarnWeights {
		if in.Category == nil || *in.Category == i {
			out.Rows = append(out.Rows, weightRow(i))
		}
	}
	return out, nil
}

// weightRow is a category with its sources by column. The wraps of all of them were read in
// reprints, so that no row is trusted further than second-hand, its weakest column.
func weightRow(category int) WeightRow {
	chart, found := &weightCharts[category], yarnWeights[category].category(category)
	row := WeightRow{Category: category, Name: found.Name, OtherNames: chart.names, LowStitches: found.LowStitches,
		HighStitches: found.HighStitches, LowNeedleMm: found.LowNeedleMm, HighNeedleMm: found.HighNeedleMm,
		LowNeedleUS: chart.usLow, HighNeedleUS: chart.usHigh, Remark: chart.remark,
		Citation: "stitches and needles: " + readCited.Citation, Status: wrapsCited.Status}
	if category > lastRead {
		row.Citation = "stitches and needles: " + reprintedCited.Citation
	}
	row.Citation += "; wraps: " + wrapsCited.Citation
	if chart.spinners != (span{}) {
		row.Citation += "; spinners' columns: " + spinnersCited.Citation
	}
	row.LowWrapsPerInch, row.HighWrapsPerInch = chart.wraps.ends()
	row.LowSpinnersWrapsPerInch, row.HighSpinnersWrapsPerInch = chart.spinners.ends()
	row.LowSpinnersYardsPerPound, row.HighSpinnersYardsPerPound = chart.yards.ends()
	return row
}

// ends are the two ends of a range, nil where it is open.
func (s span) ends() (low, high *float64) {
	if s.low != 0 {
		low = &s.low
	}
	if s.high != 0 {
		high = &s.high
	}
	return low, high
}

// Cost is the price of a list: a step for each row there is.
func (WeightListInput) Cost() int { return 10 + len(yarnWeights) }

var _ report.Answer = WeightList{}

// Summary says how many there are.
func (o WeightList) Summary() string {
	return report.CountOf(len(o.Rows), "yarn weights") + ". Guidelines: the ball band and a swatch come first."
}

// Directions are empty: there is nothing to work.
func (WeightList) Directions() []string { return nil }

// Sources are those of the rows.
func (WeightList) Sources() []report.Source {
	return append(CategoriesCited(nil), wrapsCited, spinnersCited)
}
