package solid

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/measure"
)

// A pair is two stitches of a round, counted from 0, or one. They are so many stitches apart.
type pair struct {
	round, left, right int
	apart              int
	turns              [2]float64 // of the left and the right one, from the middle of the ring, in radians
	off                [2]float64 // how far they lie outside of the ring, in stitches
	cost               float64    // of the best way to it, and the pair from which that comes
	from               int
}

// How far from its place on the ring a pair is looked for: in stitches, and along the meridian in rounds where those are higher.
const (
	nearStitches = 0.7
	nearRounds   = 0.8
)

// fineRounds is how far apart the rounds are at least that are looked at, in stitches: where rounds are lower, not all of them.
const fineRounds = 0.4

// followed lays the half of the ring in b.side, at as many angles from its lowest place to its highest as it has stitches, and at
// the lowest.
func (r *ring) followed() bool {
	n := r.limb.Stitches
	side := slices.Grow(r.b.side[:0], n+1)[:n+1]
	guess := r.lowest()
	for i := range side {
		s, ok := r.at(math.Pi*float64(i)/float64(n), guess)
		if !ok {
			return false
		}
		guess = onward(i, side[max(i-1, 0)], s)
		side[i] = s
	}
	r.b.side = side
	return true
}

// near adds the pairs that lie near a place of the ring, with what they are off.
func (r *ring) near(pairs []pair, k int, at setting) []pair {
	n, wide := r.limb.Stitches, r.b.st.SizeCm(1)
	s := r.b.side[k]
	along, up := r.tangent(k)
	s.along = r.mid.along + at.wider*(s.along-r.mid.along) + at.shift
	s.turn *= at.wider
	reach := max(nearStitches*wide, nearRounds*r.b.high)
	stride := max(int(fineRounds*wide/r.b.high), 1)
	middle := int(s.along / r.b.high)
	for round := max(middle-3*stride, 0); round <= min(middle+3*stride, len(r.b.counts)-1); round += stride {
		ahead := (float64(round)+0.5)*r.b.high - s.along
		if math.Abs(ahead) > reach {
			continue
		}
		least, most := r.apart(round, s.turn)
		if k == 0 || k == n { // where the ring is lowest and highest there may be one stitch
			least, most = 0, 0
		}
		for apart := least; apart <= most; apart++ {
			p := r.pair(round, apart)
			for side := range 2 {
				across := (math.Abs(p.turns[side]) - s.turn) * r.b.radius(round) / wide
				out, on := across*up-ahead/wide*along, across*along+ahead/wide*up
				p.off[side] = out
				p.cost += offWeight*out*out + aheadWeight*on*on
			}
			pairs = append(pairs, p)
		}
	}
	return pairs
}

// apart are the fewest and the most stitches that two of a round may be apart that lie near so much of a turn from the middle.
func (r *ring) apart(round int, turn float64) (least, most int) {
	count := r.b.counts[round]
	stitches := turn / 2 / math.Pi * float64(count)
	return max(measure.CeilQuotient(2*(stitches-nearStitches), 1), 1), min(int(2*(stitches+nearStitches)), count-1)
}

// pair are the two stitches of a round that are as many stitches apart, and whose middle is nearest to that of the ring.
func (r *ring) pair(round, apart int) pair {
	count := r.b.counts[round]
	whole := 2 * math.Pi / float64(count)
	middle := r.turn / whole                       // of the ring, in stitches from the beginning of the round
	twice := measure.CeilQuotient(2*middle, 1) - 1 // of the pair, in half stitches
	if (twice+apart)%2 == 0 {
		twice++
	}
	left, right := (twice-apart-1)/2, (twice+apart-1)/2
	return pair{round: round, left: left, right: right, apart: apart,
		turns: [2]float64{(float64(left) + 0.5 - middle) * whole, (float64(right) + 0.5 - middle) * whole}}
}

// tangent is the direction of the ring at a place: round the body, and along the meridian.
func (r *ring) tangent(k int) (along, up float64) {
	n := len(r.b.side) - 1
	before, after := r.b.side[max(k-1, 0)], r.b.side[min(k+1, n)]
	switch {
	case k == 0 || k == n:
		return 1 - 2*float64(k/n), 0
	}
	along, up = (after.turn-before.turn)*r.b.side[k].radius, after.along-before.along
	long := math.Hypot(along, up)
	return along / long, up / long
}

// radius is that of the surface in the middle of a round.
func (b *revolved) radius(round int) float64 { return b.wanted[round] * b.st.SizeCm(1) / 2 / math.Pi }
