package deploy

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"reflect"
	"testing"
)

// kubectl reads every document, without a cluster. The Deployment and the Services
// it takes apart into the fields of their kinds and prints again, so that a field
// that is misspelt, misplaced or of the wrong type is missing or refused; of the
// other kinds it knows so much only with a cluster, and rendering/ must do.
func TestKubectl(t *testing.T) {
	if _, err := exec.LookPath("kubectl"); err != nil {
		t.Skip("NOT CHECKED: no kubectl; only rendering/ has read kubernetes.yaml")
	}
	m := readManifest(t)
	container := m.Deployment.Spec.Template.Spec.Containers[0]
	for _, document := range m.documents {
		fields := document.(map[string]any)
		what := fmt.Sprint(fields["kind"], " ", fields["metadata"].(map[string]any)["name"])
		args := []string{"label", "checked=yes"}
		switch fields["kind"] {
		case "Deployment":
			// It prints nothing when it has nothing to change.
			args = []string{"set", "image", container.Name + "=" + container.Image + "-checked"}
		case "Service":
			args = []string{"set", "selector", "app.kubernetes.io/name=knitmath"}
		}
		text, err := json.Marshal(document)
		if err != nil {
			t.Fatal(err)
		}
		var written, read any
		if err := json.Unmarshal(text, &written); err != nil {
			t.Fatal(err)
		}
		out := bytes.Replace(kubectl(t, text, args...), []byte(container.Image+"-checked"), []byte(container.Image), 1)
		if err := json.Unmarshal(out, &read); err != nil {
			t.Fatalf("%s: %v", what, err)
		}
		for _, path := range lost(written, read, "") {
			t.Errorf("%s: kubectl does not know %s as it is written", what, path)
		}
		t.Logf("kubectl %s %s: accepts %s", args[0], args[1], what)
	}
}

// kubectl has a kustomize of its own, of another release than rendering/ has: what it
// makes of the base is the same.
func TestKubectlKustomize(t *testing.T) {
	if _, err := exec.LookPath("kubectl"); err != nil {
		t.Skip("NOT CHECKED: no kubectl")
	}
	out, err := exec.Command("kubectl", "kustomize", "base").Output()
	if err != nil {
		t.Fatal(err)
	}
	// In an order of its own.
	got, want := named(documentsOf(t, out)), named(readManifest(t).documents)
	if !reflect.DeepEqual(got, want) {
		t.Errorf("kubectl kustomize base:\n%s", out)
	}
}

// named finds documents by kind and name.
func named(documents []any) map[string]any {
	all := map[string]any{}
	for _, document := range documents {
		fields := document.(map[string]any)
		all[fmt.Sprint(fields["kind"], " ", fields["metadata"].(map[string]any)["name"])] = document
	}
	return all
}

// kubectl runs it on a document, with no configuration and so no cluster.
func kubectl(t *testing.T, document []byte, args ...string) []byte {
	t.Helper()
	cmd := exec.Command("kubectl", append(args, "--local", "-f", "-", "-o", "json")...)
	cmd.Env = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + t.TempDir(), "KUBECONFIG=/dev/null"}
	cmd.Stdin = bytes.NewReader(document)
	var errs bytes.Buffer
	cmd.Stderr = &errs
	out, err := cmd.Output()
	if err != nil || len(out) == 0 {
		t.Fatalf("kubectl %v: %v\n%s%s", args, err, errs.String(), document)
	}
	return out
}

// lost lists what was written and is not there when read; more may be there.
func lost(written, read any, path string) []string {
	var paths []string
	switch w := written.(type) {
	case map[string]any:
		r, _ := read.(map[string]any)
		for key, value := range w {
			if got, ok := r[key]; ok {
				paths = append(paths, lost(value, got, path+"."+key)...)
			} else {
				paths = append(paths, path+"."+key)
			}
		}
		return paths
	case []any:
		r, _ := read.([]any)
		if len(r) != len(w) {
			return []string{path}
		}
		for i := range w {
			paths = append(paths, lost(w[i], r[i], fmt.Sprintf("%s[%d]", path, i))...)
		}
		return paths
	}
	if !reflect.DeepEqual(written, read) {
		return []string{path}
	}
	return nil
}
