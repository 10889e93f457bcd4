package carry

import (
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// Price is what the kernel says a question takes, in the steps of the room cost; ok
// is false for a message that is no question.
func Price(question proto.Message) (steps int, ok bool) {
	if question == nil {
		return 0, false
	}
	price, ok := prices[question.ProtoReflect().Descriptor().FullName()]
	if !ok {
		return 0, false
	}
	return price(question), true
}

// prices has, by the name of its message, how every question is carried in and priced.
var prices = pricesOf(
	priceOf(swatchIn), priceOf(castOnIn), priceOf(conversionIn),
	priceOf(spacingIn), priceOf(taperIn), priceOf(gradedTaperIn), priceOf(shapedSideIn),
	priceOf(wedgeIn), priceOf(circleIn),
	priceOf(yokeIn), priceOf(raglanIn),
	priceOf(flatIn), priceOf(curvedEdgeIn),
	priceOf(solidIn),
	priceOf(necklineIn),
	priceOf(armholeIn),
	priceOf(pickUpIn), priceOf(buttonholesIn),
	priceOf(heelIn), priceOf(toeIn),
	priceOf(crownIn), priceOf(mittenTopIn), priceOf(thumbIn),
	priceOf(countConversionIn), priceOf(descriptionIn), priceOf(comparisonIn),
	priceOf(needleListIn), priceOf(weightListIn), priceOf(bodyListIn), priceOf(abbreviationListIn),
	priceOf(estimateIn), priceOf(remainingIn), priceOf(handspunIn),
	priceOf(checkInstructionsIn), priceOf(formatInstructionsIn), priceOf(mirrorInstructionsIn),
)

// pricing is how one kind of question is priced.
type pricing struct {
	name  protoreflect.FullName
	price func(proto.Message) int
}

func priceOf[Q proto.Message, I interface{ Cost() int }](in func(Q) I) pricing {
	var none Q
	return pricing{none.ProtoReflect().Descriptor().FullName(), func(m proto.Message) int { return in(m.(Q)).Cost() }}
}

func pricesOf(all ...pricing) map[protoreflect.FullName]func(proto.Message) int {
	prices := make(map[protoreflect.FullName]func(proto.Message) int, len(all))
	for _, p := range all {
		prices[p.name] = p.price
	}
	return prices
}
