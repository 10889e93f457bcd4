package yarn

import (
	"math"

	"example.com/knitmath/knitmath/outline"
)

// Helix draws a piece of a yarn, one turn long and at least as long as it is thick,
// with the slope of the fibres or plies in front, to the right going up for Z and to the
// left for S.
//
// The helix x = r sin(a), y = a / (2 pi turns) crosses the front at a = 0, where dx / dy =
// 2 pi r turns = tan(angle): its tangent stands at the angle that is said, though the helix
// bends away from it and goes from side to side in half of a turn. The tangent does so in
// 1 / pi of a turn, and is what an angle is measured by.
//
// Source: own derivation, by the geometry of the helix.
func Helix(diameterCm float64, t Twist) *outline.Outline {
	turn := 1 / t.PerCm
	length := math.Max(turn, diameterCm)
	out := &outline.Outline{
		X: outline.Axis{Measure: "across the yarn", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "along the yarn", Unit: outline.UnitCm},
		Lines: []outline.Line{
			{Name: "left side", Points: []outline.Point{{X: 0, Y: 0}, {X: 0, Y: length}}},
			{Name: "right side", Points: []outline.Point{{X: diameterCm, Y: 0}, {X: diameterCm, Y: length}}},
		},
	}
	from, to := 0.0, diameterCm
	if t.Direction == TwistDirectionS {
		from, to = to, from
	}
	half := turn / (2 * math.Pi)
	for _, front := range []float64{turn / 4, 3 * turn / 4} {
		out.Lines = append(out.Lines, outline.Line{Name: "slope of the twist",
			Points: []outline.Point{{X: from, Y: front - half}, {X: to, Y: front + half}}})
	}
	return out.Framed()
}
