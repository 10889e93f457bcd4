package stitch

// reach leads the yarn to a stitch, and reports whether its side is laid bare.
func (c *course) reach(i int, id int32) bool {
	bare := c.open(i)
	if c.last != 0 {
		c.join(c.last, id)
	}
	return bare
}

// open begins a stretch where there is none, and reports whether it begins with a bare
// side: at the beginning of a row, or after what was bound off.
func (c *course) open(i int) bool {
	if c.from >= 0 {
		return false
	}
	c.from, c.opening = i, 0
	if !c.begun && c.outer != 0 {
		c.opening = c.outer
	}
	return c.last == 0 || c.bound
}

// bare lays a side bare beside the stitch, beyond at in the row.
func (c *course) bare(id, at, rows int32, h Hand) int32 {
	side := c.add(cell{kind: EdgeRow, row: c.row, up: rows, hand: h, across: c.cells[id].owed[h]})
	c.cells[id].owed[h] = 0
	c.place(side, at)
	return side
}

// close ends the stretch before event i, with a bare side if its last stitch was
// worked, and says how far the edges have moved in it.
func (c *course) close(i int) {
	if c.from < 0 {
		return
	}
	ends := handOf(c.side, false)
	closing := c.last
	if !c.slipped {
		closing = c.bare(c.last, c.last, c.rise, ends)
	}
	before, after := c.moved(i)
	c.shift(c.opening, handOf(c.side, true), before)
	c.shift(closing, ends, after)
	c.from, c.rise = -1, 0
}

// shift moves a part of the edge, or owes it to the stitch that stands there.
func (c *course) shift(id int32, h Hand, by int32) {
	switch e := &c.cells[id]; {
	case id == 0:
	case e.kind == EdgeLive:
		e.owed[h] += by
	default:
		e.across += by
	}
}

// moved returns by how many half stitches the two edges of the stretch before event i
// have moved inward: what has become fewer on either side of the stitch in its middle,
// which stands on what it was made of.
func (c *course) moved(i int) (before, after int32) {
	all, made := int32(0), int32(0)
	for _, e := range c.events[c.from:i] {
		if e.op == PickUp || e.op == PickUpTwo {
			return 0, 0 // it stands on an edge
		}
		if e.op != CastOn {
			all, made = all+e.put-e.taken, made+e.until-e.put
		}
	}
	nearest, at, to := 2*made+2, int32(0), int32(0)
	for _, e := range c.events[c.from:i] {
		if e.op == CastOn {
			continue
		}
		takes, puts := e.put-e.taken, e.until-e.put
		off := 2 * max(2*to+puts-made, made-2*to-puts)
		if takes != puts {
			off++ // of two as near the middle rather the one that stands on one
		}
		if takes > 0 && puts > 0 && off < nearest {
			nearest, before = off, 2*at+takes-2*to-puts
		}
		at, to = at+takes, to+puts
	}
	return before, 2*(all-made) - before
}

// ahead returns what follows on the line in the order of the row.
func (c *course) ahead(id int32) int32 {
	if c.side == WrongSide {
		return c.cells[id].prev
	}
	return c.cells[id].next
}

// behind returns what comes before.
func (c *course) behind(id int32) int32 {
	if c.side == WrongSide {
		return c.cells[id].next
	}
	return c.cells[id].prev
}

// chain has b follow a.
func (c *course) chain(a, b int32) {
	if c.side == WrongSide {
		a, b = b, a
	}
	c.link(a, b)
}

// join makes neighbours of two, b after a; see connect.
func (c *course) join(a, b int32) {
	if c.side == WrongSide {
		a, b = b, a
	}
	c.connect(a, b)
}

// place puts a new one beyond a.
func (c *course) place(id, a int32) {
	if c.side == WrongSide {
		a = c.cells[a].prev
	}
	c.insert(id, a)
}
