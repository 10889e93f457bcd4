package yarn

import (
	"math/big"

	"example.com/knitmath/knitmath/report"
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

// The sources of the categories: the first four were read on the council's own page, the
// others in reprints that agree.
var (
	readCited = report.Source{Figure: "yarn weight categories 0 to 3", Status: report.SourceStatusPublished,
		Citation: "Craft Yarn Council, Standards & Guidelines, yarn weight chart"}
	reprintedCited = report.Source{Figure: "yarn weight categories 4 to 7", Status: report.SourceStatusSecondHand,
		Citation: "Craft Yarn Council, Standards & Guidelines, yarn weight chart: reprints that agree"}
)

// lastRead is the last category that was read on the council's own page.
const lastRead = 3

// CategoriesCited are the sources of some categories; of none both, for it took the whole
// chart to find none.
func CategoriesCited(found []Category) []report.Source {
	read, reprinted := len(found) == 0, len(found) == 0
	for _, c := range found {
		read, reprinted = read || c.Category <= lastRead, reprinted || c.Category > lastRead
	}
	var sources []report.Source
	if read {
		sources = append(sources, readCited)
	}
	if reprinted {
		sources = append(sources, reprintedCited)
	}
	return sources
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

// The trade prints 4 in and 10 cm as if they were one. Both in cm.
var (
	tenCm      = big.NewRat(10, 1)
	fourInches = big.NewRat(4*254, 100)
)

// Categories are the categories whose range holds a gauge of so many stitches to
// the cm, exactly: none, one or two. It takes a rational number, because the mean
// of a swatch read at a printed bound is at that bound only as long as it is not
// rounded. The ranges are printed for 4 in and used for 10 cm alike, so
// that a gauge is held when its stitches over either lie in the range; nominal
// is true when some category holds only one of the two.
func Categories(perCm *big.Rat) (found []Category, nominal bool) {
	toTenCm, toFourInches := wholeBeside(perCm, tenCm), wholeBeside(perCm, fourInches)
	for i, w := range yarnWeights {
		metric, imperial := toTenCm.within(w), toFourInches.within(w)
		if !metric && !imperial {
			continue
		}
		nominal = nominal || metric != imperial
		found = append(found, w.category(i))
	}
	return found, nominal
}

// category is the row as it is answered.
func (w yarnWeight) category(number int) Category {
	c := Category{Category: number, Name: w.name, HighStitches: int(w.high), LowNeedleMm: w.needleLow}
	if w.low > 0 {
		low := int(w.low)
		c.LowStitches = &low
	}
	if w.needleTop > 0 {
		c.HighNeedleMm = &w.needleTop
	}
	return c
}

// beside are the whole numbers on either side of a number of stitches, both the
// number itself where it is whole. It lies within whole bounds when they do.
type beside struct{ below, above int64 }

// wholeBeside is for the stitches over a length in cm.
func wholeBeside(perCm, cm *big.Rat) beside {
	stitches := new(big.Rat).Mul(perCm, cm)
	below, rest := new(big.Int).QuoRem(stitches.Num(), stitches.Denom(), new(big.Int))
	return beside{below.Int64(), below.Int64() + int64(rest.Sign())}
}

func (b beside) within(w yarnWeight) bool { return b.below >= w.low && b.above <= w.high }
