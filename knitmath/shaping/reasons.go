package shaping

import "example.com/knitmath/knitmath/report"

// The reasons of notices.
const (
	// JoinKeptPlain: on a shaped side, shaping rows would be neighbours across a
	// point, and a row beside each point is kept plain. Sent where any row may shape
	// and the rows of two stretches would meet. Field is "points".
	JoinKeptPlain report.Reason = "JOIN_KEPT_PLAIN"
)
