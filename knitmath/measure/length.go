package measure

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

// MinCm and MaxCm bound lengths of a piece: a millimetre is finer than any
// tape, ten metres longer than any piece.
const (
	MinCm = 0.1
	MaxCm = 1_000.0
)

// Micrometres is the whole micrometres nearest to a length in cm. Lengths are
// counted from then on, not measured: sums of them are exact.
func Micrometres(cm float64) int64 { return NearestInt(cm * 1e4) }

// Centimetres is a whole number of micrometres in cm.
func Centimetres(um int64) float64 { return float64(um) / 1e4 }

// Size writes a length in cm: "50.9 cm" to a tenth, or "20.04 in" to a
// hundredth, halves up.
func (u DisplayUnit) Size(cm float64) string {
	var room [24]byte
	if u == DisplayUnitIn {
		return string(append(appendDecimal(room[:0], cm/CmPerInch, 2), " in"...))
	}
	return string(append(appendDecimal(room[:0], cm, 1), " cm"...))
}

// Printed is a length, or by how much one is more or less, as Size prints it.
func (u DisplayUnit) Printed(cm float64) float64 {
	part := 0.1
	if u == DisplayUnitIn {
		part = CmPerInch / 100
	}
	return math.Copysign(float64(RoundHalfUp(math.Abs(cm)/part))*part, cm)
}

// Difference writes a signed length: "0.9 cm more than asked", "0.9 cm less than
// asked", "exactly as asked". One that would be written as 0 is bounded instead:
// "more than asked by under 0.05 cm".
func (u DisplayUnit) Difference(cm float64) string {
	if cm == 0 {
		return "exactly as asked"
	}
	size, smallest := u.Size(math.Abs(cm)), "under 0.05 cm"
	if u == DisplayUnitIn {
		smallest = "under 0.005 in"
	}
	than := "less than asked"
	if cm > 0 {
		than = "more than asked"
	}
	if strings.HasPrefix(size, "0 ") {
		return than + " by " + smallest
	}
	return size + " " + than
}

// Decimal writes x rounded half up to a number of places, without trailing
// zeros. Beyond 2^53 in the last place, where a float has no places left, it is
// written in full.
func Decimal(x float64, places int) string {
	var room [24]byte
	return string(appendDecimal(room[:0], x, places))
}

func appendDecimal(to []byte, x float64, places int) []byte {
	scale := math.Pow10(places)
	if math.Abs(x*scale) < 1<<53 {
		x = float64(RoundHalfUp(x*scale)) / scale
	}
	return strconv.AppendFloat(to, x, 'f', -1, 64)
}

// Length writes a length to a hundredth of either unit.
func (u DisplayUnit) Length(cm float64) string {
	if u == DisplayUnitIn {
		return Decimal(cm/CmPerInch, 2) + " in"
	}
	return Decimal(cm, 2) + " cm"
}
