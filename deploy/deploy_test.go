// Package deploy checks the files beside it against the program: whoever changes
// a port, a flag, a probe or a metric learns here what else must change.
package deploy

import (
	"maps"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

// The ports are the program's defaults in every place that names them.
func TestPorts(t *testing.T) {
	m, defaults := readManifest(t), flagDefaults(t)
	c := m.Deployment.Spec.Template.Spec.Containers[0]
	ports := map[string]int{}
	for _, p := range c.Ports {
		ports[p.Name] = p.ContainerPort
	}
	if len(ports) != 3 {
		t.Errorf("ports %v", ports)
	}
	var exposed []string
	for _, name := range []string{"grpc", "http", "admin"} {
		port := portOf(t, defaults[name+"-addr"])
		exposed = append(exposed, port)
		if strconv.Itoa(ports[name]) != port {
			t.Errorf("containerPort %s is %d, the program listens on %s", name, ports[name], port)
		}
	}
	for name, p := range map[string]probe{"startup": c.StartupProbe, "readiness": c.ReadinessProbe, "liveness": c.LivenessProbe} {
		if p.HTTPGet.Port != "admin" {
			t.Errorf("%s probe asks port %q", name, p.HTTPGet.Port)
		}
	}
	for _, s := range m.Services {
		for _, p := range s.Spec.Ports {
			if p.Port != ports[p.TargetPort] || p.Name != p.TargetPort || p.AppProtocol == "" {
				t.Errorf("Service %s: %+v", s.Metadata.Name, p)
			}
		}
	}
	if line := "EXPOSE " + strings.Join(exposed, " "); !strings.Contains(read(t, "Dockerfile"), line) {
		t.Errorf("the Dockerfile does not say %q", line)
	}
	if line := "port: " + portOf(t, defaults["admin-addr"]); !strings.Contains(read(t, "prometheus.yaml"), line) {
		t.Errorf("prometheus.yaml does not say %q", line)
	}
}

// nameLabel alone selects pods: all others may change from release to release.
const nameLabel = "app.kubernetes.io/name"

// Every Service, policy and budget means the pods of the Deployment, and the
// admin port is on a Service of its own and open to one namespace only.
func TestWhoReachesWhat(t *testing.T) {
	m := readManifest(t)
	labels := m.Deployment.Spec.Template.Metadata.Labels
	selectors := map[string]map[string]string{
		"Deployment":    m.Deployment.Spec.Selector.MatchLabels,
		"budget":        m.Disruption.Spec.Selector.MatchLabels,
		"NetworkPolicy": m.NetworkPolicy.Spec.PodSelector.MatchLabels,
	}
	for _, s := range m.Deployment.Spec.Template.Spec.Spread {
		selectors["spread over "+s.TopologyKey] = s.LabelSelector.MatchLabels
	}
	offered := map[string][]string{}
	for _, s := range m.Services {
		selectors["Service "+s.Metadata.Name] = s.Spec.Selector
		for _, p := range s.Spec.Ports {
			offered[s.Metadata.Name] = append(offered[s.Metadata.Name], p.Name)
		}
		if headless := s.Metadata.Name != "knitmath"; headless != (s.Spec.ClusterIP == "None") {
			t.Errorf("Service %s has cluster IP %q", s.Metadata.Name, s.Spec.ClusterIP)
		}
	}
	for who, sel := range selectors {
		if len(sel) != 1 || sel[nameLabel] == "" || sel[nameLabel] != labels[nameLabel] {
			t.Errorf("%s selects %v, the pods are %v", who, sel, labels)
		}
	}
	want := map[string][]string{"knitmath": {"grpc", "http"}, "knitmath-headless": {"grpc"}, "knitmath-admin": {"admin"}}
	if !maps.EqualFunc(offered, want, slices.Equal) {
		t.Errorf("Services offer %v, want %v", offered, want)
	}
	if text := read(t, "prometheus.yaml"); !strings.Contains(text, "[knitmath-admin.") {
		t.Errorf("prometheus.yaml does not look for knitmath-admin:\n%s", text)
	}
	policy := m.NetworkPolicy.Spec
	if !slices.Equal(policy.PolicyTypes, []string{"Ingress", "Egress"}) || len(policy.Egress) != 0 {
		t.Errorf("network policy: %+v", policy)
	}
	open := map[string]bool{}
	for _, rule := range policy.Ingress {
		for _, p := range rule.Ports {
			open[p.Port] = true
			everyone := len(rule.From) != 1 || len(rule.From[0].NamespaceSelector.MatchLabels) == 0
			if everyone == (p.Port == "admin") {
				t.Errorf("port %s is open to %+v", p.Port, rule.From)
			}
		}
	}
	if len(policy.Ingress) != 2 || !maps.Equal(open, map[string]bool{"grpc": true, "http": true, "admin": true}) {
		t.Errorf("open: %v", open)
	}
	target := m.Autoscaler.Spec.ScaleTargetRef
	if target.APIVersion != m.Deployment.APIVersion || target.Kind != m.Deployment.Kind || target.Name != m.Deployment.Metadata.Name {
		t.Errorf("the autoscaler scales %+v", target)
	}
}

// The pods meet the cluster's strictest standard, as the image is made for it.
func TestPodIsRestricted(t *testing.T) {
	spec := readManifest(t).Deployment.Spec.Template.Spec
	if s := spec.SecurityContext; !s.RunAsNonRoot || s.RunAsUser == 0 || s.RunAsGroup == 0 || s.SeccompProfile.Type != "RuntimeDefault" {
		t.Errorf("pod: %+v", s)
	}
	if a, l := spec.AutomountServiceAccountToken, spec.EnableServiceLinks; a == nil || *a || l == nil || *l {
		t.Error("the pod gets a token or the variables of other Services")
	}
	c := spec.Containers[0]
	if s := c.SecurityContext; s.AllowPrivilegeEscalation == nil || *s.AllowPrivilegeEscalation || !s.ReadOnlyRootFilesystem ||
		!slices.Equal(s.Capabilities.Drop, []string{"ALL"}) {
		t.Errorf("container: %+v", s)
	}
	user := strconv.Itoa(int(spec.SecurityContext.RunAsUser)) + ":" + strconv.Itoa(int(spec.SecurityContext.RunAsGroup))
	if docker := read(t, "Dockerfile"); !strings.Contains(docker, "\nUSER "+user+"\n") || !strings.Contains(docker, "\nFROM scratch\n") {
		t.Errorf("the Dockerfile does not end from scratch as USER %s", user)
	}
}

// Kubernetes waits as long as the program may take to stop: -drain, then
// -shutdown-timeout for both public faces, and a second for the admin face.
func TestGracePeriod(t *testing.T) {
	spec := readManifest(t).Deployment.Spec.Template.Spec
	flags := flagDefaults(t)
	for _, arg := range spec.Containers[0].Args {
		name, value, ok := strings.Cut(strings.TrimPrefix(arg, "-"), "=")
		if _, known := flags[name]; !known || !ok {
			t.Errorf("argument %s is no flag of the program", arg)
		}
		flags[name] = value
	}
	longest := duration(t, flags["drain"]) + duration(t, flags["shutdown-timeout"]) + time.Second
	if grace := time.Duration(spec.GraceSeconds) * time.Second; grace < longest+5*time.Second || grace > longest+30*time.Second {
		t.Errorf("%v to stop in; the program may take %v", grace, longest)
	}
}

// The numbers that stand in more than one file agree.
func TestNumbersAgree(t *testing.T) {
	m := readManifest(t)
	c := m.Deployment.Spec.Template.Spec.Containers[0]
	limit, request := mebibytes(t, c.Resources.Limits["memory"]), mebibytes(t, c.Resources.Requests["memory"])
	if len(c.Env) != 1 || c.Env[0].Name != "GOMEMLIMIT" {
		t.Fatalf("environment %+v", c.Env)
	}
	if soft := mebibytes(t, c.Env[0].Value); soft*5 != limit*4 || request >= soft {
		t.Errorf("GOMEMLIMIT %d MiB, of a limit of %d, request %d", soft, limit, request)
	}
	hpa := m.Autoscaler.Spec
	if hpa.MinReplicas < 2 || hpa.MaxReplicas <= hpa.MinReplicas || m.Disruption.Spec.MaxUnavailable >= hpa.MinReplicas {
		t.Errorf("%d to %d replicas, %d may be missing", hpa.MinReplicas, hpa.MaxReplicas, m.Disruption.Spec.MaxUnavailable)
	}
	if alert := `== 1) < ` + strconv.Itoa(hpa.MinReplicas); !strings.Contains(read(t, "alerts.yaml"), alert) {
		t.Errorf("alerts.yaml does not say %q", alert)
	}
	if len(hpa.Metrics) != 1 || hpa.Metrics[0].Resource.Name != "cpu" {
		t.Fatalf("scaled by %+v", hpa.Metrics)
	}
	cpu, err := strconv.Atoi(strings.TrimSuffix(c.Resources.Requests["cpu"], "m"))
	if err != nil {
		t.Fatal(err)
	}
	cores := strconv.FormatFloat(float64(cpu*hpa.Metrics[0].Resource.Target.AverageUtilization)/1e5, 'g', -1, 64)
	for _, say := range []string{"above " + cores + " on average",
		"is " + strconv.Itoa(limit) + " MiB, the Go runtime's own " + strconv.Itoa(limit*4/5) + " MiB"} {
		if !strings.Contains(read(t, "dashboard.json"), say) {
			t.Errorf("dashboard.json does not say %q", say)
		}
	}
}

var goVersion = regexp.MustCompile(`(?m)^go (\d+\.\d+)`)

// The image is built with the Go release that go.mod asks for, from a builder that
// whoever publishes pins: a digest that stood here would be one that nobody checked.
func TestGoVersion(t *testing.T) {
	version := goVersion.FindStringSubmatch(read(t, "../go.mod"))[1]
	docker := read(t, "Dockerfile")
	if !strings.Contains(docker, "\nARG BUILDER=golang:"+version+"-bookworm\n") || !strings.Contains(docker, "${BUILDER} AS build\n") {
		t.Errorf("the Dockerfile does not build with Go %s", version)
	}
}

func read(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func duration(t *testing.T, text string) time.Duration {
	t.Helper()
	d, err := time.ParseDuration(text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// mebibytes reads 96Mi and 96MiB.
func mebibytes(t *testing.T, text string) int {
	t.Helper()
	n, err := strconv.Atoi(strings.TrimSuffix(strings.TrimSuffix(text, "B"), "Mi"))
	if err != nil {
		t.Fatal(err)
	}
	return n
}
