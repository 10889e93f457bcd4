package pattern

import "slices"

// partsBetweenMarks compares the parts that are told beside the count of a row, "80 sts: 30 each for
// front and back, 10 each sleeve", with those that the markers of the row divide it into, in
// whatever order. Where they are not as many it is not known which marker divides what.
func (r *runner) partsBetweenMarks(l *Line) {
	if len(l.info.partsTold) == 0 || !r.known || r.now.behind > 0 || r.marks.lost || r.marks.count == 0 {
		return
	}
	told := r.partsTold(l.info.partsTold)
	marked := r.markedParts()
	if r.round && len(marked) == len(told)+1 { // the round begins within a part
		marked[0] += marked[len(marked)-1]
		marked = marked[:len(told)]
	}
	if len(marked) != len(told) || len(told) < 4 { // two markers may be those of a gusset
		return
	}
	slices.Sort(told)
	slices.Sort(marked)
	if !slices.Equal(told, marked) && r.wanted(ReasonClaim, l.info.partsAt) {
		r.fault(KindMistake, ReasonClaim, l.info.partsAt, 0, partsText(marked)+" between the markers, not of "+listed64(told))
	}
}

// partsTold are the parts that are told, each as often as it is; none if one of them is not known, or
// is none of those between markers.
func (r *runner) partsTold(parts []partOf) []int64 {
	var told []int64
	for _, part := range parts {
		if part.needles || part.bare || part.between || part.times < 1 || at(part.n, r.size) < 0 {
			return nil
		}
		told = append(told, slices.Repeat([]int64{int64(at(part.n, r.size))}, part.times)...)
	}
	return told
}

// markedParts are the stitches between the markers of a row, and before the first and after the last.
func (r *runner) markedParts() []int64 {
	var marked []int64
	from := int64(0)
	for _, m := range r.marks.at[:r.marks.count] {
		marked = append(marked, int64(m)-from)
		from = int64(m)
	}
	return append(marked, r.now.left-from)
}
