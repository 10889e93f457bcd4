package stitch

// course is a row on its way into the fabric. It runs along the line around: forward
// in right-side rows, backward in others. A row is one stretch from one bare side to
// the other, or several where stitches are bound off or held in its midst.
type course struct {
	*Fabric
	side  Side
	row   int32
	last  int32 // the stitch that the yarn comes from, 0 before the first
	bound bool  // it was bound off
	waits int32 // the next of the stitches that wait on the right needle, 0 if none do

	begun bool    // something was worked, not only bound off or cast on
	foot  int32   // where the feet lie of stitches cast on to begin the row, 0 if it began otherwise
	outer int32   // the outermost of these stitches
	tail  []int32 // what was bound off or cast on since the last stitch worked

	from    int   // the first event of the stretch in hand, -1 if there is none
	opening int32 // the part of the edge where it began, or the stitch that was slipped there
	slipped bool  // the last stitch was slipped or cast on: its side is not laid bare
	rise    int32 // rows from what the last stitch was made of up to it
}

// keep takes the row in hand into the fabric, which m has worked on the side, beside
// the stitches that wait on the right needle, of which tip is the next, 0 if none do.
func (f *Fabric) keep(m *Machine, side Side, tip int32) {
	if f == nil {
		return
	}
	c := course{Fabric: f, side: side, row: int32(m.rows), from: -1, last: f.yarn, waits: tip}
	for i := range f.events {
		c.work(i)
	}
	if m.work != InTheRound || m.fresh {
		c.close(len(f.events))
		for _, id := range c.tail {
			f.cells[id].hand = handOf(side, false)
		}
		c.last = 0
	} else if len(m.left) > 0 && m.left.tip().ahead != riftGap && c.last != 0 {
		c.join(c.last, m.left.tip().id)
	}
	f.yarn, f.known = c.last, len(f.cells)
	f.events, f.ids = f.events[:0], f.ids[:0]
}

// work takes in one operation.
func (c *course) work(i int) {
	e := c.events[i]
	taken, put := c.ids[e.taken:e.put], c.ids[e.put:e.until]
	switch {
	case e.op == BindOff:
		c.bindOff(i, taken[0])
	case e.op == Hold:
		c.close(i)
		c.cells[taken[0]].kind = EdgeHeld
	case e.op == CastOn:
		c.castOn(put[0], e.next)
	case len(put) == 0: // a marker, or a row of an edge that is passed over
	case len(taken) == 0:
		c.made(i, put[0], e.next)
	case taken[0] == put[0]:
		c.slip(i, put[0])
	default:
		c.worked(i, taken, put)
	}
}

// worked puts stitches in the place of those that they were made of.
func (c *course) worked(i int, taken, put []int32) {
	for k, id := range taken[1:] {
		c.join(taken[k], id)
	}
	bare := c.reach(i, taken[0])
	picked := c.cells[taken[0]].kind != EdgeLive
	first, end := c.cells[taken[0]], c.cells[taken[len(taken)-1]]
	level := int32(0)
	for _, id := range taken {
		level = max(level, c.cells[id].level+c.cells[id].skips+1)
	}
	if picked { // at the foot of new fabric, like a stitch cast on
		level, bare = c.cells[c.last].level, false
	}
	c.replace(taken, put)
	begins, ends := handOf(c.side, true), handOf(c.side, false)
	for _, id := range put {
		c.put(id, level, taken)
	}
	c.cells[put[0]].owed[begins], c.cells[c.last].owed[ends] = first.owed[begins], end.owed[ends]
	c.rise, c.slipped = level-end.level, picked
	if bare {
		c.opening = c.bare(put[0], c.behind(put[0]), level-first.level, begins)
	}
}

// replace gives new stitches the place of old ones on the line.
func (c *course) replace(taken, put []int32) {
	last := len(put) - 1
	before, after := c.behind(taken[0]), c.ahead(taken[len(taken)-1])
	if before == taken[len(taken)-1] { // the ring has no others
		before, after = put[last], put[0]
	}
	for _, id := range taken {
		c.cells[id].kind = edgeNone
	}
	for _, id := range put {
		c.chain(before, id)
		before = id
	}
	c.chain(put[last], after)
}

// made places a stitch that was made of none, a yarn over or a make one.
func (c *course) made(i int, id, next int32) {
	bare := c.open(i)
	level := c.cells[next].level + 1
	if c.last == 0 {
		c.place(id, c.behind(next))
	} else {
		level = max(c.cells[c.last].level, 1)
		c.place(id, c.last)
	}
	c.put(id, level, nil)
	if c.slipped || c.rise == 0 {
		c.rise = 1
	}
	c.slipped = false
	if bare {
		c.opening = c.bare(id, c.behind(id), 1, handOf(c.side, true))
	}
}

// slip passes a stitch by.
func (c *course) slip(i int, id int32) {
	if c.reach(i, id) {
		c.opening = id
	}
	c.cells[id].skips++
	c.advance(id)
	c.slipped = true
}

// castOn places a stitch, and its foot on the far side of it.
func (c *course) castOn(id, next int32) {
	foot := c.add(cell{kind: EdgeCastOn, row: c.row, across: -2})
	switch level := c.cells[c.last].level; {
	case c.last == 0 && next == 0 && c.waits == 0: // nothing else is on the needles
		c.chain(id, foot)
		c.chain(foot, id)
		c.put(id, 0, nil)
	case c.last == 0:
		c.foot, c.outer = c.waits, id
		if next != 0 {
			c.foot = c.behind(next)
		}
		c.place(id, c.foot)
		c.place(foot, c.foot)
		level = c.cells[next].level
		if next != 0 && c.waits == 0 { // the loops are this row's, on one side of which they stand
			level++
			c.outer = c.bare(id, foot, 1, handOf(c.side, true))
		}
		c.put(id, level, nil)
	case c.foot != 0:
		c.place(id, c.last)
		c.place(foot, c.foot)
		c.put(id, level, nil)
	default:
		c.place(id, c.last)
		c.place(foot, id)
		c.put(id, level, nil)
	}
	c.slipped = true
	c.aside(foot)
}

// bindOff leaves a stitch on the line, where it is from now on a part of the edge.
func (c *course) bindOff(i int, id int32) {
	if c.last != 0 {
		c.join(c.last, id)
	}
	c.close(i)
	b := &c.cells[id]
	b.kind, b.row, b.across = EdgeBoundOff, c.row, 2
	c.last, c.bound, c.foot = id, true, 0
	c.aside(id)
}

// aside says in which hand a part of the edge lies that was bound off or cast on: at the
// beginning of the row, or at its end if nothing is worked after it.
func (c *course) aside(id int32) {
	if !c.begun {
		c.cells[id].hand = handOf(c.side, true)
		return
	}
	c.tail = append(c.tail, id)
}

// put takes down a new stitch of the row.
func (c *course) put(id, level int32, made []int32) {
	s := &c.cells[id]
	s.row, s.level, s.beside = c.row, level, c.last
	s.under, s.count = int32(len(c.below)), int32(len(made))
	c.below = append(c.below, made...)
	if s.op == CastOn {
		c.last, c.bound = id, false
		return
	}
	c.advance(id)
}

// advance brings the yarn to a stitch that was worked or slipped.
func (c *course) advance(id int32) {
	c.last, c.bound, c.foot, c.begun, c.tail = id, false, 0, true, c.tail[:0]
}
