package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"sigs.k8s.io/kustomize/kyaml/filesys"
)

var example = regexp.MustCompile("(?s)```yaml\n(apiVersion: kustomize.+?)```")

// The overlay that README.md shows renders, and gives image and pods one release.
func TestReadmeOverlay(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(deploy, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	m := example.FindSubmatch(text)
	if m == nil {
		t.Fatal("README.md shows no overlay")
	}
	// In memory, beside a copy of this folder, as it would stand beside it.
	files := filesys.MakeFsInMemory()
	for _, folder := range []string{"base", "components/monitoring", "components/tls"} {
		list, err := os.ReadDir(filepath.Join(deploy, folder))
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range list {
			text, err := os.ReadFile(filepath.Join(deploy, folder, f.Name()))
			if err != nil {
				t.Fatal(err)
			}
			if err := files.WriteFile("/deploy/"+folder+"/"+f.Name(), text); err != nil {
				t.Fatal(err)
			}
		}
	}
	if err := files.WriteFile("/mine/kustomization.yaml", m[1]); err != nil {
		t.Fatal(err)
	}
	out, err := render(files, "/mine")
	if err != nil {
		t.Fatal(err)
	}
	o := decoded(t, "README.md", out)
	if image := container(o.Deployment).Image; image != "registry.example.net/team/knitmathd:v1.2.0" {
		t.Errorf("image %s", image)
	}
	checkMounts(t, "README.md", o)
	if release := o.Deployment.Spec.Template.Labels[versionLabel]; release != "v1.2.0" {
		t.Errorf("the pods are of release %s", release)
	}
}
