package main

import (
	"bytes"
	"compress/gzip"
	"context"
	"encoding/hex"
	"errors"
	"io"
	"net/http"
	"net/http/httptest"
	"os/exec"
	"strings"
	"sync"
	"syscall"
	"testing"

	collector "go.opentelemetry.io/proto/otlp/collector/trace/v1"
	traces "go.opentelemetry.io/proto/otlp/trace/v1"
	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/metadata"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// receiver takes spans as a collector does.
type receiver struct {
	*httptest.Server
	mu    sync.Mutex
	spans []*traces.Span
	// said is everything received, as text.
	said strings.Builder
}

func receive(t *testing.T) *receiver {
	t.Helper()
	r := &receiver{}
	r.Server = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, req *http.Request) {
		var body io.Reader = req.Body
		if req.Header.Get("Content-Encoding") == "gzip" {
			z, err := gzip.NewReader(body)
			if err != nil {
				t.Error(err)
				return
			}
			body = z
		}
		data, err := io.ReadAll(body)
		var sent collector.ExportTraceServiceRequest
		err = errors.Join(err, proto.Unmarshal(data, &sent))
		if err != nil || req.URL.Path != "/v1/traces" || req.Header.Get("Api-Key") != "s3cret" {
			t.Errorf("%s %v: %v", req.URL.Path, req.Header, err)
		}
		r.mu.Lock()
		defer r.mu.Unlock()
		for _, of := range sent.GetResourceSpans() {
			r.said.WriteString(of.String())
			for _, in := range of.GetScopeSpans() {
				r.spans = append(r.spans, in.GetSpans()...)
			}
		}
		w.Header().Set("Content-Type", "application/x-protobuf")
	}))
	t.Cleanup(r.Close)
	return r
}

// span is the one of a name and a kind.
func (r *receiver) span(t *testing.T, trace, name string, kind traces.Span_SpanKind) *traces.Span {
	t.Helper()
	var found *traces.Span
	for _, s := range r.spans {
		if s.GetName() == name && s.GetKind() == kind && hex.EncodeToString(s.GetTraceId()) == trace {
			if found != nil {
				t.Errorf("two spans %s of trace %s", name, trace)
			}
			found = s
		}
	}
	if found == nil {
		t.Fatalf("no span %s of trace %s in:\n%s", name, trace, r.said.String())
	}
	return found
}

const (
	traceOfJSON = "0af7651916cd43dd8448eb211c80319c"
	traceOfGRPC = "0af7651916cd43dd8448eb211c80319d"
	callersSpan = "b7ad6b7169203331"
)

