package solid

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/measure"
)

// ring is where a tube meets the body.
type ring struct {
	b      *revolved
	limb   LimbInput
	turn   float64 // of its middle, in radians
	radius float64

	mid    place   // of its middle
	dr, dh float64 // the direction of the meridian there: of the radius and of the height

	stepWeight float64 // see stepWeights
	enough     float64 // what it may be off that is not looked for further
}

// ringOf is the ring of a limb, its radius still to be found.
func (b *revolved) ringOf(limb LimbInput) ring {
	r := ring{b: b, limb: limb, enough: wellMade, turn: radians(limb.TurnDegrees), mid: b.way.at(b.fromStart(limb.FromBaseCm))}
	r.dr, r.dh = b.way.direction(r.mid.along)
	return r
}

// radians are those of so many degrees to the nearest millionth, so that 360 less 298.3 are 61.7.
func radians(degrees float64) float64 {
	return float64(measure.RoundHalfUp(degrees*1e6)) / 1e6 / halfTurn * math.Pi
}

// spot is a place of the surface: along the meridian, and round the axis.
type spot struct{ along, turn, radius, height float64 }

// apart is how far two places lie from one another in a straight line.
func (s spot) apart(other spot) float64 {
	up := s.height - other.height
	return math.Sqrt(max(s.radius*s.radius+other.radius*other.radius-2*s.radius*other.radius*math.Cos(s.turn-other.turn)+up*up, 0))
}

func (r ring) middle() spot {
	return spot{r.mid.along, r.turn, r.mid.radius, r.mid.height}
}

// How the ring is looked for: its half in so many pieces for its length, in which a polygon of
// twice as many is short by 0.3 %; the way along the meridian, and the length, to 0.001.
const (
	ringPieces = 12
	ringTries  = 30
	ringMiss   = 1e-3
)

// lowest is where the wall would meet the meridian lowest, were it straight.
func (r *ring) lowest() float64 { return r.mid.along - r.radius }

// at is where the wall meets the surface, at an angle from the lowest place of the ring on; guess is a place along the meridian
// near it. It goes along the meridian by what is missing, again and again; once it has gone too far, as it may near an end where
// the surface turns away fast, to the middle between what was too near and what was too far.
func (r *ring) at(angle, guess float64) (spot, bool) {
	sin, cos := math.Sincos(angle)
	side, up := r.radius*sin, -r.radius*cos
	near, far := math.Inf(-1), math.Inf(1) // places short of it and beyond it
	all := r.b.way.length()
	along := min(max(guess, 0), all)
	for range ringTries {
		p := r.b.way.at(along)
		forward := math.Sqrt(max(p.radius*p.radius-side*side, 0)) // from the axis, towards the middle of the ring
		miss := up - (forward-r.mid.radius)*r.dr - (p.height-r.mid.height)*r.dh
		if math.Abs(miss) < ringMiss {
			inside := along > 0 && along < all && math.Abs(side) < p.radius
			return spot{along, math.Atan2(side, forward), p.radius, p.height}, inside
		}
		if miss > 0 {
			near = max(near, along)
		} else {
			far = min(far, along)
		}
		next := min(max(along+miss, 0), all)
		if next <= near || next >= far {
			next = (near + far) / 2
		}
		if math.IsInf(next, 0) || next == along {
			return spot{}, false
		}
		along = next
	}
	return spot{}, false
}

// onward is a guess at the next place of a ring after so many and these two: as far on.
func onward(i int, before, last spot) float64 {
	if i == 0 {
		return last.along
	}
	return 2*last.along - before.along
}

// wanted is how long the ring is to be.
func (r *ring) wanted() float64 { return r.b.st.SizeCm(r.limb.Stitches) }

// fit finds the radius of the tube.
func (r *ring) fit() bool {
	r.radius = r.wanted() / 2 / math.Pi
	short := math.Pi / 2 / ringPieces / math.Sin(math.Pi/2/ringPieces)
	for range ringTries {
		length := 0.0
		last, guess := spot{}, r.lowest()
		for i := range ringPieces + 1 {
			s, ok := r.at(math.Pi*float64(i)/ringPieces, guess)
			if !ok {
				return false
			}
			if i > 0 {
				length += 2 * short * s.apart(last)
			}
			last, guess = s, onward(i, last, s)
		}
		part := r.wanted() / length
		if math.Abs(part-1) < ringMiss {
			return true
		}
		r.radius *= part
	}
	return false
}

// clears reports whether the ring meets none of the others: a stitch and a round at least lie between them, however each of both
// is moved and widened to be round.
func (r ring) clears(others []ring) bool {
	between := math.Hypot(r.b.st.SizeCm(1), r.b.high)
	return !slices.ContainsFunc(others, func(other ring) bool {
		return r.middle().apart(other.middle()) < widest*(r.radius+other.radius)+between
	})
}

// fromStart is a way from the base as one from where the work begins.
func (b *revolved) fromStart(cm float64) float64 {
	if b.in.Start == StartTop {
		return b.way.length() - cm
	}
	return cm
}

// direction is that of the meridian at a place: of the radius and of the height.
func (m meridian) direction(along float64) (dr, dh float64) {
	i := m.piece(along)
	from, to := m[i-1], m[i]
	step := to.along - from.along
	return (to.radius - from.radius) / step, (to.height - from.height) / step
}
