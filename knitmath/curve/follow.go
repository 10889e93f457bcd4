package curve

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Follow plans the bind-offs and decreases, or cast-ons and increases, of an edge, or
// of both, along a course. Of the plans that depart from the curve by no more than the
// nearest does and the tolerance, it takes the one with the least to remember; of equal
// ones that with the smaller sum of squares.
//
// Departure: the edge as knit is a line of treads and rises. Bound-off stitches lie on
// the row before the one that binds them off, cast-on stitches there too; a decrease
// and an increase slant over their row. Each corner of that line is so many stitches
// across from the curve and so many rows above or below it; the less of the two,
// a row counted as the stitches that are as wide as it is high, is how far the corner
// lies off. Of both edges the farther counts: one is bound off a row after the other.
//
// Effort: a run of equal steps costs 2, as in package schedule. It may begin in the next
// row that can have it, or after as many rows as lie between its steps; to work other
// rows even first costs 1 more.
//
// It is false where no plan lies within [MaxDeparture] of the curve: the rows that may
// shape are too few, or too little may be done in one.
// Source: own derivation, by dynamic programming over rows and stitches.
func Follow(c Course, s Settings) (Plan, bool) {
	if c.Stitches == 0 {
		return Plan{}, true
	}
	p := plannerOf(c, s)
	defer p.done()
	least, ok := p.least()
	if !ok {
		return Plan{Looked: p.looked}, false
	}
	p.allow(least + p.tolerance)
	runs, effort, ok := p.easiest()
	for farther := 0; !ok && farther < steadyTries; farther++ {
		p.allow(p.allowed + steadyStep)
		runs, effort, ok = p.easiest()
	}
	for more := int64(fallingStep); ok && grows(runs) && more <= measure.ToMillionths(s.Falling); more += fallingStep {
		p.allow(p.allowed + fallingStep)
		runs, effort, ok = p.easiest()
	}
	kinked := !ok
	if kinked {
		p.allowed -= steadyTries * steadyStep
		p.steady = false
		runs, effort, _ = p.easiest()
	}
	runs, joined := told(runs)
	effort -= joined * effortOfRun
	out := Plan{Runs: runs, Least: float64(least) / 1e6, Effort: effort, Looked: p.looked, Kinked: kinked}
	p.write(&out)
	return out, true
}

// How much farther off a steady plan is looked for, in millionths of a stitch, and how
// often.
const (
	steadyStep  = 500_000
	steadyTries = 4
)

// fallingStep is by how much farther off at a time a plan is looked for whose steps do not grow, in
// millionths of a stitch.
const fallingStep = 250_000

// grows reports whether a step takes more stitches than the one before.
func grows(runs []Run) bool {
	for i := 1; i < len(runs); i++ {
		if runs[i].Stitches > runs[i-1].Stitches {
			return true
		}
	}
	return false
}

// nearest is how far the nearest plan along a course lies from it, in stitches, and
// false if there is none.
func nearest(c Course, s Settings) (float64, bool) {
	p := plannerOf(c, s)
	defer p.done()
	least, ok := p.least()
	return float64(least) / 1e6, ok
}

// planner looks for the steps of a course. Rows are counted from its first.
type planner struct {
	Course
	edges Edges
	lead  stitch.Side // which edge the groups of the plan are at: that where rows of this side begin

	single, group    Kind
	singles, groups  []bool // in which rows each may be
	most             int    // stitches of a single
	smallest, widest int    // stitches of a group
	tolerance        int64  // of departure, in millionths of a stitch
	allowed          int64  // departure
	steady           bool
	bend             int32       // how many times as quick as the last a step of a steady plan is, 0 without limit
	first            stitch.Side // of row 1 of the course
	looked           int         // steps of runs
	space            *workspace
}

