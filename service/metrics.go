package service

import (
	"net/http"

	grpcprom "github.com/grpc-ecosystem/go-grpc-middleware/providers/prometheus"
	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"
)

// metrics are the figures of both faces, named as stock dashboards expect them.
type metrics struct {
	calls       *grpcprom.ServerMetrics
	httpCount   *prometheus.CounterVec
	httpSeconds *prometheus.HistogramVec
}

// buckets of time run from a tenth of a millisecond, since most sums take less
// than that, to a second, which none may take.
var buckets = []float64{.0001, .00025, .0005, .001, .0025, .005, .01, .025, .05, .1, .25, .5, 1}

// newMetrics registers the figures, those of the Go runtime and those of the
// process with reg, and which release counts them.
func newMetrics(reg prometheus.Registerer, release Release) (*metrics, error) {
	page := []string{"method", "code", "route"}
	m := &metrics{
		calls: grpcprom.NewServerMetrics(
			grpcprom.WithServerHandlingTimeHistogram(grpcprom.WithHistogramBuckets(buckets))),
		httpCount: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "http_requests_total", Help: "HTTP requests answered."}, page),
		httpSeconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "http_request_duration_seconds", Help: "Time taken by HTTP requests.", Buckets: buckets}, page),
	}
	for _, c := range []prometheus.Collector{
		m.calls, m.httpCount, m.httpSeconds, release.metric(),
		collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}),
	} {
		if err := reg.Register(c); err != nil {
			return nil, err
		}
	}
	return m, nil
}

// observe counts and times every request to next. route names the request's
// path out of a fixed set: a label that a caller can choose freely would grow
// without bound.
func (m *metrics) observe(route func(*http.Request) string, next http.Handler) http.Handler {
	label := promhttp.WithLabelFromRequest("route", route)
	plain := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		next.ServeHTTP(plainWriter{w}, r)
	})
	return promhttp.InstrumentHandlerDuration(m.httpSeconds,
		promhttp.InstrumentHandlerCounter(m.httpCount, plain, label), label)
}

// plainWriter hides that a writer knows a short cut from files to the network. An
// answer comes from memory, and by the short cut its header and its body would be
// sent apart.
type plainWriter struct{ http.ResponseWriter }

// Unwrap lets http.ResponseController reach the connection.
func (p plainWriter) Unwrap() http.ResponseWriter { return p.ResponseWriter }
