package abuse

import (
	"bytes"
	"context"
	"net"

	"golang.org/x/net/http2"
	"golang.org/x/net/http2/hpack"
)

// bare is a connection of HTTP/2 without a library that behaves.
type bare struct {
	net.Conn
	*http2.Framer
	headers bytes.Buffer
	encode  *hpack.Encoder
	next    uint32
}

// dialBare connects and sets the window of what may be sent to us. It ends with ctx.
func dialBare(ctx context.Context, addr string, window uint32) (*bare, error) {
	conn, err := new(net.Dialer).DialContext(ctx, "tcp", addr)
	if err != nil {
		return nil, err
	}
	context.AfterFunc(ctx, func() { _ = conn.Close() })
	b := &bare{Conn: conn, Framer: http2.NewFramer(conn, conn), next: 1}
	b.encode = hpack.NewEncoder(&b.headers)
	if _, err := conn.Write([]byte(http2.ClientPreface)); err != nil {
		return nil, err
	}
	if err := b.WriteSettings(http2.Setting{ID: http2.SettingInitialWindowSize, Val: window}); err != nil {
		return nil, err
	}
	return b, nil
}

// begin sends the headers of a call, and returns its stream.
func (b *bare) begin(method string, compressed bool) (uint32, error) {
	b.headers.Reset()
	fields := [][2]string{{":method", "POST"}, {":scheme", "http"}, {":path", method}, {":authority", "localhost"},
		{"content-type", "application/grpc"}, {"te", "trailers"}}
	if compressed {
		// The answer comes in the encoding of the question, also if that one was
		// not worth compressing.
		fields = append(fields, [2]string{"grpc-encoding", "gzip"}, [2]string{"grpc-accept-encoding", "gzip"})
	}
	for _, f := range fields {
		_ = b.encode.WriteField(hpack.HeaderField{Name: f[0], Value: f[1]}) // Into memory.
	}
	id := b.next
	b.next += 2
	return id, b.WriteHeaders(http2.HeadersFrameParam{StreamID: id, BlockFragment: b.headers.Bytes(), EndHeaders: true})
}

// listen answers what the service says, so that it does not take us for dead, until
// the connection ends. It writes with a framer of its own, since calls are begun at
// the same time; each frame is one write, which connections keep apart.
func (b *bare) listen() {
	own := http2.NewFramer(b.Conn, nil)
	for {
		frame, err := b.ReadFrame()
		if err != nil {
			return
		}
		switch f := frame.(type) {
		case *http2.PingFrame:
			if !f.IsAck() {
				_ = own.WritePing(true, f.Data)
			}
		case *http2.SettingsFrame:
			if !f.IsAck() {
				_ = own.WriteSettingsAck()
			}
		}
	}
}
