package yoke

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// refuseBands refuses bands that have no counts: it names every band of which one
// other repeat would do, and the neck's tolerance that would.
func refuseBands(c *fault.Checks, y *circular, places []place, counts bandCounts) {
	free, top := counts.reachable()
	found := false
	for i, p := range places {
		if p.band == noBand {
			continue
		}
		repeat, n := counts.nearestRepeat(i, free[i])
		if repeat == 0 {
			continue
		}
		found = true
		c.Infeasible(fmt.Sprintf("no count that it divides lies between the counts of the bands beside it and the neck; "+
			"the nearest repeat that would do is %d, on %d stitches", repeat, n),
			fault.Join(fault.Index("bands", p.band), "repeat_stitches"))
	}
	nearest := 0
	for n, ok := range top {
		if ok && (nearest == 0 || measure.Abs(n-y.neck) < measure.Abs(nearest-y.neck)) {
			nearest = n
		}
	}
	if off := measure.Abs(nearest - y.neck); nearest > 0 && off <= MaxNeckTolerance {
		found = true
		c.Infeasible(fmt.Sprintf("the nearest neck that these bands come down to has %d stitches where %d are wanted; "+
			"a tolerance of %d would do", nearest, y.neck, off), "neck_tolerance_stitches")
	}
	if !found {
		c.Infeasible(fmt.Sprintf("no counts divide in every band and come down from %d to %d stitches, "+
			"nor would they with one other repeat; a round of k2tog leaves half at the least, "+
			"so leave more even rounds of the schedule between the bands, "+
			"or use smaller repeats or a wider neck", y.join, y.neck), "bands", y.neckField)
	}
}

// nearestRepeat is the repeat nearest to a place's own, the smaller of two equally
// near, that divides a count which can be had there and goes on to the neck; and
// the greatest such count. It is 0 if there is none. free is which counts can be had.
func (c bandCounts) nearestRepeat(place int, free []bool) (repeat, count int) {
	p := c.places[place]
	ways := make([]bool, len(free))
	some := false
	for n := max(p.lo, 1); n <= min(p.hi, len(free)-1); n++ {
		ways[n] = free[n] && c.goesOn(place, n)
		some = some || ways[n]
	}
	for off := 1; some && off < gauge.MaxMultiple; off++ {
		for _, r := range [...]int{p.repeat - off, p.repeat + off} {
			if r < 1 || r > gauge.MaxMultiple {
				continue
			}
			for n := (len(free) - 1) / r * r; n > 0; n -= r {
				if ways[n] {
					return r, n
				}
			}
		}
	}
	return 0, 0
}
