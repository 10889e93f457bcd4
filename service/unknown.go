package service

import (
	"context"
	"log/slog"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
)

const reasonUnknownMethod = "UNKNOWN_METHOD"

// unknownMethod refuses a method or a service that does not exist. gRPC would do so
// itself, and nobody would know.
func unknownMethod(r *refusals) grpc.StreamHandler {
	st := refusal(codes.Unimplemented, reasonUnknownMethod, "there is no such method; server reflection lists them all")
	return func(_ any, ss grpc.ServerStream) error {
		r.refused(ss.Context(), faceGRPC, reasonUnknownMethod, "call", func() []slog.Attr { return nil })
		return st.Err()
	}
}

// unreachedKey is the place in the context of a call where it is told that the call
// has reached something of ours.
type unreachedKey struct{}

// countUnreached counts calls that end without having reached anything of ours: in
// an encoding that is not known, or with a name that is none, which gRPC answers by
// itself. A stats.Handler would see them too, and costs every call three times as
// much.
func countUnreached(ctx context.Context, r *refusals) context.Context {
	reached := context.AfterFunc(ctx, func() {
		r.refused(context.Background(), faceGRPC, reasonUnreadable, "call", func() []slog.Attr { return nil })
	})
	return context.WithValue(ctx, unreachedKey{}, reached)
}

// reached says that the call has.
func reached(ctx context.Context) {
	if stop, ok := ctx.Value(unreachedKey{}).(func() bool); ok {
		stop()
	}
}
