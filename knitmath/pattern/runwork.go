package pattern

import "example.com/knitmath/knitmath/stitch"

// finish notes the count after a line's first working.
func (r *runner) finish(i int, o outcome) {
	c := &r.out.Lines[i]
	if r.quiet || r.noting != i || c.TakenStitches[r.size] >= 0 || r.piece.Lines[i].info.kind == lineShape {
		return
	}
	r.noting = -1
	r.changes++
	c.TakenStitches[r.size] = int(min(o.takes, most))
	c.LeftStitches[r.size] = int(min(max(o.leaves, 0), most))
	c.UnworkedStitches[r.size] = int(o.unworked + o.short)
	c.MissingStitches[r.size] = int(o.missing)
	c.EndStitches[r.size] = int(r.now.total())
	r.counted = i
}

// worked goes on after a row of a line, -1 for a plain one, that ended with a
// turn or without.
func (r *runner) worked(line int, turn stitch.Op) {
	r.rows++
	r.lastLine, r.first, r.fresh, r.leftOpen = line, false, false, false
	r.noteRow(line)
	if !r.quiet {
		r.history = append(r.history, int16(line))
	}
	r.turned = turn
	r.divided = r.divided || turn != 0
	r.turnWork()
}
