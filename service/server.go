package service

import (
	"cmp"
	"context"
	"errors"
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
	"example.com/knitmath/service/caller"
	"example.com/knitmath/service/carry"
	"example.com/knitmath/service/conns"
	"example.com/knitmath/service/tlsfile"
	"example.com/knitmath/service/trace"
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
	// ShutdownTimeout is how long calls under way may take to end after that, on
	// both faces at the same time.
	ShutdownTimeout time.Duration
	// MaxConnections is how many connections each public face has at the most;
	// 0 is DefaultMaxConnections.
	MaxConnections int
	// ConnectionAge is how old a connection gets before its caller is asked to make
	// a new one, and so to find new replicas; 0 is DefaultConnectionAge.
	ConnectionAge time.Duration
	// TLS is for both public faces; the admin face, which probes and scrapers ask,
	// never has it.
	TLS tlsfile.Config
	// Callers says who may call.
	Callers caller.Config
	// FramedBy are the origins whose pages may show the pages of the service in a
	// frame, with commas between them.
	FramedBy string
	// Release is what answers are said to come from.
	Release Release
	// Traces makes spans of calls; nil for none.
	Traces *trace.Tracing
	// Pprof serves profiles of the running program on AdminAddr.
	Pprof bool
	// Logger and Registry are made by the caller; the service has no globals.
	Logger   *slog.Logger
	Registry *prometheus.Registry
}

// Defaults of what bounds connections. So many idle ones take the program to
// 150 MiB over JSON and to 210 MiB over gRPC, while twice as many want to come in.
const (
	DefaultMaxConnections = 4096
	DefaultConnectionAge  = 3 * time.Minute
)

const (
	// maxAdminConnections are for probes and scrapers, of which there are few.
	maxAdminConnections = 128
	// maxCalls bounds the gRPC calls that are open on all connections. A JSON
	// connection has one, so there the connections are the bound.
	maxCalls = 4096
)

// Server is the three listeners of one process.
type Server struct {
	config Config
	// grpc answers until the service is asked to end, and then ends what it has begun; grpcLast answers who comes new.
	grpc, grpcLast *grpc.Server
	health         *health.Server
	keeper         *conns.Keeper
	http           *http.Server
	admin          *http.Server
	gate           *admit.Gate
	unreached      *unreached
	ready          atomic.Bool

	grpcListener, httpListener, adminListener net.Listener
	grpcFace, httpFace, adminFace             *conns.Face
	// relay hands what comes to grpcFace to grpc and then to grpcLast.
	relay *conns.Relay
	// files are looked at while the server runs.
	files []watched.Looker
}

// Check finds what contradicts itself in a configuration.
func (c Config) Check() error {
	_, err := caller.ReadOrigins(c.FramedBy)
	if err != nil {
		err = fmt.Errorf("-framed-by: %w", err)
	}
	return errors.Join(c.TLS.Check(), c.Callers.Check(), err)
}

// Listen opens all three listeners and serves none of them yet: a port in use is
// an error before the first question is accepted.
func Listen(config Config) (*Server, error) {
	return listen(config, carry.Register)
}

func listen(config Config, register func(grpc.ServiceRegistrar)) (*Server, error) {
	config.Release.Version = cmp.Or(config.Release.Version, unknownRelease)
	config.MaxConnections = cmp.Or(config.MaxConnections, DefaultMaxConnections)
	config.ConnectionAge = cmp.Or(config.ConnectionAge, DefaultConnectionAge)
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
	in := admission{admit.NewGate(admit.DefaultLimits(runtime.GOMAXPROCS(0))), m.refusals, newUnreached(m.refusals)}
	s.gate, s.unreached, s.keeper = in.gate, in.unreached, conns.NewKeeper(conns.DefaultLimits())
	for _, c := range []prometheus.Collector{s.gate, s.keeper, readiness(&s.ready)} {
		if err := config.Registry.Register(c); err != nil {
			return nil, err
		}
	}
	who, err := s.judging(told)
	if err != nil {
		return nil, err
	}
	s.health = newHealth()
	options := append(config.Traces.GRPC(isWireMethod), secured.onGRPC())
	for _, server := range []**grpc.Server{&s.grpc, &s.grpcLast} {
		made, seen := newGRPCServer(m, config.Release, who, in, unary, stream, s.health, config.ConnectionAge, options...)
		register(seen)
		*server = made
	}
	// Every counter exists from the start, so that a rate over it is 0 and not absent before
	// the first call, and the first fault of the service's own is seen as an increase.
	m.calls.expect(s.grpc.GetServiceInfo())

	local := newInProcess(spanned(config.Traces, unary))
	register(local)
	face, err := newJSONFace(local, m, who, in, config)
	if err != nil {
		return nil, err
	}
	s.http = newHTTPServer(config.Traces.HTTP(face.whole(config.ConnectionAge, &s.ready), face.isQuestion), config.Logger)
	(&unreadable{refusals: m.refusals}).watch(s.http)
	if err := secured.onHTTP(s.http); err != nil {
		return nil, err
	}
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
	s.grpcFace = s.keeper.Face(faceGRPC, s.grpcListener, config.MaxConnections, maxCalls)
	s.httpFace = s.keeper.Face(faceJSON, s.httpListener, config.MaxConnections, config.MaxConnections)
	s.adminFace = s.keeper.Face("admin", s.adminListener, maxAdminConnections, maxAdminConnections)
	s.relay = conns.NewRelay(s.grpcFace)
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
	go s.keeper.Run(looking)
	go s.unreached.run(looking)
	go func() { failed <- s.grpc.Serve(s.relay.Shift()) }()
	go func() { failed <- s.serveHTTP() }()
	go func() { failed <- s.admin.Serve(s.adminFace) }()

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
