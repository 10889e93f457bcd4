package yarn

import (
	"example.com/knitmath/knitmath/gauge"
)

// A Category is a yarn weight category of the trade. LowStitches and
// HighNeedleMm are nil where the category is open.
type Category struct {
	Category     int
	Name         string
	LowStitches  *int
	HighStitches int
	LowNeedleMm  float64
	HighNeedleMm *float64
}

// yarnWeight is one row of the table; 0 stands for open.
type yarnWeight struct {
	name                 string
	low, high            int64 // stitches over 4 in
	needleLow, needleTop float64
}

// yarnWeights is the chart of yarn weights, by category number: stitches of
// plain knitting over 4 in and the needle usual for it, in mm. The ranges are
// guidelines and no partition: 2 and 3 share 23 and 24 stitches, and nothing
// lies between 20 and 21. Lace is often worked on thicker needles than these.
//
// Source: Craft Yarn Council, Standards & Guidelines, yarn weight chart: 0 to 3
// in its own article, 4 to 7 in reprints that agree. Category 6 is the one since
// category 7 was added; before that it was 6 to 11 stitches and open.
var yarnWeights = [...]yarnWeight{
	{"Lace", 33, 40, 1.5, 2.25},
	{"Super Fine", 27, 32, 2.25, 3.25},
	{"Fine", 23, 26, 3.25, 3.75},
	{"Light", 21, 24, 3.75, 4.5},
	{"Medium", 16, 20, 4.5, 5.5},
	{"Bulky", 12, 15, 5.5, 8},
	{"Super Bulky", 7, 11, 8, 12.75},
	{"Jumbo", 0, 6, 12.75, 0},
}

// The trade prints 4 in and 10 cm as if they were one.
const (
	tenCm      = 100_000 // micrometres
	fourInches = 101_600
)

// Categories are the categories whose range holds a stitch gauge, exactly:
// none, one or two. The ranges are printed for 4 in and used for 10 cm alike, so
// that a gauge is held when its stitches over either lie in the range; nominal
// is true when some category holds only one of the two.
func Categories(d gauge.Density) (found []Category, nominal bool) {
	for i, w := range yarnWeights {
		metric, imperial := w.holds(d, tenCm), w.holds(d, fourInches)
		if !metric && !imperial {
			continue
		}
		nominal = nominal || metric != imperial
		c := Category{Category: i, Name: w.name, HighStitches: int(w.high), LowNeedleMm: w.needleLow}
		if w.low > 0 {
			low := int(w.low)
			c.LowStitches = &low
		}
		if w.needleTop > 0 {
			top := w.needleTop
			c.HighNeedleMm = &top
		}
		found = append(found, c)
	}
	return found, nominal
}

// holds says whether the stitches over um micrometres lie in the range. The
// products stay below 1e15.
func (w yarnWeight) holds(d gauge.Density, um int64) bool {
	num, den := d.Exact(um)
	return num >= w.low*den && num <= w.high*den
}
