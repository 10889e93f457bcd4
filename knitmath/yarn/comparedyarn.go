package yarn

import (
	"math"
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// A ComparedYarn is what is known of one of two yarns: its length by put-up or count, its
// wraps, its gauge, or several of them.
type ComparedYarn struct {
	PutUp        *PutUp
	Count        *Count
	Strands      *int
	WrapsPerInch *float64
	Stitches     *float64
	OverCm       *float64
	Fibres       []FibreShare
	Plies        *int
}

// comparedYarn is a yarn as it is knit: all its strands together. Where its length is not
// known it has no tex.
type comparedYarn struct {
	in       ComparedYarn
	one      Tex // one strand
	together Tex
	strands  int
	plies    int // of one strand; 0 where they are not known
}

// vetCompared checks a yarn that must be there, and of which something must be known.
func vetCompared(c *fault.Checks, field string, in *ComparedYarn) comparedYarn {
	if in == nil {
		c.Add(field, fault.ReasonRequired, "is missing; give put_up, count, wraps_per_inch or stitches")
		return comparedYarn{}
	}
	if in.PutUp == nil && in.Count == nil && in.WrapsPerInch == nil && in.Stitches == nil {
		for _, name := range []string{"put_up", "count", "wraps_per_inch", "stitches"} {
			c.Add(fault.Join(field, name), fault.ReasonRequired, "is missing, and so are the other measures; give one of them or more")
		}
	}
	c.AtMostOne(in.PutUp != nil, in.Count != nil, fault.Join(field, "put_up"), fault.Join(field, "count"))
	VetPutUp(c, fault.Join(field, "put_up"), in.PutUp)
	y := comparedYarn{in: *in, strands: fault.Or(in.Strands, 1)}
	if in.Count != nil {
		read, _ := VetCount(c, fault.Join(field, "count"), in.Count)
		y.one = read.Tex
		if read.Plies > 1 { // one is what a count says that speaks of no plies
			y.plies = read.Plies
		}
	}
	c.OptionalCount(field, "strands", in.Strands, 1, MaxStrands)
	c.OptionalNumber(field, "wraps_per_inch", in.WrapsPerInch, MinWraps, MaxWraps)
	c.OptionalNumber(field, "stitches", in.Stitches, MinStitches, MaxStitches)
	c.OptionalNumber(field, "over_cm", in.OverCm, measure.MinCm, MaxOverCm)
	vetFibres(c, fault.Join(field, "fibres"), in.Fibres)
	c.OptionalCount(field, "plies", in.Plies, 1, MaxPlies)
	y.plies = fault.Or(in.Plies, y.plies)
	if in.PutUp != nil && c.Sound(fault.Join(field, "put_up")) {
		y.one = in.PutUp.tex()
	}
	if !y.one.IsZero() && y.strands > 0 {
		y.together = y.one.Strands(y.strands)
	}
	return y
}

// length is its tex and its metres to 100 g; nil where they are not known.
func (y comparedYarn) length() (tex, metresPer100G *float64) {
	l := y.together.length()
	if l.tex == 0 {
		return nil, nil
	}
	return &l.tex, &l.metresPer100G
}

// categories are those of its length, all strands together: by the chart of lengths, and
// by the gauge that is usual for it where that says otherwise. Without a length they are
// those of its gauge, and without that of its wraps, as both charts have them or either.
func (y comparedYarn) categories() (found []int) {
	switch l := y.together.length(); {
	case l.tex > 0:
		return eitherOf(chartOfLength(l), usualOfLength(l))
	case y.in.Stitches != nil:
		all, _ := Categories(y.perCm())
		for _, c := range all {
			found = append(found, c.Category)
		}
		return found
	}
	w := *y.wraps()
	if outside(w, fewestWraps, mostWraps) != inChart {
		return nil
	}
	var spinners, standard []int
	for i := range weightCharts {
		if spinnersChart(i).spinners.has(w) {
			spinners = append(spinners, i)
		}
		if weightCharts[i].wraps.has(w) {
			standard = append(standard, i)
		}
	}
	return orElse(common(spinners, standard), orElse(spinners, standard))
}

// perCm is its gauge, exactly; nil without one.
func (y comparedYarn) perCm() *big.Rat {
	if y.in.Stitches == nil {
		return nil
	}
	return new(big.Rat).Quo(DecimalOf(*y.in.Stitches), DecimalOf(fault.Or(y.in.OverCm, DefaultOverCm)))
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
