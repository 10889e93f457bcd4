package trace

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/url"
	"os"
	"strings"

	"github.com/go-logr/logr"
	"go.opentelemetry.io/contrib/instrumentation/google.golang.org/grpc/otelgrpc"
	"go.opentelemetry.io/otel"
	"go.opentelemetry.io/otel/attribute"
	"go.opentelemetry.io/otel/codes"
	"go.opentelemetry.io/otel/exporters/otlp/otlptrace/otlptracehttp"
	"go.opentelemetry.io/otel/metric/noop"
	"go.opentelemetry.io/otel/propagation"
	"go.opentelemetry.io/otel/sdk/resource"
	sdktrace "go.opentelemetry.io/otel/sdk/trace"
	oteltrace "go.opentelemetry.io/otel/trace"
	"google.golang.org/grpc"
	"google.golang.org/grpc/stats"
)

// Tracing makes spans and sends them. A nil one makes none and costs nothing.
type Tracing struct {
	provider *sdktrace.TracerProvider
	tracer   oteltrace.Tracer
	context  propagation.TraceContext
}

// scope is what the spans of our own are said to come from.
const scope = "example.com/knitmath/service/trace"

// Start reads the standard variables, OTEL_..., and makes a Tracing if they name an
// endpoint; otherwise it is nil, and nothing has been installed. complain takes what
// goes wrong with the sending.
//
// Spans travel by OTLP over HTTP, which is the standard's default. The exporter over
// gRPC would be as good and 0.4 MB larger.
func Start(ctx context.Context, release string, logger *slog.Logger, complain func(error)) (*Tracing, error) {
	asked, err := wanted(os.Getenv)
	if !asked || err != nil {
		return nil, err
	}
	exporter, err := otlptracehttp.New(ctx) // Reads endpoint, headers, time-out, compression and certificates.
	if err != nil {
		return nil, fmt.Errorf("OTLP: %w", err)
	}
	about, err := resource.New(ctx,
		resource.WithAttributes(attribute.String("service.name", "knitmathd"), attribute.String("service.version", release)),
		resource.WithTelemetrySDK(),
		resource.WithFromEnv()) // Last, so that it wins.
	if err != nil {
		return nil, fmt.Errorf("OTEL_RESOURCE_ATTRIBUTES: %w", err)
	}
	// The library has one place for its complaints in a process.
	otel.SetErrorHandler(otel.ErrorHandlerFunc(complain))
	otel.SetLogger(logr.FromSlogHandler(logger.Handler()))
	// The sampler is the one that OTEL_TRACES_SAMPLER names; the queue is bounded, and
	// what does not fit is lost and not waited for.
	provider := sdktrace.NewTracerProvider(sdktrace.WithBatcher(exporter), sdktrace.WithResource(about))
	return &Tracing{provider: provider, tracer: provider.Tracer(scope)}, nil
}

// wanted tells whether the variables ask for traces. What they ask for and do not
// get is an error: whoever sets them counts on it.
func wanted(env func(string) string) (bool, error) {
	first := func(names ...string) (name, value string) {
		for _, name = range names {
			if value = env(name); value != "" {
				return name, value
			}
		}
		return name, ""
	}
	name, endpoint := first("OTEL_EXPORTER_OTLP_TRACES_ENDPOINT", "OTEL_EXPORTER_OTLP_ENDPOINT")
	exporter := env("OTEL_TRACES_EXPORTER")
	if strings.EqualFold(env("OTEL_SDK_DISABLED"), "true") || exporter == "none" || endpoint == "" {
		return false, nil
	}
	var faults []error
	if exporter != "" && exporter != "otlp" {
		faults = append(faults, fmt.Errorf("OTEL_TRACES_EXPORTER is %q; there are otlp and none", exporter))
	}
	if at, err := url.Parse(endpoint); err != nil || at.Host == "" || at.Scheme != "http" && at.Scheme != "https" {
		faults = append(faults, fmt.Errorf("%s is %q; must be a URL such as http://collector:4318", name, endpoint))
	}
	name, protocol := first("OTEL_EXPORTER_OTLP_TRACES_PROTOCOL", "OTEL_EXPORTER_OTLP_PROTOCOL")
	if protocol != "" && protocol != "http/protobuf" {
		faults = append(faults, fmt.Errorf("%s is %q; there is http/protobuf alone", name, protocol))
	}
	return len(faults) == 0, errors.Join(faults...)
}

// Stop sends what has not been sent yet, as long as ctx lets it.
func (t *Tracing) Stop(ctx context.Context) error {
	if t == nil {
		return nil
	}
	return t.provider.Shutdown(ctx)
}

// GRPC has a gRPC server make a span of each call of a method that known names. A
// method that does not exist has a name of the caller's own.
func (t *Tracing) GRPC(known func(method string) bool) []grpc.ServerOption {
	if t == nil {
		return nil
	}
	return []grpc.ServerOption{grpc.StatsHandler(otelgrpc.NewServerHandler(
		otelgrpc.WithTracerProvider(t.provider), otelgrpc.WithPropagators(t.context), otelgrpc.WithMeterProvider(noop.NewMeterProvider()),
		otelgrpc.WithFilter(func(info *stats.RPCTagInfo) bool { return known(info.FullMethodName) })))}
}

// Call begins the span of a call within the process; what is returned ends it.
func (t *Tracing) Call(ctx context.Context, method string) (context.Context, func(failed bool)) {
	if t == nil {
		return ctx, func(bool) {}
	}
	name := strings.TrimPrefix(method, "/")
	service, called, _ := strings.Cut(name, "/")
	ctx, span := t.tracer.Start(ctx, name, oteltrace.WithAttributes(
		attribute.String("rpc.system", "grpc"), attribute.String("rpc.service", service), attribute.String("rpc.method", called)))
	return ctx, func(failed bool) {
		if failed {
			span.SetStatus(codes.Error, "")
		}
		span.End()
	}
}
