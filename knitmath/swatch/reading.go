package swatch

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// MaxReadings is the most readings in one list of a swatch.
const MaxReadings = 100

// A Reading is one count on a swatch.
type Reading struct {
	Count  float64
	OverCm *float64
	Place  string
}

// Statistics sums up one list of readings. A single reading has neither a
// standard deviation nor a half-width.
type Statistics struct {
	ReadingCount      int
	Mean              float64
	StandardDeviation *float64
	HalfWidth95       *float64
}

const (
	// MaxReadingCount is the most stitches or rows in one reading: nobody counts
	// further.
	MaxReadingCount = 10_000.0

	// confidence is that of the intervals given, and outlierLevel the chance of
	// calling a sound reading outlying: the usual choices of statistics.
	confidence   = 0.95
	outlierLevel = 0.05
	// readingStep is the coarsest that stitches are usually read to. A reading no
	// farther than that from the others differs by its rounding alone. Common
	// practice.
	readingStep = 0.5
)

// readingList is one checked list of readings.
type readingList struct {
	field    string
	given    []Reading
	readings []gauge.Density
	ok       bool
	// The rest is known after summarise.
	stats  Statistics
	values []float64 // each over the span of the answer
	equal  bool      // all readings are the same gauge, exactly
}

// vetReadings checks a list that may be empty.
func vetReadings(c *fault.Checks, field string, given []Reading) readingList {
	l := readingList{field: field, given: given, ok: c.Items("", field, len(given), MaxReadings)}
	if !l.ok {
		return l
	}
	l.readings = make([]gauge.Density, len(given))
	for i, r := range given {
		path := fault.Index(field, i)
		ok := c.RequiredNumber(path, "count", r.Count, gauge.MinCount, MaxReadingCount)
		ok = c.OptionalNumber(path, "over_cm", r.OverCm, measure.MinCm, measure.MaxCm) && ok
		ok = c.Text(path, "place", r.Place) && ok
		if ok {
			l.readings[i] = gauge.NewDensity(r.Count, fault.Or(r.OverCm, gauge.DefaultOverCm))
		}
		l.ok = l.ok && ok
	}
	return l
}

// read says whether the list is sound and holds a reading.
func (l *readingList) read() bool { return l.ok && len(l.given) > 0 }

// summarise works out the statistics over span micrometres,
//
//	mean = sum/n,  s = sqrt(sum of (x-mean)^2 / (n-1)),  half-width = t*s/sqrt(n)
//
// with Student's t for 95 % and n-1 degrees of freedom. Equal readings are found
// in integers, and have exactly no scatter.
func (l *readingList) summarise(span int64) {
	n := len(l.readings)
	l.values = make([]float64, n)
	l.equal = true
	first, sum := l.readings[0], 0.0
	for i, d := range l.readings {
		l.values[i] = d.Over(span)
		sum += l.values[i] - l.values[0]
		l.equal = l.equal && d.Equal(first)
	}
	l.stats = Statistics{ReadingCount: n, Mean: l.values[0] + sum/float64(n)}
	if n == 1 {
		return
	}
	var deviation, halfWidth float64
	if l.equal {
		l.stats.Mean = l.values[0]
	} else {
		squares := 0.0
		for _, x := range l.values {
			squares += (x - l.stats.Mean) * (x - l.stats.Mean)
		}
		deviation = math.Sqrt(squares / float64(n-1))
		halfWidth = studentT(confidence, n-1) * deviation / math.Sqrt(float64(n))
	}
	l.stats.StandardDeviation, l.stats.HalfWidth95 = &deviation, &halfWidth
}

// outlier is the index of the reading that Grubbs' test calls outlying at 5 %,
// -1 when there is none: the one farthest from the mean, the first of two. The
// test needs three readings and takes them as measured, not as counted to
// halves, so that 22, 22 and 22.5 would always fail it: a reading within half a
// stitch of the mean of the others is let pass.
func (l *readingList) outlier() int {
	n := len(l.values)
	if n < 3 || l.equal {
		return -1
	}
	worst := 0
	for i, x := range l.values {
		if math.Abs(x-l.stats.Mean) > math.Abs(l.values[worst]-l.stats.Mean) {
			worst = i
		}
	}
	distance := math.Abs(l.values[worst] - l.stats.Mean)
	if distance <= grubbsLimit(outlierLevel, n)**l.stats.StandardDeviation {
		return -1
	}
	// From the mean of the others it is n/(n-1) times as far; in stitches of its
	// own length, as many times as its count is that over the answer's length.
	counted := distance * float64(n) / float64(n-1) * l.given[worst].Count / l.values[worst]
	if counted <= readingStep*(1+1e-9) {
		return -1
	}
	return worst
}

// notices are the remarks on a list that was read.
func (l *readingList) notices(noun string) []report.Notice {
	switch {
	case len(l.values) == 1:
		return []report.Notice{{Reason: "SINGLE_READING", Field: l.field,
			Description: "one reading says nothing of the scatter; count in three places or more"}}
	case l.equal:
		return []report.Notice{{Reason: "NO_SCATTER", Field: l.field,
			Description: "all readings agree: half-width 0 says only that the ruler is coarser than the scatter"}}
	}
	i := l.outlier()
	if i < 0 {
		return nil
	}
	r := l.given[i]
	text := measure.Decimal(r.Count, 2) + " " + noun + " to " + measure.Decimal(fault.Or(r.OverCm, gauge.DefaultOverCm), 2) + " cm"
	if r.Place != "" {
		text += " (" + r.Place + ")"
	}
	return []report.Notice{{Reason: "OUTLYING_READING", Field: fault.Index(l.field, i),
		Description: text + " lies farther from the others than chance explains (Grubbs, 5 %, n = " +
			strconv.Itoa(len(l.values)) + "); count there again"}}
}
