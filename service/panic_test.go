package service

import (
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/prometheus/client_golang/prometheus"
)

// What panics outside of any call is answered with 500 and the constant text,
// counted as that, and explained in the log only.
func TestPanicOutsideACall(t *testing.T) {
	registry, log := prometheus.NewRegistry(), &lockedBuffer{}
	logger := slog.New(slog.NewTextHandler(log, nil))
	m, err := newMetrics(registry, Release{}, logger)
	if err != nil {
		t.Fatal(err)
	}
	face := httptest.NewServer(m.observe(func(*http.Request) string { return "here" },
		m.faults.recoverHTTP(whereHTTP, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if r.URL.Path == "/" {
				w.Header().Set("Content-Length", "7")
				w.Header().Set("Content-Encoding", "br")
				w.Header().Set("ETag", `"of the answer"`)
			}
			switch r.URL.Path {
			case "/abort":
				panic(http.ErrAbortHandler)
			case "/begun":
				_, _ = w.Write([]byte("knit"))
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
	checkPanicLog(t, log.String())
	// Cut where it is meant to be, and where half an answer would be taken for one.
	for _, path := range []string{"/abort", "/begun"} {
		resp, err := face.Client().Post(face.URL+path, "", nil)
		if err == nil {
			if body, err = io.ReadAll(resp.Body); err == nil {
				t.Errorf("%s: HTTP %d, %q where the connection was to be cut", path, resp.StatusCode, body)
			}
			_ = resp.Body.Close()
		}
	}
	face.Close() // Everything is counted after that.
	checkCountedPanics(t, registry)
}

// checkPanicLog: the log says where it was, and nothing of what was asked.
func checkPanicLog(t *testing.T, log string) {
	t.Helper()
	for _, say := range []string{"panic with a string", "panic_test.go", "level=ERROR"} {
		if !strings.Contains(log, say) {
			t.Errorf("the log does not say %q:\n%s", say, log)
		}
	}
	if strings.Contains(log, secret) {
		t.Errorf("the log has what the panic said, which may be words of the question:\n%s", log)
	}
}

func checkCountedPanics(t *testing.T, registry *prometheus.Registry) {
	t.Helper()
	families := gathered(t, registry)
	for _, c := range []struct {
		name   string
		labels []string
		want   float64
	}{
		{"http_requests_total", []string{"route", "here", "method", "get", "code", "500"}, 1},
		{"http_request_duration_seconds", []string{"route", "here"}, 3},
		{"knitmath_panics_total", []string{"where", whereHTTP}, 2},
		{"knitmath_panics_total", nil, 2},
	} {
		if got := value(families, c.name, c.labels...); got != c.want {
			t.Errorf("%s%q is %v, want %v", c.name, c.labels, got, c.want)
		}
	}
}
