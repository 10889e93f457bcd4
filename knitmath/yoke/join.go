package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// MaxYokeRounds is the most rounds in a yoke: two metres at 10 rounds a cm.
const MaxYokeRounds = 2_000

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

// vetJoined works out the stitches joined,
//
//	T = body + 2*sleeve - 4*underarm
//
// with the percentage system's counts where none are given. ok is false when
// some part of body or sleeve would have nothing left, or there are too many.
func vetJoined(c *fault.Checks, body int, sleeve, underarm *int) (j joining, ok bool) {
	j.body = body
	j.sleeve = fault.Or(sleeve, percent(j.body, sleevePercent))
	j.underarm = fault.Or(underarm, percent(j.body, underarmPercent))
	j.join = j.body + 2*j.sleeve - 4*j.underarm
	if 2*j.underarm >= j.body || j.underarm >= j.sleeve {
		c.Infeasible("the underarms take "+report.CountOf(2*j.underarm, "stitches")+" of the body's "+strconv.Itoa(j.body)+
			" and "+strconv.Itoa(j.underarm)+" of each sleeve's "+strconv.Itoa(j.sleeve)+
			"; some of each must remain, so underarm_stitches may be at most "+
			strconv.Itoa(max(0, min((j.body-1)/2, j.sleeve-1))), "body_stitches", "sleeve_stitches", "underarm_stitches")
		return j, false
	}
	if j.join > stitch.MaxStitches {
		c.Infeasible("body and sleeves join "+report.CountOf(j.join, "stitches")+"; at most "+strconv.Itoa(stitch.MaxStitches)+
			" are counted", "body_stitches", "sleeve_stitches")
		return j, false
	}
	return j, true
}

// vetYokeDepth is the rounds from the join to the neck, and the field that they
// come from. Without one, the depth is a quarter of the body's circumference
// (percentage system).
func vetYokeDepth(c *fault.Checks, st, rw gauge.Density, body int, depthCm *float64, roundCount *int) (rounds int, field string) {
	switch {
	case roundCount != nil:
		rounds, field = *roundCount, "depth_rounds"
	case depthCm != nil:
		rounds, field = rw.Nearest(measure.Micrometres(*depthCm)), "depth_cm"
	default:
		rounds, field = rw.Nearest(measure.Micrometres(min(st.SizeCm(body)/4, MaxYokeDepth))), "gauge"
	}
	if rounds < 1 || rounds > MaxYokeRounds {
		c.Infeasible("the depth is "+report.CountOf(rounds, "rounds")+" at this gauge; it must be from 1 to "+
			strconv.Itoa(MaxYokeRounds), field)
	}
	return rounds, field
}

// percent is p % of n, nearest, half-way up.
func percent(n, p int) int { return int(measure.HalfUpDiv(int64(n*p), 100)) }
