package solid

import (
	"math"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Ranges of limbs.
const (
	// MaxLimbs is the most limbs of one body.
	MaxLimbs = 12
	// MinLimbStitches and MaxLimbStitches bound the first round of a limb.
	MinLimbStitches = 4
	MaxLimbStitches = 200
	// MaxFromBaseCm is the longest way along a surface.
	MaxFromBaseCm = 3 * MaxSolidCm
)

// A LimbInput is a limb that is to be joined to a body: a tube that begins with so many
// stitches, its middle so far from the base along the surface, and so far round the body
// from where its rounds begin, in the direction in which they are worked.
type LimbInput struct {
	Stitches    int
	FromBaseCm  float64
	TurnDegrees float64
}

// A RingPlace is a stitch of the body through which one of a limb is picked up.
type RingPlace struct {
	RoundNumber  int
	StitchNumber int
}

// A Limb is the ring in which the stitches of a limb are picked up.
type Limb struct {
	Stitches           int
	MiddleRoundNumber  int
	MiddleStitchNumber int
	AcrossCm           float64 // of the tube whose wall meets the surface in this ring
	Places             []RingPlace

	length float64 // of the ring through the places on the surface as it is knit, in cm
}

// settleLimbs finds the ring of every limb. The wall of a tube of radius a, its axis upright
// on the surface, meets the surface in a curve; a is such that the curve is as long as the
// stitches of the limb are wide together. It is cut into as many equal parts as there are
// stitches, and each is picked up where a part begins.
//
// Source: own derivation.
func settleLimbs(c *fault.Checks, b *revolved, in SolidInput) {
	rings, fitting := make([]ring, len(in.Limbs)), make([]bool, len(in.Limbs))
	for i, limb := range in.Limbs {
		r := &rings[i]
		*r = ring{b: b, limb: limb, along: b.fromStart(limb.FromBaseCm), turn: limb.TurnDegrees / 180 * math.Pi}
		joined, ok := r.limbOf()
		if fitting[i] = ok; ok {
			b.limbs = append(b.limbs, joined)
		}
	}
	for i, limb := range in.Limbs {
		field, r := fault.Index("limbs", i), rings[i]
		var others []ring
		meets := -1
		for j, other := range rings {
			if j != i && fitting[j] {
				others = append(others, other)
				if fitting[i] && j < i && meets < 0 && !r.clears([]ring{other}) {
					meets = j
				}
			}
		}
		switch {
		case !fitting[i]:
			c.Infeasible("a limb of "+strconv.Itoa(limb.Stitches)+" stitches is too wide for the body there"+r.elsewhere(others),
				fault.Join(field, "stitches"), fault.Join(field, "from_base_cm"))
		case meets >= 0:
			c.Infeasible("the limb meets "+fault.Index("limbs", meets)+r.clear(others), field)
		}
	}
}

// ring is where a tube meets the body.
type ring struct {
	b      *revolved
	limb   LimbInput
	along  float64 // of its middle, along the meridian
	turn   float64 // of its middle, in radians
	radius float64
}

// spot is a place of the surface: along the meridian, and round the axis.
type spot struct{ along, turn, radius, height float64 }

func (s spot) apart(other spot) float64 {
	x := s.radius*math.Cos(s.turn) - other.radius*math.Cos(other.turn)
	y := s.radius*math.Sin(s.turn) - other.radius*math.Sin(other.turn)
	return math.Hypot(math.Hypot(x, y), s.height-other.height)
}

func (r ring) middle() spot {
	p := r.b.way.at(r.along)
	return spot{r.along, r.turn, p.radius, p.height}
}

// How the ring is looked for: its half in so many pieces for its length, in which a polygon of
// twice as many is short by 0.3 %; the way along the meridian, and the length, to 0.001.
const (
	ringPieces = 12
	ringTries  = 30
	ringMiss   = 1e-3
)

// ringOff is how far the ring, as it is knit, may be from the length of its stitches: near the
// ends the few stitches of a round lie far from where they should. Own choice.
const ringOff = 0.25

// at is where the wall meets the surface, at an angle from the lowest place of the ring on;
// to be found by going along the meridian by what is missing, again and again.
func (r ring) at(angle float64) (spot, bool) {
	mid := r.b.way.at(r.along)
	dr, dh := r.b.way.direction(r.along)
	sin, cos := math.Sincos(angle)
	side, up := r.radius*sin, -r.radius*cos
	along := r.along + up
	for range ringTries {
		if along <= 0 || along >= r.b.way.length() {
			return spot{}, false
		}
		p := r.b.way.at(along)
		if math.Abs(side) >= p.radius {
			return spot{}, false
		}
		turn := math.Asin(side / p.radius)
		miss := up - (p.radius*math.Cos(turn)-mid.radius)*dr - (p.height-mid.height)*dh
		if math.Abs(miss) < ringMiss {
			return spot{along, turn, p.radius, p.height}, true
		}
		along += miss
	}
	return spot{}, false
}

// wanted is how long the ring is to be.
func (r ring) wanted() float64 { return r.b.st.SizeCm(r.limb.Stitches) }

// fit finds the radius of the tube.
func (r *ring) fit() bool {
	r.radius = r.wanted() / 2 / math.Pi
	short := math.Pi / 2 / ringPieces / math.Sin(math.Pi/2/ringPieces)
	for range ringTries {
		length := 0.0
		var last spot
		for i := range ringPieces + 1 {
			s, ok := r.at(math.Pi * float64(i) / ringPieces)
			if !ok {
				return false
			}
			if i > 0 {
				length += 2 * short * s.apart(last)
			}
			last = s
		}
		part := r.wanted() / length
		if math.Abs(part-1) < ringMiss {
			return true
		}
		r.radius *= part
	}
	return false
}

// elsewhere offers the nearest place at which the limb fits, after trying it.
func (r ring) elsewhere(others []ring) string {
	const places = 20
	all := r.b.way.length()
	from := r.limb.FromBaseCm
	for i := 1; i < places; i++ {
		for _, off := range [2]float64{-1, 1} {
			try := r
			cm := measure.Centimetres(measure.Micrometres(from+off*float64(i)*all/places) / offered * offered)
			try.along = r.b.fromStart(cm)
			if _, ok := try.limbOf(); ok && try.clears(others) {
				return "; " + r.b.in.DisplayUnit.Size(cm) + " from the base it fits"
			}
		}
	}
	if n := r.narrower(others); n > 0 {
		return "; with " + report.CountOf(n, "stitches") + " it fits there"
	}
	return ""
}

// narrower is the most stitches, of a few tried, with which the limb fits where it is and clears others; 0 where none do.
func (r ring) narrower(others []ring) int {
	for n := r.limb.Stitches - 2; n >= MinLimbStitches; n = n * 9 / 10 {
		try := r
		try.limb.Stitches = n
		if _, ok := try.limbOf(); ok && try.clears(others) {
			return n
		}
	}
	return 0
}

// clears reports whether the ring meets none of the others.
func (r ring) clears(others []ring) bool {
	return !slices.ContainsFunc(others, func(other ring) bool {
		return r.middle().apart(other.middle()) < r.radius+other.radius
	})
}

// clear offers what lets a limb clear the others, after trying it: another place round the body, or
// fewer stitches.
func (r ring) clear(others []ring) string {
	for by := 15; by <= 180; by += 15 {
		for _, side := range [2]int{1, -1} {
			degrees := int(r.limb.TurnDegrees) + side*by
			if degrees < 0 || degrees > 360 {
				continue
			}
			try := r
			try.turn = float64(degrees) / 180 * math.Pi
			if try.clears(others) {
				return "; turned " + strconv.Itoa(degrees) + " degrees it does not"
			}
		}
	}
	if n := r.narrower(others); n > 0 {
		return "; with " + report.CountOf(n, "stitches") + " it does not"
	}
	return ""
}

// offered is how finely a place is offered: to a millimetre, in micrometres.
const offered = 1000

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
