package yoke

import "example.com/knitmath/knitmath/report"

// The reasons of notices in this room.
const (
	// Ruffles: the fabric has more edge than lies flat when it is blocked. Sent once
	// for all rounds of a circular yoke whose steepness is more than 1.15 (around bands,
	// only where it would be over the rounds above them too), and for a raglan whose
	// steepness is. Field is empty: it is the yoke's depth, neck and schedule together; the
	// description has the numbers of the rounds.
	Ruffles report.Reason = "RUFFLES"
	// FarFromSchedule: the count of a band is more than 5 % from what the schedule
	// wants there, or than was allowed, because its repeat must divide it. Sent for each such band. Field
	// is the band's repeat, "bands[i].repeat_stitches".
	FarFromSchedule report.Reason = "FAR_FROM_SCHEDULE"
	// MoreThanAThird: a round takes more than a third of its stitches: around bands, since no other
	// counts divide; elsewhere, more than the schedule itself says too. Sent for each such round. Field
	// is "bands", or without them what says how many rounds decrease.
	MoreThanAThird report.Reason = "MORE_THAN_A_THIRD"
	// NeckInTolerance: the neck has more than 2 stitches more or fewer than were wanted, within the
	// tolerance, so that the rounds are easy or the bands come out. Field is "neck_tolerance_stitches".
	NeckInTolerance report.Reason = "NECK_IN_TOLERANCE"
	// StepsEased: a round lies a stitch or more from what own steps want, so that it is easy, at
	// the default tolerance. Field is "tolerance_percent".
	StepsEased report.Reason = "STEPS_EASED"
	// ManyRuns: the decreases of a raglan's parts are no one or two runs of intervals each,
	// since every plan in which they are would depart too far from the straight lines.
	// Field is "tolerance_stitches".
	ManyRuns report.Reason = "MANY_RUNS"
	// DepthUnlikeBodies: the yoke is less than 0.30 of the body's flat width deep, or more
	// than 0.65. Field is that of the depth.
	DepthUnlikeBodies report.Reason = "DEPTH_UNLIKE_BODIES"
	// FrontAsHighAsBack: the front is as high as the back of a yoke more than 0.57 of the body's flat
	// width deep, and comes up at the throat. Field is that of the depth.
	FrontAsHighAsBack report.Reason = "FRONT_AS_HIGH_AS_BACK"
	// NeckBelowHead: the neck, stretched to 1.6 times its width, does not go over the head
	// of somebody who wears such a body. Field is empty.
	NeckBelowHead report.Reason = "NECK_BELOW_HEAD"
	// NeckSlidesOff: the neck is wider as it lies than the largest heads among those who wear such a
	// body. Field is empty.
	NeckSlidesOff report.Reason = "NECK_SLIDES_OFF"
	// SleeveBelowHand: the sleeve, stretched to 1.3 times its width, does not go over the
	// hand of somebody who wears such a body. Field is empty.
	SleeveBelowHand report.Reason = "SLEEVE_BELOW_HAND"
)
