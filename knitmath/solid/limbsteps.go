package solid

import "math"

// A crossed is a stitch of the body that a ring crosses, and how far along the ring its part begins and ends.
type crossed struct {
	at       RingPlace
	from, to float64
}

func (c crossed) middle() float64 { return (c.from + c.to) / 2 }

// nearestTo are so many of the crossed stitches, each once and the first among them, as lie nearest to equal parts of the
// ring, by their indices; and beyond them the end of the list, where the ring closes.
func nearestTo(list []crossed, n int, length float64) []int {
	near := make([]int, n, n+1)
	next := 0
	for i := range near {
		wanted := length * float64(i) / float64(n)
		best := next
		for k := next; k <= len(list)-(n-i); k++ {
			if math.Abs(list[k].middle()-wanted) < math.Abs(list[best].middle()-wanted) {
				best = k
			}
		}
		near[i], next = best, best+1
	}
	return append(near, len(list))
}

// moved is by how many crossed stitches a place may be moved from the nearest to an equal part of the ring. Own choice: with more
// the steps become no evener.
const moved = 2

// A pace ends at one of the stitches that a place may be moved to: how far the steps to it are off a stitch, in squares, taken
// together, at the least, and from which of those of the place before.
type pace struct {
	off  float64
	from int
}

// paces are those to all stitches that a place may be moved to, from the one furthest back on.
type paces [2*moved + 1]pace

// evenSteps moves the places so that from each to the next, and from the last to the first, it is about a stitch: the squares
// of what the steps are off are the least together. It keeps of every stitch that a place may be moved to only the best way there.
// With the places comes how long the ring through them is.
func (b *revolved) evenSteps(list []crossed, near []int) (places []RingPlace, length float64) {
	points, wide := b.middlesOf(list), b.st.SizeCm(1)
	n := len(near) - 1
	ways := make([]paces, n+1)
	for o := range ways[0] {
		ways[0][o].off = math.Inf(1)
	}
	ways[0][moved].off = 0
	for i := 1; i <= n; i++ {
		for o := range ways[i] {
			ways[i][o] = ways[i-1].on(points, near[i-1]-moved, near[i]+o-moved, wide)
		}
	}
	places = make([]RingPlace, n)
	for i, o, after := n, moved, len(list); i > 0; i-- {
		o = ways[i][o].from
		at := near[i-1] + o - moved
		length += apart(points[at], points[after])
		places[i-1], after = list[at].at, at
	}
	return places, length
}

// on is the best pace to a stitch from those of the place before, of which the one furthest back is given.
func (p *paces) on(points [][3]float64, back, to int, wide float64) pace {
	best := pace{off: math.Inf(1)}
	for o, way := range p {
		from := back + o
		if from >= min(to, len(points)) || to >= len(points) || way.off >= best.off {
			continue
		}
		step := apart(points[from], points[to]) - wide
		if off := way.off + step*step; off < best.off {
			best = pace{off, o}
		}
	}
	return best
}

// middlesOf are the points at which the middles of stitches lie as they are knit, and the first once more.
func (b *revolved) middlesOf(list []crossed) [][3]float64 {
	points := make([][3]float64, len(list)+1)
	for i, c := range list {
		along := (float64(c.at.RoundNumber) - 0.5) * b.high
		count := b.counts[c.at.RoundNumber-1]
		radius := b.st.SizeCm(count) / 2 / math.Pi
		sin, cos := math.Sincos(2 * math.Pi * (float64(c.at.StitchNumber) - 0.5) / float64(count))
		points[i] = [3]float64{radius * cos, radius * sin, b.way.at(along).height}
	}
	points[len(list)] = points[0]
	return points
}

func apart(p, q [3]float64) float64 {
	x, y, z := p[0]-q[0], p[1]-q[1], p[2]-q[2]
	return math.Sqrt(x*x + y*y + z*z)
}
