package solid

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/fault"
)

// A place of a meridian: the radius and the height at a length along it, in cm. bends says
// that the way to the next place is a piece of a curve.
type place struct {
	along, radius, height float64
	bends                 bool
}

// meridian is the way from one end of a solid to the other, on one side.
type meridian []place

// curvePieces are how many straight pieces a quarter of an ellipse is taken as: its length is
// then short by 1 part in 25,000.
const curvePieces = 100

// widestEgg is how far up its height an egg is widest. Own choice: hens' eggs are near it.
const widestEgg = 0.42

// pole is how near to the middle a place lies on it, in cm: sines of half a turn are not quite 0.
const pole = 1e-9

// to goes straight on to a radius at a height.
func (m *meridian) to(radius, height float64) {
	last := (*m)[len(*m)-1]
	if radius < pole {
		radius = 0
	}
	if step := math.Hypot(radius-last.radius, height-last.height); step > 0 {
		*m = append(*m, place{along: last.along + step, radius: radius, height: height})
	}
}

// ellipse goes on along an ellipse about a height, from one angle to another, which count from
// the lower end.
func (m *meridian) ellipse(across, up, about, from, to float64) {
	pieces := max(int(curvePieces*(to-from)/(math.Pi/2)), 2)
	for i := 1; i <= pieces; i++ {
		sin, cos := math.Sincos(from + (to-from)*float64(i)/float64(pieces))
		(*m)[len(*m)-1].bends = true
		m.to(across*sin, about-up*cos)
	}
}

// meridianOf is the meridian of a form from its base.
func meridianOf(in SolidInput) meridian {
	m := make(meridian, 1, 2*curvePieces+2)
	a, h := fault.Or(in.AcrossCm, 0)/2, fault.Or(in.HeightCm, 0)
	switch in.Form {
	case FormSphere:
		m.ellipse(a, a, a, 0, math.Pi)
	case FormEgg:
		m.ellipse(a, widestEgg*h, widestEgg*h, 0, math.Pi/2)
		m.ellipse(a, (1-widestEgg)*h, widestEgg*h, math.Pi/2, math.Pi)
	case FormCone:
		m.to(a, 0)
		m.to(0, h)
	case FormCylinder:
		m.to(a, 0)
		m.to(a, h)
		m.to(0, h)
	case FormDrop: // a ball, and the cone that touches it
		touch := math.Pi - math.Acos(a/(h-a))
		m.ellipse(a, a, a, 0, touch)
		m.to(0, h)
	default:
		m[0].height = in.Points[0].HeightCm
		for _, p := range in.Points {
			m.to(p.AcrossCm/2, p.HeightCm)
		}
		m.to(0, in.Points[len(in.Points)-1].HeightCm)
	}
	return m
}

// length is that of the whole meridian.
func (m meridian) length() float64 { return m[len(m)-1].along }

// area is that of the surface between its ends, in square cm: of each piece the circumference in its middle times its length.
func (m meridian) area() float64 {
	area := 0.0
	for i := 1; i < len(m); i++ {
		area += math.Pi * (m[i-1].radius + m[i].radius) * (m[i].along - m[i-1].along)
	}
	return area
}

// at is the place at a length along the meridian.
func (m meridian) at(along float64) place {
	i := m.piece(along)
	from, to := m[i-1], m[i]
	part := (along - from.along) / (to.along - from.along)
	return place{along: along, radius: from.radius + part*(to.radius-from.radius), height: from.height + part*(to.height-from.height),
		bends: from.bends}
}

// piece is the number of the place with which the piece ends that has a length along the meridian.
func (m meridian) piece(along float64) int {
	low, high := 1, len(m)-1
	for low < high {
		if i := (low + high) / 2; m[i].along < along {
			low = i + 1
		} else {
			high = i
		}
	}
	return low
}

// opened is the meridian from where it is first so wide on; nothing where it never is.
func (m meridian) opened(radius float64) meridian {
	i := slices.IndexFunc(m, func(p place) bool { return p.radius >= radius })
	switch {
	case i < 0:
		return nil
	case i == 0 || m[i].radius == radius:
		return m[i:].again()
	}
	part := (radius - m[i-1].radius) / (m[i].radius - m[i-1].radius)
	first := m.at(m[i-1].along + part*(m[i].along-m[i-1].along))
	return append(meridian{first}, m[i:]...).again()
}

// again is the meridian counted from its own beginning.
func (m meridian) again() meridian {
	from := m[0].along
	for i := range m {
		m[i].along -= from
	}
	return m
}

// turned is the meridian from its other end.
func (m meridian) turned() meridian {
	all := m.length()
	other := slices.Clone(m)
	slices.Reverse(other)
	for i := range other {
		other[i].along = all - other[i].along
		if i+1 < len(other) { // the way to the next place is the way from it
			other[i].bends = m[len(m)-2-i].bends
		}
	}
	other[len(other)-1].bends = false
	return other
}

// levels reports whether the way to a place is level: a part of a flat base or top.
func (m meridian) levels(i int) bool { return m[i].height == m[i-1].height }
