// Command generate rebuilds everything under gen/ from proto/. Run it from the
// top folder of the project:
//
//	go run ./proto/generate
//
// It writes
//
//	gen/knitmath.binpb                     every descriptor, imports and comments included
//	gen/knitmath/v1/*.go                   messages, gRPC and JSON gateway, as buf.gen.yaml says
//	gen/borrowed/                          what the .proto files import, compressed and embedded
//	gen/openapi/knitmath.openapi.json      the JSON face as one OpenAPI 3.1 document
//	gen/openapi/openapi.go                 the same document, compressed and embedded
//	gen/forms/*.json, gen/forms/forms.go   a form for every question, for pages, likewise
//	gen/reasons.md                         the reasons that the comments describe, as a table
//	gen/pages/                             what the pages of service/web are made of, compressed and embedded
//	gen/reasons/reasons.go, .md.gz         the same compressed and embedded
//	gen/grammar/                           testdata/instruction/grammar.md compressed and embedded
//
// and leaves gen/baseline.binpb alone: that is the published wire, which the
// present one is compared to, and it moves only when somebody decides so.
package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"

	"example.com/knitmath/proto/compile"
)

const (
	sourceDir = "proto"
	imageFile = "gen/knitmath.binpb"
	goDir     = "gen/knitmath/v1"
	// own is the part of the image that is generated from: the imports bring
	// their generated code in modules.
	own = "knitmath"
)

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "generate:", err)
		os.Exit(1)
	}
}

// run rebuilds gen/. Nothing is deleted or written before all of proto/ has
// compiled.
func run() error {
	files, err := compile.Dir(sourceDir)
	if err != nil {
		return err
	}
	if err := writeImage(files); err != nil {
		return err
	}
	if err := writeGo(); err != nil {
		return err
	}
	if err := leanGo(); err != nil {
		return err
	}
	if err := writeBorrowed(files); err != nil {
		return err
	}
	if err := writeReasons(files); err != nil {
		return err
	}
	if err := writeGrammar(); err != nil {
		return err
	}
	if err := writeForms(files); err != nil {
		return err
	}
	if err := writeOpenAPI(files); err != nil {
		return err
	}
	return command("run", "./service/web/pack")
}

// command runs a command of Go's.
func command(args ...string) error {
	cmd := exec.Command("go", args...)
	cmd.Stdout, cmd.Stderr = os.Stdout, os.Stderr
	return cmd.Run()
}

// writeImage writes the descriptor set that buf, grpcurl and proxies read.
// Deterministic marshalling keeps an unchanged wire an unchanged file.
func writeImage(files *descriptorpb.FileDescriptorSet) error {
	image, err := proto.MarshalOptions{Deterministic: true}.Marshal(files)
	if err != nil {
		return err
	}
	return writeFile(imageFile, image)
}

// writeGo runs the plugins of buf.gen.yaml on the image. The old output goes
// first, so that a file whose source is gone does not stay behind; only names
// that the plugins give are removed, which buf's own "clean" would not heed.
func writeGo() error {
	old, err := filepath.Glob(filepath.Join(goDir, "*.pb*.go"))
	if err != nil {
		return err
	}
	for _, name := range old {
		if err := os.Remove(name); err != nil {
			return err
		}
	}
	// buf has a mod file of its own, because in the project's it would lift the
	// versions that the service is built with.
	return command("tool", "-modfile=tools.mod", "buf", "generate", imageFile, "--path", own)
}

// writeFile writes a generated file, and makes its folder if need be.
func writeFile(name string, content []byte) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	return os.WriteFile(name, content, 0o644)
}
