package pattern

import (
	"slices"
	"strconv"
)

// Stitches of one holder that are worked in several parts of a row, as the two halves of a body between the sleeves of a yoke:
// together they are all that wait there.

// mostShared is how many parts of a row are looked at together.
const mostShared = 8

// takenSteps are the steps of a row that work so many stitches straight from holders.
func takenSteps(steps []Step, size int) (taken []Step) {
	for k := range steps {
		if s := &steps[k]; s.Name == takenUp && !s.stretch() && s.workings(size) > 0 {
			taken = append(taken, *s)
		}
	}
	return taken
}

// shared takes off their holders the stitches of those that are worked in several parts, and returns the steps that are left. Of
// parts that together come near to the last piece that waits, it says so.
func (r *runner) shared(taken []Step) []Step {
	if len(taken) < 2 || len(taken) > mostShared || r.unsureHeld {
		return taken
	}
	others := append(slices.Clone(r.held), r.leftPieces...)
	var parts, whole []Step
	all := int64(0)
	for _, s := range taken {
		n := int64(s.workings(r.size))
		if r.waits(n) {
			whole, others = append(whole, s), withoutOne(others, n)
		} else {
			parts, all = append(parts, s), all+n
		}
	}
	if len(parts) < 2 || len(others) == 0 || len(others) > mostShared {
		return taken
	}
	held := slices.Max(others)
	if 4*max(all-held, held-all) > held || slices.ContainsFunc(parts, func(s Step) bool { return int64(s.workings(r.size)) > held }) {
		return taken
	}
	r.held = withoutOne(r.held, held)
	where := parts[0].at.to(parts[len(parts)-1].at)
	if !sumsTo(others, all) && !r.heldWrong() && !r.offAlready(all-held) && r.wanted(ReasonMissing, where) {
		r.astray = true
		r.fault(KindMistake, ReasonMissing, where, int(held-all), partsOfHolder(parts, r.size)+" are "+stitches(int(all))+": the piece has "+
			strconv.Itoa(int(held)))
	}
	return whole
}

// offAlready reports whether a mistake by so many stitches was found in this size before: the piece has the same.
func (r *runner) offAlready(by int64) bool {
	return slices.ContainsFunc(r.found.list, func(f Finding) bool {
		for k, size := range f.SizeNumbers {
			if off := int64(f.DifferenceStitches[k]); f.Kind == KindMistake && size == r.size+1 && (off == by || off == -by) {
				return true
			}
		}
		return false
	})
}

// withoutOne is a list without a number that it may have.
func withoutOne(list []int64, n int64) []int64 {
	if i := slices.Index(list, n); i >= 0 {
		return slices.Delete(list, i, i+1)
	}
	return list
}

// sumsTo reports whether some numbers, the greatest among them, come to a sum.
func sumsTo(numbers []int64, sum int64) bool {
	for set := range 1 << len(numbers) {
		rest := sum
		for i, n := range numbers {
			if set>>i&1 == 1 {
				rest -= n
			}
		}
		if rest == 0 {
			return true
		}
	}
	return false
}

// waits reports whether a holder or a piece has just so many stitches, or has had them: of a second piece nothing may be said but
// that it is made.
func (r *runner) waits(n int64) bool {
	list, _, _ := r.holdersOf(n)
	return list != nil || slices.Contains(r.emptied, n) || slices.Contains(r.leftPieces, n) || n == r.now.total()
}

// leavesPiece remembers the stitches of a piece that stay on a needle while another one is cast on.
func (r *runner) leavesPiece() {
	if r.known && !r.quiet && r.now.total() > 0 && len(r.leftPieces) < mostShared {
		r.leftPieces = append(r.leftPieces, r.now.total())
	}
}

// partsOfHolder are the numbers of some parts as a sum.
func partsOfHolder(parts []Step, size int) string {
	text := ""
	for k := range parts {
		if k > 0 {
			text += " + "
		}
		text += strconv.Itoa(parts[k].workings(size))
	}
	return text
}
