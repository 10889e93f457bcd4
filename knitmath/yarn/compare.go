package yarn

import (
	"math"
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// A ComparedYarn is what is known of one of two yarns.
type ComparedYarn struct {
	PutUp        *PutUp
	Count        *Count
	Strands      *int
	WrapsPerInch *float64
	Stitches     *float64
	OverCm       *float64
	Fibres       []FibreShare
}

// A CompareInput asks whether a second yarn will do for a first. It mirrors
// CompareYarnsRequest.
type CompareInput struct {
	First          *ComparedYarn
	Second         *ComparedYarn
	FirstBallCount *int
	DisplayUnit    measure.DisplayUnit
}

// Ranges of a comparison.
const (
	MaxStrands = 10
	MaxBalls   = 10_000
)

// Verdict says whether one yarn will do for another.
type Verdict int32

// The verdicts, by how bad they are.
const (
	VerdictUnspecified Verdict = iota
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
)

// An AspectResult is one aspect, with why.
type AspectResult struct {
	Aspect  Aspect
	Verdict Verdict
	Why     string
}

// A Comparison is the answer to CompareInput.
type Comparison struct {
	Verdict             Verdict
	Aspects             []AspectResult
	FirstTex            float64
	SecondTex           float64
	FirstMetresPer100G  float64
	SecondMetresPer100G float64
	ThicknessRatio      float64
	FirstCategories     []int
	SecondCategories    []int
	FirstWrapsPerInch   *float64
	SecondWrapsPerInch  *float64
	NeededM             *float64
	SecondBallCount     *int
	Notices             []report.Notice

	unit measure.DisplayUnit
}

// fitsWithin and nearlyWithin are how far two thicknesses, wraps or gauges may be apart.
// The stitches to a width go with the thickness, so that 5 % are one stitch in 20, which a
// needle a size up or down makes good, and 10 % are two, which change the fabric. Own
// derivation; common practice agrees.
const (
	fitsWithin   = 0.05
	nearlyWithin = 0.10
)

// comparedYarn is a yarn as it is knit: all its strands together.
type comparedYarn struct {
	in       *ComparedYarn
	together Tex
	strands  int
}

// CompareYarns says whether a second yarn will do for a first, and how many balls of it:
//
//	thickness ratio = sqrt(second tex / first tex), all strands together
//	balls = metres needed x strands / metres of a ball, rounded up
//
// Balls go by length and never by mass: a heavier yarn has fewer metres in a ball of the
// same mass. The verdict is the worst of thickness, wraps and gauge; drape and washing make
// it no worse than nearly, for they are matters of taste and care.
func CompareYarns(in CompareInput) (Comparison, error) {
	var c fault.Checks
	first, second := vetCompared(&c, "first", in.First), vetCompared(&c, "second", in.Second)
	c.OptionalCount("", "first_ball_count", in.FirstBallCount, 1, MaxBalls)
	if in.FirstBallCount != nil {
		c.Needs(true, "first_ball_count", in.First == nil || in.First.PutUp != nil, "first.put_up")
		c.Needs(true, "first_ball_count", in.Second == nil || in.Second.PutUp != nil, "second.put_up")
	}
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if err := c.Err(); err != nil {
		return Comparison{}, err
	}
	out := Comparison{unit: in.DisplayUnit, FirstTex: first.together.Float(), SecondTex: second.together.Float(),
		FirstMetresPer100G:  first.together.number(CountSystemMetresPer100G),
		SecondMetresPer100G: second.together.number(CountSystemMetresPer100G),
		FirstCategories:     first.categories(), SecondCategories: second.categories()}
	out.FirstWrapsPerInch, out.SecondWrapsPerInch = first.wraps(), second.wraps()
	out.ThicknessRatio = math.Sqrt(out.SecondTex / out.FirstTex)
	out.compare(first, second)
	if in.FirstBallCount != nil && !out.buy(*in.FirstBallCount, first, second) {
		c.Infeasible("would be more than 1000000 balls of the second", "first_ball_count")
		return Comparison{}, c.Err()
	}
	out.remark(in, first, second)
	return out, nil
}

// vetCompared checks a yarn that must be there.
func vetCompared(c *fault.Checks, field string, in *ComparedYarn) comparedYarn {
	if in == nil {
		c.Add(field, fault.ReasonRequired, "is missing; give put_up or count")
		return comparedYarn{}
	}
	c.OneOf(in.PutUp != nil, in.Count != nil, fault.Join(field, "put_up"), fault.Join(field, "count"))
	VetPutUp(c, fault.Join(field, "put_up"), in.PutUp)
	y := comparedYarn{in: in, strands: fault.Or(in.Strands, 1)}
	var one Tex
	if in.Count != nil {
		read, _ := VetCount(c, fault.Join(field, "count"), in.Count)
		one = read.Tex
	}
	c.OptionalCount(field, "strands", in.Strands, 1, MaxStrands)
	c.OptionalNumber(field, "wraps_per_inch", in.WrapsPerInch, MinWraps, MaxWraps)
	c.OptionalNumber(field, "stitches", in.Stitches, MinStitches, MaxStitches)
	c.OptionalNumber(field, "over_cm", in.OverCm, measure.MinCm, MaxOverCm)
	vetFibres(c, fault.Join(field, "fibres"), in.Fibres)
	if in.PutUp != nil && c.Sound(fault.Join(field, "put_up")) {
		one = TexOf(new(big.Rat).Quo(DecimalOf(in.PutUp.BallM), DecimalOf(in.PutUp.BallG)))
	}
	if !one.IsZero() && y.strands > 0 {
		y.together = one.Strands(y.strands)
	}
	return y
}

// categories are those of its length, all strands together: by the chart of lengths, and
// by the gauge that is usual for it where that says otherwise.
func (y comparedYarn) categories() []int {
	return eitherOf(chartOfLength(y.together), usualOfLength(y.together))
}

// wraps are those of all strands together: they were counted on one, and lie beside one
// another in a circle, so that the diameter grows with the root of their number.
func (y comparedYarn) wraps() *float64 {
	if y.in.WrapsPerInch == nil {
		return nil
	}
	w := *y.in.WrapsPerInch / math.Sqrt(float64(y.strands))
	return &w
}

// buy counts the balls of the second; it is not ok where nobody could carry them.
func (o *Comparison) buy(balls int, first, second comparedYarn) bool {
	// Metres of the fabric's yarn, however many strands lie in it.
	metres := new(big.Rat).Quo(new(big.Rat).Mul(big.NewRat(int64(balls), 1), DecimalOf(first.in.PutUp.BallM)),
		big.NewRat(int64(first.strands), 1))
	needed := new(big.Rat).Mul(metres, big.NewRat(int64(second.strands), 1))
	count := new(big.Rat).Quo(needed, DecimalOf(second.in.PutUp.BallM))
	up := new(big.Int).Add(count.Num(), new(big.Int).Sub(count.Denom(), big.NewInt(1)))
	up.Quo(up, count.Denom())
	if !up.IsInt64() || up.Int64() > mostBalls {
		return false
	}
	m, n := nearest(needed), int(up.Int64())
	o.NeededM, o.SecondBallCount = &m, &n
	return true
}

// mostBalls is the most that are answered.
const mostBalls = 1_000_000

// Cost is the price of a comparison.
func (CompareInput) Cost() int { return 40 }
