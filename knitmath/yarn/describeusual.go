package yarn

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The ends of what is knit by hand, far outside of any band: the charts are open at both
// ends, and would call a fibre lace and a mooring rope super bulky. Common practice.
const (
	finestTex, thickestTex = 10.0, 100_000.0
	fewestWraps, mostWraps = 1.0, 100.0
)

// An end is where a measure lies against the chart.
type end int

const (
	inChart end = iota
	tooFine
	tooThick
)

// endWords say where a measure lies that is beyond the chart.
var endWords = [...]string{inChart: "", tooFine: "finer than the chart goes", tooThick: "thicker than the chart goes"}

// beyondChart is where a measure lies: by gauge the chart ends at lace; by length and wraps
// it is open, up to what is knit by hand.
func (o *Description) beyondChart(b Basis) end {
	switch b {
	case BasisGauge:
		if len(o.reading(BasisGauge)) > 0 {
			return inChart
		}
		if wholeBeside(o.perCm(), fourInches).above > yarnWeights[lace].high && wholeBeside(o.perCm(), tenCm).above > yarnWeights[lace].high {
			return tooFine
		}
	case BasisLength, BasisUsualGauge:
		return o.length.end()
	default:
		return outside(*o.in.WrapsPerInch, fewestWraps, mostWraps)
	}
	return inChart
}

// outside compares a measure of fineness with its ends.
func outside(x, thick, fine float64) end {
	switch {
	case x < thick:
		return tooThick
	case x > fine:
		return tooFine
	}
	return inChart
}

// usual is what a yarn of known length is usually knit at, in stitches to 10 cm; ok is false
// where that is not known.
func (o *Description) usual() (low, high float64, ok bool) {
	if !o.hasLength() {
		return 0, 0, false
	}
	if m := o.length.metresPer100G; m < LeastUsualMetres || m > MostUsualMetres {
		return 0, 0, false
	}
	return StitchesAt(LowTightness, o.length.tex), StitchesAt(HighTightness, o.length.tex), true
}

// end is where a length lies against what is knit by hand.
func (l length) end() end { return outside(-l.tex, -thickestTex, -finestTex) }

// chartOfLength are the categories that a length has by the spinners' chart, which is
// printed in whole yards: that leaves gaps of less than one.
func chartOfLength(l length) (found []int) {
	if l.end() != inChart {
		return nil
	}
	yards := float64(measure.RoundHalfUp(l.yardsPerPound))
	for i := range weightCharts {
		if spinnersChart(i).yards.has(yards) {
			found = append(found, i)
		}
	}
	return found
}

// usualOfLength is the category of the gauge that is likely of a length, in whole stitches
// as the chart is printed; none where that gauge is not known.
func usualOfLength(l length) (found []int) {
	if m := l.metresPer100G; m < LeastUsualMetres || m > MostUsualMetres {
		return nil
	}
	stitches := measure.RoundHalfUp(StitchesAt(LikelyTightness, l.tex))
	for i, w := range yarnWeights {
		if stitches >= w.low && stitches <= w.high {
			found = append(found, i)
		}
	}
	return found
}

// eitherOf are the categories of a length by the chart and by its usual gauge: what both
// say, or either where they differ. The chart's classes begin with yarns that hands mostly
// knit a class thicker: 1,000 yards to the pound, Light there, are knit at 18 to 21
// stitches, which is Medium.
func eitherOf(chart, usual []int) []int {
	if both := common(chart, usual); len(both) > 0 || len(usual) == 0 {
		return orElse(both, chart)
	}
	either := slices.Concat(chart, usual)
	slices.Sort(either)
	return either
}

// byLength are the categories of the length that was given.
func (o *Description) byLength() []int {
	return eitherOf(o.reading(BasisLength), o.reading(BasisUsualGauge))
}

// lengthsDiffer is that the chart and the usual gauge have no category in common.
func (o *Description) lengthsDiffer() bool {
	chart, usual := o.reading(BasisLength), o.reading(BasisUsualGauge)
	return len(chart) > 0 && len(usual) > 0 && len(common(chart, usual)) == 0
}

// reading is what one measure says.
func (o *Description) reading(b Basis) []int {
	for _, r := range o.Readings {
		if r.Basis == b {
			return r.Categories
		}
	}
	return nil
}

func orElse(a, b []int) []int {
	if len(a) > 0 {
		return a
	}
	return b
}

// remarkLength says what a length is by the chart and by the gauge that is usual for it,
// where nothing else decides between them.
func (o *Description) remarkLength(chosen []int) (report.Notice, bool) {
	if !o.lengthsDiffer() || o.laceByLength() || len(common(chosen, o.byLength())) < 2 {
		return report.Notice{}, false
	}
	low, high, _ := o.usual()
	return report.Notice{Reason: UsualGaugeDiffers, Field: o.field(BasisLength), Description: "is " + categoryWords(o.reading(BasisLength)) +
		" by the spinners' chart of lengths, but ordinary yarns of its length are knit at " + GaugeWords(o.unit, low, high) + ", which is " +
		categoryWords(o.reading(BasisUsualGauge)) + ": categories go by gauge, so without a swatch expect that"}, true
}
