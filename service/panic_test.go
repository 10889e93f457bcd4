package service

import (
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/prometheus/client_golang/prometheus"
	dto "github.com/prometheus/client_model/go"
)

// What panics outside of any call is answered with 500 and the constant text,
// counted as that, and explained in the log only.
func TestPanicOutsideACall(t *testing.T) {
	registry := prometheus.NewRegistry()
	m, err := newMetrics(registry, Release{})
	if err != nil {
		t.Fatal(err)
	}
	log := &lockedBuffer{}
	logger := slog.New(slog.NewTextHandler(log, nil))
	face := httptest.NewServer(m.observe(func(*http.Request) string { return "here" },
		recoverHTTP(logger, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Length", "7")
			w.Header().Set("Content-Encoding", "br")
			w.Header().Set("ETag", `"of the answer"`)
			if r.URL.Path == "/abort" {
				panic(http.ErrAbortHandler)
			}
			panic(secret)
		}))))
	face.Config.ErrorLog = slog.NewLogLogger(logger.Handler(), slog.LevelWarn)
	defer face.Close()
	resp, err := face.Client().Get(face.URL)
	if err != nil {
		t.Fatal(err)
	}
	body, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	_ = resp.Body.Close()
	st := reply{resp.StatusCode, resp.Header, body}.status(t)
	if resp.StatusCode != 500 || st.Message() != internalText || errorInfo(st) != "INTERNAL" ||
		resp.Header.Get("ETag") != "" || resp.Header.Get("Content-Encoding") != "" {
		t.Errorf("HTTP %d, %v: %s", resp.StatusCode, resp.Header, body)
	}
	for _, say := range []string{secret, "panic_test.go", "level=ERROR"} {
		if !strings.Contains(log.String(), say) {
			t.Errorf("the log does not say %q:\n%s", say, log)
		}
	}
	if resp, err := face.Client().Get(face.URL + "/abort"); err == nil {
		t.Errorf("HTTP %d where the connection was to be cut", resp.StatusCode)
	}
	list, err := registry.Gather()
	if err != nil {
		t.Fatal(err)
	}
	families := map[string]*dto.MetricFamily{}
	for _, f := range list {
		families[f.GetName()] = f
	}
	for _, name := range []string{"http_requests_total", "http_request_duration_seconds"} {
		if got := value(families, name, "route", "here", "method", "get", "code", "500"); got != 1 {
			t.Errorf("%s is %v, want 1", name, got)
		}
	}
}
