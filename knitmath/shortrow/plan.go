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
// 2n, 0, 2n at both sides; a curve brings its own.
//
// The turns of a straight wedge lie nearest to the profile h stitches from the tall
// point of a flank of L,
//
//	h = L * (2i + 1) / 2n,  i = 0 .. n-1
//
// each at the nearest stitch, which gives every stitch the pairs nearest to the
// profile: the fabric is nowhere more than one row from it. Turns whose doubles have a
// row more lie half a stitch nearer the tall point, and as far from an edge as leaves
// the edge stitch single: such fabric is nowhere more than a pair from the profile.
// Interleaved, these are the turns. Grouped, their steps are sorted, and refused
// where they leave the profile by more than a pair. Left to itself, the plan is that of
// least effort, in one or two runs of equal steps, that departs by no more than
// ToleranceRows, 1 if it is nil, beyond what the nearest turns do. Where there is none
// the nearest turns are the plan, and a notice says so. By default the fabric is so
// nowhere more than a pair from the profile, or three rows with double stitches.
//
// Of a curve every stitch gets the whole number of pairs nearest to the height under
// its middle, half-way up, to within one row; with double stitches to within a pair
// or so, and one that leaves it by more says so.
//
// Short rows come in pairs, out and back, so a rise is a whole number of pairs:
// rounded as asked, an odd rise up unless said otherwise.
//
// WidthStitches must be in [2, 10000], heights in [0, 2000] rows and ToleranceRows in
// [0, 100]. Neighbouring turns are at least a stitch apart. A straight wedge that is
// steeper is refused with the most rows that fit; a curve is eased where it is
// steeper, and a notice says where and by how much.
//
// Source: own derivation.
func PlanWedge(in WedgeInput) (Wedge, error) {
	var c fault.Checks
	w, st, rw := vetWedge(&c, in)
	if err := c.Err(); err != nil {
		return Wedge{}, err
	}
	p := w.place(in)
	list := spans(p.planned, w.shortest)
	w.vetSpans(&c, p.planned, list)
	if err := c.Err(); err != nil {
		return Wedge{}, err
	}
	out := w.knit(list)
	out.unit, out.AskedRiseRows, out.PairCount = in.DisplayUnit, w.asked, slices.Max(p.planned)
	out.RiseRows = slices.Max(out.heights) - slices.Min(out.heights)
	out.GreatestDepartureRows, out.easy = w.profile.departure(out.heights), p.easy && p.wanting == nil
	if p.nearest != nil {
		least := w.profile.departure(shortRowHeights(w.width, spans(p.nearest, w.shortest), w.method))
		out.LeastDepartureRows = &least
	}
	if in.Spread == TurnSpreadGrouped && out.GreatestDepartureRows > maxDeparture {
		c.Infeasible("grouped turns would leave the profile by "+measure.Decimal(out.GreatestDepartureRows, 2)+
			" rows, which is more than a pair; use another spread", "spread")
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
	out.Notices = w.notices(out, p)
	return out, nil
}

// placed is the turns of a wedge as the pairs of rows that they give every stitch.
type placed struct {
	wanted, planned []int
	nearest         []int // of a straight wedge: those of the turns nearest to the profile
	easy            bool  // the turns are, or were to be, those of least effort
	// wanting is how much more the turns would have to be allowed to depart to be
	// easy; nil where they are, or were not to be.
	wanting *float64
}

// place chooses the turns.
func (w wedge) place(in WedgeInput) placed {
	if w.tall == TallEndUnspecified {
		p := placed{wanted: w.profile.pairs(w.rounding)}
		p.planned, _ = eased(p.wanted)
		if w.method == TurnMethodGerman {
			p.planned = clearOfDoubles(p.planned, w.tall)
		}
		return p
	}
	var p placed
	f := w.flank()
	places := f.line().Nearest()
	p.nearest = f.pairs(places)
	switch in.Spread {
	case TurnSpreadInterleaved:
	case TurnSpreadGrouped:
		places = grouped(places)
	default:
		p.easy = true
		var ok bool
		if places, ok = f.easy(fault.Or(in.ToleranceRows, defaultTolerance), w.shortest); !ok {
			wanting := f.wanting(w.shortest)
			p.wanting = &wanting
		}
	}
	p.planned = f.pairs(places)
	p.wanted = p.planned
	return p
}

// defaultTolerance is half a pair of rows. Equal groups of stitches from edge to edge, as
// the trade prints a shoulder, leave a whole group at either end where the profile
// wants half a one: turns that depart by 1 - n/L rows at least then depart by
// 2n/(n+1) - n/L, which is less than a row more.
const defaultTolerance = 1.0

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
	turns := sequences(s.turns, w.width)
	return Wedge{
		TurnCount: len(s.turns), Turns: turns, Rows: s.rows,
		FullRows: full, TallRows: full + slices.Max(heights),
		Effort: effort(turns, w.width, w.shortest),
		width:  w.width, shortest: w.shortest, method: w.method,
		heights: heights,
	}
}

// run is the part of the width over which a straight wedge rises.
func (w wedge) run() float64 { return 1 / float64(w.flanks()) }
