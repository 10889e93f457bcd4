package solid

import "math"

// A ringShape is what became of a ring: how far its places lie from its own middle, seen along the axis of the limb, and how long
// it is from place to place, in cm.
type ringShape struct {
	least, mean, greatest float64
	length                float64
	lowest                int // how many stitches its lowest pair has
}

// A ring is round where all its places lie within these parts of their mean distance from its middle. Own choice: a stitch is that
// much, or nearly, of the radius of the narrowest limbs.
const (
	leastRound    = 0.8
	greatestRound = 1.25
)

func (s ringShape) round() bool {
	return s.least >= leastRound*s.mean && s.greatest <= greatestRound*s.mean
}

// off is how far it is from a circle of the wanted length, any that is not round further than all that are.
func (s ringShape) off(wanted float64) float64 {
	off := max(1-s.least/s.mean, s.greatest/s.mean-1) + math.Abs(s.length/wanted-1)
	if !s.round() {
		off += unround
	}
	return off
}

// unround is more than a round ring may be off, whose steps are no longer than rows of any gauge are high.
const unround = 1e6

// shape is that of the ring through some places, each in the middle of its stitch on the surface.
func (r *ring) shape(places []RingPlace) ringShape {
	b := r.b
	seen := make([][2]float64, len(places))
	var s ringShape
	var last spot
	for i := range len(places) + 1 {
		p := places[i%len(places)]
		at := spot{radius: b.radius(p.RoundNumber - 1), height: b.way.at((float64(p.RoundNumber) - 0.5) * b.high).height,
			turn: 2*math.Pi*(float64(p.StitchNumber)-0.5)/float64(b.counts[p.RoundNumber-1]) - r.turn}
		if i > 0 {
			s.length += at.apart(last)
		}
		if last = at; i < len(places) {
			sin, cos := math.Sincos(at.turn)
			seen[i] = [2]float64{at.radius * sin, (at.radius*cos-r.mid.radius)*r.dr + (at.height-r.mid.height)*r.dh}
		}
	}
	x, y := middleOf(seen)
	s.least = math.Inf(1)
	for _, p := range seen {
		far := math.Hypot(p[0]-x, p[1]-y)
		s.least, s.greatest, s.mean = min(s.least, far), max(s.greatest, far), s.mean+far/float64(len(seen))
	}
	return s
}

// middleOf is the middle of what a line encloses.
func middleOf(line [][2]float64) (x, y float64) {
	area := 0.0
	last := line[len(line)-1]
	for _, p := range line {
		cross := last[0]*p[1] - p[0]*last[1]
		area += cross
		x, y = x+cross*(last[0]+p[0]), y+cross*(last[1]+p[1])
		last = p
	}
	if area == 0 {
		return 0, 0
	}
	return x / 3 / area, y / 3 / area
}
