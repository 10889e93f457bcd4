package abuse

import (
	"context"
	"fmt"
	"net"
)

// callsPerConn is how many calls an attacker has open on a connection: as many as the
// service allows.
const callsPerConn = 100

// closedWindows asks on connections whose window is closed, so that no answer can be
// sent, and holds them.
func closedWindows(q question, compressed bool) func(context.Context, Addresses, int) {
	body := q.framed()
	return func(ctx context.Context, at Addresses, size int) {
		many(ctx, size, func(ctx context.Context, _ int) {
			conn, err := dialBare(ctx, at.GRPC, 0)
			if err != nil {
				return
			}
			defer conn.Close()
			for range callsPerConn {
				id, err := conn.begin(q.method, compressed)
				if err != nil || conn.WriteData(id, true, body) != nil {
					return
				}
			}
			conn.listen()
		})
	}
}

// unreadJSON asks for long answers and reads none.
func unreadJSON(ctx context.Context, at Addresses, size int) {
	request := fmt.Appendf(nil, "POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Length: %d\r\n\r\n%s",
		longWedge.path, len(longWedge.json), longWedge.json)
	many(ctx, size, func(ctx context.Context, _ int) {
		conn, err := new(net.Dialer).DialContext(ctx, "tcp", at.HTTP)
		if err != nil {
			return
		}
		defer conn.Close()
		if tcp, ok := conn.(*net.TCPConn); ok {
			_ = tcp.SetReadBuffer(4 << 10)
		}
		if _, err := conn.Write(request); err != nil {
			return
		}
		waitForEnd(ctx, conn)
	})
}

// waitForEnd returns when the other side has given up: without reading, that is
// seen by what one cannot send any more.
func waitForEnd(ctx context.Context, conn net.Conn) {
	for ctx.Err() == nil {
		pause(ctx, waitStep)
		if _, err := conn.Write([]byte{'\n'}); err != nil {
			return
		}
	}
}
