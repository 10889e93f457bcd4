package trace

import (
	"net/http"

	"go.opentelemetry.io/otel/attribute"
	"go.opentelemetry.io/otel/codes"
	"go.opentelemetry.io/otel/propagation"
	oteltrace "go.opentelemetry.io/otel/trace"
)

// HTTP makes a span of each request to next whose path known names, with the attributes
// that the conventions of OpenTelemetry ask of a server. otelhttp does as much, and wraps
// writers in 1.7 MB of code, one kind for each set of optional interfaces; what is
// answered here needs none of them.
func (t *Tracing) HTTP(next http.Handler, known func(path string) bool) http.Handler {
	if t == nil {
		return next
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !known(r.URL.Path) {
			next.ServeHTTP(w, r)
			return
		}
		method, name := r.Method, r.Method+" "+r.URL.Path
		if method != http.MethodGet && method != http.MethodHead && method != http.MethodPost {
			method, name = "_OTHER", r.URL.Path // of which none is answered
		}
		scheme := "http"
		if r.TLS != nil {
			scheme = "https"
		}
		ctx := t.context.Extract(r.Context(), propagation.HeaderCarrier(r.Header))
		ctx, span := t.tracer.Start(ctx, name, oteltrace.WithSpanKind(oteltrace.SpanKindServer), oteltrace.WithAttributes(
			attribute.String("http.request.method", method), attribute.String("http.route", r.URL.Path),
			attribute.String("url.path", r.URL.Path), attribute.String("url.scheme", scheme)))
		defer span.End()
		answer := &answerCode{ResponseWriter: w, code: http.StatusOK}
		next.ServeHTTP(answer, r.WithContext(ctx))
		span.SetAttributes(attribute.Int("http.response.status_code", answer.code))
		if answer.code >= http.StatusInternalServerError {
			span.SetStatus(codes.Error, "")
		}
	})
}

// answerCode knows with what code was answered.
type answerCode struct {
	http.ResponseWriter
	code int
}

// WriteHeader notes the code, but for those that announce another.
func (a *answerCode) WriteHeader(code int) {
	if code >= http.StatusOK {
		a.code = code
	}
	a.ResponseWriter.WriteHeader(code)
}

// Unwrap lets http.ResponseController reach the connection.
func (a *answerCode) Unwrap() http.ResponseWriter { return a.ResponseWriter }
