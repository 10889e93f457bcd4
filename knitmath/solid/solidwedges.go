package solid

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shortWedges are those of a solid of short rows.
type shortWedges struct {
	kinds     []WedgeKind
	sequence  []shortrow.CircleWedgeRun
	mostRows  int     // of all together, at the widest
	departure float64 // of those under a stitch from what the surface has, where that is two for each or more
}

// A WedgeKind is a wedge, and of how many.
type WedgeKind struct {
	Rows  []shortrow.WedgeRow
	Times int

	under []int // rows under each stitch
}

// The wedges that a solid has unless asked otherwise: as many as are read of balls, or so many
// fewer or more. Common practice.
const (
	likedShortWedges  = 8
	fewestShortWedges = 5
	mostShortWedges   = 14
)

// maxMeridianStitches is how many stitches the meridian may have.
const maxMeridianStitches = shortrow.MaxProfilePoints - 1

// settleShortWedges settles a solid of short rows: its stitches lie along the meridian, and its rows
// run round it. With r(s) the radius under the middle of a stitch, n wedges have there
//
//	rows of each = 2 pi r(s) * rows per cm / n
//
// two of them over all stitches, and the rest in pairs of short rows. Where n wedges of one kind
// are too narrow or too wide, some have a pair more at the widest place than the others.
func settleShortWedges(c *fault.Checks, b *revolved, in SolidInput) {
	stitches := measure.RoundHalfUp(min(b.way.length()*b.st.PerCm(), 1e9))
	if stitches < 4 || stitches > maxMeridianStitches {
		c.Infeasible("from end to end it would have "+report.CountOf(int(stitches), "stitches")+"; there must be from 4 to "+
			strconv.Itoa(maxMeridianStitches), append(fieldsOf(in), "gauge.stitches")...)
		return
	}
	b.high = b.way.length() / float64(stitches)
	b.wanted = make([]float64, stitches)
	for i := range b.wanted {
		b.wanted[i] = 2 * math.Pi * b.way.at((float64(i)+0.5)*b.high).radius * b.rw.PerCm()
	}
	// A pair of rows a stitch is as steep as turns can lie; double stitches take one of them.
	least := max(measure.CeilQuotient(math.Pi*b.rw.PerCm()/b.st.PerCm(), 1), 1)
	fewest, most := max(least, fewestShortWedges), max(least, mostShortWedges)
	switch asked := in.WedgeCount; {
	case asked != nil && *asked < least:
		c.Infeasible("at this gauge wedges so few are steeper than turns a stitch apart", "wedge_count", "gauge.rows")
		return
	case least > MaxSolidWedges:
		c.Infeasible("at this gauge it would take more wedges than there may be", "gauge.rows")
		return
	case asked != nil:
		fewest, most = *asked, *asked
	}
	b.knitWedges(c, fewest, most)
}

// knitWedges has the plan worked that is liked best of those that fit.
func (b *revolved) knitWedges(c *fault.Checks, fewest, most int) {
	round := slices.Max(b.wanted)
	var plans []wedgePlan
	for n := fewest; n <= most; n++ {
		plans = append(plans, plansOf(n, round)...)
	}
	sort.SliceStable(plans, func(i, j int) bool { return plans[i].disliked < plans[j].disliked })
	worked, best, found := false, math.Inf(1), revolved{}
	for _, p := range plans {
		if p.disliked >= best {
			break // no other is as good, however near its stitches come
		}
		target := b.reachable(p.count)
		for range 2 {
			if p.shift = b.shiftFor(p, target); !b.work(p) {
				break
			}
			worked = true
			off := -b.surface
			for _, rows := range b.counts {
				off += float64(rows)
			}
			if math.Abs(off) <= mayBeOff(b.surface, float64(b.wedge.mostRows)) &&
				math.Abs(float64(b.wedge.mostRows)-round) <= mayBeOffRound(round) {
				if liked := p.disliked + max(math.Abs(off)/b.surface-mayBeOffPart, 0); liked < best {
					best, found = liked, *b
				}
				break
			}
			target -= off // double stitches have a row more, and steep flanks are eased
		}
	}
	if found.wedge != nil {
		*b = found
		return
	}
	detail := "its wedges would be no wedges: too small, or as high at one end as at the other"
	if worked {
		detail = "it is too small for wedges, which have two rows each at its ends"
	}
	inRounds := b.in
	if inRounds.Way, inRounds.TurnMethod = WayRounds, 0; b.in.Way == WayWedges {
		if _, err := planSolid(inRounds); err == nil {
			detail += "; in rounds it is planned"
		}
	}
	fields := append(fieldsOf(b.in), "way")
	if b.in.WedgeCount != nil {
		fields = append(fields, "wedge_count")
	}
	c.Infeasible(detail, fields...)
}

