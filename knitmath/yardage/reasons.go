package yardage

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// The reasons of the notices.
const (
	// UnusualRatio: all pieces are plain knitting, or all garter stitch, and the gauge has
	// fewer or more rows to a stitch than that has. Field is gauge.
	UnusualRatio report.Reason = "UNUSUAL_RATIO"
	// OtherGauge: the gauge of a piece is that of another fabric. Field is pattern of the
	// piece where the gauge is the question's, and gauge of the piece where it is its own.
	OtherGauge report.Reason = "OTHER_GAUGE"
	// UnusualTightness: the loops are so short or so long beside the thickness of the yarn
	// that it is not the fabric that loop constants are of. Field is put_up.
	UnusualTightness report.Reason = "UNUSUAL_TIGHTNESS"
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
	// RowsDerived: only stitches are known, and the rows are those of stockinette or, where
	// all is of that, of garter stitch. Field is stitch_gauge.
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
	mixed := false
	for _, p := range q.pieces {
		mixed = mixed || p.factor != q.pieces[0].factor
	}
	q.remarkGauges(out, add)
	q.remarkTightness(out, add)
	if out.derived {
		add(RowsDerived, "stitch_gauge", q.rowsDerived())
	}
	if q.in.State == FabricStateUnspecified {
		add(StateUnknown, "state", "is not given; the range covers all of them, from dry to washed and tumbled")
	}
	if out.BySwatch != nil {
		q.remarkSwatch(out, mixed, add)
	}
}

// remarkGauges says where a gauge is not that of the fabric it stands for: by loop the
// answer then holds less well. Where it is so of the whole question, the gauge is unusual;
// where it is of some pieces, they have another gauge than the rest.
func (q *question) remarkGauges(out *Estimate, add func(reason report.Reason, field, text string)) {
	all := true
	for _, p := range q.pieces {
		all = all && p.misfits() && !p.ownGauge && p.fabric == q.pieces[0].fabric
	}
	if all {
		usual := usualRatios[q.pieces[0].fabric]
		add(UnusualRatio, "gauge", "has "+report.AmountOf(measure.Decimal(out.RowsToStitch, 2), "rows")+
			" to a stitch of width; "+usual.name+" has about "+
			usual.usual+", so the answer by loop holds less well")
		return
	}
	for i, p := range q.pieces {
		if !p.misfits() {
			continue
		}
		usual, ratio := usualRatios[p.fabric], measure.Decimal(p.courses/p.wales, 2)
		path := fault.Index("pieces", i)
		if p.ownGauge {
			add(OtherGauge, fault.Join(path, "gauge"), "has "+report.AmountOf(ratio, "rows")+" to a stitch of width; "+usual.name+
				" has about "+usual.usual+
				": is it the gauge of another fabric?")
		} else {
			add(OtherGauge, fault.Join(path, "pattern"), "is "+usual.name+", which has about "+usual.usual+" rows to a stitch of width, and the "+
				"gauge has "+ratio+": give the piece its own gauge")
		}
	}
}

// remarkTightness says where the yarn of the put-up is too thick or too thin for the gauge.
func (q *question) remarkTightness(out *Estimate, add func(reason report.Reason, field, text string)) {
	p := q.in.PutUp
	if p == nil {
		return
	}
	tightness := math.Sqrt(1000*p.BallG/p.BallM) / out.LoopLengthCm
	figure := " (sqrt(tex) to the cm of loop is " + measure.Decimal(tightness, 1) + ", usually 9.5 to 11.3 by hand)"
	switch {
	case tightness > mostTightness:
		add(UnusualTightness, "put_up", "is of a yarn too thick for the loops of this gauge"+figure+"; check both")
	case tightness < leastTightness:
		add(UnusualTightness, "put_up", "is of a yarn so thin that the fabric is as open as lace"+figure+" and takes the size it is blocked "+
			"to: the answer by loop holds less well; weigh a swatch")
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
