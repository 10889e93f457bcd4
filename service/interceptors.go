package service

import (
	"context"
	"log/slog"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"

	"example.com/knitmath/service/trace"
)

// interceptors are what is around every call. Outer to inner: metrics and log,
// recovery. Recovery is within these so that a panic has become an ordinary INTERNAL
// error by the time the log and the metrics see it; were it outermost, the panic
// would pass both of them unseen. Within it an error of the kernel becomes the status
// that the caller sees, and innermost is left out of an answer what was not asked for.
//
// They are plain calls of one another: each interceptor of a chain would make its
// handler anew for every call.
//
// The log is our own: the usual interceptor writes the text of errors, which
// repeats parts of the question.
func interceptors(m *metrics, logger *slog.Logger) (grpc.UnaryServerInterceptor, grpc.StreamServerInterceptor) {
	unary := func(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
		start, figures := time.Now(), m.calls.of(info.FullMethod, typeUnary)
		figures.started.Inc()
		figures.received.Inc()
		resp, err := m.faults.recovered(ctx, req, info, handler)
		if err == nil {
			figures.sent.Inc()
		}
		m.ended(ctx, logger, figures, info.FullMethod, faceOf(ctx), start, err)
		return resp, err
	}
	stream := func(srv any, ss grpc.ServerStream, info *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
		if srv == nil {
			// A method that does not exist (unknown.go) has a name of the caller's own,
			// which must become no label.
			if err := refusedFor(ss.Context()); err != nil {
				m.refusals.refused(ss.Context(), faceGRPC, reasonOf(err), "call", func() []slog.Attr { return nil })
				return err
			}
			return handler(srv, ss)
		}
		kind := typeServerStream
		if info.IsClientStream {
			kind = typeBidiStream
		}
		start, figures := time.Now(), m.calls.of(info.FullMethod, kind)
		figures.started.Inc()
		err := refusedFor(ss.Context())
		if err == nil {
			err = m.faults.recoveredStream(srv, countedStream{ss, figures}, handler)
		}
		m.ended(ss.Context(), logger, figures, info.FullMethod, faceGRPC, start, err)
		return err
	}
	return unary, stream
}

// recovered asks a method; that it panics is an error like others.
func (f *faults) recovered(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (resp any, err error) {
	defer func() {
		if value := recover(); value != nil {
			resp, err = nil, f.panicOfCall(value)
		}
	}()
	return refuseUnary(ctx, req, info, handler)
}

// recoveredStream is the same of a method that streams.
func (f *faults) recoveredStream(srv any, ss grpc.ServerStream, handler grpc.StreamHandler) (err error) {
	defer func() {
		if value := recover(); value != nil {
			err = f.panicOfCall(value)
		}
	}()
	return handler(srv, ss)
}

// ended counts how a call ended. Of one that did not end well it writes a line: what
// was called, how it ended and which fields were at fault. Never a body: what people
// knit is theirs. Calls that end well are counted by the metrics, and in the log
// only for those who look for something (-log-level=debug).
func (m *metrics) ended(ctx context.Context, logger *slog.Logger, figures *methodMetrics, method, face string, start time.Time, err error) {
	code, took := status.Code(err), time.Since(start)
	figures.ended(code, took)
	if code == codes.OK && !logger.Enabled(ctx, slog.LevelDebug) {
		return
	}
	say := func() []slog.Attr {
		return []slog.Attr{
			slog.String("method", method),
			slog.String("code", code.String()),
			slog.Float64("seconds", took.Seconds()),
		}
	}
	switch {
	case code == codes.OK:
		attrs := append(append(say(), slog.String("face", face)), callerAttrs(ctx)...)
		logger.LogAttrs(ctx, slog.LevelDebug, "call", append(attrs, trace.Attrs(ctx)...)...)
	case code == codes.Internal || code == codes.Unknown:
		m.faults.log(ctx, "call", append(append(say(), slog.String("face", face)), causeOf(err)...)...)
	default:
		m.refusals.refused(ctx, face, reasonOf(err), "call", func() []slog.Attr {
			attrs := say()
			if fields := violatedFields(status.Convert(err)); len(fields) > 0 {
				attrs = append(attrs, slog.Any("fields", fields))
			}
			return attrs
		})
	}
}
