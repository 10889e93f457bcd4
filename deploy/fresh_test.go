package deploy

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"syscall"
	"testing"

	"go.yaml.in/yaml/v3"

	"example.com/knitmath/service/tlsfile/tlstest"
)

// sample is a line of an exposition.
var sample = regexp.MustCompile(`^([a-zA-Z_:][a-zA-Z0-9_:]*)(?:\{(.*)\})? (\S+)$`)

// fresh are the series that the program exposes just after its start, by name, each
// by its labels in order.
type fresh map[string]map[string]string

// freshSeries starts the program, as the Dockerfile builds it, with TLS and keys, which
// have metrics of their own, and scrapes it before anybody has asked anything.
func freshSeries(t *testing.T) fresh {
	t.Helper()
	pair, keys := pairOf(t, tlstest.NewAuthority(t)), filepath.Join(t.TempDir(), "keys")
	if err := os.WriteFile(keys, []byte("# none yet\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(builtProgram(t), "-grpc-addr=127.0.0.1:0", "-http-addr=127.0.0.1:0", "-admin-addr=127.0.0.1:0", "-drain=0s",
		"-tls-cert="+pair.Cert, "-tls-key="+pair.Key, "-api-keys="+keys)
	stderr, err := cmd.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	defer func() {
		_ = cmd.Process.Signal(syscall.SIGTERM)
		_, _ = io.Copy(io.Discard, stderr)
		if err := cmd.Wait(); err != nil {
			t.Error(err)
		}
	}()
	log := bufio.NewScanner(stderr)
	if !log.Scan() {
		t.Fatal("no log")
	}
	var at struct{ Admin string }
	if err := json.Unmarshal(log.Bytes(), &at); err != nil {
		t.Fatal(err)
	}
	resp, err := http.Get("http://" + at.Admin + "/metrics")
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	all := fresh{"up": {"": "1"}} // which Prometheus adds
	for lines := bufio.NewScanner(resp.Body); lines.Scan(); {
		if m := sample.FindStringSubmatch(lines.Text()); m != nil {
			if all[m[1]] == nil {
				all[m[1]] = map[string]string{}
			}
			all[m[1]][inOrder(m[2])] = m[3]
		}
	}
	http.DefaultClient.CloseIdleConnections()
	if len(all) < 20 {
		t.Fatalf("only %d names", len(all))
	}
	return all
}

var label = regexp.MustCompile(`([a-z_]+)="((?:[^"\\]|\\.)*)"`)

// inOrder writes labels in the order of their names.
func inOrder(labels string) string {
	all := label.FindAllString(labels, -1)
	slices.Sort(all)
	return strings.Join(all, ",")
}

// alertCases is alerts_test.yaml.
type alertCases struct {
	Tests []alertCase `yaml:"tests"`
}

type alertCase struct {
	Name    string            `yaml:"name"`
	Pods    map[string]string `yaml:"pods"`
	Changes []struct {
		Series string `yaml:"series"`
		Values string `yaml:"values"`
	} `yaml:"changes"`
	Expressions any         `yaml:"promql_expr_test"`
	Alerts      []alertTest `yaml:"alert_rule_test"`
}

type alertTest struct {
	Name   string `yaml:"alertname"`
	At     string `yaml:"eval_time"`
	Expect []any  `yaml:"exp_alerts,omitempty"`
}

func readAlertCases(t *testing.T) alertCases {
	t.Helper()
	var cases alertCases
	decoder := yaml.NewDecoder(strings.NewReader(read(t, "alerts_test.yaml")))
	decoder.KnownFields(true)
	if err := decoder.Decode(&cases); err != nil {
		t.Fatal(err)
	}
	return cases
}

// lastStep is how many steps of 15 s each case has: an hour.
const lastStep = 240

// life is when a pod begins and, if it does, ends: "0", "80", "80-120" in steps.
func life(t *testing.T, said string) (first, last int) {
	t.Helper()
	last = lastStep
	if n, _ := fmt.Sscanf(said, "%d-%d", &first, &last); n == 0 {
		t.Fatalf("cannot read %q", said)
	}
	return first, last
}

// inputs are the series of a case as Prometheus would have them: each pod exposes
// what a fresh process does, from its beginning to its end, but for what the case
// changes. Only what the case's alerts read is written.
func (c alertCase) inputs(t *testing.T, all fresh, rules []query) []map[string]string {
	t.Helper()
	read := c.reads(rules)
	changed := map[string]string{}
	for _, change := range c.Changes {
		m := regexp.MustCompile(`^(\w+)\{(.*)\}$`).FindStringSubmatch(change.Series)
		if m == nil {
			t.Fatalf("%s: cannot read %s", c.Name, change.Series)
		}
		changed[m[1]+"{"+inOrder(m[2])+"}"] = change.Values
	}
	var inputs []map[string]string
	for pod, said := range c.Pods {
		first, last := life(t, said)
		for name, series := range all {
			if !strings.Contains(read, name+"{") {
				continue
			}
			for labels, value := range series {
				values := fmt.Sprintf("%sx%d", value, last-first)
				if first > 0 {
					values = fmt.Sprintf("_x%d ", first) + values
				}
				if labels != "" {
					labels += ","
				}
				if last < lastStep {
					values += " stale" // as Prometheus marks what is no longer there
				}
				key := name + "{" + inOrder(labels+fmt.Sprintf(`instance=%q`, pod)) + "}"
				if other, ok := changed[key]; ok {
					values = other
					delete(changed, key)
				}
				inputs = append(inputs, map[string]string{"series": strings.Replace(key, "{", `{job="knitmath",`, 1), "values": values})
			}
		}
	}
	for key := range changed {
		t.Errorf("%s: no fresh process exposes %s", c.Name, key)
	}
	return inputs
}

// reads are the expressions of the case's alerts, with those that they read of.
func (c alertCase) reads(rules []query) string {
	var text string
	for _, a := range c.Alerts {
		for _, q := range rules {
			if q.where == a.Name && !strings.Contains(text, q.expr) {
				text += q.expr
			}
		}
	}
	for range 2 { // a record may read of another
		for _, q := range rules {
			if strings.Contains(text, q.where) && !strings.Contains(text, q.expr) {
				text += q.expr
			}
		}
	}
	return text
}

// alertTests is the file that promtool runs.
func alertTests(t *testing.T, ruleFile string) []byte {
	t.Helper()
	all := freshSeries(t)
	rules, _ := readRules(t)
	var tests []map[string]any
	for _, c := range readAlertCases(t).Tests {
		test := map[string]any{"name": c.Name, "interval": "15s", "input_series": c.inputs(t, all, rules), "alert_rule_test": c.Alerts}
		if c.Expressions != nil {
			test["promql_expr_test"] = c.Expressions
		}
		tests = append(tests, test)
	}
	text, err := yaml.Marshal(map[string]any{"rule_files": []string{ruleFile}, "evaluation_interval": "30s", "tests": tests})
	if err != nil {
		t.Fatal(err)
	}
	return text
}
