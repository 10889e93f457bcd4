package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// castOn begins the piece, or the next one.
func (r *runner) castOn(i int) {
	l := &r.piece.Lines[i]
	n := int64(at(l.info.counts, r.size))
	if m := int64(l.info.multiple); m > 0 && (n-int64(l.info.plus))%m != 0 && r.wanted(ReasonUneven, l.info.at) {
		r.fault(KindMistake, ReasonUneven, l.info.at, 0, strconv.Itoa(int(n))+" is not a multiple of "+strconv.Itoa(int(m))+
			" plus "+strconv.Itoa(l.info.plus))
	}
	r.broughtLast = n
	if l.info.joins {
		r.joinPieces(i, n)
		return
	}
	if l.info.adds || r.known && r.rows > 0 && r.besideLive(l, n) {
		r.record(i)
		start := r.now
		if r.known {
			r.changeBy(n)
		}
		r.close(i, start)
		return
	}
	if len(r.start.Counts) > 0 && r.rows == 0 {
		if have := r.now.total(); have != n && r.wanted(ReasonClaim, l.info.at) {
			r.fault(KindMistake, ReasonClaim, l.info.at, int(n-have),
				"the question says "+stitches(int(have))+" on the needle, the text casts on "+strconv.Itoa(int(n)))
		}
	} else {
		r.leftUnsaid(i)
		r.leavesPiece()
		r.beginPiece(i, n)
	}
	r.needlesEven(l)
	r.markCastOn(&l.info)
	r.record(i)
	r.close(i, r.now)
}

// joinPieces begins a piece in the round with so many stitches, which are those of others.
func (r *runner) joinPieces(i int, n int64) {
	r.joinedOf(&r.piece.Lines[i], n)
	r.beginPiece(i, n)
	r.round, r.side, r.unjoined = true, stitch.RightSide, false
	r.record(i)
	r.close(i, r.now)
}

// markCastOn places the markers between the parts of a cast-on, as the row after it comes to them: the
// last part first.
func (r *runner) markCastOn(info *lineInfo) {
	if info.marked == nil || r.now.behind != 0 {
		return
	}
	r.placed = true
	for k := len(info.marked) - 1; k >= 0; k-- {
		r.marks.add(r.now.total() - int64(at(info.marked[k], r.size)))
	}
}

// beginPiece begins a piece with so many stitches, of which line i is the first: nothing is left
// of the one before but what is put aside.
func (r *runner) beginPiece(i int, n int64) {
	r.forgotten()
	r.now, r.known, r.other, r.machine = hand{left: n}, true, nil, nil
	r.round, r.side, r.unjoined = r.start.inTheRound(), r.start.side(), r.rows > 0
	if r.rows > 0 && r.sideGiven { // the side that the question says is that of the first piece
		r.side, r.sideGiven = stitch.RightSide, false
	}
	r.since, r.lastLine, r.lastRow, r.rule, r.turned = i, noLine, 0, -1, 0
	r.history = r.history[:0]
	r.settleSide()
	r.sides = sideClaims{}
	r.first, r.fresh, r.sideSaid, r.aside, r.marks, r.divided = true, false, false, 0, marks{}, false
	r.gaps = marks{}
	r.written.forgetRules()
}

// beginning binds off or casts on at the beginning of the next rows.
func (r *runner) beginning(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	r.setUp(l)
	start := r.now
	r.lastRow = 0
	r.told.begins = append(r.told.begins, int32(r.rows)) // "BO 4 sts at beg of next 2 rows. 3rd row: ..."
	for k := range l.info.edges {
		q := &l.info.edges[k]
		n := int64(at(q.stitches, r.size))
		for row := range at(q.rows, r.size) {
			even := q.even
			switch {
			case q.side != stitch.SideUnspecified && r.round:
				even = 0
			case row > 0:
			case q.side != stitch.SideUnspecified:
				if even = 0; r.side == q.side.Other() {
					even = 1
				}
			default:
				even = q.lead
			}
			if even > 0 && !r.plain(even, l.info.at) || !r.edgeRow(i, n) {
				return
			}
		}
	}
	r.close(i, start)
}

// edgeRow is a row at the beginning of which stitches are bound off or cast on.
func (r *runner) edgeRow(i int, n int64) bool {
	l := &r.piece.Lines[i]
	if !r.another(l.info.at) {
		return false
	}
	if r.known {
		total := r.now.total()
		before := total
		if l.info.op == stitch.BindOff {
			if n > total && r.wanted(ReasonMissing, l.info.at) {
				r.fault(KindMistake, ReasonMissing, l.info.at, int(total-n),
					stitches(int(n-total))+" missing: "+areThere(total))
			}
			r.known = n <= total
			total -= n
			if l.info.keeps {
				r.put(min(n, before))
			}
		} else {
			total += n
		}
		r.shiftOther(total - before)
		r.now = hand{left: total}
		if total > stitch.MaxStitches {
			r.fault(KindMistake, ReasonTooLarge, l.info.at, 0, "more than 10000 stitches are on the needles")
			r.known = false
		}
	}
	r.machine, r.divided = nil, true
	r.loseMarks()
	r.worked(i, 0)
	r.lastLine = noLine // no row of steps
	return true
}
