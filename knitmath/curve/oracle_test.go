package curve

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// effortOf is the least there is to remember of steps at the edge that leads: the best
// way to part them into runs, tried in full.
func effortOf(c Course, s Settings, steps []Step) int {
	both := s.Edges == EdgesUnspecified || s.Edges == EdgesBoth
	best := make([]int, len(steps)+1)
	for to := 1; to <= len(steps); to++ {
		best[to] = math.MaxInt
		for from := range to {
			if best[from] == math.MaxInt {
				continue
			}
			last := c.RowsBefore
			if from > 0 {
				last = steps[from-1].RowNumber
				if both && steps[from-1].Kind.Groups() {
					last++
				}
			}
			if e, ok := runOf(s, steps[from:to], last); ok {
				best[to] = min(best[to], best[from]+e)
			}
			if e, ok := turnsOf(s, steps[from:to], last); ok && c.straight {
				best[to] = min(best[to], best[from]+e)
			}
		}
	}
	return best[len(steps)]
}

// soonestAfter is the first row after a last one that may have such a step.
func soonestAfter(s Settings, first Step, last int) int {
	soonest := last + 1
	for ; ; soonest++ {
		faces := SideOf(soonest, s.FirstSide)
		if first.Kind.Groups() && faces == SideOf(first.RowNumber, s.FirstSide) ||
			!first.Kind.Groups() && (s.AnyRow || faces == stitch.RightSide) {
			return soonest
		}
	}
}

// turnsOf is what there is to remember of steps at two intervals in turn, the nearest to one
// another: where an interval does not lead to the first step, it belongs to none.
func turnsOf(s Settings, steps []Step, last int) (int, bool) {
	if len(steps) < 4 || steps[0].Kind.Groups() {
		return 0, false
	}
	gaps := [2]int{steps[1].RowNumber - steps[0].RowNumber, steps[2].RowNumber - steps[1].RowNumber}
	apart := 2
	if s.AnyRow {
		apart = 1
	}
	if d := gaps[0] - gaps[1]; d != apart && d != -apart {
		return 0, false
	}
	for i, x := range steps[1:] {
		if x.Kind != steps[0].Kind || x.Stitches != steps[0].Stitches || x.RowNumber-steps[i].RowNumber != gaps[i%2] {
			return 0, false
		}
	}
	before := steps[0].RowNumber - last
	if len(steps)%2 == 0 && before != gaps[1] {
		return 0, false
	}
	if steps[0].RowNumber == soonestAfter(s, steps[0], last) {
		return 5, true
	}
	return 6, len(steps)%2 == 1
}

// runOf is what there is to remember of steps as one run after a last row, if they are one.
func runOf(s Settings, steps []Step, last int) (int, bool) {
	every := 0
	for i, x := range steps[1:] {
		gap := x.RowNumber - steps[i].RowNumber
		if x.Kind != steps[0].Kind || x.Stitches != steps[0].Stitches || i > 0 && gap != every || x.Kind.Groups() && gap != 2 {
			return 0, false
		}
		every = gap
	}
	first := steps[0]
	switch {
	case first.RowNumber == soonestAfter(s, first, last), first.RowNumber-last == every, len(steps) == 1 && !first.Kind.Groups():
		return 2, true
	}
	return 3, true
}

// every tries all ways to lose the stitches of a course, at the edge that leads.
func every(c Course, s Settings, try func(steps []Step)) {
	both := s.Edges == EdgesUnspecified || s.Edges == EdgesBoth
	lead := stitch.RightSide
	if s.Edges == EdgesLeft || both && SideOf(c.RowsBefore+1, s.FirstSide) == stitch.WrongSide {
		lead = stitch.WrongSide
	}
	group, single := KindBindOff, KindDecrease
	if c.Gains {
		group, single = KindCastOn, KindIncrease
	}
	largest, smallest, change := s.LargestGroup, 2, max(s.LargestChange, 1)
	if largest == 0 {
		largest = c.Stitches
	}
	if s.LargestChange < 0 {
		smallest, change = 1, 0
	}
	var steps []Step
	var on func(row, left int)
	on = func(row, left int) {
		if left == 0 {
			try(steps)
			return
		}
		if row > c.RowsBefore+c.Rows {
			return
		}
		on(row+1, left)
		faces := SideOf(row, s.FirstSide)
		add := func(kind Kind, n, next int) {
			steps = append(steps, Step{row, kind, n})
			on(next, left-n)
			steps = steps[:len(steps)-1]
		}
		if s.AnyRow || faces == stitch.RightSide {
			for n := 1; n <= min(change, left); n++ {
				add(single, n, row+1)
			}
		}
		next := row + 1
		if both {
			next++
		}
		if faces == lead && next-1 <= c.RowsBefore+c.Rows {
			for n := smallest; n <= min(largest, left); n++ {
				add(group, n, next)
			}
		}
	}
	on(c.RowsBefore+1, c.Stitches)
}

// Of small courses every way is tried: none is nearer than the least that a plan tells,
// and of those near enough none has less to remember.
func TestNoPlanIsEasier(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 5))
	compared := 0
	for range 3_000 {
		c := randomCourse(r, 4, 8)
		if c.Stitches > 7 || c.Rows > 11 {
			continue
		}
		s := randomSettings(r)
		c.RowsBefore = r.IntN(2)
		p, ok := Follow(c, s)
		least, effort, wider := math.Inf(1), math.MaxInt, math.MaxInt
		offOf := func(steps []Step) float64 {
			return worstCorner(c, bothOf(c, s, steps))
		}
		every(c, s, func(steps []Step) { least = min(least, offOf(steps)) })
		every(c, s, func(steps []Step) {
			// The plan counts in millionths, and a tolerance may end just there.
			if off := offOf(steps); off <= least+s.Tolerance+3e-6 {
				e := effortOf(c, s, steps)
				wider = min(wider, e)
				if off <= least+max(s.Tolerance-3e-6, 0) {
					effort = min(effort, e)
				}
			}
		})
		if ok != (least <= MaxDeparture+1e-6) {
			t.Fatalf("planned %v, %+v %+v", ok, c, s)
		}
		if ok && (math.Abs(p.Least-least) > 1e-5 || p.Effort > effort || p.Effort < wider) {
			t.Fatalf("least %v, effort %d; want %v, %d\n%+v\n%+v\n%+v", p.Least, p.Effort, least, effort, c, s, p)
		}
		compared++
	}
	if compared < 1_000 {
		t.Errorf("only %d compared", compared)
	}
}

// bothOf is a plan of steps at the leading edge.
func bothOf(c Course, s Settings, steps []Step) Plan {
	if s.Edges == EdgesLeft {
		return Plan{Left: steps}
	}
	if s.Edges == EdgesRight {
		return Plan{Right: steps}
	}
	other := make([]Step, len(steps))
	for i, x := range steps {
		if x.Kind.Groups() {
			x.RowNumber++
		}
		other[i] = x
	}
	return Plan{Right: steps, Left: other}
}
