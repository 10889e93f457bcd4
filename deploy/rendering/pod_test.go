package main

import (
	"os/exec"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	appsv1 "k8s.io/api/apps/v1"
	corev1 "k8s.io/api/core/v1"
)

// Whatever an overlay adds, its pods listen, are asked, are confined and end as those
// of the base, which ../*_test.go compare with the program: ports, probes, security,
// resources, environment, grace and the arguments that the base has.
func TestOverlaysKeepThePod(t *testing.T) {
	all := overlays(t)
	base := kept(all["base"].Deployment)
	for name, o := range all {
		if got := kept(o.Deployment); !reflect.DeepEqual(got, base) {
			t.Errorf("%s:\n%+v\nbase:\n%+v", name, got, base)
		}
		args, before := container(o.Deployment).Args, container(all["base"].Deployment).Args
		if len(args) < len(before) || !reflect.DeepEqual(args[:len(before)], before) {
			t.Errorf("%s: arguments %v, the base has %v", name, args, before)
		}
	}
}

// kept is a Deployment without what overlays may set.
func kept(d appsv1.Deployment) appsv1.Deployment {
	d = *d.DeepCopy()
	spec := &d.Spec.Template.Spec
	spec.PriorityClassName, spec.TopologySpreadConstraints, spec.Volumes = "", nil, nil
	spec.SecurityContext.FSGroup = nil
	c := &spec.Containers[0]
	c.Args, c.VolumeMounts = nil, nil
	c.Env = slices.DeleteFunc(c.Env, func(e corev1.EnvVar) bool { return strings.HasPrefix(e.Name, "OTEL_") || e.Name == "POD_NAME" })
	return d
}

func container(d appsv1.Deployment) corev1.Container { return d.Spec.Template.Spec.Containers[0] }

// Every pod meets the standard that the namespace asks for.
func TestPodsAreRestricted(t *testing.T) {
	for name, o := range overlays(t) {
		if l := o.Namespace.Labels; l["pod-security.kubernetes.io/enforce"] != "restricted" {
			t.Errorf("%s: the namespace asks for %v", name, l)
		}
		pod := o.Deployment.Spec.Template.Spec
		s := pod.SecurityContext
		if s == nil || s.RunAsNonRoot == nil || !*s.RunAsNonRoot || s.RunAsUser == nil || *s.RunAsUser == 0 ||
			s.SeccompProfile == nil || s.SeccompProfile.Type != corev1.SeccompProfileTypeRuntimeDefault {
			t.Errorf("%s: pod %+v", name, s)
		}
		if pod.HostNetwork || pod.HostPID || pod.HostIPC || len(pod.InitContainers) > 0 || len(pod.Containers) != 1 {
			t.Errorf("%s: shares the node's own, or is more than one container", name)
		}
		c := container(o.Deployment).SecurityContext
		if c == nil || c.AllowPrivilegeEscalation == nil || *c.AllowPrivilegeEscalation || c.ReadOnlyRootFilesystem == nil ||
			!*c.ReadOnlyRootFilesystem || c.Capabilities == nil || len(c.Capabilities.Add) > 0 ||
			!reflect.DeepEqual(c.Capabilities.Drop, []corev1.Capability{"ALL"}) {
			t.Errorf("%s: container %+v", name, c)
		}
		for _, v := range pod.Volumes {
			if v.Secret == nil && v.ConfigMap == nil {
				t.Errorf("%s: volume %s is no Secret and no ConfigMap", name, v.Name)
			}
		}
		if token := pod.AutomountServiceAccountToken; token == nil || *token {
			t.Errorf("%s: the pod gets a token", name)
		}
	}
}

// known are the flags of the program, as -help says.
var known = regexp.MustCompile(`(?m)^  -(\S+)`)

// Arguments and variables of every overlay are the program's, and it accepts their
// values: what is wrong would be said before it looks at -version.
func TestProgramAcceptsArguments(t *testing.T) {
	path := filepath.Join(t.TempDir(), "knitmathd")
	cmd := exec.Command("go", "build", "-buildvcs=false", "-trimpath", "-o", path, "./cmd/knitmathd")
	cmd.Dir = filepath.Join(deploy, "..")
	cmd.Env = append(cmd.Environ(), "CGO_ENABLED=0")
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	help, err := exec.Command(path, "-help").CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, help)
	}
	flags := map[string]bool{}
	for _, m := range known.FindAllStringSubmatch(string(help), -1) {
		flags[m[1]] = true
	}
	for name, o := range overlays(t) {
		c := container(o.Deployment)
		for _, arg := range c.Args {
			flag, _, given := strings.Cut(strings.TrimPrefix(arg, "-"), "=")
			if !flags[flag] || !given {
				t.Errorf("%s: %s is no flag of the program with its value", name, arg)
			}
		}
		for _, e := range c.Env {
			flag := strings.ReplaceAll(strings.ToLower(strings.TrimPrefix(e.Name, "KNITMATHD_")), "_", "-")
			if strings.HasPrefix(e.Name, "KNITMATHD_") && !flags[flag] {
				t.Errorf("%s: %s is no variable of the program", name, e.Name)
			}
		}
		if said, err := exec.Command(path, append(c.Args, "-version")...).CombinedOutput(); err != nil {
			t.Errorf("%s: %v: %v\n%s", name, c.Args, err, said)
		}
	}
}
