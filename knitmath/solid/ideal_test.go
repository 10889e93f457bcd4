package solid

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
)

// An arc is a piece of an ideal meridian: the radius and the height at t, from 0 to 1, and how fast both change there.
type arc struct {
	at    func(t float64) (radius, height float64)
	speed func(t float64) float64
	from  float64 // where it begins, where an opening takes a part of it
	to    float64
}

// bow is an arc of an ellipse about a height, by the angle from its lower end.
func bow(across, up, about, from, to float64) arc {
	angle := func(t float64) float64 { return from + t*(to-from) }
	return arc{func(t float64) (float64, float64) { return across * math.Sin(angle(t)), about - up*math.Cos(angle(t)) },
		func(t float64) float64 {
			return (to - from) * math.Hypot(across*math.Cos(angle(t)), up*math.Sin(angle(t)))
		}, 0, 1}
}

// line is a straight arc.
func line(r0, h0, r1, h1 float64) arc {
	long := math.Hypot(r1-r0, h1-h0)
	return arc{func(t float64) (float64, float64) { return r0 + t*(r1-r0), h0 + t*(h1-h0) }, func(float64) float64 { return long }, 0, 1}
}

// idealOf is the meridian of a form from where the work begins, by its definition alone.
func idealOf(in SolidInput) []arc {
	var a, h float64
	if in.AcrossCm != nil {
		a = *in.AcrossCm / 2
	}
	if in.HeightCm != nil {
		h = *in.HeightCm
	}
	var list []arc
	switch in.Form {
	case FormSphere:
		list = []arc{bow(a, a, a, 0, math.Pi)}
	case FormEgg:
		list = []arc{bow(a, 0.42*h, 0.42*h, 0, math.Pi/2), bow(a, 0.58*h, 0.42*h, math.Pi/2, math.Pi)}
	case FormCone:
		list = []arc{line(0, 0, a, 0), line(a, 0, 0, h)}
	case FormCylinder:
		list = []arc{line(0, 0, a, 0), line(a, 0, a, h), line(a, h, 0, h)}
	case FormDrop:
		far := h - a // from the middle of the ball to the point; a tangent and its radius are at a right angle
		touch := math.Acos(-a / far)
		list = []arc{bow(a, a, a, 0, touch), line(a*math.Sin(touch), a-a*math.Cos(touch), 0, h)}
	default:
		r, at := 0.0, in.Points[0].HeightCm
		for _, p := range append(slices.Clone(in.Points), ProfilePoint{in.Points[len(in.Points)-1].HeightCm, 0}) {
			if p.AcrossCm/2 != r || p.HeightCm != at {
				list = append(list, line(r, at, p.AcrossCm/2, p.HeightCm))
			}
			r, at = p.AcrossCm/2, p.HeightCm
		}
	}
	if in.BaseOpeningCm != nil {
		list = cut(list, *in.BaseOpeningCm/2)
	}
	list = back(list)
	if in.TopOpeningCm != nil {
		list = cut(list, *in.TopOpeningCm/2)
	}
	if in.Start != StartTop {
		list = back(list)
	}
	return list
}

// cut leaves out what lies before a radius is reached.
func cut(list []arc, radius float64) []arc {
	for i, p := range list {
		const parts = 200
		for k := range parts + 1 {
			if r, _ := p.at(float64(k) / parts); r < radius-1e-12 {
				continue
			}
			if k > 0 {
				low, high := float64(k-1)/parts, float64(k)/parts
				for range 50 {
					if r, _ := p.at((low + high) / 2); r < radius {
						low = (low + high) / 2
					} else {
						high = (low + high) / 2
					}
				}
				p.from = high
			}
			return append([]arc{p}, list[i+1:]...)
		}
	}
	return nil
}

// back is a meridian from its other end.
func back(list []arc) []arc {
	var turned []arc
	for _, p := range slices.Backward(list) {
		turned = append(turned, arc{func(t float64) (float64, float64) { return p.at(1 - t) },
			func(t float64) float64 { return p.speed(1 - t) }, 1 - p.to, 1 - p.from})
	}
	return turned
}

// length is from one place to another, less than 0 on the way back.
func (p arc) length(from, to float64) float64 {
	if to < from {
		return -p.length(to, from)
	}
	return quad.Fixed(p.speed, from, to, 12, nil, 0)
}

// radiiAt are the ideal radii at the middles of so many equal parts of a meridian, whose length is given too.
func radiiAt(list []arc, n int) (radii []float64, length float64) {
	for _, p := range list {
		length += p.length(p.from, p.to)
	}
	i, t, done := 0, list[0].from, 0.0 // where on which arc so much is done
	for k := range n {
		want := (float64(k) + 0.5) * length / float64(n)
		for i < len(list)-1 && done+list[i].length(t, list[i].to) < want {
			done += list[i].length(t, list[i].to)
			i++
			t = list[i].from
		}
		for range 6 { // Newton's steps
			next := t + (want-done)/list[i].speed(t)
			done, t = done+list[i].length(t, next), next
		}
		r, _ := list[i].at(t)
		radii = append(radii, r)
	}
	return radii, length
}
