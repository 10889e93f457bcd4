package service

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/http"
	"runtime/debug"
	"strings"
	"time"

	"github.com/grpc-ecosystem/go-grpc-middleware/v2/interceptors/recovery"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
)

// interceptors are the two chains around every call. Outer to inner: metrics,
// log, recovery. Recovery is within these two so that a panic has become an
// ordinary INTERNAL error by the time the log and the metrics see it; were it
// outermost, the panic would pass both of them unseen. Within it an error of the
// kernel becomes the status that the caller sees, and innermost is left out of an
// answer what was not asked for.
//
// The log is our own: the usual interceptor writes the text of errors, which
// repeats parts of the question.
func interceptors(m *metrics, logger *slog.Logger) (grpc.UnaryServerInterceptor, grpc.StreamServerInterceptor) {
	caught := recovery.WithRecoveryHandler(func(value any) error { return asFailure(panicked(value)) })
	unary := chain(m.calls.UnaryServerInterceptor(), logUnary(logger), recovery.UnaryServerInterceptor(caught), refuseUnary, partUnary)
	counted, recovered := m.calls.StreamServerInterceptor(), recovery.StreamServerInterceptor(caught)
	stream := func(srv any, ss grpc.ServerStream, info *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
		return counted(srv, ss, info, func(srv any, ss grpc.ServerStream) error {
			return logStream(logger, ss.Context(), info, func() error {
				return recovered(srv, ss, info, handler)
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
		attrs = append(attrs, causeOf(err)...)
	default:
		attrs = append(attrs, slog.String("message", st.Message()))
	}
	logger.LogAttrs(ctx, level, "call", attrs...)
}

// panicked is what was caught of a panic, with the stack it came from. It has to
// be called by the function that recovered.
func panicked(value any) error {
	return &recovery.PanicError{Panic: value, Stack: debug.Stack()}
}

// causeOf is what the log says of a fault of ours.
func causeOf(err error) []slog.Attr {
	var p *recovery.PanicError
	if errors.As(err, &p) {
		return []slog.Attr{slog.String("cause", fmt.Sprintf("panic: %v", p.Panic)), slog.String("stack", string(p.Stack))}
	}
	return []slog.Attr{slog.Any("cause", errors.Unwrap(err))}
}

// recoverHTTP answers 500 where next panics outside of any call. Left to net/http
// the connection would be cut, and the request be counted by nobody.
func recoverHTTP(logger *slog.Logger, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			value := recover()
			if value == nil {
				return
			}
			if err, ok := value.(error); ok && errors.Is(err, http.ErrAbortHandler) {
				panic(value) // Meant to cut the connection.
			}
			failed := asFailure(panicked(value))
			logger.LogAttrs(r.Context(), slog.LevelError, "request failed", causeOf(failed)...)
			for _, ofTheAnswer := range []string{"Content-Length", "Content-Encoding", "ETag"} {
				w.Header().Del(ofTheAnswer)
			}
			writeStatus(w, http.StatusInternalServerError, status.Convert(failed))
		}()
		next.ServeHTTP(w, r)
	})
}
