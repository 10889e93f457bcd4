package solid

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// crossed is a stitch of the body that the ring crosses, and how far along the ring its part
// of it has its middle.
type crossed struct {
	at       RingPlace
	from, to float64
}

// samplesAStitch is how finely the ring is followed for each stitch of the limb.
const samplesAStitch = 3

// limbOf picks up the stitches of a limb, and reports whether that can be done. The stitches that the ring crosses are more than the
// limb has where rows are less than twice as high as stitches are wide; of them those are taken
// that lie nearest to equal parts of it, each once.
func (r *ring) limbOf() (Limb, bool) {
	if r.along <= 0 || r.along >= r.b.way.length() || !r.fit() {
		return Limb{}, false
	}
	mid := r.middle()
	at := r.b.cell(mid)
	limb := Limb{Stitches: r.limb.Stitches, MiddleRoundNumber: at.RoundNumber, MiddleStitchNumber: at.StitchNumber, AcrossCm: 2 * r.radius}
	list, length := r.crosses()
	n := r.limb.Stitches
	if len(list) < n {
		return limb, false
	}
	next := 0
	for i := range n {
		wanted := length * float64(i) / float64(n)
		best := next
		for k := next; k <= len(list)-(n-i); k++ {
			if math.Abs((list[k].from+list[k].to)/2-wanted) < math.Abs((list[best].from+list[best].to)/2-wanted) {
				best = k
			}
		}
		limb.Places = append(limb.Places, list[best].at)
		next = best + 1
	}
	last := r.b.spotOf(limb.Places[n-1])
	for _, p := range limb.Places {
		s := r.b.spotOf(p)
		limb.length += s.apart(last)
		last = s
	}
	return limb, math.Abs(limb.length/r.wanted()-1) <= ringOff
}

// crosses are the stitches that the ring crosses, from its lowest place on in the direction of
// work, and its length.
func (r ring) crosses() (list []crossed, length float64) {
	half := samplesAStitch * r.limb.Stitches
	side := make([]spot, half+1)
	for i := range side {
		s, ok := r.at(math.Pi * float64(i) / float64(half))
		if !ok {
			return nil, 0
		}
		side[i] = s
	}
	var last spot
	for i := range 2 * half {
		s := side[min(i, 2*half-i)]
		if i > half {
			s.turn = -s.turn
		}
		s.turn += r.turn
		if i > 0 {
			length += s.apart(last)
		}
		last = s
		at := r.b.cell(s)
		if k := len(list) - 1; k >= 0 && list[k].at == at {
			list[k].to = length
		} else if !slices.ContainsFunc(list, func(c crossed) bool { return c.at == at }) {
			list = append(list, crossed{at, length, length})
		}
	}
	list[0].to = 0 // where the ring begins, in its middle
	return list, length
}

// cell is the stitch that lies at a place of the surface.
func (b *revolved) cell(s spot) RingPlace {
	round := min(int(s.along/b.high), len(b.counts)-1)
	_, turns := math.Modf(s.turn / 2 / math.Pi)
	if turns < 0 {
		turns++
	}
	return RingPlace{round + 1, min(int(turns*float64(b.counts[round])), b.counts[round]-1) + 1}
}

// spotOf is the middle of a stitch, as it is knit.
func (b *revolved) spotOf(p RingPlace) spot {
	along := (float64(p.RoundNumber) - 0.5) * b.high
	count := b.counts[p.RoundNumber-1]
	turn := 2 * math.Pi * (float64(p.StitchNumber) - 0.5) / float64(count)
	return spot{along, turn, b.st.SizeCm(count) / 2 / math.Pi, b.way.at(along).height}
}

// words say how the stitches of a limb are picked up, the number of the limb being given.
func (l Limb) words(number int) string {
	return "Limb " + strconv.Itoa(number) + ": its ring lies around stitch " + strconv.Itoa(l.MiddleStitchNumber) + " of round " +
		strconv.Itoa(l.MiddleRoundNumber) + ", through " + ringWords(l.Places) + ". With the right side facing, pick up and knit " +
		report.CountOf(l.Stitches, "stitches") + " and join in the round."
}

// ringWords list the places: stitches that lie beside one another in a round together, and so
// rounds with one stitch each above one another.
func ringWords(places []RingPlace) string {
	var parts []string
	for i := 0; i < len(places); {
		stitches, rounds := []int{places[i].StitchNumber}, []int{places[i].RoundNumber}
		next := i + 1
		for ; next < len(places) && places[next].RoundNumber == rounds[0]; next++ {
			stitches = append(stitches, places[next].StitchNumber)
		}
		for ; len(stitches) == 1 && next < len(places) && places[next].StitchNumber == stitches[0]; next++ {
			rounds = append(rounds, places[next].RoundNumber)
		}
		parts, i = append(parts, numbered("stitch", "stitches", stitches)+" of "+numbered("round", "rounds", rounds)), next
	}
	return strings.Join(parts, "; ")
}

// numbered is "stitch 4", "stitches 4-7", "rounds 4, 6 and 7".
func numbered(noun, nouns string, list []int) string {
	words := make([]string, len(list))
	alone := false
	for i, n := range list {
		words[i] = strconv.Itoa(n)
		alone = alone || i > 0 && n-list[i-1] != list[1]-list[0]
	}
	last := len(list) - 1
	switch {
	case last == 0:
		return noun + " " + words[0]
	case !alone && measure.Abs(list[1]-list[0]) == 1:
		return nouns + " " + words[0] + "-" + words[last]
	}
	return nouns + " " + report.Listed(words)
}
