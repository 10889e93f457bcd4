package deploy

import (
	"context"
	"encoding/json"
	"io"
	"log/slog"
	"net"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/metadata"
	"google.golang.org/grpc/resolver"
	"google.golang.org/grpc/resolver/manual"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service"
	"example.com/knitmath/service/carry"
)

// clientOf is a client as README describes it, of the servers at these addresses.
func clientOf(t *testing.T, addrs ...string) knitmathv1.GaugeServiceClient {
	t.Helper()
	named := manual.NewBuilderWithScheme("pods")
	var state resolver.State
	for _, addr := range addrs {
		state.Endpoints = append(state.Endpoints, resolver.Endpoint{Addresses: []resolver.Address{{Addr: addr}}})
	}
	named.InitialState(state)
	conn, err := grpc.NewClient("pods:///knitmath", grpc.WithTransportCredentials(insecure.NewCredentials()),
		grpc.WithResolvers(named), grpc.WithDefaultServiceConfig(read(t, "service-config.json")))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = conn.Close() })
	return knitmathv1.NewGaugeServiceClient(conn)
}

func castOn() *knitmathv1.ComputeCastOnRequest {
	return &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
}

// serveQuestions answers all questions of the wire, each after intercept.
func serveQuestions(t *testing.T, intercept grpc.UnaryServerInterceptor) string {
	t.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	server := grpc.NewServer(grpc.UnaryInterceptor(intercept))
	carry.Register(server)
	served := make(chan error, 1)
	go func() { served <- server.Serve(listener) }()
	t.Cleanup(func() {
		server.Stop()
		if err := <-served; err != nil {
			t.Error(err)
		}
	})
	return listener.Addr().String()
}

// A client with the published service config asks again when it was refused for
// load or could not be answered, three times, and not when the question was wrong;
// and every call ends in time, also when the caller named no time.
func TestServiceConfigRetries(t *testing.T) {
	for _, c := range []struct {
		code              codes.Code
		refused, attempts int32
		want              codes.Code
	}{
		{codes.OK, 0, 1, codes.OK},
		{codes.Unavailable, 3, 4, codes.OK},
		{codes.ResourceExhausted, 3, 4, codes.OK},
		{codes.ResourceExhausted, 4, 4, codes.ResourceExhausted},
		{codes.InvalidArgument, 1, 1, codes.InvalidArgument},
		{codes.Internal, 1, 1, codes.Internal},
	} {
		var attempts atomic.Int32
		addr := serveQuestions(t, func(ctx context.Context, req any, _ *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
			if until, ok := ctx.Deadline(); !ok || time.Until(until) > 5*time.Second {
				t.Errorf("the call may take until %v", until)
			}
			if attempts.Add(1) <= c.refused {
				return nil, status.Error(c.code, "refused by the test")
			}
			return handler(ctx, req)
		})
		_, err := clientOf(t, addr).ComputeCastOn(t.Context(), castOn())
		if status.Code(err) != c.want || attempts.Load() != c.attempts {
			t.Errorf("%d times %v: %v after %d attempts, want %v after %d", c.refused, c.code, err, attempts.Load(), c.want, c.attempts)
		}
	}
}

// The calls of one client are spread over the servers, and none is lost when one of
// them ends.
func TestServiceConfigSpreads(t *testing.T) {
	var addrs []string
	ends := map[string]func(){}
	for _, name := range []string{"a", "b"} {
		server, err := service.Listen(service.Config{GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0",
			ShutdownTimeout: 10 * time.Second, Logger: slog.New(slog.NewJSONHandler(io.Discard, nil)), Registry: prometheus.NewRegistry(),
			Release: service.Release{Version: name}})
		if err != nil {
			t.Fatal(err)
		}
		ctx, cancel := context.WithCancel(context.Background())
		ended := make(chan error, 1)
		go func() { ended <- server.Serve(ctx) }()
		ends[name] = sync.OnceFunc(func() {
			cancel()
			if err := <-ended; err != nil {
				t.Error(err)
			}
		})
		t.Cleanup(ends[name])
		addrs = append(addrs, server.GRPCAddr().String())
	}
	client := clientOf(t, addrs...)
	// ask says who answered.
	ask := func() string {
		t.Helper()
		var header metadata.MD
		if _, err := client.ComputeCastOn(t.Context(), castOn(), grpc.Header(&header)); err != nil {
			t.Fatal(err)
		}
		return strings.Join(header["knitmath-release"], ",")
	}
	// Both may not be connected at first.
	connected, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	defer cancel()
	for first := ask(); ask() == first; {
		if connected.Err() != nil {
			t.Fatalf("%s alone is asked", first)
		}
	}
	answered := map[string]int{}
	for range 100 {
		answered[ask()]++
	}
	if answered["a"] != 50 || answered["b"] != 50 {
		t.Errorf("100 calls: %v", answered)
	}
	ends["a"]()
	for range 100 {
		if by := ask(); by != "b" {
			t.Errorf("answered by %q, which has ended", by)
		}
	}
}

// Every method of the wire has a deadline and the retries.
func TestServiceConfigCoversTheWire(t *testing.T) {
	var config struct {
		MethodConfig []struct {
			Name        []struct{ Service, Method string }
			Timeout     string
			RetryPolicy struct{ MaxAttempts int }
		}
	}
	if err := json.Unmarshal([]byte(read(t, "service-config.json")), &config); err != nil {
		t.Fatal(err)
	}
	covered := map[string]bool{}
	for _, c := range config.MethodConfig {
		for _, name := range c.Name {
			covered[name.Service] = covered[name.Service] || name.Method == ""
			if duration(t, c.Timeout) <= 0 || c.RetryPolicy.MaxAttempts < 2 {
				t.Errorf("%+v", c)
			}
		}
	}
	server := grpc.NewServer()
	carry.Register(server)
	wire := server.GetServiceInfo()
	for name := range wire {
		if !covered[name] {
			t.Errorf("%s is not in the service config", name)
		}
	}
	if len(covered) != len(wire) {
		t.Errorf("the service config names %v", covered)
	}
}
