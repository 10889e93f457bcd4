package abuse

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	dto "github.com/prometheus/client_model/go"
	"github.com/prometheus/common/expfmt"
	"github.com/prometheus/common/model"
)

// Addresses are where a program listens.
type Addresses struct{ GRPC, HTTP, Admin string }

// The faces that are attacked.
const (
	faceGRPC = "grpc"
	faceJSON = "json"
)

// Build builds the program as it is shipped, into a folder.
func Build(into string) (string, error) {
	path := filepath.Join(into, "knitmathd")
	out, err := exec.Command("go", "build", "-o", path, "example.com/knitmath/cmd/knitmathd").CombinedOutput()
	if err != nil {
		return "", fmt.Errorf("%w: %s", err, out)
	}
	return path, nil
}

// Program is the real program, as a process of its own.
type Program struct {
	Addresses
	cmd *exec.Cmd
}

// Start starts it on free ports, with the memory of the Kubernetes manifest.
func Start(path string, flags ...string) (*Program, error) {
	flags = append([]string{"-grpc-addr=127.0.0.1:0", "-http-addr=127.0.0.1:0", "-admin-addr=127.0.0.1:0", "-drain=0s",
		"-shutdown-timeout=1s"}, flags...)
	return started(exec.Command(path, flags...))
}

// started has a process that says where it serves.
func started(cmd *exec.Cmd) (*Program, error) {
	p := &Program{cmd: cmd}
	p.cmd.Env = append(os.Environ(), "GOMEMLIMIT=512MiB")
	said, err := p.cmd.StderrPipe()
	if err != nil {
		return nil, err
	}
	if err := p.cmd.Start(); err != nil {
		return nil, err
	}
	lines := bufio.NewScanner(said)
	for lines.Scan() {
		if json.Unmarshal(lines.Bytes(), &p.Addresses) == nil && p.Admin != "" {
			go func() { _, _ = io.Copy(io.Discard, said) }() // What it says more is not looked at.
			return p, nil
		}
	}
	return nil, errors.Join(errors.New("the log does not say the addresses"), p.Stop())
}

// Stop ends it at once.
func (p *Program) Stop() error {
	if err := p.cmd.Process.Kill(); err != nil {
		return err
	}
	_ = p.cmd.Wait() // It ends by the signal.
	return nil
}

// HighWaterMiB is the most memory that the process has had resident so far.
func (p *Program) HighWaterMiB() (float64, error) {
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", p.cmd.Process.Pid))
	if err != nil {
		return 0, err
	}
	_, after, _ := strings.Cut(string(data), "VmHWM:")
	var kib float64
	if _, err := fmt.Sscan(after, &kib); err != nil {
		return 0, fmt.Errorf("VmHWM: %w", err)
	}
	return kib / 1024, nil
}

// Figures are the sums of the program's own metrics, over all labels.
func (p *Program) Figures() (map[string]float64, error) {
	families, err := p.metrics()
	sums := map[string]float64{}
	for name, family := range families {
		for _, m := range family.GetMetric() {
			sums[name] += m.GetCounter().GetValue() + m.GetGauge().GetValue()
		}
	}
	return sums, err
}

func (p *Program) metrics() (map[string]*dto.MetricFamily, error) {
	resp, err := http.Get("http://" + p.Admin + "/metrics")
	if err != nil {
		return nil, err
	}
	defer resp.Body.Close()
	parser := expfmt.NewTextParser(model.UTF8Validation)
	return parser.TextToMetricFamilies(resp.Body)
}
