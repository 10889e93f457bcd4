package knitmath

import "strconv"

// Parts of the percentage system, in percent of the body's stitches.
//
// Source: Zimmermann, Knitting Without Tears (1971) and Knitting Around (1989),
// both by way of a digest.
const (
	sleevePercent   = 33
	underarmPercent = 8
	neckPercent     = 40
)

// joining is body and sleeves brought together on one needle.
type joining struct {
	body, sleeve, underarm int
	join                   int
}

// joined works out the stitches joined,
//
//	T = body + 2*sleeve - 4*underarm
//
// with the percentage system's counts where none are given. ok is false when
// some part of body or sleeve would have nothing left, or there are too many.
func (c *checks) joined(body int, sleeve, underarm *int) (j joining, ok bool) {
	j.body = body
	j.sleeve = or(sleeve, percent(j.body, sleevePercent))
	j.underarm = or(underarm, percent(j.body, underarmPercent))
	j.join = j.body + 2*j.sleeve - 4*j.underarm
	if 2*j.underarm >= j.body || j.underarm >= j.sleeve {
		c.infeasible("the underarms take "+countOf(2*j.underarm, "stitches")+" of the body's "+strconv.Itoa(j.body)+
			" and "+strconv.Itoa(j.underarm)+" of each sleeve's "+strconv.Itoa(j.sleeve)+
			"; some of each must remain, so underarm_count may be at most "+
			strconv.Itoa(max(0, min((j.body-1)/2, j.sleeve-1))), "body_count", "sleeve_count", "underarm_count")
		return j, false
	}
	if j.join > MaxStitches {
		c.infeasible("body and sleeves join "+countOf(j.join, "stitches")+"; at most "+strconv.Itoa(MaxStitches)+
			" are counted", "body_count", "sleeve_count")
		return j, false
	}
	return j, true
}

// yokeDepth is the rounds from the join to the neck, and the field that they
// come from. Without one, the depth is a quarter of the body's circumference
// (percentage system).
func (c *checks) yokeDepth(st, rw density, body int, depthCm *float64, roundCount *int) (rounds int, field string) {
	switch {
	case roundCount != nil:
		rounds, field = *roundCount, "round_count"
	case depthCm != nil:
		rounds, field = rw.nearest(micrometres(*depthCm)), "depth_cm"
	default:
		rounds, field = rw.nearest(micrometres(min(st.sizeCm(body)/4, MaxYokeDepth))), "gauge"
	}
	if rounds < 1 || rounds > MaxYokeRounds {
		c.infeasible("the depth is "+countOf(rounds, "rounds")+" at this gauge; it must be from 1 to "+
			strconv.Itoa(MaxYokeRounds), field)
	}
	return rounds, field
}

// percent is p % of n, nearest, half-way up.
func percent(n, p int) int { return int(halfUpDiv(int64(n*p), 100)) }
