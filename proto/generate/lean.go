package main

import (
	"errors"
	"go/format"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// What protoc-gen-go writes for old callers and for readers of options is a fortieth of
// the program, and nothing in it runs: types of two files whose options are read from
// their bytes (service/options.go), and methods, long deprecated, that hand out a
// descriptor compressed by the very program that then has to inflate it. ProtoReflect
// has all of it. An import that is left out makes no option unreadable: whoever links
// the package of those types has them read, as the tests do.
var (
	borrowedImport = regexp.MustCompile(
		`(?m)^\t_ "(buf\.build/gen/go/bufbuild/protovalidate|google\.golang\.org/genproto/googleapis/api/annotations)[^\n]*\n`)
	oldDescriptor = regexp.MustCompile(`(?m)^// Deprecated: Use [\w.]+\.Descriptor instead\.\n` +
		`func \(\*?\w+\) (Enum)?Descriptor\(\) \(\[\]byte, \[\]int\) \{\n[^\n]*\n\}\n\n`)
	packedOnce = regexp.MustCompile(`(?m)^var \(\n\t\w+_rawDescOnce +sync\.Once\n\t\w+_rawDescData +\[\]byte\n\)\n\n`)
	packedFunc = regexp.MustCompile(`(?m)^func \w+_rawDescGZIP\(\) \[\]byte \{\n(\t[^\n]*\n)+\}\n\n`)
)

// leanGo leaves all that out of the code that has just been generated.
func leanGo() error {
	names, err := filepath.Glob(filepath.Join(goDir, "*.pb.go"))
	if err != nil {
		return err
	}
	var faults []error
	for _, name := range names {
		code, err := os.ReadFile(name)
		if err == nil {
			code, err = lean(code)
		}
		if err == nil {
			err = writeFile(name, code)
		}
		faults = append(faults, err)
	}
	return errors.Join(faults...)
}

func lean(code []byte) ([]byte, error) {
	for _, part := range []*regexp.Regexp{borrowedImport, oldDescriptor, packedOnce, packedFunc} {
		code = part.ReplaceAll(code, nil)
	}
	text := string(code)
	if !strings.Contains(text, "sync.") {
		text = strings.Replace(text, "\tsync \"sync\"\n", "", 1)
	}
	return format.Source([]byte(text))
}
