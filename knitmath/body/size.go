package body

import "example.com/knitmath/knitmath/report"

// Group is whom a size is for, or which part of the body has sizes of its own.
type Group int32

// The groups.
const (
	GroupUnspecified Group = iota // all
	GroupBaby
	GroupChild
	GroupYouth
	GroupWoman
	GroupMan
	GroupHead
	GroupFoot
	GroupHand
)

// Measure is what was measured.
type Measure int32

// The measures.
const (
	MeasureUnspecified Measure = iota // all
	MeasureChest                      // or bust, round the fullest part
	MeasureWaist
	MeasureHip
	MeasureCrossBack // from shoulder to shoulder
	MeasureBackWaistLength
	MeasureBackHipLength
	MeasureArmholeDepth
	MeasureCentreBackNeckToWrist
	MeasureArmLengthToUnderarm
	MeasureUpperArm // round it
	MeasureWrist    // round it
	MeasureShoulderBreadth
	MeasureHeadCircumference
	MeasureHandLength
	MeasureHandCircumference
	MeasureFootLength
	MeasureFootCircumference
	MeasureSockHeight
)

// A SizeRow is one measure of one size. Low and high are equal where the chart has one
// figure. What a source does not give in inches has none.
type SizeRow struct {
	Group     Group
	Size      string
	Measure   Measure
	LowCm     float64
	HighCm    float64
	LowIn     *float64
	HighIn    *float64
	Basis     string
	Citation  string
	Status    report.SourceStatus
	Uncertain bool
}
