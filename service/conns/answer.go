package conns

import "google.golang.org/grpc/mem"

// A connection lends the buffers of its answers, and so knows when the library lets
// go of one: it has been written, or the call is over.
var _ mem.BufferPool = (*Conn)(nil)

const (
	// leastLent is the smallest buffer that is lent: of smaller ones the library
	// does not say when it has done with them.
	leastLent = 1<<10 + 1
	// mostPooled is the largest that is used again. The library's next larger ones
	// have a mebibyte, of which an answer would hold the most part for nothing.
	mostPooled = 32 << 10
)

// Get lends a buffer of n bytes.
func (c *Conn) Get(n int) *[]byte {
	var buf *[]byte
	if n > mostPooled {
		data := make([]byte, n)
		buf = &data
	} else {
		buf = mem.DefaultBufferPool().Get(max(n, leastLent))
		*buf = (*buf)[:n]
	}
	c.Hold(cap(*buf))
	return buf
}

// Put takes it back.
func (c *Conn) Put(buf *[]byte) {
	c.Let(cap(*buf))
	if cap(*buf) <= mostPooled {
		mem.DefaultBufferPool().Put(buf)
	}
}
