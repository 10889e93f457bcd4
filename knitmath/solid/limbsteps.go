package solid

import (
	"math"
	"slices"
)

// A ring is picked up in pairs, one stitch as far to the left of its middle as the other to the right, from the lowest to the
// highest; the lowest and the highest may be one stitch. Of each pair those few are looked at that lie near its place on the ring, and of
// all ways through them the one is taken that comes nearest to the ring, goes on by about a stitch each time, and does so without
// going to and fro across it: the squares of what it is off in each are the least together.
//
// Method: dynamic programming over the pairs. Source: own derivation.

// What a way is off, in stitches, squared, counts so much: outside or inside of the ring; along it; in going across the ring from one
// pair to the next; and in a step, or so much less where no ring so found is round. Own choice, by what came out roundest.
const (
	offWeight    = 0.5
	aheadWeight  = 0.1
	acrossWeight = 1
)

var stepWeights = [...]float64{1, 0.1}

// through is the best way through pairs where the ring has its middle and its width there, as places from the lowest on; nothing where
// there is none.
func (r ring) through(s setting) []RingPlace {
	r.turn = s.turn
	pairs := r.b.pairs[:0]
	before, from := 0, 0 // where the pairs of the place before begin, and those of this one
	for k := s.first(); k <= r.limb.Stitches; k += 2 {
		before, from = from, len(pairs)
		pairs = r.near(pairs, k, s)
		for i := from; i < len(pairs); i++ {
			pairs[i].from = -1
			if k == s.first() {
				pairs[i].cost += r.closing(pairs[i])
			} else {
				r.come(pairs, before, from, i, 2*k <= r.limb.Stitches+1)
			}
		}
	}
	r.b.pairs = pairs
	return r.picked(pairs, from)
}

// come finds the pair of the place before, among those from one number up to another, from which it is best to come to a pair.
func (r *ring) come(pairs []pair, before, end, to int, lower bool) {
	p, least := &pairs[to], math.Inf(1)
	for i := before; i < end; i++ {
		if !goesOn(pairs, i, p, lower) {
			continue
		}
		if cost := pairs[i].cost + r.step(&pairs[i], p); cost < least {
			least, p.from = cost, i
		}
	}
	p.cost += least
}

// picked are the places of the way that ends best, at one of the last pairs: those to the right from the lowest on, and those to the left
// back again.
func (r *ring) picked(pairs []pair, last int) []RingPlace {
	end, least := -1, math.Inf(1)
	for i := last; i < len(pairs); i++ {
		if cost := pairs[i].cost + r.closing(pairs[i]); cost < least {
			end, least = i, cost
		}
	}
	if end < 0 {
		return nil
	}
	var right, left []RingPlace
	for i := end; i >= 0; i = pairs[i].from {
		p := pairs[i]
		right = append(right, r.b.stitchAt(p.round, p.right))
		if p.apart > 0 {
			left = append(left, r.b.stitchAt(p.round, p.left))
		}
	}
	slices.Reverse(right)
	return append(right, left...)
}

// goesOn reports whether a pair may come after another: it lies in a later round, or in the same round further out in the lower
// half of the ring, and further in in the upper half; there the round has gone out not before.
func goesOn(pairs []pair, last int, next *pair, lower bool) bool {
	p := &pairs[last]
	out := next.apart - p.apart
	switch {
	case next.round != p.round:
		return next.round > p.round
	case out == 0, out%2 != 0, out > 0 != lower:
		return false
	}
	before := p.from
	return lower || before < 0 || pairs[before].round < p.round || pairs[before].apart > p.apart
}

// step is what the two steps from a pair to the next are off.
func (r *ring) step(p, next *pair) float64 {
	wide := r.b.st.SizeCm(1)
	radius := (r.b.radius(p.round) + r.b.radius(next.round)) / 2 / wide
	up := float64(next.round-p.round) * r.b.high / wide
	cost := 0.0
	for side := range 2 {
		along := (next.turns[side] - p.turns[side]) * radius
		miss, across := math.Sqrt(along*along+up*up)-1, next.off[side]-p.off[side]
		cost += r.stepWeight*miss*miss + acrossWeight*across*across
	}
	return cost
}

// closing is what the step between the two stitches of the lowest or the highest pair is off.
func (r *ring) closing(p pair) float64 {
	if p.apart == 0 {
		return 0
	}
	miss := (p.turns[1]-p.turns[0])*r.b.radius(p.round)/r.b.st.SizeCm(1) - 1
	return r.stepWeight * miss * miss
}
