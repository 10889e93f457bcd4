// Package document holds an OpenAPI 3.1 document as Go values, as much of it as
// the project's own document uses. Reading is strict: what the types below do
// not hold is a fault and never lost on the way.
package document

// Document is the whole.
type Document struct {
	OpenAPI    string                `json:"openapi"`
	Info       Info                  `json:"info"`
	Servers    []Server              `json:"servers,omitempty"`
	Security   []map[string][]string `json:"security,omitempty"`
	Tags       []Tag                 `json:"tags,omitempty"`
	Paths      map[string]*Path      `json:"paths"`
	Components Components            `json:"components"`
}

// Info says what the document is about.
type Info struct {
	Title       string `json:"title"`
	Summary     string `json:"summary,omitempty"`
	Description string `json:"description,omitempty"`
	Version     string `json:"version"`
}

// Server is a place where the service answers.
type Server struct {
	URL         string `json:"url"`
	Description string `json:"description,omitempty"`
}

// Tag groups operations.
type Tag struct {
	Name        string `json:"name"`
	Description string `json:"description,omitempty"`
}

// Path is what can be asked at one path.
type Path struct {
	Get  *Operation `json:"get,omitempty"`
	Post *Operation `json:"post,omitempty"`
}

// Operations are the operations of the path by their verb, as HTTP spells it.
func (p *Path) Operations() map[string]*Operation {
	found := map[string]*Operation{}
	for verb, operation := range map[string]*Operation{"GET": p.Get, "POST": p.Post} {
		if operation != nil {
			found[verb] = operation
		}
	}
	return found
}

// Operation is one question.
type Operation struct {
	Tags        []string             `json:"tags,omitempty"`
	Summary     string               `json:"summary,omitempty"`
	Description string               `json:"description,omitempty"`
	OperationID string               `json:"operationId"`
	Parameters  []Parameter          `json:"parameters,omitempty"`
	RequestBody *RequestBody         `json:"requestBody,omitempty"`
	Responses   map[string]*Response `json:"responses"`
}

// Parameter is a field of a question in the query string.
type Parameter struct {
	Name        string `json:"name"`
	In          string `json:"in"`
	Description string `json:"description,omitempty"`
	Required    bool   `json:"required,omitempty"`
	// Explode: a list is given by naming the parameter several times.
	Explode bool    `json:"explode,omitempty"`
	Schema  *Schema `json:"schema"`
}

// RequestBody is a question in a body.
type RequestBody struct {
	Description string           `json:"description,omitempty"`
	Content     map[string]Media `json:"content"`
	Required    bool             `json:"required,omitempty"`
}

// Response is an answer or an error, or points to one of the components.
type Response struct {
	Ref         string            `json:"$ref,omitempty"`
	Description string            `json:"description,omitempty"`
	Headers     map[string]Header `json:"headers,omitempty"`
	Content     map[string]Media  `json:"content,omitempty"`
}

// Header is a header of a response.
type Header struct {
	Description string  `json:"description,omitempty"`
	Required    bool    `json:"required,omitempty"`
	Schema      *Schema `json:"schema"`
}

// Media is a body of one media type.
type Media struct {
	Schema  *Schema `json:"schema"`
	Example any     `json:"example,omitempty"`
}

// Components are the parts that others point to, by name.
type Components struct {
	Schemas         map[string]*Schema        `json:"schemas"`
	Responses       map[string]*Response      `json:"responses,omitempty"`
	SecuritySchemes map[string]SecurityScheme `json:"securitySchemes,omitempty"`
}

// SecurityScheme is a way to say who asks.
type SecurityScheme struct {
	Type        string `json:"type"`
	Description string `json:"description,omitempty"`
	Name        string `json:"name,omitempty"`
	In          string `json:"in,omitempty"`
	Scheme      string `json:"scheme,omitempty"`
}
