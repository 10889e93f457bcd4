package neck

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
)

// would reports whether the question is planned with another count, the whole of it, as a caller
// asks it who reads what would do.
func (s *settler) would(ask func(in *Input)) bool {
	if !s.asked {
		return false
	}
	in := s.in
	ask(&in)
	_, err := plan(in, false)
	return err == nil
}

// withNeck asks for a neck of so many stitches of the width that is given.
func withNeck(n int) func(in *Input) {
	return func(in *Input) {
		in.NeckCm, in.NeckStitches, in.ShoulderStitches, in.ShoulderCm = nil, &n, nil, nil
	}
}

// withSlope asks for shoulders that slope by so many rows.
func withSlope(n int) func(in *Input) {
	return func(in *Input) { in.ShoulderSlopeRows, in.ShoulderSlopeCm, in.ShoulderSlopeDegrees = &n, nil, nil }
}

// necksBeside are the necks next to one that leaves an odd number for the shoulders.
func (s *settler) necksBeside(n int) string {
	low := n > 1 && s.would(withNeck(n-1))
	high := (!low || s.in.Cost() <= timesRemedied*priceOfRemedied/2) && s.would(withNeck(n+1)) // where its price has room
	switch {
	case low && high:
		return fmt.Sprintf("; a neck of %d does, or one of %d", n-1, n+1)
	case low:
		return fmt.Sprintf("; a neck of %d does", n-1)
	case high:
		return fmt.Sprintf("; a neck of %d does", n+1)
	}
	return ""
}

// narrowerNeck is the widest neck beside which a width has shoulders for their steps, as many as
// the slope that was asked for in rows has.
func (s *settler) narrowerNeck(n counts) string {
	if s.in.WidthStitches == nil && s.in.WidthCm == nil {
		return fmt.Sprintf("; shoulders of at least %d do", leastStep(s.in))
	}
	steps := stepsOf(float64(fault.Or(s.in.ShoulderSlopeRows, 0)))
	most := n.width - 2*leastStep(s.in)*steps
	if most < 1 || !s.would(withNeck(most)) {
		return ""
	}
	return fmt.Sprintf("; a neck of %d does", most)
}
