package flat

import "example.com/knitmath/knitmath/stitch"

// A starChange is a round, counted from the centre, in which the sides of a star of so many
// stitches each gain one at the point, or lose one in the valley, or both.
type starChange struct {
	row, side  int
	gain, lose bool
}

// after is how many stitches a side has further out.
func (ch starChange) after() int {
	side := ch.side
	if ch.gain {
		side++
	}
	if ch.lose {
		side--
	}
	return side
}

// outwards works the stitch of a point, a side, that of the valley and a side.
func (ch starChange) outwards() []stitch.Step {
	var r row
	r.do(stitch.Knit, 1)
	if ch.gain {
		r.do(stitch.M1L, 1)
	}
	if ch.side < 0 {
		return r // the stitch made is the valley's
	}
	if ch.lose {
		r.do(stitch.Knit, ch.side-1)
		r.do(stitch.CDD, 1)
		r.do(stitch.Knit, ch.side-1)
	} else {
		r.do(stitch.Knit, 2*ch.side+1)
	}
	if ch.gain {
		r.do(stitch.M1R, 1)
	}
	return r
}

// inwards works the same in a round from outside: a side loses at the point and gains in the valley.
func (ch starChange) inwards() []stitch.Step {
	var r row
	side := ch.after()
	if side == 0 {
		r.do(stitch.K2tog, 1)
		return r
	}
	r.do(stitch.Knit, 1)
	switch {
	case ch.gain && side == 1:
		r.do(stitch.CDD, 1)
		return r
	case ch.gain:
		r.do(stitch.SSK, 1)
		side -= 2
	}
	if ch.lose {
		r.do(stitch.Knit, side)
		r.do(stitch.M1R, 1)
		r.do(stitch.Knit, 1)
		r.do(stitch.M1L, 1)
		r.do(stitch.Knit, side)
	} else {
		r.do(stitch.Knit, 2*side+1)
	}
	if ch.gain {
		r.do(stitch.K2tog, 1)
	}
	return r
}
