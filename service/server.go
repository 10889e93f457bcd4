package service

import (
	"cmp"
	"context"
	"fmt"
	"log/slog"
	"net"
	"net/http"
	"runtime"
	"sync/atomic"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/health"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"

	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/carry"
	"example.com/knitmath/service/tlsfile"
	"example.com/knitmath/service/watched"
)

// Config says where to listen and how to stop.
type Config struct {
	// GRPCAddr, HTTPAddr and AdminAddr are host:port; port 0 takes a free one.
	GRPCAddr  string
	HTTPAddr  string
	AdminAddr string
	// Drain is how long to go on answering after readiness went off, so that
	// load balancers can notice.
	Drain time.Duration
	// ShutdownTimeout is how long calls under way may take to end after that:
	// those over JSON first, then those over gRPC, each as long.
	ShutdownTimeout time.Duration
	// TLS is for both public faces; the admin face, which probes and scrapers ask,
	// never has it.
	TLS tlsfile.Config
	// Release is what answers are said to come from.
	Release Release
	// Pprof serves profiles of the running program on AdminAddr.
	Pprof bool
	// Logger and Registry are made by the caller; the service has no globals.
	Logger   *slog.Logger
	Registry *prometheus.Registry
}

// Server is the three listeners of one process.
type Server struct {
	config Config
	grpc   *grpc.Server
	health *health.Server
	http   *http.Server
	admin  *http.Server
	gate   *admit.Gate
	ready  atomic.Bool

	grpcListener, httpListener, adminListener net.Listener
	// files are looked at while the server runs.
	files []watched.Looker
}

// Check finds what contradicts itself in a configuration.
func (c Config) Check() error { return c.TLS.Check() }

// Listen opens all three listeners and serves none of them yet: a port in use is
// an error before the first question is accepted.
func Listen(config Config) (*Server, error) {
	return listen(config, carry.Register)
}

func listen(config Config, register func(grpc.ServiceRegistrar)) (*Server, error) {
	config.Release.Version = cmp.Or(config.Release.Version, unknownRelease)
	if err := config.Check(); err != nil {
		return nil, err
	}
	m, err := newMetrics(config.Registry, config.Release, config.Logger)
	if err != nil {
		return nil, err
	}
	unary, stream := interceptors(m, config.Logger)
	s := &Server{config: config}
	told, err := watched.NewReports(config.Logger, config.Registry)
	if err != nil {
		return nil, err
	}
	secured, err := s.secure(told)
	if err != nil {
		return nil, err
	}
	in := admission{admit.NewGate(admit.DefaultLimits(runtime.GOMAXPROCS(0))), m.refusals}
	s.gate = in.gate
	if err := config.Registry.Register(in.gate); err != nil {
		return nil, err
	}
	if err := config.Registry.Register(readiness(&s.ready)); err != nil {
		return nil, err
	}
	var seen grpc.ServiceRegistrar
	s.grpc, seen, s.health = newGRPCServer(m, config.Release, in, unary, stream, secured.onGRPC()...)
	register(seen)
	// Every counter exists from the start, so that a rate over it is 0 and not
	// absent before the first call, and the first fault of the service's own is
	// seen as an increase.
	m.calls.InitializeMetrics(s.grpc)

	local := newInProcess(unary)
	register(local)
	face, err := newHTTPHandler(context.Background(), local, m, in, config.Release)
	if err != nil {
		return nil, err
	}
	s.http = newHTTPServer(face, config.Logger)
	(&unreadable{refusals: m.refusals}).watch(s.http)
	secured.onHTTP(s.http)
	s.admin = newHTTPServer(newAdminHandler(config, &s.ready, m.faults), config.Logger)
	if config.Pprof {
		s.admin.WriteTimeout = profileTimeout
	}

	for _, l := range []struct {
		name, addr string
		to         *net.Listener
	}{
		{"gRPC", config.GRPCAddr, &s.grpcListener},
		{"HTTP", config.HTTPAddr, &s.httpListener},
		{"admin", config.AdminAddr, &s.adminListener},
	} {
		if *l.to, err = net.Listen("tcp", l.addr); err != nil {
			s.closeListeners()
			return nil, fmt.Errorf("%s listener: %w", l.name, err)
		}
	}
	return s, nil
}

func (s *Server) closeListeners() {
	for _, l := range []net.Listener{s.grpcListener, s.httpListener, s.adminListener} {
		if l != nil {
			_ = l.Close() // It was never served; there is nobody to tell.
		}
	}
}

// GRPCAddr is the address gRPC listens on.
func (s *Server) GRPCAddr() net.Addr { return s.grpcListener.Addr() }

// HTTPAddr is the address JSON listens on.
func (s *Server) HTTPAddr() net.Addr { return s.httpListener.Addr() }

// AdminAddr is the address of metrics and probes.
func (s *Server) AdminAddr() net.Addr { return s.adminListener.Addr() }

// Serve answers until ctx is done and then stops in order, or until a listener
// fails, which is the error returned.
func (s *Server) Serve(ctx context.Context) error {
	// The listeners are open, so callers already queue; the first answer any of
	// them can get is SERVING.
	s.setReady(true)
	looking, stopLooking := context.WithCancel(context.Background())
	defer stopLooking()
	go watched.Watch(looking, watched.Every, s.files...)
	failed := make(chan error, 3)
	go func() { failed <- s.grpc.Serve(s.grpcListener) }()
	go func() { failed <- s.serveHTTP() }()
	go func() { failed <- s.admin.Serve(s.adminListener) }()

	var cause error
	select {
	case <-ctx.Done():
	case cause = <-failed:
	}
	s.stop(cause == nil)
	return cause
}

// setReady tells probes and health checks, of the whole and of every service.
func (s *Server) setReady(ready bool) {
	s.ready.Store(ready)
	if !ready {
		// From here on the health server says NOT_SERVING for ever, also to
		// those who watch.
		s.health.Shutdown()
		return
	}
	s.health.SetServingStatus("", healthv1.HealthCheckResponse_SERVING)
	for name := range s.grpc.GetServiceInfo() {
		s.health.SetServingStatus(name, healthv1.HealthCheckResponse_SERVING)
	}
}

// stop ends the service in the order that loses no call: readiness off, time for
// the load balancers to see it, JSON, gRPC, and last the admin face, so that the
// end can still be scraped.
func (s *Server) stop(drain bool) {
	log := s.config.Logger
	s.setReady(false)
	if drain && s.config.Drain > 0 {
		log.Info("draining", "for", s.config.Drain)
		<-time.After(s.config.Drain)
	}
	s.stopHTTP(s.http, "JSON")
	s.stopGRPC()
	s.stopHTTP(s.admin, "admin")
	log.Info("stopped")
}

// stopHTTP waits for requests under way, but not for ever.
func (s *Server) stopHTTP(server *http.Server, name string) {
	ctx, cancel := context.WithTimeout(context.Background(), s.config.ShutdownTimeout)
	defer cancel()
	if err := server.Shutdown(ctx); err != nil {
		s.config.Logger.Warn("requests cut off", "listener", name, "cause", err)
		_ = server.Close() // Shutdown said what there was to say.
	}
}

// stopGRPC waits for calls under way, but not for ever: a health Watch never
// ends of itself, and GracefulStop waits for it.
func (s *Server) stopGRPC() {
	done := make(chan struct{})
	go func() {
		s.grpc.GracefulStop()
		close(done)
	}()
	select {
	case <-done:
	case <-time.After(s.config.ShutdownTimeout):
		s.config.Logger.Info("gRPC streams cut off")
		s.grpc.Stop()
		<-done
	}
}
