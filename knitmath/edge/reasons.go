package edge

import "example.com/knitmath/knitmath/report"

// The reasons of notices. A count that was exactly half-way is told by the
// reason of package gauge.
const (
	// MovedToRightSide: an outer hole would be bound off on the wrong side and was
	// moved by one row. Sent for bands along the rows whose right-side rows alone
	// bind off, once for each hole that moved. Field is "row_choice".
	MovedToRightSide report.Reason = "MOVED_TO_RIGHT_SIDE"
	// BindOffTightens: the band is shorter than the edge by more than mostShortPercent and
	// a stitch, and draws it in, most of all where it is bound off. Field is "stitch_rule", or
	// without one that of the length.
	BindOffTightens report.Reason = "BIND_OFF_TIGHTENS"
	// SpreadEvened: along so long an edge the spread that was asked for would stray from
	// an even share by more than two stitches, and the runs take turns more often. Field
	// is "spread".
	SpreadEvened report.Reason = "SPREAD_EVENED"
	// NotMirrored: the gaps between the holes cannot be laid so that they read the
	// same from both ends, and are mixed evenly. Field is empty.
	NotMirrored report.Reason = "NOT_MIRRORED"
)

var evenedNotice = report.Notice{Reason: SpreadEvened, Field: "spread",
	Description: "in that order the stitches would drift by more than 2 from an even share of so long an edge; the runs take turns more often"}

func tightensNotice(field string, o *PickUp) report.Notice {
	more := ""
	if above := o.Stitches.Above; above != nil {
		more = "; the next count is " + report.CountOf(above.Count, "stitches")
	}
	return report.Notice{Reason: BindOffTightens, Field: field, Description: "a band of " + o.unit.Size(o.Stitches.SizeCm) +
		" draws in an edge of " + o.unit.Size(o.Stitches.AskedCm) + ", most of all where it is bound off" + more}
}
