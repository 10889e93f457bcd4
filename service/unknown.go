package service

import (
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
