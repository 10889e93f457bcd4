package conns

import (
	"context"
	"encoding/binary"
	"net"
	"time"

	"google.golang.org/grpc/credentials"
	"google.golang.org/grpc/peer"
)

// The frames of HTTP/2 that say when a call begins and ends (RFC 9113, section 6).
const (
	frameData, frameHeaders, frameReset = 0, 1, 3
	flagEndStream                       = 1
	frameHead                           = 9
	prefaceLength                       = 24 // what a client sends before its first frame
)

// scanner follows the frames in one direction.
type scanner struct {
	head [frameHead]byte
	have int // bytes of the head
	skip int // bytes until the next head
}

// scan calls seen for each head that is complete.
func (s *scanner) scan(p []byte, seen func(kind, flags byte, id uint32, length int)) {
	for len(p) > 0 {
		if s.skip > 0 {
			n := min(s.skip, len(p))
			s.skip -= n
			p = p[n:]
			continue
		}
		n := copy(s.head[s.have:], p)
		s.have += n
		p = p[n:]
		if s.have < frameHead {
			return
		}
		s.have = 0
		s.skip = int(s.head[0])<<16 | int(s.head[1])<<8 | int(s.head[2])
		seen(s.head[3], s.head[4], binary.BigEndian.Uint32(s.head[5:])&(1<<31-1), s.skip)
	}
}

// framed is a connection of HTTP/2, decrypted.
type framed struct {
	net.Conn
	watched *Conn
	in, out scanner // each used by the one goroutine that reads or writes
	spoke   bool
}

func (f *framed) Read(p []byte) (int, error) {
	f.watched.pause()
	n, err := f.Conn.Read(p)
	if n > 0 && !f.spoke {
		f.spoke = true
		f.watched.speak()
	}
	f.in.scan(p[:n], func(kind, flags byte, id uint32, length int) {
		switch kind {
		case frameHeaders:
			f.watched.begin(id)
		case frameData:
			f.watched.got(id, length)
		case frameReset:
			f.watched.giveUp(id)
		}
	})
	return n, err
}

func (f *framed) Write(p []byte) (int, error) {
	f.watched.write(time.Now())
	n, err := f.Conn.Write(p)
	f.watched.write(time.Time{})
	f.out.scan(p[:n], func(kind, flags byte, id uint32, _ int) {
		if kind == frameReset || (kind == frameHeaders || kind == frameData) && flags&flagEndStream != 0 {
			f.watched.finish(id)
		}
	})
	return n, err
}

func (c *Conn) speak() {
	c.mu.Lock()
	c.spoke = true
	c.mu.Unlock()
}

func (c *Conn) write(since time.Time) {
	c.mu.Lock()
	c.writing = since
	c.mu.Unlock()
}

func (f *framed) RemoteAddr() net.Addr { return addr{f.Conn.RemoteAddr(), f.watched} }

// addr is the address of a caller, by which his connection is found again.
type addr struct {
	net.Addr
	watched *Conn
}

// OfCall is the connection that a gRPC call came by, or nil.
func OfCall(ctx context.Context) *Conn {
	if p, ok := peer.FromContext(ctx); ok {
		if a, ok := p.Addr.(addr); ok {
			return a.watched
		}
	}
	return nil
}

// Credentials have the frames of HTTP/2 followed on top of what encrypts them.
func Credentials(inner credentials.TransportCredentials) credentials.TransportCredentials {
	return creds{inner}
}

type creds struct {
	credentials.TransportCredentials
}

func (c creds) Clone() credentials.TransportCredentials { return creds{c.TransportCredentials.Clone()} }

func (c creds) ServerHandshake(raw net.Conn) (net.Conn, credentials.AuthInfo, error) {
	conn, info, err := c.TransportCredentials.ServerHandshake(raw)
	watched, ok := raw.(*Conn)
	if err != nil || !ok {
		return conn, info, err
	}
	return &framed{Conn: conn, watched: watched, in: scanner{skip: prefaceLength}}, info, nil
}
