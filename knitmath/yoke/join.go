package yoke

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// Ranges of what is joined, and of the depth.
const (
	// MinBody is the fewest stitches of a body: one on either side of each of
	// four places.
	MinBody = 8
	// MinSleeve is the fewest stitches of a sleeve.
	MinSleeve = 4
	// MaxUnderarm is the most stitches held at one underarm.
	MaxUnderarm = 1_000
	// MaxDepthCm is the greatest depth: no body is longer.
	MaxDepthCm = 200.0
	// deepestByDefaultCm is as deep as a yoke is that nobody said the depth of: armholes do
	// not grow with the chest for ever. The deepest of the body size charts is 28 cm (men 2XL), and
	// a yoke goes on above it for some. Own choice.
	deepestByDefaultCm = 30.0
	// MaxRounds is the most rounds in a yoke: two metres at 10 rounds a cm.
	MaxRounds = 2_000
)

// Parts of the percentage system, in percent of the body's stitches. See
// percentageCited.
const (
	sleevePercent   = 33
	underarmPercent = 8
	neckPercent     = 40
)

// percentageFigures are the figures above in words.
const percentageFigures = "percentage system: sleeve 33 %, underarm 8 %, neck 40 %, depth a quarter of the body " +
	"(30 cm at the most, and a neck that goes over the head: own choice)"

// percentageCited is the source of a figure of the percentage system.
func percentageCited(figure string) report.Source {
	return report.Source{Figure: figure, Status: report.SourceStatusSecondHand,
		Citation: "E. Zimmermann, Knitting Without Tears (1971) and Knitting Around (1989), as worked out by another"}
}

// spreadCited is the source of places that are the Euclidean spread.
func spreadCited(figure string) report.Source {
	return report.Source{Figure: figure, Citation: spread.Cited, Status: report.SourceStatusOwnDerivation}
}

// joining is body and sleeves brought together on one needle.
type joining struct {
	body, sleeve, underarm int
	join                   int
}

// vetJoined asks what is asked of body and sleeves alike, whatever the yoke.
func vetJoined(c *fault.Checks, body int, sleeve, underarm *int) {
	c.RequiredCount("", "body_stitches", body, MinBody, stitch.MaxStitches)
	c.OptionalCount("", "sleeve_stitches", sleeve, MinSleeve, stitch.MaxStitches)
	c.OptionalCount("", "underarm_stitches", underarm, 0, MaxUnderarm)
}

// vetDepth asks the same of the depth.
func vetDepth(c *fault.Checks, cm *float64, rounds *int) {
	c.OptionalNumber("", "depth_cm", cm, measure.MinCm, MaxDepthCm)
	c.OptionalCount("", "depth_rounds", rounds, 1, MaxRounds)
	c.AtMostOne(cm != nil, rounds != nil, "depth_cm", "depth_rounds")
}

// settleJoin works out the stitches joined,
//
//	T = body + 2*sleeve - 4*underarm
//
// with the percentage system's counts where none are given. Of body and sleeve
// something must remain, and there may not be too many.
func settleJoin(c *fault.Checks, body int, sleeve, underarm *int) joining {
	j := joining{body: body, sleeve: fault.Or(sleeve, percent(body, sleevePercent)),
		underarm: fault.Or(underarm, percent(body, underarmPercent))}
	j.join = j.body + 2*j.sleeve - 4*j.underarm
	switch {
	case 2*j.underarm >= j.body || j.underarm >= j.sleeve:
		c.Infeasible("the underarms take "+report.CountOf(2*j.underarm, "stitches")+" of the body's "+strconv.Itoa(j.body)+
			" and "+strconv.Itoa(j.underarm)+" of each sleeve's "+strconv.Itoa(j.sleeve)+
			"; some of each must remain", "body_stitches", "sleeve_stitches", "underarm_stitches")
	case j.join > stitch.MaxStitches:
		c.Infeasible("body and sleeves join "+report.CountOf(j.join, "stitches")+"; at most "+strconv.Itoa(stitch.MaxStitches)+
			" are counted", "body_stitches", "sleeve_stitches")
	}
	return j
}

// settleDepth is the rounds from the join to the neck, and the field that they
// come from. Without one, the depth is a quarter of the body's circumference
// (percentage system), and 30 cm at the most.
func settleDepth(c *fault.Checks, st, rw gauge.Density, body int, depthCm *float64, depthRounds *int) (rounds int, field string) {
	switch {
	case depthRounds != nil:
		rounds, field = *depthRounds, "depth_rounds"
	case depthCm != nil:
		rounds, field = rw.Nearest(measure.Micrometres(*depthCm)), "depth_cm"
	default:
		rounds, field = min(quarter(st, rw, body), rw.Nearest(measure.Micrometres(deepestByDefaultCm))), "gauge"
	}
	if rounds < 1 || rounds > MaxRounds {
		c.Infeasible("the depth is "+report.CountOf(rounds, "rounds")+" at this gauge; it must be from 1 to "+
			strconv.Itoa(MaxRounds), field)
	}
	return rounds, field
}

// quarter is the rounds that are as deep as a quarter of so many stitches is wide,
//
//	stitches * rows of the gauge / (4 * stitches of the gauge)
//
// nearest, half-way up. Both are counted over one length, so that over a
// micrometre too they are as rows to stitches; st and rw must be of one gauge.
func quarter(st, rw gauge.Density, stitches int) int {
	rows, _ := rw.Exact(1)
	across, _ := st.Exact(1)
	return int(measure.HalfUpDiv(int64(stitches)*rows, 4*across))
}

// percent is p % of n, nearest, half-way up.
func percent(n, p int) int { return int(measure.HalfUpDiv(int64(n*p), 100)) }
