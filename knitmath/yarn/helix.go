package yarn

import (
	"math"

	"example.com/knitmath/knitmath/outline"
)

// Helix draws a piece of a yarn, one turn long and at least as long as it is thick,
// with the slope of the fibres or plies in front: from one side to the other in half of
// a turn, to the right going up for Z and to the left for S.
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
	for _, start := range []float64{0, turn / 2} {
		out.Lines = append(out.Lines, outline.Line{Name: "slope of the twist",
			Points: []outline.Point{{X: from, Y: start}, {X: to, Y: start + turn/2}}})
	}
	return out.Framed()
}
