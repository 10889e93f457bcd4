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
	RaisePlaceUnspecified RaisePlace = iota
	RaisePlaceBeforeBands
	RaisePlaceAfterBands
)

// Ranges of a back raise.
const (
	// DefaultRaiseRows is the usual rise.
	//
	// Source: back-neck short rows of the percentage system, Zimmermann, by way of
	// a digest.
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
	if in.RiseRows != nil && in.RiseCm != nil {
		c.Add("back_raise.rise_rows", fault.ReasonContradictory, "excludes rise_cm; give one of them")
		c.Add("back_raise.rise_cm", fault.ReasonContradictory, "excludes rise_rows; give one of them")
	}
	c.OptionalCount(field, "back_stitches", in.BackStitches, MinRaiseBack, stitch.MaxStitches)
	fault.Enum(c, field, "order", in.Order, shortrow.OrderShortestFirst)
	fault.Enum(c, field, "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	fault.Enum(c, field, "rounding", in.Rounding, measure.RoundingDown)
}

// vetSettleRaise places the raise and works it. All rounds begin at the right edge
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
func vetSettleRaise(c *fault.Checks, y *yoke, in CircularYokeInput) {
	raise := in.BackRaise
	r := y.raiseRound(raise.Place)
	if r == 0 {
		vetNoRaise(c, y, in)
		return
	}
	plan := BackRaisePlan{FirstRoundNumber: r, Stitches: y.countBefore(r)}
	plan.BackStitches = fault.Or(raise.BackStitches, plan.Stitches/2)
	rise, ok := vetRaiseRise(c, y, raise, &plan)
	switch {
	case !ok:
		return
	case plan.BackStitches >= plan.Stitches:
		c.Infeasible(fmt.Sprintf("the needle has %s on round %d; the back may have at most one fewer", report.CountOf(plan.Stitches, "stitches"), r),
			"back_raise.back_stitches")
		return
	case rise/2 > (plan.BackStitches-1)/2:
		c.Infeasible(fmt.Sprintf("a rise of %s needs %s on each side of the back, one stitch apart; %s hold a rise of at most %s",
			report.CountOf(rise, "rows"), report.CountOf(rise/2, "turns"), report.CountOf(plan.BackStitches, "stitches"), report.CountOf((plan.BackStitches-1)/2*2, "rows")),
			"back_raise."+riseField(raise), "back_raise.back_stitches")
		return
	case raise.TurnMethod == shortrow.TurnMethodYarnOver && plan.Stitches+rise > stitch.MaxStitches:
		c.Infeasible(fmt.Sprintf("the yarn overs would bring the needle to more than %d loops; turn another way", stitch.MaxStitches),
			"back_raise.turn_method")
		return
	}
	short := shortrow.RaiseRound(plan.Stitches, plan.BackStitches, rise, raise.Order, raise.TurnMethod)
	plan.RiseRows, plan.RiseCm, plan.TurnCount = rise, y.rw.SizeCm(rise), short.TurnCount
	plan.GreatestDepartureRows, plan.Rows = short.GreatestDepartureRows, short.Rows
	// Even decreases keep every place's share of the round, so that the rounds
	// begin half of the back's share before its centre all along.
	plan.BeginBeforeCentreStitches = int(measure.HalfUpDiv(int64(plan.BackStitches*y.join), int64(2*plan.Stitches)))
	y.raise = &plan
}

// riseField is the field that the rise comes from.
func riseField(r *BackRaise) string {
	if r.RiseCm != nil {
		return "rise_cm"
	}
	return "rise_rows"
}

// vetRaiseRise is the rise in rows, a whole number of pairs.
func vetRaiseRise(c *fault.Checks, y *yoke, raise *BackRaise, plan *BackRaisePlan) (rise int, ok bool) {
	num, den := int64(fault.Or(raise.RiseRows, DefaultRaiseRows)), int64(1)
	if raise.RiseCm != nil {
		num, den = y.rw.Exact(measure.Micrometres(*raise.RiseCm))
	}
	plan.AskedRiseRows = float64(num) / float64(den)
	rise = 2 * int(measure.RoundedDiv(num, 2*den, raise.Rounding))
	field := "back_raise." + riseField(raise)
	switch {
	case rise < 2:
		c.Infeasible("the rise is "+measure.Decimal(plan.AskedRiseRows, 2)+" rows and rounds to no pair of short rows; it takes 2 rows, or rounding up", field)
	case rise > MaxRaiseRows:
		c.Infeasible("the rise is "+measure.Decimal(plan.AskedRiseRows, 0)+" rows; at most "+strconv.Itoa(MaxRaiseRows)+" are planned", field)
	default:
		return rise, true
	}
	return 0, false
}

// raiseRound is the first of two plain rounds in succession for the raise: the
// nearest to the join below all bands, or the nearest to the neck above them.
// Without bands, below all decrease rounds, or the nearest to the neck. It is 0
// when there are none.
func (y yoke) raiseRound(place RaisePlace) int {
	busy := make([]bool, y.rounds+raiseRounds)
	for _, s := range y.steps {
		busy[s.round] = true
	}
	from, to := 1, y.rounds
	switch {
	case place == RaisePlaceBeforeBands && len(y.bands) > 0:
		to = y.bands[0].FirstRoundNumber - 1
	case place == RaisePlaceBeforeBands:
		to = y.steps[0].round - 1
	case len(y.bands) > 0:
		from = y.bands[len(y.bands)-1].LastRoundNumber + 1
	}
	found := 0
	for r := from; r+1 <= to; r++ {
		if !busy[r] && !busy[r+1] {
			if found = r; place == RaisePlaceBeforeBands {
				break
			}
		}
	}
	return found
}

// vetNoRaise refuses a raise for which there is no room.
func vetNoRaise(c *fault.Checks, y *yoke, in CircularYokeInput) {
	switch {
	case len(y.bands) > 0 && in.BackRaise.Place == RaisePlaceBeforeBands:
		c.Infeasible("the raise takes two plain rounds below the first band beside the change of count; "+
			"three plain rounds there would do, or a place after the bands", "bands[0].plain_before_rounds", "back_raise.place")
	case len(y.bands) > 0:
		c.Infeasible("the raise takes two plain rounds in succession above the last band; "+
			"a deeper yoke would do, or a place before the bands", y.depthField, "back_raise.place")
	case in.BackRaise.Place == RaisePlaceBeforeBands:
		c.Infeasible("the raise takes two plain rounds below the first decrease round; "+
			"a deeper yoke would do", y.depthField, "back_raise.place")
	default:
		c.Infeasible("the raise takes two plain rounds in succession; a deeper yoke would do, or fewer decrease rounds",
			y.depthField, "back_raise.place")
	}
}

// countBefore is the stitches on the needle before a round.
func (y yoke) countBefore(round int) int {
	n := y.join
	for _, s := range y.steps {
		if s.round < round {
			n = s.count
		}
	}
	return n
}

// raiseNotice says which way a rise went that is not a whole number of pairs.
func raiseNotice(raise *BackRaise, plan *BackRaisePlan) []report.Notice {
	if plan.AskedRiseRows == float64(plan.RiseRows) {
		return nil
	}
	return []report.Notice{{Reason: "RISE_ROUNDED", Field: "back_raise." + riseField(raise), Description: "asks for " + measure.Decimal(plan.AskedRiseRows, 2) +
		" rows; short rows come in pairs, and " + report.CountOf(plan.RiseRows, "rows") + " were planned"}}
}
