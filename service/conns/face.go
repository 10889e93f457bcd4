package conns

import (
	"errors"
	"net"
	"sync"
	"sync/atomic"
	"syscall"
	"time"
)

// Face is a listener whose connections are watched.
type Face struct {
	net.Listener
	name   string
	keeper *Keeper
	most   int
	// open are the calls that are open on all connections.
	open      atomic.Int64
	mostCalls int64

	mu    sync.Mutex
	conns map[*Conn]struct{}
}

// Accept waits for a connection that there is room for. Where there is none, one
// that can be spared makes room: whoever opens connections and asks nothing must not
// keep out who has a question. Where one will be so in a moment, the new one waits for
// that, and those after it in the system's queue: many who come at once and say nothing
// would otherwise keep out the next. If none can be spared the new one is closed.
func (f *Face) Accept() (net.Conn, error) {
	for {
		raw, err := f.Listener.Accept()
		if (errors.Is(err, syscall.EMFILE) || errors.Is(err, syscall.ENFILE)) && f.keeper.makeRoom() {
			continue
		}
		if err != nil {
			return nil, err
		}
		c := &Conn{Conn: raw, face: f, born: time.Now(), done: make(chan struct{})}
		c.idle = c.born
		admitted, soon := f.admit(c, c.born)
		if !admitted && soon > 0 {
			<-time.After(soon) // What is waited for is that so much time has passed.
			admitted, _ = f.admit(c, c.born.Add(soon))
		}
		if admitted {
			return c, nil
		}
		f.keeper.refused.WithLabelValues(f.name, refusedConn).Inc()
		_ = raw.Close() // There is nobody to tell.
	}
}

// makeRoom closes an idle connection of any face, since the system gives the process
// no more.
func (k *Keeper) makeRoom() bool {
	for _, f := range k.faces {
		f.mu.Lock()
		old, why, _ := f.leastMissed(time.Now())
		f.mu.Unlock()
		if old != nil {
			old.end(why)
			return true
		}
	}
	return false
}

// admit takes a connection in, or says how soon there may be room for it; 0 for not
// at all.
func (f *Face) admit(c *Conn, now time.Time) (ok bool, soon time.Duration) {
	f.mu.Lock()
	if len(f.conns) >= f.most {
		old, why, soon := f.leastMissed(now)
		if old == nil {
			f.mu.Unlock()
			return false, soon
		}
		delete(f.conns, old)
		defer old.end(why)
	}
	f.conns[c] = struct{}{}
	f.mu.Unlock()
	return true, 0
}

const (
	// sample is how many connections are looked at for one to spare. To order
	// them all would cost every call something; of so many, one is almost always
	// among those that are missed least.
	sample = 32
	// idleFor is how long a connection has had no call before it counts as idle, and
	// newFor the same of one that never had any.
	idleFor = 5 * time.Second
	newFor  = 50 * time.Millisecond
)

// leastMissed finds the one of some connections that can best be spared; and where
// there is none, how soon there will be, if then it still asks nothing.
func (f *Face) leastMissed(now time.Time) (found *Conn, why cause, soon time.Duration) {
	best := time.Duration(0)
	looked := 0
	for c := range f.conns { // Go begins anywhere.
		how, cause := c.spare(now)
		if how > best {
			found, why, best = c, cause, how
		}
		if how < 0 && (soon == 0 || -how < soon) {
			soon = -how
		}
		if looked++; looked == sample && found != nil || looked == 8*sample {
			break
		}
	}
	return found, why, soon
}

// room says whether a connection may begin one more call.
func (f *Face) room(open int) bool {
	all := f.open.Load()
	// Past the half, those who hold many have to wait for those who hold few.
	return all < f.mostCalls/2 || all < f.mostCalls && open <= fewCalls
}

// fewCalls is what a connection may always have open.
const fewCalls = 8

// crowded says whether more calls are open than fit in comfort.
func (f *Face) crowded() bool { return f.open.Load() >= f.mostCalls/2 }

// all are the connections of the moment.
func (f *Face) all() []*Conn {
	f.mu.Lock()
	defer f.mu.Unlock()
	list := make([]*Conn, 0, len(f.conns))
	for c := range f.conns {
		list = append(list, c)
	}
	return list
}

// CutSilent closes the connections of HTTP/2 that nothing has come from. A gRPC
// server waits for them before it tells the others that it ends.
func (f *Face) CutSilent() {
	for _, c := range f.all() {
		c.mu.Lock()
		spoke := c.spoke
		c.mu.Unlock()
		if !spoke {
			c.end(causeIdle)
		}
	}
}

func (f *Face) forget(c *Conn) {
	f.mu.Lock()
	delete(f.conns, c)
	f.mu.Unlock()
}

// Count is how many connections there are.
func (f *Face) Count() int {
	f.mu.Lock()
	defer f.mu.Unlock()
	return len(f.conns)
}

// Open is how many calls are open on all connections.
func (f *Face) Open() int { return int(f.open.Load()) }
