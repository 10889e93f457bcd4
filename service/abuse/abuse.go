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
	// Short and Long are how many connections or callers there are in the tests, 0
	// for none, and in full.
	Short, Long int
	run         func(ctx context.Context, at Addresses, size int) Beside
}

// Attacks are all there are.
var Attacks = []Attack{
	{"long answers never taken, gRPC", 12, 100, rude(closedWindows(longWedge, false))},
	{"long answers never taken, gRPC, compressed", 12, 100, rude(closedWindows(longWedge, true))},
	{"short answers never taken, gRPC", 40, 300, rude(closedWindows(castOn, false))},
	{"long answers never read, JSON", 60, 300, rude(unreadJSON)},
	{"a few callers of the dearest, gRPC", 0, 4, dearCallers(faceGRPC)},
	{"a few callers of the dearest, JSON", 0, 4, dearCallers(faceJSON)},
	{"callers of the dearest, gRPC", 64, 64, dearCallers(faceGRPC)},
	{"callers of the dearest, JSON", 64, 64, dearCallers(faceJSON)},
	{"very many callers of the dearest, gRPC", 200, 1000, dearCallers(faceGRPC)},
	{"very many callers of the dearest, JSON", 200, 1000, dearCallers(faceJSON)},
	{"callers of the dearest of every method, gRPC", 64, 64, allDearCallers(faceGRPC)},
	{"callers of the dearest of every method, JSON", 64, 64, allDearCallers(faceJSON)},
	{"idle connections, gRPC", 300, 8500, rude(idle(faceGRPC))},
	{"idle connections, JSON", 300, 8500, rude(idle(faceJSON))},
	{"bodies never sent to the end, gRPC", 20, 200, rude(slowGRPC)},
	{"bodies never sent to the end, JSON", 300, 4000, rude(slowJSON)},
	{"calls given up at once, gRPC", 20, 200, rude(resets)},
	{"light callers, gRPC", 0, 64, lightCallers(faceGRPC)},
	{"light callers, JSON", 0, 64, lightCallers(faceJSON)},
	{"ten times as many light callers, gRPC", 100, 640, lightCallers(faceGRPC)},
	{"ten times as many light callers, JSON", 100, 640, lightCallers(faceJSON)},
}

// Run attacks until ctx is done, and says how those were answered who asked as usual
// clients do.
func (a Attack) Run(ctx context.Context, at Addresses, size int) Beside { return a.run(ctx, at, size) }

// rude is an attack by those who do not want to be answered.
func rude(attack func(ctx context.Context, at Addresses, size int)) func(context.Context, Addresses, int) Beside {
	return func(ctx context.Context, at Addresses, size int) Beside {
		attack(ctx, at, size)
		return Beside{}
	}
}

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
