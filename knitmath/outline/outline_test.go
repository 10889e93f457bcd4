package outline

import (
	"math/big"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

func TestFramed(t *testing.T) {
	line := func(points ...Point) Line { return Line{Name: "edge", Points: points} }
	for _, c := range []struct {
		name                     string
		lines                    []Line
		left, right, low, height float64
	}{
		{"no lines", nil, 0, 0, 0, 0},
		{"a line without points", []Line{line()}, 0, 0, 0, 0},
		// The frame holds the points, not the origin.
		{"one point", []Line{line(Point{3, 5})}, 3, 3, 5, 5},
		{"below and to the left", []Line{line(Point{-3, -5}, Point{-1, -2})}, -3, -1, -5, -2},
		{"the bounds in any order", []Line{line(Point{2, 9}, Point{7, 4}, Point{1, 6}, Point{5, 8})}, 1, 7, 4, 9},
		{"bounds of two lines", []Line{line(), line(Point{2, 2}, Point{4, 3}), line(Point{0, 2.5}, Point{3, 7})}, 0, 4, 2, 7},
	} {
		o := &Outline{X: Axis{Measure: "width", Unit: UnitCm}, Y: Axis{Measure: "height"}, Lines: c.lines}
		got := o.Framed()
		if got != o {
			t.Errorf("%s: another outline", c.name)
		}
		want := Axis{Measure: "width", Unit: UnitCm, Least: c.left, Greatest: c.right}
		if got.X != want {
			t.Errorf("%s: %+v, want %+v", c.name, got.X, want)
		}
		if want := (Axis{Measure: "height", Least: c.low, Greatest: c.height}); got.Y != want {
			t.Errorf("%s: %+v, want %+v", c.name, got.Y, want)
		}
	}
}

// Corners as they are met, and what is left of them: by hand.
func TestAppendCorner(t *testing.T) {
	for _, c := range []struct {
		name       string
		met, drawn []Corner
	}{
		{"one", []Corner{{3, 4}}, []Corner{{3, 4}}},
		{"the same twice", []Corner{{3, 4}, {3, 4}}, []Corner{{3, 4}}},
		{"up in two steps", []Corner{{3, 0}, {3, 4}, {3, 9}}, []Corner{{3, 0}, {3, 9}}},
		{"across in two steps", []Corner{{0, 2}, {4, 2}, {9, 2}}, []Corner{{0, 2}, {9, 2}}},
		{"aslant in three", []Corner{{0, 0}, {2, 1}, {4, 2}, {10, 5}}, []Corner{{0, 0}, {10, 5}}},
		{"aslant, and steeper", []Corner{{0, 0}, {2, 1}, {4, 3}}, []Corner{{0, 0}, {2, 1}, {4, 3}}},
		{"a stair", []Corner{{0, 0}, {2, 0}, {2, 1}, {4, 1}}, []Corner{{0, 0}, {2, 0}, {2, 1}, {4, 1}}},
		{"down and to the left", []Corner{{9, 9}, {6, 7}, {3, 5}, {3, 0}}, []Corner{{9, 9}, {3, 5}, {3, 0}}},
		// A spike is not on the stroke between its neighbours.
		{"up and down again", []Corner{{3, 0}, {3, 9}, {3, 4}}, []Corner{{3, 0}, {3, 9}, {3, 4}}},
		{"across and all the way back", []Corner{{0, 2}, {9, 2}, {0, 2}}, []Corner{{0, 2}, {9, 2}, {0, 2}}},
		{"beyond the beginning", []Corner{{4, 4}, {6, 6}, {1, 1}}, []Corner{{4, 4}, {6, 6}, {1, 1}}},
		{"the widest piece", []Corner{{-10_000, 0}, {0, 5_000}, {10_000, 10_000}}, []Corner{{-10_000, 0}, {10_000, 10_000}}},
	} {
		var line []Corner
		for _, p := range c.met {
			line = AppendCorner(line, p)
		}
		if !slices.Equal(line, c.drawn) {
			t.Errorf("%s: %v, want %v", c.name, line, c.drawn)
		}
	}
}

// Every three corners of a small grid: the middle one is dropped just when some
// part of the way from the first to the last comes to it, which is tried part by
// part in rationals.
func TestCornersOnStrokes(t *testing.T) {
	const size = 4
	corner := func(i int) Corner { return Corner{Across: i % size, Up: i / size} }
	for i := range size * size { // also with the first two alike
		for j := range size * size {
			for k := range size * size {
				a, b, p := corner(i), corner(j), corner(k)
				got := AppendCorner([]Corner{a, b}, p)
				want := []Corner{a, b, p}
				switch {
				case b == p:
					want = []Corner{a, b}
				case comesBy(a, b, p):
					want = []Corner{a, p}
				}
				if !slices.Equal(got, want) {
					t.Fatalf("%v, %v and %v: %v, want %v", a, b, p, got, want)
				}
			}
		}
	}
}

// comesBy goes from a to p in twelfths: on a way of at most three places each
// direction, whole places come after halves and thirds of it.
func comesBy(a, b, p Corner) bool {
	for parts := int64(0); parts <= 12; parts++ {
		way := big.NewRat(parts, 12)
		at := func(from, to int) *big.Rat {
			x := big.NewRat(int64(to-from), 1)
			return x.Add(x.Mul(x, way), big.NewRat(int64(from), 1))
		}
		if at(a.Across, p.Across).Cmp(big.NewRat(int64(b.Across), 1)) == 0 && at(a.Up, p.Up).Cmp(big.NewRat(int64(b.Up), 1)) == 0 {
			return true
		}
	}
	return false
}

// 22 stitches and 30 rows to 10 cm: a stitch is 10/22 cm wide, a row a third of a
// centimetre high, and the float is the one nearest to that.
func TestSizedBy(t *testing.T) {
	st, rw := gauge.NewDensity(22, 10), gauge.NewDensity(30, 10)
	line := []Corner{{0, 0}, {7, 1}, {11, 15}, {3, 30}}
	float := func(num, den int64) float64 {
		f, _ := big.NewRat(num, den).Float64()
		return f
	}
	// From the middle of 22 stitches: half stitches on either side.
	fromMiddle := func(stitches int) int { return 2*stitches - 11 }
	got := SizedBy(line, st, rw, fromMiddle)
	for i, c := range line {
		want := Point{X: float(int64(2*c.Across-11)*10, 2*22), Y: float(int64(c.Up)*10, 30)}
		if got[i] != want {
			t.Errorf("%v at a gauge: %v, want %v", c, got[i], want)
		}
	}
	// Without a gauge: in stitches and rows.
	want := []Point{{-5.5, 0}, {1.5, 1}, {5.5, 15}, {-2.5, 30}}
	if got := SizedBy(line, gauge.Density{}, gauge.Density{}, fromMiddle); !slices.Equal(got, want) {
		t.Errorf("without a gauge: %v, want %v", got, want)
	}
	if got := SizedBy(nil, st, rw, fromMiddle); len(got) != 0 {
		t.Errorf("no corners: %v", got)
	}
}
