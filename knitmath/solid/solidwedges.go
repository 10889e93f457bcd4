package solid

import (
	"math"
	"slices"
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
	total int   // stitches of all of them
}

// The wedges that a solid has unless asked otherwise: as many as are read of balls, or so many
// fewer or more with which it comes nearer. Common practice.
const (
	likedShortWedges  = 8
	fewestShortWedges = 5
	mostShortWedges   = 14
)

// maxMeridianStitches is how many stitches the meridian may have: a point of the wedge's profile
// for each end of one.
const maxMeridianStitches = shortrow.MaxProfilePoints - 1

// settleShortWedges settles a solid of short rows: its stitches lie along the meridian, and its rows
// run round it. With r(s) the radius under the middle of a stitch, n wedges have there
//
//	rows of each = 2 pi r(s) * rows per cm / n
//
// two of them over all stitches, and the rest in pairs of short rows.
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
	switch asked := in.WedgeCount; {
	case asked != nil && *asked < least:
		c.Infeasible("at this gauge wedges so few are steeper than turns a stitch apart; use at least "+report.CountOf(least, "wedges"),
			"wedge_count", "gauge.rows")
		return
	case least > MaxSolidWedges:
		c.Infeasible("at this gauge it would take more wedges than there may be", "gauge.rows")
		return
	case asked != nil:
		b.wedges = *asked
	default:
		b.wedges = b.nearestWedges(least)
	}
	b.knitWedges(c)
}

// nearestWedges is the number of wedges that have to be stretched least, of those about the usual;
// each more or fewer counts as two percent.
func (b *revolved) nearestWedges(least int) int {
	best, found := 0, math.Inf(1)
	for n := max(least, fewestShortWedges); n <= max(least, mostShortWedges); n++ {
		if best > 0 && pairedRows(slices.Max(b.wanted)/float64(n)) < 4 {
			break // no short row is left
		}
		b.wedges = n
		narrow, _ := b.stretched(b.reachable())
		if off := math.Abs(narrow-1) + float64(measure.Abs(n-likedShortWedges))/50; off < found-1e-9 {
			best, found = n, off
		}
	}
	return best
}

// reachable is how many stitches the wedges are to have: those of the surface, and what they must
// have beyond it at closed ends, where each has two rows; as much of that as half of what they
// may be off, so that the rest of the surface pays for no more.
func (b *revolved) reachable() float64 {
	surface, ends := 0.0, 0.0
	for _, rows := range b.wanted {
		surface += rows
		ends += max(float64(2*b.wedges)-rows, 0)
	}
	return surface + min(ends, mayBeOff(surface, slices.Max(b.wanted))/2)
}

// mayBeOff is how many stitches wedges may have more or fewer than the surface: 1 % of it, or one
// for each row round the widest place.
func mayBeOff(surface, rows float64) float64 { return max(0.01*surface, rows) }

// pairedRows are the rows of a wedge that are nearest to so many: two at least, in pairs.
func pairedRows(rows float64) int { return 2 * max(int(measure.RoundHalfUp(rows/2)), 1) }

// The least and the most that a wedge is stretched to, so that its pairs of rows are as many
// stitches as the surface has; stretchTries is how often what lies between is halved.
const (
	narrowest, widest = 0.8, 1.25
	stretchTries      = 12
)

// stretched are two stretches beside one another: of wedges that have too few stitches, all of
// them together, or just enough, and of wedges that have too many.
func (b *revolved) stretched(wanted float64) (narrow, wide float64) {
	narrow, wide = narrowest, widest
	for range stretchTries {
		middle := (narrow + wide) / 2
		if float64(b.planned(middle)*b.wedges) > wanted {
			wide = middle
		} else {
			narrow = middle
		}
	}
	return narrow, wide
}

// planned is how many stitches a wedge has that is stretched so much, without double ones.
func (b *revolved) planned(stretch float64) int {
	total := 0
	for _, w := range b.wanted {
		total += pairedRows(w * stretch / float64(b.wedges))
	}
	return total
}

// enough is how near the stitches of equal wedges come to those of the surface, as a part of
// them, so that no other kind is mixed among them. Own choice.
const enough = 0.006

// knitWedges has the wedges planned: of one kind where that is enough, or of two that differ by
// as little as can be, so many of each that they have the stitches of the surface. Double
// stitches have a row more, so that wedges with them are planned narrower in a second try.
func (b *revolved) knitWedges(c *fault.Checks) {
	surface := 0.0
	for _, rows := range b.wanted {
		surface += rows
	}
	for _, target := range [2]float64{b.reachable(), surface} {
		if !b.mixed(target) {
			c.Infeasible("its wedges would be no wedges: too small, or as high at one end as at the other; work it in rounds",
				append(fieldsOf(b.in), "way")...)
			return
		}
		off := -surface
		for _, rows := range b.counts {
			off += float64(rows)
		}
		if math.Abs(off) <= mayBeOff(surface, float64(b.wedge.mostRows)) {
			return
		}
	}
	c.Infeasible("it is too small for "+report.CountOf(b.wedges, "wedges")+", which have two rows each at its ends; work it in rounds",
		append(fieldsOf(b.in), "way")...)
}

