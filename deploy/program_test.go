package deploy

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"example.com/knitmath/release"
)

// root is a folder with the program in it and nothing else, as in the image.
var root string

func TestMain(m *testing.M) {
	code := m.Run()
	if root != "" {
		_ = os.Chmod(root, 0o700)
		_ = os.RemoveAll(root)
	}
	os.Exit(code)
}

// program builds the program as the Dockerfile does, once, and returns its path.
var program = sync.OnceValues(func() (string, error) {
	var err error
	if root, err = os.MkdirTemp("", "knitmath-root"); err != nil {
		return "", err
	}
	// Looked at so that a cached test result ends when the command changes, which
	// this package does not import.
	sources, err := filepath.Glob("../cmd/knitmathd/*.go")
	for _, source := range sources {
		if _, err := os.Stat(source); err != nil {
			return "", err
		}
	}
	if err != nil {
		return "", err
	}
	path := filepath.Join(root, "knitmathd")
	if said, err := build("..", path, "VERSION="+release.Version, "COMMIT="+testCommit, "STAMP=yes"); err != nil {
		return "", fmt.Errorf("%w: %s", err, said)
	}
	return path, os.Chmod(root, 0o555)
})

// testCommit is the commit of a program built from a tree as it stands.
const testCommit = "0123456789abcdef0123456789abcdef01234567"

func builtProgram(t *testing.T) string {
	t.Helper()
	path, err := program()
	if err != nil {
		t.Fatalf("deploy/build: %v", err)
	}
	return path
}

// The program as the Dockerfile builds it starts as the manifest's user with the
// manifest's arguments and environment, seeing no file but itself and unable to
// write any; it answers the manifest's probes and ends well when it is told to.
// Only root can enter such a folder and change the user; otherwise it runs as it is.
func TestProgramRunsAsInTheImage(t *testing.T) {
	path := builtProgram(t)
	m := readManifest(t)
	spec := m.Deployment.Spec.Template.Spec
	c := spec.Containers[0]

	cmd := exec.Command(path, append(c.Args, "-grpc-addr=127.0.0.1:0", "-http-addr=127.0.0.1:0", "-admin-addr=127.0.0.1:0", "-drain=0s")...)
	cmd.Env = []string{}
	for _, e := range c.Env {
		cmd.Env = append(cmd.Env, e.Name+"="+e.Value)
	}
	cmd.Dir = root
	if os.Getuid() == 0 {
		cmd.Path, cmd.Dir = "/knitmathd", "/"
		cmd.SysProcAttr = &syscall.SysProcAttr{Chroot: root, Credential: &syscall.Credential{
			Uid: spec.SecurityContext.RunAsUser, Gid: spec.SecurityContext.RunAsGroup}}
	}
	stderr, err := cmd.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if cmd.ProcessState == nil {
			_ = cmd.Process.Kill()
			_ = cmd.Wait()
		}
	})
	log := bufio.NewScanner(stderr)
	var at struct{ GRPC, HTTP, Admin, Release, Commit string }
	if !log.Scan() {
		t.Fatal("no log")
	}
	if err := json.Unmarshal(log.Bytes(), &at); err != nil {
		t.Fatalf("%s: %v", log.Bytes(), err)
	}
	if at.Release != release.Version || at.Commit != testCommit {
		t.Errorf("release %q of commit %q", at.Release, at.Commit)
	}
	for name, p := range map[string]probe{"startup": c.StartupProbe, "readiness": c.ReadinessProbe, "liveness": c.LivenessProbe} {
		if err := ask(t, p, at.Admin); err != "" {
			t.Errorf("%s probe: %s", name, err)
		}
	}
	if err := cmd.Process.Signal(syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	var rest []string
	for log.Scan() {
		rest = append(rest, log.Text())
	}
	if err := cmd.Wait(); err != nil {
		t.Errorf("%v\n%s", err, strings.Join(rest, "\n"))
	}
	if files, err := os.ReadDir(root); err != nil || len(files) != 1 {
		t.Errorf("left behind: %v %v", files, err)
	}
}

// ask asks what a probe asks and says what was wrong.
func ask(t *testing.T, p probe, admin string) string {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 30*time.Second)
	defer cancel()
	defer http.DefaultClient.CloseIdleConnections()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, "http://"+admin+p.HTTPGet.Path, nil)
	if err != nil {
		return err.Error()
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		return err.Error()
	}
	_ = resp.Body.Close()
	if resp.StatusCode != http.StatusOK {
		return resp.Status
	}
	return ""
}

var flagDefault = regexp.MustCompile(`(?m)^  -(\S+) .*\n.*\(default "?([^")]+)"?\)`)

// flagDefaults are the flags of the program with their defaults, as -help says.
func flagDefaults(t *testing.T) map[string]string {
	t.Helper()
	help, err := exec.Command(builtProgram(t), "-help").CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, help)
	}
	defaults := map[string]string{}
	for _, m := range flagDefault.FindAllStringSubmatch(string(help), -1) {
		defaults[m[1]] = m[2]
	}
	return defaults
}

// portOf is the port of an address.
func portOf(t *testing.T, address string) string {
	t.Helper()
	_, port, err := net.SplitHostPort(address)
	if err != nil {
		t.Fatal(err)
	}
	return port
}
