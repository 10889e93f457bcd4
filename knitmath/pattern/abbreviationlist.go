package pattern

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// Category is what an abbreviation is about.
type Category int32

// The categories.
const (
	CategoryUnspecified Category = iota // all
	CategoryStitch
	CategoryIncrease
	CategoryDecrease
	CategoryEdge
	CategoryCable
	CategoryShortRow
	CategoryMarker
	CategoryFabric
	CategoryTool
	CategoryUnit
	CategoryPunctuation
	CategoryGeneral
)

// listedAbbreviation is a row of the list as it is kept; notCounted stands for a count
// that the abbreviation does not have.
type listedAbbreviation struct {
	abbreviation, meaning string
	category              Category
	takes, leaves         int
	disagreement          string
}

const notCounted = -1

// An AbbreviationListInput asks for abbreviations. It mirrors ListAbbreviationsRequest.
type AbbreviationListInput struct {
	Category Category
}

// An AbbreviationRow is one of the list. Takes and leaves are nil where it is no working
// of stitches, or where how many depends on what is meant.
type AbbreviationRow struct {
	Abbreviation   string
	Meaning        string
	Category       Category
	TakesStitches  *int
	LeavesStitches *int
	Disagreement   string
	Citation       string
	Status         report.SourceStatus
	Uncertain      bool
}

// An AbbreviationList is the answer to AbbreviationListInput.
type AbbreviationList struct {
	Rows    []AbbreviationRow
	Notices []report.Notice
}

// listCitation is where the list comes from.
const listCitation = "Craft Yarn Council, knit abbreviations master list"

// ListAbbreviations lists the trade's abbreviations in the order of the list.
func ListAbbreviations(in AbbreviationListInput) (AbbreviationList, error) {
	var c fault.Checks
	fault.Enum(&c, "", "category", in.Category, CategoryGeneral)
	if err := c.Err(); err != nil {
		return AbbreviationList{}, err
	}
	var out AbbreviationList
	for i := range listed {
		if in.Category == CategoryUnspecified || in.Category == listed[i].category {
			out.Rows = append(out.Rows, listed[i].row())
		}
	}
	return out, nil
}

func (l *listedAbbreviation) row() AbbreviationRow {
	row := AbbreviationRow{Abbreviation: l.abbreviation, Meaning: l.meaning, Category: l.category, Disagreement: l.disagreement,
		Citation: listCitation, Status: report.SourceStatusFromMemory}
	if l.takes != notCounted {
		row.TakesStitches, row.LeavesStitches = &l.takes, &l.leaves
	}
	return row
}

// Cost is the price of a list: a step for each row there is.
func (AbbreviationListInput) Cost() int { return 10 + len(listed) }

var _ report.Answer = AbbreviationList{}

// Summary says how many there are.
func (o AbbreviationList) Summary() string {
	return report.CountOf(len(o.Rows), "abbreviations") + ", US terms. Publishers differ: a pattern's own list comes first."
}

// Directions are empty: there is nothing to work.
func (AbbreviationList) Directions() []string { return nil }

// Sources are those of the rows.
func (AbbreviationList) Sources() []report.Source {
	return []report.Source{
		{Figure: "abbreviations", Citation: listCitation + "; the meanings in our own words", Status: report.SourceStatusFromMemory},
		{Figure: "stitches taken and left", Citation: "by definition of each stitch", Status: report.SourceStatusCommonPractice},
	}
}
