package service

import (
	"context"
	"errors"
	"io"
	"log/slog"
	"net"
	"strings"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/connectivity"
	"google.golang.org/grpc/credentials/insecure"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// testConfig listens on free loopback ports and logs to log.
func testConfig(log *lockedBuffer) Config {
	return Config{GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0",
		ShutdownTimeout: 5 * time.Second,
		Logger:          slog.New(slog.NewTextHandler(log, nil)), Registry: prometheus.NewRegistry()}
}

func dial(t *testing.T, addr net.Addr) *grpc.ClientConn {
	t.Helper()
	conn, err := grpc.NewClient(addr.String(), grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = conn.Close() })
	return conn
}

// A port in use is an error that names the listener, and the ports opened before
// it are given back.
func TestPortInUse(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	free, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	_ = free.Close()
	config := testConfig(&lockedBuffer{})
	config.GRPCAddr, config.AdminAddr = free.Addr().String(), taken.Addr().String()
	if _, err = Listen(config); err == nil || !strings.Contains(err.Error(), "admin listener") {
		t.Fatalf("Listen: %v", err)
	}
	again, err := net.Listen("tcp", config.GRPCAddr)
	if err != nil {
		t.Fatalf("the gRPC port was kept: %v", err)
	}
	_ = again.Close()
}

// Nothing is served before all three listeners are open, and then everything.
func TestStartToServing(t *testing.T) {
	begin := time.Now()
	config := testConfig(&lockedBuffer{})
	config.ShutdownTimeout = 500 * time.Millisecond
	server, err := Listen(config)
	if err != nil {
		t.Fatal(err)
	}
	if server.ready.Load() {
		t.Error("ready before serving")
	}
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	client := healthv1.NewHealthClient(dial(t, server.GRPCAddr()))
	watch, err := client.Watch(t.Context(), &healthv1.HealthCheckRequest{}, grpc.WaitForReady(true))
	if err != nil {
		t.Fatal(err)
	}
	awaitHealth(t, watch, healthv1.HealthCheckResponse_SERVING)
	t.Logf("start to SERVING: %v", time.Since(begin))
	cancel()
	// The watch is told, and held open: the stop must come to its end all the
	// same, by the deadline.
	awaitHealth(t, watch, healthv1.HealthCheckResponse_NOT_SERVING)
	if server.ready.Load() {
		t.Error("ready while stopping")
	}
	if err := <-ended; err != nil {
		t.Errorf("Serve: %v", err)
	}
	if _, err := watch.Recv(); status.Code(err) != codes.Unavailable {
		t.Errorf("the watch ended with %v", err)
	}
}

func awaitHealth(t *testing.T, watch healthv1.Health_WatchClient, want healthv1.HealthCheckResponse_ServingStatus) {
	t.Helper()
	for {
		resp, err := watch.Recv()
		if err != nil {
			t.Fatalf("waiting for %v: %v", want, err)
		}
		if resp.Status == want {
			return
		}
	}
}

// While it drains, the service says that it is not ready and answers all the
// same; it ends when the drain is over.
func TestDrain(t *testing.T) {
	config := testConfig(&lockedBuffer{})
	config.Drain = time.Second
	server, err := Listen(config)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	conn := dial(t, server.GRPCAddr())
	watching, stopWatching := context.WithCancel(t.Context())
	watch, err := healthv1.NewHealthClient(conn).Watch(watching, &healthv1.HealthCheckRequest{}, grpc.WaitForReady(true))
	if err != nil {
		t.Fatal(err)
	}
	awaitHealth(t, watch, healthv1.HealthCheckResponse_SERVING)
	idle := dial(t, server.GRPCAddr())
	if _, err := healthv1.NewHealthClient(idle).Check(t.Context(), &healthv1.HealthCheckRequest{}); err != nil {
		t.Fatal(err)
	}
	begin := time.Now()
	cancel()
	awaitHealth(t, watch, healthv1.HealthCheckResponse_NOT_SERVING)
	client := &running{Server: server, http: testHTTPClient(t)}
	if got := client.sendTo(t, server.AdminAddr().String(), "GET", "/readyz", ""); got.code != 503 {
		t.Errorf("/readyz: HTTP %d while draining", got.code)
	}
	resp, err := client.http.Post("http://"+server.HTTPAddr().String()+castOnPath, jsonType, strings.NewReader(castOnBody))
	if err != nil {
		t.Fatal(err)
	}
	if resp.StatusCode != 200 || !resp.Close {
		t.Errorf("JSON while draining: HTTP %d, says that it closes: %v", resp.StatusCode, resp.Close)
	}
	_ = resp.Body.Close()
	// Who has a connection is told to leave it before the drain is over, and who
	// makes a new one is answered.
	if !idle.WaitForStateChange(t.Context(), connectivity.Ready) {
		t.Error("the idle connection was kept")
	}
	select {
	case err := <-ended:
		t.Error(err, "the drain was over before the idle connection was left")
	default:
	}
	_, err = knitmathv1.NewGaugeServiceClient(conn).ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{})
	if status.Code(err) != codes.InvalidArgument {
		t.Errorf("gRPC: %v while draining", err)
	}
	stopWatching()
	if err := <-ended; err != nil {
		t.Errorf("Serve: %v", err)
	}
	if took := time.Since(begin); took < config.Drain {
		t.Errorf("stopped after %v, before the drain was over", took)
	}
}