// reachable is how many stitches so many wedges are to have: those of the surface, and what they
// must have beyond it at closed ends, where each has two rows; as much of that as half of what
// they may be off, so that the rest of the surface pays for no more.
func (b *revolved) reachable(wedges int) float64 {
	ends, round := 0.0, 0.0
	for _, rows := range b.wanted {
		ends += max(float64(2*wedges)-rows, 0)
		round = max(round, rows)
	}
	return b.surface + min(ends, mayBeOff(b.surface, round)/2)
}

// mayBeOffRound is how many rows too many or too few may lie round the widest place: 3 % of them,
// or a pair where they are few. Own choice.
func mayBeOffRound(rows float64) float64 { return max(0.03*rows, 2) }

// work writes the wedges of a plan, and reports whether they are wedges.
func (b *revolved) work(p wedgePlan) bool {
	plan := &shortWedges{}
	order := [...]int{0, 1} // the kind that is worked first is wedge 1
	if spread.Share(0, p.count, p.high) == 1 {
		order = [...]int{1, 0}
	}
	var number [2]int
	for _, kind := range order {
		times := [...]int{p.low, p.high}[kind]
		if times == 0 {
			continue
		}
		k, ok := b.kind(p, p.pairs+kind)
		if !ok {
			return false
		}
		k.Times = times
		plan.kinds = append(plan.kinds, k)
		number[kind] = len(plan.kinds)
	}
	b.wedges = p.count
	for i := range b.wedges {
		plan.sequence = shortrow.AppendWedge(plan.sequence, number[spread.Share(i, b.wedges, p.high)])
	}
	b.counts = make([]int, len(b.wanted))
	for i, wanted := range b.wanted {
		for _, k := range plan.kinds {
			b.counts[i] += k.Times * k.under[i]
		}
		if wanted >= float64(2*b.wedges) {
			plan.departure = max(plan.departure, math.Abs(float64(b.counts[i])-wanted))
		}
	}
	plan.mostRows = slices.Max(b.counts)
	b.wedge = plan
	return true
}

// kind writes a wedge of so many pairs at the widest place.
func (b *revolved) kind(p wedgePlan, pairs int) (WedgeKind, bool) {
	short := make([]int, len(b.wanted))
	scale := float64(pairs) / slices.Max(b.wanted)
	for i, wanted := range b.wanted {
		short[i] = pairsAt(wanted*scale+p.shift, pairs) - 1 // one pair lies over all stitches
	}
	wedge, ok := shortrow.Hump(short, b.in.TurnMethod)
	if !ok {
		return WedgeKind{}, false
	}
	k := WedgeKind{Rows: wedge.Rows, under: wedge.RowsUnder()}
	if n := len(b.wanted); len(k.Rows)%2 == 1 { // so that every wedge begins as the first did
		k.Rows = append(k.Rows, shortrow.WedgeRow{RowNumber: len(k.Rows) + 1, Side: stitch.WrongSide,
			Instruction: stitch.Instruction{Row: stitch.RowOf(stitch.Do(stitch.Purl, n)), StartStitches: n, EndStitches: n}})
		for i := range k.under {
			k.under[i]++
		}
	}
	return k, true
}

// wedgeAnswer is the answer of a solid of wedges.
func (b *revolved) wedgeAnswer() Solid {
	n := len(b.counts)
	out := Solid{StartStitches: n, EndStitches: n, GreatestStitches: n, WedgeCount: b.wedges, MeridianCm: b.way.length(),
		WantedTotalStitches: b.surface,
		Wedges:              b.wedge.kinds, Sequence: b.wedge.sequence, GreatestRows: b.wedge.mostRows, GreatestDepartureRows: b.wedge.departure,
		AcrossCm: b.rw.SizeCm(b.wedge.mostRows) / math.Pi}
	for _, rows := range b.counts {
		out.TotalStitches += rows
	}
	return out
}
