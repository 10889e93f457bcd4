package service

import (
	"io"
	"log/slog"
	"net/http"
	"net/http/pprof"
	"sync/atomic"
	"time"

	"github.com/prometheus/client_golang/prometheus/promhttp"
)

// newAdminHandler serves what operators need and the public must not see:
// the metrics, whether the process lives, whether it wants traffic, and which
// release it is.
func newAdminHandler(config Config, ready *atomic.Bool, f *faults) http.Handler {
	mux := http.NewServeMux()
	mux.Handle("GET /metrics", promhttp.HandlerFor(config.Registry, promhttp.HandlerOpts{
		ErrorLog: slog.NewLogLogger(config.Logger.Handler(), slog.LevelError),
	}))
	mux.HandleFunc("GET /healthz", func(w http.ResponseWriter, _ *http.Request) {
		_, _ = io.WriteString(w, "alive\n")
	})
	mux.HandleFunc("GET /readyz", func(w http.ResponseWriter, _ *http.Request) {
		if !ready.Load() {
			http.Error(w, "not ready", http.StatusServiceUnavailable)
			return
		}
		_, _ = io.WriteString(w, "ready\n")
	})
	mux.HandleFunc("GET "+versionPath, config.Release.serveVersion)
	if config.Pprof {
		profile(mux)
	}
	return onHTTP(config.Release, f.recoverHTTP(whereAdmin, mux))
}

// profileTimeout is how long an answer may take that is a profile: 30 seconds, unless
// more is asked for.
const profileTimeout = 2 * time.Minute

// profile serves what the Go runtime knows of the running program, to those who
// look for where time and memory go. It is asked for by a flag: it tells the
// program's arguments, and a profile costs while it is taken.
func profile(mux *http.ServeMux) {
	mux.HandleFunc("GET /debug/pprof/", pprof.Index) // Also every named profile: heap, goroutine and so on.
	mux.HandleFunc("GET /debug/pprof/cmdline", pprof.Cmdline)
	mux.HandleFunc("GET /debug/pprof/profile", pprof.Profile)
	mux.HandleFunc("GET /debug/pprof/symbol", pprof.Symbol)
	mux.HandleFunc("GET /debug/pprof/trace", pprof.Trace)
}
