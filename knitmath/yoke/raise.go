package yoke

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// RaisePlace says where in the yoke the back is raised.
type RaisePlace int32

// The places.
const (
	RaisePlaceUnspecified RaisePlace = iota // refused: there is no default
	RaisePlaceBeforeBands                   // below all bands, or all decrease rounds
	RaisePlaceAfterBands                    // above them, as near the neck as may be
)

// Ranges of a back raise.
const (
	// DefaultRaiseRows is the usual rise. See raiseCited.
	DefaultRaiseRows = 6
	// MaxRaiseRows is the greatest rise: each short row comes back written out, and
	// no neck is raised by 20 cm.
	MaxRaiseRows = 200
	// MinRaiseBack is the fewest stitches that hold a pair of short rows with a
	// stitch beyond either turn.
	MinRaiseBack = 3
	// raiseRounds is how many plain rounds a raise takes: the one that the short
	// rows interrupt, and the one that closes the gaps of the wrong side.
	raiseRounds = 2
)

// A BackRaise asks for short rows across the back of a yoke.
type BackRaise struct {
	Place        RaisePlace
	RiseRows     *int
	RiseCm       *float64
	BackStitches *int
	Order        shortrow.Order
	TurnMethod   shortrow.TurnMethod
	Rounding     measure.Rounding
}

// A BackRaisePlan is the short rows across the back.
type BackRaisePlan struct {
	FirstRoundNumber          int
	Stitches                  int
	BackStitches              int
	BeginBeforeCentreStitches int
	AskedRiseRows             float64
	RiseRows                  int
	RiseCm                    float64
	TurnCount                 int
	Rows                      []shortrow.WedgeRow
	GreatestDepartureRows     float64

	method shortrow.TurnMethod
}

