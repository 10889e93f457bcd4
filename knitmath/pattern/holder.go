package pattern

import (
	"slices"
	"strconv"
)

// partTaken is a holder of which stitches were worked and some were left.
type partTaken struct {
	all, left int64
	at        span // where they were worked
}

// fromHolders takes stitches off holders that a row, or a direction which picks stitches up, works straight from
// them, and compares how many with those that wait there.
func (r *runner) fromHolders(steps []Step) {
	if r.quiet {
		return
	}
	for _, s := range r.shared(takenSteps(steps, r.size)) {
		r.fromHolder(int64(s.workings(r.size)), s.at)
	}
}

// fromHolder takes so many stitches off: those of one holder, or of some that were put aside one after the other.
// Whether what is left of a holder is worked later is seen at the end of the text. A number that is near that of a
// holder and of none is a mistake, unless as many were worked before: of a second piece nothing may be said but
// that it is made.
func (r *runner) fromHolder(n int64, at span) {
	if list, first, end := r.holdersOf(n); list != nil {
		*list = append((*list)[:first], (*list)[end:]...)
		r.emptied = append(r.emptied, n)
		return
	}
	list, near := r.nearHolder(n)
	if list == nil || r.unsureHeld {
		r.taken(n)
		return
	}
	held := (*list)[near]
	if held > n {
		(*list)[near] -= n
		r.partTaken(held, n, at)
		return
	}
	if slices.Contains(r.emptied, n) || r.heldSum()+sumOf(r.inRows) == n || r.heldWrong() {
		return
	}
	if r.wanted(ReasonMissing, at) {
		r.astray = true
		r.fault(KindMistake, ReasonMissing, at, int(held-n), "only "+stitches(int(held))+" were put aside, not "+strconv.Itoa(int(n)))
	}
	*list = append((*list)[:near], (*list)[near+1:]...)
}

// takenUp takes stitches that are returned to the needle off their holders. Of one that had more, the others must be
// taken up too.
func (r *runner) takenUp(n int64, at span) {
	list, _, _ := r.holdersOf(n)
	if list == nil && (r.unsureHeld || r.quiet || r.heldApart(n)) {
		r.taken(n)
		return
	}
	r.fromHolder(n, at)
}

// heldApart reports whether two holders that were not filled one after the other have so many stitches together.
func (r *runner) heldApart(n int64) bool {
	for i, held := range r.held {
		if slices.Contains(r.held[i+1:], n-held) {
			return !r.strayIn([]int64{held, n - held})
		}
	}
	return false
}

// mostHolders is how many sets of stitches are remembered that wait on holders.
const mostHolders = 64

// putAside remembers the stitches that a row puts aside within it.
func (r *runner) putAside(l *Line) {
	if r.quiet {
		return
	}
	if putsAside(l.Steps) {
		r.heldOnce = true
		r.putStepsAside(l.Steps)
	}
}

// putStepsAside remembers those that steps put aside, in each working of a repeat its own.
func (r *runner) putStepsAside(steps []Step) {
	for k := range steps {
		switch s := &steps[k]; {
		case s.Steps != nil && putsAside(s.Steps):
			r.unsureHeld = r.unsureHeld || s.stretch()
			for n := 0; n < s.workings(r.size) && len(r.inRows) < mostHolders; n++ {
				r.putStepsAside(s.Steps)
			}
		case s.Name != "hold" && s.Name != holdWorked:
		case s.stretch():
			r.unsureHeld = true
		case len(r.inRows) < mostHolders:
			r.inRows = append(r.inRows, int64(s.workings(r.size)))
		}
	}
}

// nearHolder is the holder whose number is nearest to so many stitches, which it does not hold; none if no number is
// near.
func (r *runner) nearHolder(n int64) (list *[]int64, near int) {
	best := n
	for _, l := range [...]*[]int64{&r.held, &r.inRows} {
		for i, held := range *l {
			if off := max(held-n, n-held); 2*n >= held && 2*held >= n && off < best {
				list, near, best = l, i, off
			}
		}
	}
	return list, near
}

