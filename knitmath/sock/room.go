package sock

import (
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// A sock has room for its toe and for its heel. How long either is that was not asked for is not
// known: the shortest that is planned by default is taken, so that no sock is refused that can be knit.

// millimetre is less than a tape tells.
const millimetre = 0.1

// shortestToe is the kind of toe that is shortest by its defaults, of those of the round that are
// shorter than so much; unspecified where none is.
func (r rounds) shortestToe(g *gauge.Gauge, cm float64) (ToeKind, float64) {
	shortest := ToeKindUnspecified
	for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
		if _, toe, err := planToe(ToeInput{Kind: kind, RoundStitches: &r.round, Gauge: g}); err == nil && *toe.LengthCm < cm {
			shortest, cm = kind, *toe.LengthCm
		}
	}
	return shortest, cm
}

// wedgeToeRows are those of a wedge toe by its defaults.
func wedgeToeRows(round int) int {
	now := round - round%2
	end, half, rows := wedgeEnd(now), now/2, round%2
	for ; now > end; now -= 4 {
		if rows++; now-4 > max(half, end) { // a round even, but after the last
			rows++
		}
	}
	return rows
}

// shallowHeelCm is how far from the back of the heel the shallowest heel reaches: that of short rows.
func (r rounds) shallowHeelCm() float64 {
	half := r.round / 2
	return r.rw.SizeCm(half - thirdCentre(half) - 1)
}

// vetHeelRoom refuses a foot too short for its toe and a heel.
func (t toe) vetHeelRoom(c *fault.Checks, in ToeInput, sock, toeCm float64) {
	heel := t.shallowHeelCm()
	if sock-toeCm >= heel {
		return
	}
	detail := "the toe is " + t.unit.Size(toeCm) + " long"
	if sock > toeCm {
		detail += " and the shallowest heel takes " + t.unit.Size(heel)
	}
	detail += ", and the sock has only " + t.unit.Size(sock)
	if kind, cm := t.shortestToe(in.Gauge, min(toeCm, sock-heel)); kind != ToeKindUnspecified && kind != t.kind {
		detail += "; " + strings.ToLower(toeNames[kind]) + " is only " + t.unit.Size(cm) + " long"
	}
	c.Infeasible(detail, "foot_length_cm", "gauge")
}

// vetToeRoom refuses a foot too short for its heel and a toe, and remarks on one too short for a toe
// that is not short.
func (h heel) vetToeRoom(c *fault.Checks, in HeelInput, sock, heelCm float64) []report.Notice {
	left, wedge := sock-heelCm, h.rw.SizeCm(wedgeToeRows(h.round))
	if left >= wedge-millimetre {
		return nil
	}
	kind, toe := h.shortestToe(in.Gauge, wedge)
	if kind == ToeKindUnspecified {
		kind, toe = ToeKindWedge, wedge
	}
	if left >= toe {
		return []report.Notice{{Reason: ToeMustBeShort, Field: "foot_length_cm", Description: "a wedge toe is " + h.unit.Size(wedge) +
			" long, and the foot has " + h.unit.Size(left) + " when the heel begins; " + strings.ToLower(toeNames[kind]) + " is " +
			h.unit.Size(toe) + " long"}}
	}
	c.Infeasible("the heel takes "+h.unit.Size(heelCm)+" of the foot and the shortest toe "+h.unit.Size(toe)+", and the sock has only "+
		h.unit.Size(sock), "foot_length_cm", "gauge")
	return nil
}
