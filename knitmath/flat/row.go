package flat

import (
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// written is a row that changes the count from one to the other, which lies further out or
// further in; turn numbers the changes, so that every second one can be shifted.
func (p *piece) written(from, to, turn int, side stitch.Side) stitch.Instruction {
	switch {
	case p.form == FormPolygon:
		return instruction(p.cornerRound(from, to), from, to)
	case p.form == FormMitredSquare:
		return instruction(mitre(from, to, side), from, to)
	case p.form == FormTriangleFromTop:
		return instruction(spine(from, side), from, to)
	case p.edged():
		return instruction(edgeRow(from, to, side), from, to)
	}
	return p.wedgeRow(from, to, turn)
}

func instruction(steps []stitch.Step, from, to int) stitch.Instruction {
	return stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: from, EndStitches: to}
}

// wedgeRow is a row of a disc: of wedges in a line, or shifted by half a wedge in every
// second one, or with every stitch doubled.
func (p *piece) wedgeRow(from, to, turn int) stitch.Instruction {
	op, wedges := stitch.M1L, p.wedges
	if p.in.Arrangement == ArrangementDoubling {
		wedges = min(from, to)
	}
	if to < from {
		op = stitch.K2tog
	}
	each := (from - p.before - p.after) / wedges
	shift := 0
	if turn%2 == 1 && p.in.Arrangement != ArrangementWedges && p.in.Arrangement != ArrangementDoubling {
		shift = (each - op.Takes() + 1) / 2
	}
	return shaping.WedgeRow(p.before, wedges, each, p.after, op, shift)
}

// row gathers steps; what is worked no times is left out.
type row []stitch.Step

func (r *row) do(op stitch.Op, n int) { *r = stitch.AppendStep(*r, op, n) }

// cornerRound is a round of a polygon: of each corner first its stitch, then the side.
// Increases stand beside the corner stitch and lean away from it, decreases lean towards
// it. Common practice.
func (p *piece) cornerRound(from, to int) []stitch.Step {
	var r row
	sides := from/p.wedges - 1 // stitches of a side without its corner
	change := (to - from) / p.wedges
	if change == -1 {
		return row{stitch.Do(stitch.K2tog, p.wedges)}
	}
	r.do(stitch.Knit, 1)
	switch change {
	case 1:
		r.do(stitch.M1L, 1)
	case 2:
		r.do(stitch.M1L, 1)
		r.do(stitch.Knit, sides)
		r.do(stitch.M1R, 1)
	case 4:
		r.do(stitch.M1L, 1)
		r.do(stitch.Knit, 1)
		r.do(stitch.M1L, 1)
		r.do(stitch.Knit, sides-2)
		r.do(stitch.M1R, 1)
		r.do(stitch.Knit, 1)
		r.do(stitch.M1R, 1)
	case -2:
		drawIn(&r, sides, 2, stitch.SSK, stitch.K2tog)
	case -4:
		drawIn(&r, sides, 3, stitch.SSSK, stitch.K3tog)
	}
	return row{stitch.Repeat(p.wedges, r...)}
}

// drawIn takes stitches away at both ends of a side; of three stitches the two on the
// outside come over the middle one.
func drawIn(r *row, sides, takes int, first, last stitch.Op) {
	if sides < 2*takes {
		r.do(stitch.CDD, 1)
		r.do(stitch.Knit, sides-3)
		return
	}
	r.do(first, 1)
	r.do(stitch.Knit, sides-2*takes)
	r.do(last, 1)
}

// mitre is a row of a mitred square, with its centre stitch in the middle.
func mitre(from, to int, side stitch.Side) []stitch.Step {
	var r row
	arm := (from - 1) / 2
	plain, double, first, last := stitch.Knit, stitch.CDD, stitch.M1R, stitch.M1L
	if side == stitch.WrongSide { // from the other side both come in the other order
		plain, double, first, last = stitch.Purl, stitch.P3tog, stitch.M1LP, stitch.M1RP
	}
	if to < from && side == stitch.WrongSide && arm > 1 { // a double decrease from there leans
		r.do(plain, arm-2)
		r.do(stitch.P2tog, 1)
		r.do(plain, 1)
		r.do(stitch.SSP, 1)
		r.do(plain, arm-2)
		return r
	}
	if to < from {
		r.do(plain, arm-1)
		r.do(double, 1)
		r.do(plain, arm-1)
		return r
	}
	r.do(plain, arm)
	r.do(first, 1)
	r.do(plain, 1)
	r.do(last, 1)
	r.do(plain, arm)
	return r
}

// spine is a row of a triangle from the top: it gains beside both edges and at both sides
// of the centre stitch.
func spine(from int, side stitch.Side) []stitch.Step {
	half := (from - 3) / 2
	plain, first, last := stitch.Knit, stitch.M1L, stitch.M1R
	if side == stitch.WrongSide {
		plain, first, last = stitch.Purl, stitch.M1RP, stitch.M1LP
	}
	return row{stitch.Repeat(2, stitch.Do(plain, 1), stitch.Do(first, 1), stitch.Do(plain, half), stitch.Do(last, 1)), stitch.Do(plain, 1)}
}
