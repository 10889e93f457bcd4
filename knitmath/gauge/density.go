package gauge

import (
	"math/big"

	"example.com/knitmath/knitmath/measure"
)

// A Density is a gauge in one direction, exactly: a count in millionths of a
// stitch (or row) over a length in whole micrometres. The zero value stands for
// a gauge that is not known.
type Density struct {
	count int64
	span  int64
}

// NewDensity is the density of so many stitches or rows over a length in cm,
// read to the nearest millionth and the nearest micrometre.
func NewDensity(count, overCm float64) Density {
	return Density{measure.ToMillionths(count), measure.Micrometres(overCm)}
}

// IsZero reports whether the gauge is not known.
func (d Density) IsZero() bool { return d.count == 0 }

// Equal reports whether two densities are the same gauge, exactly, over
// whatever lengths. The products are at most 1e10 * 1e7.
func (d Density) Equal(e Density) bool { return d.count*e.span == e.count*d.span }

// PerCm is the density as a float, for geometry that is not a count.
func (d Density) PerCm() float64 { return float64(d.count) / 1e6 / measure.Centimetres(d.span) }

// MeanPerCm is the mean of some densities in stitches to the cm, exactly: as a
// rational number, whose terms grow with every length that is counted over.
func MeanPerCm(densities ...Density) *big.Rat {
	num, den := new(big.Int), big.NewInt(1)
	for _, d := range densities {
		span := big.NewInt(d.span)
		num.Mul(num, span)
		num.Add(num, new(big.Int).Mul(den, big.NewInt(d.count)))
		den.Mul(den, span)
	}
	// A count to the micrometre in millionths is a hundredth of one to the cm.
	den.Mul(den, big.NewInt(100*int64(len(densities))))
	return new(big.Rat).SetFrac(num, den)
}

// SizeCm is the length of n stitches or rows, in cm. The products are exact
// integers below 2^53, so that the one division is rounded correctly.
func (d Density) SizeCm(n int) float64 {
	return float64(int64(n)*d.span*100) / float64(d.count)
}

// SizeOff is the length of n stitches in cm when the gauge is off by a number of
// stitches over its length; ok is false when so much off nothing is left of it.
func (d Density) SizeOff(n int, off float64) (cm float64, ok bool) {
	count := float64(d.count) + off*1e6
	if count <= 0 {
		return 0, false
	}
	return float64(int64(n)*d.span*100) / count, true
}

// Exact is the rational number of stitches in um micrometres, num/den.
//
// With um at most 3e7 (ten metres and 200 % ease) and the count at most 1e9, num
// is at most 3e16; den is at most 1e12.
func (d Density) Exact(um int64) (num, den int64) { return um * d.count, d.span * 1e6 }

// Nearest is the whole number of stitches nearest to um micrometres, halves up.
func (d Density) Nearest(um int64) int {
	num, den := d.Exact(um)
	return int(measure.HalfUpDiv(num, den))
}

// Counted is a distance as a count: given so, or in cm at the gauge.
func (d Density) Counted(count *int, cm *float64) int {
	if count != nil {
		return *count
	}
	return d.Nearest(measure.Micrometres(*cm))
}

// CountedEven is the even count nearest to a distance, half-way up: an odd count goes up by
// one.
func (d Density) CountedEven(count *int, cm *float64) int {
	num, den := int64(0), int64(1)
	if count != nil {
		num = int64(*count)
	} else {
		num, den = d.Exact(measure.Micrometres(*cm))
	}
	return 2 * int(measure.HalfUpDiv(num, 2*den))
}

// Over is the count in span micrometres. The product is at most 1e10 * 1e6, so
// that readings over equal lengths come out as they were read.
func (d Density) Over(span int64) float64 {
	return float64(d.count*span) / (float64(d.span) * 1e6)
}
