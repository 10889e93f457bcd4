// Command sbom writes what a Go program is made of, as a CycloneDX document: every
// module that was linked into it with its version and checksum, as the program's own
// build information says, and so no other.
//
//	go run ./deploy/sbom -version v1.2.0 knitmathd >knitmathd.cdx.json
//
// The same program gives the same document, byte for byte: it has no time and its
// serial number is made of the program's hash. Licences are not in the build
// information and so not in the document.
package main

import (
	"debug/buildinfo"
	"flag"
	"fmt"
	"io"
	"log"
	"os"

	cdx "github.com/CycloneDX/cyclonedx-go"
)

// format is the version of CycloneDX: the newest that the library has the whole
// schema of.
const format = cdx.SpecVersion1_6

func main() {
	log.SetFlags(0)
	version := flag.String("version", "", "the release, where the program was built without git")
	flag.Parse()
	if flag.NArg() != 1 {
		log.Fatal("sbom: name one program")
	}
	if err := write(os.Stdout, flag.Arg(0), *version); err != nil {
		log.Fatal("sbom: ", err)
	}
}

func write(w io.Writer, path, version string) error {
	program, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	info, err := buildinfo.ReadFile(path)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	return cdx.NewBOMEncoder(w, cdx.BOMFileFormatJSON).SetPretty(true).EncodeVersion(document(program, info, version), format)
}
