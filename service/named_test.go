package service

import (
	"strings"
	"testing"

	"google.golang.org/grpc"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/metadata"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/trace"
)

// Every answer has the request id that was asked for, or one of ours, on both faces
// and whatever the answer is; the log has the same.
func TestRequestID(t *testing.T) {
	server := start(t)
	for _, c := range []struct {
		asked string
		taken bool
	}{{"order-66", true}, {"", false}, {"dear diary", false}, {strings.Repeat("x", 100), false}} {
		for _, path := range []string{castOnQuery, castOnPath, "/nothing", "/version"} {
			var header []string
			if c.asked != "" {
				header = []string{trace.IDHeader, c.asked}
			}
			got := server.send(t, "GET", path, "", header...).header.Get(trace.IDHeader)
			if got == "" || c.taken != (got == c.asked) {
				t.Errorf("%q at %s: answered %q", c.asked, path, got)
			}
			if path == "/nothing" && !strings.Contains(server.log.String(), "request_id="+got) {
				t.Errorf("%s is not in the log:\n%s", got, server.log)
			}
		}
		ctx := t.Context()
		if c.asked != "" {
			ctx = metadata.AppendToOutgoingContext(ctx, trace.IDMetadata, c.asked)
		}
		var header, trailer metadata.MD
		_, _ = knitmathv1.NewGaugeServiceClient(server.conn).ComputeCastOn(ctx, &knitmathv1.ComputeCastOnRequest{}, grpc.Trailer(&trailer))
		got := strings.Join(trailer.Get(trace.IDMetadata), " and ")
		if got == "" || c.taken != (got == c.asked) || !strings.Contains(server.log.String(), "request_id="+got) {
			t.Errorf("%q over gRPC: answered %q", c.asked, got)
		}
		watch, err := healthv1.NewHealthClient(server.conn).Watch(ctx, &healthv1.HealthCheckRequest{})
		if err != nil {
			t.Fatal(err)
		}
		if header, err = watch.Header(); err != nil || c.taken != (strings.Join(header.Get(trace.IDMetadata), " and ") == c.asked) {
			t.Errorf("%q of a stream: %v, %v", c.asked, header, err)
		}
	}
	if strings.Contains(server.log.String(), "diary") {
		t.Errorf("the log has an id that was not taken:\n%s", server.log)
	}
}
