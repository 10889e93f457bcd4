// Package reference writes the OpenAPI document as pages that people read: a page for
// every question with its fields, ranges, defaults, values, reasons and refusals. It
// knows the part of OpenAPI that the document of this service uses, and no more.
//
// Only what stands between the headings of a page is made here; what is around it,
// and what asks, belongs to service/web.
package reference

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
)

// A Document is the OpenAPI document, read.
type Document struct {
	Info struct {
		Version, Description string
	}
	Paths      map[string]map[string]*operation
	Components struct {
		Schemas   map[string]*schema
		Responses map[string]*response
	}
}

// Read reads the document.
func Read(data []byte) (*Document, error) {
	var d Document
	if err := json.Unmarshal(data, &d); err != nil {
		return nil, fmt.Errorf("the OpenAPI document: %w", err)
	}
	return &d, nil
}

// An operation is a way to ask a question: by POST, or by GET.
type operation struct {
	Tags        []string
	Description string
	RequestBody struct{ Content content }
	Responses   map[string]*response
}

// A response is what comes back.
type response struct {
	Ref         string `json:"$ref"`
	Description string
	Content     content
}

type content map[string]struct {
	Schema  *schema
	Example json.RawMessage
}

// of is the schema of a body, nil when there is none.
func (c content) of() *schema { return c["application/json"].Schema }

// A schema is what a value may be.
type schema struct {
	Ref              string `json:"$ref"`
	Type             string
	Description      string
	Properties       properties
	Required         []string
	Items            *schema
	OneOf            []*schema
	Const            any
	Enum             []string
	EnumDescriptions []string `json:"x-enum-descriptions"`
	Default          any
	Examples         []any

	Minimum, Maximum     *float64
	MinItems, MaxItems   *int
	MinLength, MaxLength *int
}

// A property is a field of an object.
type property struct {
	name string
	*schema
}

// properties are the fields in the order of the document, which is that of the
// contract: a map would lose it.
type properties []property

// UnmarshalJSON reads an object in order.
func (p *properties) UnmarshalJSON(data []byte) error {
	d := json.NewDecoder(bytes.NewReader(data))
	if first, err := d.Token(); err != nil || first != json.Delim('{') {
		return errors.Join(err, errors.New("properties are an object"))
	}
	for d.More() {
		name, err := d.Token()
		if err != nil {
			return err
		}
		text, ok := name.(string)
		if !ok {
			return fmt.Errorf("%v is no name", name)
		}
		of := &schema{}
		if err := d.Decode(of); err != nil {
			return fmt.Errorf("%s: %w", text, err)
		}
		*p = append(*p, property{text, of})
	}
	return nil
}

// named is the last part of a reference: "#/components/schemas/Gauge" is Gauge.
func named(ref string) string { return ref[strings.LastIndex(ref, "/")+1:] }
