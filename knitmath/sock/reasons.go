package sock

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

// The reasons of notices. A round that was exactly half-way is told by the reason of
// package gauge.
const (
	// HeelUnlikeHalf: the heel has less than two fifths or more than two thirds of the
	// round. Field is "heel_stitches".
	HeelUnlikeHalf report.Reason = "HEEL_UNLIKE_HALF"
	// PickUpUnlikeEdge: fewer stitches are picked up along an edge than it has slipped
	// ones, or over 4 more. Field is "pick_up_stitches".
	PickUpUnlikeEdge report.Reason = "PICK_UP_UNLIKE_EDGE"
	// ToeMustBeShort: before a heel from the toe up the foot has no room for a wedge toe, and has for
	// the shortest. Field is "foot_length_cm".
	ToeMustBeShort report.Reason = "TOE_MUST_BE_SHORT"
	// LooseEnds: the sock is small enough for a baby's foot. Sent with every such toe whose
	// gauge is known. Field is empty.
	LooseEnds report.Reason = "LOOSE_ENDS"
	// CountAdjusted: the stitches of the round are not those that the toe divides, and a
	// round of its own decreases the rest. Field is what the round was given by.
	CountAdjusted report.Reason = "COUNT_ADJUSTED"
	// ToeUnlikeFeet: the toe takes over two fifths of the foot. Field is what was given that makes it so long,
	// or kind.
	ToeUnlikeFeet report.Reason = "TOE_UNLIKE_FEET"
	// EndUnmet: the tip of a toe has more stitches than tip_stitches allows. Field is tip_stitches.
	EndUnmet = solid.EndUnmet
)

// notices are the remarks on a heel.
func (h heel) notices(out Heel) []report.Notice {
	list := h.halfway(nil)
	if h.heelGiven && (5*h.stitches < 2*h.round || 3*h.stitches > 2*h.round) {
		list = append(list, report.Notice{Reason: HeelUnlikeHalf, Field: "heel_stitches",
			Description: "heels have half of the stitches, deep ones three fifths; this has " + strconv.Itoa(h.stitches) +
				" of " + strconv.Itoa(h.round)})
	}
	chain := h.flapRows / 2
	if h.pickUpGiven && (h.pickUp < chain || h.pickUp > chain+mostCorner) {
		list = append(list, report.Notice{Reason: PickUpUnlikeEdge, Field: "pick_up_stitches",
			Description: "an edge of " + report.CountOf(chain, "slipped stitches") + " commonly gives " + strconv.Itoa(chain) + " to " +
				strconv.Itoa(chain+mostCorner) + "; with fewer it gapes, with more it ruffles"})
	}
	return list
}

// babyCm is how far round the sock of a baby's foot goes at most: the smallest foot of the
// size chart has 11.5 cm, the next 14 (Craft Yarn Council, from memory).
const babyCm = 13.0

// notices are the remarks on a toe.
func (t toe) notices(in ToeInput, out Toe) []report.Notice {
	list := solid.EndNotice(t.halfway(nil), "tip_stitches", in.TipStitches, out.TipStitches)
	if last := len(list) - 1; last >= 0 && list[last].Reason == EndUnmet && t.toeUp {
		list[last].Description = strconv.Itoa(out.TipStitches) + " stitches are cast on where " + strconv.Itoa(*in.TipStitches) +
			" may be: with fewer the first round has too few to join, or to increase between"
	}
	if out.WedgeCount != nil && t.round%*out.WedgeCount != 0 {
		field := "round_stitches"
		if t.fitted != nil {
			field = "foot_circumference_cm"
		}
		list = append(list, report.Notice{Reason: CountAdjusted, Field: field,
			Description: "a round of its own lies between the " + report.CountOf(t.round, "stitches") + " of the round and the " +
				strconv.Itoa(t.round-t.round%*out.WedgeCount) + " which the toe divides"})
	}
	if part := float64(out.LengthRows) / t.footRows(in); part > mostToe {
		list = append(list, report.Notice{Reason: ToeUnlikeFeet, Field: in.lengthens(),
			Description: "the toe of " + report.CountOf(out.LengthRows, "rounds") + " takes " + measure.Decimal(100*part, 0) +
				" % of a foot as long as " + t.footSaid(in) + "; toes take about a quarter"})
	}
	if !t.st.IsZero() && t.st.SizeCm(t.round) <= babyCm {
		list = append(list, report.Notice{Reason: LooseEnds,
			Description: "for a baby: work ends and floats in so that no loop inside can catch a toe, and look again after each wash; " +
				"follow local advice on babies' clothes"})
	}
	return list
}
