package spread

// Fraction is a positive number num/den, exactly. As a bound it may also be 0/1
// or 1/0.
type Fraction struct{ Num, Den int64 }

// NearestSmall is the fraction p/q nearest to x among those with neither p nor
// q above limit; of two equally near, the one in smaller numbers.
//
// The method is the continued fraction of x, walked as the tree of fractions:
// two bounds lo <= x <= hi, at first 0/1 and 1/0, and the mediant between them,
//
//	(lo.Num + hi.Num) / (lo.Den + hi.Den)
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
func (x Fraction) NearestSmall(limit int64) Fraction {
	lo, hi := Fraction{0, 1}, Fraction{1, 0}
	for {
		steps, cut := x.stretch(lo, hi, limit)
		lo = Fraction{lo.Num + steps*hi.Num, lo.Den + steps*hi.Den}
		if cut {
			break
		}
		steps, cut = x.stretch(hi, lo, limit)
		hi = Fraction{hi.Num + steps*lo.Num, hi.Den + steps*lo.Den}
		if cut {
			break
		}
	}
	if lo.Num == 0 {
		return hi
	}
	if hi.Den == 0 {
		return lo
	}
	// Both distances times lo.Den * hi.Den * x.Den.
	below, above := x.distance(lo)*hi.Den, x.distance(hi)*lo.Den
	if below < above || below == above && lo.Den <= hi.Den {
		return lo
	}
	return hi
}

// distance is |x - f| times both denominators.
func (x Fraction) distance(f Fraction) int64 {
	d := x.Num*f.Den - x.Den*f.Num
	return max(d, -d)
}

// stretch is how many times the bound from can take a step toward the other
// without passing x, and whether the limit stopped it. At x itself the other
// bound is never passed, and the limit does.
func (x Fraction) stretch(from, other Fraction, limit int64) (steps int64, cut bool) {
	room := limit // more than any number of steps there is room for
	if other.Num > 0 {
		room = min(room, (limit-from.Num)/other.Num)
	}
	if other.Den > 0 {
		room = min(room, (limit-from.Den)/other.Den)
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
