package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// How far, as a part, a hat may be from the wanted size so that wedges divide its stitches.
// Own choice. Where no size or ease is asked for it may be narrower, as long as it is one of
// those read of: 0.83 to 0.92 of the head.
const (
	mostOffLiked = 0.02
	mostNarrower = 0.05
)

// likedCount is the count for an exact number of stitches when no repeat binds it: an even one, on
// which a rib comes out, the nearest that wedges divide, so many if that is said, else nearly flat
// ones, else those a crown may have at all. Where none is near enough it is the nearest even count,
// and an adjusting round makes it one that wedges divide; of wedges that were asked for rather an odd
// count that they divide.
func (h *hat) likedCount(exact float64, in CrownInput) int {
	narrower := mostOffLiked
	if in.HatCm == nil && in.EasePercent == nil {
		narrower = mostNarrower
	}
	low, high := exact-max(narrower*exact, 1), exact+max(mostOffLiked*exact, 1)
	flat := h.flatWedges(in.Stacks)
	least, most := flat-mostFromFlat, flat+mostFromFlat
	if asked := in.WedgeCount; asked != nil {
		least, most = float64(*asked)-1, float64(*asked)+1
	}
	best := dividedCount(exact, low, high, least, most, 2)
	if best == 0 && in.WedgeCount == nil {
		best = dividedCount(exact, low, high, flat-mostBelowFlat, most, 2)
	}
	if best == 0 && in.WedgeCount != nil {
		best = dividedCount(exact, low, high, least, most, 1)
	}
	if best == 0 {
		return 2 * int(measure.RoundHalfUp(exact/2))
	}
	return best
}

// dividedCount is the multiple of a step from low to high that is nearest to the exact number and
// divided by wedges, of which there are more than least and fewer than most, each of two stitches at
// least; 0 if there is none.
func dividedCount(exact, low, high, least, most float64, step int) int {
	best := 0
	for n := MinWedges; n <= MaxWedges; n++ {
		if float64(n) <= least || float64(n) >= most {
			continue
		}
		for count := 2 * n; float64(count) <= high; count += n {
			near := best == 0 || math.Abs(float64(count)-exact) < math.Abs(float64(best)-exact)
			if count%step == 0 && float64(count) >= low && near {
				best = count
			}
		}
	}
	return best
}
