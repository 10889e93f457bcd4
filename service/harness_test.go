package service

import (
	"bytes"
	"context"
	"io"
	"log/slog"
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/carry"

	spb "google.golang.org/genproto/googleapis/rpc/status"
)

// running is a real server on free loopback ports, with a client for each face.
type running struct {
	*Server
	registry *prometheus.Registry
	log      *lockedBuffer
	conn     *grpc.ClientConn
	http     *http.Client
	// stop ends the server and returns what Serve returned. What was counted and
	// logged is complete after that.
	stop func() error
}

// testRelease is what the tests' servers are said to be.
var testRelease = Release{Version: "v1.2.3-test", Commit: "0123456789abcdef0123456789abcdef01234567"}

// start serves until the test ends. extra registers more services.
func start(tb testing.TB, extra ...func(grpc.ServiceRegistrar)) *running {
	tb.Helper()
	return startAs(tb, testRelease, extra...)
}

// startAs is start with another release.
func startAs(tb testing.TB, release Release, extra ...func(grpc.ServiceRegistrar)) *running {
	tb.Helper()
	return startWith(tb, func(c *Config) { c.Release = release }, extra...)
}

// startWith is start with a configuration of its own.
func startWith(tb testing.TB, configure func(*Config), extra ...func(grpc.ServiceRegistrar)) *running {
	tb.Helper()
	r := &running{registry: prometheus.NewRegistry(), log: &lockedBuffer{}, http: testHTTPClient(tb)}
	config := Config{
		GRPCAddr: "127.0.0.1:0", HTTPAddr: "127.0.0.1:0", AdminAddr: "127.0.0.1:0",
		ShutdownTimeout: 10 * time.Second,
		Release:         testRelease,
		Logger:          slog.New(slog.NewTextHandler(r.log, nil)),
		Registry:        r.registry,
	}
	configure(&config)
	server, err := listen(config, func(to grpc.ServiceRegistrar) {
		carry.Register(to)
		for _, register := range extra {
			register(to)
		}
	})
	if err != nil {
		tb.Fatal(err)
	}
	r.Server = server
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx) }()
	r.conn, err = grpc.NewClient(server.GRPCAddr().String(), grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		tb.Fatal(err)
	}
	r.stop = sync.OnceValue(func() error {
		_ = r.conn.Close()
		r.http.CloseIdleConnections()
		cancel()
		return <-ended
	})
	tb.Cleanup(func() {
		if err := r.stop(); err != nil {
			tb.Errorf("Serve: %v", err)
		}
	})
	return r
}

// reply is an HTTP reply read to its end.
type reply struct {
	code   int
	header http.Header
	body   []byte
}

// send makes an HTTP request to the JSON face.
func (r *running) send(tb testing.TB, method, path, body string, header ...string) reply {
	tb.Helper()
	return r.sendTo(tb, r.HTTPAddr().String(), method, path, body, header...)
}

func (r *running) sendTo(tb testing.TB, addr, method, path, body string, header ...string) reply {
	tb.Helper()
	var reader io.Reader
	if body != "" {
		reader = strings.NewReader(body)
	}
	req, err := http.NewRequest(method, "http://"+addr+path, reader)
	if err != nil {
		tb.Fatal(err)
	}
	if body != "" {
		req.Header.Set("Content-Type", "application/json")
	}
	for i := 0; i < len(header); i += 2 {
		req.Header.Set(header[i], header[i+1])
	}
	resp, err := r.http.Do(req)
	if err != nil {
		tb.Fatal(err)
	}
	defer resp.Body.Close()
	data, err := io.ReadAll(resp.Body)
	if err != nil {
		tb.Fatal(err)
	}
	return reply{resp.StatusCode, resp.Header, data}
}

// status reads an error body.
func (p reply) status(tb testing.TB) *status.Status {
	tb.Helper()
	var st spb.Status
	if err := protojson.Unmarshal(p.body, &st); err != nil {
		tb.Fatalf("HTTP %d, not a status: %v\n%s", p.code, err, p.body)
	}
	return status.FromProto(&st)
}

// message reads an answer.
func (p reply) message(tb testing.TB, into proto.Message) {
	tb.Helper()
	if p.code != http.StatusOK {
		tb.Fatalf("HTTP %d: %s", p.code, p.body)
	}
	if err := protojson.Unmarshal(p.body, into); err != nil {
		tb.Fatalf("%v\n%s", err, p.body)
	}
}

// lockedBuffer is a log that may be read while it is written.
type lockedBuffer struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (l *lockedBuffer) Write(p []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.Write(p)
}

func (l *lockedBuffer) String() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.String()
}

// castOnBody and castOnPath are a question that has an answer.
const (
	castOnPath = "/v1/gauge:computeCastOn"
	castOnBody = `{"gauge": {"stitches": 22, "rows": 30}, "width_cm": 50}`
)

// testHTTPClient keeps no connection beyond the test, and accepts no compression
// that the test does not ask for.
func testHTTPClient(tb testing.TB) *http.Client {
	client := &http.Client{Transport: &http.Transport{DisableCompression: true}}
	tb.Cleanup(client.CloseIdleConnections)
	return client
}

// answerJSON is the form of answers, by another writer than the service's own.
var answerJSON = protojson.MarshalOptions{UseProtoNames: true, EmitDefaultValues: true}
