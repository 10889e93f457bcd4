package service

import (
	"context"
	"net/http"
	"strconv"
	"strings"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
)

// metrics are the figures of both faces, named as stock dashboards expect them.
type metrics struct {
	started     *prometheus.CounterVec
	handled     *prometheus.CounterVec
	seconds     *prometheus.HistogramVec
	httpCount   *prometheus.CounterVec
	httpSeconds *prometheus.HistogramVec
}

// buckets of time run from a tenth of a millisecond, since most sums take less
// than that, to a second, which none may take.
var buckets = []float64{.0001, .00025, .0005, .001, .0025, .005, .01, .025, .05, .1, .25, .5, 1}

// newMetrics registers the figures, those of the Go runtime and those of the
// process with reg.
func newMetrics(reg prometheus.Registerer) (*metrics, error) {
	call := []string{"grpc_type", "grpc_service", "grpc_method"}
	page := []string{"method", "code", "route"}
	m := &metrics{
		started: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "grpc_server_started_total", Help: "Calls begun, over gRPC or JSON."}, call),
		handled: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "grpc_server_handled_total", Help: "Calls ended, by code."}, append(call, "grpc_code")),
		seconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "grpc_server_handling_seconds", Help: "Time taken by calls.", Buckets: buckets}, call),
		httpCount: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "http_requests_total", Help: "HTTP requests answered."}, page),
		httpSeconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "http_request_duration_seconds", Help: "Time taken by HTTP requests.", Buckets: buckets}, page),
	}
	for _, c := range []prometheus.Collector{
		m.started, m.handled, m.seconds, m.httpCount, m.httpSeconds,
		collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}),
		collectors.NewBuildInfoCollector(),
	} {
		if err := reg.Register(c); err != nil {
			return nil, err
		}
	}
	return m, nil
}

// expect makes the counters of a service's methods exist from the start, so that
// a rate over them is 0 and not absent before the first call, and the first fault
// of the service's own is seen as an increase.
func (m *metrics) expect(services map[string]grpc.ServiceInfo) {
	for service, info := range services {
		for _, method := range info.Methods {
			kind := callType(method.IsClientStream, method.IsServerStream)
			m.started.WithLabelValues(kind, service, method.Name)
			m.handled.WithLabelValues(kind, service, method.Name, codes.OK.String())
			m.handled.WithLabelValues(kind, service, method.Name, codes.Internal.String())
			m.seconds.WithLabelValues(kind, service, method.Name)
		}
	}
}

func (m *metrics) unary(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (resp any, err error) {
	err = m.call("unary", info.FullMethod, func() error {
		resp, err = handler(ctx, req)
		return err
	})
	return resp, err
}

func (m *metrics) stream(info *grpc.StreamServerInfo, call func() error) error {
	return m.call(callType(info.IsClientStream, info.IsServerStream), info.FullMethod, call)
}

func (m *metrics) call(kind, fullMethod string, call func() error) error {
	service, method, _ := strings.Cut(strings.TrimPrefix(fullMethod, "/"), "/")
	m.started.WithLabelValues(kind, service, method).Inc()
	start := time.Now()
	err := call()
	m.handled.WithLabelValues(kind, service, method, status.Code(err).String()).Inc()
	m.seconds.WithLabelValues(kind, service, method).Observe(time.Since(start).Seconds())
	return err
}

func callType(clientStream, serverStream bool) string {
	switch {
	case clientStream && serverStream:
		return "bidi_stream"
	case clientStream:
		return "client_stream"
	case serverStream:
		return "server_stream"
	}
	return "unary"
}

// observe counts and times every request to next. route names the request's
// path out of a fixed set: a label that a caller can choose freely would grow
// without bound.
func (m *metrics) observe(route func(*http.Request) string, next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		start, method, label := time.Now(), methodLabel(r.Method), route(r)
		out := &codeRecorder{ResponseWriter: w, code: http.StatusOK}
		defer func() {
			code := strconv.Itoa(out.code)
			m.httpCount.WithLabelValues(method, code, label).Inc()
			m.httpSeconds.WithLabelValues(method, code, label).Observe(time.Since(start).Seconds())
		}()
		next.ServeHTTP(out, r)
	})
}

func methodLabel(method string) string {
	switch method {
	case http.MethodGet, http.MethodHead, http.MethodPost, http.MethodPut, http.MethodPatch,
		http.MethodDelete, http.MethodOptions:
		return method
	}
	return "other"
}

// codeRecorder remembers the status code of a reply.
type codeRecorder struct {
	http.ResponseWriter
	code int
}

func (c *codeRecorder) WriteHeader(code int) {
	c.code = code
	c.ResponseWriter.WriteHeader(code)
}

// Unwrap lets http.ResponseController reach the connection.
func (c *codeRecorder) Unwrap() http.ResponseWriter { return c.ResponseWriter }
