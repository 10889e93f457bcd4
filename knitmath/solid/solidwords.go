package solid

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of notices on solids.
const (
	// ToyCare: both ends are closed, so that the piece may become a toy. Field is empty.
	ToyCare report.Reason = "TOY_CARE"
	// SurfaceUnmet: all stitches together are over 1 % and over a stitch a round from those of the surface. Field is
	// that of its size.
	SurfaceUnmet report.Reason = "SURFACE_UNMET"
	// SmallPart: the piece fits the cylinder for small parts. Field is that of its size.
	SmallPart report.Reason = "SMALL_PART"
	// LimbUnround: the ring of a limb is far from a circle, as it may be with few stitches. Field is that of its stitches.
	LimbUnround report.Reason = "LIMB_UNROUND"
)

var formNames = [...]string{"solid", "ball", "egg", "cone", "cylinder", "drop", "solid of this profile"}

// Summary says the answer in words.
func (o Solid) Summary() string {
	name := formNames[o.of.in.Form]
	article := "A "
	if name == "egg" {
		article = "An "
	}
	unit := o.of.in.DisplayUnit
	s := article + name + ", " + unit.Size(o.AcrossCm) + " across and " + unit.Size(o.HeightCm) + " high: "
	if len(o.Wedges) > 0 {
		return s + report.CountOf(o.WedgeCount, "wedges") + " of short rows on " + report.CountOf(o.StartStitches, "stitches") + ", " +
			report.CountOf(o.GreatestRows, "rows") + " round its widest. " + o.closeness()
	}
	switch start, most, end := o.StartStitches, o.GreatestStitches, o.EndStitches; {
	case start == most && end == most:
		s += report.CountOf(start, "stitches")
	case start == most || end == most:
		s += "from " + report.CountOf(start, "stitches") + " to " + strconv.Itoa(end)
	default:
		s += "from " + report.CountOf(start, "stitches") + " to " + strconv.Itoa(most) + " at its widest and on to " + strconv.Itoa(end)
	}
	return s + ", in " + report.CountOf(o.TotalRounds, "rounds") + ". " + o.closeness()
}

// closeness says how near the stitches come to the surface.
func (o Solid) closeness() string {
	if o.WantedTotalStitches <= 0 {
		return "The points enclose no surface to compare the stitches with."
	}
	percent := measure.Decimal(100*(float64(o.TotalStitches)/o.WantedTotalStitches-1), 1)
	how := percent + " % more than"
	switch {
	case percent == "0":
		how = "as many as"
	case percent[0] == '-':
		how = percent[1:] + " % fewer than"
	}
	s := "Its " + report.CountOf(o.TotalStitches, "stitches") + " are " + how + " the surface has; "
	if len(o.Wedges) > 0 {
		return s + "no stitch has more than " + report.AmountOf(measure.Decimal(o.GreatestDepartureRows, 1), "rows") +
			" too many or too few round it."
	}
	off := report.AmountOf(measure.Decimal(o.GreatestDepartureStitches, 1), "stitches")
	return s + "no round" + o.measured + " is more than " + off + " off."
}

// Directions write the solid as a pattern would.
func (o Solid) Directions() []string {
	if len(o.Wedges) > 0 {
		return o.wedgeDirections()
	}
	d := []string{o.begin()}
	last := 0
	work := func(to int) { // even rounds up to one, with those that are purled, and what is done before one of them
		for last < to {
			stop := o.pause(last+1, to)
			if slices.Contains(o.sharp, last+1) {
				d = append(d, "Round "+strconv.Itoa(last+1)+": purl, for a sharp edge where the flat part meets the side.")
			} else {
				d = report.AppendEven(d, "round", last+1, stop)
			}
			d = append(d, o.stuffed(stop)...)
			last = stop
		}
	}
	for _, r := range o.Rounds {
		work(r.RoundNumber - 1)
		d = append(d, "Round "+strconv.Itoa(r.RoundNumber)+": "+r.Instruction.Row.Text()+" ("+
			report.CountOf(r.Instruction.EndStitches, "stitches")+").")
		d = append(d, o.stuffed(r.RoundNumber)...)
		last = r.RoundNumber
	}
	work(o.TotalRounds)
	d = append(d, o.end())
	return append(d, o.limbWords()...)
}

// pause is the last of the even rounds from one on, up to another, that are told together: a round that is purled stands
// alone, and before one it is stuffed.
func (o Solid) pause(from, to int) int {
	for round := from + 1; round <= to; round++ {
		stuffed := o.StuffBeforeRoundNumber != nil && *o.StuffBeforeRoundNumber == round
		if stuffed || slices.Contains(o.sharp, round) || slices.Contains(o.sharp, round-1) {
			return round - 1
		}
	}
	return to
}

// stuffed is what is done after a round where it is stuffed then.
func (o Solid) stuffed(round int) []string {
	if s := o.StuffBeforeRoundNumber; s == nil || *s != round+1 {
		return nil
	}
	return []string{"Stuff it now, through the opening of " + o.of.in.DisplayUnit.Size(o.stuffOpenCm) + ", and again before it is closed."}
}

// begin is how it is cast on.
func (o Solid) begin() string {
	if o.of.in.PickedUp {
		return "Join the yarn at the body. Pick up and knit " + report.CountOf(o.StartStitches, "stitches") +
			" in the ring there and join in the round."
	}
	if o.openFirst {
		return "Cast on " + report.CountOf(o.StartStitches, "stitches") + " and join in the round."
	}
	return "Cast on " + report.CountOf(o.StartStitches, "stitches") + " (in a ring that the tail closes) and join in the round."
}

// end is what becomes of the last stitches.
func (o Solid) end() string {
	if o.openLast {
		return "Bind off."
	}
	return DrawUp(o.EndStitches)
}

// Sources says where the figures come from.
func (o Solid) Sources() []report.Source {
	list := []report.Source{
		{Figure: "stitches of each round", Status: report.SourceStatusOwnDerivation,
			Citation: "own derivation: 2 pi times the radius at the middle of the round, which lies so many rows along the meridian"},
		{Figure: "wedges, changes apart or above one another", Status: report.SourceStatusCommonPractice, Citation: "common practice"},
	}
	if !o.of.sewn {
		return list
	}
	return append(list,
		report.Source{Figure: "small parts, children under 3", Status: report.SourceStatusPublished, Citation: "16 CFR 1501.4"},
		report.Source{Figure: "cylinder for small parts, 31.7 mm", Status: report.SourceStatusFromMemory,
			Citation: "16 CFR 1501.4 and EN 71-1, clause 8.2"},
		report.Source{Figure: "toy rules of the place", Status: report.SourceStatusFromMemory,
			Citation: "among them EN 71 and ASTM F963"},
		report.Source{Figure: "nothing soft in a baby's cot", Status: report.SourceStatusSecondHand,
			Citation: "American Academy of Pediatrics, for the first 12 months; local advice governs"})
}
