package yarn

import (
	"math"
	"math/big"
	"math/bits"
)

// A conversion into many systems needs of each number only the float that is nearest to
// it. To work the exact fraction out for each and bring it to its lowest terms takes most
// of the time, so a number is worked to 126 bits instead, which is more than twice as many
// as a float has, and rounded once: it differs from the nearest float to the exact fraction
// only where that lies half-way between two to some 70 bits. The test compares the two.

// wide is a number above 0: 128 bits, of which the first is set, times 2 to the exponent.
type wide struct {
	hi, lo   uint64
	exponent int
}

// wideOf is num/den, both above 0, cut off after 128 bits.
func wideOf(num, den *big.Int) wide {
	shift := 129 + den.BitLen() - num.BitLen() // leaves 129 bits or 130
	var q, scaled big.Int
	if shift >= 0 {
		q.Quo(scaled.Lsh(num, uint(shift)), den)
	} else {
		q.Quo(num, scaled.Lsh(den, uint(-shift)))
	}
	drop := q.BitLen() - 128
	q.Rsh(&q, uint(drop))
	var words [2]big.Word // a word has 64 bits, or this does not compile
	copy(words[:], q.Bits())
	return wide{uint64(words[1]), uint64(words[0]), drop - shift}
}

var _ = [1]struct{}{}[bits.UintSize-64]

// times is the product, cut off after 127 bits at least.
func (w wide) times(v wide) wide {
	hi, lo := bits.Mul64(w.hi, v.hi)
	for _, part := range [2][2]uint64{{w.hi, v.lo}, {w.lo, v.hi}} {
		carried, _ := bits.Mul64(part[0], part[1])
		var carry uint64
		lo, carry = bits.Add64(lo, carried, 0)
		hi += carry
	}
	exponent := w.exponent + v.exponent + 128
	if hi>>63 == 0 {
		hi, lo, exponent = hi<<1|lo>>63, lo<<1, exponent-1
	}
	return wide{hi, lo, exponent}
}

// float is the nearest float, of two that are as near the even one.
func (w wide) float() float64 {
	const left = 64 - 53 // bits of the first word that a float has no room for
	mantissa, rest, half := w.hi>>left, w.hi&(1<<left-1), uint64(1)<<(left-1)
	if rest > half || rest == half && (w.lo != 0 || mantissa&1 == 1) {
		mantissa++
	}
	return math.Ldexp(float64(mantissa), w.exponent+64+left)
}

// wideFactors are what tex, or one over it, is to be multiplied by for each system.
var wideFactors = func() (all [lastSystem + 1]wide) {
	for s, row := range countSystems {
		switch {
		case row.factor == nil:
		case row.direct:
			all[s] = wideOf(row.factor.Denom(), row.factor.Num())
		default:
			all[s] = wideOf(row.factor.Num(), row.factor.Denom())
		}
	}
	return all
}()

// numbers turns a yarn into many systems: its tex, and one over it.
type numbers struct{ tex, inverse wide }

// numbers are of a yarn that is not nothing.
func (t Tex) numbers() numbers {
	num, den := t.grams.Num(), t.grams.Denom()
	return numbers{wideOf(num, den), wideOf(den, num)}
}

// in is the number in a system, as the nearest float.
func (n numbers) in(s CountSystem) float64 {
	if countSystems[s].direct {
		return n.tex.times(wideFactors[s]).float()
	}
	return n.inverse.times(wideFactors[s]).float()
}

// A length is how thick a yarn is in the systems that its category is read by, worked out
// once: nothing of no yarn.
type length struct{ tex, metresPer100G, yardsPerPound float64 }

func (t Tex) length() length {
	if t.IsZero() {
		return length{}
	}
	n := t.numbers()
	return length{n.in(CountSystemTex), n.in(CountSystemMetresPer100G), n.in(CountSystemYardsPerPound)}
}

// number is the number of one yarn in one system, as the nearest float; 0 of no yarn.
func (t Tex) number(s CountSystem) float64 {
	switch {
	case t.IsZero():
		return 0
	case countSystems[s].direct:
		return wideOf(t.grams.Num(), t.grams.Denom()).times(wideFactors[s]).float()
	}
	return wideOf(t.grams.Denom(), t.grams.Num()).times(wideFactors[s]).float()
}
