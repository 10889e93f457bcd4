package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"iter"
	"slices"
)

// Properties are the properties of an object, in an order that a reader can
// follow. Go's maps have none, and are written in alphabetical order.
type Properties struct {
	list []property
}

type property struct {
	name   string
	schema *Schema
}

// Get is the schema of a property, nil if there is no such.
func (p Properties) Get(name string) *Schema {
	if i := p.Index(name); i >= 0 {
		return p.list[i].schema
	}
	return nil
}

// Set gives a property a schema; a new one goes to the end.
func (p *Properties) Set(name string, schema *Schema) {
	if i := p.Index(name); i >= 0 {
		p.list[i].schema = schema
		return
	}
	p.list = append(p.list, property{name, schema})
}

// Index is the place of a property, -1 if there is no such.
func (p Properties) Index(name string) int {
	return slices.IndexFunc(p.list, func(known property) bool { return known.name == name })
}

// All lists the properties in order.
func (p Properties) All() iter.Seq2[string, *Schema] {
	return func(yield func(string, *Schema) bool) {
		for _, known := range p.list {
			if !yield(known.name, known.schema) {
				return
			}
		}
	}
}

// IsZero reports whether there are none, so that none are written.
func (p Properties) IsZero() bool { return len(p.list) == 0 }

// MarshalJSON writes an object, in order.
func (p Properties) MarshalJSON() ([]byte, error) {
	var out bytes.Buffer
	out.WriteByte('{')
	for i, known := range p.list {
		if i > 0 {
			out.WriteByte(',')
		}
		name, err := encode(known.name)
		if err != nil {
			return nil, err
		}
		schema, err := encode(known.schema)
		if err != nil {
			return nil, err
		}
		out.Write(name)
		out.WriteByte(':')
		out.Write(schema)
	}
	out.WriteByte('}')
	return out.Bytes(), nil
}

// UnmarshalJSON reads an object, keeping its order and as strict as Read.
func (p *Properties) UnmarshalJSON(data []byte) error {
	p.list = nil
	in := json.NewDecoder(bytes.NewReader(data))
	in.DisallowUnknownFields()
	if open, err := in.Token(); err != nil || open != json.Delim('{') {
		return errors.Join(err, errors.New("properties are no object"))
	}
	for in.More() {
		name, err := in.Token()
		if err != nil {
			return err
		}
		schema := &Schema{}
		if err := in.Decode(schema); err != nil {
			return err
		}
		p.Set(name.(string), schema) // the keys of an object are strings
	}
	return nil
}
