package service

import (
	"context"
	"net/http"
	"strings"

	"google.golang.org/grpc"
	"google.golang.org/grpc/metadata"

	"example.com/knitmath/service/trace"
)

// What every answer says of itself, whatever it is: the release that gives it, and
// the id of the request, by which its line in the log is found.

// onHTTP says so in the headers of every answer of next.
func onHTTP(release Release, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		id := trace.ID(r.Header.Values(trace.IDHeader))
		w.Header().Set(releaseHeader, release.Version)
		w.Header().Set(trace.IDHeader, id)
		next.ServeHTTP(w, r.WithContext(trace.WithID(r.Context(), id)))
	})
}

// onGRPC says so in the metadata of every call. It stands in front of the
// chains that are shared with JSON: there it would be told, for every call, that
// nobody sends metadata. What begin returns beside the context is told how the call
// ended: of answers it is the header, of errors the trailer. An error with a header of
// its own has begun to be answered, and no client that retries asks again.
func onGRPC(release Release) (begin func(context.Context) (context.Context, func(error)), stream grpc.StreamServerInterceptor) {
	key, version := strings.ToLower(releaseHeader), []string{release.Version}
	named := func(ctx context.Context) (context.Context, metadata.MD) {
		id := trace.ID(metadata.ValueFromIncomingContext(ctx, trace.IDMetadata))
		return trace.WithID(ctx, id), metadata.MD{key: version, trace.IDMetadata: []string{id}}
	}
	begin = func(ctx context.Context) (context.Context, func(error)) {
		ctx, md := named(ctx)
		return ctx, func(err error) {
			if err == nil {
				_ = grpc.SetHeader(ctx, md) // Fails only when headers are on their way already, which none can be yet.
				return
			}
			_ = grpc.SetTrailer(ctx, md) // Fails only when the call has ended already.
		}
	}
	stream = func(srv any, ss grpc.ServerStream, _ *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
		reached(ss.Context())
		ctx, md := named(ss.Context())
		_ = ss.SetHeader(md)
		return handler(srv, readingStream{ss, ctx})
	}
	return begin, stream
}
