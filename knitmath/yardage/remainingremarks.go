package yardage

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// The reasons of the notices on what is left; CoarseScale and StateUnknown are among
// them too.
const (
	// SmallSample: the stitches that were weighed are few beside those to come. Field is
	// used of the yarn.
	SmallSample report.Reason = "SMALL_SAMPLE"
	// RowsEnd: rows that are open end before the yarn does. Field is sections.
	RowsEnd report.Reason = "ROWS_END"
)

const (
	// coarseUsed is the part of what was used beyond which a step of the scale is worth
	// a remark: as much as the usual reserve.
	coarseUsed = 0.10
	// smallSample is the part of the stitches to come that should have been weighed.
	// Common practice: weigh early, and again later.
	smallSample = 0.10
)

// remark adds the notices.
func (q *remainder) remark(out *Remaining) {
	add := func(reason report.Reason, field, text string) {
		out.Notices = append(out.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	for i, y := range q.in.Yarns {
		path := fault.Index("yarns", i)
		if y.Used == nil {
			continue
		}
		if y.Used.MassG != nil && y.stepG() > coarseUsed**y.Used.MassG {
			add(CoarseScale, fault.Join(path, "scale_step_g"), "a step of the scale is more than 10 % of what was used; weigh over "+
				"more rows, or on a finer scale")
		}
		weighed := float64(y.Used.halfStitches()) / 2
		spent := q.supplies[i].spent
		if ahead := float64(spent[len(spent)-1]) / millionths; weighed < smallSample*ahead {
			add(SmallSample, fault.Join(path, "used"), "speaks of "+report.AmountOf(measure.Decimal(weighed, 0), "stitches")+
				", less than a tenth of those to come; weigh again later")
		}
	}
	q.remarkBorder(add)
	if out.byLoop && q.in.State == FabricStateUnspecified {
		add(StateUnknown, "state", "is not given; the range covers all of them, from dry to washed and tumbled")
	}
	if q.open && out.MainRows.High != nil && *out.MainRows.High == len(q.counts) {
		why := "at " + strconv.Itoa(stitch.MaxRows) + " rows"
		if len(q.counts) < stitch.MaxRows {
			why = "where a row would have less than 1 stitch or more than " + strconv.Itoa(stitch.MaxStitches)
		}
		add(RowsEnd, "sections", "have an open end, and end "+why+" before the yarn does")
	}
}

// covers says what the range of one yarn covers.
func (q *remainder) covers(y YarnLeft) string {
	s := ""
	if y.LeftG != nil {
		s = "half a step of the scale on what is left; "
	}
	switch {
	case y.Used == nil:
		ks := loopConstants[q.in.State]
		s += "loop constants from " + measure.Decimal(ks.Low, 2) + " to " + measure.Decimal(ks.High, 2) + " (" + q.in.State.String() + ")"
		if q.in.stranded() {
			s += "; floats 5 to 47 % longer than straight"
		}
		if q.in.GaugeOffPercent > 0 {
			s += "; a gauge " + measure.Decimal(q.in.GaugeOffPercent, 2) + " % off either way"
		}
	case y.Used.MassG != nil:
		s += "a whole step on what was used"
	default:
		s += "nothing of the metres that were measured"
	}
	if b := q.in.Border; b != nil && b.bindsOff() {
		s += "; a bind-off of 3 to 5 times its width"
	}
	return s + "; all of it at once, at the worst and at the best"
}
