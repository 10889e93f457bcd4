package service

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"slices"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"github.com/grpc-ecosystem/grpc-gateway/v2/runtime"
	"google.golang.org/grpc"
	"google.golang.org/protobuf/encoding/protojson"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// What many callers at once get, beside what they get of bare servers that give the same
// answers: a grpc-go server, the gateway in one process with a handler that knows the
// answer, and net/http alone. All of it shares the machine with its callers. Taking turns
// of a fifth of a second, they see the same machine:
//
//	go test ./service -run '^$' -bench Saturated -benchtime 20x
//
// x-bare is the throughput with 64 callers as a share of the bare server's in the turn beside it, x-processor the
// processor's time for a call of the bare server and its callers as a share of that for one of
// ours: the same where the machine does nothing else, and much the same where it does. processors and
// bare-processors are how many of the machine's each had in its turns: where they differ, so does
// x-bare from x-processor, and where they are fewer than there are, other work had the rest. half-p50 and
// half-p99 are the times of calls at half of the own throughput, as multiples of the bare
// server's at the same number of calls a second.

const (
	saturating = 64
	turn       = 200 * time.Millisecond
)

// throughput is how many calls a second 64 callers get answered in a turn, and what a call
// takes of the processor, callers and server together.
func throughput(b *testing.B, call func() error) (perSecond, processor float64) {
	b.Helper()
	used := processorTime(b)
	var calls atomic.Int64
	var group sync.WaitGroup
	begin := time.Now()
	for range saturating {
		group.Go(func() {
			for time.Since(begin) < turn {
				if err := call(); err != nil {
					b.Error(err)
					return
				}
				calls.Add(1)
			}
		})
	}
	group.Wait()
	took := time.Since(begin)
	return float64(calls.Load()) / took.Seconds(), float64(processorTime(b)-used) / float64(calls.Load())
}

// processorTime is what the process has had of the processor so far.
func processorTime(b *testing.B) time.Duration {
	b.Helper()
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		b.Fatal(err)
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}

// paced asks so many times a second for a turn, whether or not answers have come, and
// gives the times from when a call was due.
func paced(b *testing.B, perSecond float64, call func() error) []time.Duration {
	b.Helper()
	due := make(chan time.Time, 1<<16)
	var mu sync.Mutex
	var took []time.Duration
	var group sync.WaitGroup
	for range saturating {
		group.Go(func() {
			for at := range due {
				if err := call(); err != nil {
					b.Error(err)
				}
				mu.Lock()
				took = append(took, time.Since(at))
				mu.Unlock()
			}
		})
	}
	ticks := time.NewTicker(time.Millisecond)
	defer ticks.Stop()
	begin, sent := time.Now(), 0
	for now := begin; now.Sub(begin) < turn; now = <-ticks.C {
		for ; float64(sent) < now.Sub(begin).Seconds()*perSecond; sent++ {
			due <- now
		}
	}
	close(due)
	group.Wait()
	return took
}

// quantile is of times in order.
func quantile(of []time.Duration, q float64) float64 {
	return float64(of[min(len(of)-1, int(q*float64(len(of))))])
}

// saturated reports the ratios of call to bare.
func saturated(b *testing.B, call, bare func() error) {
	b.Helper()
	throughput(b, call)
	throughput(b, bare)
	var own, ratios, shares, ownBusy, otherBusy []float64
	var ownTimes, otherTimes []time.Duration
	for turn := 0; b.Loop(); turn++ {
		var perSecond, processor, barePerSecond, bareProcessor float64
		if turn%2 == 0 { // neither always comes after a rest
			perSecond, processor = throughput(b, call)
			barePerSecond, bareProcessor = throughput(b, bare)
		} else {
			barePerSecond, bareProcessor = throughput(b, bare)
			perSecond, processor = throughput(b, call)
		}
		own, ratios, shares = append(own, perSecond), append(ratios, perSecond/barePerSecond), append(shares, bareProcessor/processor)
		ownBusy, otherBusy = append(ownBusy, perSecond*processor/1e9), append(otherBusy, barePerSecond*bareProcessor/1e9)
		half := perSecond / 2
		ownTimes, otherTimes = append(ownTimes, paced(b, half, call)...), append(otherTimes, paced(b, half, bare)...)
	}
	middle := func(list []float64) float64 { slices.Sort(list); return list[len(list)/2] }
	slices.Sort(ownTimes)
	slices.Sort(otherTimes)
	b.ReportMetric(middle(own), "calls/s")
	b.ReportMetric(middle(ratios), "x-bare")
	b.ReportMetric(middle(shares), "x-processor")
	b.ReportMetric(middle(ownBusy), "processors")
	b.ReportMetric(middle(otherBusy), "bare-processors")
	b.ReportMetric(quantile(ownTimes, 0.5)/quantile(otherTimes, 0.5), "half-p50")
	b.ReportMetric(quantile(ownTimes, 0.99)/quantile(otherTimes, 0.99), "half-p99")
	b.ReportMetric(0, "ns/op")
}

