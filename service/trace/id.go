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

// ID is the request id that a caller asked for, or one of ours if he asked for
// none, for several, or for one that is too long or is no plain word: it is
// written to logs and headers as it is.
func ID(asked []string) string {
	if len(asked) == 1 && plain(asked[0]) {
		return asked[0]
	}
	return ownIDs.begin + strconv.FormatUint(ownIDs.given.Add(1), 36)
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

type idKey struct{}

// WithID is a context whose call has the id.
func WithID(ctx context.Context, id string) context.Context {
	return context.WithValue(ctx, idKey{}, id)
}

// Attrs are what a line of the log says of the call: its request id, and its trace
// where there is one.
func Attrs(ctx context.Context) []slog.Attr {
	var attrs []slog.Attr
	if id, ok := ctx.Value(idKey{}).(string); ok {
		attrs = append(attrs, slog.String("request_id", id))
	}
	if span := oteltrace.SpanContextFromContext(ctx); span.HasTraceID() {
		attrs = append(attrs, slog.String("trace_id", span.TraceID().String()))
	}
	return attrs
}
