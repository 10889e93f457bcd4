package yarn

import "example.com/knitmath/knitmath/measure"

// Yards and ounces are exact. Source: international yard and pound agreement of
// 1959, 1 yd = 0.9144 m, 1 lb = 453.59237 g; an ounce is a sixteenth of it.
const (
	MetresPerYard = 0.9144
	GramsPerOunce = 28.349523125
)

// LengthWords writes metres or yards, whole from 10 up, to a tenth below, and to a
// hundredth below 1.
func LengthWords(u measure.DisplayUnit, m float64) string {
	if u == measure.DisplayUnitIn {
		return amount(m/MetresPerYard) + " yd"
	}
	return amount(m) + " m"
}

// MassWords writes grams or ounces in the same way.
func MassWords(u measure.DisplayUnit, g float64) string {
	if u == measure.DisplayUnitIn {
		return amount(g/GramsPerOunce) + " oz"
	}
	return amount(g) + " g"
}

func amount(x float64) string {
	if x < 1 {
		return measure.Decimal(x, 2)
	}
	if x < 10 {
		return measure.Decimal(x, 1)
	}
	return measure.Decimal(x, 0)
}
