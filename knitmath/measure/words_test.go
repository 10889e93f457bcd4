package measure

import (
	"math/big"
	"strings"
	"testing"
)

// The agreement of 1959: 36 inches of CmPerInch are 0.9144 m. Constants of Go are
// exact.
func TestYardIsExact(t *testing.T) {
	if 36*CmPerInch != 91.44 {
		t.Errorf("a yard has %v cm", 36*CmPerInch)
	}
}

// written is x to a number of places, half-way up and without trailing zeros,
// worked in rationals.
func written(x *big.Rat, places int) string {
	scale := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil))
	whole := nearest(new(big.Rat).Mul(x, scale))
	text := new(big.Rat).Quo(new(big.Rat).SetInt(whole), scale).FloatString(places)
	if strings.Contains(text, ".") {
		text = strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// Sixty-fourths are exact in a float, and so are their tenths, hundredths and
// thousandths: no half is met by chance.
func TestDecimalAgainstRationals(t *testing.T) {
	for n := int64(-64 * 12); n <= 64*12; n++ {
		for places := range 4 {
			if got, want := Decimal(float64(n)/64, places), written(big.NewRat(n, 64), places); got != want {
				t.Fatalf("%d/64 to %d places: %q, want %q", n, places, got, want)
			}
		}
	}
}

// Where a float still has a place it is rounded; beyond, it is written in full.
func TestDecimalOfLargeNumbers(t *testing.T) {
	for _, c := range []struct {
		x      float64
		places int
		want   string
	}{
		{1<<52 - 0.5, 0, "4503599627370496"}, // a half, up
		{1<<52 + 1, 0, "4503599627370497"},
		{1<<53 - 1, 0, "9007199254740991"},
		{1<<53 + 2, 0, "9007199254740994"},
		{-1 << 53, 0, "-9007199254740992"},
		// 2^52 hundredths are below the limit and 2^53 tenths are not, but have no
		// place behind the point any more.
		{1 << 45, 2, "35184372088832"},
		{1 << 53, 1, "9007199254740992"},
		{1e17, 2, "100000000000000000"}, // 10^19 hundredths are no int64
	} {
		if got := Decimal(c.x, c.places); got != c.want {
			t.Errorf("%v to %d places: %q, want %q", c.x, c.places, got, c.want)
		}
	}
}

// Every eighth of an inch, which is 3.175 mm exactly, in both units. A size in cm
// is written to a tenth, all else to a hundredth. Half-way the float of a length
// may lie on either side: that is for the cases worked by hand.
func TestUnitsOfLengths(t *testing.T) {
	for eighths := int64(1); eighths <= 8*100; eighths++ {
		cm := float64(eighths) * 0.3175
		inCm, inInches := big.NewRat(eighths*3175, 10_000), big.NewRat(eighths, 8)
		for _, c := range []struct {
			got    string
			exact  *big.Rat
			places int
			unit   string
		}{
			{DisplayUnitUnspecified.Length(cm), inCm, 2, " cm"},
			{DisplayUnitCm.Length(cm), inCm, 2, " cm"},
			{DisplayUnitIn.Length(cm), inInches, 2, " in"},
			{DisplayUnitUnspecified.Size(cm), inCm, 1, " cm"},
			{DisplayUnitCm.Size(cm), inCm, 1, " cm"},
			{DisplayUnitIn.Size(cm), inInches, 2, " in"},
		} {
			if want := written(c.exact, c.places) + c.unit; c.got != want && !halfway(c.exact, c.places) {
				t.Fatalf("%d eighths of an inch: %q, want %q", eighths, c.got, want)
			}
		}
	}
	// The float of 0.3175 cm over 2.54 is the eighth itself, half-way and up.
	if got := DisplayUnitIn.Length(0.3175); got != "0.13 in" {
		t.Errorf("an eighth of an inch is %q", got)
	}
}

// halfway tells whether x lies half-way between two decimals of so many places.
func halfway(x *big.Rat, places int) bool {
	scale := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil))
	scaled := new(big.Rat).Mul(x, scale)
	return !scaled.IsInt() && scaled.Mul(scaled, big.NewRat(2, 1)).IsInt()
}

// The smallest differences that are written as a number, and the largest that are
// not: 0.05 cm is half of a tenth, 0.0127 cm half of a hundredth of an inch.
func TestDifferenceBounds(t *testing.T) {
	for _, c := range []struct {
		unit DisplayUnit
		cm   float64
		want string
	}{
		{DisplayUnitCm, 0.05, "0.1 cm more than asked"},
		{DisplayUnitCm, 0.0499, "more than asked by under 0.05 cm"},
		{DisplayUnitCm, -0.05, "0.1 cm less than asked"},
		{DisplayUnitCm, -0.0499, "less than asked by under 0.05 cm"},
		{DisplayUnitIn, 0.0128, "0.01 in more than asked"},
		{DisplayUnitIn, 0.0126, "more than asked by under 0.005 in"},
		{DisplayUnitIn, -0.0128, "0.01 in less than asked"},
		{DisplayUnitIn, 0, "exactly as asked"},
		{DisplayUnitUnspecified, 10, "10 cm more than asked"}, // begins with no 0
		{DisplayUnitCm, 0.5, "0.5 cm more than asked"},        // begins with 0 and is none
	} {
		if got := c.unit.Difference(c.cm); got != c.want {
			t.Errorf("%v in unit %d: %q, want %q", c.cm, c.unit, got, c.want)
		}
	}
}
