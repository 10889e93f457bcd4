package main

import (
	"encoding/json"
	"errors"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	healthv1 "google.golang.org/grpc/health/grpc_health_v1"
)

func TestMain(m *testing.M) {
	code := m.Run()
	if path, err := binary(); err == nil {
		_ = os.RemoveAll(filepath.Dir(path))
	}
	os.Exit(code)
}

// SIGTERM and an interrupt stop the command cleanly, although a Watch is open.
func TestStopsOnSignal(t *testing.T) {
	for _, sig := range []os.Signal{syscall.SIGTERM, os.Interrupt} {
		t.Run(sig.String(), func(t *testing.T) {
			p := serve(t, "-shutdown-timeout", "200ms")
			resp, err := http.Post("http://"+p.HTTP+"/v1/gauge:computeCastOn", "application/json",
				strings.NewReader(`{"gauge": {"stitches": 22, "rows": 30}, "width_cm": 50}`))
			if err != nil || resp.StatusCode != http.StatusOK {
				t.Fatalf("JSON: %v %v", resp, err)
			}
			_, _ = io.Copy(io.Discard, resp.Body)
			_ = resp.Body.Close()
			if err := p.Process.Signal(sig); err != nil {
				t.Fatal(err)
			}
			p.await(t, healthv1.HealthCheckResponse_NOT_SERVING)
			log := p.rest()
			if err := p.Wait(); err != nil {
				t.Errorf("%v\n%s", err, log)
			}
			if !strings.Contains(log, `"msg":"stopped"`) {
				t.Errorf("log:\n%s", log)
			}
		})
	}
}

// The log, -version and both faces tell of one release, which is what the program
// was built from.
func TestReleaseIsOne(t *testing.T) {
	p := serve(t)
	if p.Release == "" {
		t.Fatal("the log does not begin with the release")
	}
	said, err := exec.Command(p.Path, "-version").Output()
	if err != nil || strings.TrimSpace(string(said)) != strings.TrimSpace("knitmathd "+p.Release+" "+p.Commit) {
		t.Errorf("-version: %s %v, the log: %s %s", said, err, p.Release, p.Commit)
	}
	for _, addr := range []string{p.HTTP, p.Admin} {
		resp, err := http.Get("http://" + addr + "/version")
		if err != nil {
			t.Fatal(err)
		}
		var at struct{ Release, Commit, Go string }
		if err := json.NewDecoder(resp.Body).Decode(&at); err != nil {
			t.Fatal(err)
		}
		_ = resp.Body.Close()
		if at.Release != p.Release || at.Commit != p.Commit || at.Go != runtime.Version() || resp.Header.Get("Knitmath-Release") != p.Release {
			t.Errorf("/version: %+v, header %q; the log: %s %s", at, resp.Header.Get("Knitmath-Release"), p.Release, p.Commit)
		}
	}
	// What the linker is told wins.
	path := filepath.Join(t.TempDir(), "knitmathd")
	const of = "example.com/knitmath/service.stamped"
	const told = "-X " + of + "Version=v9.8.7 -X " + of + "Commit=abc"
	out, err := exec.Command("go", "build", "-buildvcs=false", "-ldflags", told, "-o", path, ".").CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	if said, err = exec.Command(path, "-version").Output(); err != nil || string(said) != "knitmathd v9.8.7 abc\n" {
		t.Errorf("stamped: %s %v", said, err)
	}
}

