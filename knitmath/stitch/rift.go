package stitch

// rift is what lies between two neighbouring stitches on the needles where it is
// more than the strand from one to the other. It is kept on the stitch of the two
// that is further left as the right side shows.
type rift uint8

const (
	noRift   rift = iota
	riftSeam      // two pieces meet: the next row joins them, and there is no strand yet
	riftGap       // bound off or held between: nothing is worked across but stitches cast on
)

// cut says what has left the needles between the yarn and the next stitch.
type cut uint8

const (
	cutNone  cut = iota
	cutBound     // bound off in this row: the yarn has come along
	cutAway      // held, or bound off beyond a gap: the yarn has not
)

// between returns what lies between the tips of the needles. In the round the last
// stitch and the first are neighbours.
func (w *worker) between() rift {
	round := w.work == InTheRound
	switch {
	case w.side == WrongSide:
		if len(w.right) > 0 {
			return w.right.tip().ahead
		}
	case len(w.left) == 0:
		if round && len(w.right) > 0 {
			return w.right[0].ahead
		}
	case len(w.right) > 0 || round:
		return w.left.tip().ahead
	}
	return noRift
}

// yarnBehind reports whether the yarn comes from the stitch at the tip of the right
// needle, so that working the next one leads it across what lies between. After a
// turn it comes from the next stitch itself.
func (w *worker) yarnBehind() bool {
	return len(w.right) > w.base || w.work == InTheRound && len(w.right) == 0 && !w.fresh
}

// cross leads the yarn to the next n stitches, which op takes: across a seam,
// across a gap that stitches have just been cast on over, and across no other.
func (w *worker) cross(op Op, n int) *RowError {
	if w.cut == cutAway && !w.bridged {
		return w.fault(op, n, ReasonGap)
	}
	if w.yarnBehind() {
		if w.between() == riftGap && !w.bridged {
			return w.fault(op, n, ReasonGap)
		}
		w.heal()
	}
	n = min(n, len(w.left)) // too few are told of elsewhere
	for i := range n {
		outer := i > 0 // on the right side each but the first lies left of another of them
		if w.side == WrongSide {
			outer = i < n-1
		}
		if l := &w.left[len(w.left)-1-i]; outer && l.ahead == riftGap {
			return w.fault(op, n, ReasonGap)
		}
	}
	return nil
}

// heal makes neighbours of the stitches at the tips.
func (w *worker) heal() {
	switch {
	case w.side != WrongSide && len(w.left) > 0:
		w.healed = true // the stitch itself is left as it was, lest the row be refused
	case w.side == WrongSide && len(w.right) > 0:
		w.right.tip().ahead = noRift
	}
}

// taken is what lies on the right, as the right side shows, of what the loops make
// that were worked together, the first of them last in the slice.
func (w *worker) taken(loops needle) rift {
	switch {
	case w.side == WrongSide:
		return loops[0].ahead
	case w.healed:
		return noRift
	}
	return loops.tip().ahead
}

// settleAll marks what lies beside the loops on the right needle from index from on,
// which were made of loops of the left needle: ahead beside the first of them or,
// on the wrong side, beside the last.
func (w *worker) settleAll(from int, ahead rift) {
	made := w.right[from:]
	for i := range made {
		made[i].ahead = noRift
	}
	outer := &made[0]
	if w.side == WrongSide {
		outer = made.tip()
	}
	outer.ahead = ahead
	if w.cut != cutNone {
		w.mark(w.right[:from], &made[0])
	}
}

// settle marks what lies beside l, which is about to be placed and was made of no loop
// of the left needle.
func (w *worker) settle(l *loop) {
	if w.side == WrongSide && len(w.right) > w.base {
		l.ahead, w.right.tip().ahead = w.right.tip().ahead, noRift // what lay beyond the tip lies beyond l
	}
	if w.cut != cutNone {
		w.mark(w.right, l)
	}
}

// mark notes the gap between the stitches behind and the next, and that what was cut
// off here has been seen to.
func (w *worker) mark(behind needle, next *loop) {
	w.cut = cutNone
	switch {
	case w.side != WrongSide && (len(behind) > 0 || w.work == InTheRound):
		next.ahead = riftGap
	case w.side == WrongSide && len(behind) > 0:
		behind.tip().ahead = riftGap
	}
}

// cutOff notes that l has left the needles, with its yarn or without.
func (w *worker) cutOff(l loop, away bool) {
	w.rifts = true
	if away || w.cut == cutAway && !w.bridged || w.side == WrongSide && l.ahead == riftGap {
		w.cut = cutAway
	} else {
		w.cut = cutBound
	}
	w.bridged = false
}

// endCut marks what has left the needles last in a row that is turned, or in a round.
func (w *worker) endCut() {
	if w.cut == cutNone {
		return
	}
	w.cut = cutNone
	switch {
	case w.side == WrongSide:
		if len(w.right) > 0 && len(w.left) > 0 {
			w.right.tip().ahead = riftGap
		}
	case len(w.left) > 0 && (len(w.right) > 0 || w.work == InTheRound):
		w.left.tip().ahead = riftGap
	}
}
