package body

import (
	_ "embed" // the table
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
)

// sizesCSV is the table as it is kept: data, a row a line, the source of each by name.
//
//go:embed sizes.csv
var sizesCSV string

// columns are how many the table has.
const columns = 8

// origin is where a row of the table comes from.
type origin struct {
	basis     string
	citation  string
	status    report.SourceStatus
	uncertain bool
}

const council = "Craft Yarn Council, Standards & Guidelines, body sizes"

const gloves = "EN 420, now EN ISO 21420, of protective gloves"

const growth = "UK-WHO and UK90 growth references: curves read off a library of growth charts"

// origins are the sources by the names that the table has for them.
var origins = map[string]origin{
	"chart":          {"size chart", council, report.SourceStatusFromMemory, false},
	"reprint":        {"size chart", council + "; in part read in a reprint or in published patterns", report.SourceStatusFromMemory, false},
	"head":           {"size chart, reads like hat sizes", council + ", an older edition", report.SourceStatusFromMemory, true},
	"median_girls":   {"median of girls", growth, report.SourceStatusSecondHand, false},
	"median_boys":    {"median of boys", growth, report.SourceStatusSecondHand, false},
	"centiles_girls": {"2nd to 98th centile of girls", growth, report.SourceStatusSecondHand, false},
	"centiles_boys":  {"2nd to 98th centile of boys", growth, report.SourceStatusSecondHand, false},
	"glove":          {"glove size, girth over the knuckles", gloves, report.SourceStatusFromMemory, false},
	"hands": {"list of children's hands, no people measured; cm computed", "common practice",
		report.SourceStatusCommonPractice, true},
	"foot":    {"size chart, by US shoe size; cm computed", council, report.SourceStatusFromMemory, true},
	"letters": {"letter sizes", "EN 13402-3", report.SourceStatusFromMemory, false},
	"drafting": {"table for drafting women's patterns",
		"attributed to W. Aldrich, Metric Pattern Cutting for Women's Wear, 6th ed. (title from memory)", report.SourceStatusSecondHand, false},
	"women": {"mean of 260 active women; the chest above the breast tissue, the arm flexed",
		"Heinz, Peterson, Johnson & Kerk, J. Statistics Education 11(2), 2003: means of its data", report.SourceStatusPublished, false},
	"men": {"mean of 247 active men; the arm flexed",
		"Heinz, Peterson, Johnson & Kerk, J. Statistics Education 11(2), 2003: means of its data", report.SourceStatusPublished, false},
	"army": {"mean of adults", "Gordon et al., 1988 anthropometric survey, Natick TR-89/044 (1989)", report.SourceStatusFromMemory, false},
}

var groupNames = map[string]Group{
	"BABY": GroupBaby, "CHILD": GroupChild, "YOUTH": GroupYouth, "WOMAN": GroupWoman, "MAN": GroupMan, "HEAD": GroupHead, "FOOT": GroupFoot,
	"HAND": GroupHand,
}

var measureNames = map[string]Measure{
	"CHEST": MeasureChest, "WAIST": MeasureWaist, "HIP": MeasureHip, "CROSS_BACK": MeasureCrossBack,
	"BACK_WAIST_LENGTH": MeasureBackWaistLength, "BACK_HIP_LENGTH": MeasureBackHipLength, "ARMHOLE_DEPTH": MeasureArmholeDepth,
	"CENTRE_BACK_NECK_TO_WRIST": MeasureCentreBackNeckToWrist, "ARM_LENGTH_TO_UNDERARM": MeasureArmLengthToUnderarm,
	"UPPER_ARM": MeasureUpperArm, "WRIST": MeasureWrist, "SHOULDER_BREADTH": MeasureShoulderBreadth,
	"HEAD_CIRCUMFERENCE": MeasureHeadCircumference, "HAND_LENGTH": MeasureHandLength, "HAND_CIRCUMFERENCE": MeasureHandCircumference,
	"FOOT_LENGTH": MeasureFootLength, "FOOT_CIRCUMFERENCE": MeasureFootCircumference, "SOCK_HEIGHT": MeasureSockHeight,
}

// sizes is the table, read once.
var sizes = mustRead(sizesCSV)

// mustRead reads the table. What is wrong in it is a mistake of ours, and no program
// starts with it.
func mustRead(table string) []SizeRow {
	reader := csv.NewReader(strings.NewReader(table))
	reader.FieldsPerRecord = columns
	records, err := reader.ReadAll()
	if err != nil {
		panic("body: sizes.csv: " + err.Error())
	}
	rows := make([]SizeRow, 0, len(records)-1)
	for i, record := range records[1:] {
		row, err := readRow(record)
		if err != nil {
			panic(fmt.Sprintf("body: sizes.csv, row %d: %v", i+1, err))
		}
		rows = append(rows, row)
	}
	return rows
}

// readRow reads group, size, measure, low and high in inches, the same in cm, source.
func readRow(record []string) (SizeRow, error) {
	group, measure := groupNames[record[0]], measureNames[record[2]]
	from, known := origins[record[7]]
	if group == 0 || measure == 0 || !known {
		return SizeRow{}, fmt.Errorf("%q has a name that is not known", record)
	}
	row := SizeRow{Group: group, Size: record[1], Measure: measure, Basis: from.basis,
		Citation: from.citation, Status: from.status, Uncertain: from.uncertain}
	var err error
	if row.LowCm, err = strconv.ParseFloat(record[5], 64); err != nil {
		return row, err
	}
	if row.HighCm, err = strconv.ParseFloat(record[6], 64); err != nil {
		return row, err
	}
	if row.LowIn, err = inches(record[3]); err != nil {
		return row, err
	}
	row.HighIn, err = inches(record[4])
	return row, err
}

// inches is a figure that may be missing.
func inches(cell string) (*float64, error) {
	if cell == "" {
		return nil, nil
	}
	x, err := strconv.ParseFloat(cell, 64)
	return &x, err
}
