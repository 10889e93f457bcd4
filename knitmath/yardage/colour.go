package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// ColourWork is how several colours are worked.
type ColourWork int32

// The ways to work several colours.
const (
	ColourWorkUnspecified ColourWork = iota // stranded
	ColourWorkStranded
	ColourWorkStripes
	ColourWorkIntarsia
	ColourWorkSlipped
)

// MaxSlippedPercent leaves one of four stitches to be worked, without which there is no
// fabric.
const MaxSlippedPercent = 75.0

// MaxFloatSlackPercent is a float of twice the width that it passes: it hangs down.
const MaxFloatSlackPercent = 100.0

// vetColourWork checks how the colours are worked.
func vetColourWork(c *fault.Checks, in EstimateInput) {
	fault.Enum(c, "", "colour_work", in.ColourWork, ColourWorkSlipped)
	c.Needs(in.ColourWork != ColourWorkUnspecified, "colour_work", len(in.Colours) > 0, "colours")
	c.OptionalNumber("", "slipped_percent", in.SlippedPercent, 0, MaxSlippedPercent)
	c.OptionalNumber("", "float_slack_percent", in.FloatSlackPercent, 0, MaxFloatSlackPercent)
	if in.FloatSlackPercent != nil && !in.floats() {
		c.Add("float_slack_percent", fault.ReasonContradictory, "needs colours that float: stranded, or slipped")
	}
	switch slipped := in.ColourWork == ColourWorkSlipped; {
	case slipped && in.SlippedPercent == nil:
		c.Add("slipped_percent", fault.ReasonRequired, "is missing; say what share of all stitches is slipped")
	case !slipped && in.SlippedPercent != nil && c.Sound("slipped_percent"):
		c.Add("slipped_percent", fault.ReasonContradictory, "needs colour_work COLOUR_WORK_SLIPPED")
	}
}

// floats reports whether there are floats in the fabric.
func (in EstimateInput) floats() bool {
	return len(in.Colours) > 0 && in.ColourWork != ColourWorkStripes && in.ColourWork != ColourWorkIntarsia
}

// A ColourShare is one colour of several.
type ColourShare struct {
	Name         string
	SharePercent float64
}

// ColourYarn is the yarn of one colour, reserve included.
type ColourYarn struct {
	Name      string
	LengthM   Range
	MassG     *Range
	BallCount *int
}

// Ranges of the colours.
const (
	// MinColours: one colour alone is not stranded.
	MinColours = 2
	// MaxColours is the most colours carried in one row: more is not practical in
	// the hand.
	MaxColours = 5
	// MinSharePercent is the finest a share is read to.
	MinSharePercent = 1e-6
	// ShareTolerancePercent is how far the shares together may be from 100: thirds
	// are written 33.33.
	ShareTolerancePercent = 0.01
)

// vetShares checks the colours; there are none where one alone is worked with.
func vetShares(c *fault.Checks, field string, colours []ColourShare) {
	if len(colours) == 0 {
		return
	}
	c.Items("", field, len(colours), MaxColours)
	if !c.Sound(field) {
		return
	}
	if len(colours) < MinColours {
		c.Add(field, fault.ReasonOutOfRange, "has 1 item; stranded work has %d to %d colours: leave it empty for one colour",
			MinColours, MaxColours)
	}
	shares := make([]string, len(colours))
	for i, s := range colours {
		path := fault.Index(field, i)
		shares[i] = fault.Join(path, "share_percent")
		c.Text(path, "name", s.Name)
		c.RequiredNumber(path, "share_percent", s.SharePercent, MinSharePercent, 100)
	}
	if len(colours) < MinColours || !c.Sound(shares...) {
		return
	}
	vetWhole(c, colours, shares)
}

// vetWhole checks that sound shares make the whole.
func vetWhole(c *fault.Checks, colours []ColourShare, fields []string) {
	sum := sharesTogether(colours)
	if off := sum - 100e6; off > measure.ToMillionths(ShareTolerancePercent) || off < -measure.ToMillionths(ShareTolerancePercent) {
		c.Infeasible("the shares make "+measure.Decimal(float64(sum)/1e6, 6)+" % together; they must make 100 to within 0.01", fields...)
	}
}

