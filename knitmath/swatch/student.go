package swatch

import (
	"math"

	"example.com/knitmath/knitmath/report"
)

// studentWithin is the probability that a variable of Student's distribution
// with df degrees of freedom lies within ±sqrt(df)*tan(theta), for theta from 0
// to pi/2. For a whole df it is a finite sum of positive terms, which needs no
// convergence test and loses no digits:
//
//	df odd:  2/pi * (theta + sin*(cos + 2/3 cos^3 + ... + (2*4*...)/(3*5*...) cos^(df-2)))
//	df even: sin * (1 + 1/2 cos^2 + (1*3)/(2*4) cos^4 + ... cos^(df-2))
//
// The bracket of the odd case is theta alone when df is 1.
//
// Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.3 and
// 26.7.4 (from memory); the tests compare it to another implementation, which
// goes by the incomplete beta function.
func studentWithin(theta float64, df int) float64 {
	sin, cos := math.Sincos(theta)
	odd := df%2 == 1
	term := 1.0
	if odd {
		if df == 1 {
			return 2 / math.Pi * theta
		}
		term = cos
	}
	sum := term
	first := 2
	if odd {
		first = 3
	}
	for j := first; j <= df-2; j += 2 {
		term *= cos * cos * float64(j-1) / float64(j)
		sum += term
	}
	if odd {
		return 2 / math.Pi * (theta + sin*sum)
	}
	return sin * sum
}

// studentAngle is the theta in (0, pi/2) at which studentWithin is the given
// probability, by bisection down to neighbouring floats: about 55 steps, since
// the function rises throughout. df is at least 1, probability in (0, 1).
func studentAngle(probability float64, df int) float64 {
	lo, hi := 0.0, math.Pi/2
	for {
		mid := lo + (hi-lo)/2
		if mid <= lo || mid >= hi {
			return mid
		}
		if studentWithin(mid, df) < probability {
			lo = mid
		} else {
			hi = mid
		}
	}
}

// studentCited is the source of studentT.
var studentCited = report.Source{Figure: "half-width of the 95 % interval", Status: report.SourceStatusFromMemory,
	Citation: "Student (W. S. Gosset), The probable error of a mean, Biometrika 6 (1908) 1-25; the distribution summed as in " +
		"Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.3-4"}

// studentT is the two-sided quantile of Student's distribution: the t for which
// ±t holds the given probability. studentT(0.95, 4) is 2.776.
func studentT(probability float64, df int) float64 {
	return math.Sqrt(float64(df)) * math.Tan(studentAngle(probability, df))
}

// grubbsCited is the source of grubbsLimit.
var grubbsCited = report.Source{Figure: "outlying reading", Status: report.SourceStatusFromMemory,
	Citation: "F. E. Grubbs, Technometrics 11 (1969) 1-21, two-sided, 5 %; readings within half a stitch of the others are let pass, " +
		"half a stitch being the usual step of a reading"}

// grubbsLimit is the two-sided critical value of Grubbs' test for one outlier
// among n readings, n at least 3,
//
//	(n-1)/sqrt(n) * sqrt(t^2/(n-2+t^2)),  t the 1-level/n quantile, n-2 degrees
//
// in which the second root is the sine of studentAngle, for t is
// sqrt(n-2)*tan(theta).
//
// Source: F. E. Grubbs, Procedures for Detecting Outlying Observations in
// Samples, Technometrics 11 (1969) 1-21 (from memory).
func grubbsLimit(level float64, n int) float64 {
	theta := studentAngle(1-level/float64(n), n-2)
	return float64(n-1) / math.Sqrt(float64(n)) * math.Sin(theta)
}
