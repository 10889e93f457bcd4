package shaping

import "example.com/knitmath/knitmath/schedule"

// slotted is a size with its first row and its last kept even, and freely: without. For
// that it may depart by ends, which is more.
type slotted struct {
	taper
	size   schedule.Size
	ends   int
	freely *slotted
}

func (t taper) slotted() slotted {
	s := slotted{taper: t, size: schedule.Size{Line: t.slotLine(), Departure: t.allowed()}}
	if free := t.freely(); free.slots > t.slots {
		s.freely = &slotted{taper: free, size: schedule.Size{Line: free.slotLine(), Departure: free.allowed()}}
		t.excess *= endsWorth
		s.ends = t.allowed()
	}
	return s
}

// inForm is the size as it is asked for a schedule of a form: with its first row and its
// last kept even where it has one that spares them and departs little further for it, or
// no nearer one that does not. beyond is by how many parts it departs further than it may.
func (s slotted) inForm(kind schedule.GradedForm) (asked slotted, beyond int) {
	least := s.size.Line.LeastGraded(kind)
	if least <= s.size.Departure {
		return s, 0
	}
	if s.freely != nil {
		if least <= s.ends {
			s.size.Departure = least
			return s, 0
		}
		free := *s.freely
		leastFree := free.size.Line.LeastGraded(kind)
		if leastFree <= free.size.Departure {
			return free, 0
		}
		if least-leastFree > s.ends-s.size.Departure {
			s, least = free, leastFree
		}
	}
	beyond = least - s.size.Departure
	s.size.Departure = least
	return s, beyond
}
