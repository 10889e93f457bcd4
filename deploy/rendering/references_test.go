package main

import (
	"fmt"
	"maps"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	monitoringv1 "github.com/prometheus-operator/prometheus-operator/pkg/apis/monitoring/v1"
	gatewayv1 "sigs.k8s.io/gateway-api/apis/v1"
	"sigs.k8s.io/yaml"
)

const (
	nameLabel    = "app.kubernetes.io/name"
	partLabel    = "app.kubernetes.io/part-of"
	versionLabel = "app.kubernetes.io/version"
)

// Every object says whose it is and stands in the namespace that the rendering
// brings; pods say their release, which is the image's.
func TestLabels(t *testing.T) {
	for name, o := range overlays(t) {
		for _, object := range o.all {
			what := name + ": " + object.GetName()
			if object.GetLabels()[partLabel] != "knitmath" {
				t.Errorf("%s is part of %q", what, object.GetLabels()[partLabel])
			}
			cluster := object == &o.Namespace || object == &o.Priority
			if cluster != (object.GetNamespace() == "") || !cluster && object.GetNamespace() != o.Namespace.Name {
				t.Errorf("%s is in the namespace %q", what, object.GetNamespace())
			}
		}
		labels := o.Deployment.Spec.Template.Labels
		_, tag, _ := strings.Cut(container(o.Deployment).Image, ":")
		if labels[nameLabel] != "knitmath" || labels[versionLabel] != tag || o.Deployment.Labels[versionLabel] != tag {
			t.Errorf("%s: the pods are %v, the image is of %s", name, labels, tag)
		}
	}
}

// What one object names another has.
func TestReferences(t *testing.T) {
	for name, o := range overlays(t) {
		pod := o.Deployment.Spec.Template.Spec
		if pod.ServiceAccountName != o.Account.Name || o.Account.AutomountServiceAccountToken == nil || *o.Account.AutomountServiceAccountToken {
			t.Errorf("%s: account %q of the pods, %+v", name, pod.ServiceAccountName, o.Account)
		}
		if pod.PriorityClassName != o.Priority.Name {
			t.Errorf("%s: priority %q of the pods, there is %q", name, pod.PriorityClassName, o.Priority.Name)
		}
		checkMounts(t, name, o)
	}
}

// checkMounts looks that each volume is mounted, and each file that an argument names
// is in one of them.
func checkMounts(t *testing.T, name string, o *objects) {
	t.Helper()
	volumes := map[string]bool{}
	for _, v := range o.Deployment.Spec.Template.Spec.Volumes {
		volumes[v.Name] = true
	}
	var folders []string
	for _, m := range container(o.Deployment).VolumeMounts {
		if !volumes[m.Name] || !m.ReadOnly || m.SubPath != "" {
			t.Errorf("%s: mounts %+v", name, m)
		}
		folders = append(folders, m.MountPath)
		delete(volumes, m.Name)
	}
	if len(volumes) > 0 {
		t.Errorf("%s: nobody mounts %v", name, volumes)
	}
	for _, arg := range container(o.Deployment).Args {
		_, value, _ := strings.Cut(arg, "=")
		if strings.HasPrefix(value, "/") && !slices.Contains(folders, filepath.Dir(value)) {
			t.Errorf("%s: %s is in none of %v", name, arg, folders)
		}
	}
}

// Where spans are sent to, pods may go, and to whoever knows its name; nowhere else, and
// without spans nowhere at all.
func TestTracesGetOut(t *testing.T) {
	seen := 0
	for name, o := range overlays(t) {
		var endpoint string
		for _, e := range container(o.Deployment).Env {
			if e.Name == "OTEL_EXPORTER_OTLP_ENDPOINT" {
				endpoint = e.Value
			}
		}
		var out []string
		for _, rule := range o.NetworkPolicy.Spec.Egress {
			for _, to := range rule.To {
				for _, port := range rule.Ports {
					namespace := to.NamespaceSelector.MatchLabels["kubernetes.io/metadata.name"]
					out = append(out, fmt.Sprintf("%s %s:%d", *port.Protocol, namespace, port.Port.IntVal))
				}
			}
		}
		if endpoint == "" {
			if len(out) > 0 {
				t.Errorf("%s: may go out to %v", name, out)
			}
			continue
		}
		seen++
		at, err := url.Parse(endpoint)
		if err != nil {
			t.Fatal(err)
		}
		namespace := strings.Split(at.Hostname(), ".")[1]
		if want := []string{"TCP " + namespace + ":" + at.Port(), "UDP kube-system:53", "TCP kube-system:53"}; !slices.Equal(out, want) {
			t.Errorf("%s: may go out to %v, want %v", name, out, want)
		}
	}
	if seen == 0 {
		t.Error("no overlay sends spans")
	}
}

// Variables that another one names stand before it.
func TestVariablesStandInOrder(t *testing.T) {
	for name, o := range overlays(t) {
		known := map[string]bool{}
		for _, e := range container(o.Deployment).Env {
			for _, m := range regexp.MustCompile(`\$\((\w+)\)`).FindAllStringSubmatch(e.Value, -1) {
				if !known[m[1]] {
					t.Errorf("%s: %s names %s, which does not stand before it", name, e.Name, m[1])
				}
			}
			known[e.Name] = true
		}
	}
}

