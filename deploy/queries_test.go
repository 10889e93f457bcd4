package deploy

import (
	"bytes"
	"encoding/json"
	"flag"
	"maps"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"
	"google.golang.org/grpc/codes"
)

// query is a PromQL expression and where it stands.
type query struct{ where, expr string }

type ruleFile struct {
	Groups []struct {
		Rules []struct {
			Record string `yaml:"record"`
			Alert  string `yaml:"alert"`
			Expr   string `yaml:"expr"`
		} `yaml:"rules"`
	} `yaml:"groups"`
}

func readRules(t *testing.T) (rules []query, recorded map[string]bool) {
	t.Helper()
	var file ruleFile
	if err := yaml.Unmarshal([]byte(read(t, "alerts.yaml")), &file); err != nil {
		t.Fatal(err)
	}
	recorded = map[string]bool{}
	for _, group := range file.Groups {
		for _, r := range group.Rules {
			rules = append(rules, query{r.Record + r.Alert, r.Expr})
			if r.Record != "" {
				recorded[r.Record] = true
			}
		}
	}
	return rules, recorded
}

// readDashboard returns the queries of the dashboard, with the interval that the
// dashboard's program would choose.
func readDashboard(t *testing.T) []query {
	t.Helper()
	var board struct {
		Panels []struct {
			Title   string
			Targets []struct{ Expr string }
		}
	}
	if err := json.Unmarshal([]byte(read(t, "dashboard.json")), &board); err != nil {
		t.Fatal(err)
	}
	var all []query
	for _, panel := range board.Panels {
		for _, target := range panel.Targets {
			all = append(all, query{panel.Title, strings.ReplaceAll(target.Expr, "$__rate_interval", "5m")})
		}
	}
	return all
}

var (
	selection = regexp.MustCompile(`([a-zA-Z_:][a-zA-Z0-9_:]*)\{([^}]*)\}`)
	matcher   = regexp.MustCompile(`^([a-zA-Z_]+)(=|!=|=~|!~)"((?:[^"\\]|\\.)*)"$`)
	grouping  = regexp.MustCompile(`\b(?:by|without|on|ignoring) *\(([^)]*)\)`)
	word      = regexp.MustCompile(`[a-zA-Z_:][a-zA-Z0-9_:]*`)
	number    = regexp.MustCompile(`\b[0-9.]+[smhd]?\b`)
)

// promQL are the words of the language that the queries use.
var promQL = []string{"sum", "count", "rate", "increase", "changes", "absent", "vector", "histogram_quantile", "avg_over_time", "min",
	"time", "and", "or", "unless", "offset"}

// faults says what an expression names that does not exist. Every selection must
// name its labels, and the job among them: without it a query takes in whatever
// else uses the same conventions.
func (all series) faults(expr string, recorded map[string]bool) []string {
	var faults []string
	labels := map[string]bool{}
	for _, m := range selection.FindAllStringSubmatch(expr, -1) {
		metric := all[m[1]]
		if metric == nil {
			faults = append(faults, "no metric "+m[1])
			continue
		}
		for label := range metric {
			labels[label] = true
		}
		if !strings.Contains(m[2], `job="knitmath"`) {
			faults = append(faults, m[1]+" of any job")
		}
		for _, one := range strings.Split(m[2], ",") {
			faults = append(faults, all.unmatched(m[1], one)...)
		}
	}
	rest := selection.ReplaceAllString(expr, " ")
	grouped := grouping.FindAllStringSubmatch(rest, -1)
	rest = number.ReplaceAllString(grouping.ReplaceAllString(rest, " "), " ")
	for _, name := range word.FindAllString(rest, -1) {
		if recorded[name] {
			labels["job"] = true
		} else if !slices.Contains(promQL, name) {
			faults = append(faults, "unknown "+name)
		}
	}
	for _, g := range grouped {
		for _, label := range word.FindAllString(g[1], -1) {
			if !labels[label] {
				faults = append(faults, "grouped by the unknown label "+label)
			}
		}
	}
	return faults
}

// unmatched says what is wrong with one matcher of a selection: a label the
// metric does not have, or values that it cannot have.
func (all series) unmatched(metric, text string) []string {
	m := matcher.FindStringSubmatch(text)
	if m == nil {
		return []string{"cannot read " + text}
	}
	values, known := all[metric][m[1]]
	if !known {
		return []string{metric + " has no label " + m[1]}
	}
	values = maps.Clone(values)
	switch m[1] {
	case "grpc_code": // Not all of them can be provoked.
		for code := codes.OK; code <= codes.Unauthenticated; code++ {
			values[code.String()] = true
		}
	case "code":
		for code := 100; code < 600; code++ {
			values[strconv.Itoa(code)] = http.StatusText(code) != ""
		}
	}
	// Each alternative by itself: one that is misspelt hides behind the others.
	for _, pattern := range strings.Split(m[3], "|") {
		if !strings.HasSuffix(m[2], "~") {
			pattern = regexp.QuoteMeta(pattern)
		}
		exactly, err := regexp.Compile("^(?:" + pattern + ")$")
		if err != nil {
			return []string{err.Error()}
		}
		if !slices.ContainsFunc(slices.Collect(maps.Keys(values)), func(v string) bool { return values[v] && exactly.MatchString(v) }) {
			return []string{metric + " never has " + m[1] + " " + pattern}
		}
	}
	return nil
}

