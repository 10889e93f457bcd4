package yarn

import "example.com/knitmath/knitmath/report"

// A span is a range of a chart; 0 stands for an open end.
type span struct{ low, high float64 }

// has reports whether a figure lies in the range, ends included.
func (s span) has(x float64) bool { return x >= s.low && (s.high == 0 || x <= s.high) }

// weightChart is what the charts say of a category beside gauge and needle in mm.
type weightChart struct {
	names         string // other names that the trade sells it under
	usLow, usHigh string
	wraps         span // per inch, the standard chart
	spinners      span // per inch, the spinners' chart
	yards         span // per pound, the spinners' chart
	remark        string
}

// weightCharts are the rows by category. The two charts of wraps differ by up to a factor
// of two, and neither is a partition. The spinners' chart is older than category 7: what
// it calls 6 is open.
//
// Source: Craft Yarn Council, Standards & Guidelines, yarn weight chart, wraps in two
// reprints that credit it; Spin-Off magazine, one-page chart of yarn standards.
var weightCharts = [...]weightChart{
	{"fingering, 10-count crochet thread", "000", "1", span{30, 0}, span{18, 0}, span{2_401, 0},
		"lace is usually worked on larger needles, for open fabric"},
	{"sock, fingering, baby", "1", "3", span{14, 30}, span{16, 18}, span{1_901, 2_400}, ""},
	{"sport, baby", "3", "5", span{12, 18}, span{14, 15}, span{1_201, 1_900}, ""},
	{"DK, light worsted", "5", "7", span{11, 15}, span{12, 13}, span{901, 1_200}, "one page prints US 3 to 5, against its own mm"},
	{"worsted, afghan, aran", "7", "9", span{9, 12}, span{10, 11}, span{601, 900}, "worsted count is another thing"},
	{"chunky, craft, rug", "9", "11", span{6, 9}, span{8, 9}, span{401, 600}, ""},
	{"super bulky, roving", "11", "17", span{5, 6}, span{0, 7}, span{0, 400},
		"before category 7 was added it was 6 to 11 stitches and open, and is so in the spinners' chart"},
	{"jumbo, roving", "17", "", span{1, 4}, span{}, span{}, "the spinners' chart does not have it: its 6 is open, and is read as 6 or 7"},
}

// The sources of the charts.
var (
	wrapsCited = report.Source{Figure: "wraps per inch of a category, standard chart",
		Citation: "Craft Yarn Council, yarn weight chart: two reprints that credit it", Status: report.SourceStatusSecondHand}
	spinnersCited = report.Source{Figure: "wraps per inch and yards per pound of a category, spinners' chart",
		Citation: "Spin-Off magazine, Yarn Standards, one-page chart", Status: report.SourceStatusPublished}
)
