package service

import (
	"bytes"
	"strings"
	"testing"

	"github.com/prometheus/client_golang/prometheus"
	dto "github.com/prometheus/client_model/go"
	"github.com/prometheus/common/expfmt"
	"github.com/prometheus/common/model"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// value finds a counter, or the number of observations of a histogram, by the
// values of some of its labels.
func value(families map[string]*dto.MetricFamily, name string, labels ...string) float64 {
	total := 0.0
	for _, m := range families[name].GetMetric() {
		have := map[string]string{}
		for _, l := range m.GetLabel() {
			have[l.GetName()] = l.GetValue()
		}
		match := true
		for i := 0; i < len(labels); i += 2 {
			match = match && have[labels[i]] == labels[i+1]
		}
		if match {
			total += m.GetCounter().GetValue() + float64(m.GetHistogram().GetSampleCount())
		}
	}
	return total
}

// gathered are the figures of a registry by their names.
func gathered(tb testing.TB, registry *prometheus.Registry) map[string]*dto.MetricFamily {
	tb.Helper()
	list, err := registry.Gather()
	if err != nil {
		tb.Fatal(err)
	}
	families := map[string]*dto.MetricFamily{}
	for _, f := range list {
		families[f.GetName()] = f
	}
	return families
}

// TestMetricsCountOnce makes calls on both faces, stops the server so that all
// is counted, and reads the registry.
func TestMetricsCountOnce(t *testing.T) {
	server := start(t, registerOdd)
	gauge := knitmathv1.NewGaugeServiceClient(server.conn)
	good := &knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}
	for range 2 {
		if _, err := gauge.ComputeCastOn(t.Context(), good); err != nil {
			t.Fatal(err)
		}
	}
	_, _ = gauge.ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{})
	_ = server.conn.Invoke(t.Context(), "/knitmath.test.OddService/Panic", &knitmathv1.ComputeCastOnRequest{},
		&knitmathv1.ComputeCastOnResponse{})
	if _, err := healthv1.NewHealthClient(server.conn).Check(t.Context(), &healthv1.HealthCheckRequest{}); err != nil {
		t.Fatal(err)
	}
	for range 3 {
		server.send(t, "POST", castOnPath, castOnBody)
	}
	server.send(t, "GET", castOnQuery, "")
	server.send(t, "HEAD", castOnQuery, "")
	server.send(t, "POST", castOnPath, "{}")       // reaches the handler, which refuses
	server.send(t, "POST", castOnPath, "{")        // never gets that far
	server.send(t, "DELETE", castOnPath, "")       // nor this
	server.send(t, "GET", "/some/"+castOnPath, "") // nor this
	server.send(t, "KNIT", "/another", "")
	if err := server.stop(); err != nil {
		t.Fatal(err)
	}
	families := gathered(t, server.registry)
	castOn := []string{"grpc_service", "knitmath.v1.GaugeService", "grpc_method", "ComputeCastOn", "grpc_type", "unary"}
	for _, c := range []struct {
		name   string
		labels []string
		want   float64
	}{
		{"grpc_server_started_total", castOn, 2 + 1 + 3 + 1 + 1 + 1},
		{"grpc_server_handled_total", append(castOn, "grpc_code", "OK"), 2 + 3 + 1 + 1},
		{"grpc_server_handled_total", append(castOn, "grpc_code", "InvalidArgument"), 1 + 1},
		{"grpc_server_handling_seconds", castOn, 9},
		{"grpc_server_handled_total", []string{"grpc_method", "Panic", "grpc_code", "Internal"}, 1},
		{"grpc_server_handled_total", []string{"grpc_method", "Check", "grpc_code", "OK"}, 1},
		{"grpc_server_started_total", []string{"grpc_method", "PlanWedge"}, 0},
		{"http_requests_total", []string{"route", castOnPath, "method", "post", "code", "200"}, 3},
		{"http_requests_total", []string{"route", castOnPath, "method", "get", "code", "200"}, 1},
		{"http_requests_total", []string{"route", castOnPath, "method", "head", "code", "200"}, 1},
		{"http_requests_total", []string{"route", castOnPath, "method", "post", "code", "400"}, 2},
		{"http_requests_total", []string{"route", castOnPath, "method", "delete", "code", "405"}, 1},
		{"http_requests_total", []string{"route", "other", "method", "get", "code", "404"}, 1},
		{"http_requests_total", []string{"route", "other", "method", "unknown", "code", "404"}, 1},
		{"http_request_duration_seconds", nil, 10},
	} {
		if got := value(families, c.name, c.labels...); got != c.want {
			t.Errorf("%s%q is %v, want %v", c.name, c.labels, got, c.want)
		}
	}
	// Methods nobody has called yet are there, as 0.
	found := false
	for _, m := range families["grpc_server_started_total"].GetMetric() {
		found = found || strings.Contains(m.String(), "PlanWedge")
	}
	if !found {
		t.Error("PlanWedge is absent before its first call")
	}
}

// The admin face says what Prometheus reads.
func TestAdminFace(t *testing.T) {
	server := start(t)
	server.send(t, "POST", castOnPath, castOnBody)
	got := server.sendTo(t, server.AdminAddr().String(), "GET", "/metrics", "")
	parser := expfmt.NewTextParser(model.UTF8Validation)
	families, err := parser.TextToMetricFamilies(bytes.NewReader(got.body))
	if err != nil {
		t.Fatalf("HTTP %d: %v\n%s", got.code, err, got.body)
	}
	for _, name := range []string{"grpc_server_started_total", "grpc_server_handled_total", "grpc_server_handling_seconds",
		"http_requests_total", "http_request_duration_seconds", "go_goroutines", "process_resident_memory_bytes", "knitmath_build_info"} {
		if families[name] == nil {
			t.Errorf("%s is missing", name)
		}
	}
	for path, want := range map[string]int{"/healthz": 200, "/readyz": 200, "/": 404, "/debug/pprof/": 404} {
		if got := server.sendTo(t, server.AdminAddr().String(), "GET", path, ""); got.code != want {
			t.Errorf("%s: HTTP %d, want %d", path, got.code, want)
		}
	}
	if got := server.sendTo(t, server.AdminAddr().String(), "POST", "/healthz", ""); got.code != 405 {
		t.Errorf("POST to /healthz: HTTP %d", got.code)
	}
	// What operators need is not for the public.
	if got := server.send(t, "GET", "/metrics", ""); got.code != 404 {
		t.Errorf("/metrics on the public face: HTTP %d", got.code)
	}
}

// What takes long is told apart from what takes very long: histograms reach the longest
// that an answer may take, 30 s.
func TestHistogramsReachFar(t *testing.T) {
	server := start(t, registerOdd)
	server.send(t, "GET", "/version", "")
	found := 0
	for name, family := range gathered(t, server.registry) {
		if family.GetType() != dto.MetricType_HISTOGRAM || !strings.HasSuffix(name, "_seconds") || strings.HasPrefix(name, "go_") {
			continue
		}
		found++
		for _, m := range family.GetMetric() {
			buckets := m.GetHistogram().GetBucket()
			if last := buckets[len(buckets)-1].GetUpperBound(); last < 30 {
				t.Errorf("%s %v ends at %v s", name, m.GetLabel(), last)
			}
		}
	}
	if found < 2 {
		t.Errorf("%d histograms", found)
	}
}
