package curve

// Strokes are straight lines from mark to mark, at least two: how high, or how many
// stitches, is wanted at every place along an edge. Places are whole and rise; what they
// count, and what the values do, is the room's. Whole values are never rounded.
//
// It is the curve of what is planned in other steps than those of an edge: the heights
// across a wedge, the counts up a shaped side or a yoke. A [Path] is that of an edge.
type Strokes[V int64 | float64] []Mark[V]

// A Mark is what is wanted at one place.
type Mark[V int64 | float64] struct {
	Place int64
	Value V
}

// Evenly are strokes whose marks lie one place apart, from 0 on.
func Evenly[V int64 | float64](values ...V) Strokes[V] {
	s := make(Strokes[V], len(values))
	for i, v := range values {
		s[i] = Mark[V]{int64(i), v}
	}
	return s
}

// At is what is wanted at the place num/den, den above 0, as value/over. Below the first
// mark and above the last it is as there. over is den times how far apart two marks lie;
// that times the greatest value, and num times the number of marks, are to be below 2^63.
func (s Strokes[V]) At(num, den int64) (value, over V) {
	i := s.stroke(num, den)
	from, to := s[i], s[i+1]
	whole := (to.Place - from.Place) * den
	part := min(max(num-from.Place*den, 0), whole)
	return from.Value*V(whole-part) + to.Value*V(part), V(whole)
}

// stroke is the number of the one that a place lies in. Where marks lie evenly it is found
// at once, and else from where it would be then.
func (s Strokes[V]) stroke(num, den int64) int {
	last := len(s) - 2
	first, end := s[0].Place, s[last+1].Place
	i := min(max(int((num-first*den)*int64(last+1)/((end-first)*den)), 0), last)
	for i < last && s[i+1].Place*den < num {
		i++
	}
	for i > 0 && s[i].Place*den > num {
		i--
	}
	return i
}
