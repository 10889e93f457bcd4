package deploy

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/release"
)

// build runs the script that the Dockerfile runs, in a folder.
func build(dir, output string, env ...string) (said string, err error) {
	script, err := filepath.Abs("build")
	if err != nil {
		return "", err
	}
	cmd := exec.Command(script, output)
	cmd.Dir, cmd.Env = dir, append(os.Environ(), env...)
	text, err := cmd.CombinedOutput()
	return string(text), err
}

// standIn is a program that links at once and says what it was built from where the
// real one does: it is what the script and Go make of a folder that is looked at here.
// The real one, built by the script, says it in TestProgramRunsAsInTheImage.
var standIn = map[string]string{
	"go.mod": "module example.com/knitmath\n\ngo 1.26.0\n",
	"service/release.go": `package service

import "runtime/debug"

var stampedVersion, stampedCommit string

func Release() (string, string) {
	info, _ := debug.ReadBuildInfo()
	if stampedVersion != "" {
		return stampedVersion, stampedCommit
	}
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" {
			return info.Main.Version, s.Value
		}
	}
	return info.Main.Version, ""
}
`,
	"cmd/knitmathd/main.go": `package main

import (
	"os"

	"example.com/knitmath/service"
)

func main() {
	version, commit := service.Release()
	os.Stdout.WriteString("knitmathd " + version + " " + commit + "\n")
}
`,
}

