package swatch

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A NeedleSize is one needle in the trade's systems. A system that has no name
// for it has an empty one.
type NeedleSize struct {
	Mm       float64
	US       string
	UK       string
	Japanese string
	Disputed bool
}

// Ranges of a needle: from the finest steel needle made to the thickest pole.
const (
	MinNeedleMm = 0.5
	MaxNeedleMm = 50.0
)

// needleSizes is the table of needles, thinnest first. Disputed marks a row in
// which makers or lists disagree about a name:
//
//	0.75, 1 mm          numbered by zeros, by some makers only
//	1.25, 1.5, 1.75 mm  UK numbers above 14 differ from list to list
//	2.5, 3, 7 mm        US 1.5, 2.5 and 10.75 are some makers' only
//	12, 12.75, 19, 20,  US 17 is also listed as 12 mm, US 35 as 20 mm; 20 mm is US 36, 35 mm
//	35 mm               US 70 to some makers
//
// Source: mm with US and old UK names from 2 to 10 mm, 15 and 25 mm, several general tables
// that agree; the ends of the US range, Craft Yarn Council charts and memory; below 1.25
// and above 25 mm memory alone; Japanese number n is 2.1 + 0.3 n mm for n from 0 to 15, one
// table and memory.
var needleSizes = [...]NeedleSize{
	{0.75, "000000", "", "", true},
	{1, "00000", "", "", true},
	{1.25, "0000", "18", "", true},
	{1.5, "000", "17", "", true},
	{1.75, "00", "15", "", true},
	{2, "0", "14", "", false},
	{2.1, "", "", "0", false},
	{2.25, "1", "13", "", false},
	{2.4, "", "", "1", false},
	{2.5, "1.5", "", "", true},
	{2.7, "", "", "2", false},
	{2.75, "2", "12", "", false},
	{3, "2.5", "11", "3", true},
	{3.25, "3", "10", "", false},
	{3.3, "", "", "4", false},
	{3.5, "4", "", "", false},
	{3.6, "", "", "5", false},
	{3.75, "5", "9", "", false},
	{3.9, "", "", "6", false},
	{4, "6", "8", "", false},
	{4.2, "", "", "7", false},
	{4.5, "7", "7", "8", false},
	{4.8, "", "", "9", false},
	{5, "8", "6", "", false},
	{5.1, "", "", "10", false},
	{5.4, "", "", "11", false},
	{5.5, "9", "5", "", false},
	{5.7, "", "", "12", false},
	{6, "10", "4", "13", false},
	{6.3, "", "", "14", false},
	{6.5, "10.5", "3", "", false},
	{6.6, "", "", "15", false},
	{7, "10.75", "2", "", true},
	{7.5, "", "1", "", false},
	{8, "11", "0", "", false},
	{9, "13", "00", "", false},
	{10, "15", "000", "", false},
	{12, "", "", "", true},
	{12.75, "17", "", "", true},
	{15, "19", "", "", false},
	{19, "35", "", "", true},
	{20, "36", "", "", true},
	{25, "50", "", "", false},
	{30, "", "", "", false},
	{35, "70", "", "", true},
	{40, "", "", "", false},
}

// needleSize is the row of a diameter, read to the nearest hundredth of a
// millimetre; nil when the table has none.
func needleSize(mm float64) *NeedleSize {
	for _, n := range needleSizes {
		if measure.ToUnits(n.Mm, 100) == measure.ToUnits(mm, 100) {
			return &n
		}
	}
	return nil
}

// The sources of the names.
var (
	tablesCited = report.Source{Figure: "mm with US and old UK names, 2 to 10 mm, 15 and 25 mm",
		Citation: "general tables of needle sizes that agree", Status: report.SourceStatusCommonPractice}
	listsCited = report.Source{Figure: "the other US and UK names, and sizes without a name",
		Citation: "lists of makers and of the Craft Yarn Council, in part from memory", Status: report.SourceStatusFromMemory}
	japaneseCited = report.Source{Figure: "Japanese numbers",
		Citation: "one table of needle sizes, with which memory agrees: 2.1 + 0.3 n mm for number n from 0 to 15",
		Status:   report.SourceStatusCommonPractice}
)

// inTables reports whether the sizes of general tables, which agree, have this one.
func (n NeedleSize) inTables() bool { return n.Mm >= 2 && n.Mm <= 10 || n.Mm == 15 || n.Mm == 25 }

// source says where the names of a row come from, by one rule: its status is that of its
// weakest name, and it is uncertain where makers or lists disagree about one.
func (n NeedleSize) source() report.Source {
	s := listsCited
	switch {
	case n.US == "" && n.UK == "" && n.Japanese != "":
		s = japaneseCited
	case n.inTables():
		s = tablesCited
	}
	if n.Japanese != "" && (n.US != "" || n.UK != "") {
		s.Citation += "; Japanese: " + japaneseCited.Citation
	}
	s.Figure = "needle names"
	if s.Uncertain = n.Disputed; n.Disputed {
		s.Citation += "; lists disagree about a name of this size"
	}
	return s
}
