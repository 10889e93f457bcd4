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
		request := trace.NewRequest(r.Header.Values(trace.IDHeader))
		w.Header().Set(releaseHeader, release.Version)
		w.Header().Set(trace.IDHeader, request.ID())
		next.ServeHTTP(w, r.WithContext(trace.With(r.Context(), request)))
	})
}

// onGRPC says so in the metadata of every call. It stands in front of the
// chains that are shared with JSON: there it would be told, for every call, that
// nobody sends metadata. What begin returns beside the context is told how the call
// ended: of answers it is the header, of errors the trailer. An error with a header of
// its own has begun to be answered, and no client that retries asks again.
//
// An id of ours is told with errors and streams, which alone the log has by it: with a
// good answer it would be of no use, and a header that is another each time goes through
// the tables of both ends, which took as long as working out a short answer.
func onGRPC(release Release) (begin func(context.Context) (context.Context, func(error)), stream grpc.StreamServerInterceptor) {
	key, version := strings.ToLower(releaseHeader), []string{release.Version}
	whole := func(request *trace.Request) metadata.MD {
		return metadata.MD{key: version, trace.IDMetadata: []string{request.ID()}}
	}
	releaseAlone := metadata.MD{key: version}
	begin = func(ctx context.Context) (context.Context, func(error)) {
		request := trace.NewRequest(metadata.ValueFromIncomingContext(ctx, trace.IDMetadata))
		ctx = trace.With(ctx, request)
		return ctx, func(err error) {
			switch {
			case err != nil:
				_ = grpc.SetTrailer(ctx, whole(request)) // Fails only when the call has ended already.
			case request.Asked() != "":
				_ = grpc.SetHeader(ctx, whole(request)) // Fails only when headers are on their way already, which none can be yet.
			default:
				_ = grpc.SetHeader(ctx, releaseAlone) // Likewise.
			}
		}
	}
	stream = func(srv any, ss grpc.ServerStream, _ *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
		reached(ss.Context())
		request := trace.NewRequest(metadata.ValueFromIncomingContext(ss.Context(), trace.IDMetadata))
		_ = ss.SetHeader(whole(request))
		return handler(srv, readingStream{ss, trace.With(ss.Context(), request)})
	}
	return begin, stream
}
