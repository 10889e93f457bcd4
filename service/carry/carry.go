// Package carry answers the services of the wire: it carries a question into the
// kernel's structs, asks the kernel, and carries the answer back, a file a room.
// How each message is carried is written out by hand, and held together with the
// proto files by a test that looks for every field on the other side. Nothing is
// decided here: an error is the kernel's own, or that of packages caller and admit,
// which are asked in between whether its caller may ask for what the kernel says it
// costs, and whether there is room for it.
package carry

import (
	"context"
	"errors"
	"math"

	"google.golang.org/grpc"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/caller"
)

// Register registers every service of the project.
func Register(to grpc.ServiceRegistrar) {
	knitmathv1.RegisterGaugeServiceServer(to, gaugeService{})
	knitmathv1.RegisterShapingServiceServer(to, shapingService{})
	knitmathv1.RegisterShortRowServiceServer(to, shortRowService{})
	knitmathv1.RegisterYokeServiceServer(to, yokeService{})
	knitmathv1.RegisterEdgeServiceServer(to, edgeService{})
	knitmathv1.RegisterFlatServiceServer(to, flatService{})
	knitmathv1.RegisterHandServiceServer(to, handService{})
	knitmathv1.RegisterSolidServiceServer(to, solidService{})
	knitmathv1.RegisterNeckServiceServer(to, neckService{})
	knitmathv1.RegisterArmholeServiceServer(to, armholeService{})
	knitmathv1.RegisterYarnServiceServer(to, yarnService{})
	knitmathv1.RegisterBodyServiceServer(to, bodyService{})
	knitmathv1.RegisterCurveServiceServer(to, curveService{})
	knitmathv1.RegisterPatternServiceServer(to, patternService{})
	knitmathv1.RegisterSockServiceServer(to, sockService{})
}

// answer carries a question in, asks it when there is room for what it costs, and
// carries the answer out.
func answer[Req proto.Message, In, Out, Resp any](
	ctx context.Context, req Req, in func(Req) In, ask func(In) (Out, error), out func(Out) *Resp,
) (*Resp, error) {
	question := in(req)
	if err := enter(ctx, price(question)+proto.Size(req)/readPerStep); err != nil {
		return nil, err
	}
	a, err := ask(question)
	if err != nil {
		owe(ctx, err)
		return nil, err
	}
	return out(a), nil
}

// owe takes what a refusal has sought out of its caller's budget.
func owe(ctx context.Context, err error) {
	var refused *fault.InputError
	if errors.As(err, &refused) {
		caller.Of(ctx).Owe(refused.Sought)
	}
}

// enter takes what a question costs out of its caller's budget and waits for room. It
// is the same for all, and so no part of answer, of which there is one for each method.
func enter(ctx context.Context, cost int) error {
	if refused := caller.Of(ctx).Spend(cost); refused != nil {
		return refused
	}
	return admit.Enter(ctx, cost)
}

// readPerStep is how many bytes of a question are held and looked at for what a step
// costs. What a question says beside what the kernel reads of it is paid for too.
const readPerStep = 64

// price is what the kernel says that a question costs.
func price(question any) int {
	if q, ok := question.(interface{ Cost() int }); ok {
		return q.Cost()
	}
	return 1
}

// optional carries a value that may be absent.
func optional[From, To any](from *From, carry func(From) To) *To {
	if from == nil {
		return nil
	}
	to := carry(*from)
	return &to
}

// message carries a value that may be absent into a message.
func message[From, To any](from *From, carry func(From) *To) *To {
	if from == nil {
		return nil
	}
	return carry(*from)
}

// each carries every item of a list.
func each[From, To any](from []From, carry func(From) To) []To {
	if len(from) == 0 {
		return nil
	}
	to := make([]To, len(from))
	for i, v := range from {
		to[i] = carry(v)
	}
	return to
}

// countIn and countOut carry whole numbers. Answers are counts within the limits of the
// kernel, far inside 32 bits; what a written pattern says may be beyond, and stops there.
func countIn(n int32) int  { return int(n) }
func countOut(n int) int32 { return int32(min(max(n, math.MinInt32), math.MaxInt32)) }