// mixed has wedges planned that have so many stitches all together, and reports whether that can
// be done.
func (b *revolved) mixed(wanted float64) bool {
	target := wanted
	var kinds [2]WedgeKind
	for range 2 {
		narrow, wide := b.stretched(target)
		few, ok := b.kind(narrow)
		many, also := b.kind(wide)
		if !also {
			return false
		}
		if !ok {
			few = many
		}
		kinds = [2]WedgeKind{few, many}
		if b.in.TurnMethod != shortrow.TurnMethodGerman {
			break
		}
		target = wanted - float64((few.total-b.planned(narrow))*b.wedges)
	}
	n, few, many := float64(b.wedges), float64(kinds[0].total), float64(kinds[1].total)
	second := 0
	switch {
	case math.Abs(n*few-wanted) <= enough*wanted:
	case math.Abs(n*many-wanted) <= enough*wanted || few >= many:
		second = b.wedges
	default:
		second = int(min(max(measure.RoundHalfUp((wanted-n*few)/(many-few)), 0), int64(b.wedges)))
	}
	b.mix(kinds, second)
	return true
}

// mix puts the wedges in order, so many of them of the second kind, evenly among the others.
func (b *revolved) mix(kinds [2]WedgeKind, second int) {
	plan := &shortWedges{}
	kinds[0].Times, kinds[1].Times = b.wedges-second, second
	for _, k := range kinds {
		if k.Times > 0 {
			plan.kinds = append(plan.kinds, k)
		}
	}
	for i := range b.wedges {
		plan.sequence = shortrow.AppendWedge(plan.sequence, 1+spread.Share(i, b.wedges, second)*(len(plan.kinds)-1))
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
}

// kind has a wedge planned that is stretched so much.
func (b *revolved) kind(stretch float64) (WedgeKind, bool) {
	points := make([]float64, len(b.wanted)+1)
	each := stretch * 2 * math.Pi * b.rw.PerCm() / float64(b.wedges)
	for i := range points {
		points[i] = max(each*b.way.at(float64(i)*b.high).radius-2, 0)
	}
	wedge, err := shortrow.PlanWedge(shortrow.WedgeInput{WidthStitches: len(b.wanted), ProfileRows: points, TurnMethod: b.in.TurnMethod})
	if err != nil {
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
	for _, rows := range k.under {
		k.total += rows
	}
	return k, true
}

// wedgeAnswer is the answer of a solid of wedges.
func (b *revolved) wedgeAnswer() Solid {
	n := len(b.counts)
	out := Solid{StartStitches: n, EndStitches: n, MostStitches: n, WedgeCount: b.wedges, MeridianCm: b.way.length(), Wedges: b.wedge.kinds,
		Sequence: b.wedge.sequence, MostRows: b.wedge.mostRows, GreatestDepartureRows: b.wedge.departure,
		AcrossCm: b.rw.SizeCm(b.wedge.mostRows) / math.Pi}
	for i, rows := range b.counts {
		out.TotalStitches += rows
		out.WantedTotalStitches += b.wanted[i]
	}
	return out
}

// wedgeDirections write a solid of wedges.
func (o Solid) wedgeDirections() []string {
	n := report.CountOf(o.StartStitches, "stitches")
	ends := [...]string{"top", "base"}
	if o.of.in.Start == StartTop {
		ends = [...]string{"base", "top"}
	}
	d := []string{"Cast on " + n + " (provisionally to graft the ends). Right-side rows begin at the " + ends[1] + " and end at the " +
		ends[0] + ".", shortrow.Technique(o.of.in.TurnMethod)}
	if len(o.Wedges) > 1 {
		d = append(d, "Work "+report.CountOf(o.WedgeCount, "wedges")+": "+shortrow.OrderWords(o.Sequence)+
			". The rows of each follow, written once; nothing is cast on or bound off between them.")
	}
	for i, k := range o.Wedges {
		if len(o.Wedges) > 1 {
			d = append(d, "Wedge "+strconv.Itoa(i+1)+":")
		}
		for _, r := range k.Rows {
			d = append(d, "Row "+strconv.Itoa(r.RowNumber)+" ("+r.Side.String()+"): "+r.Instruction.Row.Text()+".")
		}
	}
	if len(o.Wedges) == 1 {
		again := strconv.Itoa(o.WedgeCount-1) + " more times"
		if o.WedgeCount < 4 {
			again = report.Times(o.WedgeCount-1) + " more"
		}
		d = append(d, "Repeat rows 1-"+strconv.Itoa(len(o.Wedges[0].Rows))+" "+again+". These are "+
			report.CountOf(o.WedgeCount, "wedges")+".")
	}
	closed := 0
	for i, open := range [...]bool{o.openFirst, o.openLast} {
		if !open {
			closed++
			d = append(d, "Close the "+ends[1-i]+
				": run a thread through the edge stitch of every second row there, draw it tight and fasten it.")
		}
	}
	seam := "Bind off and sew that edge to the cast-on edge, or graft the stitches to those of the provisional cast-on, " +
		"which adds a row."
	if closed == 2 {
		seam += " Stuff it before the last of the seam is closed."
	}
	return append(d, seam)
}
