package conns

import "sync"

// relief tells all who wait for it at once.
type relief struct {
	mu  sync.Mutex
	ch  chan struct{} // closed when it comes
	any bool          // somebody waits
}

// wait is closed when relief comes.
func (r *relief) wait() <-chan struct{} {
	r.mu.Lock()
	defer r.mu.Unlock()
	if !r.any {
		r.any, r.ch = true, make(chan struct{})
	}
	return r.ch
}

// awaited says whether somebody waits.
func (r *relief) awaited() bool {
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.any
}

func (r *relief) come() {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.any {
		r.any = false
		close(r.ch)
	}
}

// pause holds up the reading of a connection that has sent much of questions which
// are not answered, while all together have sent too much.
func (c *Conn) pause() {
	k := c.face.keeper
	for k.questions.Load() >= k.limits.Questions && c.asked() > k.limits.QuestionShare {
		relieved := k.relief.wait()
		if k.questions.Load() < k.limits.Questions { // It came before it was waited for.
			return
		}
		select {
		case <-c.done:
			return
		case <-relieved:
		}
	}
}

// asked is how many bytes have come of the questions of this connection.
func (c *Conn) asked() (n int64) {
	c.mu.Lock()
	defer c.mu.Unlock()
	for i := range c.calls {
		n += c.calls[i].bytes
	}
	return n
}
