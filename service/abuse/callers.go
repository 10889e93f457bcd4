package abuse

import (
	"context"
	"errors"
	"io"
	"net/http"
	"strings"
	"sync"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/types/known/emptypb"
)

const waitStep = 200 * time.Millisecond

// dearCallers ask the dearest question and read the answer, as usual clients do, and
// ask again at once, or in a second when they were refused.
func dearCallers(face string) func(context.Context, Addresses, int) Beside {
	return callersOf(face, func(int) question { return longWedge })
}

// lightCallers ask a light question likewise.
func lightCallers(face string) func(context.Context, Addresses, int) Beside {
	return callersOf(face, func(int) question { return castOn })
}

// callersOf ask what next gives each of them.
func callersOf(face string, next func(i int) question) func(context.Context, Addresses, int) Beside {
	return func(ctx context.Context, at Addresses, size int) (b Beside) {
		ask, end := askerOf(face, at, max(size/50, 1))
		defer end()
		var mu sync.Mutex
		var took []time.Duration
		many(ctx, size, func(ctx context.Context, i int) {
			for ctx.Err() == nil {
				begin := time.Now()
				err := ask(ctx, next(i), i)
				if isWrong(err) {
					err = nil
				}
				if ctx.Err() != nil {
					return // Cut off by ourselves.
				}
				mu.Lock()
				took = b.count(took, begin, err)
				mu.Unlock()
				if err != nil {
					return
				}
			}
		})
		b.times(took)
		return b
	}
}

// asker asks a question, on one of some connections.
type asker func(ctx context.Context, q question, i int) error

// askerOf is a usual client of a face, with so many connections for gRPC.
func askerOf(face string, at Addresses, connections int) (ask asker, end func()) {
	if face == faceJSON {
		client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: 10_000}}
		return func(ctx context.Context, q question, _ int) error { return askJSON(ctx, client, "http://"+at.HTTP, q) },
			client.CloseIdleConnections
	}
	conns := make([]*grpc.ClientConn, connections)
	for i := range conns {
		// An address that can be dialled; nothing is dialled before the first call.
		conns[i], _ = grpc.NewClient("passthrough:///"+at.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
	}
	ask = func(ctx context.Context, q question, i int) error {
		// Whatever is answered fits a message without fields.
		return conns[i%len(conns)].Invoke(ctx, q.method, q.message, &emptypb.Empty{})
	}
	return ask, func() {
		for _, c := range conns {
			_ = c.Close()
		}
	}
}

// refusedError is the answer of a service that did not answer.
type refusedError int

func (r refusedError) Error() string { return http.StatusText(int(r)) }

func askJSON(ctx context.Context, client *http.Client, base string, q question) error {
	req, err := http.NewRequestWithContext(ctx, http.MethodPost, base+q.path, strings.NewReader(q.json))
	if err != nil {
		return err
	}
	resp, err := client.Do(req)
	if err != nil {
		return err
	}
	defer resp.Body.Close()
	if _, err := io.Copy(io.Discard, resp.Body); err != nil {
		return err
	}
	if resp.StatusCode != http.StatusOK {
		return refusedError(resp.StatusCode)
	}
	return nil
}

// isRefusal says whether the service has refused for want of room, and not failed.
func isRefusal(err error) bool {
	var code refusedError
	if errors.As(err, &code) {
		return code == http.StatusTooManyRequests
	}
	return status.Code(err) == codes.ResourceExhausted
}