// Every query names metrics, labels and values that the service exposes.
func TestQueriesNameWhatIsExposed(t *testing.T) {
	all := exposed(t)
	rules, recorded := readRules(t)
	board := readDashboard(t)
	if len(rules) < 10 || len(board) < 12 {
		t.Fatalf("%d rules, %d queries of the dashboard", len(rules), len(board))
	}
	for _, q := range slices.Concat(rules, board) {
		for _, fault := range all.faults(q.expr, recorded) {
			t.Errorf("%s: %s, in %s", q.where, fault, q.expr)
		}
	}
}

// What the check above must notice.
func TestQueryFaults(t *testing.T) {
	all := exposed(t)
	for expr, want := range map[string]string{
		`rate(grpc_server_handled{job="knitmath"}[5m])`:       "no metric grpc_server_handled",
		`rate(grpc_server_handled_total[5m])`:                 "unknown grpc_server_handled_total",
		`rate(grpc_server_handled_total{job="knit"}[5m])`:     "grpc_server_handled_total of any job",
		`grpc_server_handled_total{job="knitmath",code="OK"}`: "grpc_server_handled_total has no label code",
		`grpc_server_handled_total{job="knitmath",grpc_code=~"Internal|INTERNAL"}`: "grpc_server_handled_total never has " +
			"grpc_code INTERNAL",
		`http_requests_total{job="knitmath",code=~"6.."}`:     "http_requests_total never has code 6..",
		`up{job="knitmath",grpc_code="OK"}`:                   "up has no label grpc_code",
		`sum by (path) (http_requests_total{job="knitmath"})`: "grouped by the unknown label path",
		`grpc_server_started_total{job="knitmath",grpc_service=~"knit.*[.]v2[.].+"}`: "grpc_server_started_total never has " +
			"grpc_service knit.*[.]v2[.].+",
		`job:unknown:rate5m > 1`: "unknown job:unknown:rate5m",
		`sum by (le) (rate(grpc_server_handling_seconds_bucket{job="knitmath"}[5m])) > 0.5`: "",
	} {
		if got := all.faults(expr, nil); want == "" && len(got) > 0 || want != "" && !slices.Contains(got, want) {
			t.Errorf("%s: %q, want %q", expr, got, want)
		}
	}
}

// Every alert is tested, firing and quiet.
func TestEveryAlertIsTested(t *testing.T) {
	fires, quiet := map[string]bool{}, map[string]bool{}
	for _, test := range readAlertCases(t).Tests {
		for _, a := range test.Alerts {
			if len(a.Expect) > 0 {
				fires[a.Name] = true
			} else {
				quiet[a.Name] = true
			}
		}
	}
	rules, recorded := readRules(t)
	for _, r := range rules {
		if !recorded[r.where] && (!fires[r.where] || !quiet[r.where]) {
			t.Errorf("%s: fires in a test: %v; is quiet in one: %v", r.where, fires[r.where], quiet[r.where])
		}
	}
}

// promtool is the checker that comes with Prometheus. .ci/run gets it and names
// it; without it TestPromtool skips.
var promtool = flag.String("promtool", "", "path of promtool")

// promtool takes the rules with the scrape configuration, runs the tests of the
// alerts, and parses every query of the dashboard.
func TestPromtool(t *testing.T) {
	tool := *promtool
	if tool == "" {
		found, err := exec.LookPath("promtool")
		if err != nil {
			t.Skip("NOT CHECKED: no promtool; alerts and queries were not parsed")
		}
		tool = found
	}
	type rule struct {
		Record string `yaml:"record"`
		Expr   string `yaml:"expr"`
	}
	var rules []rule
	for i, q := range readDashboard(t) {
		rules = append(rules, rule{"dashboard:query" + strconv.Itoa(i), q.expr})
	}
	text, err := yaml.Marshal(map[string]any{"groups": []any{map[string]any{"name": "dashboard", "rules": rules}}})
	if err != nil {
		t.Fatal(err)
	}
	board := filepath.Join(t.TempDir(), "dashboard.yaml")
	if err := os.WriteFile(board, text, 0o600); err != nil {
		t.Fatal(err)
	}
	// Beside the rules by an absolute path: promtool reads others as relative to the tests.
	ruleFile, err := filepath.Abs("alerts.yaml")
	if err != nil {
		t.Fatal(err)
	}
	cases := filepath.Join(t.TempDir(), "alerts_test.yaml")
	if err := os.WriteFile(cases, alertTests(t, ruleFile), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{
		{"check", "config", "prometheus.yaml"},
		{"test", "rules", cases},
		{"check", "rules", board},
	} {
		out, err := exec.Command(tool, args...).CombinedOutput()
		t.Logf("promtool %s\n%s", strings.Join(args, " "), bytes.TrimSpace(out))
		if err != nil {
			t.Errorf("promtool %s: %v", strings.Join(args, " "), err)
		}
	}
}
