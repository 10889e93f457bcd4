package service

import (
	"context"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/carry"
)

// frail is an answer that panics when it has been looked at often enough.
type frail struct {
	*knitmathv1.ComputeCastOnResponse
	looks int
}

func (f *frail) ProtoReflect() protoreflect.Message {
	if f.looks--; f.looks < 0 {
		panic(secret)
	}
	return f.ComputeCastOnResponse.ProtoReflect()
}

// A panic at any place of a gRPC call is INTERNAL and counted, and the process goes on.
func TestPanicsOfACall(t *testing.T) {
	server := start(t, func(to grpc.ServiceRegistrar) {
		answer := func(looks int) grpc.UnaryHandler {
			return func(context.Context, any) (any, error) {
				return &frail{&knitmathv1.ComputeCastOnResponse{}, looks}, nil
			}
		}
		to.RegisterService(&grpc.ServiceDesc{ServiceName: "knitmath.test.OddService", HandlerType: (*any)(nil), Methods: []grpc.MethodDesc{
			oddMethod("Panic", func(context.Context, any) (any, error) { panic(secret) }),
			oddMethod("BetweenInterceptors", answer(0)),
			oddMethod("Writing", answer(1)),
			oddMethod("Unwritable", func(context.Context, any) (any, error) { return &struct{}{}, nil }),
			{MethodName: "Decoding", Handler: func(_ any, _ context.Context, dec func(any) error, _ grpc.UnaryServerInterceptor) (any, error) {
				return nil, dec(&frail{&knitmathv1.ComputeCastOnResponse{}, 0})
			}},
		}}, oddService{})
	})
	for _, c := range []struct{ method, metric, label, at string }{
		{"Panic", "knitmath_panics_total", "where", whereCall},
		{"BetweenInterceptors", "knitmath_panics_total", "where", whereCall},
		{"Decoding", "knitmath_panics_total", "where", whereCall},
		{"Writing", "knitmath_panics_total", "where", whereAnswer},
		{"Unwritable", "knitmath_unwritten_answers_total", "face", faceGRPC},
	} {
		count := func() float64 { return value(gathered(t, server.registry), c.metric, c.label, c.at) }
		before := count()
		err := server.conn.Invoke(t.Context(), "/knitmath.test.OddService/"+c.method,
			&knitmathv1.ComputeCastOnRequest{WidthCm: new(1.0)}, &knitmathv1.ComputeCastOnResponse{})
		if st := status.Convert(err); st.Code() != codes.Internal || strings.Contains(st.Message(), secret) {
			t.Errorf("%s: %v", c.method, err)
		}
		if got := count(); got != before+1 {
			t.Errorf("%s: %s %s=%s went from %v to %v", c.method, c.metric, c.label, c.at, before, got)
		}
	}
	if log := server.log.String(); strings.Contains(log, secret) || strings.Count(log, "panic_place_test.go") < 4 {
		t.Errorf("log:\n%s", log)
	}
}

// A panic outside of every interceptor, which lies within the compression, is a 500 that says so,
// for callers who accept compression too; so is one in the admin face.
func TestPanicsOfHTTP(t *testing.T) {
	registry, log := prometheus.NewRegistry(), &lockedBuffer{}
	m, err := newMetrics(registry, Release{}, slog.New(slog.NewTextHandler(log, nil)))
	if err != nil {
		t.Fatal(err)
	}
	in := admission{gate: admit.NewGate(admit.DefaultLimits(2)), refusals: m.refusals}
	methods := newInProcess(func(context.Context, any, *grpc.UnaryServerInfo, grpc.UnaryHandler) (any, error) { panic(secret) })
	carry.Register(methods)
	made, err := newJSONFace(methods, m, callers{}, in, Config{})
	if err != nil {
		t.Fatal(err)
	}
	face := httptest.NewServer(made.whole(time.Hour, new(atomic.Bool)))
	defer face.Close()
	admin := httptest.NewServer(newAdminHandler(Config{Registry: registry, Logger: slog.New(slog.DiscardHandler)}, nil, m.faults))
	defer admin.Close()
	client := &running{http: testHTTPClient(t)}
	for _, accept := range []string{"gzip", "identity"} {
		for _, ask := range [][2]string{{"POST", castOnPath}, {"GET", castOnQuery}, {"HEAD", castOnQuery}} {
			body := ""
			if ask[0] == "POST" {
				body = castOnBody
			}
			got := client.sendTo(t, face.Listener.Addr().String(), ask[0], ask[1], body, "Accept-Encoding", accept)
			if got.code != http.StatusInternalServerError || ask[0] != "HEAD" && got.status(t).Message() != internalText {
				t.Errorf("%v, %s: HTTP %d %q", ask, accept, got.code, got.body)
			}
		}
	}
	if got := client.sendTo(t, admin.Listener.Addr().String(), "GET", "/readyz", ""); got.code != http.StatusInternalServerError {
		t.Errorf("admin: HTTP %d %q", got.code, got.body)
	}
	families := gathered(t, registry)
	for where, want := range map[string]float64{whereHTTP: 6, whereAdmin: 1} {
		if got := value(families, "knitmath_panics_total", "where", where); got != want {
			t.Errorf("%s: %v panics, want %v", where, got, want)
		}
	}
	if got := value(families, "http_requests_total", "code", "500"); got != 6 {
		t.Errorf("%v requests with 500", got)
	}
	if strings.Contains(log.String(), secret) {
		t.Errorf("log:\n%s", log)
	}
}
