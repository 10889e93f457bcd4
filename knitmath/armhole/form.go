package armhole

import "example.com/knitmath/knitmath/curve"

// What makes a cap's form. Own choices, after published caps.
const (
	// ofForm is by how many percent of the excess a cap without form must be nearer to be taken, or
	// one of a free height that is unlike any rule.
	ofForm = 0.5

	quick   = 2 // rows from one decrease to the next, before bind-offs
	slowest = 4 // the same, anywhere
)

// wellFormed reports whether a cap leans in towards its top as published ones do, slowest in its
// middle: its last steps are bind-offs after decreases on every 2nd row or quicker, or
// decreases that come quicker than those before. Nowhere do more than so many rows lie from one
// decrease to the next.
func (p shaped) wellFormed() bool {
	slow, leans := 0, false // the last interval of decreases, and whether the edge has leaned in since
	for _, r := range p.plan.Runs {
		switch {
		case r.Kind == curve.KindBindOff:
			if slow > quick {
				return false // up nearly straight, and then in all at once
			}
			leans = true
		case r.Times == 1:
		default:
			leans = r.EveryRows < slow
			if slow = r.EveryRows; slow > slowest {
				return false
			}
		}
	}
	return leans
}
