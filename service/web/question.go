package web

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"strings"
)

// A question is a method of the contract as a page shows it.
type question struct {
	name string // as its files are called, "gauge.computeCastOn"
	form []byte
	made []byte

	path, title, intro string
}

// at is how the question is called in addresses: "gauge/computeCastOn".
func (q question) at() string { return strings.Replace(q.name, ".", "/", 1) }

// described is all that a page fetches of the question.
func (q question) described() []byte {
	return fmt.Appendf(nil, `{"form":%s,"made":%s}`, q.form, q.made)
}

// readQuestion reads the form of a question and, where there is one, the file that
// says what the contract cannot.
func readQuestion(name string, contract []byte) (question, error) {
	q := question{name: name, form: contract, made: []byte("{}")}
	var form struct{ Path, Title, About string }
	if err := json.Unmarshal(contract, &form); err != nil {
		return q, fmt.Errorf("the form %s: %w", name, err)
	}
	// The contract begins with the method's name, which a page does not have.
	_, about, _ := strings.Cut(form.About, " ")
	q.path, q.title, q.intro = form.Path, form.Title, strings.ToUpper(about[:min(1, len(about))])+about[min(1, len(about)):]
	data, err := own.ReadFile("questions/" + name + ".json")
	if errors.Is(err, fs.ErrNotExist) {
		return q, nil
	}
	if err != nil {
		return q, err
	}
	var said struct{ Title, Intro string }
	if err := json.Unmarshal(data, &said); err != nil {
		return q, fmt.Errorf("questions/%s.json: %w", name, err)
	}
	q.title, q.intro = said.Title, said.Intro
	q.made, err = compacted(data)
	return q, err
}

func compacted(data []byte) ([]byte, error) {
	var b bytes.Buffer
	err := json.Compact(&b, data)
	return b.Bytes(), err
}
