package service

import (
	"strings"
	"sync"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
)

// callMetrics are the figures of calls, whichever face they come by, under the names
// that stock dashboards for gRPC expect. The library that has them looks each up by its
// labels, five times a call, which was a tenth of what a short call takes; here a method
// finds its own once.
type callMetrics struct {
	started, handled, received, sent *prometheus.CounterVec
	seconds                          *prometheus.HistogramVec
	methods                          sync.Map // of *methodMetrics, by full method
}

// methodMetrics are those of one method.
type methodMetrics struct {
	started, received, sent prometheus.Counter
	handled                 [codes.Unauthenticated + 1]prometheus.Counter
	seconds                 prometheus.Observer
}

// The kinds of a method, as the label grpc_type has them: no stream here takes more than
// one message of its caller but those of reflection.
const (
	typeUnary        = "unary"
	typeServerStream = "server_stream"
	typeBidiStream   = "bidi_stream"
)

func newCallMetrics() *callMetrics {
	labels := []string{"grpc_type", "grpc_service", "grpc_method"}
	counter := func(name, help string, labels ...string) *prometheus.CounterVec {
		return prometheus.NewCounterVec(prometheus.CounterOpts{Name: name, Help: help}, labels)
	}
	return &callMetrics{
		started:  counter("grpc_server_started_total", "Calls begun.", labels...),
		handled:  counter("grpc_server_handled_total", "Calls ended, by how.", append(labels[:3:3], "grpc_code")...),
		received: counter("grpc_server_msg_received_total", "Messages that calls have brought.", labels...),
		sent:     counter("grpc_server_msg_sent_total", "Messages that calls have been answered with.", labels...),
		seconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "grpc_server_handling_seconds", Help: "Time from a call's beginning to its end.", Buckets: buckets}, labels),
	}
}

func (c *callMetrics) collectors() []prometheus.Collector {
	return []prometheus.Collector{c.started, c.handled, c.received, c.sent, c.seconds}
}

// expect makes the figures of all methods of a server.
func (c *callMetrics) expect(services map[string]grpc.ServiceInfo) {
	for name, service := range services {
		for _, m := range service.Methods {
			kind := typeUnary
			switch {
			case m.IsClientStream:
				kind = typeBidiStream
			case m.IsServerStream:
				kind = typeServerStream
			}
			c.of("/"+name+"/"+m.Name, kind)
		}
	}
}

// of finds the figures of a method that is registered; another's would be labels of a
// caller's own.
func (c *callMetrics) of(fullMethod, kind string) *methodMetrics {
	if found, ok := c.methods.Load(fullMethod); ok {
		return found.(*methodMetrics)
	}
	service, method, _ := strings.Cut(strings.TrimPrefix(fullMethod, "/"), "/")
	made := &methodMetrics{
		started:  c.started.WithLabelValues(kind, service, method),
		received: c.received.WithLabelValues(kind, service, method),
		sent:     c.sent.WithLabelValues(kind, service, method),
		seconds:  c.seconds.WithLabelValues(kind, service, method),
	}
	for code := range made.handled {
		made.handled[code] = c.handled.WithLabelValues(kind, service, method, codes.Code(code).String())
	}
	found, _ := c.methods.LoadOrStore(fullMethod, made)
	return found.(*methodMetrics)
}

// ended counts the end of a call; a code that is none of gRPC's is an unknown one.
func (m *methodMetrics) ended(code codes.Code, took time.Duration) {
	if int(code) >= len(m.handled) {
		code = codes.Unknown
	}
	m.handled[code].Inc()
	m.seconds.Observe(took.Seconds())
}

// countedStream counts the messages of a stream.
type countedStream struct {
	grpc.ServerStream
	figures *methodMetrics
}

func (s countedStream) SendMsg(m any) error {
	err := s.ServerStream.SendMsg(m)
	if err == nil {
		s.figures.sent.Inc()
	}
	return err
}

func (s countedStream) RecvMsg(m any) error {
	err := s.ServerStream.RecvMsg(m)
	if err == nil {
		s.figures.received.Inc()
	}
	return err
}
