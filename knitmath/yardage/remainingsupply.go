package yardage

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

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
	metres := func(figure int, gauge float64) float64 {
		l := loopLength(ks.at(figure), perCm2*gauge*gauge) / 100
		if !q.in.stranded() {
			return l
		}
		share := fault.Or(y.SharePercent, 0) / 100
		return strands{l, floatSlack.at(figure) / (q.st.PerCm() * gauge) / 100}.of(share)
	}
	return Range{metres(low, 1+off), metres(likely, 1), metres(high, 1-off)}
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
