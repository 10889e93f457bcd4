package body

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// A ListInput asks for sizes. It mirrors ListBodySizesRequest.
type ListInput struct {
	Group   Group
	Measure Measure
}

// A List is the answer to ListInput.
type List struct {
	Rows    []SizeRow
	Notices []report.Notice
}

// The reasons of the notices.
const (
	// NoRows: no source here has this measure of this group. Field is measure.
	NoRows report.Reason = "NO_ROWS"
	// MeasureHands: hands have glove sizes, means and a weak list of children; measure the
	// hand. Field is measure, or group.
	MeasureHands report.Reason = "MEASURE_HANDS"
)

const measureHands = "there are sizes of protective gloves and means of adults, from memory, and of children a list that nobody " +
	"says who measured; measure the hand that is knitted for"

// ListBodySizes lists sizes by group and measure, in the order of the charts: by group,
// measure and size.
func ListBodySizes(in ListInput) (List, error) {
	var c fault.Checks
	fault.Enum(&c, "", "group", in.Group, GroupHand)
	fault.Enum(&c, "", "measure", in.Measure, MeasureSockHeight)
	if err := c.Err(); err != nil {
		return List{}, err
	}
	out := List{}
	if n := in.rows(nil); n > 0 {
		out.Rows = make([]SizeRow, 0, n)
		in.rows(&out.Rows)
	}
	if len(out.Rows) == 0 {
		out.Notices = append(out.Notices, report.Notice{Reason: NoRows, Field: "measure",
			Description: in.elsewhere() + "; measure the person"})
	}
	if field := in.ofHands(); field != "" {
		out.Notices = append(out.Notices, report.Notice{Reason: MeasureHands, Field: field, Description: measureHands})
	}
	return out, nil
}

// rows counts the rows that are asked for, and adds them to a list unless it is nil.
func (in ListInput) rows(to *[]SizeRow) int {
	n := 0
	for i := range sizes {
		row := &sizes[i]
		if in.Group != 0 && row.Group != in.Group || in.Measure != 0 && row.Measure != in.Measure {
			continue
		}
		if n++; to != nil {
			*to = append(*to, *row)
		}
	}
	return n
}

// elsewhere says why a list is empty, and where the measure stands: heads, feet and hands
// have groups of their own, which name in their sizes whom they are for.
func (in ListInput) elsewhere() string {
	s := "no source here has this measure of this group"
	group, whom := GroupUnspecified, ""
	for i := range sizes {
		row := &sizes[i]
		if row.Measure != in.Measure || row.Group < GroupHead {
			continue
		}
		group = row.Group
		if slices.Contains(strings.Fields(row.Size), whoWords[in.Group]) {
			whom = row.Size
			break
		}
	}
	if group == GroupUnspecified {
		return s
	}
	s += "; the group " + groupWords[group] + " has it"
	if whom != "" {
		s += ", as of " + strconv.Quote(whom)
	}
	return s
}

// whoWords are whom the sizes of heads and feet are of, by group.
var whoWords = [...]string{GroupUnspecified: "", GroupBaby: "baby", GroupChild: "child", GroupYouth: "youth", GroupWoman: "woman",
	GroupMan: "man", GroupHead: "", GroupFoot: "", GroupHand: ""}

// groupWords name the groups of parts.
var groupWords = map[Group]string{GroupHead: "HEAD", GroupFoot: "FOOT", GroupHand: "HAND"}

// ofHands is the field that asks for hands; empty where none does.
func (in ListInput) ofHands() string {
	switch {
	case in.Measure == MeasureHandLength, in.Measure == MeasureHandCircumference:
		return "measure"
	case in.Group == GroupHand && in.Measure == MeasureUnspecified:
		return "group"
	}
	return ""
}

// Cost is the price of a list: two steps for each row there is.
func (ListInput) Cost() int { return 10 + 2*len(sizes) }