// Every line of the log is JSON and has none of the caller's words, whichever
// library they could make complain; durations are written as people do.
func TestLogIsJSON(t *testing.T) {
	p := serve(t, "-drain", "1ms")
	for _, header := range []string{"Content-Type", "Grpc-Metadata-Diary", "Grpc-Timeout", "Accept", "Traceparent"} {
		req, err := http.NewRequest(http.MethodGet, "http://"+p.HTTP+"/v1/gauge:computeCastOn?width_cm=50", nil)
		if err != nil {
			t.Fatal(err)
		}
		req.Header.Set(header, "dear diary\xff")
		resp, err := http.DefaultClient.Do(req)
		if err != nil || resp.StatusCode != http.StatusBadRequest { // of the gauge, which is missing
			t.Fatalf("%v %v", resp, err)
		}
		_ = resp.Body.Close()
	}
	http.DefaultClient.CloseIdleConnections()
	if err := p.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	p.await(t, healthv1.HealthCheckResponse_NOT_SERVING)
	if err := p.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	text := p.rest()
	for _, line := range strings.Split(text, "\n") {
		if !json.Valid([]byte(line)) {
			t.Errorf("not JSON: %s", line)
		}
	}
	if strings.Contains(text, "diary") || !strings.Contains(text, `"for":"1ms"`) || !strings.Contains(text, `"fields":["gauge REQUIRED"]`) {
		t.Errorf("log:\n%s", text)
	}
}

// Profiles are for those who ask for them, on the admin port.
func TestProfiles(t *testing.T) {
	for _, asked := range []bool{false, true} {
		p := serve(t, "-pprof="+strconv.FormatBool(asked))
		for path, want := range map[string]bool{
			"http://" + p.Admin + "/debug/pprof/heap":                asked,
			"http://" + p.Admin + "/debug/pprof/profile?seconds=1":   asked,
			"http://" + p.Admin + "/debug/pprof/trace?seconds=0.1":   asked,
			"http://" + p.Admin + "/debug/pprof/goroutine?debug=2":   asked,
			"http://" + p.Admin + "/debug/pprof/":                    asked,
			"http://" + p.Admin + "/debug/pprof/nonesuch":            false,
			"http://" + p.Admin + "/debug/pprof/profile?seconds=200": false,
			"http://" + p.HTTP + "/debug/pprof/heap":                 false,
		} {
			resp, err := http.Get(path)
			if err != nil {
				t.Fatal(err)
			}
			if _, err = io.Copy(io.Discard, resp.Body); err != nil || (resp.StatusCode == http.StatusOK) != want {
				t.Errorf("-pprof=%v, %s: HTTP %d, %v", asked, path, resp.StatusCode, err)
			}
			_ = resp.Body.Close()
		}
	}
}

// The second signal ends the command at once, whatever it waits for.
func TestSecondSignal(t *testing.T) {
	p := serve(t, "-drain", "1h")
	if err := p.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	p.await(t, healthv1.HealthCheckResponse_NOT_SERVING)
	if err := p.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	_ = p.rest()
	var exit *exec.ExitError
	if err := p.Wait(); !errors.As(err, &exit) || !exit.Sys().(syscall.WaitStatus).Signaled() {
		t.Errorf("ended with %v", err)
	}
}

func TestPortInUse(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	path, err := binary()
	if err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(path, "-grpc-addr", "127.0.0.1:0", "-http-addr", taken.Addr().String(),
		"-admin-addr", "127.0.0.1:0").CombinedOutput()
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != exitFailed {
		t.Errorf("ended with %v", err)
	}
	if text := string(out); !strings.Contains(text, "HTTP listener") || !strings.Contains(text, "address already in use") {
		t.Errorf("said %s", text)
	}
}

// BenchmarkStart reports, for the binary as it is shipped, the time from starting
// the process to the first SERVING, client included, and the memory it then
// keeps resident, idle but for one open Watch:
//
//	go test ./cmd/knitmathd -run '^$' -bench Start -benchtime 20x
func BenchmarkStart(b *testing.B) {
	if _, err := binary(); err != nil {
		b.Fatal(err)
	}
	var took time.Duration
	var memory, n float64
	for b.Loop() {
		p := serve(b)
		took += p.serving.Sub(p.begun)
		memory += statusMiB(b, p.Process.Pid, "VmRSS")
		n++
		_ = p.Process.Kill()
		_ = p.rest()
		_ = p.Wait()
	}
	b.ReportMetric(float64(took.Microseconds())/1000/n, "ms-to-SERVING")
	b.ReportMetric(memory/n, "MiB-resident")
	b.ReportMetric(0, "ns/op")
}
