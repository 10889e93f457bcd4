package pattern

// timesHold reports whether the times of "Work dec rnd every 6th rnd 8 times" hold those that dec rnd was worked before. "Work"
// says how often in all and "rep" how often again, but not everybody keeps to it: the count that is claimed in the first size
// decides; without one they are so many more. It is read alike in all sizes, or a wrong number in one of them would
// only seem to be read otherwise.
func (r *runner) timesHold(l *Line, row int16, s *shapings) bool {
	if hold, decided := r.among[s]; decided {
		return hold
	}
	before := r.already([]int16{row})
	hold := false
	if change, fits := r.trial([]int16{row}); fits && r.known {
		all := int64(0)
		for i := range l.info.parts {
			all += int64(at(l.info.parts[i].times, r.size))
		}
		want, said := r.claim(l)
		hold = said && want == r.now.total()+change*(all-int64(before))
	}
	how := "so many more than it was worked already"
	if hold {
		how = "so many in all, with the one before"
	}
	r.fault(KindReading, ReasonReading, s.timesAt, 0, "a number of times is read as "+how)
	if r.among == nil {
		r.among = map[*shapings]bool{}
	}
	r.among[s] = hold
	return hold
}
