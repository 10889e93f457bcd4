package shortrow

import "example.com/knitmath/knitmath/report"

// The reasons of notices.
const (
	// RiseRounded: the rise obtained is not the one asked for. Sent with a straight
	// wedge and with a raised back whose rise is not a whole number of pairs of rows,
	// and with a curve, of which the rise asked for is its highest point less its
	// lowest. Field is the field that the rise or the curve was given in.
	RiseRounded report.Reason = "RISE_ROUNDED"
	// SteeperThanOneStitchATurn: a curve rises or falls by more than a pair of rows
	// from one stitch to the next somewhere, and was eased there. Field is the field
	// that the curve was given in.
	SteeperThanOneStitchATurn report.Reason = "STEEPER_THAN_ONE_STITCH_A_TURN"
	// TurnsAtEveryStitch: of a straight wedge five or more turns in succession at one
	// side lie one stitch from the next, and at most a fifth of its turns further. Field is the field that the rise was given in.
	TurnsAtEveryStitch report.Reason = "TURNS_AT_EVERY_STITCH"
	// ManyRuns: no steps of one or two runs lie near enough to the profile of a straight
	// wedge, so that its turns are the nearest. Field is "tolerance_rows".
	ManyRuns report.Reason = "MANY_RUNS"
	// DoublesStandOut: the double stitches of German turns, which have a row more,
	// leave a curve by more than a pair of rows somewhere. Sent where the curve was
	// not eased as well. Field is "turn_method".
	DoublesStandOut report.Reason = "DOUBLES_STAND_OUT"
	// HoleAtTheCentre: a disc or ring has over a row more at its inner edge than
	// the circle there takes, because every wedge has two. Field is
	// "inner_radius_cm".
	HoleAtTheCentre report.Reason = "HOLE_AT_THE_CENTRE"
)
