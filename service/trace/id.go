// Package trace tells one call from another, within the process and beyond it:
// the request id that every answer and every line of the log has, and spans in
// the form of OpenTelemetry, which exist only where the environment asks for them.
//
// What a question says never becomes part of a span.
package trace

import (
	"context"
	"crypto/rand"
	"log/slog"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	oteltrace "go.opentelemetry.io/otel/trace"
)

// IDHeader is the name of the request id among HTTP headers; metadata of gRPC has
// it in lower case.
const (
	IDHeader   = "X-Request-Id"
	IDMetadata = "x-request-id"
)

// maxIDLength bounds an id of the caller's: room for a UUID with a word before it.
const maxIDLength = 64

// ownIDs begin all alike, at random, so that no two processes give the same one.
var ownIDs = struct {
	begin string
	given atomic.Uint64
}{begin: rand.Text()[:16] + "-"}

// A Request is what tells a call from another: the id that its caller asked for, or one
// of ours if he asked for none, for several, or for one that is too long or is no plain
// word: it is written to logs and headers as it is. One of ours is made when it is first
// wanted; most calls end well, and nobody wants theirs.
type Request struct {
	asked string
	own   sync.Once
	id    string
}

// NewRequest takes what a caller asked for.
func NewRequest(asked []string) *Request {
	r := &Request{}
	r.Ask(asked)
	return r
}

// Ask takes what a caller asked for, of a request that is a part of something.
func (r *Request) Ask(asked []string) {
	if len(asked) == 1 && plain(asked[0]) {
		r.asked = asked[0]
	}
}

// Asked is the id that was asked for and taken, or nothing.
func (r *Request) Asked() string { return r.asked }

// ID is the request's.
func (r *Request) ID() string {
	if r.asked != "" {
		return r.asked
	}
	r.own.Do(func() { r.id = ownIDs.begin + strconv.FormatUint(ownIDs.given.Add(1), 36) })
	return r.id
}

// plain takes letters, digits and the marks that ids usually have.
func plain(id string) bool {
	for i := range len(id) {
		c := id[i]
		letter := 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9'
		if !letter && !strings.ContainsRune("-_.:=+/", rune(c)) {
			return false
		}
	}
	return 0 < len(id) && len(id) <= maxIDLength
}

// RequestKey is the place of a *Request in a context.
type RequestKey struct{}

// With is a context of the request's call.
func With(ctx context.Context, r *Request) context.Context {
	return context.WithValue(ctx, RequestKey{}, r)
}

// Attrs are what a line of the log says of the call: its request id, and its trace
// where there is one.
func Attrs(ctx context.Context) []slog.Attr {
	var attrs []slog.Attr
	if r, ok := ctx.Value(RequestKey{}).(*Request); ok {
		attrs = append(attrs, slog.String("request_id", r.ID()))
	}
	if span := oteltrace.SpanContextFromContext(ctx); span.HasTraceID() {
		attrs = append(attrs, slog.String("trace_id", span.TraceID().String()))
	}
	return attrs
}
