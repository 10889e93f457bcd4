package service

import (
	"context"
	"errors"
	"log/slog"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
	"google.golang.org/grpc/metadata"
	reflectionv1 "google.golang.org/grpc/reflection/grpc_reflection_v1"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/carry"
)

// oddService has two methods that no real service has: one panics, one fails
// with an error the kernel does not know. It borrows the messages of
// ComputeCastOn.
type oddService struct{}

const secret = "the cause, which callers must not see"

var oddDesc = grpc.ServiceDesc{
	ServiceName: "knitmath.test.OddService",
	HandlerType: (*any)(nil),
	Methods: []grpc.MethodDesc{
		oddMethod("Panic", func(context.Context, any) (any, error) { panic(secret) }),
		oddMethod("Fail", func(context.Context, any) (any, error) { return nil, asFailure(errors.New(secret)) }),
		oddMethod("Metadata", func(ctx context.Context, _ any) (any, error) {
			md, _ := metadata.FromIncomingContext(ctx)
			return &knitmathv1.ComputeCastOnResponse{Summary: strings.Join(md.Get("colour"), "+")}, nil
		}),
	},
}

func oddMethod(name string, handle grpc.UnaryHandler) grpc.MethodDesc {
	return grpc.MethodDesc{MethodName: name, Handler: func(
		srv any, ctx context.Context, dec func(any) error, chain grpc.UnaryServerInterceptor) (any, error) {
		in := &knitmathv1.ComputeCastOnRequest{}
		if err := dec(in); err != nil {
			return nil, err
		}
		return chain(ctx, in, &grpc.UnaryServerInfo{Server: srv, FullMethod: "/knitmath.test.OddService/" + name}, handle)
	}}
}

func registerOdd(to grpc.ServiceRegistrar) { to.RegisterService(&oddDesc, oddService{}) }

// TestOurOwnFaults wants INTERNAL with constant text on the wire, and the cause
// in the log only.
func TestOurOwnFaults(t *testing.T) {
	server := start(t, registerOdd)
	m, err := newMetrics(prometheus.NewRegistry(), Release{}, slog.New(slog.DiscardHandler))
	if err != nil {
		t.Fatal(err)
	}
	unary, _ := interceptors(m, server.config.Logger)
	local := newInProcess(unary)
	registerOdd(local)
	for _, face := range []struct {
		name string
		conn grpc.ClientConnInterface
	}{{faceGRPC, server.conn}, {faceJSON, local}} {
		for _, method := range []string{"Panic", "Fail"} {
			err := face.conn.Invoke(t.Context(), "/knitmath.test.OddService/"+method,
				&knitmathv1.ComputeCastOnRequest{}, &knitmathv1.ComputeCastOnResponse{})
			st := status.Convert(err)
			if st.Code() != codes.Internal || st.Message() != internalText || len(st.Details()) != 0 {
				t.Errorf("%s over %s: %v", method, face.name, st)
			}
		}
	}
	log := server.log.String()
	if causes, panics := strings.Count(log, secret), strings.Count(log, "panic with a string"); causes != 1 || panics != 1 {
		t.Errorf("the log names the cause %d times, and %d panics:\n%s", causes, panics, log)
	}
	if got := strings.Count(log, "grpc_test.go"); got < 2 {
		t.Errorf("the log has no stack of the panics:\n%s", log)
	}
	// The server goes on.
	if err := server.conn.Invoke(t.Context(), "/knitmath.test.OddService/Metadata", &knitmathv1.ComputeCastOnRequest{},
		&knitmathv1.ComputeCastOnResponse{}); err != nil {
		t.Error(err)
	}
}

func TestInProcessCall(t *testing.T) {
	m, err := newMetrics(prometheus.NewRegistry(), Release{}, slog.New(slog.DiscardHandler))
	if err != nil {
		t.Fatal(err)
	}
	unary, _ := interceptors(m, slog.New(slog.DiscardHandler))
	local := newInProcess(unary)
	registerOdd(local)
	carry.Register(local)
	ask := func(ctx context.Context, method string, into proto.Message) error {
		return local.Invoke(ctx, method, &knitmathv1.ComputeCastOnRequest{WidthCm: proto.Float64(0)}, into)
	}
	var answer knitmathv1.ComputeCastOnResponse
	ended, cancel := context.WithCancel(t.Context())
	cancel()
	for _, c := range []struct {
		ctx    context.Context
		method string
		want   codes.Code
	}{
		{ended, "/knitmath.test.OddService/Metadata", codes.Canceled},
		{t.Context(), "/knitmath.test.OddService/Nothing", codes.Unimplemented},
		{t.Context(), "/knitmath.test.OddService/Metadata", codes.OK},
		{t.Context(), "/knitmath.v1.GaugeService/ComputeCastOn", codes.InvalidArgument},
	} {
		if err := ask(c.ctx, c.method, &answer); status.Code(err) != c.want {
			t.Errorf("%s: %v, want %v", c.method, err, c.want)
		}
	}
}

