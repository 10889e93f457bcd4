package neck

import (
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// A rowWriter writes one row of a layout.
type rowWriter struct {
	*layout
	side    stitch.Side
	row     int
	done    []stitch.Step
	begun   int  // live stitches of the side that stand behind what is written
	even    bool // nothing but plain stitches so far
	counted bool // the row is told in numbers to its end: a short row, or one that closes gaps
}

func (l *layout) rowOf(row int) *rowWriter {
	return &rowWriter{layout: l, side: sideOf(row), row: row, even: true}
}

// add adds an operation that is not plain. What is bound off after a shoulder's stitches is
// bound off with them.
func (w *rowWriter) add(op stitch.Op, n int) {
	if last := len(w.done) - 1; n > 0 && op == stitch.BindOff && last >= 0 && w.done[last].Op == op {
		w.done[last].Count += n
		return
	}
	if n > 0 {
		w.done = append(w.done, stitch.Do(op, n))
		w.even = false
	}
}

// plain adds plain stitches.
func (w *rowWriter) plain(n int) {
	switch last := len(w.done) - 1; {
	case n < 0 && w.lacking == 0:
		w.lacking = w.number(w.row)
	case n <= 0:
	case last >= 0 && w.done[last].Op == w.side.Plain():
		w.done[last].Count += n
	default:
		w.done = append(w.done, stitch.Do(w.side.Plain(), n))
	}
}

// bindOff binds off where the row begins.
func (w *rowWriter) bindOff(n int) { w.add(stitch.BindOff, n) }

// beginAtShoulder begins a row at a side's shoulder: with a step of a bind-off, or where
// the row before has turned.
func (w *rowWriter) beginAtShoulder(side int) {
	if w.turned[side] {
		w.turned[side], w.counted, w.even = false, true, false
		if op, ok := shortrow.AfterTurn(w.method()); ok {
			w.done = append(w.done, stitch.Do(op, 1))
		}
		w.begun = w.gaps[side][len(w.gaps[side])-1]
		return
	}
	if e, ok := eventIn(w.outer[side], w.row); ok {
		w.live[side] -= e.stitches
		if e.bindOff {
			w.bindOff(e.stitches)
			return
		}
		w.plain(armholeEdge)
		w.add(decreaseAt(w.side, true), 1)
		w.begun = armholeEdge + 1
		return
	}
	if step, ok := w.slopes(side, w.row); ok && !w.shortRows {
		w.bindOff(w.layout.steps[step])
		w.live[side] -= w.layout.steps[step]
		w.worked[side]++
	}
}

// endAtShoulder works so many stitches towards a side's shoulder, to its end or to a turn,
// and closes the gaps that it passes.
func (w *rowWriter) endAtShoulder(side, n int) {
	if e, ok := eventIn(w.outer[side], w.row); ok && !e.bindOff { // a bind-off lies where a row begins
		w.decreaseBefore(n, armholeEdge)
		w.live[side] -= e.stitches
		return
	}
	step, ok := w.slopes(side, w.row)
	if !ok || !w.shortRows {
		w.plain(n)
		return
	}
	w.worked[side]++
	if step == len(w.layout.steps)-1 {
		w.close(side, n)
		return
	}
	beyond := 0
	for _, s := range w.layout.steps[:step+1] {
		beyond += s
	}
	last := n - beyond
	if w.method() == shortrow.TurnMethodGerman {
		last++ // the stitch that is made double after the turn
	}
	w.plain(last)
	w.add(shortrow.Turning(w.method()), 1)
	w.turned[side], w.counted = true, true
	w.gaps[side] = append(w.gaps[side], beyond)
}

// close works the last row of a shoulder, from its innermost gap to its outermost.
func (w *rowWriter) close(side, n int) {
	for i := len(w.gaps[side]) - 1; i >= 0; i-- {
		beyond := w.gaps[side][i]
		w.plain(n - beyond)
		w.add(shortrow.Closing(w.method(), w.side), 1)
		n = beyond - 1
		w.counted = true
	}
	w.plain(n)
	w.gaps[side] = nil
}

// decreaseBefore works n stitches, with a decrease that has margin stitches behind it. Straight after
// a bind-off the first stitch is on the right needle already, and is no half of a decrease.
func (w *rowWriter) decreaseBefore(n, margin int) {
	before := n - margin - 2
	if last := len(w.done) - 1; before == 0 && last >= 0 && w.done[last].Op == stitch.BindOff {
		before = -1
	}
	w.plain(before)
	w.add(decreaseAt(w.side, false), 1)
	w.plain(margin)
}

// toNeck works so many stitches towards the neck, with what falls there.
func (w *rowWriter) toNeck(side, n int) {
	e, ok := w.at(side, w.row)
	if !ok {
		w.plain(n)
		return
	}
	// Bind-offs lie where a row begins: this is a decrease.
	w.decreaseBefore(n, w.margin)
	w.live[side] -= e.stitches
}

// fromNeck begins a row at the neck and says how many live stitches stand behind it.
func (w *rowWriter) fromNeck(side int) int {
	e, ok := w.at(side, w.row)
	if !ok {
		return 0
	}
	w.live[side] -= e.stitches
	if e.bindOff {
		w.bindOff(e.stitches)
		return 0
	}
	w.plain(w.margin)
	w.add(decreaseAt(w.side, true), 1)
	return w.margin + 1
}

// holdOthers leaves the middle and the second side on hold: apart, if the middle stays
// there. The yarn overs of short rows are no stitches that are counted.
func (w *rowWriter) holdOthers() {
	middle, others := 0, w.centre+w.live[second]
	if w.held {
		middle, others = w.centre, w.live[second]
	}
	w.add(stitch.Hold, middle)
	if len(w.gaps[second]) > 0 && w.method() == shortrow.TurnMethodYarnOver {
		w.done, w.even = append(w.done, stitch.ToEnd(stitch.Hold)), false
		return
	}
	w.add(stitch.Hold, others)
}

// decreaseAt is the decrease beside the neck, where a row begins or where it ends.
func decreaseAt(side stitch.Side, begins bool) stitch.Op {
	return stitch.Shaped(side, !begins, -1)[0].Op
}

// written is the row as patterns write it: to the end, or to where the decrease at its
// end stands, but for short rows, which are told in numbers.
func (w *rowWriter) written() []stitch.Step {
	last := len(w.done) - 1
	if w.counted || last < 0 || w.done[last].Op != w.side.Plain() {
		return w.done
	}
	if last == 0 || w.done[last-1].Op != decreaseAt(w.side, false) {
		w.done[last] = stitch.ToEnd(w.side.Plain())
		return w.done
	}
	if last > 1 && w.done[last-2].Op == w.side.Plain() {
		w.done[last-2] = stitch.ToLast(w.side.Plain(), w.done[last].Count+2)
	}
	return w.done
}
