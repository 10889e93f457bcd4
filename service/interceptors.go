package service

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"runtime/debug"
	"strings"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
)

// interceptors are the two chains around every call. Outer to inner: metrics,
// log, recovery. Recovery is innermost so that a panic has become an ordinary
// INTERNAL error by the time the log and the metrics see it; were it outermost,
// the panic would pass both of them unseen. Within it an error
// of the kernel becomes the status that the caller sees.
func interceptors(m *metrics, logger *slog.Logger) (grpc.UnaryServerInterceptor, grpc.StreamServerInterceptor) {
	unary := chain(m.unary, logUnary(logger), recoverUnary, refuseUnary)
	stream := func(srv any, ss grpc.ServerStream, info *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
		return m.stream(info, func() error {
			return logStream(logger, ss.Context(), info, func() error {
				return recoverStream(srv, ss, handler)
			})
		})
	}
	return unary, stream
}

// chain makes one interceptor of several, the first outermost. The gRPC server
// and the in-process connection of the gateway share its result.
func chain(outerToInner ...grpc.UnaryServerInterceptor) grpc.UnaryServerInterceptor {
	if len(outerToInner) == 1 {
		return outerToInner[0]
	}
	outer, inner := outerToInner[0], chain(outerToInner[1:]...)
	return func(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
		return outer(ctx, req, info, func(ctx context.Context, req any) (any, error) {
			return inner(ctx, req, info, handler)
		})
	}
}

func logUnary(logger *slog.Logger) grpc.UnaryServerInterceptor {
	return func(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
		start := time.Now()
		resp, err := handler(ctx, req)
		logCall(logger, ctx, info.FullMethod, faceOf(ctx), start, err)
		return resp, err
	}
}

func logStream(logger *slog.Logger, ctx context.Context, info *grpc.StreamServerInfo, call func() error) error {
	start := time.Now()
	err := call()
	logCall(logger, ctx, info.FullMethod, faceGRPC, start, err)
	return err
}

// logCall writes one line a call: what was called, how it ended and which fields
// were at fault. Never a body: what people knit is theirs.
func logCall(logger *slog.Logger, ctx context.Context, method, face string, start time.Time, err error) {
	st := status.Convert(err)
	attrs := []slog.Attr{
		slog.String("method", method),
		slog.String("face", face),
		slog.String("code", st.Code().String()),
		slog.Float64("duration_ms", float64(time.Since(start))/float64(time.Millisecond)),
	}
	level := slog.LevelInfo
	if strings.HasPrefix(method, "/grpc.") {
		// Probes and reflection come every few seconds and say nothing new.
		level = slog.LevelDebug
	}
	switch st.Code() {
	case codes.OK:
	case codes.InvalidArgument:
		attrs = append(attrs, slog.Any("fields", violatedFields(st)))
	case codes.Internal, codes.Unknown:
		level = slog.LevelError
		attrs = append(attrs, slog.Any("cause", errors.Unwrap(err)))
		var p *panicError
		if errors.As(err, &p) {
			attrs = append(attrs, slog.String("stack", p.stack))
		}
	default:
		attrs = append(attrs, slog.String("message", st.Message()))
	}
	logger.LogAttrs(ctx, level, "call", attrs...)
}

// panicError is a panic caught in a handler.
type panicError struct {
	value any
	stack string
}

func (p *panicError) Error() string { return fmt.Sprintf("panic: %v", p.value) }

func recoverUnary(ctx context.Context, req any, _ *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (resp any, err error) {
	defer recovered(&err)
	return handler(ctx, req)
}

func recoverStream(srv any, ss grpc.ServerStream, handler grpc.StreamHandler) (err error) {
	defer recovered(&err)
	return handler(srv, ss)
}

// recovered turns a panic into an INTERNAL error. It must be deferred directly.
func recovered(err *error) {
	if v := recover(); v != nil {
		*err = asFailure(&panicError{value: v, stack: string(debug.Stack())})
	}
}
