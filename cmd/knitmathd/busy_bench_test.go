package main

import (
	"fmt"
	"os"
	"strings"
	"sync"
	"testing"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/known/emptypb"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// BenchmarkBusy reports what a replica needs by which deploy/base is sized: processor
// time of the program alone per question over gRPC, asked by 32 callers at a time (the
// longest by 2, since it refuses more of them), and the most memory that it had
// resident:
//
//	go test ./cmd/knitmathd -run '^$' -bench Busy/cast -benchtime 20000x
//	go test ./cmd/knitmathd -run '^$' -bench Busy/wedge -benchtime 600x
func BenchmarkBusy(b *testing.B) {
	b.Setenv("GOMEMLIMIT", "512MiB") // as in deploy/base
	for _, c := range []struct {
		name, method string
		question     proto.Message
		callers      int
	}{
		{"cast-on", knitmathv1.GaugeService_ComputeCastOn_FullMethodName, &knitmathv1.ComputeCastOnRequest{
			Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(50.0)}, 32},
		{"wedge of 10,000 stitches", knitmathv1.ShortRowService_PlanWedge_FullMethodName, &knitmathv1.PlanWedgeRequest{
			WidthStitches: 10_000, RiseRows: new(int32(2000)), TallEnd: knitmathv1.TallEnd_TALL_END_SIDES,
			TurnMethod: knitmathv1.TurnMethod_TURN_METHOD_GERMAN, WithOutline: true, Gauge: &knitmathv1.Gauge{Stitches: 22, Rows: 30}}, 2},
	} {
		b.Run(c.name, func(b *testing.B) {
			p := serve(b)
			conn, err := grpc.NewClient(p.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
			if err != nil {
				b.Fatal(err)
			}
			defer conn.Close()
			before := processorSeconds(b, p.Process.Pid)
			var callers sync.WaitGroup
			questions := make(chan struct{})
			for range c.callers {
				callers.Go(func() {
					for range questions {
						// Answers are not looked at, and fit into no field of this one. What is
						// refused for load fails here.
						if err := conn.Invoke(b.Context(), c.method, c.question, &emptypb.Empty{}); err != nil {
							b.Error(err)
						}
					}
				})
			}
			n := 0
			for b.Loop() {
				questions <- struct{}{}
				n++
			}
			close(questions)
			callers.Wait()
			b.ReportMetric((processorSeconds(b, p.Process.Pid)-before)/float64(n)*1e6, "processor-us/question")
			b.ReportMetric(statusMiB(b, p.Process.Pid, "VmHWM"), "MiB-most")
		})
	}
}

// processorSeconds is what a process has used so far, where there is a /proc. A tick
// there is a hundredth of a second.
func processorSeconds(b *testing.B, pid int) float64 {
	b.Helper()
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	if err != nil {
		b.Skipf("processor time: %v", err)
	}
	// The name, in brackets, may have spaces; 11 fields after it come user and system.
	fields := strings.Fields(string(data[strings.LastIndexByte(string(data), ')')+1:]))
	var user, system float64
	if _, err := fmt.Sscan(fields[11]+" "+fields[12], &user, &system); err != nil {
		b.Fatal(err)
	}
	return (user + system) / 100
}
