package yarn

import (
	"math"
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A CompareInput asks whether a second yarn will do for a first. It mirrors
// CompareYarnsRequest.
type CompareInput struct {
	First          *ComparedYarn
	Second         *ComparedYarn
	FirstBallCount *int
	FirstLengthM   *float64
	DisplayUnit    measure.DisplayUnit
}

// Ranges of a comparison.
const (
	MaxStrands = 10
	MaxBalls   = 10_000
	MinLengthM = 0.1
	MaxLengthM = 1e7
)

// Verdict says whether one yarn will do for another.
type Verdict int32

// The verdicts, by how bad they are.
const (
	VerdictUnspecified Verdict = iota // they have no measure in common
	VerdictFits
	VerdictNearly
	VerdictNo
)

// Aspect is what two yarns are compared by.
type Aspect int32

// The aspects.
const (
	AspectUnspecified Aspect = iota
	AspectThickness
	AspectWraps
	AspectGauge
	AspectDrape
	AspectWashing
	// AspectCategory is by the weight category of whatever each yarn is known by, where
	// they have neither thickness, wraps nor gauge in common.
	AspectCategory
	// AspectPlies is by how many plies one strand has.
	AspectPlies
)

// An AspectResult is one aspect, with why.
type AspectResult struct {
	Aspect  Aspect
	Verdict Verdict
	Why     string
}

// A Comparison is the answer to CompareInput. What is not known of a yarn is nil.
type Comparison struct {
	Verdict             Verdict
	Aspects             []AspectResult
	FirstTex            *float64
	SecondTex           *float64
	FirstMetresPer100G  *float64
	SecondMetresPer100G *float64
	ThicknessRatio      *float64
	FirstCategories     []int
	SecondCategories    []int
	FirstWrapsPerInch   *float64
	SecondWrapsPerInch  *float64
	NeededM             *float64
	NeededG             *float64
	SecondBallCount     *int
	Notices             []report.Notice

	unit          measure.DisplayUnit
	first, second comparedYarn
	thicker       bool // the second, by what makes it not do
}

// fitsWithin and nearlyWithin are how far two thicknesses, wraps or gauges may be apart.
// The stitches to a width go with the thickness, so that 5 % are one stitch in 20, which a
// needle a size up or down makes good, and 10 % are two, which change the fabric. Own
// derivation; common practice agrees.
const (
	fitsWithin   = 0.05
	nearlyWithin = 0.10
)

// CompareYarns says whether a second yarn will do for a first, and how many balls of it:
//
//	thickness ratio = sqrt(second tex / first tex), all strands together
//	balls = metres needed x strands / metres of a ball, rounded up
//
// Balls go by length and never by mass: a heavier yarn has fewer metres in a ball of the
// same mass. Only what is known of both yarns is compared. The verdict is the worst of
// thickness, wraps and gauge; where none of them is known of both it goes by weight
// categories, which are wide, so that it is nearly at best. Plies, drape and washing make it
// no worse than nearly, for they are matters of taste and care.
func CompareYarns(in CompareInput) (Comparison, error) {
	var c fault.Checks
	first, second := vetCompared(&c, "first", in.First), vetCompared(&c, "second", in.Second)
	vetLengthOfFirst(&c, in)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if err := c.Err(); err != nil {
		return Comparison{}, err
	}
	out := Comparison{unit: in.DisplayUnit, first: first, second: second,
		FirstCategories: first.categories(), SecondCategories: second.categories()}
	out.FirstTex, out.FirstMetresPer100G = first.length()
	out.SecondTex, out.SecondMetresPer100G = second.length()
	out.FirstWrapsPerInch, out.SecondWrapsPerInch = first.wraps(), second.wraps()
	if out.FirstTex != nil && out.SecondTex != nil {
		ratio := math.Sqrt(*out.SecondTex / *out.FirstTex)
		out.ThicknessRatio = &ratio
	}
	out.compare()
	if field := out.buy(in); field != "" {
		c.Infeasible("would be more than 1000000 balls of the second", field)
		return Comparison{}, c.Err()
	}
	out.remark(in)
	return out, nil
}

// vetLengthOfFirst checks how much of the first is wanted, which may be left open.
func vetLengthOfFirst(c *fault.Checks, in CompareInput) {
	c.OptionalCount("", "first_ball_count", in.FirstBallCount, 1, MaxBalls)
	c.OptionalNumber("", "first_length_m", in.FirstLengthM, MinLengthM, MaxLengthM)
	c.AtMostOne(in.FirstBallCount != nil, in.FirstLengthM != nil, "first_ball_count", "first_length_m")
	c.Needs(in.FirstBallCount != nil, "first_ball_count", in.First == nil || in.First.PutUp != nil, "first.put_up")
}

// buy says how much of the second it takes, where the question says how much of the first
// is wanted: metres always, grams where its length is known, balls where its balls are.
// Where nobody could carry them it gives the field that asks for so many.
func (o *Comparison) buy(in CompareInput) (tooMany string) {
	field, wanted := "first_length_m", new(big.Rat)
	switch {
	case in.FirstBallCount != nil:
		field = "first_ball_count"
		wanted.Mul(big.NewRat(int64(*in.FirstBallCount), 1), DecimalOf(in.First.PutUp.BallM))
	case in.FirstLengthM != nil:
		wanted = DecimalOf(*in.FirstLengthM)
	default:
		return ""
	}
	// Metres of the fabric's yarn, however many strands lie in it.
	metres := wanted.Quo(wanted, big.NewRat(int64(o.first.strands), 1))
	needed := new(big.Rat).Mul(metres, big.NewRat(int64(o.second.strands), 1))
	m := nearest(needed)
	o.NeededM = &m
	if tex := o.second.one.length().tex; tex > 0 {
		g := m * tex / 1000
		o.NeededG = &g
	}
	if in.Second.PutUp == nil {
		return ""
	}
	count := new(big.Rat).Quo(needed, DecimalOf(in.Second.PutUp.BallM))
	up := new(big.Int).Add(count.Num(), new(big.Int).Sub(count.Denom(), big.NewInt(1)))
	up.Quo(up, count.Denom())
	if !up.IsInt64() || up.Int64() > mostBalls {
		return field
	}
	n := int(up.Int64())
	o.SecondBallCount = &n
	return ""
}

// mostBalls is the most that are answered.
const mostBalls = 1_000_000

// Cost is the price of a comparison.
func (CompareInput) Cost() int { return 40 }
