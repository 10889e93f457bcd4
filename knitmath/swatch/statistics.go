package swatch

import (
	"math"
)

// Statistics sums up one list of readings. A single reading has neither a
// standard deviation nor a half-width.
type Statistics struct {
	ReadingCount      int
	Mean              float64
	StandardDeviation *float64
	HalfWidth95       *float64
}

const (
	// confidence is that of the intervals given, and outlierLevel the chance of
	// calling a sound reading outlying: the usual choices of statistics.
	confidence   = 0.95
	outlierLevel = 0.05
	// readingStep is the coarsest that stitches are usually read to. A reading no
	// farther than that from the others differs by its rounding alone. Common
	// practice.
	readingStep = 0.5
)

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

// outlier is the index of the reading that Grubbs' test calls outlying at 5 %, if
// there is one: the one farthest from the mean, the first of two. The test needs
// three readings and takes them as measured, not as counted to halves, so that
// 22, 22 and 22.5 would always fail it: a reading within half a stitch of the mean
// of the others is let pass.
func (l *readingList) outlier() (index int, found bool) {
	n := len(l.values)
	if n < 3 || l.equal {
		return 0, false
	}
	worst := 0
	for i, x := range l.values {
		if math.Abs(x-l.stats.Mean) > math.Abs(l.values[worst]-l.stats.Mean) {
			worst = i
		}
	}
	distance := math.Abs(l.values[worst] - l.stats.Mean)
	if distance <= grubbsLimit(outlierLevel, n)**l.stats.StandardDeviation {
		return 0, false
	}
	// From the mean of the others it is n/(n-1) times as far; in stitches of its
	// own length, as many times as its count is that over the answer's length.
	counted := distance * float64(n) / float64(n-1) * l.given[worst].Count / l.values[worst]
	if counted <= readingStep*(1+1e-9) {
		return 0, false
	}
	return worst, true
}
