package abuse

import (
	"context"
	"net/http"
	"slices"
	"time"

	healthv1 "google.golang.org/grpc/health/grpc_health_v1"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
)

// Beside is how those were answered who did nothing wrong.
type Beside struct {
	Asked, Refused, Failed int
	P50, P99, Longest      time.Duration // of what was answered
	// Processor is what the process that asked took of it for an answer, where it did
	// nothing else.
	Processor time.Duration
}

// Answered is how many questions were answered.
func (b Beside) Answered() int { return b.Asked - b.Refused - b.Failed }

// Light asks light questions on both faces, one after the other, as long as ctx
// lasts. What is refused is counted, and what fails otherwise; began is called when
// both faces have been asked once.
func Light(ctx context.Context, at Addresses, began func()) Beside {
	var b Beside
	var took []time.Duration
	json, endJSON := askerOf(faceJSON, at, 1)
	defer endJSON()
	rpc, endRPC := askerOf(faceGRPC, at, 1)
	defer endRPC()
	for ctx.Err() == nil {
		for _, ask := range []asker{json, rpc} {
			begin := time.Now()
			// Asked to its end even if ctx is done meanwhile.
			err := ask(context.WithoutCancel(ctx), castOn, 0)
			took = b.count(took, begin, err)
		}
		if b.Asked == 2 {
			began()
		}
		pause(ctx, 5*time.Millisecond)
	}
	b.times(took)
	return b
}

// Probes asks what clusters ask, on the admin face and over gRPC.
func Probes(ctx context.Context, at Addresses) Beside {
	var b Beside
	var took []time.Duration
	conn, err := grpc.NewClient("passthrough:///"+at.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		return Beside{Failed: 1}
	}
	defer conn.Close()
	health := healthv1.NewHealthClient(conn)
	for ctx.Err() == nil {
		asked := []func() bool{
			func() bool { return served("http://" + at.Admin + "/readyz") },
			func() bool { return served("http://" + at.Admin + "/metrics") },
			func() bool {
				said, err := health.Check(context.WithoutCancel(ctx), &healthv1.HealthCheckRequest{})
				return err == nil && said.Status == healthv1.HealthCheckResponse_SERVING
			},
		}
		for _, ask := range asked {
			begin := time.Now()
			b.Asked++
			if !ask() {
				b.Failed++
				continue
			}
			took = append(took, time.Since(begin))
		}
		pause(ctx, waitStep)
	}
	b.times(took)
	return b
}

func served(url string) bool {
	resp, err := http.Get(url)
	if err != nil {
		return false
	}
	_ = resp.Body.Close()
	return resp.StatusCode == http.StatusOK
}

// count counts a question and how it was answered.
func (b *Beside) count(took []time.Duration, begin time.Time, err error) []time.Duration {
	b.Asked++
	switch {
	case err == nil:
		return append(took, time.Since(begin))
	case isRefusal(err):
		b.Refused++
	default:
		b.Failed++
	}
	return took
}

func (b *Beside) times(took []time.Duration) {
	if len(took) == 0 {
		return
	}
	slices.Sort(took)
	b.P50, b.P99, b.Longest = took[len(took)/2], took[len(took)*99/100], took[len(took)-1]
}