func plannerOf(c Course, s Settings) *planner {
	p := &planner{Course: c, edges: s.Edges, single: KindDecrease, group: KindBindOff, most: s.LargestChange,
		smallest: 2, widest: s.LargestGroup, steady: s.Steady, bend: int32(s.LargestBend),
		tolerance: measure.ToMillionths(s.Tolerance), space: workspaces.Get().(*workspace)}
	if c.Gains {
		p.single, p.group = KindIncrease, KindCastOn
	}
	if p.most == 0 {
		p.most = 1
	}
	if p.most < 0 {
		p.smallest = 1
	}
	if p.widest == 0 {
		p.widest = c.Stitches
	}
	if p.edges == EdgesUnspecified {
		p.edges = EdgesBoth
	}
	first := stitch.RightSide
	if (s.FirstSide == stitch.WrongSide) != (c.RowsBefore%2 == 1) {
		first = stitch.WrongSide
	}
	p.first = first
	switch p.edges {
	case EdgesRight:
		p.lead = stitch.RightSide
	case EdgesLeft:
		p.lead = stitch.WrongSide
	default:
		p.lead = first
	}
	p.space.near.within = 0
	p.space.rows = ofLength(p.space.rows, 2*(c.Rows+1))
	p.singles, p.groups = p.space.rows[:c.Rows+1], p.space.rows[c.Rows+1:]
	p.singles[0], p.groups[0] = false, false
	for row, faces := 1, first; row <= c.Rows; row, faces = row+1, faces.Other() {
		p.singles[row] = p.most > 0 && (s.AnyRow || faces == stitch.RightSide)
		// At both edges the other one is bound off in the row after.
		p.groups[row] = p.widest > 0 && faces == p.lead && row+p.later() <= c.Rows
	}
	return p
}

// allow lets a plan depart so far. The places so near are worked out, with those that the tolerance lets in besides.
func (p *planner) allow(most int64) {
	if p.allowed = most; most > p.space.near.within {
		p.space.near.fill(&p.Course, most+p.tolerance)
	}
}

// off is how far a place lies from the curve, or far where it is farther than was ever allowed.
func (p *planner) off(stitches, row int) int64 { return p.space.near.off(stitches, row) }

// later is how many rows after the first edge the other one is bound off.
func (p *planner) later() int {
	if p.edges == EdgesBoth {
		return 1
	}
	return 0
}

// corners is the departure of a step: of so many stitches, after so many. What it weighs
// by is the same, but of a single that of the middle of its slant: where a curve runs
// level and then slopes, the bind-off ends where the level piece does. Foot is how far off the place
// before it lies at the foot of its row, and top the one after it at the row's top.
func (p *planner) corners(row, before, stitches int, group bool, foot, top int64) (off, weighs int64) {
	p.looked++
	if !group {
		return max(foot, top), foot/2 + top/2
	}
	off = max(foot, p.off(before+stitches, row-1))
	if p.edges == EdgesBoth {
		off = max(off, p.off(before, row), top)
	}
	return off, off
}

// step is corners where neither place has been looked at.
func (p *planner) step(row, before, stitches int, group bool) (off, weighs int64) {
	return p.corners(row, before, stitches, group, p.off(before, row-1), p.off(before+stitches, row))
}

// behind reports whether an edge with so many stitches lost has waited too long by a
// height, so that no later step is near enough.
func (p *planner) behind(stitches, height int) bool {
	return p.under(stitches, height) && p.off(stitches, height) > p.allowed
}

// under reports whether the curve has gone farther in by a height.
func (p *planner) under(stitches, height int) bool {
	return p.across[height].from > int64(stitches)*1e6
}

// ahead reports whether an edge lies too far in at a height.
func (p *planner) ahead(stitches, height int) bool {
	return p.over(stitches, height) && p.off(stitches, height) > p.allowed
}

// over reports whether the curve lies farther out at a height.
func (p *planner) over(stitches, height int) bool { return p.across[height].to < int64(stitches)*1e6 }
