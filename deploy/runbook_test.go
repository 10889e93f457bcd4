package deploy

import (
	"maps"
	"regexp"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"
)

var section = regexp.MustCompile(`(?m)^### (Knitmath\w+)$`)

// Whoever is woken by an alert finds what to do in README.md, under the alert's name.
// The anchor of such a heading is the name in small letters, which is where the
// alert's own link leads.
func TestEveryAlertHasItsSection(t *testing.T) {
	var file struct {
		Groups []struct {
			Rules []struct {
				Alert       string
				Annotations map[string]string
			}
		}
	}
	if err := yaml.Unmarshal([]byte(read(t, "alerts.yaml")), &file); err != nil {
		t.Fatal(err)
	}
	sections, alerts := map[string]bool{}, map[string]bool{}
	for _, m := range section.FindAllStringSubmatch(read(t, "README.md"), -1) {
		sections[m[1]] = true
	}
	for _, group := range file.Groups {
		for _, r := range group.Rules {
			if r.Alert == "" {
				continue
			}
			alerts[r.Alert] = true
			if link := r.Annotations["runbook_url"]; link != "" && !strings.HasSuffix(link, "#"+strings.ToLower(r.Alert)) {
				t.Errorf("%s links to %s", r.Alert, link)
			}
		}
	}
	if !maps.Equal(sections, alerts) {
		t.Errorf("README.md has sections for %v, the alerts are %v", sections, alerts)
	}
}
