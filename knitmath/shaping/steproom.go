package shaping

import (
	"sync"

	"example.com/knitmath/knitmath/stitch"
)

// stepRoom is memory for the steps of rows that are written only to be counted.
type stepRoom struct {
	steps [64]stitch.Step
	used  int
}

var stepRooms = sync.Pool{New: func() any { return new(stepRoom) }}

// newSteps is an empty list with room for so many steps.
func (s spacing) newSteps(n int) []stitch.Step {
	if s.room == nil || s.room.used+n > len(s.room.steps) {
		return make([]stitch.Step, 0, n)
	}
	first := s.room.used
	s.room.used += n
	return s.room.steps[first:first:s.room.used]
}
