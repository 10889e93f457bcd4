package knittest

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// A Corner is a place on a knit edge: how many stitches it has moved in, and how many rows up.
type Corner struct{ Across, Up float64 }

// Corners are the places at which an edge of the fabric begins, turns and ends, from the foot of
// its lowest row: bound-off stitches lie flat, a row that moves the edge slants.
func Corners(edge stitch.Edge) []Corner {
	at := Corner{}
	line := []Corner{at}
	turn := func(flat bool, across, up float64) {
		at = Corner{at.Across + across, at.Up + up}
		if n := len(line); n > 1 && upright(line[n-2], line[n-1]) && across == 0 && !flat {
			line[n-1] = at
			return
		}
		line = append(line, at)
	}
	parts := edge.Parts()
	if n := len(parts); n > 0 && parts[0].Row > parts[n-1].Row { // a left edge goes down
		slices.Reverse(parts)
	}
	for _, p := range parts {
		switch p.Kind {
		case stitch.EdgeBoundOff:
			turn(true, 1, 0)
		case stitch.EdgeCastOn:
			turn(true, -1, 0)
		default:
			turn(false, float64(p.Across)/2, float64(p.Up))
		}
	}
	return line
}

func upright(a, b Corner) bool { return a.Across == b.Across }

// DistanceCm is how far a place lies from a curve, told by many of its places, as the crow flies:
// stitches and rows are so many cm.
func DistanceCm(place Corner, curve []Corner, stitchCm, rowCm float64) float64 {
	near := math.Inf(1)
	for i := 1; i < len(curve); i++ {
		fromX, fromY := (curve[i-1].Across-place.Across)*stitchCm, (curve[i-1].Up-place.Up)*rowCm
		dx, dy := (curve[i].Across-curve[i-1].Across)*stitchCm, (curve[i].Up-curve[i-1].Up)*rowCm
		part := 0.0
		if long := dx*dx + dy*dy; long > 0 {
			part = min(max(-(fromX*dx+fromY*dy)/long, 0), 1)
		}
		near = min(near, math.Hypot(fromX+part*dx, fromY+part*dy))
	}
	return near
}
