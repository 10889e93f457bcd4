package measure

import (
	"strconv"
	"testing"
)

// A quarter of an inch is 0.635 cm or 6350 micrometres, exactly; 1 in = 2.54 cm
// by the international yard and pound agreement of 1959. Every quarter inch to
// 1000 cm, written in cm as a client would, is read as that many.
func TestQuarterInchesAreExact(t *testing.T) {
	for q := int64(1); q*6350 <= 10_000_000; q++ {
		inches := float64(q) / 4 // exact in binary
		if got := Micrometres(inches * 2.54); got != q*6350 {
			t.Fatalf("%v in: got %d micrometres, want %d", inches, got, q*6350)
		}
		want := strconv.FormatFloat(inches, 'f', -1, 64) + " in"
		if got := DisplayUnitIn.Size(inches * 2.54); got != want {
			t.Fatalf("%v in is written %q, want %q", inches, got, want)
		}
	}
}

// Every length that has at most four places in cm is read exactly.
func TestMicrometresAreExact(t *testing.T) {
	for um := int64(1000); um <= 10_000_000; um += 7 {
		cm, err := strconv.ParseFloat(strconv.FormatInt(um/10_000, 10)+"."+
			strconv.FormatInt(um%10_000+10_000, 10)[1:], 64)
		if err != nil {
			t.Fatal(err)
		}
		if got := Micrometres(cm); got != um || Centimetres(um) != cm {
			t.Fatalf("%v cm: got %d micrometres and %v cm back, want %d", cm, got, Centimetres(um), um)
		}
	}
}

func TestWrittenLengths(t *testing.T) {
	for _, c := range []struct {
		unit             DisplayUnit
		cm               float64
		size, difference string
	}{
		// 50.909 to a tenth.
		{DisplayUnitCm, 50.909, "50.9 cm", "50.9 cm more than asked"},
		// Half-way goes up: 0.25 is exact in binary.
		{DisplayUnitUnspecified, 0.25, "0.3 cm", "0.3 cm more than asked"},
		// Half-way goes up also below zero, to -0.2; differences are written
		// without a sign and so by the size.
		{DisplayUnitCm, -0.25, "-0.2 cm", "0.3 cm less than asked"},
		{DisplayUnitCm, 0, "0 cm", "exactly as asked"},
		{DisplayUnitCm, 0.04, "0 cm", "more than asked by under 0.05 cm"},
		{DisplayUnitCm, -0.04, "0 cm", "less than asked by under 0.05 cm"},
		// 50.9 / 2.54 = 20.039.
		{DisplayUnitIn, 50.9, "20.04 in", "20.04 in more than asked"},
		{DisplayUnitIn, -0.01, "0 in", "less than asked by under 0.005 in"},
		// No places left in a float: written in full, and not through an integer
		// that it would overflow.
		{DisplayUnitCm, 1e22, "10000000000000000000000 cm", "10000000000000000000000 cm more than asked"},
	} {
		if got := c.unit.Size(c.cm); got != c.size {
			t.Errorf("size of %v: got %q, want %q", c.cm, got, c.size)
		}
		if got := c.unit.Difference(c.cm); got != c.difference {
			t.Errorf("difference of %v: got %q, want %q", c.cm, got, c.difference)
		}
	}
}

func TestCeilQuotient(t *testing.T) {
	for _, c := range []struct {
		amount, part float64
		want         int
	}{
		{550, 50, 11},
		{500 * 1.1, 50, 11}, // 550.0000000000001
		{550.001, 50, 12},
		{549.999, 50, 11},
		{0.1 + 0.2, 0.1, 3}, // 0.30000000000000004
		{1e9, 1, 1_000_000_000},
		{1e-9, 50, 1},
	} {
		if got := CeilQuotient(c.amount, c.part); got != c.want {
			t.Errorf("%v in parts of %v: got %d, want %d", c.amount, c.part, got, c.want)
		}
	}
}
