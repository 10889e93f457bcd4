package solid

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/measure"
)

// limbOf picks up the stitches of a limb, and reports whether that can be done. In the second half of the rounds a limb is the mirror
// image of its like in the first, so that arms, legs and ears are.
func (r *ring) limbOf() (Limb, bool) {
	if r.limb.TurnDegrees > halfTurn {
		like := *r
		like.limb.TurnDegrees = 2*halfTurn - r.limb.TurnDegrees
		like.turn = radians(like.limb.TurnDegrees)
		limb, ok := like.limbOf()
		r.radius = like.radius
		return r.b.mirrored(limb), ok
	}
	if r.mid.along <= 0 || r.mid.along >= r.b.way.length() || !r.fit() {
		return Limb{}, false
	}
	limb := Limb{Stitches: r.limb.Stitches, AcrossCm: 2 * r.radius}
	if limb.Places, limb.made = r.places(); limb.Places == nil {
		return limb, false
	}
	at := r.middleStitch(limb.Places)
	limb.MiddleRoundNumber, limb.MiddleStitchNumber = at.RoundNumber, at.StitchNumber
	return limb, true
}

const halfTurn = 180.0

// mirrored is a limb on the other side of where the rounds begin. Its ring goes on in the same direction: of what was its left and is
// its right now, the lowest comes first, but a lowest stitch of its own.
func (b *revolved) mirrored(limb Limb) Limb {
	other := func(p RingPlace) RingPlace {
		return RingPlace{p.RoundNumber, b.counts[p.RoundNumber-1] + 1 - p.StitchNumber}
	}
	if limb.Places == nil {
		return limb
	}
	limb.MiddleStitchNumber = other(RingPlace{limb.MiddleRoundNumber, limb.MiddleStitchNumber}).StitchNumber
	for i, p := range limb.Places {
		limb.Places[i] = other(p)
	}
	slices.Reverse(limb.Places[limb.made.lowest%2:])
	return limb
}

// The ring from stitch to stitch as it is knit, of the length of its stitches: near the ends the few stitches of a round lie far
// from where they should, and on a body like a needle or a plate it may be no ring. Own choice.
const (
	leastStepped    = 0.75
	greatestStepped = 1.25
)

// fits reports whether the ring through some places is, as it is knit, about as long as the stitches of the limb are wide.
func (r *ring) fits(places []RingPlace) bool {
	if places == nil {
		return false
	}
	part := r.b.lengthOf(places) / r.wanted()
	return part >= leastStepped && part <= greatestStepped*max(1, r.b.high/r.b.st.SizeCm(1))
}

// middleStitch lies as many rounds above the lowest place of a ring as below the highest, and as far to the right of those on the left
// as to the left of those on the right: the ring as it is picked up has its middle there, up to half a stitch and half a round from
// where it is asked for.
func (r *ring) middleStitch(places []RingPlace) RingPlace {
	lowest, highest, turn := places[0].RoundNumber, places[0].RoundNumber, 0.0
	for _, p := range places {
		lowest, highest = min(lowest, p.RoundNumber), max(highest, p.RoundNumber)
		turn += math.Remainder((float64(p.StitchNumber)-0.5)/float64(r.b.counts[p.RoundNumber-1])-r.turn/2/math.Pi, 1)
	}
	round := (lowest+highest)/2 - 1
	turn = r.turn/2/math.Pi + turn/float64(len(places))
	return r.b.stitchAt(round, measure.CeilQuotient(turn*float64(r.b.counts[round]), 1)-1)
}

// stitchAt is a stitch of a round, both counted from 0, the stitch forwards or back from the beginning of the round.
func (b *revolved) stitchAt(round, stitch int) RingPlace {
	count := b.counts[round]
	return RingPlace{round + 1, (stitch%count+count)%count + 1}
}

// lengthOf is how long the ring through some places is as it is knit: from the middle of a stitch to that of the next, so many
// stitches sideways, of which each of the two rounds has so many in a full turn, and so many rounds up.
func (b *revolved) lengthOf(places []RingPlace) float64 {
	length := 0.0
	last := places[len(places)-1]
	for _, p := range places {
		counts := [2]float64{float64(b.counts[last.RoundNumber-1]), float64(b.counts[p.RoundNumber-1])}
		part := math.Remainder((float64(p.StitchNumber)-0.5)/counts[1]-(float64(last.StitchNumber)-0.5)/counts[0], 1) // of a turn
		length += math.Hypot(part*(counts[0]+counts[1])/2*b.st.SizeCm(1), float64(p.RoundNumber-last.RoundNumber)*b.high)
		last = p
	}
	return length
}
