package curve

import "math"

// Length is the length of the path, in cm: of lines and arcs by their closed forms, of
// quarter ellipses by the arithmetic-geometric mean, to the last bits of a float.
func (p Path) Length() float64 {
	sum := 0.0
	for _, x := range p.pieces {
		sum += x.length()
	}
	return sum
}

func (p piece) length() float64 {
	dx, dy := p.to.X-p.from.X, p.to.Y-p.from.Y
	switch {
	case p.axes.X == 0:
		return math.Hypot(dx, dy)
	case p.axes.X == p.axes.Y:
		return 2 * p.axes.X * math.Asin(min(1, math.Hypot(dx, dy)/(2*p.axes.X)))
	}
	return Quarter(p.axes.X, p.axes.Y)
}

// Quarter is a quarter of the circumference of an ellipse with half axes a >= b > 0, or b >= a:
//
//	a E(k),  E = pi/(2 M) * (1 - sum of 2^(n-1) c_n^2),  c_0 = k = sqrt(1 - b^2/a^2)
//
// where M is the arithmetic-geometric mean of 1 and b/a, and c_n half the difference
// of the two before. Each turn doubles the places: eight are more than a float has, and mostly
// five are enough.
//
// Source: Gauss' method, as in Abramowitz and Stegun, Handbook of Mathematical
// Functions (1964), 17.6 (from memory).
func Quarter(a, b float64) float64 {
	if a, b = max(a, b), min(a, b); b == 0 {
		return a
	}
	m, g := 1.0, b/a
	sum, weight := (1-g*g)/2, 1.0
	for range 8 {
		c := (m - g) / 2
		if c == 0 {
			break
		}
		m, g = (m+g)/2, math.Sqrt(m*g)
		sum += weight * c * c
		weight *= 2
	}
	return a * math.Pi / (2 * m) * (1 - sum)
}
