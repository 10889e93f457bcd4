package swatch

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// NeedleSystem is a way of the trade to number needles.
type NeedleSystem int32

// The systems of needles.
const (
	NeedleSystemUnspecified NeedleSystem = iota // all
	NeedleSystemUS
	NeedleSystemUK // and Canadian, old
	NeedleSystemJapanese
)

// A NeedleListInput asks for needle sizes. It mirrors ListNeedleSizesRequest.
type NeedleListInput struct {
	System NeedleSystem
	MinMm  *float64
	MaxMm  *float64
}

// A NeedleRow is one needle in all systems, and how sure that is.
type NeedleRow struct {
	Mm           float64
	US           string
	UK           string
	Japanese     string
	Disagreement string
	Citation     string
	Status       report.SourceStatus
	Uncertain    bool
	Remark       string
}

// A NeedleList is the answer to NeedleListInput.
type NeedleList struct {
	Rows    []NeedleRow
	Notices []report.Notice
}

// NoNeedles is of a list that is empty: no size of the table is so thick and has a name in
// that system. Field is empty.
const NoNeedles report.Reason = "NO_ROWS"

// disagreements say what makers or lists disagree about, by thickness in mm.
var disagreements = map[float64]string{
	0.75:  "numbered by six zeros with some makers only",
	1:     "numbered by five zeros with some makers only",
	1.25:  "lists differ on UK numbers above 14",
	1.5:   "some lists have UK 16",
	1.75:  "some lists have UK 16, or none",
	2.5:   "US 1.5 with some makers only",
	3:     "US 2.5 with some makers only",
	7:     "US 10.75 with some makers only",
	12:    "many lists have it for US 17, which others have at 12.75 mm",
	12.75: "many lists have 12 mm for US 17",
	19:    "some lists have 20 mm for US 35",
	20:    "US 36 with some makers only",
	35:    "US 70 with some makers only",
}

// remarks say what else to know of a size, by thickness in mm.
var remarks = map[float64]string{4: "by one note an old US 6 measured 4.25 mm"}

// ListNeedleSizes lists needles from thin to thick: those that have a name in a system,
// between two thicknesses.
func ListNeedleSizes(in NeedleListInput) (NeedleList, error) {
	var c fault.Checks
	fault.Enum(&c, "", "system", in.System, NeedleSystemJapanese)
	c.OptionalNumber("", "min_mm", in.MinMm, MinNeedleMm, MaxNeedleMm)
	c.OptionalNumber("", "max_mm", in.MaxMm, MinNeedleMm, MaxNeedleMm)
	low, high := fault.Or(in.MinMm, MinNeedleMm), fault.Or(in.MaxMm, MaxNeedleMm)
	if c.Sound("min_mm", "max_mm") && low > high {
		c.Infeasible("the least thickness is above the greatest", "min_mm", "max_mm")
	}
	if err := c.Err(); err != nil {
		return NeedleList{}, err
	}
	var out NeedleList
	for _, n := range needleSizes {
		if n.Mm >= low && n.Mm <= high && n.named(in.System) {
			out.Rows = append(out.Rows, n.row())
		}
	}
	if len(out.Rows) == 0 {
		out.Notices = []report.Notice{{Reason: NoNeedles, Description: in.noneWords()}}
	}
	return out, nil
}

// noneWords say why no size is listed, and what would be.
func (in NeedleListInput) noneWords() string {
	least, most := needleSizes[0].Mm, needleSizes[len(needleSizes)-1].Mm
	switch {
	case fault.Or(in.MinMm, least) > most || fault.Or(in.MaxMm, most) < least:
		return "the table goes from 0.75 to 40 mm; needles beyond are named by their thickness in mm alone"
	case in.System != NeedleSystemUnspecified:
		return "no size of the table is so thick and has a name in that system: ask without system"
	}
	return "no size of the table is so thick: makers have none between these two"
}

// named reports whether a system has a name for the needle.
func (n NeedleSize) named(s NeedleSystem) bool {
	switch s {
	case NeedleSystemUS:
		return n.US != ""
	case NeedleSystemUK:
		return n.UK != ""
	case NeedleSystemJapanese:
		return n.Japanese != ""
	}
	return true
}

func (n NeedleSize) row() NeedleRow {
	s := n.source()
	return NeedleRow{Mm: n.Mm, US: n.US, UK: n.UK, Japanese: n.Japanese, Disagreement: disagreements[n.Mm],
		Citation: s.Citation, Status: s.Status, Uncertain: s.Uncertain, Remark: remarks[n.Mm]}
}

// Cost is the price of a list: a step for each row there is.
func (NeedleListInput) Cost() int { return 10 + len(needleSizes) }

var _ report.Answer = NeedleList{}

// Summary says how many there are and what names a needle.
func (o NeedleList) Summary() string {
	return report.CountOf(len(o.Rows), "needle sizes") + ". What names a needle is its thickness in mm; numbers differ from list to list."
}

// Directions are empty: there is nothing to work.
func (NeedleList) Directions() []string { return nil }

// Sources are those of the rows.
func (NeedleList) Sources() []report.Source {
	return []report.Source{tablesCited, listsCited, japaneseCited}
}
