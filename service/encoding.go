package service

import (
	"bytes"
	"context"
	"io"
	"net/http"
	"strings"

	"compress/gzip"

	"google.golang.org/grpc"
	"google.golang.org/grpc/encoding"

	// Registers what gRPC clients may ask for by name.
	_ "google.golang.org/grpc/encoding/gzip"

	"example.com/knitmath/service/conns"
)

// minCompressed is the size from which an answer is compressed: a smaller one
// travels in one packet whether or not it is.
const minCompressed = 1 << 10

// readBody reads a body to its end as it was sent, as far as a question may reach. A
// compressed one is inflated only when it is all there and its turn has come: begun
// before, a few bytes sent slowly would hold a thousand times as many.
func readBody(w http.ResponseWriter, r *http.Request) ([]byte, error) {
	if r.ContentLength > maxQuestionBytes { // nobody is waited for, or asked to go on, who says so beforehand
		return nil, &http.MaxBytesError{Limit: maxQuestionBytes}
	}
	return io.ReadAll(http.MaxBytesReader(w, r.Body, maxQuestionBytes))
}

// inflateBody gives a body as it was before it was compressed. What it inflates to
// counts as what is sent does, and no more than that is ever inflated.
func inflateBody(w http.ResponseWriter, h http.Header, data []byte) ([]byte, error) {
	if contentCoding(h) != codingGzip {
		return data, nil
	}
	from, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	return io.ReadAll(http.MaxBytesReader(w, from, maxQuestionBytes))
}

// codingGzip is the one encoding of bodies that is read, beside none.
const codingGzip = "gzip"

// contentCoding is how a body is encoded: "" for as it is.
func contentCoding(h http.Header) string {
	switch coding := strings.ToLower(strings.Join(h.Values("Content-Encoding"), ",")); coding {
	case "identity":
		return ""
	case "x-gzip": // the same, by an older name
		return codingGzip
	default:
		return coding
	}
}

// shortPlain has a short answer be sent as it is to gRPC callers who compress. gRPC
// answers in the encoding of the question whatever the size. So are all sent where
// many calls are open: of compressed ones it is not known when they have been taken.
func shortPlain(ctx context.Context, size int, conn *conns.Conn) {
	if size < minCompressed || conn != nil && conn.Crowded() {
		_ = grpc.SetSendCompressor(ctx, encoding.Identity) // Everybody accepts it; nothing has been sent yet.
	}
}
