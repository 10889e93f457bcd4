package main

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"path"
	"runtime/debug"
	"strings"

	cdx "github.com/CycloneDX/cyclonedx-go"
)

// document describes a program of this content and build information.
func document(program []byte, info *debug.BuildInfo, version string) *cdx.BOM {
	sum := sha256.Sum256(program)
	main := module(info.Main.Path, cmp.Or(version, info.Main.Version))
	main.Type, main.Name = cdx.ComponentTypeApplication, path.Base(info.Path)
	main.Hashes = &[]cdx.Hash{{Algorithm: cdx.HashAlgoSHA256, Value: hex.EncodeToString(sum[:])}}
	main.Properties = built(info)

	// The standard library first: it is linked into every program and has holes of
	// its own.
	parts := []cdx.Component{module("std", strings.TrimPrefix(info.GoVersion, "go"))}
	for _, m := range info.Deps {
		if m.Replace != nil {
			m = m.Replace
		}
		part := module(m.Path, m.Version)
		if m.Sum != "" {
			// A checksum of the module's files and not of one file, so no hash in
			// the sense of the format.
			part.Properties = &[]cdx.Property{{Name: "go:sum", Value: m.Sum}}
		}
		parts = append(parts, part)
	}
	refs := make([]string, len(parts))
	for i, part := range parts {
		refs[i] = part.BOMRef
	}
	bom := cdx.NewBOM()
	bom.SerialNumber = serial(sum)
	bom.Metadata = &cdx.Metadata{Component: &main}
	bom.Components = &parts
	// Which module asks for which is not in the program; that the program has all of
	// them is.
	bom.Dependencies = &[]cdx.Dependency{{Ref: main.BOMRef, Dependencies: &refs}}
	return bom
}

func module(path, version string) cdx.Component {
	purl := "pkg:golang/" + path
	if version != "" {
		// The one character of a Go version that a package URL escapes.
		purl += "@" + strings.ReplaceAll(version, "+", "%2B")
	}
	return cdx.Component{BOMRef: purl, Type: cdx.ComponentTypeLibrary, Name: path, Version: version, PackageURL: purl}
}

// built is how and from what the program was built.
func built(info *debug.BuildInfo) *[]cdx.Property {
	properties := []cdx.Property{{Name: "go:version", Value: info.GoVersion}}
	for _, s := range info.Settings {
		if s.Key == "GOOS" || s.Key == "GOARCH" || strings.HasPrefix(s.Key, "vcs.") {
			properties = append(properties, cdx.Property{Name: "go:" + s.Key, Value: s.Value})
		}
	}
	return &properties
}

// serial is a UUID of the form that leaves its making to the maker, version 8 of
// RFC 9562, section 5.8.
func serial(sum [sha256.Size]byte) string {
	sum[6] = sum[6]&0x0f | 0x80
	sum[8] = sum[8]&0x3f | 0x80
	return fmt.Sprintf("urn:uuid:%x-%x-%x-%x-%x", sum[0:4], sum[4:6], sum[6:8], sum[8:10], sum[10:16])
}
