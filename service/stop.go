package service

import (
	"context"
	"net/http"
	"sync"
	"time"

	"google.golang.org/grpc"
)

const (
	// silence is how long a connection that was just made has to say something
	// before the gRPC server goes on without it, when the service ends.
	silence = time.Second
	// cutOff is how long connections have to close after they have been told to.
	cutOff = 100 * time.Millisecond
	// adminTimeout is how long a scrape may take at the very end.
	adminTimeout = time.Second
)

// stop ends the service in the order that loses no call: readiness off, time for
// the load balancers to see it, both public faces at once, and last the admin face,
// so that the end can still be scraped.
//
// From the moment readiness is off, callers are asked to go elsewhere: each JSON
// answer closes its connection (admission.onHTTP), and gRPC connections get GOAWAY,
// after which a client begins no call there and those under way are answered. Who
// comes all the same, since he has not heard of it, is answered to the end.
func (s *Server) stop(drain bool) {
	log := s.config.Logger
	s.setReady(false)
	if drain && s.config.Drain > 0 {
		log.Info("draining", "for", s.config.Drain)
		// It ends when its listener is closed or it is stopped.
		go func() { _ = s.grpcLast.Serve(s.relay.Shift()) }()
		go s.grpc.GracefulStop()
		over := time.After(s.config.Drain)
		select {
		case <-time.After(silence):
			s.grpcFace.CutSilent()
			<-over
		case <-over:
		}
	}
	_ = s.relay.Close() // It was open; there is nobody to tell.
	var group sync.WaitGroup
	group.Go(func() { s.stopHTTP(s.http, "JSON", s.config.ShutdownTimeout) })
	group.Go(func() { s.stopGRPC(s.grpc) })
	group.Go(func() { s.stopGRPC(s.grpcLast) })
	group.Wait()
	s.stopHTTP(s.admin, "admin", min(adminTimeout, s.config.ShutdownTimeout))
	log.Info("stopped")
}

// stopHTTP waits for requests under way, but not for ever.
func (s *Server) stopHTTP(server *http.Server, name string, timeout time.Duration) {
	ctx, cancel := context.WithTimeout(context.Background(), timeout)
	defer cancel()
	if err := server.Shutdown(ctx); err != nil {
		s.config.Logger.Warn("requests cut off", "listener", name, "cause", err)
		_ = server.Close() // Shutdown said what there was to say.
	}
}

// stopGRPC waits for calls under way, but not for ever: a health Watch never ends of
// itself, and GracefulStop waits for it. Stop is not waited for either: it returns
// only when every connection and every handler has ended.
func (s *Server) stopGRPC(server *grpc.Server) {
	done := make(chan struct{})
	go func() {
		server.GracefulStop()
		close(done)
	}()
	if before(done, s.config.ShutdownTimeout) {
		return
	}
	s.config.Logger.Info("gRPC streams cut off")
	go server.Stop()
	before(done, cutOff)
}

// before waits for done, at most so long.
func before(done <-chan struct{}, timeout time.Duration) bool {
	timer := time.NewTimer(timeout)
	defer timer.Stop()
	select {
	case <-done:
		return true
	case <-timer.C:
		return false
	}
}
