package gauge

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// A CountRule says which counts are legal:
//
//	Multiple*n + Remainder + 2*Edge,  n = 0, 1, 2, ..., at least 1
type CountRule struct {
	Multiple  *int
	Remainder *int
	Edge      *int
	Rounding  measure.Rounding
}

// Ranges of a rule.
const (
	// MaxMultiple is the longest repeat: no published repeat comes near it.
	MaxMultiple = 1_000
	// MaxEdges is the most stitches kept at one edge.
	MaxEdges = 1_000
)

// A NeighbourCount is a legal count beside the chosen one.
type NeighbourCount struct {
	Count        int
	SizeCm       float64
	DifferenceCm float64
}

// A FittedCount is a length answered as a count.
type FittedCount struct {
	Count        int
	Exact        float64
	AskedCm      float64
	SizeCm       float64
	DifferenceCm float64
	// Below and Above are the next legal counts; Count is 0 in one that does
	// not exist.
	Below   NeighbourCount
	Above   NeighbourCount
	Halfway bool
}

// Rule is a checked CountRule.
type Rule struct {
	Multiple int64
	offset   int64 // remainder and both edges
	rounding measure.Rounding
}

// CheckRule checks a rule that may be absent.
func CheckRule(c *fault.Checks, field string, r *CountRule) (Rule, bool) {
	if r == nil {
		return Rule{Multiple: 1}, true
	}
	ok := c.OptionalCount(field, "multiple", r.Multiple, 1, MaxMultiple)
	ok = c.OptionalCount(field, "remainder", r.Remainder, 0, stitch.MaxStitches) && ok
	ok = c.OptionalCount(field, "edge", r.Edge, 0, MaxEdges) && ok
	ok = fault.Enum(c, field, "rounding", r.Rounding, measure.RoundingDown) && ok
	if !ok {
		return Rule{Multiple: 1}, false
	}
	return Rule{
		Multiple: int64(fault.Or(r.Multiple, 1)),
		offset:   int64(fault.Or(r.Remainder, 0)) + 2*int64(fault.Or(r.Edge, 0)),
		rounding: r.Rounding,
	}, true
}

// smallest is the smallest legal count, at least 1.
func (r Rule) smallest() int64 {
	if r.offset == 0 {
		return r.Multiple
	}
	return r.offset
}

// Mixed is an exact number of stitches: whole + rest/den, with rest from 0 to
// den-1.
type Mixed struct{ Whole, Rest, Den int64 }

// float is the float nearest to it, but for the last bit.
func (q Mixed) float() float64 { return float64(q.Whole) + float64(q.Rest)/float64(q.Den) }

// choose is the legal count that the rule's rounding takes for q,
//
//	n = round((q - offset) / multiple),  count = multiple*n + offset
//
// and whether q falls exactly half-way between two legal counts. Since the part
// of q behind the point never carries further than to the next integer, it is
// enough to know whether it is 0, below a half, a half or above: all else is done
// on whole stitches. q.whole is at most about 1e8 and q.den at most 1e15. ok is
// false when no legal count from 1 to MaxStitches is on the right side of q.
func (r Rule) choose(q Mixed) (count int64, halfway, ok bool) {
	u := q.Whole - r.offset
	down := measure.FloorDiv(u, r.Multiple)
	n := down
	switch r.rounding {
	case measure.RoundingUp:
		if u > down*r.Multiple || q.Rest > 0 {
			n++
		}
	case measure.RoundingDown:
	default:
		// floor(2q) decides: the quarters above it never reach the half.
		twice := 2 * u
		if 2*q.Rest >= q.Den {
			twice++
		}
		n = measure.FloorDiv(twice+r.Multiple, 2*r.Multiple)
	}
	count = r.Multiple*n + r.offset
	least := r.smallest()
	if count < least {
		if r.rounding == measure.RoundingDown {
			return 0, false, false
		}
		count = least
	}
	if count > stitch.MaxStitches {
		return 0, false, false
	}
	// Half-way: twice the way up from the legal count below is one multiple.
	way := u - down*r.Multiple
	switch {
	case q.Rest == 0:
		halfway = 2*way == r.Multiple
	case 2*q.Rest == q.Den:
		halfway = 2*way+1 == r.Multiple
	}
	return count, halfway && r.Multiple*down+r.offset >= least, true
}

// neighbours are the legal counts next to one, 0 where there is none.
func (r Rule) neighbours(count int64) (below, above int64) {
	if b := count - r.Multiple; b >= r.smallest() {
		below = b
	}
	if a := count + r.Multiple; a <= stitch.MaxStitches {
		above = a
	}
	return below, above
}

// Fit turns um micrometres into the legal count that the rule's rounding
// chooses, exactly. ok is false when there is none from 1 to MaxStitches on the
// right side of um.
func (d Density) Fit(um int64, r Rule) (f FittedCount, ok bool) {
	num, den := d.Exact(um)
	count, halfway, ok := r.choose(Mixed{num / den, num % den, den})
	if !ok {
		return f, false
	}
	f = FittedCount{
		Count:        int(count),
		Exact:        float64(num) / float64(den),
		AskedCm:      measure.Centimetres(um),
		SizeCm:       d.SizeCm(int(count)),
		DifferenceCm: d.differenceCm(int(count), um),
		Halfway:      halfway,
	}
	below, above := r.neighbours(count)
	if below > 0 {
		f.Below = NeighbourCount{int(below), d.SizeCm(int(below)), d.differenceCm(int(below), um)}
	}
	if above > 0 {
		f.Above = NeighbourCount{int(above), d.SizeCm(int(above)), d.differenceCm(int(above), um)}
	}
	return f, true
}

// differenceCm is the size of n stitches less um micrometres, in cm, from one
// exact numerator: (n*span*1e6 - um*count) / count micrometres.
func (d Density) differenceCm(n int, um int64) float64 {
	return float64(int64(n)*d.Span*1e6-um*d.Count) / float64(d.Count) / 1e4
}