// sharesTogether is the sum of the shares, in millionths of a percent.
func sharesTogether(colours []ColourShare) int64 {
	sum := int64(0)
	for _, s := range colours {
		sum += measure.ToMillionths(s.SharePercent)
	}
	return sum
}

// sharesOf are the shares of checked colours, which make exactly 1 together. None
// for one colour.
func sharesOf(colours []ColourShare) []float64 {
	var shares []float64
	sum := sharesTogether(colours)
	for _, s := range colours {
		shares = append(shares, float64(measure.ToMillionths(s.SharePercent))/float64(sum))
	}
	return shares
}

// strands is the yarn of a stranded fabric in two parts, in metres: what is in
// its stitches, and what one colour would take to float behind all of them.
//
// Every colour is carried in every row. In a fabric of N stitches, w of them to
// the cm, a colour with the share p of the stitches is worked in p*N of them and
// floats past the other (1-p)*N. A float is as long as the stitches it passes are wide,
// 1/w each, and its slack s:
//
//	length of the colour = p*N*l + (1-p)*N*(1+s)/w
//
// Over m colours the shares make 1, and the whole is N*l + (m-1)*N*(1+s)/w. Fully
// relaxed, 1/w is l/4.2, so that with the likely slack each colour beyond the first adds
// 30 % of the yarn of plain knitting at the same gauge.
//
// It holds for floats that are not caught, up to 5 stitches or an inch by common practice:
// longer ones are twisted with the colour in work, which takes more than is counted.
//
// Source: own derivation, as above.
type strands struct{ stitches, floats float64 }

// floatSlack is how long a float is beside the stitches that it passes: it takes a quarter
// to 0.35 of the yarn of a stitch, likely 0.30, where a straight one would take 1/4.2. Own
// derivation of the share model of stranded work; less than straight it cannot be.
var floatSlack = floatOfStitch.times(yarn.LoopsToAStitch)

// floatOfStitch is a float over one stitch as a part of the yarn of that stitch.
var floatOfStitch = Range{0.25, 0.30, 0.35}

// slack is floatSlack, or what the knitter knows of her own floats.
func (q *question) slack() Range {
	if s := q.in.FloatSlackPercent; s != nil {
		own := 1 + *s/100
		return Range{own, own, own}
	}
	return floatSlack
}

// floatsCited is the source of strands and floatSlack.
var floatsCited = report.Source{Figure: "floats", Status: report.SourceStatusOwnDerivation,
	Citation: "a colour not in use lies behind its neighbour: colour = share * stitches * l + (1 - share) * stitches * width * slack; " +
		"slack 1.05 to 1.47, likely 1.26, unless the question says its own: 0.25 to 0.35 of the yarn of a stitch, likely 0.30, at kw 4.2; " +
		"for floats that are not caught, up to 5 stitches or an inch"}

// as is the yarn by the way the colours are worked. Stripes and fields have no floats. In
// slipped-stitch work a row has one colour; a slipped stitch of it takes its width of
// float, slack included, instead of a loop:
//
//	(1 - slipped) * N*l + slipped * N/w
func (s strands) as(work ColourWork, slipped float64) strands {
	switch work {
	case ColourWorkStripes, ColourWorkIntarsia:
		return strands{stitches: s.stitches}
	case ColourWorkSlipped:
		return strands{stitches: (1-slipped)*s.stitches + slipped*s.floats}
	}
	return s
}

var slippedCited = report.Source{Figure: "slipped stitches", Status: report.SourceStatusOwnDerivation,
	Citation: "a slipped stitch takes a float of its width instead of a loop, with the slack of floats: 1.05 to 1.47, likely 1.26, unless " +
		"the question says its own"}

// add adds the strands of one piece.
func (s *strands) add(t strands) { s.stitches += t.stitches; s.floats += t.floats }

// of is the length of a colour with a share of the stitches.
func (s strands) of(share float64) float64 { return share*s.stitches + (1-share)*s.floats }

// total is the length of all m colours.
func (s strands) total(m int) float64 { return s.stitches + float64(m-1)*s.floats }