func BenchmarkSaturatedGRPC(b *testing.B) {
	server := benchServer(b)
	conn := benchDial(b, server.GRPCAddr())
	for _, q := range benchQuestions[:1] { // 64 yokes at once are refused, for the most part
		b.Run(q.name, func(b *testing.B) {
			answer := q.answer()
			if err := conn.Invoke(b.Context(), q.method, q.ask, answer); err != nil {
				b.Fatal(err)
			}
			echo := echoServer(b, q.ask, answer)
			saturated(b,
				func() error { return conn.Invoke(b.Context(), q.method, q.ask, q.answer()) },
				func() error { return echo.Invoke(b.Context(), "/echo/Echo", q.ask, q.answer()) })
		})
	}
}

// answering is a service whose answers are known.
type answering struct {
	knitmathv1.UnimplementedGaugeServiceServer
	castOn *knitmathv1.ComputeCastOnResponse
}

func (a *answering) ComputeCastOn(context.Context, *knitmathv1.ComputeCastOnRequest) (*knitmathv1.ComputeCastOnResponse, error) {
	return a.castOn, nil
}

// bareGateway answers as the service does, by the gateway alone.
func bareGateway(b *testing.B, conn *grpc.ClientConn) http.Handler {
	b.Helper()
	a := &answering{castOn: &knitmathv1.ComputeCastOnResponse{}}
	if err := conn.Invoke(b.Context(), benchQuestions[0].method, benchQuestions[0].ask, a.castOn); err != nil {
		b.Fatal(err)
	}
	mux := runtime.NewServeMux(runtime.WithMarshalerOption(runtime.MIMEWildcard, &runtime.JSONPb{
		MarshalOptions: protojson.MarshalOptions{UseProtoNames: true, EmitDefaultValues: true}}))
	if err := knitmathv1.RegisterGaugeServiceHandlerServer(b.Context(), mux, a); err != nil {
		b.Fatal(err)
	}
	return mux
}

func serveBare(b *testing.B, handler http.Handler) (url string) {
	b.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		b.Fatal(err)
	}
	server := &http.Server{Handler: handler}
	go func() { _ = server.Serve(listener) }()
	b.Cleanup(func() { _ = server.Close() })
	return "http://" + listener.Addr().String()
}

func BenchmarkSaturatedJSON(b *testing.B) {
	server := benchServer(b)
	gateway := serveBare(b, bareGateway(b, benchDial(b, server.GRPCAddr())))
	client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: 2 * saturating, DisableCompression: true}}
	defer client.CloseIdleConnections()
	for _, q := range benchQuestions[:1] { // 64 yokes at once are refused, for the most part
		body, err := protojson.Marshal(q.ask)
		if err != nil {
			b.Fatal(err)
		}
		post := func(url string) ([]byte, error) {
			resp, err := client.Post(url, jsonType, bytes.NewReader(body))
			if err != nil {
				return nil, err
			}
			answer, err := io.ReadAll(resp.Body)
			if resp.StatusCode != http.StatusOK {
				err = fmt.Errorf("HTTP %d %s", resp.StatusCode, answer)
			}
			return answer, errors.Join(err, resp.Body.Close())
		}
		asking := func(url string) func() error {
			return func() error { _, err := post(url); return err }
		}
		own := "http://" + server.HTTPAddr().String() + q.path
		answer, err := post(own)
		if err != nil {
			b.Fatal(err)
		}
		plain := serveBare(b, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			_, _ = io.Copy(io.Discard, r.Body)
			_, _ = w.Write(answer)
		}))
		b.Run(q.name+"/gateway", func(b *testing.B) { saturated(b, asking(own), asking(gateway+q.path)) })
		b.Run(q.name+"/nethttp", func(b *testing.B) { saturated(b, asking(own), asking(plain)) })
	}
}
