package knitmath

// fraction is a positive number num/den, exactly. As a bound it may also be 0/1
// or 1/0.
type fraction struct{ num, den int64 }

// nearestSmall is the fraction p/q nearest to x among those with neither p nor
// q above limit; of two equally near, the one in smaller numbers.
//
// The method is the continued fraction of x, walked as the tree of fractions:
// two bounds lo <= x <= hi, at first 0/1 and 1/0, and the mediant between them,
//
//	(lo.num + hi.num) / (lo.den + hi.den)
//
// which replaces the one on its side of x. As many steps to one side in a row
// as the partial quotient says are taken at once, from convergent to convergent;
// where the limit cuts such a stretch short, the walk ends at a semiconvergent.
// No fraction within the limit then lies between the two bounds, so that one of
// them is the nearest. limit must be in [1, 50], the parts of x in [1, 1e15].
//
// Source: Stern (1858) and Brocot (1861), as in Graham, Knuth and Patashnik,
// Concrete Mathematics, section 4.5 (from memory); that the best fractions are
// convergents and semiconvergents is classical (Lagrange).
func (x fraction) nearestSmall(limit int64) fraction {
	lo, hi := fraction{0, 1}, fraction{1, 0}
	for {
		steps, cut := x.stretch(lo, hi, limit)
		lo = fraction{lo.num + steps*hi.num, lo.den + steps*hi.den}
		if cut {
			break
		}
		steps, cut = x.stretch(hi, lo, limit)
		hi = fraction{hi.num + steps*lo.num, hi.den + steps*lo.den}
		if cut {
			break
		}
	}
	if lo.num == 0 {
		return hi
	}
	if hi.den == 0 {
		return lo
	}
	// Both distances times lo.den * hi.den * x.den.
	below, above := x.distance(lo)*hi.den, x.distance(hi)*lo.den
	if below < above || below == above && lo.den <= hi.den {
		return lo
	}
	return hi
}

// distance is |x - f| times both denominators.
func (x fraction) distance(f fraction) int64 {
	d := x.num*f.den - x.den*f.num
	return max(d, -d)
}

// stretch is how many times the bound from can take a step toward the other
// without passing x, and whether the limit stopped it. At x itself the other
// bound is never passed, and the limit does.
func (x fraction) stretch(from, other fraction, limit int64) (steps int64, cut bool) {
	room := limit // more than any number of steps there is room for
	if other.num > 0 {
		room = min(room, (limit-from.num)/other.num)
	}
	if other.den > 0 {
		room = min(room, (limit-from.den)/other.den)
	}
	left := x.distance(other)
	if left == 0 {
		return room, true
	}
	if steps = x.distance(from) / left; steps > room {
		return room, true
	}
	return steps, room == 0
}