// The ServiceMonitor finds the admin Service alone, and its job is the one that the
// alerts go by; the PrometheusRule has the alerts of the file.
func TestMonitoring(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(deploy, "alerts.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	var file monitoringv1.PrometheusRuleSpec
	if err := yaml.UnmarshalStrict(text, &file); err != nil {
		t.Fatal(err)
	}
	seen := 0
	for name, o := range overlays(t) {
		m := o.ServiceMonitor
		if m.Name == "" {
			continue
		}
		seen++
		var found []string
		for _, s := range o.Services {
			if matches(m.Spec.Selector.MatchLabels, s.Labels) {
				found = append(found, s.Name)
				if s.Labels[m.Spec.JobLabel] != "knitmath" {
					t.Errorf("%s: the job is %q", name, s.Labels[m.Spec.JobLabel])
				}
				for _, e := range m.Spec.Endpoints {
					if e.Port != s.Spec.Ports[0].Name {
						t.Errorf("%s: scrapes port %s of %s", name, e.Port, s.Name)
					}
				}
			}
		}
		if !slices.Equal(found, []string{"knitmath-admin"}) || len(m.Spec.Endpoints) != 1 {
			t.Errorf("%s: scrapes %v", name, found)
		}
		if len(o.Rules.Spec.Groups) == 0 || len(o.Rules.Spec.Groups) != len(file.Groups) {
			t.Errorf("%s: %d groups of rules, alerts.yaml has %d", name, len(o.Rules.Spec.Groups), len(file.Groups))
		}
	}
	if seen < 2 {
		t.Errorf("%d overlays are scraped", seen)
	}
}

func matches(selector, labels map[string]string) bool {
	for key, value := range selector {
		if labels[key] != value {
			return false
		}
	}
	return len(selector) > 0
}

var service = regexp.MustCompile(`(?m)^service (\w+) \{`)

// The routes lead to ports that the Service has, through listeners that the Gateway
// has and under names of their own; gRPC to the services of the wire and no others.
func TestRoutes(t *testing.T) {
	o := overlays(t)["public"]
	listeners := map[gatewayv1.SectionName]gatewayv1.Listener{}
	for _, l := range o.Gateway.Spec.Listeners {
		listeners[l.Name] = l
		if l.Protocol == gatewayv1.HTTPSProtocolType && (l.TLS == nil || len(l.TLS.CertificateRefs) != 1) {
			t.Errorf("listener %s has no certificate", l.Name)
		}
	}
	ports := map[string]gatewayv1.PortNumber{}
	for _, s := range o.Services {
		for _, p := range s.Spec.Ports {
			ports[s.Name+" "+p.Name] = p.Port
		}
	}
	hosts := map[string]bool{}
	route := func(what string, common gatewayv1.CommonRouteSpec, names []gatewayv1.Hostname, backends []gatewayv1.BackendRef, port string) {
		t.Helper()
		for _, parent := range common.ParentRefs {
			l, ok := listeners[*parent.SectionName]
			if string(parent.Name) != o.Gateway.Name || !ok {
				t.Errorf("%s: no listener %s of %s", what, *parent.SectionName, parent.Name)
			}
			for _, n := range names {
				if !strings.HasSuffix(string(n), strings.TrimPrefix(string(*l.Hostname), "*")) || hosts[string(l.Name)+string(n)] {
					t.Errorf("%s: %s on listener %s", what, n, *l.Hostname)
				}
				hosts[string(l.Name)+string(n)] = true
			}
			if (l.Protocol == gatewayv1.HTTPSProtocolType) != (len(backends) > 0) {
				t.Errorf("%s leads through listener %s to %v", what, l.Name, backends)
			}
		}
		for _, b := range backends {
			if *b.Port != ports[string(b.Name)+" "+port] {
				t.Errorf("%s leads to port %d of %s", what, *b.Port, b.Name)
			}
		}
	}
	for _, r := range o.HTTPRoutes {
		var backends []gatewayv1.BackendRef
		for _, rule := range r.Spec.Rules {
			for _, b := range rule.BackendRefs {
				backends = append(backends, b.BackendRef)
			}
		}
		route(r.Name, r.Spec.CommonRouteSpec, r.Spec.Hostnames, backends, "http")
	}
	var backends []gatewayv1.BackendRef
	got := map[string]bool{}
	for _, rule := range o.GRPCRoute.Spec.Rules {
		for _, b := range rule.BackendRefs {
			backends = append(backends, b.BackendRef)
		}
		for _, m := range rule.Matches {
			got[*m.Method.Service] = true
		}
	}
	route("gRPC", o.GRPCRoute.Spec.CommonRouteSpec, o.GRPCRoute.Spec.Hostnames, backends, "grpc")
	want := map[string]bool{}
	files, err := filepath.Glob(filepath.Join(deploy, "..", "proto", "knitmath", "v1", "*.proto"))
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range service.FindAllStringSubmatch(string(text), -1) {
			want["knitmath.v1."+m[1]] = true
		}
	}
	if len(o.HTTPRoutes) != 2 || len(want) == 0 || !maps.Equal(got, want) {
		t.Errorf("gRPC is passed on to %v, the wire has %v", got, want)
	}
}
