package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reason of the notice on a border.
const (
	// BorderRate: the border is of one yarn, and the rows that were weighed are of several, so
	// that what a stitch of it takes is worked out. Field is border.
	BorderRate report.Reason = "BORDER_RATE"
)

// edging is the border, worked out once: of which yarn it is, how many stitches it has, 0
// for as many as are on the needle, and what one of them takes by how its bind-off is, in
// millionths of a stitch of the rows.
type edging struct {
	yarn, stitches int
	takes          [3]int64
}

func (b *BorderAhead) bindsOff() bool { return fault.Or(b.BindOff, true) }

// edging works out the border; without one it is of no yarn.
func (q *remainder) edging() edging {
	b := q.in.Border
	if b == nil {
		return edging{yarn: -1}
	}
	rows := int64(b.Rows) * measure.ToMillionths(fault.Or(b.PatternFactor, 1))
	e := edging{yarn: fault.Or(b.YarnNumber, 1) - 1, stitches: fault.Or(b.Stitches, 0), takes: [3]int64{rows, rows, rows}}
	whole := q.wholeStitch(e.yarn)
	for k := range e.takes {
		if b.bindsOff() {
			e.takes[k] += bindOffs[k]
		}
		e.takes[k] = int64(float64(e.takes[k])*whole.at(k) + 0.5)
	}
	return e
}

// wholeStitch is what a stitch of one yarn alone takes, beside what a stitch of the rows takes
// of that yarn: more than 1 where they are stranded, and the yarn has only a share of them.
//
// By the geometry of the loop it is l of l * share + float * (1 - share). Where the rows were
// weighed the share is not known; but all m yarns together are l + (m - 1) * float, and a float
// is a known part f of l, so that
//
//	l = all yarns of a stitch / (1 + (m - 1) f)
//
// A yarn that is only carried takes f of a stitch at least, so that it is 1/f at most. Own
// derivation, with the floats of strands; of weighed grams for yarns of one thickness.
func (q *remainder) wholeStitch(i int) Range {
	if !q.in.stranded() {
		return Range{1, 1, 1}
	}
	var whole [3]float64
	for k := range whole {
		if q.in.Yarns[i].Used == nil {
			// A tight gauge has short loops and short floats, and both in one measure.
			l := loopLength(loopConstants[q.in.State].at(k), q.st.PerCm()*q.rw.PerCm()) / 100
			float := floatSlack.at(k) / q.st.PerCm() / 100
			whole[k] = l / strands{l, float}.of(fault.Or(q.in.Yarns[i].SharePercent, 0)/100)
			continue
		}
		f := floatOfStitch.at(high - k)
		whole[k] = min(1/f, max(1, q.allYarns()/q.perStitchIn(i)/(1+float64(len(q.in.Yarns)-1)*f)))
	}
	return Range{whole[low], whole[likely], whole[high]}
}

// allYarns is what a stitch of weighed rows takes of all yarns, in metres or else in grams.
func (q *remainder) allYarns() float64 {
	sum := 0.0
	for i := range q.supplies {
		sum += q.perStitchIn(i)
	}
	return sum
}

// perStitchIn is what a stitch takes of a yarn, in metres where all yarns have them, and else
// in grams.
func (q *remainder) perStitchIn(i int) float64 {
	grams, metres := q.supplies[i].both(Range{Likely: q.supplies[i].perStitch.Likely})
	if q.in.inMetres() {
		return metres.Likely
	}
	return grams.Likely
}

// inMetres reports whether what all weighed yarns took is known in metres.
func (in RemainingInput) inMetres() bool {
	for _, y := range in.Yarns {
		if y.Used.MassG != nil && y.PutUp == nil {
			return false
		}
	}
	return true
}

// vetBorderRate checks that what weighed yarns took can be added up, where a border wants it.
func vetBorderRate(c *fault.Checks, in RemainingInput) {
	if in.Border == nil || !in.stranded() {
		return
	}
	grams := 0
	for _, y := range in.Yarns {
		if y.Used == nil {
			return
		}
		if y.Used.MassG != nil || y.PutUp != nil {
			grams++
		}
	}
	if grams == len(in.Yarns) || in.inMetres() {
		return
	}
	for i, y := range in.Yarns {
		if y.PutUp == nil {
			c.Add(fault.Join(fault.Index("yarns", i), "put_up"), fault.ReasonRequired, "is missing; a stitch of the border takes as much of "+
				"one yarn as a stitch of the rows of all together, which are in grams and in metres, and it turns one into the other")
		}
	}
}

// remarkBorder says how the border's stitches were counted, where the rows do not tell.
func (q *remainder) remarkBorder(add func(reason report.Reason, field, text string)) {
	if q.in.Border == nil || !q.in.stranded() || q.in.Yarns[q.edge.yarn].Used == nil {
		return
	}
	r := q.wholeStitch(q.edge.yarn)
	add(BorderRate, "border", "is of one yarn: a stitch of it is taken to be "+measure.Decimal(r.Likely, 2)+
		" times what a stitch of the rows took of that yarn, "+measure.Decimal(r.Low, 2)+" to "+measure.Decimal(r.High, 2)+
		", since floats are 0.25 to 0.35 of a stitch")
}

// border is what the border takes of a yarn when it is begun after r rows; k is how
// much its bind-off takes.
func (q *remainder) border(yarn, r, k int) int64 {
	if q.edge.yarn != yarn {
		return 0
	}
	n := q.edge.stitches
	if n == 0 {
		n = q.countAfter(r)
	}
	return int64(n) * q.edge.takes[k]
}
