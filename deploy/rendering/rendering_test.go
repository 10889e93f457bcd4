package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"sigs.k8s.io/kustomize/kyaml/filesys"
)

// overlays are the folders that a cluster can be given, the base among them. All of
// them are found, so that a new one is checked without being named here.
func overlays(t *testing.T) map[string]*objects {
	t.Helper()
	folders, err := filepath.Glob(filepath.Join(deploy, "overlays", "*"))
	if err != nil || len(folders) < 3 {
		t.Fatalf("%d overlays, %v", len(folders), err)
	}
	all := map[string]*objects{}
	for _, folder := range append(folders, filepath.Join(deploy, "base")) {
		text, err := render(filesys.MakeFsOnDisk(), folder)
		if err != nil {
			t.Fatal(err)
		}
		all[filepath.Base(folder)] = decoded(t, folder, text)
	}
	return all
}

func decoded(t *testing.T, folder string, text []byte) *objects {
	t.Helper()
	o, err := decode(text)
	if err != nil {
		t.Errorf("%s: %v", folder, err)
	}
	return o
}

// What is written here is as it would be written now.
func TestRenderedFilesAreFresh(t *testing.T) {
	for _, file := range rendered {
		want, err := file.render()
		if err != nil {
			t.Fatal(err)
		}
		got, err := os.ReadFile(filepath.Join(deploy, file.name))
		if err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s is stale (%v): go -C deploy/rendering run .", file.name, err)
		}
	}
}

// A field that no API knows is a fault, whatever is wrong with it.
func TestDecodeIsStrict(t *testing.T) {
	const good = "apiVersion: v1\nkind: Service\nmetadata: {name: knitmath}\nspec: {clusterIP: None}\n"
	if _, err := decode([]byte(good)); err != nil {
		t.Fatal(err)
	}
	for _, bad := range []string{
		"apiVersion: v1\nkind: Service\nmetadata: {name: knitmath}\nspec: {clusterip: None}\n",
		"apiVersion: v1\nkind: Service\nmetadata: {name: knitmath}\nclusterIP: None\n",
		"apiVersion: v1\nkind: Service\nmetadata: {name: knitmath}\nspec: {clusterIP: None, clusterIP: None}\n",
		"apiVersion: v1\nkind: Service\nmetadata: {name: knitmath}\nspec: {ports: [{port: http}]}\n",
		"apiVersion: v2\nkind: Service\nmetadata: {name: knitmath}\n",
		"apiVersion: v1\nkind: Namespace\nmetadata: {name: one}\n---\napiVersion: v1\nkind: Namespace\nmetadata: {name: two}\n",
	} {
		if _, err := decode([]byte(bad)); err == nil {
			t.Errorf("decoded:\n%s", bad)
		}
	}
}
