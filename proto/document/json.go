package document

import (
	"bytes"
	"encoding/json"
	"fmt"
)

// Read reads a document. What it cannot hold is a fault.
func Read(data []byte) (*Document, error) {
	in := json.NewDecoder(bytes.NewReader(data))
	in.DisallowUnknownFields()
	document := &Document{}
	if err := in.Decode(document); err != nil {
		return nil, fmt.Errorf("OpenAPI document: %w", err)
	}
	return document, nil
}

// Write writes the document, indented, for people to read too. The same document
// gives the same bytes.
func (d *Document) Write() ([]byte, error) {
	plain, err := encode(d)
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	err = json.Indent(&out, plain, "", "  ")
	return out.Bytes(), err
}

// encode writes JSON that keeps < and & as they are.
func encode(v any) ([]byte, error) {
	var out bytes.Buffer
	to := json.NewEncoder(&out)
	to.SetEscapeHTML(false)
	err := to.Encode(v)
	return out.Bytes(), err
}
