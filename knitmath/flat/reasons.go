package flat

import "example.com/knitmath/knitmath/report"

// The reasons of notices in this room.
const (
	// Cups: somewhere the piece has fewer stitches than lie flat, by more than 15 % and by
	// more than a row gains, or a star in all, by more than 15 %. Field is "arrangement",
	// "start_stitches" or, of stars, "across_cm".
	Cups report.Reason = "CUPS"
	// Ruffles: the same of more stitches.
	Ruffles report.Reason = "RUFFLES"
	// SlantedEnds: the ends of a strip on the bias lie aslant. Field is "form".
	SlantedEnds report.Reason = "SLANTED_ENDS"
	// ShapedOnBothSides: a piece in rows gains or loses stitches in wrong-side rows too,
	// since its gauge has fewer than about two rows to a stitch, or since the sides of a triangle lie
	// flat. Field is "gauge.rows", of a triangle "height_cm".
	ShapedOnBothSides report.Reason = "SHAPED_ON_BOTH_SIDES"
)
