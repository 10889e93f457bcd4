package yarn

import (
	"math"
	"math/big"
	"strconv"
)

// A Tex is how thick a yarn or a strand is: grams to a kilometre, exactly. It is what
// every count is turned into and out of, so that a count that has gone through ten
// systems is the one it was. The zero value is no yarn.
//
// Source: the tex system, ISO 1144.
type Tex struct{ grams *big.Rat }

// Ranges of a yarn. A single fibre of silk has a tenth of a tex, and rope of a kilogram
// to the metre is no longer knit.
const (
	MinTex = 0.01
	MaxTex = 1_000_000.0
)

// TexOf is a yarn of which a gram has so many metres: the number may be any that is
// not 0, such as 115/50 for a ball of 115 m and 50 g.
func TexOf(metresPerGram *big.Rat) Tex {
	return Tex{new(big.Rat).Mul(thousand, new(big.Rat).Inv(metresPerGram))}
}

var thousand = big.NewRat(1_000, 1)

// DecimalOf is the decimal that a float was written as, exactly: 0.1 is a tenth and not
// the float nearest to it. x is finite.
func DecimalOf(x float64) *big.Rat {
	if r := shortDecimal(strconv.AppendFloat(make([]byte, 0, 32), x, 'f', -1, 64)); r != nil {
		return r
	}
	r, ok := new(big.Rat).SetString(strconv.FormatFloat(x, 'g', -1, 64))
	if !ok {
		return new(big.Rat)
	}
	return r
}

// shortDecimal is a decimal of at most 18 digits, as nearly all are that people write,
// which fit in a word; nil of any other.
func shortDecimal(text []byte) *big.Rat {
	const most = 18
	whole, parts, negative, pointed, digits := int64(0), int64(1), false, false, 0
	for i, c := range text {
		switch {
		case c == '-' && i == 0:
			negative = true
		case c == '.' && !pointed:
			pointed = true
		case c < '0' || c > '9' || digits == most:
			return nil
		default:
			whole = 10*whole + int64(c-'0')
			digits++
			if pointed {
				parts *= 10
			}
		}
	}
	if digits == 0 {
		return nil
	}
	if negative {
		whole = -whole
	}
	return big.NewRat(whole, parts)
}

// IsZero reports whether there is no yarn.
func (t Tex) IsZero() bool { return t.grams == nil || t.grams.Sign() == 0 }

// Grams are the grams of a kilometre, exactly.
func (t Tex) Grams() *big.Rat {
	if t.grams == nil {
		return new(big.Rat)
	}
	return new(big.Rat).Set(t.grams)
}

// Float is the float nearest to the grams of a kilometre.
func (t Tex) Float() float64 { return t.number(CountSystemTex) }

// MetresPerGram is the length of a gram, as the nearest float; 0 of no yarn.
func (t Tex) MetresPerGram() float64 { return t.number(CountSystemMetric) }

// Strands are n of the yarn lying together.
func (t Tex) Strands(n int) Tex { return Tex{new(big.Rat).Mul(t.Grams(), big.NewRat(int64(n), 1))} }

// Share is one of n equal strands that make the yarn, n not being 0.
func (t Tex) Share(n int) Tex { return Tex{new(big.Rat).Mul(t.Grams(), big.NewRat(1, int64(n)))} }

// With is the yarn together with another: a metre weighs what both weigh, whatever the
// systems they were counted in. In indirect systems that is 1/N = 1/A + 1/B.
func (t Tex) With(other Tex) Tex { return Tex{new(big.Rat).Add(t.Grams(), other.Grams())} }

// Contracted is the yarn after twist has made it shorter by a part of its length, in
// percent of what it was before, below 100: the grams are spread over fewer metres.
func (t Tex) Contracted(percent *big.Rat) Tex {
	if percent.Sign() == 0 {
		return t
	}
	left := new(big.Rat).Sub(hundred, percent)
	return Tex{new(big.Rat).Quo(new(big.Rat).Mul(t.Grams(), hundred), left)}
}

// Drawn is the yarn before that contraction.
func (t Tex) Drawn(percent *big.Rat) Tex {
	if percent.Sign() == 0 {
		return t
	}
	left := new(big.Rat).Sub(hundred, percent)
	return Tex{new(big.Rat).Quo(new(big.Rat).Mul(t.Grams(), left), hundred)}
}

var hundred = big.NewRat(100, 1)

// nearest is the float nearest to an exact number.
func nearest(r *big.Rat) float64 {
	f, _ := r.Float64()
	return f
}

// inRange reports whether a yarn is one that is counted here.
func (t Tex) inRange() bool {
	f := t.Float()
	return f >= MinTex && f <= MaxTex && !math.IsInf(f, 0)
}
