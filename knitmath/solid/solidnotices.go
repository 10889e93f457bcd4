package solid

import (
	"math"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// unmet says that all stitches together are far from those of the surface.
func (b *revolved) unmet(out Solid) []report.Notice {
	off := float64(out.TotalStitches) - out.WantedTotalStitches
	if math.Abs(off) <= mayBeOff(out.WantedTotalStitches, float64(max(out.TotalRounds, out.GreatestRows))) {
		return nil
	}
	than := "more"
	if off < 0 {
		than = "fewer"
	}
	return []report.Notice{{Reason: SurfaceUnmet, Field: fieldsOf(b.in)[0], Description: "in all it has " +
		measure.Decimal(100*math.Abs(off)/out.WantedTotalStitches, 1) + " % " + than + " stitches than the surface"}}
}

// narrow says that the widest round is far from what it wants, since a round gains or loses several stitches at a time.
func (b *revolved) narrow(out Solid) []report.Notice {
	if b.wedge != nil {
		return nil
	}
	wanted := slices.Max(b.wanted)
	if near(out.GreatestStitches, wanted) {
		return nil
	}
	return []report.Notice{{Reason: SizeUnmet, Field: fieldsOf(b.in)[0], Description: "the widest round wants " +
		measure.Decimal(wanted, 1) + " stitches and has " + strconv.Itoa(out.GreatestStitches) + ": a round gains or loses " +
		strconv.Itoa(b.wedges) + " at a time" + b.likelier(wanted)}}
}

// near reports whether a widest round has about as many stitches as are wanted.
func near(stitches int, wanted float64) bool {
	return math.Abs(float64(stitches)-wanted) <= max(mostOffSize*wanted, 1)
}

// likelier offers the nearest number of wedges with which the widest round is near to what it wants, after trying a few.
func (b *revolved) likelier(wanted float64) string {
	tries := otherSolidWedges
	for by := 1; by < MaxSolidWedges; by++ {
		for _, n := range [2]int{b.wedges - by, b.wedges + by} {
			try := *b
			if try.wedges = n; n < 1 || n > MaxSolidWedges || tries == 0 || !near(try.nearest(wanted), wanted) {
				continue
			}
			tries--
			if greatest := b.greatestOf(n); near(greatest, wanted) {
				return "; with " + report.CountOf(n, "wedges") + " it has " + strconv.Itoa(greatest)
			}
		}
	}
	return ""
}

// greatestOf is the widest round of the body with so many wedges, 0 where it cannot be made with them.
func (b *revolved) greatestOf(wedges int) int {
	var c fault.Checks
	try := *b
	try.limbs, try.notices = nil, nil
	in := b.in
	in.WedgeCount = &wedges
	for _, stage := range [...]func(*fault.Checks, *revolved, SolidInput){settleCounts, settleLimbs} {
		if stage(&c, &try, in); c.Err() != nil {
			return 0
		}
	}
	return slices.Max(try.counts)
}

// otherSolidWedges is how many other wedges are tried for a body whose widest round is far from what it wants.
const otherSolidWedges = 2

// The cylinder for small parts, in cm: what fits it is not for children under 3 years.
const smallAcrossCm, smallHeightCm = 3.17, 5.71

// careful are the cautions for what may become a toy.
func (b *revolved) careful(out Solid) []report.Notice {
	list := slices.Concat(b.narrow(out), b.unmet(out), b.notices)
	if !b.sewn {
		return list
	}
	list = append(list, report.Notice{Reason: ToyCare,
		Description: "if it becomes a toy: filling that washes, stitches close enough to hold it, limbs and ends that hold when pulled, eyes " +
			"and faces embroidered for children under 3, no cord round a neck, nothing soft in the cot of a baby; whoever sells toys follows " +
			"the toy rules of the place"})
	if out.AcrossCm < smallAcrossCm && out.HeightCm < smallHeightCm {
		list = append(list, report.Notice{Reason: SmallPart, Field: fieldsOf(b.in)[0],
			Description: "it is so small that a child under 3 might swallow it if it comes off: the cylinder for small parts is 3.17 cm wide; " +
				"make it larger, or leave it off"})
	}
	return list
}
