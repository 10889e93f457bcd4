package main

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
)

// binary builds the command once, as it is shipped.
var binary = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", "knitmathd")
	if err != nil {
		return "", err
	}
	path := filepath.Join(dir, "knitmathd")
	out, err := exec.Command("go", "build", "-o", path, ".").CombinedOutput()
	if err != nil {
		return "", fmt.Errorf("%w: %s", err, out)
	}
	return path, nil
})

// process is the real command, on free loopback ports.
type process struct {
	*exec.Cmd
	GRPC, HTTP, Admin string
	Release, Commit   string
	begun, serving    time.Time // when it was started, and first answered SERVING
	log               *bufio.Scanner
	watch             healthv1.Health_WatchClient
}

// serve starts the command and waits until it answers SERVING. A health Watch is
// held open from then on.
func serve(tb testing.TB, args ...string) *process {
	tb.Helper()
	path, err := binary()
	if err != nil {
		tb.Fatal(err)
	}
	args = append([]string{"-grpc-addr", "127.0.0.1:0", "-http-addr", "127.0.0.1:0", "-admin-addr", "127.0.0.1:0", "-drain", "0s"}, args...)
	p := &process{Cmd: exec.Command(path, args...), begun: time.Now()}
	stderr, err := p.StderrPipe()
	if err != nil {
		tb.Fatal(err)
	}
	if err := p.Start(); err != nil {
		tb.Fatal(err)
	}
	tb.Cleanup(func() {
		if p.ProcessState == nil {
			_ = p.Process.Kill()
			_ = p.Wait()
		}
	})
	p.log = bufio.NewScanner(stderr)
	if !p.log.Scan() {
		tb.Fatal("no log")
	}
	if err := json.Unmarshal(p.log.Bytes(), p); err != nil || p.GRPC == "" || p.HTTP == "" || p.Admin == "" {
		tb.Fatalf("the log does not begin with the addresses: %s, %v", p.log.Bytes(), err)
	}
	conn, err := grpc.NewClient(p.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		tb.Fatal(err)
	}
	tb.Cleanup(func() { _ = conn.Close() })
	p.watch, err = healthv1.NewHealthClient(conn).Watch(context.Background(), &healthv1.HealthCheckRequest{}, grpc.WaitForReady(true))
	if err != nil {
		tb.Fatal(err)
	}
	p.await(tb, healthv1.HealthCheckResponse_SERVING)
	p.serving = time.Now()
	return p
}

func (p *process) await(tb testing.TB, want healthv1.HealthCheckResponse_ServingStatus) {
	tb.Helper()
	for {
		resp, err := p.watch.Recv()
		if err != nil {
			tb.Fatalf("waiting for %v: %v", want, err)
		}
		if resp.Status == want {
			return
		}
	}
}

// rest is the log up to the end of the process.
func (p *process) rest() string {
	var lines []string
	for p.log.Scan() {
		lines = append(lines, p.log.Text())
	}
	return strings.Join(lines, "\n")
}

// statusMiB reads a figure of a process, where there is a /proc.
func statusMiB(b *testing.B, pid int, name string) float64 {
	b.Helper()
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
	if err != nil {
		b.Skipf("resident memory: %v", err)
	}
	_, after, _ := strings.Cut(string(data), name+":")
	var kib float64
	if _, err := fmt.Sscan(after, &kib); err != nil {
		b.Fatal(err)
	}
	return kib / 1024
}
