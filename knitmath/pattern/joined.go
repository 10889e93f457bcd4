package pattern

import "strconv"

// joinedOf compares the stitches of pieces that are joined with those that were put aside and are on the needle: each
// piece may be among them or not, or twice where a second one is made like it. Where no piece is known they are taken
// as the text has them, which is said.
func (r *runner) joinedOf(l *Line, n int64) {
	if r.quiet {
		return
	}
	pieces := r.held
	if r.known && r.now.total() > 0 {
		pieces = append(append([]int64(nil), r.held...), r.now.total())
	}
	if len(pieces) < 2 || len(pieces) > 8 || r.unsureHeld { // of one piece alone the others may be told elsewhere
		if r.known {
			r.sayTaken(l)
		}
		return
	}
	sums := map[int64]bool{0: true}
	for _, piece := range pieces {
		more := make(map[int64]bool, 3*len(sums))
		for sum := range sums {
			more[sum], more[sum+piece], more[sum+2*piece] = true, true, true
		}
		sums = more
		r.spend(len(sums) / chargedNames)
	}
	if sums[n] || !r.wanted(ReasonClaim, l.info.at) {
		return
	}
	text := "the pieces have " + strconv.Itoa(int(pieces[0]))
	for k, piece := range pieces[1:] {
		if k+2 == len(pieces) {
			text += " and "
		} else {
			text += ", "
		}
		text += strconv.Itoa(int(piece))
	}
	r.fault(KindMistake, ReasonClaim, l.info.at, 0, text+" stitches, which do not make "+strconv.Itoa(int(n)))
}
