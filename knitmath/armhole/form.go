package armhole

import (
	"slices"

	"example.com/knitmath/knitmath/curve"
)

// What makes a cap's form. Own choices, after published caps.
const (
	// ofForm is by how many percent of the excess a cap without form must be nearer to be taken, or
	// one of a free height that is unlike any rule.
	ofForm = 0.5
	// ofRound is the same of a cap without bind-offs towards its top.
	ofRound = 0.25

	quick   = 2 // rows from one decrease to the next, before bind-offs
	slowest = 4 // the same, anywhere
)

// ofForm is what the form of a cap weighs: that it is no bell, that it does not bind off towards its
// top, that it stands upright, which counts twice, and that it is unlike any rule where its height is
// free.
func (s *settled) ofForm(p shaped) float64 {
	weight := 0.0
	if !p.wellFormed() {
		weight += ofForm
	}
	if p.standsUpright() {
		weight += ofForm
	}
	if !p.rounded() {
		weight += ofRound
	}
	if s.capRows == 0 && s.unlikeRule(p.rows) != 0 {
		weight += ofForm
	}
	return weight
}

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
			leans, slow = r.EveryRows < slow, r.EveryRows
		}
	}
	return leans && !p.standsUpright() && p.slowestInItsMiddle() && !p.hollow()
}

// hollow reports whether one decrease stands alone at a cap's foot, between the underarm and other
// bind-offs: nobody prints 6, 1, 2 and 2. Common practice.
func (p shaped) hollow() bool {
	runs := p.plan.Runs
	return len(runs) > 3 && runs[1].Kind == curve.KindDecrease && runs[1].Times == 1 && runs[2].Kind == curve.KindBindOff
}

// standsUpright reports whether more rows lie anywhere from one decrease to the next than a cap
// wants: up nearly straight, as a box.
func (p shaped) standsUpright() bool {
	return slices.ContainsFunc(p.plan.Runs, func(r curve.Run) bool { return r.Kind == curve.KindDecrease && r.EveryRows > slowest })
}

// rounded reports whether a cap binds off towards its top before the top itself, as most published ones do.
func (p shaped) rounded() bool { return p.plan.Runs[len(p.plan.Runs)-1].Kind == curve.KindBindOff }

// slowestInItsMiddle reports whether the middle third of a cap's rows above its underarm loses no
// more than the third below it, and no more than the one above.
func (p shaped) slowestInItsMiddle() bool {
	rows := p.rows - underarmRows
	var lost [3]int // in sixths of a stitch and of a row
	for _, s := range p.plan.Right[1:] {
		// It takes this row or, at the other edge, the next: from so many rows above the underarm
		// to two more.
		from := s.RowNumber - 1 - underarmRows
		for third := range lost {
			foot, top := max(3*from, rows*third), min(3*(from+2), rows*(third+1))
			lost[third] += s.Stitches * max(0, top-foot)
		}
	}
	return lost[1] <= min(lost[0], lost[2])
}
