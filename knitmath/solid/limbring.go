package solid

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// samplesAStitch is how finely the ring is followed for each stitch of the limb.
const samplesAStitch = 3

// limbOf picks up the stitches of a limb, and reports whether that can be done. The stitches that the ring crosses are more than the
// limb has where rows are less than twice as high as stitches are wide; of them those are taken, each once,
// that lie near equal parts of it and about a stitch from one another.
func (r *ring) limbOf() (Limb, bool) {
	if r.mid.along <= 0 || r.mid.along >= r.b.way.length() || !r.fit() {
		return Limb{}, false
	}
	at := r.b.cell(r.middle())
	limb := Limb{Stitches: r.limb.Stitches, MiddleRoundNumber: at.RoundNumber, MiddleStitchNumber: at.StitchNumber, AcrossCm: 2 * r.radius}
	list, length, knit := r.crossesEnough()
	if list == nil || math.Abs(knit/r.wanted()-1) > ringOff {
		return limb, false
	}
	places, stepped := r.b.evenSteps(list, nearestTo(list, r.limb.Stitches, length))
	limb.Places = places
	part := stepped / r.wanted()
	return limb, part >= leastStepped && part <= greatestStepped*max(1, r.b.high/r.b.st.SizeCm(1))
}

// ringOff is how far the ring, as it is knit, may be from the length of its stitches: near the
// ends the few stitches of a round lie far from where they should. Own choice.
const ringOff = 0.25

// The ring from stitch to stitch, of that length: it goes to and fro by as much as half a stitch each, or half a row where that is
// more, and most where there are few of them; on a body like a needle or a plate it may be none. Own choice.
const (
	leastStepped    = 0.65
	greatestStepped = 1.45
)

// crossesEnough are as many stitches as the limb has, or more: where the ring of a narrow limb crosses fewer, those of a
// ring a little wider, up to the same part.
func (r ring) crossesEnough() (list []crossed, length, knit float64) {
	const widening = 1.05
	for most := (1 + ringOff) * r.radius; r.radius <= most; r.radius *= widening {
		if list, length, knit = r.crosses(); len(list) >= r.limb.Stitches {
			return list, length, knit
		}
	}
	return nil, 0, 0
}

// crosses are the stitches that the ring crosses, from its lowest place on in the direction of
// work, its length, and that as it is knit.
func (r ring) crosses() (list []crossed, length, knit float64) {
	half := samplesAStitch * r.limb.Stitches
	r.b.side = slices.Grow(r.b.side[:0], half+1)[:half+1]
	side := r.b.side
	chords := make([]float64, half+1) // to each from the one before
	var before spot                   // as it is knit
	guess := r.lowest()
	for i := range side {
		s, ok := r.at(math.Pi*float64(i)/float64(half), guess)
		if !ok {
			return nil, 0, 0
		}
		worked := r.b.asKnit(s)
		if i > 0 {
			knit += 2 * worked.apart(before)
			chords[i] = s.apart(side[i-1])
		}
		guess = onward(i, side[max(i-1, 0)], s)
		side[i], before = s, worked
	}
	list = make([]crossed, 0, half)
	for i := range 2 * half {
		s := side[min(i, 2*half-i)]
		length += chords[min(i, 2*half-i+1)]
		if i > half {
			s.turn = -s.turn
		}
		s.turn += r.turn
		at := r.b.cell(s)
		if k := len(list) - 1; k >= 0 && list[k].at == at {
			list[k].to = length
		} else if !slices.ContainsFunc(list, func(c crossed) bool { return c.at == at }) {
			list = append(list, crossed{at, length, length})
		}
	}
	list[0].to = 0 // where the ring begins, in its middle
	return list, length, knit
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

// asKnit is a place of a ring as far round the body, from the middle of the ring, as the counts of the rounds put it: between those
// of two where it lies between their middles.
func (b *revolved) asKnit(s spot) spot {
	rounds := s.along/b.high - 0.5
	low := min(max(int(rounds), 0), len(b.counts)-1)
	high := min(low+1, len(b.counts)-1)
	part := min(max(rounds-float64(low), 0), 1)
	count := (1-part)*float64(b.counts[low]) + part*float64(b.counts[high])
	s.turn *= count / (2 * math.Pi * s.radius * b.st.PerCm())
	return s
}

// words say how the stitches of a limb are picked up, the number of the limb being given.
func (l Limb) words(number int) string {
	return "Limb " + strconv.Itoa(number) + ": its ring lies around stitch " + strconv.Itoa(l.MiddleStitchNumber) + " of round " +
		strconv.Itoa(l.MiddleRoundNumber) + ", through " + ringWords(l.Places) + ". With the right side facing join the yarn, pick up and knit " +
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