// askTraced asks on both faces, and for what is no question, as parts of traces of the caller.
func askTraced(t *testing.T, p *process) {
	t.Helper()
	for _, c := range [][2]string{
		{"POST", "/v1/gauge:computeCastOn"},
		{"GET", "/v1/gauge:computeGauge?dear_diary=1"},
		{"GET", "/dear/diary"},
		{"GET", "/version"},
	} {
		req, err := http.NewRequest(c[0], "http://"+p.HTTP+c[1], strings.NewReader(""))
		if c[0] == "POST" {
			req, err = http.NewRequest(c[0], "http://"+p.HTTP+c[1], strings.NewReader(`{"gauge": {"stitches": 22.125, "rows": 30}, "width_cm": -3}`))
		}
		if err != nil {
			t.Fatal(err)
		}
		req.Header.Set("Traceparent", "00-"+traceOfJSON+"-"+callersSpan+"-01")
		resp, err := http.DefaultClient.Do(req)
		if err != nil {
			t.Fatal(err)
		}
		_, _ = io.Copy(io.Discard, resp.Body)
		_ = resp.Body.Close()
	}
	http.DefaultClient.CloseIdleConnections()
	conn, err := grpc.NewClient(p.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	ctx := metadata.AppendToOutgoingContext(context.Background(), "traceparent", "00-"+traceOfGRPC+"-"+callersSpan+"-01")
	question := &knitmathv1.EstimateYarnRequest{Pieces: []*knitmathv1.Piece{{Name: "dear diary"}}}
	_, _ = knitmathv1.NewYarnServiceClient(conn).EstimateYarn(ctx, question)
	_ = conn.Invoke(ctx, "/dear.Diary/Write", question, &knitmathv1.EstimateYarnResponse{})
}

func end(t *testing.T, p *process) (log string) {
	t.Helper()
	if err := p.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	log = p.rest()
	if err := p.Wait(); err != nil {
		t.Errorf("%v\n%s", err, log)
	}
	return log
}

// A collector that the standard variables name gets the spans of questions, as parts
// of the callers' traces, with nothing of what they say; the log names the traces.
func TestTraces(t *testing.T) {
	r := receive(t)
	t.Setenv("OTEL_EXPORTER_OTLP_ENDPOINT", r.URL)
	t.Setenv("OTEL_EXPORTER_OTLP_HEADERS", "api-key=s3cret")
	t.Setenv("OTEL_EXPORTER_OTLP_COMPRESSION", "gzip")
	t.Setenv("OTEL_RESOURCE_ATTRIBUTES", "deployment.environment.name=test")
	p := serve(t, "-shutdown-timeout", "200ms")
	askTraced(t, p)
	log := end(t, p)
	r.mu.Lock()
	defer r.mu.Unlock()

	request := r.span(t, traceOfJSON, "POST /v1/gauge:computeCastOn", traces.Span_SPAN_KIND_SERVER)
	call := r.span(t, traceOfJSON, "knitmath.v1.GaugeService/ComputeCastOn", traces.Span_SPAN_KIND_INTERNAL)
	overGRPC := r.span(t, traceOfGRPC, "knitmath.v1.YarnService/EstimateYarn", traces.Span_SPAN_KIND_SERVER)
	r.span(t, traceOfJSON, "GET /v1/gauge:computeGauge", traces.Span_SPAN_KIND_SERVER)
	if hex.EncodeToString(request.GetParentSpanId()) != callersSpan || hex.EncodeToString(overGRPC.GetParentSpanId()) != callersSpan ||
		!bytes.Equal(call.GetParentSpanId(), request.GetSpanId()) {
		t.Errorf("parents: %v, %v, %v", request, call, overGRPC)
	}
	if len(r.spans) != 4 {
		t.Errorf("%d spans, want 4: probes, pages and what does not exist have none", len(r.spans))
	}
	said := r.said.String()
	for _, say := range []string{"knitmathd", "deployment.environment.name", "service.version", "http.request.method",
		"http.response.status_code", "int_value:400"} {
		if !strings.Contains(said, say) {
			t.Errorf("the spans do not say %s", say)
		}
	}
	for _, word := range []string{"diary", "22.125", "width_cm"} {
		if strings.Contains(said, word) || strings.Contains(log, word) && word != "width_cm" {
			t.Errorf("spans or log say %q:\n%s\n%s", word, said, log)
		}
	}
	for _, id := range []string{traceOfJSON, traceOfGRPC} {
		if !strings.Contains(log, `"trace_id":"`+id+`"`) {
			t.Errorf("the log does not name trace %s:\n%s", id, log)
		}
	}
}

// Nothing is sent, and no trace followed, where nobody has asked for it; and what is
// asked for and cannot be had is said at the start.
func TestTracesAreOff(t *testing.T) {
	r := receive(t)
	for _, env := range [][2]string{{"OTEL_SERVICE_NAME", "knit"}, {"OTEL_SDK_DISABLED", "true"}, {"OTEL_TRACES_EXPORTER", "none"}} {
		t.Setenv(env[0], env[1])
		p := serve(t, "-shutdown-timeout", "200ms")
		askTraced(t, p)
		if log := end(t, p); strings.Contains(log, "trace_id") {
			t.Errorf("%s: %s", env[0], log)
		}
		t.Setenv("OTEL_EXPORTER_OTLP_ENDPOINT", r.URL)
	}
	if len(r.spans) > 0 {
		t.Errorf("%d spans", len(r.spans))
	}
	t.Setenv("OTEL_TRACES_EXPORTER", "console")
	t.Setenv("OTEL_SDK_DISABLED", "")
	path, err := binary()
	if err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(path, "-grpc-addr", "127.0.0.1:0").CombinedOutput()
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != exitFailed || !strings.Contains(string(out), "OTEL_TRACES_EXPORTER") {
		t.Errorf("%v: %s", err, out)
	}
}

// A collector that is not there costs no answer, and its absence is told in lines of
// the log's own form.
func TestCollectorIsGone(t *testing.T) {
	r := receive(t)
	r.Close()
	t.Setenv("OTEL_EXPORTER_OTLP_ENDPOINT", r.URL)
	t.Setenv("OTEL_BSP_SCHEDULE_DELAY", "10")
	p := serve(t, "-shutdown-timeout", "200ms")
	askTraced(t, p)
	log := end(t, p)
	for _, line := range strings.Split(log, "\n") {
		if !strings.HasPrefix(line, "{") {
			t.Errorf("not of the form: %s", line)
		}
	}
	if !strings.Contains(log, `"library":"opentelemetry"`) || !strings.Contains(log, `"msg":"stopped"`) {
		t.Errorf("log:\n%s", log)
	}
}
