package carry

import (
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// Price is what the kernel says a question takes, in the steps of the room cost; ok
// is false for a message that is no question.
func Price(question proto.Message) (steps int, ok bool) {
	switch q := question.(type) {
	case *knitmathv1.ComputeGaugeRequest:
		return swatchIn(q).Cost(), true
	case *knitmathv1.ComputeCastOnRequest:
		return castOnIn(q).Cost(), true
	case *knitmathv1.ConvertGaugeRequest:
		return conversionIn(q).Cost(), true
	case *knitmathv1.PlanEvenSpacingRequest:
		return spacingIn(q).Cost(), true
	case *knitmathv1.PlanTaperRequest:
		return taperIn(q).Cost(), true
	case *knitmathv1.PlanShapedSideRequest:
		return shapedSideIn(q).Cost(), true
	case *knitmathv1.PlanWedgeRequest:
		return wedgeIn(q).Cost(), true
	case *knitmathv1.PlanCircleOfWedgesRequest:
		return circleIn(q).Cost(), true
	case *knitmathv1.PlanCircularYokeRequest:
		return yokeIn(q).Cost(), true
	case *knitmathv1.PlanRaglanRequest:
		return raglanIn(q).Cost(), true
	case *knitmathv1.PlanPickUpRequest:
		return pickUpIn(q).Cost(), true
	case *knitmathv1.PlanButtonholesRequest:
		return buttonholesIn(q).Cost(), true
	case *knitmathv1.EstimateYarnRequest:
		return yarnIn(q).Cost(), true
	case *knitmathv1.CheckInstructionsRequest:
		return checkInstructionsIn(q).Cost(), true
	case *knitmathv1.FormatInstructionsRequest:
		return formatInstructionsIn(q).Cost(), true
	case *knitmathv1.MirrorInstructionsRequest:
		return mirrorInstructionsIn(q).Cost(), true
	}
	return 0, false
}
