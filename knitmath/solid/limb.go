package solid

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
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

	made ringShape
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
		*r = b.ringOf(limb)
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
	if c.Err() == nil {
		b.unround(rings)
	}
	b.side, b.pairs = nil, nil
}

// elsewhere offers what lets a limb fit, after trying it: the nearest of some places along the surface, and the most
// stitches where it is.
func (r ring) elsewhere(others []ring) string {
	offers := ""
	if cm, ok := r.nearestPlace(others); ok {
		offers = "; " + r.b.in.DisplayUnit.Size(cm) + " from the base it fits"
	}
	if n := r.narrower(others); n > 0 {
		offers += "; with " + report.CountOf(n, "stitches") + " it fits there"
	}
	return offers
}

// nearestPlace is how far from the base the limb fits, at one of some places, as it is printed.
func (r ring) nearestPlace(others []ring) (float64, bool) {
	const places = 20
	all := r.b.way.length()
	for i := 1; i < places; i++ {
		for _, off := range [2]float64{-1, 1} {
			limb := r.limb
			limb.FromBaseCm = r.b.in.DisplayUnit.Printed(r.limb.FromBaseCm + off*float64(i)*all/places)
			try := r.b.ringOf(limb)
			try.enough = math.MaxFloat64
			if _, ok := try.limbOf(); ok && try.clears(others) {
				return limb.FromBaseCm, true
			}
		}
	}
	return 0, false
}

// narrower is the most stitches with which the limb fits where it is and clears others, 0 where none do: a narrower limb
// does where a wider one does.
func (r ring) narrower(others []ring) int {
	does, too := MinLimbStitches-1, r.limb.Stitches
	for too-does > 1 {
		try := r
		try.limb.Stitches, try.enough = (does+too)/2, math.MaxFloat64
		if _, ok := try.limbOf(); ok && try.clears(others) {
			does = try.limb.Stitches
		} else {
			too = try.limb.Stitches
		}
	}
	if does < MinLimbStitches {
		return 0
	}
	return does
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
