package conns

import (
	"context"
	"io"
	"net"
	"net/http"
)

// connKey is the place of a connection in the context of its requests.
type connKey struct{}

// Known is for http.Server.ConnContext: requests know their connection.
func Known(ctx context.Context, c net.Conn) context.Context {
	if inner, ok := c.(interface{ NetConn() net.Conn }); ok { // TLS
		c = inner.NetConn()
	}
	if watched, ok := c.(*Conn); ok {
		return context.WithValue(ctx, connKey{}, watched)
	}
	return ctx
}

// OfRequest is the connection that an HTTP request came by, or nil.
func OfRequest(r *http.Request) *Conn {
	c, _ := r.Context().Value(connKey{}).(*Conn)
	return c
}

// Begin opens a call over HTTP; its body is counted as it is read. What is returned
// ends it.
func (c *Conn) Begin(r *http.Request) (end func()) {
	c.mu.Lock()
	id := c.lastID + 1
	c.beginLocked(id)
	c.mu.Unlock()
	if r.Body != nil && r.Body != http.NoBody {
		r.Body = &countedBody{r.Body, c, id}
	}
	return func() { c.finish(id) }
}

// countedBody counts what has come of a question.
type countedBody struct {
	io.ReadCloser
	conn *Conn
	id   uint32
}

func (b *countedBody) Read(p []byte) (int, error) {
	b.conn.pause()
	n, err := b.ReadCloser.Read(p)
	b.conn.got(b.id, n)
	return n, err
}