// A call under way is answered before the service ends.
func TestStopWaitsForCalls(t *testing.T) {
	entered, leave := make(chan struct{}), make(chan struct{})
	slow := grpc.ServiceDesc{ServiceName: "knitmath.test.SlowService", HandlerType: (*any)(nil), Methods: []grpc.MethodDesc{
		{MethodName: "Wait", Handler: func(_ any, _ context.Context, dec func(any) error, _ grpc.UnaryServerInterceptor) (any, error) {
			close(entered)
			<-leave
			return &knitmathv1.ComputeCastOnResponse{Summary: "done"}, dec(&knitmathv1.ComputeCastOnRequest{})
		}}}}
	server := start(t, func(to grpc.ServiceRegistrar) { to.RegisterService(&slow, oddService{}) })
	conn := dial(t, server.GRPCAddr())
	answered := make(chan error, 1)
	var answer knitmathv1.ComputeCastOnResponse
	go func() {
		answered <- conn.Invoke(t.Context(), "/knitmath.test.SlowService/Wait", &knitmathv1.ComputeCastOnRequest{}, &answer)
	}()
	<-entered
	stopped := make(chan error, 1)
	go func() { stopped <- server.stop() }()
	select {
	case err := <-stopped:
		t.Fatalf("stopped with a call under way: %v", err)
	case <-time.After(50 * time.Millisecond):
	}
	close(leave)
	if err := <-answered; err != nil || answer.Summary != "done" {
		t.Errorf("the call under way: %q, %v", answer.Summary, err)
	}
	if err := <-stopped; err != nil {
		t.Error(err)
	}
}

// What never ends is not waited for beyond the timeout: a handler, a body that is not
// sent to its end, a connection that says nothing.
func TestStopDoesNotWaitForEver(t *testing.T) {
	entered, leave := make(chan struct{}), make(chan struct{})
	defer close(leave)
	stuck := grpc.ServiceDesc{ServiceName: "knitmath.test.StuckService", HandlerType: (*any)(nil), Methods: []grpc.MethodDesc{
		{MethodName: "Wait", Handler: func(any, context.Context, func(any) error, grpc.UnaryServerInterceptor) (any, error) {
			close(entered)
			<-leave
			return nil, nil
		}}}}
	config := testConfig(&lockedBuffer{})
	config.Drain, config.ShutdownTimeout = time.Millisecond, 100*time.Millisecond
	server, err := listen(config, func(to grpc.ServiceRegistrar) { to.RegisterService(&stuck, oddService{}) })
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	conn := dial(t, server.GRPCAddr())
	go func() {
		_ = conn.Invoke(t.Context(), "/knitmath.test.StuckService/Wait", &knitmathv1.ComputeCastOnRequest{}, &knitmathv1.ComputeCastOnResponse{})
	}()
	<-entered
	for addr, say := range map[net.Addr]string{server.GRPCAddr(): "", server.HTTPAddr(): "POST " + castOnPath +
		" HTTP/1.1\r\nHost: localhost\r\nContent-Length: 9\r\nExpect: 100-continue\r\n\r\n"} {
		silent, err := net.Dial("tcp", addr.String())
		if err != nil {
			t.Fatal(err)
		}
		defer silent.Close()
		if _, err := io.WriteString(silent, say); err != nil {
			t.Fatal(err)
		}
		if say != "" { // It is asked for the body: the request is under way.
			if _, err := io.ReadFull(silent, make([]byte, len("HTTP/1.1 100"))); err != nil {
				t.Fatal(err)
			}
		}
	}
	cancel()
	if err := <-ended; err != nil { // The handler has not ended.
		t.Errorf("Serve: %v", err)
	}
}

// A listener that fails ends the service with its error.
func TestListenerFails(t *testing.T) {
	server, err := Listen(testConfig(&lockedBuffer{}))
	if err != nil {
		t.Fatal(err)
	}
	_ = server.httpListener.Close()
	if err := server.Serve(t.Context()); !errors.Is(err, net.ErrClosed) {
		t.Errorf("Serve: %v", err)
	}
}
