package shortrow

import (
	"math"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// PlanWedge places the turns of a short-row wedge across W stitches. The height
// wanted is a profile: straight lines through points equally spaced over the
// width. A wedge that rises by n pairs has the points 2n, 0 rows from the right
// edge when it is tall there; 0, 2n when tall at the left; 0, 2n, 0 at the centre;
// 2n, 0, 2n at both sides; a curve brings its own. Under the middle of stitch x
// every stitch gets the whole number of pairs nearest to that height,
//
//	pairs(x) = round(profile(x) / 2)     half-way up
//
// so that the fabric is never more than one row from the profile. A stitch pulled
// into a double has one row more, and the first turn lies a stitch further from an
// edge where that would be the edge stitch: such a wedge is never more than a pair
// from the profile, nor are grouped turns, which are refused otherwise. A curve
// whose double stitches leave it by more says so.
// Short rows come in pairs, out and back, so a rise is a whole number of pairs:
// rounded as asked, an odd rise up unless said otherwise.
//
// WidthStitches must be in [2, 10000] and heights in [0, 2000] rows. Neighbouring
// turns are at least a stitch apart. A straight wedge that is steeper is refused
// with the most rows that fit; a curve is eased where it is steeper, and a notice
// says where and by how much.
//
// Source: own derivation.
func PlanWedge(in WedgeInput) (Wedge, error) {
	var c fault.Checks
	w, st, rw := vetWedge(&c, in)
	if err := c.Err(); err != nil {
		return Wedge{}, err
	}
	wanted, planned := w.heights(in.Spread)
	list := spans(planned, w.shortest)
	w.vetSpans(&c, planned, list)
	if err := c.Err(); err != nil {
		return Wedge{}, err
	}
	out := w.knit(list)
	out.unit, out.AskedRiseRows, out.PairCount = in.DisplayUnit, w.asked, slices.Max(planned)
	out.RiseRows = slices.Max(out.heights) - slices.Min(out.heights)
	out.GreatestDepartureRows = w.profile.departure(out.heights)
	if in.Spread == TurnSpreadGrouped && out.GreatestDepartureRows > maxDeparture {
		c.Infeasible("grouped turns would leave the profile by "+measure.Decimal(out.GreatestDepartureRows, 2)+
			" rows, which is more than a pair; use the interleaved spread", "spread")
		return Wedge{}, c.Err()
	}
	if in.Gauge != nil {
		rise := rw.SizeCm(out.RiseRows)
		out.RiseCm = &rise
		if w.tall != TallEndUnspecified {
			angle := math.Atan(rise/(st.SizeCm(w.width)*w.run())) * 180 / math.Pi
			out.RiseAngleDegrees = &angle
		}
	}
	if in.WithOutline {
		out.Outline = w.outline(out, st, rw)
	}
	out.Notices = w.notices(out, wanted, planned)
	return out, nil
}

// heights is, for every stitch, the pairs of rows that are wanted, and those that
// turns can make.
func (w wedge) heights(order TurnSpread) (wanted, planned []int) {
	wanted = w.profile.pairs(w.rounding)
	if order == TurnSpreadGrouped {
		wanted = grouped(wanted, w.tall)
	}
	planned, _ = eased(wanted)
	if w.method == TurnMethodGerman {
		planned = clearOfDoubles(planned, w.tall)
	}
	return wanted, planned
}

// vetSpans checks that there are short rows to plan, and not too many.
func (w wedge) vetSpans(c *fault.Checks, planned []int, list []span) {
	switch {
	case level(planned):
		c.Infeasible("too few stitches for one short row with a stitch beyond its double one; turn another way", w.riseField, "turn_method")
	case len(list) > MaxWedgeSpans:
		c.Infeasible("the curve takes "+report.CountOf(len(list), "pairs")+" of short rows; at most "+
			strconv.Itoa(MaxWedgeSpans)+" are planned", w.riseField)
	}
}

// wedge is a checked question.
type wedge struct {
	width     int
	profile   profile
	tall      TallEnd // unspecified for a curve
	asked     float64 // rows, before rounding
	rounding  measure.Rounding
	shortest  bool // shortest row first
	method    TurnMethod
	riseField string
}

// knit writes the rows.
func (w wedge) knit(list []span) Wedge {
	s := shortRows{width: w.width, method: w.method, rows: make([]WedgeRow, 0, 2*len(list)+2), turns: make([]turn, 0, 2*len(list))}
	if w.tall == TallEndLeft {
		s.workFromLeft(list)
	} else {
		s.work(list)
	}
	heights := shortRowHeights(w.width, list, w.method)
	full := len(s.rows) - 2*len(list)
	return Wedge{
		TurnCount: len(s.turns), Turns: sequences(s.turns, w.width), Rows: s.rows,
		FullRows: full, TallRows: full + slices.Max(heights),
		width: w.width, shortest: w.shortest, method: w.method,
		heights: heights,
	}
}

// run is the part of the width over which a straight wedge rises.
func (w wedge) run() float64 { return 1 / float64(w.flanks()) }