// What is published says which release and commit it is: read from git, or told
// where there is no git, and refused where it would not say so.
func TestBuildRefusesUnknownReleases(t *testing.T) {
	dir := t.TempDir()
	checkout, worktree, output := filepath.Join(dir, "checkout"), filepath.Join(dir, "worktree"), filepath.Join(dir, "knitmathd")
	for name, text := range standIn {
		path := filepath.Join(checkout, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	git := func(args ...string) string {
		t.Helper()
		cmd := exec.Command("git", append([]string{"-c", "user.name=test", "-c", "user.email=test@example.com"}, args...)...)
		cmd.Dir = checkout
		out, err := cmd.CombinedOutput()
		if err != nil {
			t.Fatalf("git %v: %v\n%s", args, err, out)
		}
		return strings.TrimSpace(string(out))
	}
	for _, args := range [][]string{{"init", "-q"}, {"add", "."}, {"commit", "-qm", "a tree"}, {"tag", "v0.9.8"},
		{"worktree", "add", "-q", worktree, "v0.9.8"}} {
		git(args...)
	}
	commit := git("rev-parse", "HEAD")
	for _, c := range []struct {
		name, dir, version, commit, stamp string
		before                            func() error
		good                              bool
	}{
		{name: "tagged", dir: checkout, version: "v0.9.8", commit: commit, good: true},
		{name: "another release", dir: checkout, version: "v0.9.7", commit: commit},
		{name: "no release", dir: checkout, commit: commit},
		{name: "no commit", dir: checkout, version: "v0.9.8"},
		{name: "a linked worktree", dir: worktree, version: "v0.9.8", commit: commit},
		{name: "a changed file", dir: checkout, version: "v0.9.8", commit: commit, before: func() error {
			return os.WriteFile(filepath.Join(checkout, "service", "changed.go"), []byte("package service\n"), 0o644)
		}},
		{name: "no git", dir: checkout, version: "v0.9.8", commit: commit, before: func() error {
			return os.RemoveAll(filepath.Join(checkout, ".git"))
		}},
		{name: "stamped", dir: checkout, version: "v0.9.8", commit: commit, stamp: "yes", good: true},
	} {
		if c.before != nil {
			if err := c.before(); err != nil {
				t.Fatal(err)
			}
		}
		_ = os.Remove(output)
		said, err := build(c.dir, output, "VERSION="+c.version, "COMMIT="+c.commit, "STAMP="+c.stamp)
		if (err == nil) != c.good {
			t.Errorf("%s: %v\n%s", c.name, err, said)
		}
		_, err = os.Stat(output)
		if (err == nil) != c.good {
			t.Errorf("%s: a program: %v", c.name, err == nil)
		}
		if !c.good {
			continue
		}
		if told, err := exec.Command(output, "-version").Output(); err != nil || string(told) != "knitmathd v0.9.8 "+commit+"\n" {
			t.Errorf("%s: %s %v", c.name, told, err)
		}
	}
}

// tagged is a tag that is a release.
var tagged = regexp.MustCompile(`(?m)^v\d+\.\d+\.\d+$`)

// A commit that has a tag is the release of that number.
func TestTagIsTheRelease(t *testing.T) {
	if _, err := os.Stat("../.git"); err != nil {
		t.Skip("NOT CHECKED: the tag; these sources are without git")
	}
	tags, err := exec.Command("git", "tag", "--points-at", "HEAD").Output()
	if err != nil {
		t.Fatal(err)
	}
	for _, tag := range tagged.FindAllString(string(tags), -1) {
		if tag != release.Version {
			t.Errorf("the commit is tagged %s, and release.Version is %s", tag, release.Version)
		}
	}
}

var architectures = flag.String("architectures", "",
	"also build for these processors, as in amd64,arm64, and look at the size of the program")

// most is 20 MB: what a node loads before it can start a replica.
const most = 20_000_000

// The program stays small. Building for another processor takes two minutes from
// nothing, and so has to be asked for.
func TestProgramSize(t *testing.T) {
	paths := map[string]string{"this machine": builtProgram(t)}
	for _, arch := range strings.FieldsFunc(*architectures, func(r rune) bool { return r == ',' }) {
		path := filepath.Join(t.TempDir(), "knitmathd")
		if said, err := build("..", path, "VERSION="+release.Version, "COMMIT="+testCommit, "STAMP=yes", "GOARCH="+arch); err != nil {
			t.Fatalf("%s: %v\n%s", arch, err, said)
		}
		paths[arch] = path
	}
	for arch, path := range paths {
		file, err := os.Stat(path)
		if err != nil {
			t.Fatal(err)
		}
		t.Logf("%s: %s", arch, fmt.Sprintf("%.1f MB", float64(file.Size())/1e6))
		if file.Size() > most {
			t.Errorf("%s: the program has %d bytes, at most %d are meant", arch, file.Size(), most)
		}
	}
}

// The image is built by the script that is tested here, and holds its program alone.
func TestDockerfileBuildsByTheScript(t *testing.T) {
	docker := read(t, "Dockerfile")
	for _, line := range []string{" deploy/build /out/knitmathd\n",
		"\nCOPY --from=build /out/knitmathd /knitmathd\n", "\nARG VERSION COMMIT STAMP\n"} {
		if !strings.Contains(docker, line) {
			t.Errorf("the Dockerfile does not say %q", line)
		}
	}
	last := docker[strings.LastIndex(docker, "\nFROM "):]
	if strings.Count(last, "\nCOPY ") != 1 || strings.Contains(last, "\nRUN ") || strings.Contains(last, "\nADD ") {
		t.Errorf("the image is not the program alone:%s", last)
	}
}

// labelled is a label of the image, and argument a build argument that README.md gives.
var (
	labelled = regexp.MustCompile(`org\.opencontainers\.image\.([a-z]+)="([^"]*)"`)
	argument = regexp.MustCompile(`--build-arg ([A-Z]+)=`)
)

// The image says by the labels of the OCI's image specification (annotations.md, "Pre-Defined Annotation Keys") what it
// is and from what it was made, and README.md gives the build every argument that they want.
func TestImageSaysWhatItIs(t *testing.T) {
	docker := read(t, "Dockerfile")
	image := docker[strings.LastIndex(docker, "\nFROM "):]
	known, _, _ := strings.Cut(image[strings.Index(image, "\nARG ")+len("\nARG "):], "\n")
	build := read(t, "README.md")
	build, _, _ = strings.Cut(build[strings.Index(build, "    docker build "):], " .\n")
	given := argument.FindAllStringSubmatch(build, -1)
	said := map[string]string{}
	for _, l := range labelled.FindAllStringSubmatch(image, -1) {
		said[l[1]] = l[2]
	}
	for _, want := range []string{"title", "description"} {
		if said[want] == "" || strings.Contains(said[want], "$") {
			t.Errorf("the image's %s is %q", want, said[want])
		}
	}
	for name, of := range map[string]string{"version": "VERSION", "revision": "COMMIT", "source": "SOURCE", "created": "CREATED"} {
		if said[name] != "$"+of || !slices.Contains(strings.Fields(known), of) {
			t.Errorf("the image's %s is %q, of what it knows: %s", name, said[name], known)
		}
		if !slices.ContainsFunc(given, func(g []string) bool { return g[1] == of }) {
			t.Errorf("README.md builds the image without %s: %s", of, build)
		}
	}
}
