package neck

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// name is the shape in the words of the trade.
func (s Shape) name() string {
	switch s {
	case ShapeV:
		return "V neck"
	case ShapeSquare:
		return "square neck"
	case ShapeBoat:
		return "boat neck"
	}
	return "round neck"
}

// Summary says the answer in words.
func (o Neckline) Summary() string {
	unit := o.in.DisplayUnit
	s := "A " + o.in.Shape.name() + " of " + report.CountOf(o.NeckStitches, "stitches") + " (" + unit.Size(o.NeckCm) + ")"
	if n := o.Front.NeckStitches; n != o.NeckStitches {
		s += ", of " + strconv.Itoa(n) + " in front,"
	}
	s += " between shoulders of " + strconv.Itoa(o.ShoulderStitches) + " (" + unit.Size(o.ShoulderCm) + "), "
	if n := o.in.strap(); n > 0 {
		s += "with straps of " + strconv.Itoa(n) + " (" + unit.Size(o.Front.layout.strapCm()) + ") between front and back, "
	}
	s += deep(o.Front, unit) + " in front and " + deep(o.Back, unit) + " behind. " +
		"Pick up " + report.CountOf(o.PickedUpStitches, "stitches") + " around it, " + unit.Size(o.OpeningCm) + " at rest"
	if o.GoesOverHead == nil {
		return s + "."
	}
	s += "; stretched to " + unit.Size(o.StretchedCm) + " it "
	if *o.GoesOverHead {
		s += "goes"
	} else {
		s += "does not go"
	}
	return s + " over a head of " + unit.Size(*o.HeadCm) + "."
}

func deep(p Piece, unit measure.DisplayUnit) string {
	if p.DepthRows == 0 {
		return "straight"
	}
	return unit.Size(p.DepthCm) + " deep"
}

// stepWords is how a shoulder is divided, if it is: "8, 7 and 7".
func stepWords(steps []int) string {
	parts := make([]string, len(steps))
	for i, n := range steps {
		parts[i] = strconv.Itoa(n)
	}
	return report.Listed(parts)
}
