package pattern

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// outcome is a row worked on a number of stitches.
type outcome struct {
	takes, leaves int64
	ops           int64
	unworked      int64         // left over at the end, without a turn
	missing       int64         // more needed than there are
	reason        report.Reason // "" if the row fits
	step          *Step         // the stretch that does not come out
	short         int64         // stitches that are too few for one more of it
	misses, halts bool          // missing, and short, are of a stretch: whatever they were before it
}

// The ways in which a stretch comes out.
const (
	wayFits = iota
	wayUneven
	wayMissing
	outcomes
)

var wayReasons = [outcomes]report.Reason{wayFits: "", wayUneven: ReasonUneven, wayMissing: ReasonMissing}

func wayOf(reason report.Reason) int {
	switch reason {
	case ReasonUneven:
		return wayUneven
	case ReasonMissing:
		return wayMissing
	}
	return wayFits
}

// course is a row in the course of its working: what it came to so far, and the
// stitches left on the left needle.
type course struct {
	outcome
	left int64
}

// take works what is fixed and reports whether the stitches are there.
func (c *course) take(t tally) bool {
	c.takes += t.takes
	c.leaves += t.leaves
	c.ops += t.ops
	c.left -= t.takes
	return c.left >= 0
}

// stretch works a part, and leaves just the stitches that are to remain after it,
// unless it lacked stitches before and does not come out here.
func (c *course) stretch(q *part) {
	if !c.take(q.before) || c.left < q.last {
		c.reason, c.step, c.missing, c.misses = ReasonMissing, q.step, q.last-c.left, true
		// What the stretch would do is nothing; the rest is worked all the same.
		c.left = q.last
		return
	}
	n := int64(0)
	if q.each.takes > 0 {
		n = (c.left - q.last) / q.each.takes
		if over := (c.left - q.last) % q.each.takes; over != 0 && c.reason == "" {
			c.reason, c.step, c.short, c.halts = ReasonUneven, q.step, over, true
		}
	} else if c.left != q.last {
		c.reason, c.step, c.short, c.halts = ReasonUneven, q.step, c.left-q.last, true
	}
	c.take(q.each.times(n))
	if c.reason == ReasonUneven {
		c.left = q.last // go on as if it came out
	}
}

// end works what comes after the last stretch, and ends the row.
func (c *course) end(rest tally, turn stitch.Op) {
	if !c.take(rest) {
		if c.reason == "" || c.reason == ReasonMissing {
			c.reason = ReasonMissing
			c.missing = max(c.missing, -c.left)
		}
	} else if c.left > 0 && turn == 0 && c.reason == "" {
		c.reason = ReasonUnworked
		c.unworked = c.left
	}
}

// followed is a course up to the first stretch, and what comes after that.
func (c *course) followed(then *outcome) outcome {
	o := c.outcome
	o.takes += then.takes
	o.leaves += then.leaves
	o.ops += then.ops
	o.reason, o.unworked = then.reason, then.unworked
	if then.step != nil {
		o.step = then.step
	}
	if then.halts {
		o.short = then.short
	}
	if then.misses {
		o.missing = then.missing
	} else {
		o.missing = max(o.missing, then.missing)
	}
	return o
}