// vetBackRaise checks the raise for itself.
func vetBackRaise(c *fault.Checks, in *BackRaise) {
	if in == nil {
		return
	}
	const field = "back_raise"
	fault.RequiredEnum(c, field, "place", in.Place, RaisePlaceAfterBands)
	c.OptionalCount(field, "rise_rows", in.RiseRows, 1, MaxRaiseRows)
	c.OptionalNumber(field, "rise_cm", in.RiseCm, measure.MinCm, measure.MaxCm)
	c.AtMostOne(in.RiseRows != nil, in.RiseCm != nil, "back_raise.rise_rows", "back_raise.rise_cm")
	c.OptionalCount(field, "back_stitches", in.BackStitches, MinRaiseBack, stitch.MaxStitches)
	fault.Enum(c, field, "order", in.Order, shortrow.OrderShortestFirst)
	fault.Enum(c, field, "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	fault.Enum(c, field, "rounding", in.Rounding, measure.RoundingDown)
}

// settleRaise places the raise and works it. All rounds begin at the right edge
// of the back's W stitches, of N on the needle. On the first of two plain rounds
// the short rows go to and fro over the back,
//
//	k to W - t, turn; p to t, turn; and so on
//
// where t are the turns of a wedge that is tall in the centre (see PlanWedge); the
// right side then works on to the end of the round and closes the gaps that it
// passes. The gaps of the wrong side lie before the first of its stitches; the
// round after closes them from the right side. So 2n rows more lie under the
// middle of the back than under the front, which gets no round more.
//
// Source: own derivation.
func settleRaise(c *fault.Checks, y *circular, in CircularInput) {
	raise := in.BackRaise
	if raise == nil {
		return
	}
	first := y.raiseRound(raise.Place)
	if first == 0 {
		refuseRaise(c, y, in)
		return
	}
	plan := BackRaisePlan{FirstRoundNumber: first, Stitches: y.countBefore(first), method: raise.TurnMethod}
	plan.BackStitches = fault.Or(raise.BackStitches, plan.Stitches/2)
	settleRise(c, y, raise, &plan)
	if c.Err() == nil {
		vetRaise(c, raise, plan)
	}
	if c.Err() != nil {
		return
	}
	short := shortrow.RaiseRound(plan.Stitches, plan.BackStitches, plan.RiseRows, raise.Order, raise.TurnMethod)
	plan.TurnCount, plan.GreatestDepartureRows, plan.Rows = short.TurnCount, short.GreatestDepartureRows, short.Rows
	// Even decreases keep every place's share of the round, so that the rounds
	// begin half of the back's share before its centre all along.
	plan.BeginBeforeCentreStitches = int(measure.HalfUpDiv(int64(plan.BackStitches*y.join), int64(2*plan.Stitches)))
	y.raise = &plan
}

// vetRaise checks that the back holds the rise.
func vetRaise(c *fault.Checks, raise *BackRaise, plan BackRaisePlan) {
	turns, most := plan.RiseRows/2, (plan.BackStitches-1)/2
	switch {
	case plan.BackStitches >= plan.Stitches:
		c.Infeasible(fmt.Sprintf("the needle has %s on round %d; the back may have at most one fewer",
			report.CountOf(plan.Stitches, "stitches"), plan.FirstRoundNumber), "back_raise.back_stitches")
	case turns > most:
		c.Infeasible(fmt.Sprintf("a rise of %s needs %s on each side of the back, one stitch apart; %s hold a rise of at most %s",
			report.CountOf(plan.RiseRows, "rows"), report.CountOf(turns, "turns"),
			report.CountOf(plan.BackStitches, "stitches"), report.CountOf(2*most, "rows")), raiseFields(raise)...)
	case raise.TurnMethod == shortrow.TurnMethodYarnOver && plan.Stitches+plan.RiseRows > stitch.MaxStitches:
		c.Infeasible(fmt.Sprintf("the yarn overs would bring the needle to more than %d loops; turn another way", stitch.MaxStitches),
			"back_raise.turn_method")
	}
}

// raiseFields are rise and width of a raise, or where neither was given the raise itself.
func raiseFields(r *BackRaise) []string {
	if r.RiseCm == nil && r.RiseRows == nil && r.BackStitches == nil {
		return []string{"back_raise"}
	}
	return []string{riseField(r), "back_raise.back_stitches"}
}

// riseField is the field that the rise comes from.
func riseField(r *BackRaise) string {
	if r.RiseCm != nil {
		return "back_raise.rise_cm"
	}
	return "back_raise.rise_rows"
}

// settleRise settles the rise in rows, a whole number of pairs.
func settleRise(c *fault.Checks, y *circular, raise *BackRaise, plan *BackRaisePlan) {
	num, den := int64(fault.Or(raise.RiseRows, DefaultRaiseRows)), int64(1)
	if raise.RiseCm != nil {
		num, den = y.rw.Exact(measure.Micrometres(*raise.RiseCm))
	}
	plan.AskedRiseRows = float64(num) / float64(den)
	plan.RiseRows = 2 * int(measure.RoundedDiv(num, 2*den, raise.Rounding))
	plan.RiseCm = y.rw.SizeCm(plan.RiseRows)
	switch {
	case plan.RiseRows < 2:
		c.Infeasible("the rise is "+measure.Decimal(plan.AskedRiseRows, 2)+" rows and rounds to no pair of short rows; "+
			"it takes 2 rows, or rounding up", riseField(raise))
	case plan.RiseRows > MaxRaiseRows:
		c.Infeasible("the rise is "+measure.Decimal(plan.AskedRiseRows, 0)+" rows; at most "+strconv.Itoa(MaxRaiseRows)+
			" are planned", riseField(raise))
	}
}

// raiseCited are the sources of a raise.
var raiseCited = []report.Source{
	percentageCited("short rows across the back, 6 rows unless asked otherwise"),
	{Figure: "places of the turns", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: of the steps that depart little more than the nearest turns do from a profile that falls evenly " +
			"from the centre of the back to both its edges, those with the least to remember"},
	{Figure: "ways of turning and closing the gap", Citation: "common practice", Status: report.SourceStatusCommonPractice},
}
