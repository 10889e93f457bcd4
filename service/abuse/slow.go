package abuse

import (
	"context"
	"fmt"
	"io"
	"net"
)

// longBody is as much of a question as is read, less a byte.
const longBody = 256<<10 - 1

// idle holds connections on which nothing is asked.
func idle(face string) func(context.Context, Addresses, int) {
	return func(ctx context.Context, at Addresses, size int) {
		many(ctx, size, func(ctx context.Context, _ int) {
			if face == faceGRPC {
				if conn, err := dialBare(ctx, at.GRPC, 1<<16); err == nil {
					defer conn.Close()
					conn.listen()
				}
				return
			}
			conn, err := new(net.Dialer).DialContext(ctx, "tcp", at.HTTP)
			if err != nil {
				return
			}
			defer conn.Close()
			context.AfterFunc(ctx, func() { _ = conn.Close() })
			// Idle is who has had an answer; who says nothing at all is cut off soon.
			if _, err := io.WriteString(conn, "GET /version HTTP/1.1\r\nHost: localhost\r\n\r\n"); err == nil {
				_, _ = io.Copy(io.Discard, conn)
			}
		})
	}
}

// slowGRPC begins calls with long questions and does not send their ends.
func slowGRPC(ctx context.Context, at Addresses, size int) {
	many(ctx, size, func(ctx context.Context, _ int) {
		conn, err := dialBare(ctx, at.GRPC, 1<<16)
		if err != nil {
			return
		}
		defer conn.Close()
		prefix := []byte{0, 0, longBody >> 16 & 0xff, longBody >> 8 & 0xff, longBody & 0xff}
		part := make([]byte, 16<<10)
		for range callsPerConn {
			id, err := conn.begin(castOn.method, false)
			if err != nil || conn.WriteData(id, false, prefix) != nil {
				return
			}
			// What goes without waiting for the service to read: its first window.
			for range 3 {
				if conn.WriteData(id, false, part) != nil {
					return
				}
			}
		}
		conn.listen()
	})
}

// slowJSON sends all of a long question but its end.
func slowJSON(ctx context.Context, at Addresses, size int) {
	head := fmt.Appendf(nil, "POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Length: %d\r\n\r\n", castOn.path, longBody)
	part := make([]byte, longBody-1)
	for i := range part {
		part[i] = ' '
	}
	many(ctx, size, func(ctx context.Context, _ int) {
		conn, err := new(net.Dialer).DialContext(ctx, "tcp", at.HTTP)
		if err != nil {
			return
		}
		defer conn.Close()
		context.AfterFunc(ctx, func() { _ = conn.Close() })
		if _, err := conn.Write(head); err != nil {
			return
		}
		if _, err := conn.Write(part); err == nil {
			_, _ = io.Copy(io.Discard, conn)
		}
	})
}

// resets begins calls and gives them up at once.
func resets(ctx context.Context, at Addresses, size int) {
	body := longWedge.framed()
	many(ctx, size, func(ctx context.Context, _ int) {
		conn, err := dialBare(ctx, at.GRPC, 1<<16)
		if err != nil {
			return
		}
		defer conn.Close()
		go conn.listen()
		for range 10 * callsPerConn {
			id, err := conn.begin(longWedge.method, false)
			if err != nil || conn.WriteData(id, true, body) != nil || conn.WriteRSTStream(id, 8) != nil {
				return
			}
		}
	})
}
