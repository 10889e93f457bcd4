package measure

import (
	"math"
	"math/big"
	"strconv"
	"testing"
)

// nearest is the whole number n with n - 1/2 <= x < n + 1/2, in exact rationals:
// the oracle of everything that rounds half-way up.
func nearest(x *big.Rat) *big.Int { return below(new(big.Rat).Add(x, big.NewRat(1, 2))) }

// below is the greatest whole number not above x. For a divisor above 0,
// Euclidean division rounds down.
func below(x *big.Rat) *big.Int { return new(big.Int).Div(x.Num(), x.Denom()) }

// above is the smallest whole number not below x.
func above(x *big.Rat) *big.Int { return new(big.Int).Neg(below(new(big.Rat).Neg(x))) }

// Every quotient of small numbers, and some of the largest, against rationals.
func TestDivisionsAgainstRationals(t *testing.T) {
	check := func(a, b int64) {
		t.Helper()
		x := big.NewRat(a, b)
		for _, c := range []struct {
			name string
			got  int64
			want *big.Int
		}{
			{"FloorDiv", FloorDiv(a, b), below(x)},
			{"CeilDiv", CeilDiv(a, b), above(x)},
			{"HalfUpDiv", HalfUpDiv(a, b), nearest(x)},
			{"RoundedDiv down", RoundedDiv(a, b, RoundingDown), below(x)},
			{"RoundedDiv up", RoundedDiv(a, b, RoundingUp), above(x)},
			{"RoundedDiv nearest", RoundedDiv(a, b, RoundingNearest), nearest(x)},
			{"RoundedDiv by default", RoundedDiv(a, b, RoundingUnspecified), nearest(x)},
		} {
			if big.NewInt(c.got).Cmp(c.want) != 0 {
				t.Errorf("%s(%d, %d) = %d, want %d", c.name, a, b, c.got, c.want)
			}
		}
	}
	for a := int64(-100); a <= 100; a++ {
		for b := int64(1); b <= 25; b++ {
			check(a, b)
		}
	}
	// The most that HalfUpDiv takes: 2a + b fits in an int64.
	const most = math.MaxInt64 / 4
	for _, a := range []int64{most, most - 1, -most, 1 - most} {
		for _, b := range []int64{1, 2, 3, 1_000_000, most} {
			check(a, b)
		}
	}
}

// Every sixteenth, which is exact in a float: up to where floats have no places
// left, halves go up, the ones below zero too; away from zero by NearestInt.
func TestFloatsAgainstRationals(t *testing.T) {
	check := func(x float64) {
		t.Helper()
		exact := new(big.Rat)
		exact.SetFloat64(x)
		if got, want := RoundHalfUp(x), nearest(exact); big.NewInt(got).Cmp(want) != 0 {
			t.Errorf("RoundHalfUp(%v) = %d, want %d", x, got, want)
		}
		want := nearest(new(big.Rat).Abs(exact))
		if x < 0 {
			want.Neg(want)
		}
		if got := NearestInt(x); big.NewInt(got).Cmp(want) != 0 {
			t.Errorf("NearestInt(%v) = %d, want %d", x, got, want)
		}
	}
	for sixteenths := -16 * 40; sixteenths <= 16*40; sixteenths++ {
		check(float64(sixteenths) / 16)
	}
	// The neighbours of every half are no halves. The one below 1/2 is where
	// floor(x + 1/2) goes wrong: the sum itself is rounded, to 1.
	for half := -20.5; half <= 20.5; half++ {
		check(math.Nextafter(half, math.Inf(1)))
		check(math.Nextafter(half, math.Inf(-1)))
	}
	// Between 2^51 and 2^53 floats have one place or none, and a half more is
	// rounded to an even number.
	for _, n := range []float64{1 << 51, 1 << 52, 1 << 53} {
		for _, x := range []float64{n - 1, n - 0.5, n, n + 0.5, n + 1} {
			check(x)
			check(-x)
		}
	}
}

// A decimal of six places, written as a client would, is read exactly: gauges up
// to the largest.
func TestDecimalsAreReadExactly(t *testing.T) {
	for n := int64(1); n <= 1_000_000_000; n += 9_973 {
		x, err := strconv.ParseFloat(strconv.FormatInt(n, 10)+"e-6", 64)
		if err != nil {
			t.Fatal(err)
		}
		if got := ToMillionths(x); got != n {
			t.Fatalf("%v: %d millionths, want %d", x, got, n)
		}
		if got := ToMillionths(-x); got != -n {
			t.Fatalf("%v: %d millionths, want %d", -x, got, -n)
		}
	}
	// 22.5 is 45 halves, 90 quarters and 2250 hundredths.
	for perOne, want := range map[float64]int64{2: 45, 4: 90, 100: 2250} {
		if got := ToUnits(22.5, perOne); got != want {
			t.Errorf("22.5 has %d units of which one has %v, want %d", got, perOne, want)
		}
	}
}

// Amounts and parts in quarters: their quotients are whole or lie further from a
// whole number than the slack.
func TestCeilQuotientAgainstRationals(t *testing.T) {
	for amount := int64(1); amount <= 400; amount++ {
		for part := int64(1); part <= 60; part++ {
			got := CeilQuotient(float64(amount)/4, float64(part)/4)
			if want := above(big.NewRat(amount, part)); big.NewInt(int64(got)).Cmp(want) != 0 {
				t.Fatalf("%d quarters in parts of %d: %d, want %d", amount, part, got, want)
			}
		}
	}
}

// The slack lies between the last bits of a float and what can be measured: a
// part in 10^13 is not counted, ten parts in 10^12 are.
func TestCeilQuotientSlack(t *testing.T) {
	for _, whole := range []float64{1, 11, 999} {
		if got := CeilQuotient(whole*(1+1e-13), 1); got != int(whole) {
			t.Errorf("the last bits of %v are counted: %d", whole, got)
		}
		if got := CeilQuotient(whole*(1+1e-11), 1); got != int(whole)+1 {
			t.Errorf("what goes beyond %v is not counted: %d", whole, got)
		}
	}
}

func TestAbs(t *testing.T) {
	for n, want := range map[int]int{-3: 3, -1: 1, 0: 0, 1: 1, 3: 3} {
		if got := Abs(n); got != want {
			t.Errorf("Abs(%d) = %d, want %d", n, got, want)
		}
	}
}
