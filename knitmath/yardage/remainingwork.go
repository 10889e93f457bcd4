package yardage

import (
	"math"
	"math/big"
	"math/bits"

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
}

// supply is one yarn: what is left and what a stitch takes, in its own unit.
type supply struct {
	left      Range // in the unit of what a stitch takes
	perStitch Range
	byMass    bool
	other     float64 // the other unit in one of its own; 0 where it is not known
	budget    [3]int64
	spent     []int64 // after each number of rows
	main      [3]int  // rows at most, -1 for not even the border
}

// mostBudget caps what is counted: more than the longest rows ahead can take.
const mostBudget = int64(1e18)

// work answers a checked question.
func (q *remainder) work() Remaining {
	for i := range q.in.Yarns {
		q.supplies = append(q.supplies, q.supply(i))
	}
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

// supply works out one yarn.
func (q *remainder) supply(i int) supply {
	y := q.in.Yarns[i]
	s := supply{byMass: y.Used != nil && y.Used.MassG != nil}
	rate := 1.0 // the unit of a stitch in one of what is left
	if p := y.PutUp; p != nil {
		s.other = p.BallG / p.BallM
		if s.byMass {
			s.other = p.BallM / p.BallG
		}
		if y.convert() {
			rate = 1 / s.other
		}
	}
	amount, half := fault.Or(y.LeftM, 0), 0.0
	if y.LeftG != nil {
		amount, half = *y.LeftG, y.stepG()/2
	}
	s.left = Range{(amount - half) * rate, amount * rate, (amount + half) * rate}
	if y.Used == nil {
		s.perStitch = q.byLoop(y)
		s.budget = [3]int64{micro(s.left.Low / s.perStitch.High), micro(s.left.Likely / s.perStitch.Likely),
			micro(s.left.High / s.perStitch.Low)}
		return s
	}
	used, step := fault.Or(y.Used.LengthM, 0), 0.0
	if s.byMass {
		used, step = *y.Used.MassG, y.stepG()
	}
	stitches := float64(y.Used.halfStitches()) / 2
	s.perStitch = Range{(used - step) / stitches, used / stitches, (used + step) / stitches}
	for k := range s.budget {
		s.budget[k] = y.budget(int64(k - likely))
	}
	return s
}

// budget is for how many stitches a yarn is enough of which rows were weighed, in
// millionths, exactly and rounded down:
//
//	left * rows * (first + last) / 2 / used
//
// Grams and metres are read to the millionth. sign is -1 for the low figure, which has
// half a step less left and a whole one more used, and 1 for the high one.
func (y YarnLeft) budget(sign int64) int64 {
	step := measure.ToMillionths(y.stepG())
	left, used := 2*measure.ToMillionths(fault.Or(y.LeftM, 0)), measure.ToMillionths(fault.Or(y.Used.LengthM, 0))
	if y.LeftG != nil { // left is doubled, to have half a step of it whole
		left = 2*measure.ToMillionths(*y.LeftG) + sign*step
	}
	if y.Used.MassG != nil {
		used = measure.ToMillionths(*y.Used.MassG) - sign*step
	}
	num, den := big.NewInt(left), big.NewInt(4*used)
	num.Mul(num, big.NewInt(y.Used.halfStitches())).Mul(num, big.NewInt(millionths))
	if y.convert() {
		metres, grams := big.NewInt(measure.ToMillionths(y.PutUp.BallM)), big.NewInt(measure.ToMillionths(y.PutUp.BallG))
		if y.Used.MassG != nil {
			metres, grams = grams, metres
		}
		num.Mul(num, metres)
		den.Mul(den, grams)
	}
	if num.Quo(num, den); num.IsInt64() {
		return min(num.Int64(), mostBudget)
	}
	return mostBudget
}

// halfStitches are twice the stitches of the rows that were weighed: an even change has
// its mean.
func (u *YarnUsed) halfStitches() int64 {
	ends := u.FirstRowStitches + fault.Or(u.LastRowStitches, u.FirstRowStitches)
	return int64(fault.Or(u.Rows, 1)) * int64(ends)
}

// micro is a number in whole millionths, rounded down.
func micro(x float64) int64 {
	if x*millionths >= float64(mostBudget) {
		return mostBudget
	}
	return int64(x * millionths)
}

// byLoop is the metres of a stitch by the geometry of the loop, with its part of the
// floats where it is one of several colours of a row.
func (q *remainder) byLoop(y YarnLeft) Range {
	ks, perCm2, off := loopConstants[q.in.State], q.st.PerCm()*q.rw.PerCm(), q.in.GaugeOffPercent/100
	metres := func(ks, gauge float64) float64 {
		l := loopLength(ks, perCm2*gauge*gauge) / 100
		if !q.in.stranded() {
			return l
		}
		share := fault.Or(y.SharePercent, 0) / 100
		return strands{l, 1 / (q.st.PerCm() * gauge) / 100}.of(share)
	}
	return Range{metres(ks.Low, 1+off), metres(ks.Likely, 1), metres(ks.High, 1-off)}
}

// layOut writes the rows ahead one after another. Rows that are open go on until more is
// worked than all yarns together can be enough for, or the count or the rows end.
func (q *remainder) layOut() {
	total := int64(0)
	for _, s := range q.supplies {
		total = min(total+s.budget[high], mostBudget)
	}
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

func (b *BorderAhead) bindsOff() bool { return fault.Or(b.BindOff, true) }

// border is what the border takes of a yarn when it is begun after r rows; k is how
// much its bind-off takes.
func (q *remainder) border(yarn, r, k int) int64 {
	b := q.in.Border
	if b == nil || fault.Or(b.YarnNumber, 1) != yarn+1 {
		return 0
	}
	n := fault.Or(b.Stitches, q.countAfter(r))
	takes := int64(b.Rows) * measure.ToMillionths(fault.Or(b.PatternFactor, 1))
	if b.bindsOff() {
		takes += bindOffs[k]
	}
	return int64(n) * takes
}

// reach finds after how many rows at the latest the border has to be begun, for each
// yarn and for all. It looks at every row: where a shape narrows a later border takes
// less, so that what fits need not have fitted before.
func (q *remainder) reach() [3]int {
	all := [3]int{-1, -1, -1}
	for i := range q.supplies {
		q.supplies[i].main = all
	}
	for r := range len(q.counts) + 1 {
		for k := range all {
			fits := true
			for i := range q.supplies {
				s := &q.supplies[i]
				if s.spent[r]+q.border(i, r, high-k) <= s.budget[k] {
					s.main[k] = r
				} else {
					fits = false
				}
			}
			if fits {
				all[k] = r
			}
		}
	}
	return all
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

// both gives an amount in grams and in metres; what is not known is nil.
func (s *supply) both(own Range) (grams, metres *Range) {
	var other *Range
	if s.other != 0 {
		o := own.times(s.other)
		other = &o
	}
	if s.byMass {
		return &own, other
	}
	return other, &own
}

// mark finds after how many rows a share of a yarn is gone.
func (s *supply) mark(share float64) [3]int {
	var rows [3]int
	for k := range rows {
		rows[k] = reached(s.spent, s.budget[k], share)
	}
	return rows
}

// reached is the least r with spent[r] at least a share of the whole, exactly; -1 where
// there is none.
func reached(spent []int64, whole int64, share float64) int {
	wantHigh, wantLow := bits.Mul64(uint64(whole), uint64(measure.ToMillionths(share)))
	for r, n := range spent {
		if hi, lo := bits.Mul64(uint64(n), hundredParts); hi > wantHigh || hi == wantHigh && lo >= wantLow {
			return r
		}
	}
	return -1
}

// workMarks finds after how many rows shares of so many of them are worked.
func (q *remainder) workMarks(rows int) []WorkMark {
	if len(q.in.SharePercents) == 0 {
		return nil
	}
	done := make([]int64, rows+1)
	for r, w := range q.weights[:rows] {
		done[r+1] = done[r] + w
	}
	var marks []WorkMark
	for _, share := range q.in.SharePercents {
		marks = append(marks, WorkMark{share, reached(done, done[rows], share)})
	}
	return marks
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
