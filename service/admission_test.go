package service

import (
	"net/http"
	"strings"
	"testing"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/codes"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/status"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/admit"
)

// fillLane takes every place in the lane of light calls, and gives back how to leave.
func fillLane(t *testing.T, server *running) (leave func()) {
	t.Helper()
	var calls []*admit.Call
	for {
		c := server.gate.NewCall(nil)
		if err := c.Enter(t.Context(), 1); err != nil {
			return func() {
				for _, c := range calls {
					c.Leave()
				}
			}
		}
		calls = append(calls, &c)
	}
}

// A full house refuses on both faces, says when to come again, goes on answering
// probes and metrics, and answers again as soon as there is room.
func TestFullHouse(t *testing.T) {
	server := start(t)
	leave := fillLane(t, server)
	client := knitmathv1.NewGaugeServiceClient(server.conn)
	good := &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
	_, err := client.ComputeCastOn(t.Context(), good)
	post, get := server.send(t, "POST", castOnPath, castOnBody), server.send(t, "GET", castOnQuery, "")
	for name, st := range map[string]*status.Status{"gRPC": status.Convert(err), "POST": post.status(t), "GET": get.status(t)} {
		if st.Code() != codes.ResourceExhausted || errorInfo(st) != reasonOverloaded {
			t.Errorf("%s: %v", name, st)
			continue
		}
		if info, ok := st.Details()[1].(*errdetails.RetryInfo); !ok || info.GetRetryDelay().AsDuration() <= 0 {
			t.Errorf("%s: details %v", name, st.Details())
		}
	}
	for _, got := range []reply{post, get} {
		if got.code != http.StatusTooManyRequests || got.header.Get("Retry-After") != "1" || got.header.Get("Cache-Control") != "no-store" {
			t.Errorf("HTTP %d, header %v", got.code, got.header)
		}
	}
	if got, err := healthv1.NewHealthClient(server.conn).Check(t.Context(), &healthv1.HealthCheckRequest{}); err != nil ||
		got.Status != healthv1.HealthCheckResponse_SERVING {
		t.Errorf("health: %v %v", got, err)
	}
	admin := server.AdminAddr().String()
	if got := server.sendTo(t, admin, "GET", "/readyz", ""); got.code != http.StatusOK {
		t.Errorf("/readyz: HTTP %d", got.code)
	}
	figures := string(server.sendTo(t, admin, "GET", "/metrics", "").body)
	for _, want := range []string{`knitmath_calls_refused_total{cause="waited_too_long",lane="light"} 4`,
		`knitmath_calls_refused_total{cause="too_many_wait",lane="dear"} 0`,
		`knitmath_calls_waiting{lane="light"} 0`, `knitmath_calls_in_flight{lane="dear"} 0`} {
		if !strings.Contains(figures, want) {
			t.Errorf("the metrics lack %s", want)
		}
	}
	leave()
	if _, err := client.ComputeCastOn(t.Context(), good); err != nil {
		t.Error(err)
	}
	if got := server.send(t, "POST", castOnPath, castOnBody); got.code != http.StatusOK {
		t.Errorf("HTTP %d with room again", got.code)
	}
}

// Whatever becomes of a call, it leaves nothing behind.
func TestCallsLeaveNothing(t *testing.T) {
	server := start(t, registerOdd)
	client := knitmathv1.NewGaugeServiceClient(server.conn)
	good := &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
	if _, err := client.ComputeCastOn(t.Context(), good); err != nil {
		t.Fatal(err)
	}
	_, _ = client.ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{})
	for _, method := range []string{"Panic", "Fail", "Metadata"} {
		_ = server.conn.Invoke(t.Context(), "/knitmath.test.OddService/"+method, good, &knitmathv1.ComputeCastOnResponse{})
	}
	server.send(t, "POST", castOnPath, castOnBody)
	server.send(t, "GET", castOnQuery, "")
	server.send(t, "HEAD", castOnQuery, "")
	server.send(t, "GET", castOnQuery, "", "Accept-Encoding", "gzip")
	server.send(t, "GET", castOnQuery+"&x=1", "")
	server.send(t, "POST", castOnPath, "{")
	server.send(t, "POST", castOnPath, "not gzip", "Content-Encoding", "gzip")
	server.send(t, "POST", castOnQuery, castOnBody)
	if err := server.stop(); err != nil {
		t.Fatal(err)
	}
	list, err := server.registry.Gather()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range list {
		if f.GetName() == "knitmath_calls_in_flight" || f.GetName() == "knitmath_cost_in_flight" {
			for _, m := range f.GetMetric() {
				if m.GetGauge().GetValue() != 0 {
					t.Errorf("%s is %v at the end", f.GetName(), m)
				}
			}
		}
	}
}
