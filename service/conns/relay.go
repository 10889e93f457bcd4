package conns

import (
	"net"
	"sync"
)

// Relay hands the connections of one listener to one server after the other. A gRPC
// server that is asked to end what it has begun stops accepting first; with a relay
// another one goes on from there, and nobody is turned away.
type Relay struct {
	inner    net.Listener
	accepted chan accepted
	begin    sync.Once
	stop     func() // closes stopped
	stopped  chan struct{}
}

type accepted struct {
	conn net.Conn
	err  error
}

// NewRelay relays a listener, from the first Accept on.
func NewRelay(inner net.Listener) *Relay {
	r := &Relay{inner: inner, accepted: make(chan accepted), stopped: make(chan struct{})}
	r.stop = sync.OnceFunc(func() { close(r.stopped) })
	return r
}

// Close closes the listener that is relayed.
func (r *Relay) Close() error {
	r.stop()
	return r.inner.Close()
}

func (r *Relay) run() {
	for {
		c, err := r.inner.Accept()
		select {
		case r.accepted <- accepted{c, err}:
		case <-r.stopped:
			if err == nil {
				_ = c.Close() // There is nobody to tell.
			}
			return
		}
	}
}

// Shift is a listener for one server. Closing it leaves the connections that come
// from then on to the next.
func (r *Relay) Shift() net.Listener {
	s := &shift{relay: r, closed: make(chan struct{})}
	s.close = sync.OnceFunc(func() { close(s.closed) })
	return s
}

type shift struct {
	relay  *Relay
	closed chan struct{}
	close  func()
}

func (s *shift) Accept() (net.Conn, error) {
	s.relay.begin.Do(func() { go s.relay.run() })
	select { // Once it is closed it accepts no more, though there be some.
	case <-s.closed:
		return nil, net.ErrClosed
	default:
	}
	select {
	case a := <-s.relay.accepted:
		return a.conn, a.err
	case <-s.closed:
	case <-s.relay.stopped:
	}
	return nil, net.ErrClosed
}

func (s *shift) Close() error {
	s.close()
	return nil
}

func (s *shift) Addr() net.Addr { return s.relay.inner.Addr() }
