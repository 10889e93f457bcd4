package stitch

import (
	"math"
	"slices"
)

// SewnCm measures the line that a seam takes along a selvedge, for stitches and rows of
// the given sizes in cm: from the corner of one step that lies farthest in straight to
// that of the next. Stitches bound off end in that corner, stitches cast on begin in it;
// the side of a row in which the edge moves slants with those below it. Where over is
// not 0 the line ends that many cm beyond its upper end, on the top of the last row.
func (e Edge) SewnCm(stitchCm, rowCm, over float64) float64 {
	parts := e.Parts()
	if n := len(parts); n > 0 && parts[0].Row > parts[n-1].Row {
		parts = slices.Clone(parts)
		slices.Reverse(parts)
	}
	length, across, up := 0.0, 0.0, 0
	stroke := func() {
		length += math.Hypot(across, float64(up)*rowCm)
		across, up = 0, 0
	}
	for i, p := range parts {
		follows := i+1 < len(parts) && parts[i+1].Kind == p.Kind && parts[i+1].Row == p.Row // with others at once
		switch p.Kind {
		case EdgeBoundOff:
			if across += stitchCm; !follows {
				stroke()
			}
		case EdgeCastOn:
			if i == 0 || parts[i-1].Kind != p.Kind || parts[i-1].Row != p.Row {
				stroke()
			}
			across += stitchCm
		default:
			up += p.Up
			if p.Across != 0 {
				across += math.Abs(float64(p.Across)) / 2 * stitchCm
				stroke()
			}
		}
	}
	across += over
	stroke()
	return length
}
