package reference

import (
	"fmt"
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// A page is written from top to bottom.
type page struct{ strings.Builder }

func (p *page) printf(form string, with ...any) { fmt.Fprintf(p, form, with...) }

func (p *page) heading(id, title string) {
	p.printf("<h2 id=\"%s\">%s</h2>\n", id, html.EscapeString(title))
}

// part writes a message or an enum under its name.
func (p *page) part(d *Document, name string) {
	p.printf("<h3 id=\"%[1]s\"><code>%[1]s</code></h3>\n", html.EscapeString(name))
	p.message(d, name, "required")
}

// message writes the fields of a message, or the values of an enum. must says of a
// field that it cannot be absent.
func (p *page) message(d *Document, ref, must string) {
	of := d.Components.Schemas[named(ref)]
	if of == nil {
		p.printf("<p><code>%s</code></p>\n", html.EscapeString(named(ref)))
		return
	}
	if len(of.Enum) > 0 {
		p.values(of)
		return
	}
	p.WriteString(prose(of.Description))
	if len(of.Properties) == 0 {
		p.WriteString("<p>It has no fields.</p>\n")
		return
	}
	p.WriteString("<dl class=\"fields\">\n")
	for _, field := range of.Properties {
		if !slices.Contains(of.Required, field.name) {
			p.field(field)
			continue
		}
		p.field(field, must)
	}
	p.WriteString("</dl>\n")
}

// values writes an enum.
func (p *page) values(of *schema) {
	before, _, _ := strings.Cut(of.Description, "\n\n- ")
	p.WriteString(prose(before) + "<dl class=\"fields\">\n")
	for i, value := range of.Enum {
		says := ""
		if i < len(of.EnumDescriptions) {
			says = of.EnumDescriptions[i]
		}
		p.printf("<div><dt><code>%s</code></dt><dd>%s</dd></div>\n", html.EscapeString(value), prose(says))
	}
	p.WriteString("</dl>\n")
}

// field writes a field with all that binds it, and more.
func (p *page) field(f property, more ...string) {
	said := append([]string{kind(f.schema)}, bounds(f.schema)...)
	said = append(said, more...)
	if f.Default != nil {
		said = append(said, "default "+value(f.Default))
	}
	if len(f.Examples) > 0 {
		said = append(said, "for example "+value(f.Examples[0]))
	}
	p.printf("<div><dt><code>%s</code> <span class=\"kind\">%s</span></dt><dd>%s</dd></div>\n",
		html.EscapeString(f.name), strings.Join(said, ", "), prose(f.Description))
}

// kind is what a value is, with a link to what it is made of.
func kind(s *schema) string {
	switch {
	case s == nil:
		return "anything"
	case s.Ref != "":
		name := html.EscapeString(named(s.Ref))
		return "<a href=\"#" + name + "\">" + name + "</a>"
	case s.Type == "array":
		return "list of " + kind(s.Items)
	case len(s.OneOf) > 0:
		var all []string
		for _, one := range s.OneOf {
			all = append(all, kind(one))
		}
		return strings.Join(all, " or ")
	case s.Const != nil:
		return "always " + value(s.Const)
	case s.Type == "boolean":
		return "true or false"
	case s.Type == "string":
		return "text"
	case s.Type == "integer":
		return "whole number"
	default:
		return html.EscapeString(s.Type)
	}
}

// bounds are the ranges of a value, and of those of a list.
func bounds(s *schema) []string {
	if s == nil {
		return nil
	}
	said := append(between(s.Minimum, s.Maximum, number, ""), between(s.MinLength, s.MaxLength, strconv.Itoa, " characters")...)
	said = append(said, between(s.MinItems, s.MaxItems, strconv.Itoa, " of them")...)
	for _, each := range bounds(s.Items) {
		said = append(said, "each "+each)
	}
	return said
}

func between[N any](least, most *N, write func(N) string, of string) []string {
	switch {
	case least != nil && most != nil:
		return []string{write(*least) + " to " + write(*most) + of}
	case least != nil:
		return []string{"at least " + write(*least) + of}
	case most != nil:
		return []string{"at most " + write(*most) + of}
	default:
		return nil
	}
}

func number(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }

// value is a value as JSON has it, but numbers without exponents.
func value(v any) string {
	switch v := v.(type) {
	case float64:
		return "<code>" + number(v) + "</code>"
	case string:
		return "<code>" + html.EscapeString(strconv.Quote(v)) + "</code>"
	default:
		return "<code>" + html.EscapeString(fmt.Sprint(v)) + "</code>"
	}
}

var (
	// quoted is what stands between backticks, or a field, which the contract names
	// without them.
	quoted = regexp.MustCompile("`[^`]+`|\\b[a-z][a-z0-9]*(?:_[a-z0-9]+)+\\b")
	// reason is the word for machines that a line of a list begins with.
	reason = regexp.MustCompile(`^([A-Z][A-Z0-9]*(?:_[A-Z0-9]+)*)(,|:)`)
)

// prose writes what the contract says: paragraphs, lists, and words for machines.
func prose(text string) string {
	var b strings.Builder
	list := false
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		item, isItem := strings.CutPrefix(line, "- ")
		if list && !isItem {
			b.WriteString("</ul>\n")
		}
		if isItem && !list {
			b.WriteString("<ul>\n")
		}
		list = isItem
		switch {
		case isItem:
			b.WriteString("<li>" + marked(reason.ReplaceAllString(item, "`$1`$2")) + "</li>\n")
		case line != "":
			b.WriteString("<p>" + marked(line) + "</p>\n")
		}
	}
	if list {
		b.WriteString("</ul>\n")
	}
	return b.String()
}

func marked(line string) string {
	return quoted.ReplaceAllStringFunc(html.EscapeString(line), func(found string) string {
		return "<code>" + strings.Trim(found, "`") + "</code>"
	})
}
