package yarn

import "math/big"

// A conversion into many systems needs of each number only the float that is nearest to
// it. To work the exact fraction out for each and bring it to its lowest terms takes most
// of the time, so a number is worked to precision bits instead, which is four times as many
// as a float has, and rounded once: it differs from the nearest float to the exact fraction
// only where that lies half-way between two to some 140 bits. The test compares the two.
const precision = 200

// wideFactors are the factors of the systems to that precision.
var wideFactors = func() (all [lastSystem + 1]*big.Float) {
	for s, row := range countSystems {
		if row.factor != nil {
			all[s] = new(big.Float).SetPrec(precision).SetRat(row.factor)
		}
	}
	return all
}()

// wide is a yarn to that precision.
type wide struct{ grams *big.Float }

func (t Tex) wide() wide { return wide{new(big.Float).SetPrec(precision).SetRat(t.Grams())} }

// in is the number in a system, as the nearest float.
func (w wide) in(s CountSystem) float64 {
	number := new(big.Float).SetPrec(precision)
	if countSystems[s].direct {
		number.Quo(w.grams, wideFactors[s])
	} else {
		number.Quo(wideFactors[s], w.grams)
	}
	f, _ := number.Float64()
	return f
}
