package yardage

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// The three figures of a range, as indices.
const (
	low = iota
	likely
	high
)

// remainder is a checked question on what is left. Yarn is counted in millionths of a
// stitch of the kind that was weighed.
type remainder struct {
	in     RemainingInput
	st, rw gauge.Density

	supplies []supply
	counts   []int   // stitches of each row
	weights  []int64 // the same, by pattern factor
	open     bool
	edge     edging
}

// work answers a checked question.
func (q *remainder) work() Remaining {
	for i := range q.in.Yarns {
		q.supplies = append(q.supplies, q.supply(i))
	}
	q.edge = q.edging()
	q.layOut()
	for i := range q.supplies {
		q.spend(i)
	}
	main := q.reach()
	out := Remaining{unit: q.in.DisplayUnit, state: q.in.State, stranded: q.in.stranded(), border: q.in.Border != nil,
		MainRows: countRange(main), bindOff: q.in.Border != nil && q.in.Border.bindsOff()}
	rows := len(q.counts)
	if q.open {
		rows = max(0, main[likely])
	} else {
		out.PlannedRows = &rows
	}
	stitches := [3]int{-1, -1, -1}
	for k, r := range main {
		if r >= 0 {
			stitches[k] = q.countAfter(r)
		}
	}
	out.MainStitches = countRange(stitches)
	for i := range q.supplies {
		y := q.yarnOut(i, rows)
		out.byLoop = out.byLoop || q.in.Yarns[i].Used == nil
		out.Lasts = max(out.Lasts, y.Lasts)
		out.Yarns = append(out.Yarns, y)
	}
	out.Marks = q.workMarks(rows)
	out.recheck = q.recheck(out, rows)
	if q.in.WithOutline {
		out.Outline = q.outline(rows)
	}
	q.remark(&out)
	return out
}

// countRange are three counts, of which those below 0 are none.
func countRange(n [3]int) CountRange {
	var out CountRange
	for i, to := range []**int{&out.Low, &out.Likely, &out.High} {
		if n[i] >= 0 {
			*to = &n[i]
		}
	}
	return out
}

// usualRows is how many rows room is made for where nobody says how many there will be.
const usualRows = 128

// layOut writes the rows ahead one after another. Rows that are open go on until more is
// worked than all yarns together can be enough for, or the count or the rows end.
func (q *remainder) layOut() {
	total := int64(0)
	for _, s := range q.supplies {
		total = min(total+s.budget[high], mostBudget)
	}
	room := 0
	for _, s := range q.in.Sections {
		room += max(fault.Or(s.Rows, usualRows), len(s.RowStitches))
	}
	q.counts, q.weights = make([]int, 0, room), make([]int64, 0, room)
	spent := int64(0)
	for _, s := range q.in.Sections {
		factor := measure.ToMillionths(fault.Or(s.PatternFactor, 1))
		rows := max(fault.Or(s.Rows, 0), len(s.RowStitches))
		if q.open = rows == 0; q.open {
			rows = stitch.MaxRows - len(q.counts)
		}
		for i := range rows {
			n := s.at(i)
			if q.open && (n < 1 || n > stitch.MaxStitches || spent > total) {
				break
			}
			q.counts = append(q.counts, n)
			q.weights = append(q.weights, int64(n)*factor)
			spent += int64(n) * factor
		}
	}
}

// spend adds up what one yarn has given after each number of rows.
func (q *remainder) spend(i int) {
	spent := make([]int64, len(q.weights)+1)
	stripe, within := 0, 0
	for r, w := range q.weights {
		takes := len(q.in.Stripes) == 0
		if !takes {
			if within == q.in.Stripes[stripe].Rows {
				stripe, within = (stripe+1)%len(q.in.Stripes), 0
			}
			takes = q.in.Stripes[stripe].YarnNumber == i+1
			within++
		}
		if spent[r+1] = spent[r]; takes {
			spent[r+1] += w
		}
	}
	q.supplies[i].spent = spent
}

// countAfter is the stitches on the needle after r rows.
func (q *remainder) countAfter(r int) int {
	if r == 0 {
		return q.in.Sections[0].at(0)
	}
	return q.counts[r-1]
}

// yarnOut is the answer on one yarn, for so many rows and the border.
func (q *remainder) yarnOut(i, rows int) RemainingYarn {
	y, s := q.in.Yarns[i], &q.supplies[i]
	var takes [3]float64
	for k := range takes {
		takes[k] = float64(s.spent[rows]+q.border(i, rows, k)) / millionths
	}
	needed := Range{takes[low] * s.perStitch.Low, takes[likely] * s.perStitch.Likely, takes[high] * s.perStitch.High}
	margin := Range{s.left.Low - needed.High, s.left.Likely - needed.Likely, s.left.High - needed.Low}
	out := RemainingYarn{Name: y.Name, MainRows: countRange(s.main), RangeCovers: q.covers(y),
		EnoughForStitches: Range{float64(s.budget[low]) / millionths, float64(s.budget[likely]) / millionths,
			float64(s.budget[high]) / millionths}}
	out.LeftG, out.LeftM = s.both(s.left)
	out.NeededG, out.NeededM = s.both(needed)
	out.MarginG, out.MarginM = s.both(margin)
	if !q.open {
		out.Lasts = LastsSurely
		for _, k := range []int{low, likely, high} {
			if s.spent[rows]+q.border(i, rows, high-k) > s.budget[k] {
				out.Lasts = [3]Lasts{LastsLikely, LastsDoubtful, LastsNo}[k]
			}
		}
	}
	if p := y.PutUp; p != nil && !q.open {
		missing := max(0, -out.MarginM.Low)
		more := measure.CeilQuotient(missing, p.BallM)
		out.MoreBalls = &more
	}
	for _, share := range q.in.SharePercents {
		out.Marks = append(out.Marks, YarnMark{share, countRange(s.mark(share))})
	}
	return out
}

// recheck is when to weigh again, and what should be there then.
type recheck struct {
	rows  int
	yarns []string
}

// recheck is after half of the rows, where they are not certain to be worked.
func (q *remainder) recheck(out Remaining, rows int) *recheck {
	certain := out.Lasts == LastsSurely || out.Lasts == LastsNo || q.open && out.MainRows.Low != nil && *out.MainRows.Low == *out.MainRows.High
	if rows < 2 || certain || out.MainRows.Likely == nil {
		return nil
	}
	r := &recheck{rows: (min(rows, *out.MainRows.Likely) + 1) / 2}
	for i := range q.supplies {
		s := &q.supplies[i]
		there := math.Max(0, s.left.Likely-float64(s.spent[r.rows])/millionths*s.perStitch.Likely)
		r.yarns = append(r.yarns, s.words(q.in.DisplayUnit, there)+of(out.Yarns, i))
	}
	return r
}
