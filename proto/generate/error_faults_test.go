package main

import (
	"slices"
	"strings"

	"example.com/knitmath/proto/compile"
)

// errors wants the errors in the form in which they are sent, and returns the
// names of their schemas. A test of the service holds real errors to them.
func (c *checker) errors(reasons []compile.Reason) []string {
	var violations, notices []compile.Reason
	for _, r := range reasons {
		switch {
		case r.Where == "knitmath.v1":
			violations = append(violations, r)
		case strings.HasSuffix(r.Where, ".notices"):
			notices = append(notices, r)
		}
	}
	if len(violations) == 0 || len(notices) == 0 {
		c.add("no reasons are described")
	}
	c.errorResponses()
	kinds := []string{"ErrorInfo", "BadRequest", "RetryInfo"}
	if !c.details(kinds) {
		return nil
	}
	c.listed("FieldViolation", violations)
	c.listed("ErrorInfo", refusalReasons)
	if notice := c.d.Components.Schemas["Notice"]; notice == nil {
		c.add("no notices")
	} else {
		known := notice.Properties.Get("reason").ExtensibleEnum
		c.same("reasons of notices", slices.Sorted(slices.Values(known)), slices.Compact(slices.Sorted(slices.Values(names(notices)))))
	}
	return append(kinds, "Status", "FieldViolation")
}

// errorResponses wants every error to be JSON, with an example, and what its headers say.
func (c *checker) errorResponses() {
	headers := map[string]string{"WrongMethod": "Allow", "KeyNeeded": "WWW-Authenticate",
		"TooManyQuestions": "Retry-After", "Unavailable": "Retry-After"}
	for name, response := range c.d.Components.Responses {
		if name == "NotModified" { // which is none
			if len(response.Content) > 0 || response.Headers["ETag"].Schema == nil {
				c.add("%s has a body, or no tag", name)
			}
			continue
		}
		media, ok := response.Content["application/json"]
		if !ok {
			c.add("error %s is no JSON", name)
			continue
		}
		c.same("error "+name, media.Schema, reference("Status"))
		if media.Example == nil || response.Description == "" {
			c.add("error %s has no example or no description", name)
		}
		if header := headers[name]; header != "" && response.Headers[header].Schema == nil {
			c.add("error %s has no header %s", name, header)
		}
	}
	if len(c.d.Components.Responses) != 11 {
		c.add("%d errors", len(c.d.Components.Responses))
	}
}

// details wants the kinds of detail that an error may have, each of which says what
// it is.
func (c *checker) details(kinds []string) bool {
	status := c.d.Components.Schemas["Status"]
	if status == nil || status.Properties.Get("details") == nil {
		c.add("no schema of errors with details")
		return false
	}
	c.same("errors always have", status.Required, []string{"code", "message", "details"})
	detail := status.Properties.Get("details").Items
	if len(detail.OneOf) != len(kinds) || detail.Discriminator == nil || detail.Discriminator.PropertyName != "@type" {
		c.add("details of errors are %+v", detail)
		return false
	}
	for i, kind := range kinds {
		c.same("detail", detail.OneOf[i], reference(kind))
		c.same("kind of detail", detail.Discriminator.Mapping["type.googleapis.com/google.rpc."+kind], "#/components/schemas/"+kind)
		schema := c.d.Components.Schemas[kind]
		if schema == nil || schema.Properties.Get("@type") == nil {
			c.add("detail %s does not say what it is", kind)
			continue
		}
		c.same("kind of "+kind, schema.Properties.Get("@type").Const, "type.googleapis.com/google.rpc."+kind)
		if schema.Required[0] != "@type" {
			c.add("detail %s need not say what it is", kind)
		}
	}
	return true
}

// listed wants the reasons of a kind of detail to be listed and explained.
func (c *checker) listed(kind string, list []compile.Reason) {
	schema := c.d.Components.Schemas[kind]
	if schema == nil || schema.Properties.Get("reason") == nil {
		c.add("%s has no reason", kind)
		return
	}
	reason := schema.Properties.Get("reason")
	for _, r := range list {
		if !strings.Contains(reason.Description, "`"+r.Name+"`: "+r.Meaning) {
			c.add("%s does not say what %s means", kind, r.Name)
		}
	}
	c.same("reasons of "+kind, reason.ExtensibleEnum, names(list))
}

func names(list []compile.Reason) []string {
	all := make([]string, len(list))
	for i, r := range list {
		all[i] = r.Name
	}
	return all
}
