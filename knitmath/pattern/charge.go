package pattern

import (
	"context"
	"strconv"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/report"
)

// maxCharge is the most that one text may be charged for its working, all sizes
// together, each having an equal share: so all stop at the same row, if they have
// the same rows. It is three times what MaxRows rows cost in each of MaxSizes
// sizes.
const maxCharge = 3 * chargeRow * MaxRows * MaxSizes

// What is charged. The unit is small: chargesPerStep of them are a step of package
// cost.
const (
	chargesPerStep = 20
	chargeRow      = 2  // a row worked once, in earnest or on trial
	chargeMisfit   = 2  // finding out what the writer of a row meant
	chargeFinding  = 20 // wording a finding
	chargedNames   = 16 // so many row numbers looked up are one charge
)

// meter counts what is worked, in one size after the other.
type meter struct {
	ctx   context.Context
	share int   // of each size
	left  int   // of the size at hand
	spent int   // in all sizes
	asked int   // what was spent when the context was asked last
	err   error // why the context ended
}

// askEvery is how much is spent between two looks at the context: some tenths of a
// millisecond.
const askEvery = 5_000

// spend charges so much, and reports whether it could be paid. What is not paid
// back is remembered: nothing can be paid after it in this size.
func (m *meter) spend(n int) bool {
	m.left -= n
	m.spent += n
	if m.spent-m.asked >= askEvery && m.ctx != nil {
		m.asked = m.spent
		m.err = m.ctx.Err()
	}
	return m.left >= 0 && m.err == nil
}

// another reports whether one more row may be worked, and charges it.
func (r *runner) another(at span) bool {
	switch {
	case r.rows >= MaxRows:
		if r.wanted(ReasonTooMany, at) {
			r.fault(KindMistake, ReasonTooMany, at, 0, "more than "+strconv.Itoa(MaxRows)+" rows are worked; what follows is not checked")
		}
	case !r.spend(chargeRow):
		if r.wanted(ReasonTooMany, r.here) {
			r.fault(KindMistake, ReasonTooMany, r.here, 0, "all rows and repeats up to here are too many to work in "+
				report.CountOf(r.piece.SizeCount, "sizes")+"; what follows is not checked: ask for the text in parts, or for fewer sizes")
		}
	default:
		if r.began = -1; r.known {
			r.began = r.now.total()
		}
		return true
	}
	r.stopped, r.known = true, false
	return false
}

// priced is a charge in steps of package cost.
func priced(charge int) int {
	return cost.Clamp((charge+chargesPerStep-1)/chargesPerStep, 0, cost.Most)
}
