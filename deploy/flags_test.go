package deploy

import (
	"os/exec"
	"regexp"
	"strings"
	"testing"
	"time"
)

// The README of the project has every flag with the default that the program says.
func TestReadmeFlags(t *testing.T) {
	help, err := exec.Command(builtProgram(t), "-help").CombinedOutput()
	if err != nil {
		t.Fatal(err)
	}
	defaults, readme := flagDefaults(t), read(t, "../README.md")
	told := map[string]string{}
	for _, row := range regexp.MustCompile("(?m)^\\| (`-[a-z`, -]+) \\|([^|]*)\\|").FindAllStringSubmatch(readme, -1) {
		flags, values := strings.Split(row[1], ", "), strings.Split(strings.TrimSpace(row[2]), ", ")
		for i, flag := range flags {
			value := values[0]
			if len(values) == len(flags) {
				value = values[i]
			}
			told[strings.Trim(flag, "`-")] = strings.Trim(value, "`")
		}
	}
	for _, m := range regexp.MustCompile(`(?m)^  -(\S+)`).FindAllStringSubmatch(string(help), -1) {
		flag := m[1]
		said, listed := told[flag]
		delete(told, flag)
		if !listed && !strings.Contains(readme, "-"+flag+" ") {
			t.Errorf("README has no -%s", flag)
		}
		if !sameDefault(said, defaults[flag]) {
			t.Errorf("-%s is %q by default; README says %q", flag, defaults[flag], said)
		}
	}
	if len(told) > 0 {
		t.Errorf("README has flags that the program does not: %v", told)
	}
}

// sameDefault reports whether README and the program say the same: a word for no default,
// 3m for 3m0s, info for INFO.
func sameDefault(told, program string) bool {
	switch told {
	case "", "none", "off", "0":
		return program == ""
	}
	one, err := time.ParseDuration(told)
	other, fault := time.ParseDuration(program)
	return err == nil && fault == nil && one == other || strings.EqualFold(told, program)
}

// lookUps is how seldom grpc-go looks names up, at most so often: who has no other pod to
// ask learns of one only then.
const lookUps = 30 * time.Second

// By default the program drains for 3 s, for whoever runs it by hand; in a cluster for as
// long as clients may need to find other pods.
func TestDrain(t *testing.T) {
	if told := flagDefaults(t)["drain"]; told != "3s" {
		t.Errorf("-drain is %s by default", told)
	}
	args := strings.Join(readManifest(t).Deployment.Spec.Template.Spec.Containers[0].Args, " ")
	_, after, _ := strings.Cut(args, "-drain=")
	drain, _, _ := strings.Cut(after, " ")
	if duration(t, drain) <= lookUps {
		t.Errorf("the manifest drains for %s; names are looked up every %v", drain, lookUps)
	}
}
