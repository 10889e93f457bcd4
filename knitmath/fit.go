package knitmath

// Rounding says which way a length goes to a count when it falls between two
// legal ones.
type Rounding int32

// The roundings.
const (
	RoundingUnspecified Rounding = iota // nearest
	RoundingNearest                     // exactly half-way goes up
	RoundingUp
	RoundingDown
)

// A CountRule says which counts are legal:
//
//	Multiple*n + Remainder + 2*EdgeCount,  n = 0, 1, 2, ..., at least 1
type CountRule struct {
	Multiple  *int
	Remainder *int
	EdgeCount *int
	Rounding  Rounding
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
	ExactCount   float64
	AskedCm      float64
	SizeCm       float64
	DifferenceCm float64
	// Below and Above are the next legal counts; Count is 0 in one that does
	// not exist.
	Below   NeighbourCount
	Above   NeighbourCount
	Halfway bool
}

// rule is a checked CountRule.
type rule struct {
	multiple int64
	offset   int64 // remainder and both edges
	rounding Rounding
}

// rule checks a rule that may be absent.
func (c *checks) rule(field string, r *CountRule) (rule, bool) {
	if r == nil {
		return rule{multiple: 1}, true
	}
	ok := c.optionalCount(field, "multiple", r.Multiple, 1, MaxMultiple)
	ok = c.optionalCount(field, "remainder", r.Remainder, 0, MaxStitches) && ok
	ok = c.optionalCount(field, "edge_count", r.EdgeCount, 0, MaxEdges) && ok
	ok = enum(c, field, "rounding", r.Rounding, RoundingDown) && ok
	if !ok {
		return rule{multiple: 1}, false
	}
	return rule{
		multiple: int64(or(r.Multiple, 1)),
		offset:   int64(or(r.Remainder, 0)) + 2*int64(or(r.EdgeCount, 0)),
		rounding: r.Rounding,
	}, true
}

// smallest is the smallest legal count, at least 1.
func (r rule) smallest() int64 {
	if r.offset == 0 {
		return r.multiple
	}
	return r.offset
}

// mixed is an exact number of stitches: whole + rest/den, with rest from 0 to
// den-1.
type mixed struct{ whole, rest, den int64 }

// float is the float nearest to it, but for the last bit.
func (q mixed) float() float64 { return float64(q.whole) + float64(q.rest)/float64(q.den) }

// choose is the legal count that the rule's rounding takes for q,
//
//	n = round((q - offset) / multiple),  count = multiple*n + offset
//
// and whether q falls exactly half-way between two legal counts. Since the part
// of q behind the point never carries further than to the next integer, it is
// enough to know whether it is 0, below a half, a half or above: all else is done
// on whole stitches. q.whole is at most about 1e8 and q.den at most 1e15. ok is
// false when no legal count from 1 to MaxStitches is on the right side of q.
func (r rule) choose(q mixed) (count int64, halfway, ok bool) {
	u := q.whole - r.offset
	down := floorDiv(u, r.multiple)
	n := down
	switch r.rounding {
	case RoundingUp:
		if u > down*r.multiple || q.rest > 0 {
			n++
		}
	case RoundingDown:
	default:
		// floor(2q) decides: the quarters above it never reach the half.
		twice := 2 * u
		if 2*q.rest >= q.den {
			twice++
		}
		n = floorDiv(twice+r.multiple, 2*r.multiple)
	}
	count = r.multiple*n + r.offset
	least := r.smallest()
	if count < least {
		if r.rounding == RoundingDown {
			return 0, false, false
		}
		count = least
	}
	if count > MaxStitches {
		return 0, false, false
	}
	// Half-way: twice the way up from the legal count below is one multiple.
	way := u - down*r.multiple
	switch {
	case q.rest == 0:
		halfway = 2*way == r.multiple
	case 2*q.rest == q.den:
		halfway = 2*way+1 == r.multiple
	}
	return count, halfway && r.multiple*down+r.offset >= least, true
}

// neighbours are the legal counts next to one, 0 where there is none.
func (r rule) neighbours(count int64) (below, above int64) {
	if b := count - r.multiple; b >= r.smallest() {
		below = b
	}
	if a := count + r.multiple; a <= MaxStitches {
		above = a
	}
	return below, above
}

// fit turns um micrometres into the legal count that the rule's rounding
// chooses, exactly. ok is false when there is none from 1 to MaxStitches on the
// right side of um.
func (d density) fit(um int64, r rule) (f FittedCount, ok bool) {
	num, den := d.exact(um)
	count, halfway, ok := r.choose(mixed{num / den, num % den, den})
	if !ok {
		return f, false
	}
	f = FittedCount{
		Count:        int(count),
		ExactCount:   float64(num) / float64(den),
		AskedCm:      centimetres(um),
		SizeCm:       d.sizeCm(int(count)),
		DifferenceCm: d.differenceCm(int(count), um),
		Halfway:      halfway,
	}
	below, above := r.neighbours(count)
	if below > 0 {
		f.Below = NeighbourCount{int(below), d.sizeCm(int(below)), d.differenceCm(int(below), um)}
	}
	if above > 0 {
		f.Above = NeighbourCount{int(above), d.sizeCm(int(above)), d.differenceCm(int(above), um)}
	}
	return f, true
}

// differenceCm is the size of n stitches less um micrometres, in cm, from one
// exact numerator: (n*span*1e6 - um*count) / count micrometres.
func (d density) differenceCm(n int, um int64) float64 {
	return float64(int64(n)*d.span*1e6-um*d.count) / float64(d.count) / 1e4
}
