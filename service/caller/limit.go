package caller

import (
	"time"

	"golang.org/x/time/rate"
)

// Rates are how much may be asked in a second: calls, and steps of work as the
// questions' own Cost counts them. 0 bounds nothing.
type Rates struct{ Calls, Cost float64 }

const (
	// savedUp is how many seconds' worth may be asked at once after a pause: a page
	// that opens asks several questions, a person then reads the answers.
	savedUp = 10
	// maxRate keeps what may be saved up within an int.
	maxRate = 1e8
)

// limit is what one caller may still ask.
type limit struct{ calls, cost *rate.Limiter }

func newLimit(r Rates) *limit { return &limit{bucket(r.Calls), bucket(r.Cost)} }

// bucket holds at least one call, however rarely one is allowed.
func bucket(perSecond float64) *rate.Limiter {
	if perSecond == 0 {
		return nil
	}
	return rate.NewLimiter(rate.Limit(perSecond), max(1, int(savedUp*perSecond)))
}

// take takes n out of a bucket, or says after how long they would be there. What is
// more than the bucket holds takes all of it: a dear question must be answered once
// in a while, or nobody with that bucket could ever ask it.
func take(from *rate.Limiter, n int) (after time.Duration) {
	if from == nil {
		return 0
	}
	n = min(n, from.Burst())
	now := time.Now()
	if from.AllowN(now, n) {
		return 0
	}
	missing := float64(n) - from.TokensAt(now)
	return max(time.Millisecond, time.Duration(missing/float64(from.Limit())*float64(time.Second)))
}
