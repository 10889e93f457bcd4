package pattern

func (w *writer) upTo(s *Step) {
	switch {
	case s.BeforeMarkerStitches != nil:
		w.toPlace(s)
	case s.RemainingStitches == nil:
	case single(s.RemainingStitches, 0):
		w.WriteString(" to end")
	case single(s.RemainingStitches, 1):
		w.WriteString(" to last st")
	default:
		w.WriteString(" to last ")
		w.numbers(s.RemainingStitches)
		w.WriteString(" sts")
	}
}

// toPlace writes how far it is to a marker or to the gap of the last turn.
func (w *writer) toPlace(s *Step) {
	place, side, n := "m", " before ", s.BeforeMarkerStitches
	if s.gap {
		place = "gap"
	}
	if n[0] < 0 {
		side = " past "
		n = make([]int, len(n))
		for i := range n {
			n[i] = -s.BeforeMarkerStitches[i]
		}
	}
	w.WriteString(" to ")
	switch {
	case single(n, 0):
		w.WriteString(place)
		return
	case single(n, 1):
		w.WriteString("1 st")
	default:
		w.numbers(n)
		w.WriteString(" sts")
	}
	w.WriteString(side + place)
}
