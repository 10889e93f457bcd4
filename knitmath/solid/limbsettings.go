package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// A setting is where a ring may have its middle, and how wide it may be: stitches are whole, so that it can be rounder so.
type setting struct {
	turn   float64 // of its middle, in radians
	shift  float64 // of its middle, along the meridian
	wider  float64 // than its tube
	single bool    // whether it has one lowest stitch, or two
}

// first is the place of the first pair, of the places at equal angles up one side.
func (s setting) first() int {
	if s.single {
		return 0
	}
	return 1
}

// widths are how wide a ring may be, as parts of its tube. Own choice.
var widths = [...]float64{1, 0.94, widest}

const widest = 1.06

// settings tries those of a ring, from the nearest to what is asked on, while the trial wants more: its middle lies on a stitch or
// between two, and on a round or between two, not over half a stitch and half a round away.
func (r *ring) settings(try func(setting) bool) {
	rounds := r.mid.along / r.b.high
	whole := 2 * math.Pi / float64(r.b.counts[min(int(rounds), len(r.b.counts)-1)])
	for _, wider := range widths {
		for far := range 4 {
			turn, shift := toHalf(r.turn/whole, far&1), toHalf(rounds, far>>1)
			for _, single := range [2]bool{false, true} {
				if !try(setting{turn * whole, (shift - rounds) * r.b.high, wider, single}) {
					return
				}
			}
		}
	}
}

// toHalf is the multiple of a half that is nearest to a number, or the one beyond the number from there.
func toHalf(v float64, beyond int) float64 {
	nearest := float64(measure.RoundHalfUp(2*v)) / 2
	if beyond > 0 {
		nearest += math.Copysign(0.5, v-nearest)
	}
	return nearest
}

// places are the stitches of the roundest ring, from the lowest on, and its shape.
func (r *ring) places() (best []RingPlace, made ringShape) {
	if !r.followed() {
		return nil, made
	}
	least := math.Inf(1)
	for _, r.stepWeight = range stepWeights {
		tries := max(mostTried/r.limb.Stitches, fewestTries)
		r.settings(func(s setting) bool {
			tries--
			if places := r.through(s); r.fits(places) {
				shape := r.shape(places)
				if off := shape.off(r.wanted()); off < least {
					shape.lowest = 1 + s.first()
					best, made, least = places, shape, off
				}
			}
			return least > r.enough && tries > 0
		})
		if best == nil || least < max(unround, r.enough) {
			break
		}
	}
	return best, made
}

// So many settings are tried, at most, as have so many stitches together, but no fewer than some: a wide ring comes out round wherever
// it lies. Own choice.
const (
	mostTried   = 400
	fewestTries = 4
)

// wellMade is what a ring may be off that is not looked for further, unless any does. Own choice.
const wellMade = 0.16
