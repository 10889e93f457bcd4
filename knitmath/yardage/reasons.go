package yardage

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// The reasons of the notices.
const (
	// UnusualRatio: all pieces are plain knitting, and the gauge has fewer or more
	// rows to a stitch than plain knitting has. Field is gauge.
	UnusualRatio report.Reason = "UNUSUAL_RATIO"
	// StateUnknown: no state of the fabric is given, so that the range by loop
	// covers all of them. Field is state.
	StateUnknown report.Reason = "STATE_UNKNOWN"
	// SwatchFabric: the pieces are of more than one fabric, and by swatch all are
	// taken to be the swatch's. Field is swatch.
	SwatchFabric report.Reason = "SWATCH_FABRIC"
	// CoarseScale: half a step of the scale is more than 5 % of the swatch. Field is
	// swatch.scale_step_g.
	CoarseScale report.Reason = "COARSE_SCALE"
	// NotCompared: there is a swatch but no put-up, so that grams by swatch and
	// metres by loop cannot be compared. Field is put_up.
	NotCompared report.Reason = "NOT_COMPARED"
	// RowsDerived: only stitches are known, and the rows are those of plain knitting.
	// Field is stitch_gauge.
	RowsDerived report.Reason = "ROWS_DERIVED"
	// EdgesNotWeighed: there is a swatch but no put-up, so that grams by swatch are
	// without edges, fringe and pompoms. Field is put_up.
	EdgesNotWeighed report.Reason = "EDGES_NOT_WEIGHED"
	// MethodsDisagree: the ranges by swatch and by loop have nothing in common. Field
	// is swatch, which the answer goes by.
	MethodsDisagree report.Reason = "METHODS_DISAGREE"
)

// remark adds the notices.
func (q *question) remark(out *Estimate) {
	add := func(reason report.Reason, field, text string) {
		out.Notices = append(out.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	plain, mixed := true, false
	for _, p := range q.pieces {
		plain = plain && p.factor == Range{1, 1, 1}
		mixed = mixed || p.factor != q.pieces[0].factor
	}
	ratio := out.RowsToStitch
	if plain && (ratio < minPlainRatio || ratio > maxPlainRatio) {
		add(UnusualRatio, "gauge", "has "+measure.Decimal(ratio, 2)+" rows to a stitch of width; plain knitting has about 1.2 to 1.45, "+
			"so the answer by loop holds less well")
	}
	if out.derived {
		add(
			RowsDerived,
			"stitch_gauge",
			"has no rows; they are taken to be "+measure.Decimal(plainRatio.Likely, 2)+" to a stitch of width, as in stockinette, "+
				"and from 1.2 to 1.4 in the range; count them if you can",
		)
	}
	if q.in.State == FabricStateUnspecified {
		add(StateUnknown, "state", "is not given; the range by loop covers all states")
	}
	if out.BySwatch != nil {
		q.remarkSwatch(out, mixed, add)
	}
}

// remarkSwatch adds the notices on what the swatch says. mixed: the pieces are not all of one
// fabric.
func (q *question) remarkSwatch(out *Estimate, mixed bool, add func(reason report.Reason, field, text string)) {
	s := out.BySwatch
	if mixed {
		add(SwatchFabric, "swatch", "is one fabric, and the pieces are several; by swatch all are taken to be its fabric")
	}
	if w := q.in.Swatch; w.scaleStepG()/2 > coarseScale*w.MassG {
		add(CoarseScale, "swatch.scale_step_g", "half a step of the scale is more than 5 % of the swatch; weigh several "+
			"swatches together, or on a finer scale")
	}
	if q.in.PutUp == nil && out.TrimmingsM != nil {
		add(EdgesNotWeighed, "put_up", "is not given, so that the grams are without edges, fringe and pompoms")
	}
	switch {
	case q.in.PutUp == nil:
		add(NotCompared, "put_up", "is not given, so that grams by swatch and metres by loop cannot be compared")
	case s.LengthM.apart(*out.ByLoop.LengthM):
		add(MethodsDisagree, "swatch", "by swatch it is "+yarn.LengthWords(q.in.DisplayUnit, s.LengthM.Likely)+", by loop "+
			yarn.LengthWords(q.in.DisplayUnit, out.ByLoop.LengthM.Likely)+", and the ranges do not meet; the answer goes by the swatch: "+
			"check its mass and size, the gauge and put_up")
	}
}

// coarseScale is the part of a swatch's mass beyond which half a step of the
// scale is worth a remark: it is then half of the usual reserve.
const coarseScale = 0.05
