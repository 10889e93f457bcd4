package neck

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// decreasing are the operations that take two stitches for one.
func decreasing(s stitch.Step) bool { return s.Op.Takes() == 2 && s.Op.Leaves() == 1 }

// outside is how many plain stitches a row's first decrease has before it, and its last one behind
// it; many where there is none.
func outside(row stitch.Row) (before, behind int) {
	const many = 1000
	before, behind = many, many
	plain := 0
	for _, s := range row.Steps {
		switch {
		case decreasing(s):
			if before == many {
				before = plain
			}
			behind = 0
			continue
		case s.Op == stitch.BindOff:
			plain = 0
			continue
		case s.ToLast != nil:
			s.Count = many
		}
		plain += s.Count
		behind = min(many, behind+s.Count)
	}
	return before, behind
}

// plainOutside checks a row: towards the neck a decrease has as many plain stitches outside it as
// are asked for, and behind a bind-off one, which is on the right needle already.
func plainOutside(t *testing.T, at string, p Piece, r Row, edge int) {
	t.Helper()
	if !slices.ContainsFunc(p.Steps, func(s Step) bool { return !s.BoundOff && s.FirstSideRowNumber == r.RowNumber }) {
		edge = 0 // nothing goes at the neck
	}
	before, behind := outside(r.Instruction.Row)
	atBegin, atEnd := 0, 0
	if r.Instruction.Row.Steps[0].Op == stitch.BindOff {
		atBegin = 1
	}
	switch {
	case r.Part == PartWhole: // both ends are at armholes
	case (r.Part == PartFirstSide) == (r.Side == stitch.RightSide):
		atEnd = edge
	default:
		atBegin = edge
	}
	if before < atBegin || behind < atEnd {
		t.Errorf("%s, row %d: %s: %d before, %d behind, %d wanted", at, r.RowNumber, r.Instruction.Row.Text(), before, behind, edge)
	}
}

// TestEveryDecreaseHasPlainStitchesOutside: necks of every width, slope and edge beside shoulders that
// are bound off in steps, and those that are drawn. Common practice: a decrease at the very edge is
// hard to sew and to pick up beside.
func TestEveryDecreaseHasPlainStitchesOutside(t *testing.T) {
	planned, step := 0, float64(knittest.Sweep(1, 4))/2
	for _, g := range []gauge.Gauge{{Stitches: 16, Rows: 22}, {Stitches: 22, Rows: 30}, {Stitches: 12, Rows: 17}} {
		for width := 18.0; width <= 44; width += step {
			for slope := 0; slope <= 16; slope += 2 {
				for edge := 1; edge <= 4; edge++ {
					for shape := ShapeRound; shape <= ShapeV; shape++ {
						in := Input{Gauge: &g, Shape: shape, WidthCm: &width, EdgeStitches: &edge, ShoulderSlopeRows: &slope,
							RowChoice: shaping.RowChoice(slope / 2 % 3)}
						out, err := PlanNeckline(in)
						if err != nil {
							continue
						}
						planned++
						for _, p := range []Piece{out.Front, out.Back} {
							for _, r := range p.Rows {
								plainOutside(t, fmt.Sprintf("%v, %v cm, slope %d, edge %d, shape %d", g, width, slope, edge, shape), p, r, edge)
							}
						}
					}
				}
			}
		}
	}
	if least := knittest.Sweep(7_000, 1_800); planned < least {
		t.Errorf("%d planned, %d at least", planned, least)
	}
	eachDrawn(t, func(at string, in Input, out Neckline) {
		for _, p := range []Piece{out.Front, out.Back} {
			for _, r := range p.Rows {
				plainOutside(t, at, p, r, max(1, p.layout.margin))
			}
		}
	})
}
