package swatch

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// direction is stitches or rows: readings before washing and after it.
type direction struct {
	noun          string
	before, after readingList
	// chosen is the list to knit by, nil when there is none; density its mean
	// gauge, read to the nearest millionth.
	chosen  *readingList
	density gauge.Density
}

// vetMeans works out both lists and chooses one. A mean that is no legal gauge is
// infeasible: it could not be asked with.
func vetMeans(c *fault.Checks, d *direction, overCm float64, overGiven bool) {
	for _, l := range []*readingList{&d.before, &d.after} {
		if !l.read() {
			continue
		}
		l.summarise(measure.Micrometres(overCm))
		mean := l.stats.Mean
		if density := gauge.NewDensity(mean, overCm); !density.IsZero() && mean <= gauge.MaxCount {
			d.chosen, d.density = l, density
			continue
		}
		fields := []string{l.field}
		if overGiven {
			fields = append(fields, "over_cm")
		}
		c.Infeasible("the mean is "+strconv.FormatFloat(mean, 'g', 6, 64)+" "+d.noun+" over "+measure.Decimal(overCm, 4)+
			" cm; a gauge has from 0.000001 to 1000: check the lengths", fields...)
	}
}

// consequenceCited is the source of a SizeConsequence.
var consequenceCited = report.Source{Figure: "smallest and largest size", Citation: "count / (gauge ± half-width)",
	Status: report.SourceStatusOwnDerivation}

// vetConsequence is what the uncertainty does to a size that may not be asked.
func vetConsequence(c *fault.Checks, d *direction, cm *float64, field string) *SizeConsequence {
	if cm == nil || !c.Sound(field) || d.chosen == nil {
		return nil
	}
	f := d.density.VetFit(c, measure.Micrometres(*cm), gauge.AnyCount, d.noun, field, d.chosen.field)
	if f == nil {
		return nil
	}
	s := &SizeConsequence{AskedCm: f.AskedCm, Count: f.Count, SizeCm: f.SizeCm}
	if half := d.chosen.stats.HalfWidth95; half != nil {
		if smallest, ok := d.density.SizeOff(f.Count, *half); ok {
			s.SmallestCm = &smallest
		}
		if largest, ok := d.density.SizeOff(f.Count, -*half); ok {
			s.LargestCm = &largest
		}
	}
	return s
}

// statistics is nil for a list that was not read.
func (l *readingList) statistics() *Statistics {
	if !l.read() {
		return nil
	}
	return &l.stats
}

// washingCited is the source of change.
var washingCited = report.Source{Figure: "change on washing", Status: report.SourceStatusPublished,
	Citation: "ISO 5077:2007: 100 * (after - before) / before of the size, shrinkage negative"}

// change is the change of size on washing in percent,
//
//	100 * (size after - size before) / size before
//
// shrinkage negative. A size is a count divided by its gauge, so that it is
// 100 * (gauge before / gauge after - 1): more stitches to 10 cm, a narrower
// piece. Nil unless both were read.
//
// Source: ISO 5077:2007, 100*(xt - x0)/x0.
func (d *direction) change() *float64 {
	if !d.before.read() || !d.after.read() {
		return nil
	}
	before, after := d.before.stats.Mean, d.after.stats.Mean
	percent := 100 * (before - after) / after
	return &percent
}
