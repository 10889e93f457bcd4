package knitmath

import "strconv"

// direction is stitches or rows: readings before washing and after it.
type direction struct {
	noun          string
	before, after readingList
	// chosen is the list to knit by, nil when there is none; density its mean
	// gauge, read to the nearest millionth.
	chosen  *readingList
	density density
}

// summarise works out both lists and chooses one. A mean that is no legal gauge
// is infeasible: it could not be asked with.
func (c *checks) summarise(d *direction, span int64, overGiven bool) {
	for _, l := range []*readingList{&d.before, &d.after} {
		if !l.read() {
			continue
		}
		l.summarise(span)
		mean := l.stats.Mean
		if count := toMillionths(mean); count >= 1 && mean <= MaxGaugeCount {
			d.chosen, d.density = l, density{count, span}
			continue
		}
		fields := []string{l.field}
		if overGiven {
			fields = append(fields, "over_cm")
		}
		c.infeasible("the mean is "+strconv.FormatFloat(mean, 'g', 6, 64)+" "+d.noun+" over "+decimal(centimetres(span), 4)+
			" cm; a gauge has from 0.000001 to 1000: check the lengths", fields...)
	}
}

// consequence is what the uncertainty does to a size that may not be asked.
func (c *checks) consequence(d *direction, cm *float64, ok bool, field string) *SizeConsequence {
	if cm == nil || !ok || d.chosen == nil {
		return nil
	}
	r := rule{multiple: 1}
	f, ok := d.density.fit(micrometres(*cm), r)
	if !ok {
		num, den := d.density.exact(micrometres(*cm))
		c.misfit(mixed{num / den, num % den, den}, r, d.noun, field, d.chosen.field)
		return nil
	}
	s := &SizeConsequence{AskedCm: f.AskedCm, Count: f.Count, SizeCm: f.SizeCm}
	if half := d.chosen.stats.HalfWidth95; half != nil {
		smallest := d.density.sizeWith(f.Count, *half)
		s.SmallestCm = &smallest
		if float64(d.density.count) > *half*1e6 {
			largest := d.density.sizeWith(f.Count, -*half)
			s.LargestCm = &largest
		}
	}
	return s
}

// sizeWith is the length of n stitches in cm when the gauge is off by a number
// of stitches over its length. With 0 it is sizeCm.
func (d density) sizeWith(n int, off float64) float64 {
	return float64(int64(n)*d.span*100) / (float64(d.count) + off*1e6)
}

// statistics is nil for a list that was not read.
func (l *readingList) statistics() *GaugeStatistics {
	if !l.read() {
		return nil
	}
	return &l.stats
}

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
