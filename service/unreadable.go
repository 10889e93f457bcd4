package service

import (
	"context"
	"log/slog"
	"net"
	"net/http"
	"sync"
	"sync/atomic"
)

// unreadable counts requests that net/http answers by itself, because it cannot
// read them: no handler ever sees those. It does so by what does not happen, which
// is that a handler is called between the first byte of a request and the end of
// the connection; net/http closes it after such an answer. A short one that follows
// a good request on the same connection escapes: net/http does not tell of its
// beginning.
type unreadable struct {
	refusals *refusals
	conns    sync.Map // from net.Conn to *atomic.Bool, whether a request of it waits for a handler
}

type waitingKey struct{}

// watch has server tell what happens.
func (u *unreadable) watch(server *http.Server) {
	known := server.ConnContext
	server.ConnContext = func(ctx context.Context, conn net.Conn) context.Context {
		if known != nil {
			ctx = known(ctx, conn)
		}
		waiting := new(atomic.Bool)
		u.conns.Store(conn, waiting)
		return context.WithValue(ctx, waitingKey{}, waiting)
	}
	server.ConnState = func(conn net.Conn, state http.ConnState) {
		at, ok := u.conns.Load(conn)
		if !ok {
			return
		}
		waiting, ok := at.(*atomic.Bool)
		switch {
		case !ok:
		case state == http.StateActive:
			waiting.Store(true)
		case state == http.StateClosed || state == http.StateHijacked:
			u.conns.Delete(conn)
			if waiting.Load() {
				u.refusals.refused(context.Background(), faceJSON, reasonUnreadable, "refused", func() []slog.Attr { return nil })
			}
		}
	}
	next := server.Handler
	server.Handler = http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if waiting, ok := r.Context().Value(waitingKey{}).(*atomic.Bool); ok {
			waiting.Store(false)
		}
		next.ServeHTTP(w, r)
	})
	// What is asked of no path at all is answered as an unknown path.
	server.DisableGeneralOptionsHandler = true
}
