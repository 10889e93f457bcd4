package service

import (
	"context"
	"log/slog"
	"sync"
	"time"
)

// unreached are calls over gRPC that have come to nothing of ours yet. One that ends so was answered by gRPC itself: its
// encoding is not known, or its name is none. It is counted when it is next looked for. A stats.Handler would see it at
// once, and so would a function that waits for the end of its context, as an eighth of all that a short call allocates.
type unreached struct {
	refusals *refusals

	mu    sync.Mutex
	calls []*openCall
	// enough is how many there are when they are looked through before their time.
	enough int
}

// fewUnreached are held without being looked at, and their memory with them.
const fewUnreached = 64

// unreachedEvery is how often they are looked through.
const unreachedEvery = 250 * time.Millisecond

func newUnreached(r *refusals) *unreached { return &unreached{refusals: r, enough: fewUnreached} }

func (u *unreached) add(c *openCall) {
	u.mu.Lock()
	defer u.mu.Unlock()
	if u.calls = append(u.calls, c); len(u.calls) >= u.enough {
		u.look()
	}
}

// look counts those that have ended, and forgets them and those that have come to something. What is left may double
// before the next look, so that each call is looked at twice on average, however many wait.
func (u *unreached) look() {
	left := u.calls[:0]
	for _, c := range u.calls {
		switch {
		case c.reached.Load():
		case c.Err() == nil:
			left = append(left, c)
		default:
			u.refusals.refused(context.Background(), faceGRPC, reasonUnreadable, "call", func() []slog.Attr { return nil })
		}
	}
	clear(u.calls[len(left):])
	u.calls, u.enough = left, 2*len(left)+fewUnreached
}

// run looks through them until ctx is done.
func (u *unreached) run(ctx context.Context) {
	tick := time.NewTicker(unreachedEvery)
	defer tick.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
			u.mu.Lock()
			u.look()
			u.mu.Unlock()
		}
	}
}
