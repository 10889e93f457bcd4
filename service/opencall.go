package service

import (
	"context"
	"sync/atomic"

	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/conns"
	"example.com/knitmath/service/trace"
)

// openCall is a call over gRPC with all that is known of it, from when its header has come (admission.begin): one
// context, where one for each thing would take every call an allocation and every look-up a step.
type openCall struct {
	context.Context
	conn    *conns.Conn // nil in tests without a network
	request trace.Request
	work    admit.Call
	question
	reply countedReply
	// reached says that it has come to something of ours.
	reached atomic.Bool
}

// question is what is read of a call, and why it could not be.
type question struct {
	incoming
	unread error
}

type openCallKey struct{}

// Value has the call, its request and its work at their places, and else what its context has.
func (c *openCall) Value(key any) any {
	switch key.(type) {
	case openCallKey:
		return c
	case trace.RequestKey:
		return &c.request
	case admit.CallKey:
		return &c.work
	}
	return c.Context.Value(key)
}

// openCallOf is the call that ctx is of: every context of a call over gRPC is.
func openCallOf(ctx context.Context) *openCall { return ctx.Value(openCallKey{}).(*openCall) }
