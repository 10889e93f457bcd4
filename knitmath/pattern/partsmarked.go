package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

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
	if len(told) < 4 { // two markers may be those of a gusset
		if marked = r.halvesMarked(l, told); marked == nil {
			return
		}
	}
	r.partsCompared(l, told, marked, " between the markers")
}

// halvesMarked are the stitches of front and back, which two markers part, one of them at the beginning of the round:
// those that are nearly as many as is told.
func (r *runner) halvesMarked(l *Line, told []int64) []int64 {
	parts := l.info.partsTold
	marked := r.sidesMarked()
	if !r.round || len(told) != 2 || len(marked) != 2 || !hasPart(parts, "front") || !hasPart(parts, "back") ||
		4*max(marked[0], marked[1])-4*min(marked[0], marked[1]) > told[0]+told[1] {
		return nil
	}
	return marked
}

// sidesMarked are the stitches between the markers, but for two that lie side by side.
func (r *runner) sidesMarked() []int64 {
	return slices.DeleteFunc(r.markedParts(), func(n int64) bool { return n == 0 })
}

// partsBoundOff compares the parts that are told beside the count of a row with those into which it is divided by
// stitches that are bound off in it.
func (r *runner) partsBoundOff(l *Line, before hand) {
	if len(l.info.partsTold) == 0 || !r.known || before.behind > 0 || putsAside(l.Steps) || slices.ContainsFunc(l.Steps, castsOn) {
		return
	}
	told, cut := r.partsTold(l.info.partsTold), segments(l.worked(), r.size, before.left)
	if r.round && len(cut) == len(told)+1 { // the round begins within a part
		cut[0] += cut[len(cut)-1]
		cut = cut[:len(told)]
	}
	if sumOf(told) == sumOf(cut) { // else the count is wrong, which is said
		r.partsCompared(l, told, cut, "")
	}
}

func castsOn(s Step) bool { return s.Operation == stitch.CastOn }

// partsCompared says where parts are not those that are told, in whatever order; between says what parts them.
func (r *runner) partsCompared(l *Line, told, parts []int64, between string) {
	if len(parts) != len(told) || len(told) < 2 {
		return
	}
	inOrder(told)
	inOrder(parts)
	if !slices.Equal(told, parts) && r.wanted(ReasonClaim, l.info.partsAt) {
		r.fault(KindMistake, ReasonClaim, l.info.partsAt, 0, partsText(parts)+between+", not of "+listed64(told))
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
