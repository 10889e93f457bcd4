package service

import (
	"io"
	"net/http"
	"sync/atomic"

	"github.com/prometheus/client_golang/prometheus/promhttp"
)

// newAdminHandler serves what operators need and the public must not see:
// the metrics, whether the process lives, whether it wants traffic, and which
// release it is.
func newAdminHandler(config Config, ready *atomic.Bool, f *faults) http.Handler {
	mux := http.NewServeMux()
	mux.Handle("GET /metrics", promhttp.HandlerFor(config.Registry, promhttp.HandlerOpts{
		ErrorLog: scrapes{config.Logger},
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
