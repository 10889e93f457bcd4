package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"

	"sigs.k8s.io/kustomize/api/krusty"
	"sigs.k8s.io/kustomize/kyaml/filesys"
	"sigs.k8s.io/yaml"
)

// deploy is the folder of the kustomizations, seen from this one.
const deploy = ".."

// rendered are the files that are written here and by nobody else. The rules come
// first: overlays read them.
var rendered = []struct {
	name   string
	render func() ([]byte, error)
}{
	{"components/monitoring/rules.yaml", rules},
	{"kubernetes.yaml", plain},
}

const (
	plainHead = "# Rendered from base/, where the reasons stand: go -C deploy/rendering run .\n"
	rulesHead = "# Rendered from ../../alerts.yaml, where the reasons stand: go -C deploy/rendering run .\n"
)

// plain is the base as one file, for those who use no kustomize.
func plain() ([]byte, error) {
	text, err := render(filesys.MakeFsOnDisk(), filepath.Join(deploy, "base"))
	return append([]byte(plainHead), text...), err
}

// render is what `kustomize build` prints of a folder.
func render(files filesys.FileSystem, folder string) ([]byte, error) {
	resources, err := krusty.MakeKustomizer(krusty.MakeDefaultOptions()).Run(files, folder)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", folder, err)
	}
	return resources.AsYaml()
}

// rules is the file of alerts as an object of the Prometheus operator. kustomize
// can put a file's text into a field, but not its fields.
func rules() ([]byte, error) {
	text, err := os.ReadFile(filepath.Join(deploy, "alerts.yaml"))
	if err != nil {
		return nil, err
	}
	var file struct {
		Groups any `json:"groups"`
	}
	if err := yaml.UnmarshalStrict(text, &file); err != nil {
		return nil, fmt.Errorf("alerts.yaml: %w", err)
	}
	object, err := yaml.Marshal(map[string]any{
		"apiVersion": "monitoring.coreos.com/v1",
		"kind":       "PrometheusRule",
		"metadata": map[string]any{
			"name": "knitmath", "namespace": "knitmath",
			"labels": map[string]string{"app.kubernetes.io/name": "knitmath", "app.kubernetes.io/part-of": "knitmath"},
		},
		"spec": file,
	})
	return append(bytes.Clone([]byte(rulesHead)), object...), err
}
