package knitmath

import (
	"math"
	"strconv"
	"strings"
)

// DisplayUnit is the unit of written text. Figures are always metric.
type DisplayUnit int32

// The display units.
const (
	DisplayUnitUnspecified DisplayUnit = iota // centimetres
	DisplayUnitCm
	DisplayUnitIn
)

// CmPerInch is exact. Source: international yard and pound agreement of 1959,
// 1 yd = 0.9144 m.
const CmPerInch = 2.54

// micrometres is the whole micrometres nearest to a length in cm. Lengths are
// counted from then on, not measured: sums of them are exact.
func micrometres(cm float64) int64 { return nearestInt(cm * 1e4) }

// centimetres is a whole number of micrometres in cm.
func centimetres(um int64) float64 { return float64(um) / 1e4 }

// size writes a length in cm: "50.9 cm" to a tenth, or "20.04 in" to a
// hundredth, halves up.
func (u DisplayUnit) size(cm float64) string {
	if u == DisplayUnitIn {
		return decimal(cm/CmPerInch, 2) + " in"
	}
	return decimal(cm, 1) + " cm"
}

// difference writes a signed length: "0.9 cm more than asked", "0.9 cm less than
// asked", "exactly as asked". One that would be written as 0 is bounded instead:
// "less than 0.05 cm more than asked".
func (u DisplayUnit) difference(cm float64) string {
	if cm == 0 {
		return "exactly as asked"
	}
	size, smallest := u.size(math.Abs(cm)), "less than 0.05 cm"
	if u == DisplayUnitIn {
		smallest = "less than 0.005 in"
	}
	if strings.HasPrefix(size, "0 ") {
		size = smallest
	}
	if cm > 0 {
		return size + " more than asked"
	}
	return size + " less than asked"
}

// decimal writes x rounded half up to a number of places, without trailing
// zeros. Beyond 2^53 in the last place, where a float has no places left, it is
// written in full.
func decimal(x float64, places int) string {
	scale := math.Pow10(places)
	if math.Abs(x*scale) < 1<<53 {
		x = float64(roundHalfUp(x*scale)) / scale
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// length writes a length to a hundredth of either unit.
func (u DisplayUnit) length(cm float64) string {
	if u == DisplayUnitIn {
		return decimal(cm/CmPerInch, 2) + " in"
	}
	return decimal(cm, 2) + " cm"
}