func TestErrorDetails(t *testing.T) {
	server := start(t)
	_, err := knitmathv1.NewGaugeServiceClient(server.conn).ComputeCastOn(t.Context(), &knitmathv1.ComputeCastOnRequest{})
	st := status.Convert(err)
	if st.Code() != codes.InvalidArgument || st.Message() != "the question has 3 faults" {
		t.Fatalf("%v", st)
	}
	info, ok := st.Details()[0].(*errdetails.ErrorInfo)
	if !ok || info.Reason != "INVALID_INPUT" || info.Domain != "knitmath.example.com" || len(info.Metadata) != 0 {
		t.Errorf("first detail is %v", st.Details()[0])
	}
	if want := []string{"gauge REQUIRED", "width_cm REQUIRED", "height_cm REQUIRED"}; !slices.Equal(violations(st), want) {
		t.Errorf("%q, want %q", violations(st), want)
	}
	if log := server.log.String(); !strings.Contains(log, "width_cm REQUIRED") || !strings.Contains(log, "code=InvalidArgument") {
		t.Errorf("the log does not name the fields:\n%s", log)
	}
}

// Bodies never reach the log, on neither face and by no fault.
func TestLogHasNoBodies(t *testing.T) {
	server := start(t)
	const words = "a name of my own"
	body := `{"pieces": [{"name": "` + words + `"}], "gauge": "` + words + `"}`
	server.send(t, "POST", "/v1/yarn:estimateYarn", body)
	server.send(t, "POST", "/v1/yarn:estimateYarn", `{"pieces": [{"name": "`+words+`"}]}`)
	_, _ = knitmathv1.NewYarnServiceClient(server.conn).EstimateYarn(t.Context(),
		&knitmathv1.EstimateYarnRequest{Pieces: []*knitmathv1.Piece{{Name: words}}})
	log := server.log.String()
	if strings.Contains(log, words) || strings.Count(log, "EstimateYarn") != 2 || !strings.Contains(log, "refused") {
		t.Errorf("log:\n%s", log)
	}
}

func TestOversizeMessage(t *testing.T) {
	server := start(t)
	client := knitmathv1.NewYarnServiceClient(server.conn)
	_, err := client.EstimateYarn(t.Context(), &knitmathv1.EstimateYarnRequest{
		Pieces: []*knitmathv1.Piece{{Name: strings.Repeat("x", maxQuestionBytes)}}})
	if status.Code(err) != codes.ResourceExhausted {
		t.Errorf("%v", err)
	}
	_, err = client.EstimateYarn(t.Context(), &knitmathv1.EstimateYarnRequest{
		Pieces: []*knitmathv1.Piece{{Name: strings.Repeat("x", maxQuestionBytes-100)}}})
	if status.Code(err) != codes.InvalidArgument {
		t.Errorf("just below the limit: %v", err)
	}
}

func TestReflectionListsServices(t *testing.T) {
	server := start(t)
	stream, err := reflectionv1.NewServerReflectionClient(server.conn).ServerReflectionInfo(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if err := stream.Send(&reflectionv1.ServerReflectionRequest{
		MessageRequest: &reflectionv1.ServerReflectionRequest_ListServices{}}); err != nil {
		t.Fatal(err)
	}
	resp, err := stream.Recv()
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, s := range resp.GetListServicesResponse().GetService() {
		names = append(names, s.Name)
	}
	want := []string{"grpc.health.v1.Health"}
	for _, service := range wireServices() {
		want = append(want, string(service.FullName()))
	}
	for _, name := range want {
		if !slices.Contains(names, name) {
			t.Errorf("%s is not among %q", name, names)
		}
	}
	if err := stream.CloseSend(); err != nil {
		t.Error(err)
	}
}

func TestHealthNamesEveryService(t *testing.T) {
	server := start(t)
	client := healthv1.NewHealthClient(server.conn)
	for _, name := range []string{"", "knitmath.v1.GaugeService", "knitmath.v1.YarnService"} {
		resp, err := client.Check(t.Context(), &healthv1.HealthCheckRequest{Service: name}, grpc.WaitForReady(true))
		if err != nil || resp.Status != healthv1.HealthCheckResponse_SERVING {
			t.Errorf("%q: %v %v", name, resp, err)
		}
	}
}

// Both faces at once, good and bad questions mixed; run with -race.
func TestConcurrentCalls(t *testing.T) {
	server := start(t)
	client := knitmathv1.NewYokeServiceClient(server.conn)
	var group sync.WaitGroup
	for i := range 16 {
		group.Go(func() {
			for j := range 20 {
				body := int32(100 + 10*i + j)
				resp, err := client.PlanCircularYoke(t.Context(), &knitmathv1.PlanCircularYokeRequest{
					Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body})
				if err != nil || resp.BodyStitches != body {
					t.Errorf("yoke of %d: %v %v", body, resp.GetBodyStitches(), err)
				}
				if got := server.send(t, "POST", castOnPath, castOnBody); got.code != 200 {
					t.Errorf("HTTP %d", got.code)
				}
				if got := server.send(t, "GET", castOnQuery+"&x=1", ""); got.code != 400 {
					t.Errorf("HTTP %d", got.code)
				}
			}
		})
	}
	group.Wait()
}
