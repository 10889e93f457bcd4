package conns

import (
	"net"
	"sync"
	"time"
)

// Conn is a connection with what its caller holds.
type Conn struct {
	net.Conn
	face *Face
	born time.Time
	done chan struct{}

	mu      sync.Mutex
	closed  bool
	calls   []call // open, the oldest first
	lastID  uint32
	spoke   bool  // Something has come from the caller.
	resets  int   // calls given up since the last sweep
	watches int   // calls that are meant to last
	answers int64 // bytes made and not taken
	idle    time.Time
	// writing is when the write began that has not ended.
	writing time.Time
}

// call is one that is open: begun, and its answer not written to the end.
type call struct {
	id    uint32
	begun time.Time
	bytes int64 // of the question, as far as it has come
	reset bool  // The caller has given it up.
}

// Born is when the connection was made.
func (c *Conn) Born() time.Time { return c.born }

// Close ends the connection and all that was held for it.
func (c *Conn) Close() error {
	c.release()
	return c.Conn.Close()
}

// CloseWrite says that no more will be sent. A server that refuses what it has not
// read to the end says so before it closes; otherwise the caller would see a broken
// connection in place of the refusal.
func (c *Conn) CloseWrite() error {
	if tcp, ok := c.Conn.(*net.TCPConn); ok {
		return tcp.CloseWrite()
	}
	return nil
}

// end closes the connection for a cause, unless it is closed.
func (c *Conn) end(why cause) {
	if !c.release() {
		return
	}
	c.face.keeper.cut.WithLabelValues(c.face.name, string(why)).Inc()
	if tcp, ok := c.Conn.(*net.TCPConn); ok {
		_ = tcp.SetLinger(0) // Nor does the system keep what was not taken.
	}
	_ = c.Conn.Close() // It goes because others come.
}

// release gives back what was held; it says whether the connection was open.
func (c *Conn) release() bool {
	c.face.forget(c)
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.closed {
		return false
	}
	c.closed = true
	close(c.done)
	k := c.face.keeper
	var asked int64
	for i := range c.calls {
		asked += c.calls[i].bytes
	}
	k.ask(-asked)
	c.face.open.Add(-int64(len(c.calls)))
	k.answers.Add(-c.answers)
	c.calls, c.answers = nil, 0
	return true
}

// spare says how well a connection could be spared, and for which cause; 0 for not at
// all, and below 0, for one that has just come and asks nothing, how soon it could.
// First go those that never had a call, then those whose oldest call has been on the
// wire for too long, and last those that have long had none.
func (c *Conn) spare(now time.Time) (how time.Duration, why cause) {
	s, _, suspicious := c.look(now, c.face.keeper.limits)
	c.mu.Lock()
	defer c.mu.Unlock()
	idle := now.Sub(c.idle)
	switch {
	case suspicious:
		return time.Hour, s.why
	case len(c.calls) > 0:
		return 0, ""
	case c.lastID == 0 && idle >= newFor:
		return 2*time.Hour + idle, causeIdle
	case c.lastID == 0:
		return idle - newFor, causeIdle
	case idle >= idleFor:
		return idle, causeIdle
	}
	return 0, ""
}

// begin opens a call.
func (c *Conn) begin(id uint32) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.beginLocked(id)
}

func (c *Conn) beginLocked(id uint32) {
	if c.closed || id <= c.lastID {
		return
	}
	c.lastID = id
	c.calls = append(c.calls, call{id: id, begun: time.Now()})
	c.face.open.Add(1)
}

// got counts bytes of a question.
func (c *Conn) got(id uint32, n int) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if i := c.find(id); i >= 0 {
		c.calls[i].bytes += int64(n)
		c.face.keeper.ask(int64(n))
	}
}

// finish closes a call: its answer is written.
func (c *Conn) finish(id uint32) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if i := c.find(id); i >= 0 {
		c.remove(i)
	}
}

// giveUp marks a call that the caller does not want to be answered any more. It
// keeps its place until the next sweep: otherwise one could begin calls and give
// them up faster than they end.
//
// Who does so all the same is cut off: each call costs him less than us.
func (c *Conn) giveUp(id uint32) {
	c.mu.Lock()
	if i := c.find(id); i >= 0 && !c.calls[i].reset {
		c.calls[i].reset = true
		c.resets++
	}
	tooMany := c.resets > tooManyResets
	c.mu.Unlock()
	if tooMany {
		c.end(causeResets)
	}
}

func (c *Conn) find(id uint32) int {
	for i := range c.calls {
		if c.calls[i].id == id {
			return i
		}
	}
	return -1
}

func (c *Conn) remove(i int) {
	c.face.keeper.ask(-c.calls[i].bytes)
	c.face.open.Add(-1)
	c.calls = append(c.calls[:i], c.calls[i+1:]...)
	if len(c.calls) == 0 {
		c.idle = time.Now()
	}
}

// Watch counts a call that is meant to last, such as a watch of the health; there
// may be a few of a connection. What is returned ends it.
func (c *Conn) Watch() (end func(), ok bool) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.watches >= fewCalls {
		return nil, false
	}
	c.watches++
	return func() {
		c.mu.Lock()
		c.watches--
		c.mu.Unlock()
	}, true
}

// Room says whether there is room for one more answer to this caller, by the bytes
// that have not been taken; a dear question is likely to have a long one.
func (c *Conn) Room(dear bool) bool {
	c.mu.Lock()
	own := c.answers
	c.mu.Unlock()
	k := c.face.keeper
	if own >= k.limits.PerConn {
		return false
	}
	return k.answers.Load() < k.limits.Answers || !dear && own < k.limits.Share
}

// MayBegin says whether there is room for one more call of this caller, before its
// question is read.
func (c *Conn) MayBegin() bool {
	c.mu.Lock()
	open := len(c.calls)
	c.mu.Unlock()
	if c.face.room(open) && c.Room(false) {
		return true
	}
	c.face.keeper.refused.WithLabelValues(c.face.name, refusedCall).Inc()
	return false
}

// Crowded says that it is better to hold less than to send less.
func (c *Conn) Crowded() bool { return c.face.crowded() || c.face.keeper.full() }

// Hold counts bytes of an answer, from when it is made.
func (c *Conn) Hold(n int) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if !c.closed {
		c.answers += int64(n)
		c.face.keeper.answers.Add(int64(n))
	}
}

// Let is the end of Hold: the bytes have been taken, or nobody wants them any more.
func (c *Conn) Let(n int) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if !c.closed {
		c.answers -= int64(n)
		c.face.keeper.answers.Add(-int64(n))
	}
}
