package hand

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A round top of the book narrows every 5th stitch, and works 5 rounds even: as many as there are
// plain stitches between two decreases, and two more.
const (
	bookSection = 5
	bookMore    = 2
)

// What may be tried where that is too high or too low for the hand.
const (
	leastSection, mostSection = 3, 8
	dislikedRest              = 0.15 // of the height that is wanted: stitches left over at the end of rounds
)

// How high a round top is: a quarter of the hand's circumference, as half a ball. The book's is
// taken where it is a third more or less, and what is further from it, whatever is tried, is said.
// Own choice.
const bookAbout = 0.35

// topRounds are the rounds of a round top of sections of so many stitches: of n stitches a round
// decreases, and n - 2 and so many more are worked even, but after the last.
func topRounds(section, more int) int { return section*(section-1)/2 + more*(section-2) }

// height is a round top's, as a part of what is wanted.
func (m *mitten) height(rounds int) float64 {
	return m.rw.SizeCm(rounds) / (m.st.SizeCm(m.stitches) / 4)
}

// roundTop is how many stitches its sections have, and how many rounds more than those have plain
// stitches are worked even.
func (m *mitten) roundTop() (section, more int) {
	if math.Abs(m.height(topRounds(bookSection, bookMore))-1) <= bookAbout {
		return bookSection, bookMore
	}
	best := math.Inf(1)
	for s := leastSection; s <= min(mostSection, m.stitches/2); s++ {
		for e := 0; e <= bookMore; e++ {
			off := math.Abs(m.height(topRounds(s, e)) - 1)
			if m.stitches%s != 0 {
				off += dislikedRest
			}
			if off < best {
				best, section, more = off, s, e
			}
		}
	}
	return section, more
}

// unlikeHands remarks on a round top that is much higher or lower than the hand wants.
func (m *mitten) unlikeHands(out MittenTop) []report.Notice {
	part := m.height(out.TopRounds)
	if math.Abs(part-1) <= bookAbout {
		return nil
	}
	return []report.Notice{{Reason: TopUnlikeHands, Field: "kind", Description: "the top is " + out.unit.Size(out.TopCm) + " high, " +
		measure.Decimal(max(part, 0.01), 2) + " times a quarter of the hand's circumference" + m.likelier(out, part)}}
}

// topNames are the kinds that are no round top, and not as short as can be.
var topNames = map[TopKind]string{TopKindWedge: "wedge", TopKindStar: "star"}

// likelier names the kind of top that comes nearest to what the hand wants, if one comes nearer than a round
// top of that part of it.
func (m *mitten) likelier(out MittenTop, part float64) string {
	best, words := math.Abs(part-1), ""
	for _, kind := range [...]TopKind{TopKindWedge, TopKindStar} {
		plan, refused := m.closing(MittenTopInput{Kind: kind}).Plan()
		if off := math.Abs(m.height(plan.RoundCount) - 1); refused == "" && off < best {
			best, words = off, "; a "+topNames[kind]+" is "+out.unit.Size(m.rw.SizeCm(plan.RoundCount))+" high"
		}
	}
	return words
}
