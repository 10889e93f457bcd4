package service

import (
	"context"
	"log/slog"
	"net/http"
	"strconv"
	"strings"
	"sync/atomic"
	"time"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"google.golang.org/grpc"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/status"
	"google.golang.org/grpc/tap"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/conns"
	"example.com/knitmath/service/trace"
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
	gate      *admit.Gate
	refusals  *refusals
	unreached *unreached
}

// around gives each gRPC call its place, around all else that is done for it: what
// returns from it goes to the codec, which ends the work (questionCodec).
func (a admission) around(inner grpc.UnaryServerInterceptor) grpc.UnaryServerInterceptor {
	return func(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
		call := openCallOf(ctx)
		handed := false
		defer func() { // Also when something panics: the place would be lost for ever.
			if !handed {
				call.work.Leave()
			}
		}()
		resp, err := inner(ctx, req, info, handler)
		if err != nil {
			if md := pushback(err); md != nil {
				_ = grpc.SetTrailer(ctx, md) // Fails only when the call has ended, and then nobody waits.
			}
			return nil, err
		}
		call.reply = countedReply{message: resp, work: &call.work, conn: call.conn, stream: grpc.ServerTransportStreamFromContext(ctx)}
		if message, ok := resp.(proto.Message); ok {
			call.reply.size = proto.Size(message)
			shortPlain(ctx, call.reply.size, call.conn)
		}
		handed = true
		return &call.reply, nil
	}
}

// workOf is the work of a call that came by a connection; there is none in tests without
// a network.
func (a admission) workOf(conn *conns.Conn) admit.Call {
	if conn == nil {
		return a.gate.NewCall(nil)
	}
	return a.gate.NewCall(conn)
}

// begin is asked for every gRPC call before its question is read. Whoever asks how
// the service does is always heard. It is called with a lock of the connection held.
func (a admission) begin(ctx context.Context, info *tap.Info) (context.Context, error) {
	conn := conns.OfCall(ctx)
	if conn != nil && !strings.HasPrefix(info.FullMethodName, healthMethods) && !conn.MayBegin() {
		a.refusals.refused(ctx, faceGRPC, reasonOverloaded, "call", func() []slog.Attr { return nil })
		return nil, noRoom().Err()
	}
	call := &openCall{Context: ctx, conn: conn, work: a.workOf(conn)}
	call.request.Ask(info.Header[trace.IDMetadata])
	a.unreached.add(call)
	return call, nil
}

const healthMethods = "/grpc.health.v1.Health/"

// noRoom is what a caller is told whose question is not even read.
func noRoom() *status.Status {
	return overloaded(reasonOverloaded, "more calls are open than can be answered; ask again later", time.Second)
}

// stream bounds the calls that last, such as watches of the health.
func (a admission) stream(srv any, ss grpc.ServerStream, _ *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
	if conn := openCallOf(ss.Context()).conn; conn != nil {
		end, ok := conn.Watch()
		if !ok {
			err := noRoom().Err()
			ss.SetTrailer(pushback(err))
			return err
		}
		defer end()
	}
	return handler(srv, ss)
}

// pushback is how long to wait before asking again, as clients that retry by
// themselves heed it: they do not know RetryInfo. There is none for other errors.
func pushback(err error) metadata.MD {
	st, _ := status.FromError(err)
	if after, told := retryDelay(st); told {
		return metadata.Pairs("grpc-retry-pushback-ms", strconv.FormatInt((after+time.Millisecond-1).Milliseconds(), 10))
	}
	return nil
}

// onHTTP begins a call for every request, if there is room for one more. Connections
// that are as old as those of gRPC may get, and all of them once the service is not
// ready any more, are closed by their next answer: so their callers find others.
func (a admission) onHTTP(next http.Handler, age time.Duration, ready *atomic.Bool) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		conn := conns.OfRequest(r)
		// In chunks a request may have said a length too, which net/http passes over and a proxy might
		// go by: what follows on the connection is not to be taken for another request (RFC 9112, 6.1).
		chunked := len(r.TransferEncoding) > 0
		if chunked || !ready.Load() || conn != nil && time.Since(conn.Born()) > age {
			w.Header().Set("Connection", "close")
		}
		if conn != nil {
			defer conn.Begin(r)()
			if !conn.MayBegin() {
				a.refuseForLoad(w, r, noRoom().Err())
				return
			}
		}
		next.ServeHTTP(w, r)
	})
}

// held counts what next answers with until it is sent. An answer takes about as much
// again in the form that it was made from.
func held(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if conn := conns.OfRequest(r); conn != nil {
			w = &heldWriter{w, conn}
		}
		next.ServeHTTP(w, r)
	})
}

type heldWriter struct {
	http.ResponseWriter
	conn *conns.Conn
}

func (h *heldWriter) Write(p []byte) (int, error) {
	h.conn.Hold(2 * len(p))
	defer h.conn.Let(2 * len(p))
	return h.ResponseWriter.Write(p)
}

// Unwrap lets http.ResponseController reach the connection.
func (h *heldWriter) Unwrap() http.ResponseWriter { return h.ResponseWriter }

// enter lets a JSON call in, at the price of reading so many bytes, before they are
// read. What is returned stands for w and r; ok is false when the call was refused.
func (a admission) enter(w http.ResponseWriter, r *http.Request, call *jsonCall, size int) (_ *leavingWriter, _ *http.Request, ok bool) {
	call.Context, call.work = r.Context(), a.workOf(conns.OfRequest(r))
	if err := call.work.Enter(r.Context(), size/bytesPerStep); err != nil {
		a.refuseForLoad(w, r, err)
		return nil, nil, false
	}
	call.leaving = leavingWriter{w, &call.work}
	return &call.leaving, r.WithContext(call), true
}

// refuseForLoad answers a call that the gate has not let in.
func (a admission) refuseForLoad(w http.ResponseWriter, r *http.Request, err error) {
	if _, ok := status.FromError(err); !ok {
		err = asFailure(err)
	}
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
