package main

import (
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/resolver"
	"google.golang.org/grpc/resolver/manual"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// rolling is how long an instance drains in the test.
const rolling = 600 * time.Millisecond

// house is some instances with clients of both faces that take one after the other,
// as far as they know of them.
type house struct {
	tb       testing.TB
	resolver *manual.Resolver

	mu    sync.Mutex
	known []*process
}

func (h *house) change(change func([]*process) []*process) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.known = change(slices.Clone(h.known))
	var state resolver.State
	for _, p := range h.known {
		state.Addresses = append(state.Addresses, resolver.Address{Addr: p.GRPC})
	}
	h.resolver.UpdateState(state)
}

func (h *house) pick(n int) *process {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.known[n%len(h.known)]
}

// open starts an instance, and lets the clients know when it serves.
func (h *house) open() {
	p := serve(h.tb, "-drain", rolling.String(), "-shutdown-timeout", "300ms")
	h.change(func(known []*process) []*process { return append(known, p) })
}

// replace starts a new instance and ends the oldest. Its clients learn of that only
// half-way through the drain, and ask it as before until then.
func (h *house) replace() {
	h.open()
	old := h.pick(0)
	if err := old.Process.Signal(syscall.SIGTERM); err != nil {
		h.tb.Fatal(err)
	}
	old.await(h.tb, healthv1.HealthCheckResponse_NOT_SERVING)
	<-time.After(rolling / 2)
	h.change(func(known []*process) []*process { return known[1:] })
	log := old.rest()
	if err := old.Wait(); err != nil {
		h.tb.Errorf("%v\n%s", err, log)
	}
}

// askers ask without a pause worth the name until ended.
type askers struct {
	group           sync.WaitGroup
	asked, answered atomic.Int64
	mu              sync.Mutex
	lost            []error
}

func (a *askers) keepAsking(ctx context.Context, ask func() error) {
	for range 8 {
		a.group.Go(func() {
			for ctx.Err() == nil {
				a.asked.Add(1)
				if err := ask(); err != nil {
					a.mu.Lock()
					a.lost = append(a.lost, err)
					a.mu.Unlock()
				} else {
					a.answered.Add(1)
				}
				<-time.After(5 * time.Millisecond)
			}
		})
	}
}

// Three instances under steady load, rolled one after the other three times: no call
// is lost on either face.
func TestRoll(t *testing.T) {
	h := &house{tb: t, resolver: manual.NewBuilderWithScheme("house")}
	h.resolver.InitialState(resolver.State{})
	conn, err := grpc.NewClient("house:///", grpc.WithResolvers(h.resolver), grpc.WithTransportCredentials(insecure.NewCredentials()),
		grpc.WithDefaultServiceConfig(`{"loadBalancingConfig": [{"round_robin": {}}]}`))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = conn.Close() })
	conn.Connect()
	for range 3 {
		h.open()
	}
	gauge := knitmathv1.NewGaugeServiceClient(conn)
	question := &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
	if _, err := gauge.ComputeCastOn(t.Context(), question, grpc.WaitForReady(true)); err != nil {
		t.Fatal(err)
	}
	// A connection leads to one instance for as long as it lives, as it does where a
	// cluster spreads connections; a new one leads to the next that is known.
	var dialled atomic.Int64
	client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: 16,
		DialContext: func(ctx context.Context, network, _ string) (net.Conn, error) {
			return new(net.Dialer).DialContext(ctx, network, h.pick(int(dialled.Add(1))).HTTP)
		}}}
	t.Cleanup(client.CloseIdleConnections)

	ctx, cancel := context.WithCancel(t.Context())
	var rpc, json askers
	rpc.keepAsking(ctx, func() error {
		_, err := gauge.ComputeCastOn(t.Context(), question)
		return err
	})
	json.keepAsking(ctx, func() error { return postCastOn(client, "house") })
	for range 3 * 3 {
		h.replace()
	}
	cancel()
	for name, a := range map[string]*askers{"gRPC": &rpc, "JSON": &json} {
		a.group.Wait()
		t.Logf("%s: %d asked", name, a.asked.Load())
		if len(a.lost) > 0 || a.answered.Load() == 0 {
			t.Errorf("%s: %d of %d lost, such as %v", name, len(a.lost), a.asked.Load(), a.lost[:min(3, len(a.lost))])
		}
	}
}

func postCastOn(client *http.Client, addr string) error {
	resp, err := client.Post("http://"+addr+"/v1/gauge:computeCastOn", "application/json",
		strings.NewReader(`{"gauge": {"stitches": 22, "rows": 30}, "width_cm": 50}`))
	if err != nil {
		return err
	}
	defer resp.Body.Close()
	if _, err := io.Copy(io.Discard, resp.Body); err != nil {
		return err
	}
	if resp.StatusCode != http.StatusOK {
		return fmt.Errorf("HTTP %d", resp.StatusCode)
	}
	return nil
}
