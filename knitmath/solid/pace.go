package solid

import "example.com/knitmath/knitmath/fault"

// Limits of rates.
const (
	// MaxRates is the most rates that follow one another.
	MaxRates = 20
	// MaxRateRounds is the most rounds from one decrease round to the next.
	MaxRateRounds = 100
)

// A Rate is a decrease round with the rounds worked even after it, so many times.
type Rate struct {
	EveryRounds int
	Times       int
}

// CheckRates checks the rates of a question, which stand in its field rates.
func CheckRates(c *fault.Checks, rates []Rate) {
	c.Items("", "rates", len(rates), MaxRates)
	if !c.Sound("rates") {
		return
	}
	for i, r := range rates {
		c.RequiredCount(fault.Index("rates", i), "every_rounds", r.EveryRounds, 1, MaxRateRounds)
		c.RequiredCount(fault.Index("rates", i), "times", r.Times, 1, MaxClosingRounds)
	}
}

// A Pace says on which rounds the decreases of a closing are worked. The zero Pace is
// every round.
type Pace struct {
	way        paceWay
	rates      []Rate
	more       int
	fall       func(stitches float64) float64
	depth      int
	successive int
	tolerance  float64
	drawnOut   bool
}

type paceWay uint8

const (
	paceRates paceWay = iota
	paceHalf
	pacePlain
	paceAlong
)

// AtRates works the rates one after the other, the last of them to the end.
func AtRates(rates ...Rate) Pace { return Pace{way: paceRates, rates: rates} }

// EveryRound decreases on every round.
func EveryRound() Pace { return Pace{} }

// ToHalf decreases every 2nd round until half of the stitches are left, then every round:
// the toe and the mitten top of the trade. Common practice.
func ToHalf() Pace { return Pace{way: paceHalf} }

// PlainAfter works as many rounds even after each decrease round as it had plain stitches
// between two decreases, and so many more. Source: Th. de Dillmont, Encyclopedia of
// Needlework (c. 1886), the round toe, which has none more.
func PlainAfter(more int) Pace { return Pace{way: pacePlain, more: more} }

// Along keeps to a curve: fall gives the part of the depth, from 0 to 1, below the place
// where the curve has so many stitches, and must rise as they get fewer. Of all rhythms
// that stay within tolerance rounds of the curve it is one that turns no slower again where that
// can be, and of those the one that is least to remember, see follow. The last
// decrease rounds, so many, follow one another whatever the curve wants, so that there is
// no point; the curve is so many rounds deep, and what is worked a little less, unless it is
// drawn out: see [Pace.DrawnOut].
func Along(fall func(stitches float64) float64, rounds, successive int, tolerance float64) Pace {
	return Pace{way: paceAlong, fall: fall, depth: rounds, successive: successive, tolerance: tolerance}
}

// DrawnOut is a pace along a curve that is as much deeper as it takes for the rounds from
// the first decrease to the last to be as many as were asked for, or as near as can be.
func (p Pace) DrawnOut() Pace {
	p.drawnOut = true
	return p
}

// placed is where decrease rounds lie.
type placed struct {
	rounds    []int
	total     int
	departure float64
}

func (p Pace) place(steps []step) placed {
	switch p.way {
	case paceHalf:
		start := steps[0].from
		return evenAfter(steps, func(i int) int {
			if 2*steps[i].to > start {
				return 1
			}
			return 0
		})
	case pacePlain:
		return evenAfter(steps, func(i int) int { return steps[i].plain + p.more })
	case paceAlong:
		return p.follow(steps)
	}
	if len(p.rates) == 0 {
		return evenAfter(steps, func(int) int { return 0 })
	}
	rate, left := 0, p.rates[0].Times
	return evenAfter(steps, func(int) int {
		for left == 0 && rate < len(p.rates)-1 {
			rate++
			left = p.rates[rate].Times
		}
		left = max(left-1, 0)
		return p.rates[rate].EveryRounds - 1
	})
}

// evenAfter places every step when so many rounds are worked even after each.
func evenAfter(steps []step, even func(i int) int) placed {
	at := placed{rounds: make([]int, len(steps)), total: 0}
	for i := range steps {
		at.rounds[i] = at.total + 1
		at.total += 1 + even(i)
	}
	return at
}
