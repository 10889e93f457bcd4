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

// named says so in the metadata of every call over gRPC. It stands in front of the chains that are shared with JSON: there
// it would be told, for every call, that nobody sends metadata.
//
// An id of ours is told with errors and streams, which alone the log has by it: with a
// good answer it would be of no use, and a header that is another each time goes through
// the tables of both ends, which took as long as working out a short answer.
type named struct {
	key     string
	version []string
	alone   metadata.MD
}

func newNamed(release Release) *named {
	key, version := strings.ToLower(releaseHeader), []string{release.Version}
	return &named{key, version, metadata.MD{key: version}}
}

// whole says the id of the request beside the release.
func (n *named) whole(r *trace.Request) metadata.MD {
	return metadata.MD{n.key: n.version, trace.IDMetadata: []string{r.ID()}}
}

// ended says it of an answer in its header, which goes with the answer's bytes (questionCodec.Marshal), and of an error in its
// trailer: an error with a header of its own has begun to be answered, and no client that retries asks again.
func (n *named) ended(ctx context.Context, c *openCall, err error) {
	switch {
	case err != nil:
		_ = grpc.SetTrailer(ctx, n.whole(&c.request)) // Fails only when the call has ended already.
	case c.request.Asked() != "":
		c.reply.header = n.whole(&c.request)
	default:
		c.reply.header = n.alone
	}
}

func (n *named) stream(srv any, ss grpc.ServerStream, _ *grpc.StreamServerInfo, handler grpc.StreamHandler) error {
	call := openCallOf(ss.Context())
	call.reached.Store(true)
	_ = ss.SetHeader(n.whole(&call.request))
	return handler(srv, readingStream{ss})
}
