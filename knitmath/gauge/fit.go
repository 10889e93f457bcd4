package gauge

import (
	"strconv"

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
	// Below and Above are the next legal counts; nil where there is none.
	Below   *NeighbourCount
	Above   *NeighbourCount
	Halfway bool
}

// Rule is a checked CountRule.
type Rule struct {
	multiple int64
	offset   int64 // remainder and both edges
	rounding measure.Rounding
}

// AnyCount is the rule that leaves every count legal, rounded to the nearest.
var AnyCount = Rule{multiple: 1}

// VetRule checks a rule that may be absent: then, and when it is not sound, any
// count is legal.
func VetRule(c *fault.Checks, field string, r *CountRule) Rule {
	if r == nil {
		return AnyCount
	}
	c.OptionalCount(field, "multiple", r.Multiple, 1, MaxMultiple)
	c.OptionalCount(field, "remainder", r.Remainder, 0, stitch.MaxStitches)
	c.OptionalCount(field, "edge", r.Edge, 0, MaxEdges)
	fault.Enum(c, field, "rounding", r.Rounding, measure.RoundingDown)
	if !c.Sound(field) {
		return AnyCount
	}
	return Rule{
		multiple: int64(fault.Or(r.Multiple, 1)),
		offset:   int64(fault.Or(r.Remainder, 0)) + 2*int64(fault.Or(r.Edge, 0)),
		rounding: r.Rounding,
	}
}

// Smallest is the smallest legal count, at least 1.
func (r Rule) Smallest() int64 {
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
func (r Rule) choose(q mixed) (count int64, halfway, ok bool) {
	u := q.whole - r.offset
	down := measure.FloorDiv(u, r.multiple)
	n := down
	switch r.rounding {
	case measure.RoundingUp:
		if u > down*r.multiple || q.rest > 0 {
			n++
		}
	case measure.RoundingDown:
	default:
		// floor(2q) decides: the quarters above it never reach the half.
		twice := 2 * u
		if 2*q.rest >= q.den {
			twice++
		}
		n = measure.FloorDiv(twice+r.multiple, 2*r.multiple)
	}
	count = r.multiple*n + r.offset
	least := r.Smallest()
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
func (r Rule) neighbours(count int64) (below, above int64) {
	if b := count - r.multiple; b >= r.Smallest() {
		below = b
	}
	if a := count + r.multiple; a <= stitch.MaxStitches {
		above = a
	}
	return below, above
}

// fit is the legal count that the rule's rounding chooses for q, with its
// neighbours and, by size, how large each is and by how much that misses what
// was asked. Nil when there is none.
func (r Rule) fit(q mixed, size func(count int) (sizeCm, differenceCm float64)) *FittedCount {
	count, halfway, ok := r.choose(q)
	if !ok {
		return nil
	}
	f := &FittedCount{Count: int(count), Exact: q.float(), Halfway: halfway}
	f.SizeCm, f.DifferenceCm = size(f.Count)
	below, above := r.neighbours(count)
	neighbour := func(n int64) *NeighbourCount {
		if n == 0 {
			return nil
		}
		sizeCm, differenceCm := size(int(n))
		return &NeighbourCount{int(n), sizeCm, differenceCm}
	}
	f.Below, f.Above = neighbour(below), neighbour(above)
	return f
}

// fit turns um micrometres into the legal count that the rule's rounding
// chooses, exactly. Nil when there is none from 1 to MaxStitches on the right
// side of um.
func (d Density) fit(um int64, r Rule) *FittedCount {
	f := r.fit(d.mixed(um), func(count int) (sizeCm, differenceCm float64) {
		return d.SizeCm(count), d.differenceCm(count, um)
	})
	if f != nil {
		num, den := d.Exact(um)
		f.Exact, f.AskedCm = float64(num)/float64(den), measure.Centimetres(um)
	}
	return f
}

// mixed is the exact number of stitches in um micrometres.
func (d Density) mixed(um int64) mixed {
	num, den := d.Exact(um)
	return mixed{num / den, num % den, den}
}

// differenceCm is the size of n stitches less um micrometres, in cm, from one
// exact numerator: (n*span*1e6 - um*count) / count micrometres.
func (d Density) differenceCm(n int, um int64) float64 {
	return float64(int64(n)*d.span*1e6-um*d.count) / float64(d.count) / 1e4
}

// VetFit turns um micrometres into the legal count that the rule's rounding
// chooses, exactly. Where there is none from 1 to MaxStitches on the right side
// of um it is nil, and every one of the fields involved is infeasible.
func (d Density) VetFit(c *fault.Checks, um int64, r Rule, noun string, fields ...string) *FittedCount {
	f := d.fit(um, r)
	if f == nil {
		c.Infeasible(r.misfit(d.mixed(um), noun), fields...)
	}
	return f
}

// misfit says why no legal count answers an exact one.
func (r Rule) misfit(q mixed, noun string) string {
	detail := "the size is " + measure.Decimal(q.float(), 2) + " " + noun + "; "
	switch least := r.Smallest(); {
	case q.whole >= least:
		return detail + "at most " + strconv.Itoa(stitch.MaxStitches) + " are counted"
	case least > stitch.MaxStitches:
		return detail + "the smallest count the rule allows is " + strconv.FormatInt(least, 10) + ", and at most " +
			strconv.Itoa(stitch.MaxStitches) + " are counted"
	default:
		return detail + "the smallest count the rule allows is " + strconv.FormatInt(least, 10) + ", so rounding must be nearest or up"
	}
}
