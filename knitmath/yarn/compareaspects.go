package yarn

import (
	"math"
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of the notices on comparisons.
const (
	// NoComposition: drape and washing are not compared for want of a composition. Field is
	// the fibres that are missing.
	NoComposition report.Reason = "NO_COMPOSITION"
	// ByLength: the balls differ from what the same mass would be. Field is
	// first_ball_count.
	ByLength report.Reason = "BY_LENGTH"
	// Sheds: hairy yarn, which small children breathe in. Field is the fibres.
	Sheds report.Reason = "SHEDS"
)

// compare judges every aspect that both yarns say something of.
func (o *Comparison) compare(first, second comparedYarn) {
	add := func(a Aspect, v Verdict, why string) {
		o.Aspects = append(o.Aspects, AspectResult{a, v, why})
		o.Verdict = max(o.Verdict, v)
	}
	add(AspectThickness, judgedTex(first.together, second.together), "the second is "+
		apart(o.ThicknessRatio, "thicker", "thinner", "as thick as the first")+
		", as far as length and mass tell: a lofty yarn is thicker than that, a dense one thinner")
	if a, b := o.FirstWrapsPerInch, o.SecondWrapsPerInch; a != nil && b != nil {
		add(AspectWraps, judged(*b / *a), "the second has "+apart(*b / *a, "more wraps", "fewer wraps", "as many wraps")+" to the inch")
	}
	if a, b := first.in.Stitches, second.in.Stitches; a != nil && b != nil {
		ratio := *b / fault.Or(second.in.OverCm, DefaultOverCm) / (*a / fault.Or(first.in.OverCm, DefaultOverCm))
		add(AspectGauge, judged(ratio), "the second is knit to "+apart(ratio, "more stitches", "fewer stitches", "as many stitches"))
	}
	if len(first.in.Fibres) == 0 || len(second.in.Fibres) == 0 {
		return
	}
	if a, b := most(first.in.Fibres), most(second.in.Fibres); a == b && a != unknown {
		add(AspectDrape, VerdictFits, "both are mostly of a kind that "+familyWords[a]+"; plies and spinning still tell")
	} else {
		add(AspectDrape, VerdictNearly, "the first mostly "+familyWords[a]+", the second mostly "+familyWords[b]+
			", so the fabric is likely to hang and wear differently: knit a swatch and let it hang")
	}
	switch a, b := felting(first.in.Fibres), felting(second.in.Fibres); {
	case a == b:
		add(AspectWashing, VerdictFits, "neither needs more care than the other by its fibre; the ball bands decide")
	case b:
		add(AspectWashing, VerdictNearly, "the second may felt where the first does not: wash by hand in cool water unless its band allows more")
	default:
		add(AspectWashing, VerdictFits, "the second is not likely to felt: easier to wash, and no good for a pattern that is felted")
	}
}

// judgedTex is the verdict on two thicknesses, whose squares are as the tex: exactly, so
// that a yarn at the bound is within it.
func judgedTex(first, second Tex) Verdict {
	ratio := new(big.Rat).Quo(second.grams, first.grams)
	if ratio.Cmp(one) < 0 {
		ratio.Inv(ratio)
	}
	switch {
	case ratio.Cmp(big.NewRat(105*105, 10_000)) <= 0: // 1 + fitsWithin, squared
		return VerdictFits
	case ratio.Cmp(big.NewRat(110*110, 10_000)) <= 0: // 1 + nearlyWithin, squared
		return VerdictNearly
	}
	return VerdictNo
}

// judged is the verdict on a ratio that would best be 1; one at a bound is within it, though
// the quotient of two decimals may lie a last digit beyond.
func judged(ratio float64) Verdict {
	const lastDigits = 1e-12
	switch off := max(ratio, 1/ratio) - 1 - lastDigits; {
	case off <= fitsWithin:
		return VerdictFits
	case off <= nearlyWithin:
		return VerdictNearly
	}
	return VerdictNo
}

// apart says a ratio as a percentage in one of two directions, or that it is the same to
// half a percent.
func apart(ratio float64, more, less, same string) string {
	switch percent := measure.Decimal(math.Abs(ratio-1)*100, 0); {
	case percent == "0":
		return same
	case ratio > 1:
		return percent + " % " + more
	default:
		return percent + " % " + less
	}
}

// remark says what was not compared, and what to take care of.
func (o *Comparison) remark(in CompareInput, first, second comparedYarn) {
	add := func(reason report.Reason, field, text string) {
		o.Notices = append(o.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	for _, y := range []struct {
		field string
		yarn  comparedYarn
	}{{"first", first}, {"second", second}} {
		at := fault.Join(y.field, "fibres")
		if len(y.yarn.in.Fibres) == 0 {
			add(NoComposition, at, "is not given, so that drape and washing are not compared")
		}
		for _, s := range y.yarn.in.Fibres {
			if s.Fibre == FibreMohair {
				add(Sheds, at, "mohair sheds hairs: it is not for babies, who breathe them in and swallow them")
			}
		}
	}
	if in.FirstBallCount == nil {
		return
	}
	// What the same mass would be, for whoever would have gone by it.
	mass := float64(*in.FirstBallCount) * first.in.PutUp.BallG / second.in.PutUp.BallG
	if math.Abs(mass-float64(*o.SecondBallCount)) >= 1 {
		add(ByLength, "first_ball_count", "the same mass would be about "+measure.Decimal(mass, 1)+
			" balls, which is not the same length: it is the length that is knit")
	}
}
