package reference

import (
	"bytes"
	"encoding/json"
	"fmt"
	"html"
	"slices"
	"strings"
)

// Question is the body of the page on the question that is asked at a path.
func (d *Document) Question(path string) (string, error) {
	post := d.Paths[path]["post"]
	if post == nil {
		return "", fmt.Errorf("the OpenAPI document has no POST %s", path)
	}
	question, answer := post.RequestBody.Content.of(), (*schema)(nil)
	if good := post.Responses["200"]; good != nil {
		answer = good.Content.of()
	}
	if question == nil || answer == nil {
		return "", fmt.Errorf("%s has no question or no answer", path)
	}
	var p page
	p.heading("question", "The question")
	p.message(d, question.Ref, "required")
	p.heading("answer", "The answer")
	p.message(d, answer.Ref, "always there")
	if parts := d.parts([]string{question.Ref, answer.Ref}); len(parts) > 0 {
		p.heading("parts", "What they are made of")
		for _, name := range parts {
			p.part(d, name)
		}
	}
	return p.String(), nil
}

// About is what an operation is said to do.
func (d *Document) About(path string) string {
	if post := d.Paths[path]["post"]; post != nil {
		return post.Description
	}
	return ""
}

// Links says that a question may be asked in a link too.
func (d *Document) Links(path string) bool { return d.Paths[path]["get"] != nil }

// Refusals is what comes back instead of an answer, the same for every question.
func (d *Document) Refusals() string {
	var p page
	seen := map[string]bool{}
	for _, methods := range d.Paths {
		post := methods["post"]
		if post == nil { // what is no question
			continue
		}
		for code, r := range post.Responses {
			if r.Ref != "" {
				seen[code+" "+named(r.Ref)] = true
			}
		}
	}
	p.WriteString("<dl class=\"fields\">\n")
	for _, both := range sorted(seen) {
		code, name, _ := strings.Cut(both, " ")
		r := d.Components.Responses[name]
		p.printf("<div><dt><code>%s</code></dt><dd>%s", html.EscapeString(code), prose(r.Description))
		if example := r.Content["application/json"].Example; len(example) > 0 {
			var indented bytes.Buffer
			if json.Indent(&indented, example, "", "  ") == nil {
				p.printf("<details><summary>An example</summary><pre tabindex=\"0\">%s</pre></details>", html.EscapeString(indented.String()))
			}
		}
		p.WriteString("</dd></div>\n")
	}
	p.WriteString("</dl>\n")
	const status = "#/components/schemas/Status"
	p.part(d, named(status))
	for _, name := range d.parts([]string{status}) {
		p.part(d, name)
	}
	return p.String()
}

// parts are the messages and enums that some are made of, nearest first, without
// themselves.
func (d *Document) parts(refs []string) []string {
	var names []string
	seen := map[string]bool{}
	for _, ref := range refs {
		seen[named(ref)] = true
	}
	for queue := slices.Clone(refs); len(queue) > 0; queue = queue[1:] {
		of := d.Components.Schemas[named(queue[0])]
		if of == nil {
			continue
		}
		for _, ref := range of.refs() {
			if name := named(ref); !seen[name] {
				seen[name] = true
				names = append(names, name)
				queue = append(queue, ref)
			}
		}
	}
	return names
}

// refs are the schemas that one speaks of, in order.
func (s *schema) refs() []string {
	if s == nil {
		return nil
	}
	var refs []string
	if s.Ref != "" {
		refs = append(refs, s.Ref)
	}
	for _, p := range s.Properties {
		refs = append(refs, p.refs()...)
	}
	for _, one := range s.OneOf {
		refs = append(refs, one.refs()...)
	}
	return append(refs, s.Items.refs()...)
}

func sorted(set map[string]bool) []string {
	var all []string
	for each := range set {
		all = append(all, each)
	}
	slices.Sort(all)
	return all
}
