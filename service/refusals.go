package service

import (
	"context"
	"errors"
	"log/slog"

	"github.com/prometheus/client_golang/prometheus"
	rpccode "google.golang.org/genproto/googleapis/rpc/code"
	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/status"

	"example.com/knitmath/service/caller"
)

// refusalReasons are all values of the label reason: those of an ErrorInfo, and
// three for what never gets so far. A reason that is not listed counts as the last:
// a label must not grow by what callers send, nor by what we forget here.
var refusalReasons = []string{
	reasonInvalidInput, string(reasonMalformed), reasonTooLarge,
	"UNKNOWN_METHOD", "UNKNOWN_PATH", "METHOD_NOT_ALLOWED", "UNSUPPORTED_MEDIA_TYPE",
	reasonUnreadable,
	reasonOverloaded, "TOO_MANY_CONNECTIONS",
	"RESOURCE_EXHAUSTED", "UNAVAILABLE", "DEADLINE_EXCEEDED", "CANCELLED",
	"OTHER",
	caller.KeyRequired, caller.KeyUnknown, caller.KeyMalformed, caller.OriginNotAllowed, caller.RateLimited, caller.BudgetSpent,
}

const (
	reasonTooLarge = "BODY_TOO_LARGE"
	// reasonUnreadable is a request that net/http answered, or a call that gRPC
	// answered, before anything of ours saw it.
	reasonUnreadable = "UNREADABLE"
)

// refusals counts what is refused, and logs it at a bounded rate for each reason,
// so that a flood of one kind does not hide the others.
type refusals struct {
	count  *prometheus.CounterVec
	seen   map[[2]string]*refused // by face and reason
	logger *slog.Logger
}

type refused struct {
	counter prometheus.Counter
	lines   *lineLimit
}

func newRefusals(logger *slog.Logger) *refusals {
	r := &refusals{
		count: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "knitmath_refusals_total", Help: "Questions and requests refused, by face and reason."}, []string{"face", "reason"}),
		seen:   map[[2]string]*refused{},
		logger: logger,
	}
	for _, face := range []string{faceGRPC, faceJSON} {
		for _, reason := range refusalReasons {
			r.seen[[2]string{face, reason}] = &refused{r.count.WithLabelValues(face, reason), newLineLimit()}
		}
	}
	return r
}

// refused counts a refusal and logs it with what say says.
func (r *refusals) refused(ctx context.Context, face, reason, message string, say func() []slog.Attr) {
	at := r.seen[[2]string{face, reason}]
	if at == nil {
		at = r.seen[[2]string{face, "OTHER"}]
	}
	at.counter.Inc()
	at.lines.log(ctx, r.logger, slog.LevelInfo, message, func() []slog.Attr {
		return append(append([]slog.Attr{slog.String("face", face), slog.String("reason", reason)}, callerAttrs(ctx)...), say()...)
	})
}

// reasonOf is the reason of an error that is no fault of ours.
func reasonOf(err error) string {
	var unread *unreadError
	if errors.As(err, &unread) {
		return unread.reason
	}
	return reasonOfStatus(status.Convert(err))
}

func reasonOfStatus(st *status.Status) string {
	for _, d := range st.Details() {
		if info, ok := d.(*errdetails.ErrorInfo); ok && info.GetDomain() == errorDomain {
			return info.GetReason()
		}
	}
	return rpccode.Code(st.Code()).String()
}
