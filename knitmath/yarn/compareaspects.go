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
	// OneSided: a measure is known of one yarn only, so that it is not compared. Field is
	// where the other yarn's would stand.
	OneSided report.Reason = "ONE_SIDED"
	// NothingInCommon: the yarns have neither thickness, wraps nor gauge in common, and one
	// of them no weight category. Field is second.
	NothingInCommon report.Reason = "NOTHING_IN_COMMON"
	// ByLength: the balls differ from what the same mass would be. Field is
	// first_ball_count.
	ByLength report.Reason = "BY_LENGTH"
	// MeasuresContradict: by one measure the second yarn is too thick and by another too thin,
	// or they lie more than farApart. Field is second.
	MeasuresContradict report.Reason = "MEASURES_CONTRADICT"
	// Sheds: hairy yarn, which small children breathe in. Field is the fibres.
	Sheds report.Reason = "SHEDS"
)

// compare judges every aspect that both yarns say something of.
func (o *Comparison) compare() {
	o.compareThickness()
	if len(o.Aspects) == 0 {
		o.compareCategories()
	}
	known := o.Verdict
	o.comparePlies()
	o.compareFibres(o.first.in.Fibres, o.second.in.Fibres)
	if known == VerdictUnspecified {
		o.Verdict = known // fibres say nothing of how thick a yarn is
	}
}

// judge adds an aspect to the answer; thicker is whether the second is, by it.
func (o *Comparison) judge(a Aspect, v Verdict, thicker bool, why string) {
	if v > o.Verdict {
		o.Verdict, o.thicker = v, thicker
	}
	o.Aspects = append(o.Aspects, AspectResult{a, v, why})
}

// compareThickness compares length and mass, wraps and gauge.
func (o *Comparison) compareThickness() {
	if r := o.ThicknessRatio; r != nil {
		o.judge(AspectThickness, judgedTex(o.first.together, o.second.together), *r > 1, "the second is "+
			apart(*r, "thicker", "thinner", "as thick as the first")+
			", as far as length and mass tell: a lofty yarn is thicker than that, a dense one thinner")
	}
	if a, b := o.FirstWrapsPerInch, o.SecondWrapsPerInch; a != nil && b != nil {
		o.judge(AspectWraps, judged(*b / *a), *b < *a,
			"the second has "+apart(*b / *a, "more wraps", "fewer wraps", "as many wraps")+" to the inch")
	}
	if a, b := o.first.perCm(), o.second.perCm(); a != nil && b != nil {
		ratio := nearest(new(big.Rat).Quo(b, a))
		o.judge(AspectGauge, judged(ratio), ratio < 1,
			"the second is knit to "+apart(ratio, "more stitches", "fewer stitches", "as many stitches"))
	}
}

// compareCategories compares what else is known. A category is wide, so that yarns of one
// may be as far apart as those of two: they nearly do at best.
func (o *Comparison) compareCategories() {
	a, b := o.FirstCategories, o.SecondCategories
	if len(a) == 0 || len(b) == 0 {
		return
	}
	if both := common(a, b); len(both) > 0 {
		o.judge(AspectCategory, VerdictNearly, false, "both may be "+categoryWords(both)+", a wide range: only a swatch tells")
		return
	}
	thicker, way := b[0] > a[0], "thinner"
	if thicker {
		way = "thicker"
	}
	o.judge(AspectCategory, VerdictNo, thicker, "the second is "+way+": "+categoryWords(b)+" for "+categoryWords(a))
}

// comparePlies compares how the yarns are built, which tells in the fabric as fibre does.
func (o *Comparison) comparePlies() {
	first, second := o.first.plies, o.second.plies
	if first == 0 || second == 0 {
		return
	}
	if first == second {
		o.judge(AspectPlies, VerdictFits, false, "both have "+report.CountOf(first, "plies")+
			", so that stitches show alike, as far as plies tell")
		return
	}
	words := "the second has " + report.CountOf(second, "plies") + " for the " + measure.Decimal(float64(first), 0) + " of the first, "
	if second > first {
		words += "so it is likely rounder, shows stitches more clearly and wears longer"
	} else {
		words += "so it is likely flatter and softer, and stitches run together more"
	}
	if min(first, second) == 1 {
		words += "; of the two the single may pill and lean"
	}
	o.judge(AspectPlies, VerdictNearly, false, words)
}

// compareFibres compares how the fabrics hang and how they may be washed.
func (o *Comparison) compareFibres(first, second []FibreShare) {
	if len(first) == 0 || len(second) == 0 {
		return
	}
	add := func(a Aspect, v Verdict, why string) { o.judge(a, v, false, why) }
	if a, b := most(first), most(second); a == b && a != unknown {
		add(AspectDrape, VerdictFits, "both are mostly of a kind that "+familyWords[a]+"; plies and spinning still tell")
	} else {
		add(AspectDrape, VerdictNearly, "the first is mostly of a kind that "+familyWords[a]+", the second of one that "+familyWords[b]+
			", so the fabric is likely to hang and wear differently: knit a swatch and let it hang")
	}
	switch a, b := felting(first), felting(second); {
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
func (o *Comparison) remark(in CompareInput) {
	add := func(reason report.Reason, field, text string) {
		o.Notices = append(o.Notices, report.Notice{Reason: reason, Field: field, Description: text})
	}
	o.remarkOneSided(add)
	if o.contradicts() {
		add(MeasuresContradict, "second", "has measures that contradict one another: "+o.measureWords()+
			"; one of them may be of another fabric, as lace or felt is, or wrong: measure both yarns again alike, before you go by either")
	}
	if o.Verdict == VerdictUnspecified {
		add(NothingInCommon, "second", "is known by other measures than the first, and no weight category stands between them: give the "+
			"same measure of both")
	}
	for _, y := range []struct {
		field string
		yarn  comparedYarn
	}{{"first", o.first}, {"second", o.second}} {
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
	if in.FirstBallCount == nil || o.SecondBallCount == nil {
		return
	}
	// What the same mass would be, for whoever would have gone by it.
	mass := float64(*in.FirstBallCount) * in.First.PutUp.BallG / in.Second.PutUp.BallG
	if math.Abs(mass-float64(*o.SecondBallCount)) >= 1 {
		add(ByLength, "first_ball_count", "the same mass would be about "+measure.Decimal(mass, 1)+
			" balls, which is not the same length: it is the length that is knit")
	}
}

// remarkOneSided says which measures are known of one yarn only.
func (o *Comparison) remarkOneSided(add func(reason report.Reason, field, text string)) {
	for _, m := range []struct {
		field, what   string
		first, second bool
	}{
		{"put_up", "length and mass are known", o.FirstTex != nil, o.SecondTex != nil},
		{"wraps_per_inch", "wraps are known", o.FirstWrapsPerInch != nil, o.SecondWrapsPerInch != nil},
		{"stitches", "stitches are known", o.first.in.Stitches != nil, o.second.in.Stitches != nil},
	} {
		if m.first == m.second {
			continue
		}
		missing := "first"
		if m.first {
			missing = "second"
		}
		add(OneSided, fault.Join(missing, m.field), "is not given; "+m.what+" of the other yarn only, and are not compared")
	}
}
