// Package conns keeps connections from holding more than their share. It counts
// them, what each has begun to ask, and what it has been answered and has not taken;
// it says whether there is room for more, and cuts off who holds up the others. It
// knows nothing of questions, and refuses none by itself but whole connections.
//
// What is held is counted where it can be seen, and nowhere guessed: over HTTP/2 a
// call is open from its first frame until the last one of its answer has been
// written, whatever the library has done with it in between (frames.go), and an
// answer is held from when it is made until the library lets go of its bytes.
package conns

import (
	"context"
	"net"
	"sync/atomic"
	"time"

	"github.com/prometheus/client_golang/prometheus"
)

// Limits of a process. They are chosen together: all of them reached at the same
// time, with the program's own memory, stay below 512 MiB.
type Limits struct {
	// Answers is how many bytes of answers may be waiting to be taken, in all;
	// PerConn how many of one connection; and Share how many a connection may have
	// although all together have too many.
	Answers, PerConn, Share int64
	// Questions is how many bytes of questions may be held that are not answered
	// yet. Beyond it a connection that holds more than QuestionShare is not read.
	Questions     int64
	QuestionShare int64
	// Patience is how long a call may take on the wire, from its beginning until
	// its answer is taken; Hurry is the same where one of the limits is reached.
	Patience, Hurry time.Duration
}

// DefaultLimits are those of a process of 512 MiB.
func DefaultLimits() Limits {
	return Limits{
		Answers: 64 << 20, PerConn: 2 << 20, Share: 64 << 10,
		Questions: 48 << 20, QuestionShare: 8 << 10,
		Patience: 30 * time.Second, Hurry: 2 * time.Second,
	}
}

// sweepEvery is how often the connections are looked through.
const sweepEvery = 250 * time.Millisecond

// Keeper watches over the connections of all faces of a process.
type Keeper struct {
	limits    Limits
	faces     []*Face
	answers   atomic.Int64 // bytes made and not taken
	questions atomic.Int64 // bytes that have come of questions that are not answered
	relief    relief
	cut       *prometheus.CounterVec
	refused   *prometheus.CounterVec
}

// NewKeeper makes a keeper without faces.
func NewKeeper(limits Limits) *Keeper {
	return &Keeper{limits: limits, cut: newCut(), refused: newRefused()}
}

// Face adds a listener, with so many connections and open calls at the most.
func (k *Keeper) Face(name string, inner net.Listener, connections, calls int) *Face {
	f := &Face{Listener: inner, name: name, keeper: k, most: connections, mostCalls: int64(calls), conns: map[*Conn]struct{}{}}
	for _, why := range causes {
		k.cut.WithLabelValues(name, string(why)) // 0 from the start, and not absent.
	}
	for _, why := range refusals {
		k.refused.WithLabelValues(name, why)
	}
	k.faces = append(k.faces, f)
	return f
}

// Run looks through the connections until ctx is done.
func (k *Keeper) Run(ctx context.Context) {
	tick := time.NewTicker(sweepEvery)
	defer tick.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case now := <-tick.C:
			k.Sweep(now)
		}
	}
}

// ask counts bytes of questions, or that they are answered.
func (k *Keeper) ask(n int64) {
	now := k.questions.Add(n)
	if enough := mark(k.limits.Questions); n < 0 && now < enough && now-n >= enough {
		k.relief.come()
	}
}

// mark is where a limit that was reached counts as left again.
func mark(limit int64) int64 { return limit * 3 / 4 }

// relieved says whether there is room again where there was none.
func (k *Keeper) relieved() bool {
	return k.answers.Load() < mark(k.limits.Answers) && k.questions.Load() < mark(k.limits.Questions)
}

// full says whether answers or questions have reached what may be held of them.
func (k *Keeper) full() bool {
	return k.answers.Load() >= k.limits.Answers || k.questions.Load() >= k.limits.Questions
}
