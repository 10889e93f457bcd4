package main

import (
	"errors"
	"path/filepath"

	"github.com/evanw/esbuild/pkg/api"
)

// bundles are the scripts that browsers fetch, each with all that it brings in, and how a
// page takes it: as a module, or as the classic script that others put on their pages.
var bundles = map[string]api.Format{
	"page.js":  api.FormatESModule,
	"try.js":   api.FormatESModule,
	"embed.js": api.FormatIIFE,
}

// bundle joins a script and what it brings in into one, without what is only for reading it.
func bundle(dir, name string, format api.Format) (string, error) {
	return built(api.BuildOptions{EntryPoints: []string{filepath.Join(dir, name)}, Bundle: true, Format: format})
}

// sheet is a style sheet without what is only for reading it.
func sheet(dir, name string) (string, error) {
	return built(api.BuildOptions{EntryPoints: []string{filepath.Join(dir, name)}})
}

func built(o api.BuildOptions) (string, error) {
	o.MinifyWhitespace, o.MinifyIdentifiers, o.MinifySyntax = true, true, true
	o.LegalComments = api.LegalCommentsNone
	o.Charset = api.CharsetUTF8
	made := api.Build(o)
	var faults []error
	for _, fault := range made.Errors {
		faults = append(faults, errors.New(fault.Text))
	}
	if err := errors.Join(faults...); err != nil {
		return "", err
	}
	return string(made.OutputFiles[0].Contents), nil
}
