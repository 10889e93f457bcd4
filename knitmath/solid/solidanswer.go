package solid

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// answer puts together what is settled.
func (b *revolved) answer() Solid {
	planned := b.roundAnswer
	if b.wedge != nil {
		planned = b.wedgeAnswer
	}
	out := planned()
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range b.way {
		low, high = min(low, p.height), max(high, p.height)
	}
	out.HeightCm = high - low
	out.openFirst, out.openLast = b.way[0].radius > 0, b.way[len(b.way)-1].radius > 0
	out.of = *b
	out.Notices = b.careful(out)
	if b.in.WithOutline {
		out.Outline = b.outline()
	}
	return out
}

// roundAnswer is the answer of a solid in rounds.
func (b *revolved) roundAnswer() Solid {
	n := len(b.counts)
	out := Solid{StartStitches: b.counts[0], EndStitches: b.counts[n-1], GreatestStitches: slices.Max(b.counts), TotalRounds: n,
		WedgeCount: b.wedges, MeridianCm: b.way.length(), EdgeRoundNumbers: b.edgeRounds(), Limbs: b.limbs,
		WantedTotalStitches: b.surface, sharp: b.sharp()}
	out.AcrossCm = b.st.SizeCm(out.GreatestStitches) / math.Pi
	turns, least := 0, min(float64(b.wedges), slices.Max(b.wanted)) // ends want fewer than they can have
	for i, count := range b.counts {
		out.TotalStitches += count
		off := float64(count) - b.wanted[i]
		if b.wanted[i] < least {
			out.measured = " that wants at least " + measure.Decimal(least, 1)
		} else {
			out.GreatestDepartureStitches = max(out.GreatestDepartureStitches, math.Abs(off))
		}
		if i > 0 && count != b.counts[i-1] {
			out.Rounds = append(out.Rounds, SolidRound{RoundNumber: i + 1, WantedStitches: b.wanted[i], DepartureStitches: off,
				Instruction: b.round(b.counts[i-1], count, turns)})
			turns++
		}
	}
	if b.sewn {
		out.StuffBeforeRoundNumber = b.stuffing()
		out.stuffOpenCm = b.st.SizeCm(b.counts[max(*out.StuffBeforeRoundNumber-2, 0)]) / math.Pi
	}
	return out
}

// round is a round from one count to the next: a stitch for each wedge, in line or shifted by
// half a wedge in every second one, or several, spread evenly.
func (b *revolved) round(from, to, turn int) stitch.Instruction {
	op := stitch.M1L
	if to < from {
		op = stitch.K2tog
	}
	if measure.Abs(to-from) != b.wedges {
		in, _ := shaping.EvenRound(from, to, op, shaping.GapSpreadUnspecified)
		return in
	}
	each, shift := from/b.wedges, 0
	if turn%2 == 1 && b.in.Lines != LinesStacked {
		shift = (each - op.Takes() + 1) / 2
	}
	return shaping.WedgeRow(0, b.wedges, each, 0, op, shift)
}

// The opening through which a toy is stuffed: a third of its width, and no more than a hand
// needs. Own choice.
const (
	stuffPart   = 3.0
	stuffMostCm = 5.0
)

// stuffing is the round before which the piece is stuffed: the first, coming to its end, that
// is narrower than the opening wanted.
func (b *revolved) stuffing() *int {
	widest := b.st.SizeCm(slices.Max(b.counts)) / math.Pi
	opening := fault.Or(b.in.StuffOpeningCm, min(widest/stuffPart, stuffMostCm))
	round := len(b.counts)
	for round > 1 && b.st.SizeCm(b.counts[round-2])/math.Pi <= opening {
		round--
	}
	return &round
}

// outline draws the solid from the side: as it should be, and as its counts make it.
func (b *revolved) outline() *outline.Outline {
	var right, knit []outline.Point
	for _, p := range b.way {
		right = append(right, outline.Point{X: p.radius, Y: p.height})
	}
	n, wide := len(b.counts), b.st
	if b.wedge != nil {
		wide = b.rw
	}
	for i, count := range b.counts {
		if i > 0 && i < n-1 && count == b.counts[i-1] && count == b.counts[i+1] {
			continue
		}
		at := b.way.at((float64(i) + 0.5) * b.high)
		knit = append(knit, outline.Point{X: wide.SizeCm(count) / 2 / math.Pi, Y: at.height})
	}
	o := &outline.Outline{
		X:     outline.Axis{Measure: "from the middle, to the right", Unit: outline.UnitCm},
		Y:     outline.Axis{Measure: "height", Unit: outline.UnitCm},
		Lines: []outline.Line{{Name: "as wanted", Points: bothSides(right)}, {Name: "as it is knit", Points: bothSides(knit)}},
	}
	o.Lines = append(o.Lines, b.limbLines()...)
	return o.Framed()
}

// bothSides is a line on the right and, back again, its like on the left.
func bothSides(right []outline.Point) []outline.Point {
	all := slices.Clone(right)
	for _, p := range slices.Backward(right) {
		all = append(all, outline.Point{X: -p.X, Y: p.Y})
	}
	return all
}
