package deploy

import (
	"bufio"
	"io"
	"os/exec"
	"strings"
	"syscall"
	"testing"

	"go.yaml.in/yaml/v3"
)

// The program takes the variables by which components/traces has it send spans: what it
// cannot take of them it says at its start, and ends.
func TestProgramTakesTraceVariables(t *testing.T) {
	var patch deployment
	if err := yaml.Unmarshal([]byte(read(t, "components/traces/env.yaml")), &patch); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(builtProgram(t), "-grpc-addr=127.0.0.1:0", "-http-addr=127.0.0.1:0", "-admin-addr=127.0.0.1:0", "-drain=0s")
	cmd.Env = []string{}
	for _, e := range patch.Spec.Template.Spec.Containers[0].Env {
		cmd.Env = append(cmd.Env, e.Name+"="+strings.ReplaceAll(e.Value, "$(POD_NAME)", "knitmath-0"))
	}
	if len(cmd.Env) < 4 {
		t.Fatalf("only %v", cmd.Env)
	}
	stderr, err := cmd.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	log := bufio.NewScanner(stderr)
	log.Scan()
	_ = cmd.Process.Signal(syscall.SIGTERM)
	said := log.Text()
	rest, _ := io.ReadAll(stderr)
	if err := cmd.Wait(); err != nil || !strings.Contains(said, `"level":"INFO"`) {
		t.Errorf("%v\n%s\n%s", err, said, rest)
	}
}
