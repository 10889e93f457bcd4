package swatch

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// A Reading is one count on a swatch.
type Reading struct {
	Count  float64
	OverCm *float64
	Place  string
}

const (
	// MaxReadings is the most readings in one list of a swatch.
	MaxReadings = 100
	// MaxReadingCount is the most stitches or rows in one reading: nobody counts
	// further.
	MaxReadingCount = 10_000.0
)

// readingList is one list of readings.
type readingList struct {
	field string
	given []Reading
	// readings are the checked ones, empty when the list is not sound.
	readings []gauge.Density
	// The rest is known after summarise.
	stats  Statistics
	values []float64 // each over the span of the answer
	equal  bool      // all readings are the same gauge, exactly
}

// vetReadings checks a list that may be empty.
func vetReadings(c *fault.Checks, field string, given []Reading) readingList {
	l := readingList{field: field, given: given}
	c.Items("", field, len(given), MaxReadings)
	if !c.Sound(field) {
		return l
	}
	for i, r := range given {
		path := fault.Index(field, i)
		c.RequiredNumber(path, "count", r.Count, gauge.MinCount, MaxReadingCount)
		c.OptionalNumber(path, "over_cm", r.OverCm, measure.MinCm, measure.MaxCm)
		c.Text(path, "place", r.Place)
	}
	if !c.Sound(field) {
		return l
	}
	l.readings = make([]gauge.Density, len(given))
	for i, r := range given {
		l.readings[i] = gauge.NewDensity(r.Count, r.overCm())
	}
	return l
}

// overCm is the length of a reading.
func (r Reading) overCm() float64 { return fault.Or(r.OverCm, gauge.DefaultOverCm) }

// read says whether the list is sound and holds a reading.
func (l *readingList) read() bool { return len(l.readings) > 0 }
