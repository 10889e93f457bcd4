package document

import "strings"

// Schema says which values are legal; in OpenAPI 3.1 it is a JSON Schema of the
// draft 2020-12, so that anything may stand beside a reference.
type Schema struct {
	Ref         string `json:"$ref,omitempty"`
	Type        string `json:"type,omitempty"`
	Format      string `json:"format,omitempty"`
	Description string `json:"description,omitempty"`

	// Of an object.
	Properties           Properties     `json:"properties,omitzero"`
	Required             []string       `json:"required,omitempty"`
	AdditionalProperties *bool          `json:"additionalProperties,omitempty"`
	Discriminator        *Discriminator `json:"discriminator,omitempty"`

	// Of an array.
	Items       *Schema `json:"items,omitempty"`
	MinItems    *uint64 `json:"minItems,omitempty"`
	MaxItems    *uint64 `json:"maxItems,omitempty"`
	UniqueItems bool    `json:"uniqueItems,omitempty"`

	// Of a string: lengths are in characters.
	MinLength *uint64 `json:"minLength,omitempty"`
	MaxLength *uint64 `json:"maxLength,omitempty"`
	Pattern   string  `json:"pattern,omitempty"`

	// Of a number.
	Minimum          *float64 `json:"minimum,omitempty"`
	ExclusiveMinimum *float64 `json:"exclusiveMinimum,omitempty"`
	Maximum          *float64 `json:"maximum,omitempty"`
	ExclusiveMaximum *float64 `json:"exclusiveMaximum,omitempty"`

	// Of anything.
	Const    any   `json:"const,omitempty"`
	Enum     []any `json:"enum,omitempty"`
	Default  any   `json:"default,omitempty"`
	Examples []any `json:"examples,omitempty"`

	OneOf []*Schema `json:"oneOf,omitempty"`
	AnyOf []*Schema `json:"anyOf,omitempty"`
	Not   *Schema   `json:"not,omitempty"`

	// What each value of Enum means, in the same order. Several generators of
	// documentation and clients read this extension.
	EnumDescriptions []string `json:"x-enum-descriptions,omitempty"`
	// Values known today of a string that may take others tomorrow.
	ExtensibleEnum []string `json:"x-extensible-enum,omitempty"`
}

// Discriminator says which property tells the kinds of an object apart.
type Discriminator struct {
	PropertyName string            `json:"propertyName"`
	Mapping      map[string]string `json:"mapping,omitempty"`
}

const schemas = "#/components/schemas/"

// RefTo is a schema that points to a component.
func RefTo(name string) *Schema { return &Schema{Ref: schemas + name} }

// Target is the name of the component that the schema points to, "" if to none.
func (s *Schema) Target() string {
	name, _ := strings.CutPrefix(s.Ref, schemas)
	return name
}

// SetTarget makes the schema point to another component.
func (s *Schema) SetTarget(name string) { s.Ref = schemas + name }

// Clone copies the schema and all that lies in it.
func (s *Schema) Clone() *Schema {
	if s == nil {
		return nil
	}
	c := *s
	c.Properties = Properties{}
	for name, schema := range s.Properties.All() {
		c.Properties.Set(name, schema.Clone())
	}
	c.Items, c.Not = s.Items.Clone(), s.Not.Clone()
	for _, list := range []*[]*Schema{&c.OneOf, &c.AnyOf} {
		copied := make([]*Schema, 0, len(*list))
		for _, part := range *list {
			copied = append(copied, part.Clone())
		}
		*list = copied
	}
	return &c
}

// Walk calls visit for the schema and for all that lie in it, references not
// followed.
func (s *Schema) Walk(visit func(*Schema)) {
	if s == nil {
		return
	}
	visit(s)
	for _, property := range s.Properties.All() {
		property.Walk(visit)
	}
	s.Items.Walk(visit)
	for _, list := range [][]*Schema{s.OneOf, s.AnyOf} {
		for _, part := range list {
			part.Walk(visit)
		}
	}
	s.Not.Walk(visit)
}

// Walk calls visit for every schema of the document.
func (d *Document) Walk(visit func(*Schema)) {
	for _, schema := range d.Components.Schemas {
		schema.Walk(visit)
	}
	for _, response := range d.Components.Responses {
		response.walk(visit)
	}
	for _, path := range d.Paths {
		for _, operation := range path.Operations() {
			operation.walk(visit)
		}
	}
}

func (o *Operation) walk(visit func(*Schema)) {
	for _, parameter := range o.Parameters {
		parameter.Schema.Walk(visit)
	}
	if o.RequestBody != nil {
		for _, media := range o.RequestBody.Content {
			media.Schema.Walk(visit)
		}
	}
	for _, response := range o.Responses {
		response.walk(visit)
	}
}

func (r *Response) walk(visit func(*Schema)) {
	for _, header := range r.Headers {
		header.Schema.Walk(visit)
	}
	for _, media := range r.Content {
		media.Schema.Walk(visit)
	}
}
