package web

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"maps"
	"path"
	"slices"

	"compress/gzip"

	"example.com/knitmath/gen/forms"
	"example.com/knitmath/gen/pages"
)

// sources are what the pages are made of, by their names in this folder: packed by
// service/web/pack, so that scripts are whole and short.
type sources map[string]string

func readSources() (sources, error) {
	var all sources
	return all, unpack(pages.Gzip, &all)
}

// fetched are the files that pages fetch, by name.
func (own sources) fetched() map[string][]byte {
	files := map[string][]byte{}
	for name, text := range own {
		if path.Dir(name) == "files" && path.Ext(name) != ".html" {
			files[path.Base(name)] = []byte(text)
		}
	}
	return files
}

// questions are every form there is, with what is said of it here.
func (own sources) questions() ([]question, error) {
	all, err := readForms()
	if err != nil {
		return nil, err
	}
	words := map[string]map[string]string{}
	if err := json.Unmarshal([]byte(own["words.json"]), &words); err != nil {
		return nil, fmt.Errorf("words.json: %w", err)
	}
	questions := make([]question, 0, len(all))
	var faults []error
	for _, name := range slices.Sorted(maps.Keys(all)) {
		q, err := readQuestion(name, all[name], own["questions/"+name+".json"], words)
		faults = append(faults, err)
		questions = append(questions, q)
	}
	return questions, errors.Join(faults...)
}

// readForms are the forms of the contract by their names.
func readForms() (map[string]json.RawMessage, error) {
	var all map[string]json.RawMessage
	return all, unpack(forms.Gzip, &all)
}

// unpack reads JSON that the program carries compressed.
func unpack(packed []byte, into any) error {
	data, err := inflated(packed)
	if err != nil {
		return err
	}
	return json.Unmarshal(data, into)
}

// inflated is what the program carries compressed.
func inflated(packed []byte) ([]byte, error) {
	r, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		return nil, err
	}
	return io.ReadAll(r)
}
