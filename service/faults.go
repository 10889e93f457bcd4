package service

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/http"
	"runtime"
	"runtime/debug"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
)

// Where a panic was caught, as the metrics name it.
const (
	whereCall   = "call"   // in a question or on its way to the answer
	whereAnswer = "answer" // while an answer was written for gRPC
	whereHTTP   = "http"   // in the JSON face, outside of any call
	whereAdmin  = "admin"  // in the admin face
)

// faults are the service's own faults: each is a defect, logged with its cause and
// counted.
type faults struct {
	panics  *prometheus.CounterVec // by where
	answers *prometheus.CounterVec // by face
	lines   *lineLimit
	logger  *slog.Logger
}

func newFaults(logger *slog.Logger) *faults {
	f := &faults{
		panics: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_panics_total", Help: "Panics caught, by where. Each one is a defect."}, []string{"where"}),
		answers: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_unwritten_answers_total", Help: "Answers that could not be written as bytes. Each one is a defect."}, []string{"face"}),
		lines:  newLineLimit(),
		logger: logger,
	}
	for _, where := range []string{whereCall, whereAnswer, whereHTTP, whereAdmin} {
		f.panics.WithLabelValues(where)
	}
	for _, face := range []string{faceGRPC, faceJSON} {
		f.answers.WithLabelValues(face)
	}
	return f
}

// panicked counts and logs what was recovered, with the stack it came from, and is
// what the caller is told. It has to be called by the function that recovered.
func (f *faults) panicked(ctx context.Context, where string, value any) error {
	f.panics.WithLabelValues(where).Inc()
	f.log(ctx, "panic", append([]slog.Attr{slog.String("where", where)}, causeOf(asPanic(value))...)...)
	return internalFault(errors.New("panic, logged where it was caught"))
}

// panicOfCall counts what was recovered of a call, which itself is counted and logged
// as one that failed. It has to be called by the function that recovered.
func (f *faults) panicOfCall(value any) error {
	f.panics.WithLabelValues(whereCall).Inc()
	return internalFault(asPanic(value))
}

// unwritten counts and logs an answer that could not be written.
func (f *faults) unwritten(ctx context.Context, face string, cause error) error {
	f.answers.WithLabelValues(face).Inc()
	f.log(ctx, "answer not written", slog.String("face", face), slog.Any("cause", cause))
	return internalFault(cause)
}

// log writes a line of a fault of ours, at a bounded rate.
func (f *faults) log(ctx context.Context, message string, attrs ...slog.Attr) {
	f.lines.log(ctx, f.logger, slog.LevelError, message, func() []slog.Attr { return attrs })
}

func internalFault(cause error) error {
	return &failure{status.New(codes.Internal, internalText), cause}
}

// panicError is what was caught of a panic, with the stack it came from.
type panicError struct {
	value any
	stack []byte
}

func (p *panicError) Error() string { return fmt.Sprintf("panic with a %T", p.value) }

func asPanic(value any) error { return &panicError{value, debug.Stack()} }

// causeOf is what the log says of a fault of ours. What a panic says itself could
// have words of the question in it, unless the Go runtime says it; the stack has
// only places in the program.
func causeOf(err error) []slog.Attr {
	var p *panicError
	if !errors.As(err, &p) {
		return []slog.Attr{slog.Any("cause", errors.Unwrap(err))}
	}
	cause := p.Error()
	if of, ok := p.value.(runtime.Error); ok {
		cause = "panic: " + of.Error()
	}
	return []slog.Attr{slog.String("cause", cause), slog.String("stack", string(p.stack))}
}

// recoverHTTP answers 500 where next panics outside of any call. Left to net/http
// the connection would be cut, and the request be counted by nobody. If part of the
// answer is on its way, cutting is all that is left: a caller must not take it for
// the whole.
func (f *faults) recoverHTTP(where string, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		answer := answerOf(w)
		defer func() {
			value := recover()
			if value == nil {
				return
			}
			if err, ok := value.(error); ok && errors.Is(err, http.ErrAbortHandler) {
				panic(value) // Meant to cut the connection, and logged if it had to be.
			}
			failed := f.panicked(r.Context(), where, value)
			if answer.code != 0 {
				panic(http.ErrAbortHandler)
			}
			for _, ofTheAnswer := range []string{"Content-Length", "Content-Encoding", "ETag"} {
				answer.Header().Del(ofTheAnswer)
			}
			writeStatus(answer, http.StatusInternalServerError, status.Convert(failed))
		}()
		next.ServeHTTP(answer, r)
	})
}
