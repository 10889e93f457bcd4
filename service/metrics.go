package service

import (
	"log/slog"
	"net/http"
	"strconv"
	"strings"
	"sync/atomic"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
)

// metrics are the figures of both faces. Those of calls and requests are named as
// stock dashboards expect them, the others begin with knitmath_.
type metrics struct {
	calls       *callMetrics
	httpCount   *prometheus.CounterVec
	httpSeconds *prometheus.HistogramVec
	refusals    *refusals
	faults      *faults
}

// buckets of time run from a tenth of a millisecond, since most sums take less
// than that, to the longest that a caller waits who has to queue.
var buckets = []float64{.0001, .00025, .0005, .001, .0025, .005, .01, .025, .05, .1, .25, .5, 1, 2.5, 5, 10, 30}

// newMetrics registers the figures, those of the Go runtime and those of the
// process with reg, and which release counts them. logger takes what is counted of
// refusals and faults, too.
func newMetrics(reg prometheus.Registerer, release Release, logger *slog.Logger) (*metrics, error) {
	m := &metrics{
		calls: newCallMetrics(),
		httpCount: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "http_requests_total", Help: "HTTP requests answered."}, []string{"route", "method", "code"}),
		httpSeconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "http_request_duration_seconds", Help: "Time taken by HTTP requests.", Buckets: buckets}, []string{"route"}),
		refusals: newRefusals(logger),
		faults:   newFaults(logger),
	}
	for _, c := range append(m.calls.collectors(),
		m.httpCount, m.httpSeconds, m.refusals.count, m.faults.panics, m.faults.answers, release.metric(),
		collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}),
	) {
		if err := reg.Register(c); err != nil {
			return nil, err
		}
	}
	return m, nil
}

// readiness is 1 while the process wants questions, and 0 before that and while it
// ends.
func readiness(ready *atomic.Bool) prometheus.Collector {
	return prometheus.NewGaugeFunc(prometheus.GaugeOpts{
		Name: "knitmath_ready", Help: "Whether the process wants questions, as its probes say."},
		func() float64 {
			if ready.Load() {
				return 1
			}
			return 0
		})
}

// expectedCodes are those that rates are taken of. Their counters exist from the
// start, so that the first of them is seen as an increase.
var expectedCodes = []int{http.StatusOK, http.StatusBadRequest, http.StatusTooManyRequests,
	http.StatusInternalServerError, http.StatusServiceUnavailable}

// expect makes the counters of a route that answers the methods.
func (m *metrics) expect(route string, methods ...string) {
	for _, method := range methods {
		for _, code := range expectedCodes {
			m.httpCount.WithLabelValues(route, methodLabel(method), strconv.Itoa(code))
		}
	}
	m.httpSeconds.WithLabelValues(route)
}

// observe counts and times every request to next. route names the request's
// path out of a fixed set: a label that a caller can choose freely would grow
// without bound.
func (m *metrics) observe(route func(*http.Request) string, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		start, at, method := time.Now(), route(r), methodLabel(r.Method)
		answer := answerOf(w)
		defer func() {
			if answer.code == 0 { // Nothing written is an empty answer, or the connection is being cut.
				answer.code = http.StatusOK
			}
			m.httpCount.WithLabelValues(at, method, strconv.Itoa(answer.code)).Inc()
			m.httpSeconds.WithLabelValues(at).Observe(time.Since(start).Seconds())
		}()
		next.ServeHTTP(answer, r)
	})
}

// methodLabel is a method as the metrics and the log name it, out of a fixed set.
func methodLabel(method string) string {
	switch method {
	case http.MethodGet:
		return "get"
	case http.MethodPost:
		return "post"
	case http.MethodHead, http.MethodOptions, http.MethodPut, http.MethodDelete, http.MethodPatch,
		http.MethodTrace, http.MethodConnect:
		return strings.ToLower(method)
	}
	return "unknown"
}
