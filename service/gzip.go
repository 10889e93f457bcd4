package service

import (
	"io"
	"sync"

	"compress/gzip"
)

// gzipQuestions inflates what gRPC callers compress. The decompressor that gRPC
// brings fails where the bytes are no gzip, and gRPC answers that with INTERNAL, as
// if it were our fault; this one gives bytes that no decoder takes, so that such a
// message is refused like every other that cannot be decoded (decode.go).
type gzipQuestions struct {
	readers sync.Pool // of *gzip.Reader
}

// undecodable is the beginning of a number that does not go on.
var undecodable = []byte{0xff}

// Type is the encoding's name.
func (g *gzipQuestions) Type() string { return codingGzip }

// Do inflates as far as a question may reach and a byte beyond it, which is enough
// for gRPC to see that it is too large.
func (g *gzipQuestions) Do(r io.Reader) ([]byte, error) {
	z, pooled := g.readers.Get().(*gzip.Reader)
	if !pooled {
		z = new(gzip.Reader)
	}
	defer g.readers.Put(z)
	if z.Reset(r) != nil {
		return undecodable, nil
	}
	inflated, err := io.ReadAll(io.LimitReader(z, maxQuestionBytes+1))
	if err != nil {
		return undecodable, nil
	}
	return inflated, nil
}
