package handspun

import (
	"math"
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// takenUp is what plying takes of the length of the singles, in percent:
//
//	length of the singles / length of the yarn = sqrt(1 + (pi * d * turns)^2 / 2)
//
// d being the compact diameter of all plies together. A turn of a ply is a helix, and
// unrolled it is the long side of a right-angled triangle: the turn's length of yarn by
// 2 pi r. The plies lie at r = d / sqrt(8): two and four round ones exactly so, three at a
// sixteenth less, and many by the mean of r^2 over the whole yarn. In terms of the angle at
// the surface of the plies that is 3 % at 20 degrees, 8 % at 30 and 14 % at 40.
//
// It holds as long as the plies lie side by side in one helix. What washing takes up is not
// in it, nor the stretch of soft singles under the tension of plying. Beyond
// MaxContraction, an angle of 62 degrees, plies that thick find no room around one another.
//
// Source: own derivation.
func takenUp(diameterCm, perCm float64) float64 {
	t := math.Pi * diameterCm * perCm
	return 100 * (1 - 1/math.Sqrt(1+t*t/2))
}

// mostTurns is the turns to the cm that take up MaxContraction.
func mostTurns(diameterCm float64) float64 {
	left := 1 - MaxContraction/100
	return math.Sqrt(2*(1/(left*left)-1)) / (math.Pi * diameterCm)
}

var contractionCited = report.Source{Figure: "contraction by plying", Status: report.SourceStatusOwnDerivation,
	Citation: "a turn of a ply unrolled: singles / yarn = sqrt(1 + (pi * diameter * turns)^2 / 2), the plies lying at diameter / sqrt(8) " +
		"from the middle; up to 40 %; washing takes up more: measure it"}

// contract settles what plying takes up: as asked, or by the twist, in hundredths of a
// percent so that what is said is what was worked with.
func (q *spinning) contract(c *fault.Checks, perCm float64) {
	q.contraction = new(big.Rat)
	switch p := q.in.PlyContractionPercent; {
	case q.count == 1:
	case p != nil:
		q.contraction = yarn.DecimalOf(*p)
	default:
		d := q.spun().DiameterCm(q.together().Float())
		if most := mostTurns(d); perCm > most {
			q.refuseTurns(c, perCm, most)
			return
		}
		q.contraction = big.NewRat(measure.RoundHalfUp(100*takenUp(d, perCm)), 100)
	}
}

// refuseTurns refuses a ply that finds no room.
func (q *spinning) refuseTurns(c *fault.Checks, perCm, most float64) {
	field, what, remedy := "plies", "are balanced by ", "; spin them with less twist, or give ply_twist_per_cm"
	if asked := q.plyField(); asked != "" {
		field, what, remedy = asked, "is ", ""
	}
	most = float64(int(100*most)) / 100 // what is offered must do
	c.Infeasible(what+measure.Decimal(perCm, 2)+" turns to the cm, and plies so thick have room around one another for "+
		measure.Decimal(most, 2)+" turns at most"+remedy, field)
}
