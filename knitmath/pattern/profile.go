package pattern

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

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

// profile is what a row does in one size: fixed work, and between it stretches
// that are worked until some stitches remain.
type profile struct {
	parts []part
	rest  tally // after the last stretch
	turn  stitch.Op
}

// empty reports whether a row does nothing on no stitches.
func (p *profile) empty() bool {
	return len(p.parts) == 0 && p.turn == 0 && p.rest.takes <= 0 && p.rest.leaves <= 0
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
	for i := range steps {
		s := &steps[i]
		if s.Operation.EndsRow() {
			p.turn = s.Operation
			t.ops++
			break
		}
		if !s.stretch() {
			t.add(s.pass(size).times(int64(s.workings(size))))
			continue
		}
		p.parts = append(p.parts, part{t, s, s.pass(size), int64(at(s.RemainingStitches, size))})
		t = tally{}
	}
	p.rest = t
	return p
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

// outcome is a row worked on a number of stitches.
type outcome struct {
	takes, leaves int64
	ops           int64
	unworked      int64         // left over at the end, without a turn
	missing       int64         // more needed than there are
	reason        report.Reason // "" if the row fits
	step          *Step         // the stretch that does not come out
	short         int64         // stitches that are too few for one more of it
}

// work works the profile on stitches of the left needle.
func (p *profile) work(stitches int64) outcome {
	var o outcome
	left := stitches
	take := func(t tally) bool {
		o.takes += t.takes
		o.leaves += t.leaves
		o.ops += t.ops
		left -= t.takes
		return left >= 0
	}
	for i := range p.parts {
		q := &p.parts[i]
		if !take(q.before) || left < q.last {
			o.reason = ReasonMissing
			o.missing = q.last - left
			o.step = q.step
			// What the stretch would do is nothing; the rest is worked all the same.
			left = q.last
			continue
		}
		n := int64(0)
		if q.each.takes > 0 {
			n = (left - q.last) / q.each.takes
			if over := (left - q.last) % q.each.takes; over != 0 && o.reason == "" {
				o.reason, o.step, o.short = ReasonUneven, q.step, over
			}
		} else if left != q.last {
			o.reason, o.step, o.short = ReasonUneven, q.step, left-q.last
		}
		take(q.each.times(n))
		if o.reason == ReasonUneven {
			left = q.last // go on as if it came out
		}
	}
	if !take(p.rest) {
		if o.reason == "" || o.reason == ReasonMissing {
			o.reason = ReasonMissing
			o.missing = max(o.missing, -left)
		}
	} else if left > 0 && p.turn == 0 && o.reason == "" {
		o.reason = ReasonUnworked
		o.unworked = left
	}
	return o
}
