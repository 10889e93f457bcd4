package service

import (
	"context"
	"log/slog"
	"net/http"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"google.golang.org/grpc"
	"google.golang.org/grpc/status"

	"example.com/knitmath/service/admit"
)

// reasonOverloaded is the ErrorInfo reason of a call that was refused because of
// what else there is to do.
const reasonOverloaded = "OVERLOADED"

// bytesPerStep is how much JSON is read in a step of the kernel.
const bytesPerStep = 64

// admission has calls pass the gate. Both faces hold a place in it until the answer
// is made into bytes, and none while they are sent: a caller who reads slowly must
// not keep others from being answered.
type admission struct {
	gate     *admit.Gate
	refusals *refusals
}

// unary gives each gRPC call its place. It is the outermost interceptor: what
// returns from it goes to the codec, which ends the work (questionCodec).
func (a admission) unary(ctx context.Context, req any, _ *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
	call := a.gate.NewCall(func(bool) bool { return true })
	handed := false
	defer func() { // Also when something panics: the place would be lost for ever.
		if !handed {
			call.Leave()
		}
	}()
	resp, err := handler(admit.With(ctx, call), req)
	if err != nil {
		return nil, err
	}
	handed = true
	return &countedReply{resp, call}, nil
}

// enter lets a JSON call in, at the price of reading so many bytes, before they are
// read. What is returned stands for w and r; ok is false when the call was refused.
func (a admission) enter(w http.ResponseWriter, r *http.Request, size int) (_ *leavingWriter, _ *http.Request, ok bool) {
	call := a.gate.NewCall(func(bool) bool { return true })
	if err := call.Enter(r.Context(), size/bytesPerStep); err != nil {
		a.refuseForLoad(w, r, err)
		return nil, nil, false
	}
	return &leavingWriter{w, call}, r.WithContext(admit.With(r.Context(), call)), true
}

// refuseForLoad answers a call that the gate has not let in.
func (a admission) refuseForLoad(w http.ResponseWriter, r *http.Request, err error) {
	err = asFailure(err)
	st := status.Convert(err)
	a.refusals.refused(r.Context(), faceJSON, reasonOf(err), "refused", func() []slog.Attr {
		return []slog.Attr{slog.String("message", st.Message())}
	})
	writeStatus(w, runtime.HTTPStatusFromCode(st.Code()), st)
}

// leavingWriter ends the work of a call when its answer begins to be sent.
type leavingWriter struct {
	http.ResponseWriter
	call *admit.Call
}

func (l *leavingWriter) Write(p []byte) (int, error) {
	l.call.Leave()
	return l.ResponseWriter.Write(p)
}

// Unwrap lets http.ResponseController reach the connection.
func (l *leavingWriter) Unwrap() http.ResponseWriter { return l.ResponseWriter }

// refusedForLoad is what a caller is told whom the gate turned away.
func refusedForLoad(r *admit.Refusal) *status.Status {
	text := "more is asked than can be answered at once; ask again later"
	switch {
	case r.Cause == admit.AnswersNotTaken:
		text = "too many answers have not been read; read them before asking for more"
	case r.Dear:
		text = "more long questions are asked than can be answered at once; ask again later, or for less"
	}
	return overloaded(reasonOverloaded, text, r.After)
}
