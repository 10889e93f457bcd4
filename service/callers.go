package service

import (
	"context"
	"log/slog"
	"net/http"
	"strings"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"github.com/rs/cors"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/peer"
	"google.golang.org/grpc/status"

	"example.com/knitmath/service/caller"
	"example.com/knitmath/service/watched"
)

// callers judges who calls, once for each call and before anything of it is worked
// on: over JSON before the body is read, over gRPC before the message is decoded.
// The interceptors that both faces share come after that, and do not judge again.
// Without a gate everybody may call.
//
// gRPC has a hook that is earlier still, before a message is received. A call that
// is refused there is seen by no interceptor, and its deadline is kept until it has
// passed: whoever makes calls with long ones would fill the memory.
type callers struct{ gate *caller.Gate }

// judging reads the files of keys, if there are any, and has them watched.
func (s *Server) judging(told *watched.Reports) (callers, error) {
	gate, err := caller.Open(s.config.Callers, told, s.config.Registry)
	if gate != nil {
		s.files = append(s.files, gate.Files()...)
	}
	return callers{gate}, err
}

// maxUnread is how long a body may be for which a refused caller keeps the
// connection. Of those that are kept net/http reads the body before it answers, and
// so would have a caller without a key send a long one, or wait for a slow one.
const maxUnread = 16 << 10

// judged judges a request. ok is false when it was answered. Questions alone need a key:
// which there are stands in a document that everybody may read, so that a wrong address is
// told to be wrong, and is not looked for in the key.
func (f *jsonFace) judged(w http.ResponseWriter, r *http.Request) (_ *http.Request, ok bool) {
	if f.callers.gate == nil {
		return r, true
	}
	c, refused := f.callers.gate.Judge(caller.Presented{
		Header: r.Header.Values, Peer: r.RemoteAddr, Document: !f.isQuestion(r.URL.Path)})
	r = r.WithContext(caller.With(r.Context(), c))
	if refused != nil {
		if r.ProtoMajor == 1 && (r.ContentLength < 0 || r.ContentLength > maxUnread) {
			w.Header().Set("Connection", "close")
		}
		st := refusedCaller(refused)
		f.refuse(w, r, runtime.HTTPStatusFromCode(st.Code()), st)
		return r, false
	}
	return r, true
}

// judgedKey is the place of a refusal in a context.
type judgedKey struct{}

// judge is ctx with who makes a call of gRPC, or with why it is refused. Health is
// for everybody: who asks for it has no key, and must have an answer when there are
// too many calls.
func (c callers) judge(ctx context.Context) context.Context {
	if c.gate == nil {
		return ctx
	}
	if method, _ := grpc.Method(ctx); strings.HasPrefix(method, healthMethods) {
		return ctx
	}
	md, _ := metadata.FromIncomingContext(ctx)
	shown := caller.Presented{Header: md.Get}
	if p, ok := peer.FromContext(ctx); ok {
		shown.Peer = p.Addr.String()
	}
	who, refused := c.gate.Judge(shown)
	ctx = caller.With(ctx, who)
	if refused != nil {
		return context.WithValue(ctx, judgedKey{}, refused)
	}
	return ctx
}

// refusedFor is why the call of ctx is refused, nil when it is not.
func refusedFor(ctx context.Context) error {
	if refused, ok := ctx.Value(judgedKey{}).(*caller.Refusal); ok {
		return asFailure(refused)
	}
	return nil
}

func (c callers) stream(srv any, ss grpc.ServerStream, _ *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
	return handler(srv, judgedStream{ss, c.judge(ss.Context())})
}

type judgedStream struct {
	grpc.ServerStream
	ctx context.Context
}

func (s judgedStream) Context() context.Context { return s.ctx }

// callerAttrs is what the log says of who calls: the name of a key, or one of two
// words for those without.
func callerAttrs(ctx context.Context) []slog.Attr {
	if c := caller.Of(ctx); c != nil {
		return []slog.Attr{slog.String("caller", c.Name)}
	}
	return nil
}

// refusedCaller is what a caller is told.
func refusedCaller(r *caller.Refusal) *status.Status {
	switch r.Kind {
	case caller.Limited:
		return overloaded(r.Reason, r.Text, r.After)
	case caller.Denied:
		return refusal(codes.PermissionDenied, r.Reason, r.Text)
	default:
		return refusal(codes.Unauthenticated, r.Reason, r.Text)
	}
}

// challenge is how a caller over HTTP learns that there are keys (RFC 9110, 11.6.1).
const challenge = `Bearer realm="knitmath"`

// preflightSeconds is how long browsers keep what a preflight said: as long as the
// least patient of them do at most.
const preflightSeconds = 7200

// cors lets pages of other origins read answers, and errors too. A preflight goes
// no further: it shows no key, and is answered out of the list.
//
// Whose call it was is no part of an answer, so what a cache may keep of a GET it
// may keep with or without a key, and give to those without one: the same question
// has the same answer, which costs nothing any more. Refusals are kept by nobody.
// Which page may read it is part of an answer: Vary names Origin.
func (c callers) cors(next http.Handler) http.Handler {
	if c.gate == nil || !c.gate.CORS() {
		return next
	}
	answered := cors.New(cors.Options{
		AllowOriginVaryRequestFunc: func(_ *http.Request, origin string) (bool, []string) { return c.gate.AllowOrigin(origin), nil },
		AllowedMethods:             []string{http.MethodGet, http.MethodHead, http.MethodPost},
		AllowedHeaders: []string{"Authorization", "Content-Encoding", "Content-Type", "If-None-Match", "Traceparent", "Tracestate",
			"X-Api-Key", "X-Request-Id"},
		ExposedHeaders: []string{"ETag", noticesHeader, releaseHeader, "Retry-After", "Www-Authenticate", "X-Request-Id"},
		MaxAge:         preflightSeconds,
	}).Handler(next)
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if len(r.Header.Values("Origin")) > 1 {
			// No browser says two, and a cache on the way may read the other one.
			w.Header().Add("Vary", "Origin")
			next.ServeHTTP(w, r)
			return
		}
		answered.ServeHTTP(w, r)
	})
}
