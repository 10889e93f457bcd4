package yarn

import (
	"math/big"
	"slices"

	"example.com/knitmath/knitmath/fault"
)

// Basis is what a category was read by.
type Basis int32

// The bases, by how far they are trusted: the chart goes by gauge.
const (
	BasisUnspecified Basis = iota
	BasisGauge
	BasisLength
	BasisSpinnersWraps
	BasisStandardWraps
	// BasisUsualGauge is the gauge that is usual for the length.
	BasisUsualGauge
)

// A CategoryReading is the categories that one measure has: none in a gap, several where
// ranges overlap.
type CategoryReading struct {
	Basis      Basis
	Categories []int
}

// read finds the categories by each measure; nominal is true where the gauge has one only
// because 4 in are taken for 10 cm.
func (o *Description) read() (nominal bool) {
	add := func(b Basis, has func(category int) bool) {
		r := CategoryReading{Basis: b}
		for i := range weightCharts {
			if has(i) {
				r.Categories = append(r.Categories, i)
			}
		}
		o.Readings = append(o.Readings, r)
	}
	if o.in.Stitches != nil {
		var found []Category
		found, nominal = Categories(o.perCm())
		add(BasisGauge, func(i int) bool { return slices.ContainsFunc(found, func(c Category) bool { return c.Category == i }) })
	}
	if o.hasLength() {
		o.Readings = append(o.Readings, CategoryReading{BasisLength, chartOfLength(o.length)})
		if usual := usualOfLength(o.length); usual != nil {
			o.Readings = append(o.Readings, CategoryReading{BasisUsualGauge, usual})
		}
	}
	if w := o.in.WrapsPerInch; w != nil {
		in := o.beyondChart(BasisSpinnersWraps) == inChart
		add(BasisSpinnersWraps, func(i int) bool { return in && spinnersChart(i).spinners.has(*w) })
		add(BasisStandardWraps, func(i int) bool { return in && weightCharts[i].wraps.has(*w) })
	}
	return nominal
}

// spinnersChart is a category as the spinners' chart has it, which is older than the last
// and calls both of the thickest by the name of the first.
func spinnersChart(category int) *weightChart {
	return &weightCharts[min(category, len(weightCharts)-2)]
}

// perCm is the gauge, exactly.
func (o *Description) perCm() *big.Rat {
	return new(big.Rat).Quo(DecimalOf(*o.in.Stitches), DecimalOf(fault.Or(o.in.OverCm, DefaultOverCm)))
}

// lace is the category that is worked at any gauge, on larger needles than its weight:
// where the length says lace, another gauge does not say otherwise. Source: the chart itself
// calls the gauge of lace indeterminate, by reprints.
const lace = 0

// laceByLength reports whether the length says lace, and a gauge that it is something else.
func (o *Description) laceByLength() bool {
	length, gauge := false, false
	for _, r := range o.Readings {
		switch r.Basis {
		case BasisLength:
			length = slices.Contains(r.Categories, lace)
		case BasisGauge:
			gauge = !slices.Contains(r.Categories, lace)
		}
	}
	return length && gauge
}

// choose takes the categories of the first reading that has any, and of those what the
// later ones have too; of lace the length decides.
func (o *Description) choose() {
	var chosen []int
	if o.laceByLength() {
		chosen = []int{lace}
	}
	for _, r := range o.Readings {
		says := r.Categories
		switch r.Basis {
		case BasisLength:
			says = o.byLength()
		case BasisUsualGauge:
			continue
		}
		chosen = orElse(common(chosen, says), orElse(chosen, says))
	}
	for _, i := range chosen {
		o.Categories = append(o.Categories, yarnWeights[i].category(i))
	}
}

// common are the numbers that two lists have both.
func common(a, b []int) []int {
	var both []int
	for _, n := range a {
		if slices.Contains(b, n) {
			both = append(both, n)
		}
	}
	return both
}
