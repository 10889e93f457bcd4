package service

import (
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// With -ts-clients the README's TypeScript client is compiled and run too, with
// the packages installed in that folder, testdata/clients; .ci/run does that.
var tsClients = flag.String("ts-clients", "", "folder with the npm packages of the README's TypeScript client")

// readmeBlock is the one fenced block of a language.
func readmeBlock(t *testing.T, language string) string {
	t.Helper()
	text, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	found := regexp.MustCompile("(?s)```"+language+"\n(.*?)```\n").FindAllSubmatch(text, -1)
	if len(found) != 1 {
		t.Fatalf("README has %d blocks of %s", len(found), language)
	}
	return string(found[0][1])
}

// The README's clients, run against a server as they are printed, print what the
// README says they do: a count, and a fault decoded from an error's details.
func TestReadmeClients(t *testing.T) {
	server := start(t)
	want := readmeBlock(t, "text")
	addresses := strings.NewReplacer("localhost:8080", server.HTTPAddr().String(), "localhost:50051", server.GRPCAddr().String())
	// run writes a client to a file of a fresh folder and runs commands there.
	run := func(t *testing.T, dir, language, file string, commands ...string) {
		if err := os.WriteFile(filepath.Join(dir, file), []byte(addresses.Replace(readmeBlock(t, language))), 0o600); err != nil {
			t.Fatal(err)
		}
		var out []byte
		for _, command := range commands {
			cmd := exec.CommandContext(t.Context(), "bash", "-c", addresses.Replace(command))
			cmd.Dir = dir
			var err error
			if out, err = cmd.CombinedOutput(); err != nil {
				t.Fatalf("%s: %v\n%s", command, err, out)
			}
		}
		if got := string(out); got != want {
			t.Errorf("prints\n%s\nand the README says\n%s", got, want)
		}
	}
	t.Run("go", func(t *testing.T) {
		// Inside the module, as a folder that no pattern of the tools matches.
		dir, err := os.MkdirTemp(".", "_readme")
		if err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { os.RemoveAll(dir) })
		run(t, dir, "go", "main.go", "go run .")
	})
	t.Run("python", func(t *testing.T) {
		if _, err := exec.LookPath("python3"); err != nil {
			t.Skip("*** NOT CHECKED: the README's Python client, since python3 is not installed ***")
		}
		run(t, t.TempDir(), "python", "client.py", "python3 client.py")
	})
	t.Run("typescript", func(t *testing.T) {
		if *tsClients == "" {
			t.Skip("*** NOT CHECKED: the README's TypeScript client; give -ts-clients testdata/clients after npm ci there ***")
		}
		packages, err := filepath.Abs(*tsClients)
		if err != nil {
			t.Fatal(err)
		}
		dir, err := os.MkdirTemp(packages, "readme")
		if err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { os.RemoveAll(dir) })
		run(t, dir, "ts", "client.ts",
			"echo '{\"type\": \"module\"}' > package.json",
			"../node_modules/.bin/openapi-typescript http://localhost:8080/openapi.json --default-non-nullable=false -o knitmath.ts",
			"../node_modules/.bin/tsc --strict --target es2022 --module nodenext --skipLibCheck client.ts",
			"node client.js")
	})
}
