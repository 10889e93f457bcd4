package service

import (
	"bytes"
	"context"
	"errors"
	"io"
	"log/slog"
	"net"
	"net/http"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/carry"
	"example.com/knitmath/service/garbage"
)

// What a call costs beside the least it could cost: an echo server on the same
// loopback device, in the same run, that reads a question of the same size and
// sends an answer of the same size, with no interceptor and no arithmetic. The
// ratio is reported as "x-echo"; it says more than the time, which is mostly the
// machine's.
//
//	go test ./service -run '^$' -bench .

var benchQuestions = []struct {
	name, method, path string
	ask                proto.Message
	answer             func() proto.Message
}{
	{"ComputeCastOn", "/knitmath.v1.GaugeService/ComputeCastOn", castOnPath,
		&knitmathv1.ComputeCastOnRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0),
			StitchRule: &knitmathv1.CountRule{Multiple: new(int32(4)), Remainder: new(int32(2))}},
		func() proto.Message { return &knitmathv1.ComputeCastOnResponse{} }},
	{"PlanCircularYoke", "/knitmath.v1.YokeService/PlanCircularYoke", "/v1/yoke:planCircularYoke",
		&knitmathv1.PlanCircularYokeRequest{Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200},
		func() proto.Message { return &knitmathv1.PlanCircularYokeResponse{} }},
}

// benchServer serves as main does, its log going nowhere. As there, garbage is collected seldom: what bare servers
// and callers leave, too, since all are one process.
func benchServer(b *testing.B) *Server {
	b.Helper()
	garbage.CollectSeldom()
	server, err := Listen(Config{GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0",
		ShutdownTimeout: time.Second, Logger: slog.New(slog.NewJSONHandler(io.Discard, nil)), Registry: prometheus.NewRegistry()})
	if err != nil {
		b.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	b.Cleanup(func() {
		cancel()
		if err := <-ended; err != nil {
			b.Error(err)
		}
	})
	return server
}

// echoServer answers every question with the same message.
func echoServer(b *testing.B, question, answer proto.Message) *grpc.ClientConn {
	b.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		b.Fatal(err)
	}
	server := grpc.NewServer()
	server.RegisterService(&grpc.ServiceDesc{ServiceName: "echo", HandlerType: (*any)(nil), Methods: []grpc.MethodDesc{
		{MethodName: "Echo", Handler: func(_ any, _ context.Context, dec func(any) error, _ grpc.UnaryServerInterceptor) (any, error) {
			return answer, dec(question.ProtoReflect().New().Interface())
		}}}}, oddService{})
	go func() { _ = server.Serve(listener) }()
	b.Cleanup(server.Stop)
	return benchDial(b, listener.Addr())
}

func benchDial(b *testing.B, addr net.Addr) *grpc.ClientConn {
	b.Helper()
	conn, err := grpc.NewClient(addr.String(), grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { _ = conn.Close() })
	return conn
}

// timed runs call for each iteration, and baseline beside it so that both see the
// same machine, taking turns at going first; it reports the ratio.
func timed(b *testing.B, unit string, call, baseline func() error) {
	b.Helper()
	took := func(f func() error) time.Duration {
		begin := time.Now()
		if err := f(); err != nil {
			b.Fatal(err)
		}
		return time.Since(begin)
	}
	for range 200 { // connections, pools and branch predictors warm up
		took(call)
		took(baseline)
	}
	var own, other time.Duration
	n := 0
	for b.Loop() {
		if n++; n%2 == 0 {
			own += took(call)
			other += took(baseline)
		} else {
			other += took(baseline)
			own += took(call)
		}
	}
	b.ReportMetric(float64(own)/float64(other), unit)
	b.ReportMetric(float64(own.Nanoseconds())/float64(n), "ns/call")
	b.ReportMetric(0, "ns/op") // the sum of both says nothing
}

func BenchmarkGRPC(b *testing.B) {
	server := benchServer(b)
	conn := benchDial(b, server.GRPCAddr())
	for _, q := range benchQuestions {
		b.Run(q.name, func(b *testing.B) {
			answer := q.answer()
			call := func() error { return conn.Invoke(b.Context(), q.method, q.ask, answer) }
			if err := call(); err != nil {
				b.Fatal(err)
			}
			echo, same := echoServer(b, q.ask, proto.Clone(answer)), q.answer()
			timed(b, "x-echo", call, func() error { return echo.Invoke(b.Context(), "/echo/Echo", q.ask, same) })
		})
	}
}

// BenchmarkJSON sets a JSON call beside a bare HTTP handler that reads and writes
// as many bytes.
func BenchmarkJSON(b *testing.B) {
	server := benchServer(b)
	client := testHTTPClient(b)
	for _, q := range benchQuestions {
		b.Run(q.name, func(b *testing.B) {
			body, err := protojson.Marshal(q.ask)
			if err != nil {
				b.Fatal(err)
			}
			var answer []byte
			post := func(url string) error {
				resp, err := client.Post(url, jsonType, bytes.NewReader(body))
				if err != nil {
					return err
				}
				answer, err = io.ReadAll(resp.Body)
				return errors.Join(err, resp.Body.Close())
			}
			own := "http://" + server.HTTPAddr().String() + q.path
			if err := post(own); err != nil {
				b.Fatal(err)
			}
			same := bytes.Clone(answer)
			listener, err := net.Listen("tcp", "127.0.0.1:0")
			if err != nil {
				b.Fatal(err)
			}
			echo := &http.Server{Handler: http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				_, _ = io.Copy(io.Discard, r.Body)
				_, _ = w.Write(same)
			})}
			go func() { _ = echo.Serve(listener) }()
			b.Cleanup(func() { _ = echo.Close() })
			timed(b, "x-echo", func() error { return post(own) }, func() error { return post("http://" + listener.Addr().String()) })
		})
	}
}

// BenchmarkGatewayHop sets a call through the gateway's in-process connection
// beside the same call dialled to the gRPC server, which is what the gateway
// would otherwise do for every JSON call.
func BenchmarkGatewayHop(b *testing.B) {
	server := benchServer(b)
	dialled := benchDial(b, server.GRPCAddr())
	m, err := newMetrics(prometheus.NewRegistry(), Release{}, slog.New(slog.DiscardHandler))
	if err != nil {
		b.Fatal(err)
	}
	unary, _ := interceptors(m, server.config.Logger)
	local := newInProcess(unary)
	carry.Register(local)
	for _, q := range benchQuestions {
		b.Run(q.name, func(b *testing.B) {
			ask := func(conn grpc.ClientConnInterface) func() error {
				return func() error { return conn.Invoke(b.Context(), q.method, q.ask, q.answer()) }
			}
			timed(b, "x-inprocess", ask(dialled), ask(local))
		})
	}
}
