// Package abuse attacks a running service on loopback, in every way that is known to
// have hurt it, and sees what that costs: how much memory the program took at most,
// what was refused, and how a light caller and the probes beside were answered.
//
// The attacks are bounded in number and in time. Their short form runs with the
// tests, which look at counts and memory and never at a clock; all of it, with the
// times, by .ci/abuse.
package abuse

import (
	"context"
	"sync"
	"time"
)

// Attack is one way to hurt.
type Attack struct {
	Name string
	// Short and Long are how many connections or callers it takes part with in the
	// tests, and in full.
	Short, Long int
	run         func(ctx context.Context, at Addresses, size int)
}

// Attacks are all there are.
var Attacks = []Attack{
	{"long answers never taken, gRPC", 12, 100, closedWindows(longWedge, false)},
	{"long answers never taken, gRPC, compressed", 12, 100, closedWindows(longWedge, true)},
	{"short answers never taken, gRPC", 40, 300, closedWindows(castOn, false)},
	{"long answers never read, JSON", 60, 300, unreadJSON},
	{"callers of the dearest, gRPC", 64, 64, dearCallers(faceGRPC)},
	{"callers of the dearest, JSON", 64, 64, dearCallers(faceJSON)},
	{"very many callers of the dearest, gRPC", 200, 1000, dearCallers(faceGRPC)},
	{"very many callers of the dearest, JSON", 200, 1000, dearCallers(faceJSON)},
	{"idle connections, gRPC", 300, 8500, idle(faceGRPC)},
	{"idle connections, JSON", 300, 8500, idle(faceJSON)},
	{"bodies never sent to the end, gRPC", 20, 200, slowGRPC},
	{"bodies never sent to the end, JSON", 300, 4000, slowJSON},
	{"calls given up at once, gRPC", 20, 200, resets},
	{"ten times as many light callers, gRPC", 100, 640, lightCallers(faceGRPC)},
	{"ten times as many light callers, JSON", 100, 640, lightCallers(faceJSON)},
}

// Run attacks until ctx is done.
func (a Attack) Run(ctx context.Context, at Addresses, size int) { a.run(ctx, at, size) }

// many runs do so many times at once, and again whenever it ends, until ctx is done.
func many(ctx context.Context, size int, do func(ctx context.Context, i int)) {
	var group sync.WaitGroup
	for i := range size {
		group.Go(func() {
			for ctx.Err() == nil {
				do(ctx, i)
				pause(ctx, time.Second) // Also an attacker needs a moment to come back.
			}
		})
	}
	group.Wait()
}

func pause(ctx context.Context, d time.Duration) {
	timer := time.NewTimer(d)
	defer timer.Stop()
	select {
	case <-ctx.Done():
	case <-timer.C:
	}
}