// holdersOf are the holders, from the first up to an end, that hold so many stitches together; none if no such are. What
// a mistake has left on one is not counted with those of others.
func (r *runner) holdersOf(n int64) (list *[]int64, first, end int) {
	for _, l := range [...]*[]int64{&r.held, &r.inRows} {
		if first := slices.Index(*l, n); first >= 0 {
			return l, first, first + 1
		}
	}
	for _, l := range [...]*[]int64{&r.held, &r.inRows} {
		for first := range *l {
			sum := int64(0)
			for end, held := range (*l)[first:] {
				if sum += held; sum == n && !r.strayIn((*l)[first:first+end+1]) {
					return l, first, first + end + 1
				}
			}
		}
	}
	return nil, 0, 0
}

// strayIn reports whether one of some holders has but a stitch or two, left where others were taken.
func (r *runner) strayIn(held []int64) bool {
	return slices.ContainsFunc(r.partly, func(p partTaken) bool { return p.stray() && slices.Contains(held, p.left) })
}

// stray reports whether so few are left that nothing else will be said of them.
func (p *partTaken) stray() bool { return p.left <= 2 && p.all >= 8 }

func sumOf(numbers []int64) (sum int64) {
	for _, n := range numbers {
		sum += n
	}
	return sum
}

// heldWrong reports whether a mistake was found in this size where stitches were put aside: then it is not known how
// many wait, and nothing more is said of it.
func (r *runner) heldWrong() bool {
	for k := range r.found.list {
		f := &r.found.list[k]
		i := r.piece.lineAt(f.at)
		if f.Kind != KindMistake || i < 0 || len(f.SizeNumbers) == 0 || f.SizeNumbers[len(f.SizeNumbers)-1] != r.size+1 {
			continue
		}
		if l := &r.piece.Lines[i]; l.info.kind == lineHold || l.info.holdRest || putsAside(l.Steps) {
			return true
		}
	}
	return false
}

// putsAside reports whether steps put stitches aside.
func putsAside(steps []Step) bool {
	return slices.ContainsFunc(steps, func(s Step) bool {
		return s.Name == "hold" || s.Name == holdWorked || s.Steps != nil && putsAside(s.Steps)
	})
}

// partTaken notes that a holder which had so many stitches has n fewer.
func (r *runner) partTaken(held, n int64, at span) {
	for i := range r.partly {
		if p := &r.partly[i]; p.left == held {
			p.left, p.at = held-n, at
			return
		}
	}
	r.partly = append(r.partly, partTaken{all: held, left: held - n, at: at})
}

// leftOnHolders says at the end of a text where stitches were left on a holder of which others were worked, and
// never taken up.
func (r *runner) leftOnHolders() {
	if len(r.partly) == 0 || r.heldWrong() {
		return
	}
	for i := range r.partly {
		p := &r.partly[i]
		if r.unsureHeld && !p.stray() {
			continue
		}
		if list, first, end := r.holdersOf(p.left); list == nil || end != first+1 || r.missedLater(p) || !r.wanted(ReasonUnworked, p.at) {
			continue
		}
		r.fault(KindMistake, ReasonUnworked, p.at, int(p.left), stitches(int(p.all))+" were put aside: "+strconv.Itoa(int(p.left))+
			" "+stay(p.left)+" on the holder")
	}
}

// missedLater reports whether a row that stands beside misses just as many stitches as were left.
func (r *runner) missedLater(p *partTaken) bool {
	return slices.ContainsFunc(r.found.list, func(f Finding) bool {
		n := len(f.SizeNumbers) - 1
		return f.Reason == ReasonMissing && f.at.start > p.at.start && f.at.line == p.at.line && n >= 0 && f.SizeNumbers[n] == r.size+1 &&
			int64(f.DifferenceStitches[n]) == -p.left
	})
}

func stay(n int64) string {
	if n == 1 {
		return "stays"
	}
	return "stay"
}
