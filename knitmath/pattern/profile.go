package pattern

import "example.com/knitmath/knitmath/stitch"

// most is where counting stops growing: far above any limit, far below overflow.
const most = 1 << 40

func times(a, b int64) int64 {
	if a > most {
		a = most
	}
	if a < -most {
		a = -most
	}
	if b > most/(max(a, -a, 1)) && a != 0 {
		if a < 0 {
			return -most
		}
		return most
	}
	return a * b
}

// tally is stitches taken off the left needle and left on the right one, and
// how many single operations that is.
type tally struct{ takes, leaves, ops int64 }

func (t *tally) add(u tally) {
	t.takes = min(t.takes+u.takes, most)
	t.leaves = max(min(t.leaves+u.leaves, most), -most)
	t.ops = min(t.ops+u.ops, most)
}

func (t tally) times(n int64) tally {
	return tally{times(t.takes, n), times(t.leaves, n), times(t.ops, n)}
}

// pass is one working of a step's operation, name or group in a size.
func (s *Step) pass(size int) tally {
	if s.Steps == nil {
		return tally{int64(s.takes), int64(s.leaves), 1}
	}
	t := fixed(s.Steps, size)
	if s.IntoOneStitch {
		t.takes = 1
	}
	return t
}

// workings is how many times a step is worked in a size that is no stretch.
func (s *Step) workings(size int) int {
	if s.Times == nil {
		return 1
	}
	return at(s.Times, size)
}

// fixed is what steps that are all worked a number of times take and leave.
func fixed(steps []Step, size int) tally {
	var t tally
	for i := range steps {
		s := &steps[i]
		t.add(s.pass(size).times(int64(s.workings(size))))
	}
	return t
}

// profile is what a row does in one size. A stretch, which is worked until some
// stitches remain, leaves just these, and so what comes after the first stretch
// does the same on any number of stitches: it is worked out once, and a row on
// some number of stitches is a few sums, however long it is.
type profile struct {
	stretches bool
	first     part              // the first stretch, if there is one
	then      [outcomes]outcome // what comes after it, by how it came out
	rest      tally             // of a row without stretches
	turn      stitch.Op
}

// empty reports whether a row does nothing on no stitches.
func (p *profile) empty() bool {
	return !p.stretches && p.turn == 0 && p.rest.takes <= 0 && p.rest.leaves <= 0
}

// part is fixed work and the stretch after it.
type part struct {
	before tally
	step   *Step
	each   tally
	last   int64
}

// profileOf works out the profile of a row in a size.
func profileOf(steps []Step, size int) profile {
	var p profile
	var t tally
	var after [outcomes]course
	for i := range steps {
		s := &steps[i]
		if s.Operation.EndsRow() {
			p.turn = s.Operation
			t.ops++
			break
		}
		if s.BeforeMarkerStitches != nil {
			p.stretches = true // where markers lie is for a walker to find
			continue
		}
		if !s.stretch() {
			t.add(s.pass(size).times(int64(s.workings(size))))
			continue
		}
		next := part{t, s, s.pass(size), int64(at(s.RemainingStitches, size))}
		t = tally{}
		if p.first.step == nil {
			p.stretches, p.first = true, next
			for way, reason := range wayReasons {
				after[way] = course{left: next.last, outcome: outcome{reason: reason}}
			}
			continue
		}
		for way := range after {
			after[way].stretch(&next)
		}
	}
	p.rest = t
	if p.stretches {
		for way := range after {
			after[way].end(t, p.turn)
			p.then[way] = after[way].outcome
		}
	}
	return p
}

// work works the profile on stitches of the left needle.
func (p *profile) work(stitches int64) outcome {
	c := course{left: stitches}
	if !p.stretches {
		c.end(p.rest, p.turn)
		return c.outcome
	}
	c.stretch(&p.first)
	return c.followed(&p.then[wayOf(c.reason)])
}

// restTakes is what the rest of a row takes, up to the next stretch.
func restTakes(steps []Step, size int) int64 {
	for i := range steps {
		if steps[i].stretch() {
			return fixed(steps[:i], size).takes
		}
	}
	return fixed(steps, size).takes
}
